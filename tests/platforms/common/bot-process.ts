/** A bot as a process of its own, as several of them share one database; killed without a word where a test says so. */

import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterwards } from './closing.js';

const SCRIPT = fileURLToPath(new URL('../bot-process.mjs', import.meta.url));
const BUILT = fileURLToPath(new URL('../../../apps/slack/dist/index.js', import.meta.url));
const START_WITHIN_MS = 30_000;

interface ProcessOptions {
	readonly platform: 'slack' | 'discord';
	readonly databaseUrl: string;
	/** the bot's settings but for those that every bot of the tests has */
	readonly settings: object;
	readonly sweepMs: number;
	readonly leaseMs: number;
}

export class BotProcess {
	readonly #child: ChildProcess;
	readonly #ended: Promise<void>;
	#errors = '';
	port = 0;

	private constructor(options: ProcessOptions) {
		if (!existsSync(BUILT)) throw new Error(`${BUILT} is missing: build the workspace first (npm run build)`);
		this.#child = spawn(process.execPath, [SCRIPT, JSON.stringify(options)], {
			stdio: ['pipe', 'pipe', 'pipe'],
			// The child runs the built packages, whatever conditions this process was started with.
			env: { ...process.env, NODE_OPTIONS: '' },
		});
		this.#child.stderr?.setEncoding('utf8').on('data', (text: string) => {
			this.#errors += text;
		});
		this.#ended = new Promise((resolve) => this.#child.once('close', () => resolve()));
	}

	static async start(options: ProcessOptions): Promise<BotProcess> {
		const started = new BotProcess(options);
		afterwards(() => started.stop());
		await new Promise<void>((resolve, reject) => {
			const fail = () => reject(new Error(`the bot did not come up: ${started.#errors.slice(0, 1000)}`));
			const timer = setTimeout(fail, START_WITHIN_MS);
			started.#child.once('close', fail);
			started.#child.stdout?.setEncoding('utf8').once('data', (text: string) => {
				clearTimeout(timer);
				started.port = Number(text);
				resolve();
			});
		});
		return started;
	}

	get isAlive(): boolean {
		return this.#child.exitCode === null && this.#child.signalCode === null;
	}

	/** The process stands still, as on a machine that is asleep, until it goes on. */
	standStill(): void {
		this.#child.kill('SIGSTOP');
	}

	goOn(): void {
		this.#child.kill('SIGCONT');
	}

	async kill(): Promise<void> {
		this.#child.kill('SIGKILL');
		await this.#ended;
	}

	async stop(): Promise<void> {
		this.goOn();
		this.#child.stdin?.end();
		const timer = setTimeout(() => this.#child.kill('SIGKILL'), 15_000);
		await this.#ended;
		clearTimeout(timer);
	}
}
