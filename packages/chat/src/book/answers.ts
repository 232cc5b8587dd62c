/** The answers of a build as they stood at one moment: a book goes through them several times and must find the same. */

import type { Entry, Log } from '@lugbook/log';
import { type ExchangeBody, exchangeOf } from '../memory.js';
import { type Review, reviewsOf } from '../review/acts.js';

/** Entries read at a time: memory stays bounded however long the log is. */
const PAGE = 100;

/** One answer with its review. */
export interface Reviewed {
	readonly entry: Entry;
	readonly exchange: ExchangeBody;
	readonly review: Review;
}

/** Answers from one number to another, both among them. */
export interface Part {
	readonly from: number;
	readonly to: number;
}

/** The answers of a build up to an entry, with the reviews as they were when it was taken. */
export class Answers {
	readonly log: Log;
	readonly shop: string;
	readonly build: string;
	/** the newest entry of the shop that counts */
	readonly upTo: number;
	readonly #reviews = new Map<number, Review>();

	private constructor(log: Log, shop: string, build: string, upTo: number) {
		this.log = log;
		this.shop = shop;
		this.build = build;
		this.upTo = upTo;
	}

	/** Reads the reviews once; only they are held. */
	static async take(log: Log, shop: string, build: string): Promise<Answers> {
		const head = await log.head(shop);
		const answers = new Answers(log, shop, build, head?.number ?? 0);
		for await (const page of answers.#pages()) {
			for (const [number, review] of await reviewsOf(log, shop, page)) answers.#reviews.set(number, review);
		}
		return answers;
	}

	get count(): number {
		return this.#reviews.size;
	}

	/** Numbers of the answers, oldest first; of a part those that lie in it. */
	numbers(part: Part | null = null): number[] {
		const all = [...this.#reviews.keys()];
		return part === null ? all : all.filter((number) => number >= part.from && number <= part.to);
	}

	/** Oldest first, a page of them in memory at a time; of a part nothing else is read. */
	async *each(part: Part | null = null): AsyncGenerator<Reviewed> {
		const numbers = this.numbers(part);
		for (let start = 0; start < numbers.length; start += PAGE) {
			const page = numbers.slice(start, start + PAGE);
			const { entries } = await this.log.find(this.shop, { numbers: page, order: 'oldest', limit: PAGE });
			for (const entry of entries) {
				const exchange = exchangeOf(entry);
				const review = this.#reviews.get(entry.number);
				if (exchange !== null && review !== undefined) yield { entry, exchange, review };
			}
		}
	}

	async *#pages(): AsyncGenerator<Entry[]> {
		const { log, shop, build, upTo } = this;
		let cursor: string | null = null;
		do {
			const page: { entries: Entry[]; next: string | null } = await log.find(shop, {
				build,
				kinds: ['exchange'],
				states: ['answered'],
				order: 'oldest',
				limit: PAGE,
				cursor,
			});
			const entries = page.entries.filter(({ number }) => number <= upTo);
			if (entries.length > 0) yield entries;
			cursor = entries.length < page.entries.length ? null : page.next;
		} while (cursor !== null);
	}
}

/** Whether an answer still counts: neither replaced nor rejected. */
export function counts({ review }: Reviewed): boolean {
	return review.state !== 'replaced' && review.state !== 'rejected';
}
