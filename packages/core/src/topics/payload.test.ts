import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { payload } from './payload.js';

const context = { ...defaultContext, units: 'metric' } as const;
const outcomeOf = (given: Readonly<Record<string, unknown>>) => runTopic(payload, given, context);
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
const shown = (sizing: Sizing, name: string) => sizing.results.find((result) => result.name === name)?.value;
const value = (sizing: Sizing, name: string) => shown(sizing, name) as number;
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);
const finding = (sizing: Sizing, code: string) => sizing.findings.find((one) => one.code === code);

/** A van as weighed; nobody aboard, so that the sums are those of the ledger alone. */
const van = {
	wheelbaseM: 3.665,
	frontEmptyKg: 1350,
	rearEmptyKg: 1050,
	gvwrKg: 3500,
	frontRatingKg: 1860,
	rearRatingKg: 2240,
	centreHeightM: 0.8,
	people: 0,
};
const items = [
	{ name: 'water', massKg: 75, positionM: 2.9 },
	{ name: 'battery', massKg: 60, positionM: 2.4 },
	{ name: 'bed', massKg: 90, positionM: 4.2 },
	{ name: 'gear', massKg: 150, positionM: 0.9 },
];

describe('worked by hand', () => {
	test('moments about the front axle', () => {
		const sizing = answered({ ...van, items });
		expect(value(sizing, 'total')).toBeCloseTo(2775, 9);
		expect(value(sizing, 'frontAxle')).toBeCloseTo(1486.39, 2);
		expect(value(sizing, 'rearAxle')).toBeCloseTo(1288.61, 2);
		expect(value(sizing, 'payloadLeft')).toBeCloseTo(725, 9);
		expect(value(sizing, 'rearReserve')).toBeCloseTo(2240 - 1288.61, 2);
		expect(shown(sizing, 'verdict')).toBe('within the ratings');
		expect(sizing.headline).toBe('2775 kg in all: 373 kg left on the front axle, 725 kg to the GVWR');
	});

	test('a tank full and empty', () => {
		const sizing = answered({ ...van, items: [{ name: 'fresh', volumeL: 100, massKg: 8, positionM: 4 }] });
		expect(value(sizing, 'total')).toBe(2508);
		expect(value(sizing, 'totalTanksEmpty')).toBe(2408);
		expect(value(sizing, 'rearAxle') - value(sizing, 'rearAxleTanksEmpty')).toBeCloseTo((100 * 4) / 3.665, 9);
	});

	test('people sit in the cab, at 75 kg each unless weighed', () => {
		const one = answered({ ...van, people: undefined });
		expect(value(one, 'total')).toBe(2475);
		expect(one.assumed.find((each) => each.name === 'people')?.confirm).toBe(true);
		const two = answered({ ...van, people: 2, personKg: 90 });
		expect(value(two, 'rearAxle')).toBeCloseTo(1050 + (180 * 1.0) / 3.665, 9);
	});
});

describe('balances', () => {
	test('axles and sides add to the total whatever is aboard', () => {
		fc.assert(
			fc.property(
				fc.array(
					fc.record({
						name: fc.constantFrom('a', 'b', 'c'),
						massKg: fc.double({ min: 0, max: 200, noNaN: true }),
						volumeL: fc.double({ min: 0.1, max: 150, noNaN: true }),
						positionM: fc.double({ min: -1, max: 5, noNaN: true }),
						sideM: fc.double({ min: 0, max: 1, noNaN: true }),
						side: fc.constantFrom('left', 'right'),
					}),
					{ minLength: 1, maxLength: 8 },
				),
				(lines) => {
					const sizing = answered({ ...van, people: 2, items: lines });
					const total = value(sizing, 'total');
					expect(value(sizing, 'frontAxle') + value(sizing, 'rearAxle')).toBeCloseTo(total, 6);
					expect(value(sizing, 'left') + value(sizing, 'right')).toBeCloseTo(total, 6);
					const rating = (name: string, limit: number) => value(sizing, name) > limit;
					expect(codes(sizing).includes('gvwr-exceeded')).toBe(rating('total', 3500));
					expect(codes(sizing).includes('rear-axle-overloaded')).toBe(rating('rearAxle', 2240));
					expect(codes(sizing).includes('front-axle-overloaded')).toBe(rating('frontAxle', 1860));
				},
			),
		);
	});
});

