import type { AnyTopic, FieldValue, Sizing } from '@lugbook/core';
import { runTopic, topicNamed } from '@lugbook/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { htmlTokens, textOfHtml } from '../../gallery/html.js';
import {
	demoSheet,
	demoSheets,
	feedSheet,
	ft,
	inverterSheet,
	metricSheet,
	payloadSheet,
	thinSheet,
	us,
} from '../../gallery/records.js';
import { plain } from '../plain.js';
import { assumptionCount } from './blocks.js';
import { checksOf } from './checks.js';
import { picturesOf } from './pictures.js';
import type { SheetRecord } from './record.js';
import { drawPictures, sheetHtml, sheetText } from './sheet.js';
import { computedText, leftText, roundingOf, unitText } from './units.js';

const squeezed = (text: string) => text.replaceAll(/\s+/g, ' ');

/** What a person who follows the calculation by hand must find. */
function mustBeThere(record: SheetRecord): string[] {
	const { sizing } = record;
	const topic = topicNamed(sizing.topic) as AnyTopic;
	return [
		`No. ${record.number}`,
		record.shop,
		record.build as string,
		topic.title,
		topic.purpose,
		topic.method,
		sizing.headline,
		...(sizing.because === null ? [] : [sizing.because]),
		...record.inputs.flatMap(({ label, from }) => [label, ...(from.kind === 'said' ? [from.words] : [])]),
		...sizing.assumed.flatMap(({ label, text, why }) => [label, text, why]),
		...sizing.working.flatMap(({ label, formula, substituted, source }) => [
			label,
			formula,
			substituted,
			source,
		]),
		...sizing.results.flatMap(({ label, text }) => [label, text]),
		...sizing.neighbours.flatMap(({ choice, text }) => [choice, text]),
		...sizing.tipping.map(({ text }) => text),
		...sizing.findings.flatMap(({ text, source }) => [text, source]),
		...sizing.cautions,
		...sizing.sources,
		...sizing.chain.map(({ headline }) => headline),
		record.asked.name as string,
		...record.signatures.flatMap(({ name, meaning }) => [name as string, meaning]),
		record.place.hash,
		record.place.previousHash,
		`version ${record.versions.calculation}`,
	];
}

