/** The book of a build, filled from what the log holds: what was told, what was answered, what became of it. */

import {
	borrowFrom,
	type Context,
	calculationVersion,
	checkVan,
	labelOf,
	runTopic,
	type System,
	topicNamed,
	type Van,
	vanSummary,
} from '@lugbook/core';
import type { Log } from '@lugbook/log';
import type {
	BuildBook,
	EquipmentItem,
	OwnerLimit,
	Picture,
	picturesOf as PicturesOf,
	SheetRecord,
} from '@lugbook/report';
import { buildSignatureOf } from '../review/build-signature.js';
import { report } from '../review/report.js';
import { sheetRecord } from '../review/sheet.js';
import { Answers, counts, type Part, type Reviewed } from './answers.js';
import { FindingsOfAnswers } from './findings.js';
import {
	climatePart,
	energyPart,
	handoverOf,
	Newest,
	placeOf,
	ratingOf,
	waterPart,
	weightsPart,
} from './parts.js';
import { SigningSoFar } from './signing.js';
import { type Told, toldOf } from './told.js';
import { oneLineOf, runsOf, SizedRuns } from './wiring.js';

export interface BookOptions {
	readonly shop: string;
	readonly build: string;
	/** rule set and units of the book */
	readonly context: Context;
	/** the day it is made, "2026-05-04" */
	readonly date: string;
	/** the answers whose sheets go in, by number; all of them where it is left out */
	readonly part?: Part | null;
	/** hears of every sheet that is read: how many so far, of how many in one going through */
	readonly progress?: (read: number, sheets: number) => void;
}

/** Systems whose answers say in their tipping point what the owner has to keep to. */
const ownersSystems: ReadonlySet<System> = new Set(['energy', 'water', 'climate', 'weight', 'structure']);

/**
 * The book of a build; null where the shop's log has nothing of a build of that name. Sheets are read from the log a
 * page at a time, each time they are gone through.
 */
export async function bookOf(log: Log, options: BookOptions): Promise<BuildBook | null> {
	const { shop, build, context, date } = options;
	const answers = await Answers.take(log, shop, build);
	const told = await toldOf(log, shop, build, answers.upTo);
	const { van } = told;
	if (answers.count === 0 && van.pieces.length === 0 && !(await isKnown(log, shop, build))) return null;
	const gathered = await gather(answers);
	const { newest, sized, findings, cautions, limits } = gathered;
	const { toConfirm } = gathered.signing.signing();
	const summary = vanSummary(van, context);
	const check = van.pieces.length === 0 ? null : checkVan(van, context);
	const runs = runsOf(van, summary, sized);
	const rows = runs.map(({ row }) => row);
	const pictures = await picturesOfNewest(newest, van, context);
	const vehicle = vehicleOf(van, context);
	const head = await log.entry(shop, answers.upTo);
	const whole = await buildSignatureOf(log, shop, build, answers.upTo);
	return {
		shop,
		build,
		vehicle,
		use: useOf(van, context),
		date,
		units: context.units,
		program: calculationVersion,
		log: head === null ? null : { entry: head.number, hash: head.hash },
		signing: { ...gathered.signing.signing(), whole },
		part: options.part ?? null,
		findings: findings.with(check, told),
		notKnown: [
			...(check?.notKnown ?? []).map(({ question }) => question),
			...(toConfirm.values === 0
				? []
				: [
						`${toConfirm.values} assumed values of the sheets are still to be confirmed; each is marked there.`,
					]),
		],
		equipment: equipmentOfBook(told, context),
		runs: rows,
		oneLine: oneLineOf(van, summary, runs, { build, units: context.units }),
		energy: energyPart(summary, newest, pictures, context),
		water: waterPart(van, newest, context),
		climate: climatePart(van, newest, context),
		weights: weightsPart(summary, newest, pictures),
		handover: handoverOf(van, summary, rows, limits, cautions, context),
		sheets: () => sheetsOf(answers, vehicle, options),
	};
}

async function isKnown(log: Log, shop: string, build: string): Promise<boolean> {
	return (await log.find(shop, { build, limit: 1 })).entries.length > 0;
}

interface Gathered {
	readonly newest: Newest;
	readonly sized: SizedRuns;
	readonly findings: FindingsOfAnswers;
	readonly cautions: ReadonlySet<string>;
	readonly limits: readonly OwnerLimit[];
	readonly signing: SigningSoFar;
}