describe('a rear axle over its rating with full tanks', () => {
	const loaded = {
		...van,
		rearRatingKg: 1500,
		items: [
			{ name: 'fresh tank', volumeL: 120, positionM: 4.1 },
			{ name: 'batteries', massKg: 160, positionM: 3.9 },
			{ name: 'kitchen', massKg: 140, positionM: 2.6 },
			{ name: 'bikes', massKg: 60, positionM: 5.0 },
		],
	};
	const sizing = answered(loaded);
	const removing = sizing.results.find((result) => result.name === 'rearClearByRemoving');
	const moving = sizing.results.find((result) => result.name === 'rearClearByMoving');

	test('is a danger with the numbers that clear it', () => {
		expect(sizing.findings[0]).toMatchObject({ severity: 'danger', code: 'rear-axle-overloaded' });
		expect(value(sizing, 'rearExcess')).toBeCloseTo(value(sizing, 'rearAxle') - 1500, 9);
		expect(sizing.headline).toMatch(/^Rear axle \d+ kg over its rating/);
		expect(finding(sizing, 'rear-axle-overloaded')?.text).toMatch(
			/leave out \d+ kg of .*; move .* [\d.]+ m forward/,
		);
	});

	test('leaving out so much clears it, a kilogram less does not', () => {
		const name = removing?.label.replace('leave out of ', '');
		const less = (kg: number) =>
			answered({
				...loaded,
				items: loaded.items.map((line) => {
					if (line.name !== name) return line;
					return 'volumeL' in line
						? { ...line, volumeL: (line.volumeL as number) - kg }
						: { ...line, massKg: (line.massKg as number) - kg };
				}),
			});
		const kg = removing?.value as number;
		expect(codes(less(kg + 1e-6))).not.toContain('rear-axle-overloaded');
		expect(codes(less(kg - 1))).toContain('rear-axle-overloaded');
	});

	test('moving it so far forward clears it, a centimetre less does not', () => {
		const name = moving?.label.replace('move ', '');
		const moved = (m: number) =>
			answered({
				...loaded,
				items: loaded.items.map((line) =>
					line.name === name ? { ...line, positionM: line.positionM - m } : line,
				),
			});
		const m = moving?.value as number;
		expect(codes(moved(m + 1e-6))).not.toContain('rear-axle-overloaded');
		expect(codes(moved(m - 0.01))).toContain('rear-axle-overloaded');
	});

	test('moving forward is not offered where the front axle could not take it', () => {
		const tight = answered({ ...loaded, frontRatingKg: value(sizing, 'frontAxle') + 1 });
		expect(shown(tight, 'rearClearByMoving')).toBeUndefined();
		expect(codes(tight)).not.toContain('front-axle-overloaded');
	});

	test('many small things: none alone clears it', () => {
		const small = answered({
			...van,
			rearRatingKg: 1100,
			items: Array.from({ length: 30 }, (_, index) => ({ name: `box ${index}`, massKg: 10, positionM: 4 })),
		});
		expect(finding(small, 'rear-axle-overloaded')?.text).toContain('No single item clears it');
	});

	test('people are not left out or stowed elsewhere', () => {
		const crew = answered({ ...van, frontRatingKg: 1500, people: 3, personKg: 110, rearSeatM: 1.2 });
		expect(codes(crew)).toContain('front-axle-overloaded');
		expect(finding(crew, 'front-axle-overloaded')?.text).not.toContain('of people');
	});
});

