/** The program's own log: what happened and how long it took, never what people wrote and never a secret. */

import { type Logger as LibraryLogger, LogLevel } from '@slack/bolt';
import { type DestinationStream, type Logger, pino } from 'pino';

export type { Logger };

export function openProgramLog(level: string, destination: DestinationStream = pino.destination(1)): Logger {
	// Fields that may hold texts or secrets, should one ever be passed along by mistake.
	const redact = ['text', 'token', '*.text', '*.token', '*.headers', '*.body', '*.data'];
	return pino({ name: 'lugbook-slack', level, redact }, destination);
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

/** The parts of an error that hold no message text: the platform's error objects carry whole requests. */
export function errorFacts(error: unknown): { error: string; code?: string } {
	if (!(error instanceof Error)) return { error: 'not an Error' };
	const { code } = error as { code?: unknown };
	return typeof code === 'string' ? { error: error.message, code } : { error: error.message };
}
