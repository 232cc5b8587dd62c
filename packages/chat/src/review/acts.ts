/** What people do about answers, and where that leaves each: a fold over the entries that follow and replace it. */

import { isOutdated, type Van } from '@lugbook/core';
import { type Entry, type EntryKind, type FindOptions, LIMITS, type Log } from '@lugbook/log';
import type { SheetSignature, SheetState } from '@lugbook/report';
import { z } from 'zod';
import type { Answer } from '../answer.js';
import { whyOutdated } from '../build/outdated.js';
import { vanOf } from '../build/van.js';
import { exchangeOf } from '../memory.js';
import { askedBefore } from './asker.js';

/** What people do about an answer; each is an entry of its own that follows it. */
const actKinds = ['signed', 'rejected', 'commented', 'asked'] as const satisfies readonly EntryKind[];
export type ActKind = (typeof actKinds)[number];

export function isAct(kind: EntryKind): kind is ActKind {
	return actKinds.some((one) => one === kind);
}

/** What the chain keeps of an act. Its words are typed text and lie in the erasable part. */
const actBodySchema = z.object({
	meaning: z.string(),
	ownQuestion: z.boolean(),
	/** of what asks the lead: it takes the signature back that stood until then */
	withdraws: z.boolean().optional(),
});

/** Whether an act takes a signature back: it asks the lead about the answer again. */
export function isWithdrawal({ kind, body }: Entry): boolean {
	const parsed = kind === 'asked' ? actBodySchema.safeParse(body) : null;
	return parsed?.success === true && parsed.data.withdraws === true;
}

const acts: Readonly<Record<ActKind, SheetSignature['act']>> = {
	signed: 'signed',
	rejected: 'rejected',
	commented: 'commented',
	asked: 'asked of the lead',
};

/** What must have been done about an answer for it to be in a state. */
const actsFor: Partial<Record<SheetState, readonly ActKind[]>> = {
	signed: ['signed'],
	rejected: ['rejected'],
	// Only a signature goes out of date.
	'out of date': ['signed'],
	'asked of the lead': ['asked'],
};
/** Acts that are gone through to find the answers in a state; in a shop with more, these are no longer rare. */
const ACTS_MAX = 5000;

/** How far down a thread of follow-ups the answers are looked for that an answer rests on. */
const BASIS_DEPTH = 50;
/** How many answers that rest on another are told at most. */
const RESTING_MAX = 200;

/** Where an answer stands in review. */
export interface Review {
	readonly state: SheetState;
	/** the words of whoever rejected it, or why it is out of date; or null */
	readonly reason: string | null;
	readonly signatures: readonly SheetSignature[];
	readonly replacedBy: number | null;
	/** what is otherwise than in the answer that it replaces; null where it replaces none */
	readonly revision: Revised | null;
	/** where it is an unchanged question worked out again from its build: the entry under which it was asked */
	readonly asked: Entry | null;
}

/** What a revision changed, and which answers had gone on from the old one. */
interface Revised {
	readonly reason: string;
	readonly affects: readonly number[];
}

/** Everything about one answer that its state depends on. */
interface Standing {
	/** acts about it, oldest first */
	readonly acts: readonly Entry[];
	readonly replacedBy: number | null;
	/** the entry by which an answer that it rests on ceased to stand, or null */
	readonly basisLostAt: number | null;
	/** what it took from the build and the build no longer says, or null */
	readonly buildChanged: string | null;
}

const isDecision = ({ kind }: Entry) => kind === 'signed' || kind === 'rejected';

/** Replaced stays replaced; the last decision counts; a signature is out of date once the ground under it is gone. */
function stateOf({ acts: done, replacedBy, basisLostAt, buildChanged }: Standing): SheetState {
	if (replacedBy !== null) return 'replaced';
	const last = done.findLast((one) => isDecision(one) || isWithdrawal(one));
	if (last === undefined)
		return done.some(({ kind }) => kind === 'asked') ? 'asked of the lead' : 'not checked';
	if (last.kind === 'rejected') return 'rejected';
	if (last.kind === 'asked') return 'asked of the lead';
	const isBasisLost = basisLostAt !== null && basisLostAt > last.number;
	return isBasisLost || buildChanged !== null ? 'out of date' : 'signed';
}