/** Goes through the answers once and keeps of each only what the parts of the book need. */
async function gather(answers: Answers): Promise<Gathered> {
	const newest = new Newest();
	const sized = new SizedRuns();
	const findings = new FindingsOfAnswers();
	const cautions = new Set<string>();
	const limits = new Map<string, OwnerLimit>();
	const signing = new SigningSoFar();
	for await (const reviewed of answers.each()) {
		signing.add(reviewed);
		newest.add(reviewed);
		sized.add(reviewed);
		if (!counts(reviewed)) continue;
		findings.add(reviewed);
		for (const caution of reviewed.exchange.answer.cautions) cautions.add(caution);
		for (const limit of limitsIn(reviewed)) limits.set(limit.what, limit);
	}
	return { newest, sized, findings, cautions, limits: [...limits.values()], signing };
}

/** How far the newest answer of each topic holds; a later one of the same topic takes its place. */
function limitsIn({ entry, exchange }: Reviewed): OwnerLimit[] {
	const topic = entry.topic === null ? null : topicNamed(entry.topic);
	if (topic === null || !ownersSystems.has(topic.system)) return [];
	return exchange.answer.tipping.map(({ label, text }) => ({
		what: `${topic.title}: ${label}`,
		limit: text,
		why: `No. ${entry.number}: ${exchange.answer.headline}`,
	}));
}

async function picturesOfNewest(newest: Newest, van: Van, context: Context): Promise<Picture[]> {
	const { picturesOf } = await report();
	return ['simulate', 'solar', 'payload'].flatMap((topic) => {
		const reviewed = newest.of(topic);
		if (reviewed === null) return topic === 'payload' ? axlesAsTold(van, context, picturesOf) : [];
		return sheetRecord(reviewed.entry, reviewed.review, { picturesOf, vehicle: null })?.pictures ?? [];
	});
}

/** The axles from what was told alone, where nobody asked for the payload yet. */
function axlesAsTold(van: Van, context: Context, picturesOf: typeof PicturesOf): Picture[] {
	const topic = topicNamed('payload');
	if (topic === null || van.pieces.length === 0) return [];
	const given = Object.fromEntries(
		borrowFrom(van, topic, {}, [], context).map(({ name, value }) => [name, value]),
	);
	const outcome = runTopic(topic, given, context);
	return outcome.status === 'answered' ? picturesOf({ sizing: outcome.sizing, given, context }) : [];
}

function vehicleOf(van: Van, context: Context): string | null {
	const body = van.pieces.find(({ kind }) => kind === 'van');
	return body === undefined ? null : ratingOf(body, context);
}

/** Kinds of the description that are no equipment but tell how the van is used. */
const uses: ReadonlySet<string> = new Set(['people', 'place', 'trip']);

function useOf(van: Van, context: Context): BuildBook['use'] {
	return van.pieces.flatMap((piece) => {
		const text = uses.has(piece.kind) ? ratingOf(piece, context) : null;
		return text === null ? [] : [{ label: firstUpper(labelOf(piece)), text }];
	});
}

function firstUpper(text: string): string {
	return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function equipmentOfBook({ van, entryOf }: Told, context: Context): EquipmentItem[] {
	const aboard = van.pieces.filter(({ kind }) => !uses.has(kind));
	return aboard.map((piece) => {
		const { count, unitCount } = piece.values;
		return {
			name: labelOf(piece),
			count: typeof count === 'number' ? count : typeof unitCount === 'number' ? unitCount : 1,
			rating: ratingOf(piece, context),
			place: placeOf(piece, context),
			entry: entryOf.get(piece.id) ?? null,
		};
	});
}

async function* sheetsOf(
	answers: Answers,
	vehicle: string | null,
	{ part, progress }: Pick<BookOptions, 'part' | 'progress'>,
): AsyncGenerator<SheetRecord> {
	const { picturesOf } = await report();
	const count = answers.numbers(part).length;
	let read = 0;
	for await (const { entry, review } of answers.each(part)) {
		read += 1;
		progress?.(read, count);
		const record = sheetRecord(entry, review, { picturesOf, vehicle });
		if (record !== null) yield record;
	}
}
