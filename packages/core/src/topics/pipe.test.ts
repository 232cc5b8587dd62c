import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import {
	answered,
	codesOf,
	metric,
	numberOf,
	numbersOf,
	refusal,
} from '../../../../tests/reference/outcome.js';
import { pipe } from './pipe.js';

const gpm = 3.785411784;
const psi = 6.894757293168;
const foot = 0.3048;
const straight = { riseM: 0, elbows: 0, tees: 0, valves: 0 };

describe('what is lost', () => {
	test('1/2 in, 2.2 gpm, 20 ft on the smallest bore: near the published 1.38 psi', () => {
		const given = { flowLMin: 2.2 * gpm, lengthM: 20 * foot, pipe: '1/2 pex', ...straight, waterC: 15.56 };
		// The published table is Hazen-Williams; Darcy-Weisbach with cold water reads 14 % more.
		expect(numberOf(pipe, given, 'hazenWilliamsLoss') / psi).toBeCloseTo(1.38, 1);
		expect(numberOf(pipe, given, 'pipeLoss') / psi).toBeGreaterThan(1.38);
		expect(numberOf(pipe, given, 'pipeLoss') / psi).toBeLessThan(1.38 * 1.2);
	});

	test.each(
		readTable('water/pex_friction_published.csv').map(
			(row) => [`${row.table} ${row.nominal_in} ${row.flow_us_gpm}`, row] as const,
		),
	)('table %s: cold water is never counted to lose less than the published figure', (_, row) => {
		const given = {
			flowLMin: Number(row.flow_us_gpm) * gpm,
			lengthM: 100 * foot,
			pipe: `${row.nominal_in} pex`,
			...straight,
		};
		expect(numberOf(pipe, given, 'pipeLoss') / psi).toBeGreaterThan(Number(row.published_psi_per_100ft));
	});

	test('the parts add up, and what is left is the rest', () => {
		const numbers = numbersOf(pipe, { flowLMin: 8, lengthM: 6, pipe: '1/2 pex', pumpKPa: 300 });
		const { pipeLoss = 0, fittingLoss = 0, riseLoss = 0, pressureLoss, pressureAtFixture = 0 } = numbers;
		expect(pipeLoss + fittingLoss + riseLoss).toBeCloseTo(pressureLoss ?? 0, 9);
		expect(pressureAtFixture).toBeCloseTo(300 - (pressureLoss ?? 0), 9);
	});

	test('fittings that narrow the pipe lose several times what full-bore ones do', () => {
		const given = { flowLMin: 8, lengthM: 6, pipe: '1/2 pex' };
		const insert = numberOf(pipe, { ...given, fittings: 'insert' }, 'fittingLoss');
		const full = numberOf(pipe, { ...given, fittings: 'full' }, 'fittingLoss');
		expect(insert / full).toBeGreaterThan(3);
		// Makers print about 9 to 10 ft for a crimped 1/2 in elbow; ours is not below that.
		const elbow = numberOf(pipe, { ...given, riseM: 0, elbows: 1, tees: 0, valves: 0 }, 'fittingsAsLength');
		expect(elbow / foot).toBeGreaterThan(9);
		expect(elbow / foot).toBeLessThan(14);
	});
});

