import { type Context, changed, checkVan, emptyVan, type Van } from '@lugbook/core';
import { changesFor, describe as readDescription } from '@lugbook/language';
import { describe, expect, test } from 'vitest';
import type { DescriptionCase } from './case.js';
import { descriptionCases } from './index.js';

// Invented vans as different people write them. The faults planted in them are facts of the trade.

/** Share of all components that must be read with every value right. */
const readShare = 0.95;

interface Read {
	readonly van: Van;
	readonly context: Context;
	readonly unread: readonly string[];
}

function read({ text, region }: DescriptionCase): Read {
	const base: Context = { region, units: region === 'us' ? 'us' : 'metric', language: 'en' };
	const description = readDescription(text, base);
	const told = changesFor(emptyVan, description);
	// The shop's rule set is the one of the channel; a description may not change it by the by.
	const context = { ...description.context, region };
	return { van: changed(emptyVan, told.changes), context, unread: description.unread };
}

function agrees(expected: number | string | boolean, got: number | string | boolean | undefined): boolean {
	if (typeof expected === 'number' && typeof got === 'number') {
		return Math.abs(got - expected) <= 0.01 * Math.abs(expected) + 1e-9;
	}
	return expected === got;
}

/** What was missed of a case, each by name. */
function missesOf(one: DescriptionCase, { van }: Read): string[] {
	const used = new Set<string>();
	const pieces = one.expected.flatMap(([kind, values = {}]) => {
		const candidates = van.pieces.filter((piece) => piece.kind === kind && !used.has(piece.id));
		const fits = candidates.find((piece) =>
			Object.entries(values).every(([name, value]) => agrees(value, piece.values[name])),
		);
		if (fits !== undefined) {
			used.add(fits.id);
			return [];
		}
		return [
			`${kind} ${JSON.stringify(values)}; read ${JSON.stringify(candidates.map((piece) => piece.values))}`,
		];
	});
	const absent = (one.absent ?? [])
		.filter((kind) => !van.absent.includes(kind))
		.map(
			(kind) =>
				`no ${kind}; read ${van.pieces.some((piece) => piece.kind === kind) ? 'as there' : 'nothing'}`,
		);
	return [...pieces, ...absent];
}

function componentsOf(one: DescriptionCase): number {
	return one.expected.length + (one.absent?.length ?? 0);
}

/** Pieces of a kind that the description does not tell of. */
function invented(one: DescriptionCase, { van }: Read): string[] {
	const counts = new Map<string, number>();
	for (const [kind] of one.expected) counts.set(kind, (counts.get(kind) ?? 0) + 1);
	return van.pieces
		.filter(({ kind }) => {
			const left = counts.get(kind) ?? 0;
			counts.set(kind, left - 1);
			return left <= 0;
		})
		.map(({ id, values }) => `${id} ${JSON.stringify(values)}`);
}

test('there are at least thirty, of 60 to 250 words', () => {
	expect(descriptionCases.length).toBeGreaterThanOrEqual(30);
	for (const { name, text } of descriptionCases) {
		const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
		expect({ name, words, isFit: words >= 60 && words <= 250 }).toEqual({ name, words, isFit: true });
	}
	expect(new Set(descriptionCases.map(({ name }) => name)).size).toBe(descriptionCases.length);
});

test('components are read', () => {
	const misses = descriptionCases.flatMap((one) =>
		missesOf(one, read(one)).map((miss) => `${one.name}: ${miss}`),
	);
	const all = descriptionCases.reduce((sum, one) => sum + componentsOf(one), 0);
	const share = 1 - misses.length / all;
	console.info(`components read: ${all - misses.length} of ${all} (${(share * 100).toFixed(1)} %)`);
	console.info(misses.join('\n'));
	expect(misses.length <= (1 - readShare) * all ? [] : misses).toEqual([]);
});

test('hardly any equipment is invented', () => {
	const all = descriptionCases.flatMap((one) =>
		invented(one, read(one)).map((piece) => `${one.name}: ${piece}`),
	);
	console.info(`invented: ${all.length}\n${all.join('\n')}`);
	expect(all.length).toBeLessThanOrEqual(6);
});

describe.each(descriptionCases.map((one) => [one.name, one] as const))('%s', (_, one) => {
	const known = read(one);
	const { findings } = checkVan(known.van, known.context);

	test('every danger is found and none is false', () => {
		const dangers = [
			...new Set(findings.filter(({ severity }) => severity === 'danger').map(({ code }) => code)),
		];
		expect(dangers.toSorted()).toEqual([...one.dangers].toSorted());
	});

	test('the other planted faults are found', () => {
		const codes = findings.map(({ code }) => code);
		expect((one.faults ?? []).filter((code) => !codes.includes(code))).toEqual([]);
	});

	test('each finding names what it rests on and its source', () => {
		for (const finding of findings) {
			expect(finding.rests.length).toBeGreaterThan(0);
			expect(finding.source).not.toBe('');
			const ids = known.van.pieces.map(({ id }) => id);
			expect(finding.rests.filter((id) => !ids.includes(id))).toEqual([]);
		}
	});
});
