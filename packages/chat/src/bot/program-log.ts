/** The program's own log: what happened and how long it took, never what people wrote and never a secret. */
export interface ProgramLog {
	info(facts: object, what: string): void;
	warn(facts: object, what: string): void;
	error(facts: object, what: string): void;
}

/** Fields that may hold texts or secrets, should one ever be passed along by mistake. */
export const redactedFields = [
	'text',
	'token',
	'*.text',
	'*.token',
	'*.headers',
	'*.body',
	'*.data',
	'*.content',
	'*.requestBody',
	'*.rawError',
] as const;

/** The parts of an error that hold no message text: the platforms' error objects carry whole requests. */
export function errorFacts(error: unknown): { error: string; code?: string | number } {
	if (!(error instanceof Error)) return { error: 'not an Error' };
	const { code } = error as { code?: unknown };
	// The first line alone: below it a library may repeat the fields it sent.
	const [line = ''] = error.message.split('\n');
	return typeof code === 'string' || typeof code === 'number' ? { error: line, code } : { error: line };
}
