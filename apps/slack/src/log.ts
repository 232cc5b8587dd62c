/** The program's own log: what happened and how long it took, never what people wrote and never a secret. */

import { redactedFields } from '@lugbook/chat';
import { type Logger as LibraryLogger, LogLevel } from '@slack/bolt';
import { type DestinationStream, type Logger, pino } from 'pino';

export type { Logger };

export function openProgramLog(level: string, destination: DestinationStream = pino.destination(1)): Logger {
	return pino({ name: 'lugbook-slack', level, redact: [...redactedFields] }, destination);
}

/** Lets the platform's library write here. Its debug lines hold whole payloads, so nothing below a warning passes. */
export function asLibraryLogger(log: Logger): LibraryLogger {
	const words = (parts: unknown[]) =>
		parts.map((one) => (one instanceof Error ? one.message : String(one))).join(' ');
	return {
		debug: () => {},
		info: () => {},
		warn: (...parts: unknown[]) => log.warn({ from: 'library' }, words(parts)),
		error: (...parts: unknown[]) => log.error({ from: 'library' }, words(parts)),
		setLevel: () => {},
		getLevel: () => LogLevel.WARN,
		setName: () => {},
	};
}