export async function reviewOf(log: Log, entry: Entry): Promise<Review> {
	return (await reviewsOf(log, entry.shop, [entry])).get(entry.number) as Review;
}

/**
 * Numbers of all answers that are or were in a state of review, newest first: their acts are few, and lead to them
 * however many answers there are.
 * @param personId whose acts alone count; everybody's unless said
 * @returns null where the acts are more than can be gone through at once
 */
export async function answersOnceIn(
	log: Log,
	shop: string,
	state: SheetState,
	personId?: string,
): Promise<number[] | null> {
	const kinds = actsFor[state];
	const about: FindOptions =
		kinds === undefined ? { replaces: 'any', kinds: ['exchange'] } : { kinds: [...kinds] };
	const numbers = new Set<number>();
	let cursor: string | null = null;
	let acts = 0;
	do {
		const page: { entries: Entry[]; next: string | null } = await log.find(shop, {
			...about,
			personId,
			limit: LIMITS.pageEntries,
			cursor,
		});
		for (const { follows, replaces } of page.entries) {
			const number = kinds === undefined ? replaces : follows;
			if (number !== null) numbers.add(number);
		}
		acts += page.entries.length;
		cursor = page.next;
	} while (cursor !== null && acts < ACTS_MAX);
	return cursor === null ? [...numbers].sort((a, b) => b - a) : null;
}

/** The reviews of a page of answers, read together. */
export async function reviewsOf(
	log: Log,
	shop: string,
	answers: readonly Entry[],
): Promise<ReadonlyMap<number, Review>> {
	const known = await withBasis(log, shop, answers);
	const numbers = [...known.keys()];
	const done = new Map<number, Entry[]>();
	for (const entry of await everyOne(log, shop, 'follows', numbers, actKinds)) {
		const about = done.get(entry.follows ?? 0);
		if (about === undefined) done.set(entry.follows ?? 0, [entry]);
		else about.push(entry);
	}
	const replacing = new Map<number, number>();
	for (const { replaces, number } of await everyOne(log, shop, 'replaces', numbers, ['exchange'])) {
		// The first that replaced it: later ones can only have been about that one.
		if (replaces !== null && !replacing.has(replaces)) replacing.set(replaces, number);
	}
	const own = (number: number): Standing => ({
		acts: done.get(number) ?? [],
		replacedBy: replacing.get(number) ?? null,
		basisLostAt: null,
		buildChanged: null,
	});
	const changedIn = await buildChanges(log, shop, answers);
	const revised = await revisions(log, shop, answers, known);
	const asked = await askedBefore(log, shop, answers);
	return new Map(
		answers.map((entry) => {
			const basis = basisOf(entry, known).flatMap((number) => {
				const lostAt = lostBy(own(number));
				return lostAt === null ? [] : [{ number, lostAt }];
			});
			const latest = basis.toSorted((a, b) => b.lostAt - a.lostAt)[0];
			const standing: Standing = {
				...own(entry.number),
				basisLostAt: latest?.lostAt ?? null,
				buildChanged: changedIn.get(entry.number) ?? null,
			};
			const about = done.get(entry.number) ?? [];
			const last = about.findLast(({ kind }) => kind === 'rejected');
			const state = stateOf(standing);
			const reasons: Partial<Record<SheetState, string | null>> = {
				rejected: last === undefined ? null : wordsOf(last),
				'out of date':
					standing.buildChanged !== null || latest === undefined
						? standing.buildChanged
						: `It was signed before No. ${latest.number}, on which it rests, ceased to stand (No. ${latest.lostAt}).`,
			};
			const review: Review = {
				state,
				reason: reasons[state] ?? null,
				signatures: about.map(signatureOf),
				replacedBy: standing.replacedBy,
				revision: revised.get(entry.number) ?? null,
				asked: asked.get(entry.number) ?? null,
			};
			return [entry.number, review];
		}),
	);
}

