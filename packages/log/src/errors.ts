/** Every way in which the log can fail, so that a caller can say a clear sentence for each. */
export const LOG_ERROR_CODES = [
	/** No room left on the disk; nothing of the entry was written. */
	'full',
	/** The database may be read but not written. */
	'read-only',
	/** Somebody else held the database longer than this log waits. */
	'locked',
	/** The database server went away and did not come back in time, or the thread that keeps the log has ended. */
	'connection-lost',
	/** What is stored does not match its hashes, or the file is damaged. */
	'corrupt',
	/** What the caller gave can't be logged or looked up; the message names the field. */
	'bad-entry',
	/** The connection string is not one this log understands. */
	'bad-url',
	/** The database can't be opened or used for another reason; the cause says which. */
	'unavailable',
] as const;

export type LogErrorCode = (typeof LOG_ERROR_CODES)[number];

export class LogError extends Error {
	override readonly name = 'LogError';
	readonly code: LogErrorCode;

	constructor(code: LogErrorCode, message: string, cause?: unknown) {
		super(message, cause === undefined ? undefined : { cause });
		this.code = code;
	}
}

/** The `code` that Node, SQLite and PostgreSQL all put on their errors, or '' when there is none. */
export function driverCode(error: unknown): string {
	if (typeof error !== 'object' || error === null || !('code' in error)) return '';
	return typeof error.code === 'string' ? error.code : '';
}

export function messageOf(error: unknown): string {
	return error instanceof Error ? error.message : String(error);
}