describe('the calculation sheet', () => {
	test.each(demoSheets.map((record) => [record.number, record] as const))(
		'No. %d holds everything a person needs to follow it by hand, in text and in HTML',
		async (_, record) => {
			const text = squeezed(sheetText(record));
			const html = squeezed(textOfHtml(sheetHtml(record, await drawPictures(record))));
			for (const piece of mustBeThere(record)) {
				expect(text).toContain(squeezed(piece));
				expect(html).toContain(squeezed(piece));
			}
		},
	);

	test('has its sections in the order of an engineer, numbered', () => {
		const titles = [...sheetText(feedSheet).matchAll(/^(\d+) (.+)\n=+$/gm)].map(
			([, number, title]) => `${number} ${title}`,
		);
		expect(titles).toEqual([
			'1 Purpose',
			'2 Inputs',
			'3 Assumptions',
			'4 Method',
			'5 Working',
			'6 Result',
			'7 Checks against limits',
			'8 How close it is',
			'9 Findings',
			'10 Cautions and remaining risks',
			'11 Asked, computed, checked, signed',
			'12 Revision',
			'13 Versions and place in the log',
		]);
	});

	test('says at its top how many assumptions are still to be confirmed; one that is given in place of assumed is none any more', () => {
		const { all, open } = assumptionCount(feedSheet);
		expect(open).toBeGreaterThan(0);
		const assumed = feedSheet.sizing.assumed.find(({ confirm }) => confirm);
		const given = demoSheet(129, 'wire', {
			currentA: [40, '40A'],
			voltageV: [12, '12V'],
			lengthM: [15 * ft, '15 ft'],
			engineBay: [false, 'not in the engine bay'],
			[assumed?.name ?? '']: [assumed?.value as FieldValue, 'as found'],
		});
		expect(assumptionCount(given)).toEqual({ all: all - 1, open: open - 1 });
		const text = sheetText(feedSheet);
		const line = `${all} assumptions, ${open} STILL TO BE CONFIRMED`;
		expect(text.indexOf(line)).toBeGreaterThan(0);
		expect(text.indexOf(line)).toBeLessThan(text.indexOf('1 Purpose'));
		expect(text.replaceAll(/\s+/g, ' ')).toContain(
			'An assumption is confirmed by asking again with the value',
		);
	});

	test('shows every danger by its word above the first section, and again among the findings', () => {
		const text = sheetText(thinSheet);
		const [danger] = thinSheet.sizing.findings;
		expect(danger?.severity).toBe('danger');
		const first = text.indexOf('DANGER: ');
		expect(first).toBeGreaterThan(0);
		expect(first).toBeLessThan(text.indexOf('1 Purpose'));
		expect(text.indexOf('DANGER', text.indexOf('9 Findings'))).toBeGreaterThan(0);
	});

	test('puts dangers before warnings before notes', () => {
		const sizing: Sizing = {
			...feedSheet.sizing,
			findings: (['danger', 'warning', 'note'] as const).map((severity) => ({
				code: severity,
				severity,
				text: `the ${severity} text`,
				source: 'practice',
			})),
		};
		const text = sheetText({ ...feedSheet, sizing });
		const findings = text.slice(text.indexOf('9 Findings'));
		const places = ['the danger text', 'the warning text', 'the note text'].map((piece) =>
			findings.indexOf(piece),
		);
		expect(places).toEqual(places.toSorted((a, b) => a - b));
		expect(Math.min(...places)).toBeGreaterThan(0);
	});

	test('names a person who was forgotten as erased, and a question too', () => {
		const text = squeezed(
			sheetText({ ...feedSheet, typed: null, asked: { ...feedSheet.asked, name: null } }),
		);
		expect(text).toContain('The question as typed was erased on request.');
		expect(text).toContain('name erased on request');
		expect(text).not.toContain('Asked in these words');
	});

	test('says what is not yet done', () => {
		expect(squeezed(sheetText(metricSheet))).toContain(
			'Not yet checked, not yet signed. State: not checked.',
		);
		expect(sheetText(feedSheet)).not.toContain('Not yet');
	});

	test('says so where one signed an answer to their own question', () => {
		const signatures = feedSheet.signatures.map((one) => ({ ...one, ownQuestion: true }));
		expect(squeezed(sheetText({ ...feedSheet, signatures }))).toContain('signed by the one who asked');
	});

	test('tells what a recomputation found', () => {
		const recomputed = {
			version: '0.2.0',
			at: '2026-06-01T08:00:00.000Z',
			differences: ['drop 2.7 % was 2.6 %'],
		};
		expect(squeezed(sheetText({ ...feedSheet, recomputed }))).toContain('DIFFERENT: drop 2.7 % was 2.6 %');
		expect(squeezed(sheetText({ ...feedSheet, recomputed: { ...recomputed, differences: [] } }))).toContain(
			'the same numbers',
		);
	});

	test('of a topic that this program no longer knows still shows the record', () => {
		const sizing = { ...feedSheet.sizing, topic: 'sail' };
		const text = squeezed(sheetText({ ...feedSheet, sizing }));
		expect(text).toContain('No. 128: sail');
		expect(text).toContain(sizing.headline);
	});

	test('lines of text are no longer than asked, but for single long words', () => {
		for (const width of [40, 60, 80]) {
			for (const line of sheetText(feedSheet, width).split('\n')) {
				// A hash is one word of 64.
				if (!/\S{40}/.test(line)) expect(line.length, line).toBeLessThanOrEqual(width);
			}
		}
	});

	test('shows the working of a sizing it rests on', () => {
		const [wire] = inverterSheet.sizing.chain as [Sizing];
		const text = squeezed(sheetText(inverterSheet));
		const rests = text.slice(text.indexOf('Calculations it rests on'));
		for (const { formula, substituted } of wire.working) {
			expect(rests).toContain(squeezed(formula));
			expect(rests).toContain(squeezed(substituted));
		}
	});
});