/** What the answers that replace others changed. */
async function revisions(
	log: Log,
	shop: string,
	answers: readonly Entry[],
	known: ReadonlyMap<number, Entry>,
): Promise<ReadonlyMap<number, Revised>> {
	const replaced = [...new Set(answers.flatMap(({ replaces }) => replaces ?? []))];
	if (replaced.length === 0) return new Map();
	const old = new Map(known);
	for (const entry of await exchanges(
		log,
		shop,
		replaced.filter((number) => !known.has(number)),
	))
		old.set(entry.number, entry);
	const goneOn = (await everyOne(log, shop, 'follows', replaced, ['exchange'])).filter(
		({ state, follows, replaces }) => state === 'answered' && follows !== replaces,
	);
	return new Map(
		answers.flatMap((entry): [number, Revised][] => {
			const before = entry.replaces === null ? undefined : old.get(entry.replaces);
			const [was, is] = [before === undefined ? null : exchangeOf(before), exchangeOf(entry)];
			if (was === null || is === null) return [];
			const affects = goneOn.filter(({ follows }) => follows === entry.replaces).map(({ number }) => number);
			return [[entry.number, { reason: whatChanged(was.answer, is.answer), affects }]];
		}),
	);
}

/** "one-way length was 15 ft, is 20 ft": the inputs that differ, whether given or assumed. */
function whatChanged(was: Answer, is: Answer): string {
	const inputs = ({ understood, assumed }: Answer) =>
		new Map([
			...assumed.map(({ name, label, text }) => [name, { label, text: `${text} (assumed)` }] as const),
			...understood.map(({ name, label, text }) => [name, { label, text }] as const),
		]);
	const [before, after] = [inputs(was), inputs(is)];
	const changes = [...new Set([...before.keys(), ...after.keys()])].flatMap((name) => {
		const [old, now] = [before.get(name), after.get(name)];
		if (old?.text === now?.text) return [];
		return `${now?.label ?? old?.label} was ${old?.text ?? 'not given'}, is ${now?.text ?? 'not given'}`;
	});
	return changes.length === 0 ? 'asked again with the same inputs' : changes.join('; ');
}

/** Exchanges by their numbers. */
async function exchanges(log: Log, shop: string, numbers: readonly number[]): Promise<Entry[]> {
	const found: Entry[] = [];
	for (let start = 0; start < numbers.length; start += LIMITS.pageEntries) {
		const some = numbers.slice(start, start + LIMITS.pageEntries);
		const { entries } = await log.find(shop, {
			numbers: some,
			kinds: ['exchange'],
			limit: LIMITS.pageEntries,
		});
		found.push(...entries);
	}
	return found;
}

/** What each answer took from its build and the build no longer says. Each build is read once. */
async function buildChanges(
	log: Log,
	shop: string,
	answers: readonly Entry[],
): Promise<ReadonlyMap<number, string>> {
	const vans = new Map<string, Van>();
	const found = new Map<number, string>();
	for (const entry of answers) {
		const exchange = exchangeOf(entry);
		const rests = exchange?.rests ?? [];
		const context = exchange?.request?.context;
		if (entry.build === null || context === undefined || rests.length === 0) continue;
		const van = vans.get(entry.build) ?? (await vanOf(log, shop, entry.build));
		vans.set(entry.build, van);
		const gone = rests.filter((rest) => isOutdated(van, rest, context));
		if (gone.length > 0) found.set(entry.number, `Since then: ${whyOutdated(van, gone, context)}.`);
	}
	return found;
}

/** The entry by which an answer ceased to stand, or null where it stands. */
function lostBy(standing: Standing): number | null {
	if (standing.replacedBy !== null) return standing.replacedBy;
	const last = standing.acts.findLast(isDecision);
	return last?.kind === 'rejected' ? last.number : null;
}

