import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SCRIPT = fileURLToPath(new URL('./writer.mjs', import.meta.url));
const BUILT = fileURLToPath(new URL('../../packages/log/dist/index.js', import.meta.url));

/** An entry that the log told its writer was written. */
export interface Acknowledged {
	number: number;
	hash: string;
	delivery: string;
}

/** A process that writes to a log, and what it has said so far. */
export class Writer {
	readonly acknowledged: Acknowledged[] = [];
	readonly #child: ChildProcess;
	readonly #ended: Promise<number | null>;
	#said = '';
	#errors = '';
	#onLine: () => void = () => undefined;

	/** @param options.largestFileKiB what the process may write into any one file; no limit unless given */
	constructor(options: { url: string; shop: string; name: string; count: number; largestFileKiB?: number }) {
		if (!existsSync(BUILT)) throw new Error(`${BUILT} is missing: build the workspace first (npm run build)`);
		const { url, shop, name, count } = options;
		const command = [process.execPath, SCRIPT, url, shop, name, String(count)];
		// POSIX counts the limit in blocks of 512 bytes.
		const limit = `ulimit -f ${2 * (options.largestFileKiB ?? 0)}; exec "$@"`;
		const [file = '', ...args] =
			options.largestFileKiB === undefined ? command : ['sh', '-c', limit, 'sh', ...command];
		this.#child = spawn(file, args, {
			stdio: ['ignore', 'pipe', 'pipe'],
			// The child runs the built package, whatever conditions this process was started with.
			env: { ...process.env, NODE_OPTIONS: '' },
		});
		this.#child.stdout?.setEncoding('utf8').on('data', (text: string) => this.#read(text));
		this.#child.stderr?.setEncoding('utf8').on('data', (text: string) => {
			this.#errors += text;
		});
		// `close` and not `exit`: by then all that was said has been read.
		this.#ended = new Promise((resolve, reject) => {
			this.#child.once('error', reject);
			this.#child.once('close', (code) => resolve(code));
		});
	}

	#read(text: string): void {
		const lines = (this.#said + text).split('\n');
		this.#said = lines.pop() ?? '';
		for (const line of lines) {
			const [number, hash, delivery] = line.split(' ');
			if (number === undefined || hash === undefined || delivery === undefined) continue;
			this.acknowledged.push({ number: Number(number), hash, delivery });
		}
		this.#onLine();
	}

	/** Resolves when something has been said, or the process has ended. */
	async spoken(): Promise<void> {
		const line = new Promise<void>((resolve) => {
			this.#onLine = resolve;
		});
		await Promise.race([line, this.#ended]);
	}

	/** Ends the process without a chance to do anything more, and waits until it is gone. */
	async kill(): Promise<void> {
		this.#child.kill('SIGKILL');
		await this.#ended;
	}

	/** Waits for the process to end by itself. */
	async done(): Promise<void> {
		const code = await this.over();
		if (code !== 0) throw new Error(`the writer ended with ${code}: ${this.#errors}`);
	}

	/** Waits for the process to end by itself, in failure or not. */
	async over(): Promise<number | null> {
		return await this.#ended;
	}

	/** What it complained of; a writer that is only killed complains of nothing. */
	get errors(): string {
		return this.#errors;
	}
}
