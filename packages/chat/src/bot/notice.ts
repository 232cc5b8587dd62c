import type { Log } from '@lugbook/log';
import type { Part } from '../message.js';

const WORDS =
	'I keep what is addressed to me here, with the name of who asked, in the log of this shop. I read nothing else. Your name and words can be erased on request; the calculation stays.';

/** places whose notice is known to have been given */
const REMEMBERED_MAX = 10_000;

/** The first message in a place says what is kept: once for a channel, whichever process answers. */
export class Notices {
	readonly #given = new Set<string>();

	constructor(
		private readonly log: Log,
		private readonly nowMs: () => number,
	) {}

	/** @returns the notice where it has not been given yet; from now on it counts as given */
	async take(shop: string, channel: string): Promise<Part | null> {
		const place = `${shop} ${channel}`;
		if (this.#given.has(place)) return null;
		const at = new Date(this.nowMs()).toISOString();
		const isFirst = await this.log.swapSetting(shop, keyOf(channel), null, at);
		if (this.#given.size >= REMEMBERED_MAX) this.#given.clear();
		this.#given.add(place);
		return isFirst ? { kind: 'list', text: WORDS, fold: false } : null;
	}

	/** It did not reach anybody. */
	async giveBack(shop: string, channel: string): Promise<void> {
		this.#given.delete(`${shop} ${channel}`);
		await this.log.setSetting(shop, keyOf(channel), null);
	}
}

const keyOf = (channel: string): string => `told what is kept in ${channel}`;
