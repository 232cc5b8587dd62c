import { type Context, calculationVersion, type FieldValue, type Sizing } from '@lugbook/core';
import type { Entry, Log } from '@lugbook/log';
import type { picturesOf as PicturesOfType, SheetRecord } from '@lugbook/report';
import { isFromBuild } from '../build/borrowed.js';
import { type ExchangeBody, exchangeOf } from '../memory.js';
import { type Review, reviewOf } from './acts.js';
import { report } from './report.js';

type PicturesOf = typeof PicturesOfType;

/** The record of an answered exchange as report draws it, or null where the entry is no answer. */
export async function sheetRecordOf(log: Log, entry: Entry): Promise<SheetRecord | null> {
	const { picturesOf } = await report();
	return sheetRecord(entry, await reviewOf(log, entry), { picturesOf, vehicle: null });
}

/**
 * The same, where the review was read before.
 * @param options.vehicle what identifies the vehicle of the build
 */
export function sheetRecord(
	entry: Entry,
	review: Review,
	{ picturesOf, vehicle }: { readonly picturesOf: PicturesOf; readonly vehicle: string | null },
): SheetRecord | null {
	const exchange = exchangeOf(entry);
	if (exchange === null || exchange.request === null || exchange.answer.status !== 'answered') return null;
	const sizing = sizingOf(exchange.answer);
	const context: Context = exchange.request.context;
	const asked = review.asked ?? entry;
	const nameOf = ({ erased, personName }: Entry) => (erased ? null : personName);
	const given = Object.fromEntries(exchange.request.given.map(({ name, value }) => [name, value]));
	return {
		number: entry.number,
		shop: entry.shop,
		build: entry.build,
		vehicle,
		state: review.state,
		stateReason: review.reason,
		decision: null,
		context,
		typed: asked.erased ? null : asked.text,
		inputs: exchange.answer.understood.map(({ said, ...input }) => ({
			...input,
			value: input.value as FieldValue,
			from: isFromBuild({ said }) ? { kind: 'build', entry: null } : { kind: 'said', words: said },
			basis: null,
		})),
		notes: exchange.answer.notes,
		unread: [],
		sizing,
		checks: [],
		deviations: [],
		asked: { name: nameOf(asked), at: asked.at },
		rerun: review.asked === null ? null : { name: nameOf(entry), at: entry.at, askedIn: review.asked.number },
		signatures: review.signatures,
		revision:
			entry.replaces === null
				? null
				: {
						replaces: entry.replaces,
						reason: review.revision?.reason ?? 'asked again',
						affects: (review.revision?.affects ?? []).map((number) => `No. ${number} went on from it`),
					},
		replacedBy: review.replacedBy,
		recomputed: null,
		versions: { calculation: exchange.version, program: calculationVersion },
		place: {
			channel: entry.channel,
			thread: entry.thread,
			hash: entry.hash,
			previousHash: entry.previousHash,
		},
		// Worked out when it is drawn: a book goes through its sheets several times and draws them once.
		get pictures() {
			return picturesOf({ sizing, given, context });
		},
	};
}

function sizingOf(answer: ExchangeBody['answer']): Sizing {
	return {
		topic: answer.topic ?? '',
		headline: answer.headline,
		because: answer.because,
		results: answer.results,
		governedBy: answer.governedBy,
		neighbours: answer.neighbours,
		working: answer.working,
		assumed: answer.assumed,
		tipping: answer.tipping,
		findings: answer.findings,
		cautions: answer.cautions,
		sources: answer.sources,
		chain: answer.chain,
	};
}
