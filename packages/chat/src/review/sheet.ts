import { type Context, calculationVersion, type FieldValue, type Sizing } from '@lugbook/core';
import type { Entry, Log } from '@lugbook/log';
import type { SheetRecord } from '@lugbook/report';
import { type ExchangeBody, exchangeOf } from '../memory.js';
import { reviewOf } from './acts.js';
import { report } from './report.js';

/** The record of an answered exchange as report draws it, or null where the entry is no answer. */
export async function sheetRecordOf(log: Log, entry: Entry): Promise<SheetRecord | null> {
	const exchange = exchangeOf(entry);
	if (exchange === null || exchange.request === null || exchange.answer.status !== 'answered') return null;
	const { picturesOf } = await report();
	const review = await reviewOf(log, entry);
	const sizing = sizingOf(exchange.answer);
	const context: Context = exchange.request.context;
	const given = Object.fromEntries(exchange.request.given.map(({ name, value }) => [name, value]));
	return {
		number: entry.number,
		shop: entry.shop,
		build: entry.build,
		vehicle: null,
		state: review.state,
		stateReason: review.reason,
		decision: null,
		context,
		typed: entry.erased ? null : entry.text,
		inputs: exchange.answer.understood.map(({ said, ...input }) => ({
			...input,
			value: input.value as FieldValue,
			from: { kind: 'said', words: said },
			basis: null,
		})),
		notes: exchange.answer.notes,
		unread: [],
		sizing,
		confirmed: [],
		checks: [],
		deviations: [],
		asked: { name: entry.erased ? null : entry.personName, at: entry.at },
		signatures: review.signatures,
		revision:
			entry.replaces === null
				? null
				: { replaces: entry.replaces, reason: 'asked again', affects: [], told: [] },
		replacedBy: review.replacedBy,
		recomputed: null,
		versions: { calculation: exchange.version, program: calculationVersion },
		place: {
			channel: entry.channel,
			thread: entry.thread,
			hash: entry.hash,
			previousHash: entry.previousHash,
		},
		pictures: picturesOf({ sizing, given, context }),
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
