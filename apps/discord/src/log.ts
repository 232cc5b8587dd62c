/** The program's own log: what happened and how long it took, never what people wrote and never a secret. */

import { type DestinationStream, type Logger, pino } from 'pino';

export type { Logger };

export function openProgramLog(level: string, destination: DestinationStream = pino.destination(1)): Logger {
	// Fields that may hold texts or secrets, should one ever be passed along by mistake.
	const redact = ['text', 'token', '*.text', '*.token', '*.content', '*.requestBody', '*.rawError'];
	return pino({ name: 'lugbook-discord', level, redact }, destination);
}

/** The parts of an error that hold no message text: the platform's error objects carry whole requests. */
export function errorFacts(error: unknown): { error: string; code?: string | number } {
	if (!(error instanceof Error)) return { error: 'not an Error' };
	const { code } = error as { code?: unknown };
	// The first line alone: below it the platform's library repeats the fields it sent.
	const [line = ''] = error.message.split('\n');
	return typeof code === 'string' || typeof code === 'number' ? { error: line, code } : { error: line };
}
