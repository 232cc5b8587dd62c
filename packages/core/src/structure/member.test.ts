import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkMember, keeps, longestSpanM, type Member } from './member.js';

const rail: Member = {
	holding: 'simple',
	spanM: 1.2,
	leftOverhangM: 0,
	rightOverhangM: 0,
	loads: [{ kind: 'even', amount: { perMetreN: 400 } }],
	sharing: 1,
	secondMomentMm4: 73_365,
	modulusMm3: 3668,
	modulusGpa: 69.6,
	ownWeightNPerM: 0,
};

function checked(member: Member) {
	const check = checkMember(member);
	if (check === null) throw new Error('a load stands off the member');
	return check;
}

describe('a force that may stand anywhere', () => {
	test.each<[string, Partial<Member>, number, number]>([
		// simple span: middle, P L / 4
		['simple', { holding: 'simple' }, (100 * 1.2) / 4, 0.6],
		['cantilever', { holding: 'cantilever' }, 100 * 1.2, 1.2],
	])('%s: in the worst place', (_, changed, momentNm, atM) => {
		const anywhere = checked({ ...rail, ...changed, loads: [{ kind: 'anywhere', forceN: 100 }] });
		const placed = checked({ ...rail, ...changed, loads: [{ kind: 'point', atM, forceN: 100 }] });
		expect(anywhere.momentNm).toBeCloseTo(momentNm, 9);
		expect(anywhere.ratio).toBeCloseTo(placed.ratio, 6);
	});

	test.each(['fixed', 'propped', 'simple'] as const)('%s with overhangs: no place is worse', (holding) => {
		const member: Member = { ...rail, holding, leftOverhangM: 0.1, rightOverhangM: 0.35, loads: [] };
		const anywhere = checked({ ...member, loads: [{ kind: 'anywhere', forceN: 100 }] });
		for (let index = 0; index <= 30; index += 1) {
			const atM = -0.1 + (1.65 * index) / 30;
			const placed = checked({ ...member, loads: [{ kind: 'point', atM, forceN: 100 }] });
			// the search tries places 1/24 of the span apart: a flat maximum within half a percent
			expect(anywhere.ratio).toBeLessThanOrEqual(placed.ratio * 1.005);
			expect(anywhere.momentNm).toBeGreaterThanOrEqual(placed.momentNm * 0.995);
		}
	});
});

test('members that share a load each take their part', () => {
	const one = checked(rail);
	const three = checked({ ...rail, sharing: 3 });
	expect(three.momentNm).toBeCloseTo(one.momentNm / 3, 9);
	expect(three.ratio).toBeCloseTo(one.ratio * 3, 6);
});

test('own weight is not shared', () => {
	const light = checked({ ...rail, loads: [], ownWeightNPerM: 8, sharing: 3 });
	expect(light.momentNm).toBeCloseTo((8 * 1.2 ** 2) / 8, 9);
});

test('an overhang is judged by its own length', () => {
	const check = checked({ ...rail, rightOverhangM: 0.4, loads: [{ kind: 'point', atM: 1.6, forceN: 200 }] });
	expect(check.overhangSag?.overhangM).toBe(0.4);
	expect(check.ratio).toBeCloseTo(0.4 / (check.overhangSag?.sagM as number), 9);
});

describe('loads off the member', () => {
	test.each([
		{ kind: 'point', atM: 1.3, forceN: 1 } as const,
		{ kind: 'point', atM: -0.01, forceN: 1 } as const,
		{ kind: 'spread', fromM: 0.5, toM: 1.3, amount: { totalN: 1 } } as const,
		{ kind: 'spread', fromM: 0.8, toM: 0.4, amount: { totalN: 1 } } as const,
	])('%j', (load) => {
		expect(checkMember({ ...rail, loads: [load] })).toBeNull();
	});
});

test('the longest span keeps its limits and a longer one does not', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 10, max: 5000, noNaN: true }),
			fc.double({ min: 0.05, max: 0.95, noNaN: true }),
			fc.constantFrom('simple', 'cantilever', 'fixed', 'propped'),
			(forceN, share, holding) => {
				const member: Member = {
					...rail,
					holding,
					ownWeightNPerM: 8,
					loads: [{ kind: 'point', atM: share * 1.2, forceN }],
				};
				const limits = { ratio: 240, stressMpa: 55 };
				const longest = longestSpanM(member, limits);
				const at = (spanM: number) =>
					checked({ ...member, spanM, loads: [{ kind: 'point', atM: share * spanM, forceN }] });
				if (longest > 0) expect(keeps(at(longest * 0.9999), limits)).toBe(true);
				if (longest > 0 && longest < 12) expect(keeps(at(longest * 1.001), limits)).toBe(false);
			},
		),
		{ numRuns: 40 },
	);
});

test('no span at all is 0, a limit never met', () => {
	expect(
		longestSpanM({ ...rail, loads: [{ kind: 'anywhere', forceN: 1e9 }] }, { ratio: 240, stressMpa: 55 }),
	).toBe(0);
});

test('a spread load given in all is the same on any length', () => {
	const total = checked({ ...rail, loads: [{ kind: 'even', amount: { totalN: 480 } }] });
	expect(total.momentNm).toBeCloseTo(checked(rail).momentNm, 9);
	const part = checked({
		...rail,
		loads: [{ kind: 'spread', fromM: 0.3, toM: 0.9, amount: { totalN: 240 } }],
	});
	const byMetre = checked({
		...rail,
		loads: [{ kind: 'spread', fromM: 0.3, toM: 0.9, amount: { perMetreN: 400 } }],
	});
	expect(part.momentNm).toBeCloseTo(byMetre.momentNm, 9);
	const longer = (amount: { totalN: number } | { perMetreN: number }) =>
		longestSpanM({ ...rail, loads: [{ kind: 'even', amount }] }, { ratio: 240, stressMpa: 55 });
	// a line load grows with the span, a mattress does not
	expect(longer({ totalN: 480 })).toBeGreaterThan(longer({ perMetreN: 400 }));
});

test('a load at the tip stays on the member however it is stretched', () => {
	fc.assert(
		fc.property(fc.double({ min: 0.05, max: 3, noNaN: true }), (spanM) => {
			const member: Member = {
				...rail,
				holding: 'cantilever',
				spanM,
				loads: [{ kind: 'anywhere', forceN: 200 }],
			};
			// P L at the wall against 55 MPa, L²/3EI against L/240: whichever comes first
			const byStress = (55 * 3668) / 1000 / 200;
			const bySag = Math.sqrt((3 * 69.6 * 73.365) / 200 / 240);
			expect(longestSpanM(member, { ratio: 240, stressMpa: 55 })).toBeCloseTo(Math.min(byStress, bySag), 6);
		}),
	);
});
