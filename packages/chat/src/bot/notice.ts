import type { Language } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import type { Part } from '../message.js';
import { inLanguage, NOTICE_OF_WHAT_IS_KEPT } from './words.js';

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
	async take(shop: string, channel: string, language: Language): Promise<Part | null> {
		const place = `${shop} ${channel}`;
		if (this.#given.has(place)) return null;
		const at = new Date(this.nowMs()).toISOString();
		const isFirst = await this.log.swapSetting(shop, keyOf(channel), null, at);
		if (this.#given.size >= REMEMBERED_MAX) this.#given.clear();
		this.#given.add(place);
		const text = inLanguage(language, NOTICE_OF_WHAT_IS_KEPT);
		return isFirst ? { kind: 'list', text, fold: false } : null;
	}

	/** It did not reach anybody. */
	async giveBack(shop: string, channel: string): Promise<void> {
		this.#given.delete(`${shop} ${channel}`);
		await this.log.setSetting(shop, keyOf(channel), null);
	}
}

const keyOf = (channel: string): string => `told what is kept in ${channel}`;
