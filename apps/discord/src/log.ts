/** The program's own log: what happened and how long it took, never what people wrote and never a secret. */

import { redactedFields } from '@lugbook/chat';
import { type DestinationStream, type Logger, pino } from 'pino';

export type { Logger };

export function openProgramLog(level: string, destination: DestinationStream = pino.destination(1)): Logger {
	return pino({ name: 'lugbook-discord', level, redact: [...redactedFields] }, destination);
}
