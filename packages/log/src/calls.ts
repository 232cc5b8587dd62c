import { LogError, type LogErrorCode, messageOf } from './errors.js';

/** One end of a pair of threads that send each other messages. */
interface Port {
	postMessage(message: Message): void;
	on(event: 'message', listener: (message: Message) => void): unknown;
}

/** An error as it travels: of an Error's own class nothing arrives. */
interface Failure {
	readonly message: string;
	/** of a LogError */
	readonly code: LogErrorCode | null;
	readonly cause: string | null;
}

type Message =
	| { readonly call: number; readonly name: string; readonly given: readonly unknown[] }
	| { readonly done: number; readonly value: unknown }
	| { readonly done: number; readonly failure: Failure };

/** Carries out what the other thread asks for. */
export type Serve = (name: string, given: readonly unknown[]) => Promise<unknown>;

/** Calls between two threads, in both directions. They begin in the order in which they were made. */
export class Calls {
	readonly #port: Port;
	readonly #waiting = new Map<number, { done(value: unknown): void; failed(error: unknown): void }>();
	#last = 0;

	constructor(port: Port, serve: Serve) {
		this.#port = port;
		port.on('message', (message) => {
			if ('call' in message) void this.#serve(message.call, serve(message.name, message.given));
			else this.#settle(message);
		});
	}

	/** @throws LogError or Error, as the other thread has thrown it */
	async call(name: string, ...given: readonly unknown[]): Promise<unknown> {
		this.#last += 1;
		const call = this.#last;
		return await new Promise((done, failed) => {
			this.#waiting.set(call, { done, failed });
			try {
				this.#port.postMessage({ call, name, given });
			} catch (error) {
				// Something that can't travel, as a function: the log could not keep it either.
				this.#waiting.delete(call);
				failed(
					new LogError(
						'bad-entry',
						`what was given is no value that can be kept: ${messageOf(error)}`,
						error,
					),
				);
			}
		});
	}

	/** The other thread is gone: what waits for it fails. */
	fail(error: Error): void {
		const waiting = [...this.#waiting.values()];
		this.#waiting.clear();
		for (const { failed } of waiting) failed(error);
	}

	async #serve(call: number, result: Promise<unknown>): Promise<void> {
		try {
			this.#port.postMessage({ done: call, value: await result });
		} catch (error) {
			this.#port.postMessage({ done: call, failure: failureOf(error) });
		}
	}

	#settle(message: Exclude<Message, { readonly call: number }>): void {
		const waiting = this.#waiting.get(message.done);
		this.#waiting.delete(message.done);
		if ('failure' in message) waiting?.failed(errorOf(message.failure));
		else waiting?.done(message.value);
	}
}

function failureOf(error: unknown): Failure {
	const isOurs = error instanceof LogError;
	const cause = error instanceof Error && error.cause !== undefined ? messageOf(error.cause) : null;
	return { message: messageOf(error), code: isOurs ? error.code : null, cause };
}

function errorOf({ message, code, cause }: Failure): Error {
	const options = cause === null ? undefined : new Error(cause);
	if (code !== null) return new LogError(code, message, options);
	return new Error(message, options === undefined ? undefined : { cause: options });
}