describe('checks against limits', () => {
	test('come from inequalities of the working, with the margin between the numbers put in', () => {
		const working = [
			{
				...feedSheet.sizing.working[0],
				label: 'device',
				formula: 'Imin ≤ Ir ≤ Iz',
				substituted: '50 A ≤ 60 A ≤ 81.6 A',
			},
			{ ...feedSheet.sizing.working[0], label: 'floor', formula: 'V ≥ Vmin', substituted: '11.2 V ≥ 11.5 V' },
			{ ...feedSheet.sizing.working[0], label: 'mixed', formula: 'a ≤ b', substituted: '2 m ≤ 7 ft' },
		] as Sizing['working'];
		const sizing = { ...feedSheet.sizing, working, results: [], assumed: [] };
		expect(checksOf({ checks: [], inputs: [], sizing })).toEqual([
			{ what: 'device: Imin ≤ Ir', value: '50 A', limit: 'at most 60 A', margin: '10 A', holds: true },
			{ what: 'device: Ir ≤ Iz', value: '60 A', limit: 'at most 81.6 A', margin: '21.6 A', holds: true },
			{
				what: 'floor: V ≥ Vmin',
				value: '11.2 V',
				limit: 'at least 11.5 V',
				margin: 'beyond by 0.3 V',
				holds: false,
			},
		]);
	});

	test('come from a limit of the same name as a result', () => {
		const drop = (record: SheetRecord) =>
			checksOf(record).find(({ what }) => what.includes('allowed voltage drop'));
		expect(drop(feedSheet)).toMatchObject({ limit: 'at most 3 %', holds: true });
		expect(drop(thinSheet)).toMatchObject({
			holds: false,
			margin: expect.stringMatching(/^beyond by 13\.2\d? %$/),
		});
	});

	test('come from results that say what is left to a rating', () => {
		expect(checksOf(payloadSheet).map(({ what }) => what)).toEqual([
			'left to the GVWR',
			'left to the front axle rating',
			'left to the rear axle rating',
		]);
	});

	test('the margin of the allowed drop is never more than there is', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 60, noNaN: true }),
				fc.double({ min: 0.5, max: 10, noNaN: true }),
				(currentA, lengthM) => {
					const record = demoSheet(1, 'wire', { currentA: [currentA, 'x'], lengthM: [lengthM, 'y'] });
					const check = checksOf(record).find(({ what }) => what.includes('allowed voltage drop'));
					const drop = record.sizing.results.find(({ name }) => name === 'dropPercent')?.value as number;
					expect(Number(check?.margin.replace(' %', ''))).toBeLessThanOrEqual(3 - drop + 1e-6);
				},
			),
			{ numRuns: 40 },
		);
	});
});