describe('what is chosen', () => {
	test('the thinnest pipe that leaves enough, its neighbours beside it', () => {
		const sizing = answered(pipe, { fixture: 'shower', lengthM: 25 * foot });
		expect(sizing.results.find((one) => one.name === 'pipe')?.value).toBe('1/2 in PEX');
		expect(sizing.neighbours.map((one) => [one.choice, one.passes])).toEqual([
			['3/8 in PEX', false],
			['5/8 in PEX', true],
		]);
		expect(sizing.assumed.map((one) => one.name)).toContain('flowLMin');
	});

	test('metric tubing for a metric shop', () => {
		const sizing = answered(pipe, { flowLMin: 7, lengthM: 5, pumpKPa: 200 }, metric);
		expect(sizing.headline).toMatch(/^\d+ mm PEX/);
	});

	test('a named pipe is judged', () => {
		expect(answered(pipe, { flowLMin: 8, lengthM: 6, pipe: '1/2 pex' }).headline).toMatch(
			/^1\/2 in PEX will do/,
		);
		expect(answered(pipe, { flowLMin: 8, lengthM: 12, pipe: '3/8 pex' }).headline).toMatch(/won't do/);
		expect(answered(pipe, { flowLMin: 25, lengthM: 2, pipe: '1/2 pex', pumpKPa: 500 }).headline).toMatch(
			/too thin: the water runs at/,
		);
		expect(answered(pipe, { flowLMin: 8, lengthM: 6, boreMm: 10 }).headline).toMatch(/bore/);
	});

	test('tipping values hold and a hair beyond them does not', () => {
		const given = { flowLMin: 8, lengthM: 6, pipe: '1/2 pex' };
		const tips = answered(pipe, given).tipping;
		for (const tip of tips) {
			const verdict = (value: number) =>
				answered(pipe, { ...given, [tip.name]: value }).results.find((one) => one.name === 'verdict')?.value;
			expect(verdict(tip.value * 0.999)).toBe('passes');
			expect(verdict(tip.value * 1.001)).toBe('fails');
		}
		expect(tips).toHaveLength(2);
	});
});

describe('findings', () => {
	const good = { flowLMin: 8, lengthM: 4, pipe: '3/4 pex', pumpKPa: 300 };

	test('a pipe that leaves too little, and what would do', () => {
		const sizing = answered(pipe, { flowLMin: 8, lengthM: 12, pipe: '3/8 pex' });
		const finding = sizing.findings.find((one) => one.code === 'pressure-short');
		expect(finding?.text).toMatch(/1\/2 in PEX would do/);
		expect(codesOf(pipe, good)).not.toContain('pressure-short');
	});

	test('water that runs too fast, and the pipe that calms it', () => {
		const sizing = answered(pipe, { flowLMin: 25, lengthM: 2, pipe: '1/2 pex', pumpKPa: 500 });
		expect(sizing.findings.find((one) => one.code === 'velocity-high')?.text).toMatch(/keeps it quiet/);
		expect(codesOf(pipe, good)).not.toContain('velocity-high');
	});

	test('more pressure than tubing is rated for', () => {
		expect(codesOf(pipe, { ...good, pumpKPa: 800 })).toContain('pressure-high');
		expect(codesOf(pipe, good)).not.toContain('pressure-high');
	});

	test('Hazen-Williams is flagged where it reads low', () => {
		expect(codesOf(pipe, { ...good, flowLMin: 2 })).toContain('hazen-williams-low');
		expect(codesOf(pipe, { ...good, flowLMin: 20 })).not.toContain('hazen-williams-low');
	});
});

describe('the pump', () => {
	const given = { flowLMin: 8, lengthM: 6, wireLengthM: 3, currentA: 7 };

	test('its wire and fuse come from the wire topic', () => {
		const sizing = answered(pipe, given);
		expect(sizing.chain.map((one) => one.topic)).toEqual(['wire']);
		const value = (name: string) => sizing.results.find((one) => one.name === name)?.value;
		expect(value('pumpCurrent')).toBe(7);
		expect(value('pumpWire')).toMatch(/AWG/);
		expect(value('pumpFuse')).toBeGreaterThanOrEqual(7 * 1.25);
		expect(codesOf(pipe, given)).not.toContain('pump-current-unknown');
	});

	test('a pump of unknown current is asked for, not guessed', () => {
		expect(codesOf(pipe, { ...given, currentA: undefined })).toContain('pump-current-unknown');
		expect(answered(pipe, { ...given, currentA: undefined }).chain).toEqual([]);
	});

	test('a wire that can not be sized is said', () => {
		expect(codesOf(pipe, { ...given, currentA: 7, powerW: 2000 })).toContain('pump-wire-open');
		expect(codesOf(pipe, given)).not.toContain('pump-wire-open');
	});
});

describe('refusals', () => {
	test('a rise longer than the pipe', () => {
		expect(refusal(pipe, { flowLMin: 8, lengthM: 2, riseM: 4 })).toMatchObject({
			code: 'contradiction',
			field: 'riseM',
		});
		// An assumed rise gives way instead.
		expect(numberOf(pipe, { flowLMin: 8, lengthM: 0.5 }, 'riseLoss')).toBeCloseTo(0.9997 * 9.80665 * 0.5, 2);
	});

	test('a size that is not sold', () => {
		expect(refusal(pipe, { flowLMin: 8, lengthM: 2, pipe: '7/8 pex' })).toMatchObject({ field: 'pipe' });
	});

	test('no length', () => {
		expect(() => answered(pipe, { flowLMin: 8 })).toThrow(/How long is the pipe/);
	});
});
