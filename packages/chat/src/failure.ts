import { LogError, type LogErrorCode } from '@lugbook/log';
import { type Answer, bareAnswer } from './answer.js';

const sentences: Readonly<Record<LogErrorCode, string>> = {
	full: 'the disk that holds the log is full. Nothing was saved: free some room and ask again',
	'read-only':
		'the log can only be read, not written. Nothing was saved: make the file writable and ask again',
	locked: 'another program is holding the log. Nothing was saved: ask again in a moment',
	'connection-lost':
		"the log's database does not answer. Ask again in a moment: a question that was kept is not kept twice",
	corrupt: 'the log does not match its own hashes. Nothing was saved: run "pnpm log verify" before going on',
	'bad-entry':
		"this message can't be kept as it stands. Nothing was saved: shorten it or leave odd characters out",
	'bad-url': 'the address of the log is wrong. Nothing was saved: check DATABASE_URL',
	unavailable: "the log can't be opened. Nothing was saved: see the program's own messages for the reason",
};

/** What is said when the log fails: no answer leaves unless it was kept. */
export function failureAnswer(error: LogError): Answer {
	return bareAnswer('refused', `I give no answer that I can't keep: ${sentences[error.code]}.`);
}

export function isLogError(error: unknown): error is LogError {
	return error instanceof LogError;
}
