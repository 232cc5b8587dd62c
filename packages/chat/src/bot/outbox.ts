/**
 * What was taken on and not yet shown, kept in the log's database so that it outlives the process. Each row belongs to
 * one process at a time, by a lease that it renews; a row whose lease has run out is taken over by any other. Rows lie
 * beside the chain, hold the message as typed until its answer is kept in the log, and are gone a minute after it is
 * shown. A person who is forgotten is forgotten here too.
 */

import { createHash } from 'node:crypto';
import type { Log, WriteOptions } from '@lugbook/log';
import { z } from 'zod';
import { commandNames } from '../message.js';
import type { Asked } from './desk.js';

/** Longer than the clocks of two machines are apart, several times the time between two renewals [ms]. */
const LEASE_MS = 15_000;
/** How long a row stays after its answer was shown, for the same delivery reaching another process [ms]. */
const SHOWN_KEPT_MS = 60_000;
/** Waits before an answer is tried again [ms]; the last one goes on until GIVE_UP_AFTER_MS. */
const WAITS_MS = [5000, 30_000, 120_000, 600_000, 3_600_000];
const GIVE_UP_AFTER_MS = 24 * 60 * 60 * 1000;

const rowSchema = z.object({
	state: z.enum(['held', 'waiting', 'shown']),
	/** whose it is, and which of its writes this is: no two rows ever are the same text */
	by: z.string(),
	/** end of the lease, next try, or when to delete, by `state` [ms since 1970] */
	untilMs: z.number(),
	/** when it was taken on [ms since 1970] */
	sinceMs: z.number(),
	tries: z.number(),
	/** where the answer is kept, once it is; its words are then in the log and no longer here */
	entry: z.number().nullable(),
	asked: z
		.object({
			shop: z.string(),
			channel: z.string(),
			thread: z.string().nullable(),
			delivery: z.string(),
			command: z.enum(commandNames),
			text: z.string(),
			fields: z.record(z.string(), z.string()).optional(),
			build: z.string().optional(),
			user: z.object({
				id: z.string(),
				name: z.string().optional(),
				roles: z.array(z.string()).readonly().optional(),
			}),
		})
		.nullable(),
	place: z.unknown(),
});
type Row = z.infer<typeof rowSchema>;

/** A row that this process holds. */
export interface Held {
	readonly key: string;
	readonly asked: Asked;
	readonly place: unknown;
	/** true when an earlier try, here or in another process, may have shown the answer */
	readonly mayBeShown: boolean;
	/** how often it was tried before */
	readonly tries: number;
	/** which of this process's holdings of the row it is: after it lost the row it may get it again */
	readonly hold: number;
}

interface Own {
	readonly row: Row;
	readonly text: string;
	readonly hold: number;
}

/** Messages that were noted and won't be tried any more. */
type GivenUp = Pick<Asked, 'shop' | 'delivery'>;

export class Outbox {
	readonly #shelf: string;
	readonly #held = new Map<string, Own>();
	/** the last write of each row that is under way: a row is written by one at a time */
	readonly #turns = new Map<string, Promise<unknown>>();
	#writes = 0;

	constructor(
		private readonly log: Log,
		platform: string,
		private readonly process: string,
		private readonly nowMs: () => number,
		private readonly leaseMs = LEASE_MS,
	) {
		this.#shelf = shelfOf(platform);
	}