describe('shown and computed values', () => {
	test.each([
		[41.6667, 'A', '41.7 A', 'rounded up'],
		[41.6667, 'A', '41.6 A', 'rounded down'],
		[40, 'A', '40 A', 'not rounded'],
		[4.572, 'm', '15 ft', 'not rounded'],
		[5.1, 'm', '16.7 ft', 'rounded down'],
		[34.6875, 'degC', '95 °F', 'rounded up'],
		[0.03, '1', '3 %', 'not rounded'],
		[1600, 'Wh', '1.6 kWh', 'not rounded'],
		[21.15, 'mm²', '21.15 mm²', 'not rounded'],
		['4 AWG', null, '4 AWG', null],
		[12, 'A', 'about a dozen', null],
		[12, 'A', '12 bananas', null],
	])('%s %s shown as "%s": %s', (value, unit, text, rounding) => {
		expect(roundingOf(value, unit, text)).toBe(rounding);
	});

	test.each([
		['degC', '°C'],
		['W/m2K', 'W/m²K'],
		['m3/h', 'm³/h'],
		['mm4', 'mm⁴'],
		['kWh/m2', 'kWh/m²'],
		['1', ''],
		[null, ''],
		['Ah', 'Ah'],
	])('base unit %s reads %s', (unit, text) => {
		expect(unitText(unit)).toBe(text);
	});

	test('computed values carry six figures', () => {
		expect(computedText(0.0080363012, 'ohm')).toBe('0.0080363 ohm');
		expect(computedText(Number.POSITIVE_INFINITY, 'm')).toBe('without limit');
		expect(computedText(true, null)).toBe('yes');
	});

	test('what is left is the difference of the figures shown, or less', () => {
		expect(leftText(0.5456, 'm', { value: '15 ft', limit: 'up to 16.7 ft' })).toBe('1.7 ft');
		expect(leftText(4.61, 'A', { value: '40 A', limit: 'up to 44.6 A' })).toBe('4.6 A');
		expect(leftText(4.5, 'A', { value: '40 A', limit: 'up to 44.6 A' })).toBe('4.5 A');
		expect(leftText(1, 'A', { value: '40 A', limit: 'up to 12 ft' })).toBe(null);
		expect(leftText(1, 'A', { value: 'a lot', limit: 'more' })).toBe(null);
	});
});

