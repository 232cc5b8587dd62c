import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

async function asRoot(command: string, args: readonly string[]): Promise<void> {
	const isRoot = process.getuid?.() === 0;
	try {
		await (isRoot ? run(command, [...args]) : run('sudo', ['-n', command, ...args]));
	} catch (error) {
		throw new Error(`this test mounts a small file system and needs root or a sudo without password`, {
			cause: error,
		});
	}
}

/** A file system in memory that can be made small, full and read-only without hurting anything else. */
export class SmallDisk {
	readonly folder: string;

	private constructor(folder: string) {
		this.folder = folder;
	}

	static async mount(sizeKiB: number): Promise<SmallDisk> {
		const folder = await mkdtemp(join(tmpdir(), 'lugbook-disk-'));
		await asRoot('mount', ['-t', 'tmpfs', '-o', `size=${sizeKiB}k,mode=0777`, 'tmpfs', folder]);
		return new SmallDisk(folder);
	}

	async giveTo(user: string): Promise<void> {
		await asRoot('chown', [user, this.folder]);
	}

	/** @param options of mount, e.g. `ro`, `rw` or `size=4096k` */
	async change(options: string): Promise<void> {
		await asRoot('mount', ['-o', `remount,${options}`, this.folder]);
	}

	async unmount(): Promise<void> {
		await asRoot('umount', [this.folder]);
		await rm(this.folder, { recursive: true, force: true });
	}
}