describe('findings', () => {
	test('over the GVWR', () => {
		const over = answered({ ...van, gvwrKg: 2700, items });
		expect(finding(over, 'gvwr-exceeded')).toMatchObject({ severity: 'danger' });
		expect(finding(over, 'gvwr-exceeded')?.text).toContain('leave 75 kg out');
		expect(over.headline).toContain('75 kg over the GVWR');
		expect(codes(answered({ ...van, items }))).not.toContain('gvwr-exceeded');
	});

	test('the rating that is reached first is named', () => {
		const tight = answered({ ...van, rearRatingKg: 1300, items });
		expect(tight.headline).toBe('2775 kg in all: 11 kg left on the rear axle, 725 kg to the GVWR');
		expect(tight.tipping[0]?.value).toBeCloseTo(1300 - 1288.61, 2);
		expect(codes(tight)).toContain('little-payload-left');
		const gross = answered({ ...van, gvwrKg: 2800, items });
		expect(gross.headline).toBe('2775 kg in all: 25 kg left to the GVWR');
	});

	test('little left', () => {
		expect(codes(answered({ ...van, gvwrKg: 2800, items }))).toContain('little-payload-left');
		expect(codes(answered({ ...van, items }))).not.toContain('little-payload-left');
	});

	test('one side heavy, and its corner', () => {
		const left = answered({ ...van, items: [{ name: 'kitchen', massKg: 250, positionM: 3, side: 'left' }] });
		expect(codes(left)).toContain('side-heavy');
		expect(finding(left, 'side-heavy')?.text).toContain('left side');
		expect(value(left, 'left')).toBeGreaterThan(value(left, 'right'));
		expect(codes(answered({ ...van, items }))).not.toContain('side-heavy');
		const tight = {
			...van,
			rearRatingKg: 1300,
			items: [{ name: 'kitchen', massKg: 250, positionM: 3, side: 'left' }],
		};
		expect(finding(answered(tight), 'corner-heavy')?.text).toContain('left rear wheel');
		expect(codes(left)).not.toContain('corner-heavy');
	});

	test('a light front axle', () => {
		const tail = answered({
			...van,
			gvwrKg: 5000,
			rearRatingKg: 4000,
			items: [{ name: 'rack', massKg: 900, positionM: 5.5 }],
		});
		expect(codes(tail)).toContain('front-light');
		expect(codes(answered({ ...van, items }))).not.toContain('front-light');
	});

	test('ratings that are not known', () => {
		expect(codes(answered({ ...van, frontRatingKg: undefined }))).toContain('axle-rating-unknown');
		expect(codes(answered(van))).not.toContain('axle-rating-unknown');
	});

	test('empty weights that were not weighed', () => {
		const typical = answered({ wheelbase: 'long', gvwrKg: 3500 });
		expect(codes(typical)).toContain('empty-weight-typical');
		expect(typical.assumed.filter((one) => one.confirm).map((one) => one.name)).toEqual(
			expect.arrayContaining(['wheelbaseM', 'frontEmptyKg', 'rearEmptyKg', 'centreHeightM', 'trackM']),
		);
		expect(codes(answered(van))).not.toContain('empty-weight-typical');
	});

	test('a thing without a place counts at the worse end for each axle', () => {
		const lost = answered({ ...van, items: [{ name: 'tools', massKg: 100 }] });
		expect(codes(lost)).toContain('position-unknown');
		expect(finding(lost, 'position-unknown')?.text).toContain('tools');
		expect(shown(lost, 'rearAxle')).toBeUndefined();
		for (const positionM of [1, 2, 3, 4, 4.6]) {
			const placed = answered({ ...van, items: [{ name: 'tools', massKg: 100, positionM }] });
			expect(value(placed, 'rearAxle')).toBeLessThanOrEqual(value(lost, 'rearAxleAtMost') + 1e-9);
			expect(value(placed, 'frontAxle')).toBeLessThanOrEqual(value(lost, 'frontAxleAtMost') + 1e-9);
			expect(codes(placed)).not.toContain('position-unknown');
		}
	});
});

