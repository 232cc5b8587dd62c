import type { WriteStream } from 'node:tty';

const width = 30;

/** How far work has come, in one line that is written over; nothing where nobody sits at a terminal. */
export class Bar {
	readonly #stream: Pick<WriteStream, 'isTTY' | 'write'>;
	readonly #title: string;
	#shown = -1;

	constructor(stream: Pick<WriteStream, 'isTTY' | 'write'>, title: string) {
		this.#stream = stream;
		this.#title = title;
	}

	/** @param share of the work that is done, from 0 to 1 */
	show(share: number): void {
		const percent = Math.floor(share * 100);
		if (!this.#stream.isTTY || percent === this.#shown) return;
		this.#shown = percent;
		const full = Math.floor(share * width);
		this.#stream.write(`\r${this.#title} [${'#'.repeat(full)}${'.'.repeat(width - full)}] ${percent} %`);
	}

	clear(): void {
		if (this.#shown >= 0) this.#stream.write(`\r\u001b[K`);
		this.#shown = -1;
	}
}
