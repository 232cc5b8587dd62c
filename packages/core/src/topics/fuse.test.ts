import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { us as usRules } from '../rules/us.js';
import { type Context, defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { fuse } from './fuse.js';

type Given = Readonly<Record<string, unknown>>;
const us = defaultContext;
const eu: Context = { region: 'eu', units: 'metric', language: 'en' };

function answered(given: Given, context = us) {
	const outcome = runTopic(fuse, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

const resultsOf = (given: Given, context = us) =>
	Object.fromEntries(answered(given, context).results.map((result) => [result.name, result.value]));
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);
const severityOf = (given: Given, code: string) =>
	answered(given).findings.find((one) => one.code === code)?.severity;

const lithium = { unitAh: 300, bankV: 12, chemistry: 'lifepo4' };
const branch = { currentA: 20, size: '10 AWG', bankV: 12 };

describe('the rating', () => {
	test('20 A on 10 AWG: 25 A, at most 30 A', () => {
		const sizing = answered(branch);
		expect(sizing.headline).toBe('25 A blade fuse at the source end of 10 AWG');
		expect(resultsOf(branch)).toMatchObject({
			rating: 25,
			minimumRating: 25,
			largestRating: 30,
			ampacity: 60,
		});
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('a load on for minutes needs no 125 %', () => {
		expect(resultsOf({ ...branch, continuous: false }).rating).toBe(20);
		expect(resultsOf({ ...branch, continuous: false, motor: true }).rating).toBe(25);
	});

	test('a motor is told to want a slow fuse', () => {
		expect(codesOf({ ...branch, motor: true })).toContain('motor-start');
		expect(codesOf(branch)).not.toContain('motor-start');
	});

	test('power of an inverter counts its loss and its low battery', () => {
		const given = { powerW: 2000, load: 'inverter', size: '4/0 AWG', ...lithium };
		expect(resultsOf(given).rating).toBe(250);
		expect(codesOf(given)).toContain('inverter-low-battery');
		expect(codesOf({ ...given, load: 'heater' })).not.toContain('inverter-low-battery');
	});

	test('no rating both carries the load and protects the conductor', () => {
		const outcome = runTopic(fuse, { currentA: 60, size: '10 AWG', bankV: 12 }, us);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({
			code: 'unsafe',
			field: 'size',
		});
		expect(outcome.status === 'refused' && outcome.refusals[0]?.instead).toContain('at least 8 AWG');
	});

	test('no conductor at all is thick enough', () => {
		const outcome = runTopic(fuse, { currentA: 900, size: '4/0 AWG', bankV: 12 }, us);
		expect(outcome.status === 'refused' && outcome.refusals[0]?.instead).toContain('Split the load');
	});

	test('metric conductors', () => {
		expect(resultsOf({ currentA: 40, size: '16 mm²', bankV: 24 }, eu)).toMatchObject({
			rating: 50,
			conductor: '16 mm²',
		});
	});
});

describe('a rating to be judged', () => {
	test('right', () => {
		const sizing = answered({ ...branch, ratingA: 30 });
		expect(sizing.headline).toBe('30 A blade fuse is right on 10 AWG');
	});

	test('too large: danger, and the boat rule is told but not used', () => {
		const given = { ratingA: 60, size: '10 AWG', bankV: 12 };
		const sizing = answered(given);
		expect(sizing.headline).toBe('60 A is too large for 10 AWG: at most 30 A');
		expect(sizing.findings[0]).toMatchObject({ code: 'fuse-over-conductor', severity: 'danger' });
		expect(codesOf(given)).toContain('boat-rule-would-allow');
		expect(codesOf({ ...given, ratingA: 100 })).not.toContain('boat-rule-would-allow');
		expect(resultsOf(given).boatRuleMaximum).toBe(90);
		expect(codesOf({ ...given, ratingA: 30 })).not.toContain('fuse-over-conductor');
	});

	test('too large with a load: the right one is named', () => {
		expect(answered({ ...branch, ratingA: 60 }).headline).toBe('60 A is too large for 10 AWG: 25 A');
		expect(answered({ ...branch, currentA: 60, ratingA: 80 }).headline).toBe(
			'80 A is too large for 10 AWG: a thicker conductor',
		);
	});

	test('too small for the load', () => {
		const given = { ...branch, ratingA: 20 };
		expect(answered(given).headline).toBe('20 A is too small for the load: take 25 A');
		expect(severityOf(given, 'fuse-under-load')).toBe('warning');
		expect(codesOf({ ...branch, ratingA: 25 })).not.toContain('fuse-under-load');
		expect(answered({ ...branch, currentA: 60, ratingA: 30 }).headline).toBe(
			'30 A is too small for the load, and 10 AWG takes no larger',
		);
	});
});

describe('the kind', () => {
	const main = { currentA: 160, size: '4/0 AWG', isMain: true, ...lithium };

	test('main fuse of a lithium bank: one that is marked for the current', () => {
		const sizing = answered(main);
		expect(sizing.headline).toBe('200 A class T fuse at the source end of 4/0 AWG');
		expect(answered({ ...main, unitAh: 600 }).headline).toBe(
			'200 A class J fuse at the source end of 4/0 AWG',
		);
		expect(sizing.results.find((one) => one.name === 'fuseClass')?.value).not.toContain('strip');
	});

	test.each(['blade', 'strip', 'singleBolt'])(
		'never a %s as the main fuse of a large lithium bank',
		(fuseClass) => {
			const codes = codesOf({ ...main, fuseClass });
			expect(codes).toContain('vehicle-fuse-on-lithium');
			expect(severityOf({ ...main, fuseClass }, 'vehicle-fuse-on-lithium')).toBe('danger');
			expect(resultsOf({ ...main, fuseClass }).verdict).toBe('does not serve');
		},
	);

	test('nor where the maker names a high resistance', () => {
		const given = { ...main, internalOhm: 0.02, fuseClass: 'strip' };
		expect(codesOf(given)).not.toContain('cannot-break');
		expect(codesOf(given)).toContain('vehicle-fuse-on-lithium');
		expect(resultsOf({ ...main, internalOhm: 0.02 }).fuseClass).toBe('class T fuse');
	});

	test('a strip fuse serves as the main fuse of a lead-acid bank that draws less', () => {
		const given = { ...main, chemistry: 'agm', bankShortA: 1900, fuseClass: 'strip' };
		expect(resultsOf(given).verdict).toBe('serves');
		expect(codesOf(given)).not.toContain('vehicle-fuse-on-lithium');
	});

	test('a strip fuse never on 48 V', () => {
		const given = { currentA: 100, size: '2 AWG', bankV: 48, prospectiveA: 900, fuseClass: 'strip' };
		expect(severityOf(given, 'fuse-voltage')).toBe('danger');
		expect(answered(given).headline).toMatch(/^Not that kind of fuse: take a 125 A single-bolt fuse$/);
		expect(codesOf({ ...given, bankV: 24 })).not.toContain('fuse-voltage');
	});

	test('what can’t break the fault', () => {
		const given = { ...branch, prospectiveA: 1001, fuseClass: 'blade' };
		expect(severityOf(given, 'cannot-break')).toBe('danger');
		expect(codesOf({ ...given, prospectiveA: 1000 })).not.toContain('cannot-break');
	});

	test('a rating that is not made', () => {
		expect(codesOf({ currentA: 120, size: '2/0 AWG', bankV: 12, fuseClass: 'blade' })).toContain(
			'no-such-rating',
		);
		expect(codesOf({ ...branch, fuseClass: 'blade' })).not.toContain('no-such-rating');
	});

	test('an AC device never', () => {
		const given = { ...branch, fuseClass: 'household', prospectiveA: 500 };
		expect(severityOf(given, 'ac-rating-on-dc')).toBe('danger');
		expect(answered(given).headline).toBe('Not that kind of fuse: take a 25 A blade fuse');
	});

	test('what must be read on the fuse', () => {
		expect(codesOf({ ...branch, prospectiveA: 8000 })).toContain('read-the-marking');
		expect(codesOf({ ...branch, prospectiveA: 800 })).not.toContain('read-the-marking');
	});

	test('58 V parts and charging above them', () => {
		const given = { currentA: 10, size: '10 AWG', bankV: 48, prospectiveA: 900, fuseClass: 'blade' };
		expect(codesOf(given)).toContain('buy-58-volt');
		expect(codesOf({ ...given, bankV: 24 })).not.toContain('buy-58-volt');
		expect(codesOf({ ...given, unitAh: 100, chemistry: 'lifepo4' })).toContain('charging-above-rating');
		expect(codesOf({ ...given, unitAh: 100, chemistry: 'gel' })).not.toContain('charging-above-rating');
	});

	test('a feeder without a known fault current gets a fuse that is marked for what it breaks', () => {
		expect(resultsOf({ currentA: 160, size: '4/0 AWG', bankV: 12 }).fuseClass).toBe('class T fuse');
		expect(resultsOf({ currentA: 160, size: '4/0 AWG', bankV: 12, prospectiveA: 1900 }).fuseClass).toBe(
			'strip fuse',
		);
		expect(resultsOf({ currentA: 70, size: '4 AWG', bankV: 12 }).fuseClass).toBe('blade fuse');
	});

	test('a fuse behind another is no main fuse, whatever the words', () => {
		const outcome = runTopic(fuse, { ...branch, isMain: true, upstreamA: 100 }, us);
		expect(outcome.status).toBe('answered');
	});

	test('nothing serves: the maker is asked', () => {
		const sizing = answered({ ...branch, prospectiveA: 190_000 });
		expect(sizing.headline).toContain('No fuse of my tables: ask the maker');
	});

	test('without a fault current the answer says so; with a typical one too', () => {
		expect(codesOf(branch)).toContain('fault-current-unknown');
		expect(codesOf({ ...branch, prospectiveA: 900 })).not.toContain('fault-current-unknown');
		expect(codesOf({ ...branch, unitAh: 100, chemistry: 'agm' })).toContain('resistance-typical');
		expect(codesOf({ ...branch, unitAh: 100, chemistry: 'agm', prospectiveA: 900 })).not.toContain(
			'resistance-typical',
		);
	});
});

describe('behaviour', () => {
	test('a 15 A blade fuse at the multiples of its standard', () => {
		expect(resultsOf({ currentA: 12, size: '14 AWG', bankV: 12 })).toMatchObject({
			rating: 15,
			holdCurrent: 16.5,
			opens135LeastS: 0.75,
			opens135MostS: 600,
			opens200MostS: 5,
			opens350MostS: 0.5,
			opens600MostS: 0.1,
		});
	});

	test('no times where no table was found', () => {
		const results = resultsOf({ currentA: 160, size: '4/0 AWG', isMain: true, ...lithium });
		expect(Object.keys(results).filter((name) => name.startsWith('opens'))).toEqual([]);
	});

	test('a short at the far end of a long thin run', () => {
		const near = { currentA: 12, size: '14 AWG', bankV: 12, lengthM: 5 };
		expect(codesOf(near)).not.toContain('far-end-opens-slowly');
		expect(resultsOf(near).farEndOpensS).toBe(0.1);
		const far = { ...near, lengthM: 12 };
		expect(severityOf(far, 'far-end-opens-slowly')).toBe('warning');
		expect(severityOf({ ...near, lengthM: 60 }, 'far-end-opens-slowly')).toBe('danger');
	});

	test('hot fuses and full loads', () => {
		expect(codesOf({ ...branch, ambientC: 55 })).toContain('hot-fuse');
		expect(codesOf(branch)).not.toContain('hot-fuse');
		expect(codesOf({ ...branch, ratingA: 25, currentA: 22 })).toContain('over-80-percent');
		expect(codesOf(branch)).not.toContain('over-80-percent');
	});
});

describe('selectivity', () => {
	test('1.6 : 1 upstream and downstream', () => {
		expect(codesOf({ ...branch, upstreamA: 40 })).toContain('selective');
		expect(codesOf({ ...branch, upstreamA: 39 })).toContain('not-selective');
		expect(codesOf({ ...branch, downstreamA: 15 })).toContain('selective');
		expect(codesOf({ ...branch, downstreamA: 20 })).toContain('not-selective');
		expect(codesOf(branch).filter((code) => code.includes('selective'))).toEqual([]);
		expect(resultsOf({ ...branch, upstreamA: 40 }).upstreamRatio).toBe(1.6);
	});
});

describe('the conductor alone', () => {
	test('is told the largest fuse that still protects it', () => {
		const sizing = answered({ size: '10 AWG' });
		expect(sizing.headline).toBe('30 A blade fuse at most on 10 AWG');
		expect(sizing.governedBy).toBe('ampacity');
	});

	test('the next rating up would not protect it', () => {
		for (const { name } of usRules.sizes.filter((one) => one.proposed)) {
			const outcome = runTopic(fuse, { size: name }, us);
			if (outcome.status !== 'answered') continue;
			const most = Number(/^(\d+) A/.exec(outcome.sizing.headline)?.[1]);
			const next = usRules.dc.deviceRatingsA.find((sizeA) => sizeA > most);
			if (next === undefined) continue;
			expect(codesOf({ size: name, ratingA: most }), name).not.toContain('fuse-over-conductor');
			expect(codesOf({ size: name, ratingA: next }), name).toContain('fuse-over-conductor');
		}
	});
});

describe('what is asked or refused', () => {
	test('the conductor; the load or a rating; the bank behind a main fuse', () => {
		const missing = (given: Given) => {
			const outcome = runTopic(fuse, given, us);
			return outcome.status === 'needs-input' ? outcome.missing.map((one) => one.name) : outcome.status;
		};
		expect(missing({})).toEqual(['size', 'currentA']);
		expect(missing({ size: '10 AWG', load: 'fridge' })).toEqual(['currentA']);
		expect(missing({ ...branch, isMain: true })).toEqual(['unitAh']);
		expect(missing({ ...branch, isMain: true, prospectiveA: 900 })).toBe('answered');
	});

	test.each<[string, Given, string]>([
		['an unknown conductor', { ...branch, size: '7 AWG' }, 'size'],
		['a voltage no bank has', { ...branch, bankV: 18 }, 'bankV'],
		['mains', { ...branch, bankV: 120 }, 'bankV'],
		['current and power apart', { ...branch, powerW: 100 }, 'currentA'],
		['hotter than the insulation', { ...branch, ambientC: 110 }, 'ambientC'],
		['no whole strings', { ...branch, unitAh: 100, bankV: 24, unitV: 12, unitCount: 3 }, 'unitCount'],
	])('%s', (_, given, field) => {
		const outcome = runTopic(fuse, given, us);
		expect(outcome.status === 'refused' && outcome.refusals[0]?.field).toBe(field);
	});
});

test('a fuse that is recommended never exceeds the conductor, falls under the load or fails to break', () => {
	const question = fc.record({
		currentA: fc.integer({ min: 1, max: 300 }),
		size: fc.constantFrom(
			'16 AWG',
			'14 AWG',
			'12 AWG',
			'10 AWG',
			'8 AWG',
			'6 AWG',
			'4 AWG',
			'2 AWG',
			'1/0 AWG',
			'2/0 AWG',
			'4/0 AWG',
		),
		bankV: fc.constantFrom(12, 24, 36, 48),
		prospectiveA: fc.integer({ min: 100, max: 30_000 }),
		ambientC: fc.integer({ min: 0, max: 70 }),
		bundled: fc.integer({ min: 1, max: 10 }),
		continuous: fc.boolean(),
	});
	let answers = 0;
	fc.assert(
		fc.property(question, (given) => {
			const outcome = runTopic(fuse, given, us);
			if (outcome.status !== 'answered') return;
			const results = Object.fromEntries(outcome.sizing.results.map((one) => [one.name, one.value]));
			if (results.verdict !== 'serves') return;
			answers += 1;
			expect(Number(results.rating)).toBeLessThanOrEqual(Number(results.ampacity));
			expect(Number(results.rating)).toBeGreaterThanOrEqual(given.currentA * (given.continuous ? 1.25 : 1));
			const codes = outcome.sizing.findings.map((one) => one.code);
			const marked = codes.includes('read-the-marking');
			expect(Number(marked ? results.requiredMarking : results.breaks)).toBeGreaterThanOrEqual(
				given.prospectiveA,
			);
			expect(Number(results.ratedVoltage)).toBeGreaterThanOrEqual(given.bankV);
			expect(outcome.sizing.findings.filter((one) => one.severity === 'danger')).toEqual([]);
		}),
		{ numRuns: 5000 },
	);
	expect(answers).toBeGreaterThan(300);
});