/** The answers, and those they go on from, and those these go on from. */
async function withBasis(log: Log, shop: string, answers: readonly Entry[]): Promise<Map<number, Entry>> {
	const known = new Map(answers.map((entry) => [entry.number, entry]));
	let wanted = answers.flatMap(({ follows }) => follows ?? []);
	for (let depth = 0; depth < BASIS_DEPTH && wanted.length > 0; depth += 1) {
		const missing = [...new Set(wanted)].filter((number) => !known.has(number));
		wanted = [];
		for (const entry of await exchanges(log, shop, missing)) {
			known.set(entry.number, entry);
			if (entry.follows !== null) wanted.push(entry.follows);
		}
	}
	return known;
}

/** The answers that an answer rests on. What it replaces is not among them, but what that rested on is. */
function basisOf(entry: Entry, known: ReadonlyMap<number, Entry>): number[] {
	const found: number[] = [];
	let here: Entry | undefined = entry;
	for (let depth = 0; depth < BASIS_DEPTH && here !== undefined; depth += 1) {
		const below: Entry | undefined = here.follows === null ? undefined : known.get(here.follows);
		if (below !== undefined && here.replaces !== below.number) found.push(below.number);
		here = below;
	}
	return found;
}

/** The answers that rest on one, with those that rest on these, oldest first. */
export async function restingOn(log: Log, shop: string, number: number): Promise<Entry[]> {
	const found = new Map<number, Entry>();
	let from = [number];
	for (let depth = 0; depth < BASIS_DEPTH && from.length > 0 && found.size < RESTING_MAX; depth += 1) {
		const above = await everyOne(log, shop, 'follows', from, ['exchange']);
		const fresh = above.filter(
			(entry) => !found.has(entry.number) && entry.state === 'answered' && entry.replaces !== entry.follows,
		);
		for (const entry of fresh) found.set(entry.number, entry);
		from = fresh.map((entry) => entry.number);
	}
	return [...found.values()].sort((a, b) => a.number - b.number).slice(0, RESTING_MAX);
}

/** Every entry that follows or replaces one of these, oldest first. */
async function everyOne(
	log: Log,
	shop: string,
	by: 'follows' | 'replaces',
	numbers: readonly number[],
	kinds: readonly EntryKind[],
): Promise<Entry[]> {
	const found: Entry[] = [];
	for (let start = 0; start < numbers.length; start += LIMITS.pageEntries) {
		const about = numbers.slice(start, start + LIMITS.pageEntries);
		let cursor: string | null = null;
		do {
			const page: { entries: Entry[]; next: string | null } = await log.find(shop, {
				[by]: about,
				kinds,
				order: 'oldest',
				limit: LIMITS.pageEntries,
				cursor,
			});
			found.push(...page.entries);
			cursor = page.next;
		} while (cursor !== null);
	}
	return found.sort((a, b) => a.number - b.number);
}

/** An act about an answer as it is shown with it. */
export function signatureOf(entry: Entry): SheetSignature {
	const body = actBodySchema.safeParse(entry.body);
	const words = wordsOf(entry);
	const meaning = body.success ? body.data.meaning : entry.kind;
	return {
		act: isWithdrawal(entry) ? 'withdrawn' : acts[entry.kind as ActKind],
		name: entry.erased ? null : entry.personName,
		at: entry.at,
		meaning: words === null ? meaning : `${meaning}: ${words}`,
		entry: entry.number,
		ownQuestion: body.success && body.data.ownQuestion,
	};
}

/** What was typed behind the number: "reject 12 wrong length" has "wrong length". */
function wordsOf(entry: Entry): string | null {
	if (entry.erased) return null;
	const words = /\d+[\s,:]+(\S[\s\S]*)$/.exec(entry.text)?.[1]?.trim();
	return words === undefined || words === '' ? null : words;
}