describe('pictures of an answer', () => {
	test('a run shows its size and its neighbours with the drops that their own answers give', () => {
		const given = { currentA: 40, voltageV: 12, lengthM: 15 * ft };
		const [picture] = feedSheet.pictures;
		expect(picture?.kind).toBe('drop');
		if (picture?.kind !== 'drop') return;
		expect(picture.sizes.map(({ name, role }) => [name, role])).toEqual([
			['6 AWG', 'smaller'],
			['4 AWG', 'chosen'],
			['2 AWG', 'larger'],
		]);
		for (const { name, drop } of picture.sizes) {
			const outcome = runTopic(topicNamed('wire') as AnyTopic, { ...given, size: name }, us);
			if (outcome.status !== 'answered') throw new Error('not answered');
			const own = outcome.sizing.results.find((result) => result.name === 'dropPercent')?.value as number;
			expect(drop * 100).toBeCloseTo(own, 9);
		}
	});

	test('a run in parallel and one by power are drawn too', () => {
		const parallel = demoSheet(1, 'wire', { currentA: [300, 'x'], lengthM: [2, 'y'], parallel: [2, 'z'] });
		expect(parallel.pictures).toHaveLength(1);
		const byPower = demoSheet(1, 'wire', { powerW: [480, 'x'], lengthM: [3, 'y'], size: ['6 AWG', 'z'] });
		expect(byPower.pictures[0]).toMatchObject({ kind: 'drop', currentA: 40, voltageV: 12 });
	});

	test('a payload shows the axles with the ratings given', () => {
		const [picture] = payloadSheet.pictures;
		expect(picture).toMatchObject({ kind: 'axles' });
		if (picture?.kind !== 'axles') return;
		expect(picture.rows.map(({ name }) => name)).toEqual(['front axle', 'rear axle', 'whole van']);
		const result = (name: string) => payloadSheet.sizing.results.find((one) => one.name === name)?.value;
		expect(picture.rows.map(({ loadKg }) => loadKg)).toEqual([
			result('frontAxle'),
			result('rearAxle'),
			result('total'),
		]);
	});

	test('a simulation shows the day and the week of the lowest charge, as the answer says it', () => {
		const sheet = demoSheet(1, 'simulate', {
			place: ['denver', 'x'],
			month: [1, 'x'],
			periodH: [14 * 24, 'x'],
			unitAh: [200, 'x'],
			chemistry: ['lifepo4', 'x'],
			arrayW: [400, 'x'],
			needWh: [900, 'x'],
		});
		const lowest = sheet.sizing.results.find(({ name }) => name === 'lowestCharge')?.value as number;
		expect(sheet.pictures.map(({ kind }) => kind)).toEqual(['charge', 'charge']);
		expect(sheet.pictures.map((one) => (one.kind === 'charge' ? one.cases[0]?.charge.length : 0))).toEqual([
			25, 169,
		]);
		for (const picture of sheet.pictures) {
			if (picture.kind !== 'charge') continue;
			expect(Math.min(...(picture.cases[0]?.charge ?? []))).toBeCloseTo(lowest, 12);
		}
		// The week holds the day, hour for hour.
		const [day, week] = sheet.pictures.map((one) => (one.kind === 'charge' ? one.cases[0]?.charge : [])) as [
			number[],
			number[],
		];
		expect(week.join().includes(day.join())).toBe(true);
	});

	test('a simulation of another version is not drawn beside numbers that it would not give', () => {
		const given = { place: 'denver', month: 1, periodH: 72, unitAh: 200, chemistry: 'lifepo4', arrayW: 400 };
		const input = { ...given, needWh: 900 };
		const outcome = runTopic(topicNamed('simulate') as AnyTopic, input, us);
		if (outcome.status !== 'answered') throw new Error('not answered');
		const { sizing } = outcome;
		expect(picturesOf({ sizing, given: input, context: us })).toHaveLength(2);
		const results = sizing.results.map((one) =>
			one.name === 'lowestCharge' ? { ...one, value: (one.value as number) - 0.01 } : one,
		);
		expect(picturesOf({ sizing: { ...sizing, results }, given: input, context: us })).toEqual([]);
	});

	test('an array with a need shows the year; without a need nothing goes out and nothing is drawn', () => {
		const sheet = demoSheet(1, 'solar', {
			place: ['denver', 'x'],
			month: [6, 'x'],
			arrayW: [400, 'x'],
			needWh: [1500, 'x'],
		});
		const perDay = sheet.sizing.results.find(({ name }) => name === 'energyPerDay')?.value;
		const [picture] = sheet.pictures;
		expect(picture).toMatchObject({ kind: 'months', outWh: Array.from({ length: 12 }, () => 1500) });
		if (picture?.kind === 'months') expect(picture.inWh[5]).toBe(perDay);
		// Sizing an array for a need: the month asked for is covered by it, to the watt.
		const sized = demoSheet(1, 'solar', { place: ['denver', 'x'], month: [1, 'x'], needWh: [1500, 'x'] });
		const [forNeed] = sized.pictures;
		if (forNeed?.kind !== 'months') throw new Error('no picture of the months');
		expect(forNeed.inWh[0]).toBeGreaterThanOrEqual(1500);
		expect(demoSheet(1, 'solar', { place: ['denver', 'x'], arrayW: [400, 'x'] }).pictures).toEqual([]);
	});

	test('a gas spring shows the hand over the swing, cold, rated and hot', async () => {
		const sheet = demoSheet(1, 'strut', {
			massKg: [12, 'x'],
			lidLengthM: [0.9, 'x'],
			lidMountM: [0.3, 'x'],
			bodyMountBelowM: [0.25, 'x'],
		});
		const [picture] = sheet.pictures;
		expect(picture).toMatchObject({ kind: 'swing' });
		if (picture?.kind !== 'swing') return;
		expect(picture.curves).toHaveLength(3);
		expect(picture.curves[1]?.temperatureC).toBe(20);
		const [figure] = await drawPictures(sheet);
		expect(figure?.alt).toContain('Force of the hand');
	});

	test('other topics have none', () => {
		const { sizing, context } = demoSheet(1, 'tank', { freshL: [100, 'x'], people: [2, 'y'] });
		expect(picturesOf({ sizing, given: {}, context })).toEqual([]);
	});
});

