/**
 * A PostgreSQL of the tests' own: the server that Debian's package installs, run on a free port with its data in a
 * temporary folder. Nothing that was there before is used or touched.
 */
import { execFile, execFileSync, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chmod, mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { promisify } from 'node:util';
import pg from 'pg';

const run = promisify(execFile);

const INSTALLATIONS = '/usr/lib/postgresql';
const START_TIMEOUT_MS = 30_000;
/** Speed only: what the tests prove of durability they prove by stopping the server, not the machine. */
const SETTINGS = ['fsync=off', 'listen_addresses=127.0.0.1', 'max_connections=100'];

async function binaries(): Promise<string> {
	const versions = existsSync(INSTALLATIONS) ? await readdir(INSTALLATIONS) : [];
	const newest = versions
		.filter((version) => existsSync(join(INSTALLATIONS, version, 'bin', 'initdb')))
		.sort((a, b) => Number(b) - Number(a))[0];
	if (newest === undefined) {
		throw new Error(
			`no PostgreSQL server under ${INSTALLATIONS}; these tests need it: apt-get install postgresql (Debian package "postgresql")`,
		);
	}
	return join(INSTALLATIONS, newest, 'bin');
}

async function freePort(): Promise<number> {
	const server = createServer();
	await new Promise<void>((resolve, reject) => {
		server.once('error', reject);
		server.listen(0, '127.0.0.1', resolve);
	});
	const address = server.address();
	await new Promise<void>((resolve) => server.close(() => resolve()));
	if (address === null || typeof address === 'string') throw new Error('no free port');
	return address.port;
}

/** A server refuses to run as root: there it runs as the user the package makes. */
async function asServerUser(command: string, args: readonly string[]): Promise<void> {
	const isRoot = process.getuid?.() === 0;
	const [file, all] = isRoot ? ['runuser', ['-u', 'postgres', '--', command, ...args]] : [command, [...args]];
	// Not inherited: a server that keeps our output open would keep us waiting for its end.
	await new Promise<void>((resolve, reject) => {
		const child = spawn(file, all, { stdio: 'ignore', cwd: '/' });
		child.once('error', reject);
		child.once('exit', (code) =>
			code === 0 ? resolve() : reject(new Error(`${command} ${args[0]} ended with ${code}`)),
		);
	});
}

export class Cluster {
	readonly folder: string;
	readonly port: number;
	readonly #bin: string;

	private constructor(folder: string, port: number, bin: string) {
		this.folder = folder;
		this.port = port;
		this.#bin = bin;
	}

	static async start(): Promise<Cluster> {
		const bin = await binaries();
		const folder = await mkdtemp(join(tmpdir(), 'lugbook-postgres-'));
		if (process.getuid?.() === 0) execFileSync('chown', ['postgres', folder]);
		await chmod(folder, 0o755);
		const cluster = new Cluster(folder, await freePort(), bin);
		const initdb = ['-D', join(folder, 'data'), '-A', 'trust', '-U', 'postgres', '-E', 'UTF8'];
		await asServerUser(join(bin, 'initdb'), [...initdb, '--locale=C.UTF-8', '--no-sync']);
		await cluster.up();
		return cluster;
	}

	static at(folder: string, port: number, bin: string): Cluster {
		return new Cluster(folder, port, bin);
	}

	async up(): Promise<void> {
		const options = [`-p ${this.port}`, `-c unix_socket_directories=${this.folder}`]
			.concat(SETTINGS.map((setting) => `-c ${setting}`))
			.join(' ');
		const log = join(this.folder, 'server.log');
		await this.#control(['-w', '-l', log, '-o', options, 'start']);
	}

	/** @param mode `fast` ends sessions and shuts down in order; `immediate` is a crash */
	async down(mode: 'fast' | 'immediate' = 'fast'): Promise<void> {
		await this.#control(['-m', mode, '-w', 'stop']);
	}

	async remove(): Promise<void> {
		if (existsSync(join(this.folder, 'data', 'postmaster.pid'))) await this.down('immediate');
		await rm(this.folder, { recursive: true, force: true });
	}

	/** Makes an empty database and gives its address. */
	async freshDatabase(): Promise<string> {
		const name = `log_${randomBytes(8).toString('hex')}`;
		await this.query(`create database ${name}`);
		return this.urlOf(name);
	}

	urlOf(database: string): string {
		return `postgres://postgres@127.0.0.1:${this.port}/${database}`;
	}

	/**
	 * Runs a statement as the server's owner.
	 * @returns how many rows it gave or changed
	 */
	async query(text: string): Promise<number> {
		const client = new pg.Client(this.urlOf('postgres'));
		await client.connect();
		try {
			return (await client.query(text)).rowCount ?? 0;
		} finally {
			await client.end();
		}
	}

	get bin(): string {
		return this.#bin;
	}

	async #control(args: readonly string[]): Promise<void> {
		await asServerUser(join(this.#bin, 'pg_ctl'), ['-D', join(this.folder, 'data'), ...args]);
	}
}

/**
 * The one cluster of a test run. The test files run in processes of their own, all children of the runner: the
 * first that needs the cluster starts it, and a watcher stops it when the runner is gone, however it ended.
 */
export async function sharedCluster(): Promise<Cluster> {
	const runner = process.ppid;
	const meeting = join(tmpdir(), `lugbook-postgres-of-${runner}`);
	const card = join(meeting, 'cluster.json');
	try {
		await mkdir(meeting);
	} catch (error) {
		if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
		return await waitForCard(card);
	}
	try {
		const cluster = await Cluster.start();
		watch(runner, cluster, meeting);
		const { folder, port, bin } = cluster;
		await writeFile(`${card}.new`, JSON.stringify({ folder, port, bin }));
		await run('mv', [`${card}.new`, card]);
		return cluster;
	} catch (error) {
		await rm(meeting, { recursive: true, force: true });
		throw error;
	}
}

async function waitForCard(card: string): Promise<Cluster> {
	const deadline = Date.now() + START_TIMEOUT_MS;
	while (Date.now() < deadline) {
		if (existsSync(card)) {
			const { folder, port, bin } = JSON.parse(await readFile(card, 'utf8'));
			return Cluster.at(String(folder), Number(port), String(bin));
		}
		// The other process failed to start it: try ourselves, and fail with the reason.
		if (!(await stat(join(card, '..')).catch(() => null))) return await sharedCluster();
		await sleep(25);
	}
	throw new Error(`no PostgreSQL within ${START_TIMEOUT_MS} ms`);
}

function watch(runner: number, cluster: Cluster, meeting: string): void {
	const user = process.getuid?.() === 0 ? 'runuser -u postgres -- ' : '';
	const script = `cd /; while kill -0 ${runner} 2>/dev/null; do sleep 0.2; done
		${user}'${cluster.bin}/pg_ctl' -D '${cluster.folder}/data' -m immediate -w stop
		rm -rf '${cluster.folder}' '${meeting}'`;
	spawn('/bin/sh', ['-c', script], { stdio: 'ignore', detached: true }).unref();
}