describe('stability', () => {
	test('before and after', () => {
		const sizing = answered({ ...van, items });
		expect(value(sizing, 'stabilityBefore')).toBeCloseTo(1.7 / 1.6, 9);
		const height = (2400 * 0.8 + 375 * 1.0) / 2775;
		expect(value(sizing, 'centreHeight')).toBeCloseTo(height, 9);
		expect(value(sizing, 'stabilityAfter')).toBeCloseTo(1.7 / (2 * height), 9);
	});

	test('top-heavy', () => {
		const high = answered({ ...van, items: [{ name: 'rack', massKg: 300, positionM: 2, onRoof: true }] });
		expect(codes(high)).toContain('stability-low');
		expect(codes(answered({ ...van, items }))).not.toContain('stability-low');
	});

	test('the lowest published band is named where a van falls in it', () => {
		const low = answered({ ...van, centreHeightM: 0.83 });
		expect(codes(low)).toContain('stability-lowest-band');
		expect(shown(low, 'rolloverBand')).toBe('40 % or more');
		expect(codes(answered(van))).not.toContain('stability-lowest-band');
	});

	test('a lift lowers it, and raises no rating', () => {
		const lifted = answered({ ...van, liftM: 0.05 });
		expect(codes(lifted)).toContain('lift-lowers-stability');
		expect(value(lifted, 'stabilityAfter')).toBeCloseTo(1.7 / (2 * 0.85), 9);
		expect(value(lifted, 'stabilityBefore')).toBeCloseTo(1.7 / 1.6, 9);
		expect(value(lifted, 'rearAxle')).toBe(value(answered(van), 'rearAxle'));
		expect(codes(answered(van))).not.toContain('lift-lowers-stability');
	});
});

describe('what if', () => {
	test('the battery moved forward', () => {
		const sizing = answered({ ...van, items: [...items, { name: 'battery', positionM: 1.2, whatIf: true }] });
		expect(value(sizing, 'rearAxle')).toBeCloseTo(1288.61, 2);
		expect(value(sizing, 'whatIfRearAxle')).toBeCloseTo(1288.61 - (60 * 1.2) / 3.665, 2);
		expect(value(sizing, 'whatIfTotal')).toBeCloseTo(2775, 9);
		expect(codes(sizing)).toContain('what-if');
	});

	test('named again without a mass it is a what-if too', () => {
		const sizing = answered({ ...van, items: [...items, { name: 'battery', zone: 'front' }] });
		expect(value(sizing, 'total')).toBeCloseTo(2775, 9);
		expect(value(sizing, 'whatIfRearAxle')).toBeLessThan(value(sizing, 'rearAxle'));
	});

	test('one thing more, or a heavier one', () => {
		const more = answered({
			...van,
			items: [...items, { name: 'bikes', massKg: 50, positionM: 5, whatIf: true }],
		});
		expect(value(more, 'total')).toBeCloseTo(2775, 9);
		expect(value(more, 'whatIfTotal')).toBeCloseTo(2825, 9);
		const heavier = answered({ ...van, items: [...items, { name: 'bed', massKg: 120, whatIf: true }] });
		expect(value(heavier, 'whatIfTotal')).toBeCloseTo(2805, 9);
	});

	test('none asked, none told', () => {
		expect(codes(answered({ ...van, items }))).not.toContain('what-if');
	});
});

describe('what is asked and refused', () => {
	test.each([
		[{ wheelbase: 'long' }, 'gvwrKg'],
		[{ gvwrKg: 3500 }, 'wheelbase'],
		[{ ...van, items: [{ name: 'fridge', positionM: 2 }] }, 'items'],
	])('asks for %#', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe(name);
	});

	test.each([
		['axles that do not add', { ...van, emptyKg: 3000 }, 'contradiction', 'emptyKg'],
		[
			'empty above the GVWR',
			{ ...van, gvwrKg: 2300, frontRatingKg: 1300, rearRatingKg: 1300 },
			'contradiction',
			'gvwrKg',
		],
		['an axle rating above the GVWR', { ...van, rearRatingKg: 4000 }, 'contradiction', 'gvwrKg'],
		[
			'a negative mass',
			{ ...van, items: [{ name: 'balloon', massKg: -5, positionM: 2 }] },
			'out-of-range',
			'items',
		],
		['no wheelbase', { ...van, wheelbaseM: 0.5 }, 'out-of-range', 'wheelbaseM'],
	])('%s', (_, given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});
});

test('the scale stands among the cautions', () => {
	expect(answered(van).cautions.join(' ')).toMatch(/sum is no scale/);
});