const hostile = fc.oneof(
	fc.constantFrom(
		'<script>alert(1)</script>',
		'"><img src=x onerror=alert(1)>',
		"' onload='alert(1)",
		'</td></table><style>*{display:none}</style>',
		'&lt;b&gt; &amp;',
		'javascript:alert(1)',
		']]><!--',
		'W'.repeat(5000),
		'\u0000\u0008\u001b[31m',
		'\u202e01 A\u2066',
		'line\nline\r\nline',
		'\ud800',
	),
	fc.string({ unit: 'binary', maxLength: 40 }),
);

/** A record with strange text in every place that a person can fill. */
const hostileRecords: fc.Arbitrary<SheetRecord> = fc
	.array(hostile, { minLength: 24, maxLength: 24 })
	.map((texts) => {
		let next = 0;
		const text = () => texts[next++ % texts.length] as string;
		const sizing: Sizing = {
			...thinSheet.sizing,
			headline: text(),
			because: text(),
			findings: [{ code: 'x', severity: 'danger', text: text(), source: text() }],
			cautions: [text()],
			sources: [text()],
			chain: [{ ...feedSheet.sizing, headline: text(), chain: [] }],
			neighbours: [{ choice: text(), passes: false, text: text() }],
			working: thinSheet.sizing.working.map((step) => ({
				...step,
				label: text(),
				formula: text(),
				substituted: text(),
			})),
			assumed: thinSheet.sizing.assumed.map((one) => ({ ...one, text: text(), why: text() })),
		};
		return {
			...thinSheet,
			shop: text(),
			build: text(),
			vehicle: text(),
			stateReason: text(),
			decision: text(),
			typed: text(),
			notes: [text()],
			unread: [text()],
			deviations: [text()],
			sizing,
			inputs: thinSheet.inputs.map((input) => ({
				...input,
				text: text(),
				from: { kind: 'said', words: text() },
			})),
			asked: { name: text(), at: text() },
			rerun: null,
			signatures: thinSheet.signatures.map((one) => ({ ...one, name: text(), meaning: text() })),
			place: { ...thinSheet.place, channel: text(), thread: text() },
		};
	});

const allowedTags = new Set(
	'h1 h2 h3 h4 p dl div dt dd table colgroup col thead tbody tr th td ul li figure svg title desc g path text br'.split(
		' ',
	),
);
const allowedAttributes = new Set(
	'id class scope data-label xmlns width height viewbox role aria-label font-family d fill stroke stroke-width stroke-dasharray x y font-size font-weight text-anchor transform'.split(
		' ',
	),
);

describe('the sheet as HTML', () => {
	test('escapes whatever people wrote: only our own tags and attributes stand in it', async () => {
		const figures = await drawPictures(thinSheet);
		fc.assert(
			fc.property(hostileRecords, (record) => {
				const html = sheetHtml(record, figures);
				expect(html.isWellFormed()).toBe(true);
				const open: string[] = [];
				for (const token of htmlTokens(html)) {
					if (token.kind === 'text') continue;
					expect(allowedTags, token.name).toContain(token.name);
					for (const name of Object.keys(token.attributes)) expect(allowedAttributes, name).toContain(name);
					if (token.kind === 'close') expect(open.pop()).toBe(token.name);
					else if (!token.alone) open.push(token.name);
				}
				expect(open).toEqual([]);
				// Nothing of what was written is lost.
				const shown = squeezed(textOfHtml(html));
				expect(shown).toContain(squeezed(plain(record.sizing.headline)).trim());
				expect(shown).toContain(squeezed(plain(record.typed as string)).trim());
			}),
			{ numRuns: 60 },
		);
	});

	test('the text form holds no control character but the line feed', () => {
		fc.assert(
			fc.property(hostileRecords, (record) => {
				expect(sheetText(record)).not.toMatch(/(?!\n)\p{Cc}|\p{Bidi_Control}/u);
			}),
			{ numRuns: 60 },
		);
	});
});