	/**
	 * Notes a message; durable when it resolves.
	 * @returns the row to work on, or null when another process has it or has answered it
	 */
	async note(asked: Asked, place: unknown): Promise<Held | null> {
		const key = keyOf(asked);
		const nowMs = this.nowMs();
		const row = { state: 'held' as const, sinceMs: nowMs, tries: 0, entry: null, asked, place };
		if (await this.#swap(key, null, row, nowMs + this.leaseMs)) return this.#heldAt(key, false);
		const text = await this.log.getSetting(this.#shelf, key);
		if (text === null) return null;
		const there = rowOf(text);
		// The repetition is the chance to show what could not be shown.
		if (there?.state !== 'waiting') return null;
		return (await this.#takeOver(key, text, there)) ? this.#heldAt(key, true) : null;
	}

	/** Rows left behind or waiting whose time has come, now held by this process; and those that are past hope. */
	async due(max = 20): Promise<{ readonly held: readonly Held[]; readonly givenUp: readonly GivenUp[] }> {
		const nowMs = this.nowMs();
		const found: Held[] = [];
		const givenUp: GivenUp[] = [];
		// At once and not one by one: on a busy day they are thousands.
		await this.log.dropSettings(this.#shelf, { from: SHOWN.from, below: shownUntil(nowMs + 1) });
		for (const { key, value } of await this.log.settingsOf(this.#shelf, SHOWN)) {
			if (found.length >= max) break;
			const row = rowOf(value);
			if (row === null || row.asked === null) {
				await this.log.swapSetting(this.#shelf, key, value, null);
				continue;
			}
			if (row.untilMs > nowMs || this.#held.has(key)) continue;
			if (nowMs - row.sinceMs <= GIVE_UP_AFTER_MS) {
				if (await this.#takeOver(key, value, row)) found.push(this.#heldAt(key, true));
			} else if (await this.log.swapSetting(this.#shelf, key, value, null)) {
				givenUp.push({ shop: row.asked.shop, delivery: row.asked.delivery });
			}
		}
		return { held: found, givenUp };
	}

	/** Renews the leases of this process. */
	async renew(): Promise<void> {
		for (const key of [...this.#held.keys()]) await this.#inTurn(key, () => this.#renewed(key));
	}

	/**
	 * Whether a row is still this process's: another one takes it over once its lease has run out, as while this process
	 * stood still. Asks the database only where the lease is near its end.
	 */
	async isOurs(held: Held): Promise<boolean> {
		await this.#inTurn(held.key, () => this.#renewed(held.key));
		return this.#ownOf(held) !== undefined;
	}

	/** The answer, or what is said of its progress, stands in another place from now on. */
	async moved(held: Held, place: unknown): Promise<void> {
		await this.#inTurn(held.key, async () => {
			const own = this.#ownOf(held);
			if (own === undefined) return;
			await this.#swap(held.key, own.text, { ...own.row, place }, this.nowMs() + this.leaseMs, own);
		});
	}

	/** The answer stands before the people. Undone by a power cut, the next process looks whether it does. */
	async shown(held: Held): Promise<void> {
		await this.#leave(held, () => doneRow, SHOWN_KEPT_MS, { lasting: false });
	}

	/**
	 * The answer could not be shown now: this or another process tries again.
	 * @param entry where it is kept, if it is
	 * @param waitMs before the next try; longer from try to try unless said [ms]
	 */
	async waiting(held: Held, entry: number | null, waitMs?: number): Promise<void> {
		const pause = waitMs ?? WAITS_MS[Math.min(held.tries, WAITS_MS.length - 1)] ?? 0;
		const after = (row: Row) => {
			const kept = entry ?? row.entry;
			const asked = kept === null || row.asked === null ? row.asked : withoutWords(row.asked as Asked);
			return { ...row, state: 'waiting' as const, tries: row.tries + 1, entry: kept, asked };
		};
		await this.#leave(held, after, pause);
	}

	/** An answer that waited was shown by another message, as when somebody asked for it. */
	async shownOtherwise(shop: string, entry: number): Promise<void> {
		for (const { key, value } of await this.log.settingsOf(this.#shelf, SHOWN)) {
			const row = rowOf(value);
			if (row?.state !== 'waiting' || row.entry !== entry || row.asked?.shop !== shop) continue;
			await this.#swap(key, value, doneRow, this.nowMs() + SHOWN_KEPT_MS);
		}
	}

	/** Rows of all processes that are not shown yet. */
	async open(): Promise<number> {
		const rows = await this.log.settingsOf(this.#shelf, SHOWN);
		return rows.filter(({ value }) => rowOf(value)?.asked != null).length;
	}

	async #takeOver(key: string, text: string, row: Row): Promise<boolean> {
		return await this.#swap(key, text, { ...row, state: 'held' }, this.nowMs() + this.leaseMs);
	}

	#heldAt(key: string, mayBeShown: boolean): Held {
		const { row, hold } = this.#held.get(key) as Own;
		return { key, asked: row.asked as Asked, place: row.place, mayBeShown, tries: row.tries, hold };
	}

	#ownOf({ key, hold }: Held): Own | undefined {
		const own = this.#held.get(key);
		return own?.hold === hold ? own : undefined;
	}

	async #swap(
		key: string,
		from: string | null,
		row: Omit<Row, 'by' | 'untilMs'>,
		untilMs: number,
		{ hold, lasting }: { readonly hold?: number } & WriteOptions = {},
	): Promise<boolean> {
		this.#writes += 1;
		const write = this.#writes;
		const after: Row = { ...row, by: `${this.process} ${write}`, untilMs };
		const text = textOf(after);
		if (!(await this.log.swapSetting(this.#shelf, key, from, text, { lasting }))) {
			// A write whose answer was lost on the way was done all the same.
			if ((await this.log.getSetting(this.#shelf, key)) !== text) return false;
		}
		if (after.state === 'held') this.#held.set(key, { row: after, text, hold: hold ?? write });
		return true;
	}

	async #leave(
		held: Held,
		after: (row: Row) => Omit<Row, 'by' | 'untilMs'>,
		keptMs: number,
		options?: WriteOptions,
	): Promise<void> {
		const { key } = held;
		await this.#inTurn(key, async () => {
			const own = this.#ownOf(held);
			if (own === undefined) return;
			try {
				await this.#swap(key, own.text, after(own.row), this.nowMs() + keptMs, options);
			} finally {
				// Not before: this process would take a row that it is just leaving for one that was left behind.
				this.#held.delete(key);
			}
		});
	}

	async #renewed(key: string): Promise<void> {
		const own = this.#held.get(key);
		if (own === undefined || own.row.untilMs - this.nowMs() > this.leaseMs / 2) return;
		const untilMs = this.nowMs() + this.leaseMs;
		if (!(await this.#swap(key, own.text, own.row, untilMs, own))) this.#held.delete(key);
	}

	/** Two writes of one row at once would each go by the text before, and the slower one would fail. */
	async #inTurn(key: string, write: () => Promise<void>): Promise<void> {
		const before = this.#turns.get(key) ?? Promise.resolve();
		const own = before.then(write);
		const settled = own
			.catch(() => undefined)
			.finally(() => {
				if (this.#turns.get(key) === settled) this.#turns.delete(key);
			});
		this.#turns.set(key, settled);
		await own;
	}
}

/** What is left of a row when nothing is to be done any more: that this delivery is answered. */
const doneRow = {
	state: 'shown' as const,
	sinceMs: 0,
	tries: 0,
	entry: null,
	asked: null,
	place: null,
};

/**
 * The text of a row. Its state stands first, and of a row that is done when it may go, so that the database can tell
 * the thousands of these apart by the order of their texts.
 */
function textOf({ state, ...others }: Row): string {
	if (state !== 'shown') return JSON.stringify({ state, ...others });
	return `${shownUntil(others.untilMs)},${JSON.stringify(others).slice(1)}`;
}

function shownUntil(untilMs: number): string {
	return `{"state":"shown","until":"${String(Math.max(0, Math.floor(untilMs))).padStart(16, '0')}"`;
}

/** The texts of all rows that are done. */
const SHOWN = { from: '{"state":"shown"', below: '{"state":"shown#' } as const;

/** Numbers of the answers that wait to be shown in a channel, oldest first. */
export async function unshownIn(
	log: Log,
	{ platform, shop, channel }: { readonly platform: string; readonly shop: string; readonly channel: string },
): Promise<number[]> {
	const rows = (await log.settingsOf(shelfOf(platform), SHOWN)).flatMap(({ value }) => rowOf(value) ?? []);
	return rows
		.filter(({ state, asked }) => state === 'waiting' && asked?.shop === shop && asked.channel === channel)
		.flatMap(({ entry }) => entry ?? [])
		.toSorted((a, b) => a - b);
}

/** Empties the rows of a person who is to be forgotten; what waits for them is not shown any more. */
export async function forgetUnshown(
	log: Log,
	{
		platform,
		shop,
		personId,
	}: { readonly platform: string; readonly shop: string; readonly personId: string },
): Promise<void> {
	const shelf = shelfOf(platform);
	const emptied = textOf({ ...doneRow, by: 'forgotten', untilMs: 0 });
	for (const { key } of await log.settingsOf(shelf, SHOWN)) {
		// Whoever holds the row may be changing it: look again until it is empty.
		for (;;) {
			const text = await log.getSetting(shelf, key);
			const asked = text === null ? null : rowOf(text)?.asked;
			if (asked?.shop !== shop || asked.user.id !== personId) break;
			if (await log.swapSetting(shelf, key, text, emptied)) break;
		}
	}
}

/** Whether settings under this name are messages that wait, of whatever platform. */
export function isShelf(name: string): boolean {
	return name.startsWith(shelfOf(''));
}

/** The shop under which the rows lie: no platform names one so. */
function shelfOf(platform: string): string {
	return `outbox of ${platform}`;
}

/** The delivery is known to the log: it gives the answer again without the words. */
function withoutWords({ shop, channel, thread, delivery, command, user }: Asked): Asked {
	return { shop, channel, thread, delivery, command, text: '', user: { id: user.id } };
}

/** Short whatever the platform's ids are. */
function keyOf({ shop, delivery }: Asked): string {
	return createHash('sha256').update(`${shop} ${delivery}`).digest('hex');
}

function rowOf(text: string): Row | null {
	try {
		const parsed = rowSchema.safeParse(JSON.parse(text));
		return parsed.success ? parsed.data : null;
	} catch {
		return null;
	}
}
