import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expectReadable, pathsOf, wordsOf } from '../../../gallery/inspect.js';
import { meshed, oneLine } from '../../../gallery/pictures.js';
import { drawOneLine } from './draw.js';
import { fold } from './fold.js';
import { type OneLineDevice, type OneLinePicture, type OneLineRun, oneLineProblems } from './input.js';
import { drawRow, noRoom } from './row.js';

const device: fc.Arbitrary<OneLineDevice> = fc.record({
	kind: fc.constantFrom('fuse', 'circuit breaker', 'switch'),
	ratingA: fc.option(fc.constantFrom(5, 7.5, 150, 300), { nil: null }),
	at: fc.constantFrom('from', 'to'),
});
const ends = fc.record({
	conductor: fc.option(fc.constantFrom('4 AWG', '2 x 4/0 AWG', '2.5 mm²'), { nil: null }),
	lengthM: fc.option(fc.double({ min: 0.2, max: 20, noNaN: true }), { nil: null }),
	devices: fc.array(device, { maxLength: 2 }),
	unprotected: fc.option(fc.constant('bond'), { nil: null }),
});
const name = fc.constantFrom(
	'fridge',
	'12 V rooftop air conditioner with a long name',
	'Donaudampfschifffahrtsgesellschaftskapitän',
	'a',
	'<script>alert(1)</script>',
);

/** Wirings as vans have them: banks on busbars, chains of chargers, loads, and here and there something meshed. */
const wirings: fc.Arbitrary<OneLinePicture> = fc
	.record({
		banks: fc.integer({ min: 0, max: 2 }),
		buses: fc.integer({ min: 1, max: 3 }),
		bonded: fc.boolean(),
		hanging: fc.array(
			fc.record({
				bus: fc.nat(2),
				kind: fc.constantFrom('load', 'inverter', 'chain', 'alternator'),
				name,
			}),
			{ maxLength: 12 },
		),
		meshes: fc.array(fc.tuple(fc.nat(30), fc.nat(30)), { maxLength: 2 }),
		units: fc.constantFrom('us' as const, 'metric' as const),
		runs: fc.array(ends, { minLength: 40, maxLength: 40 }),
	})
	.map(({ banks, buses, bonded, hanging, meshes, units, runs: details }) => {
		const parts: OneLinePicture['parts'][number][] = [];
		const runs: OneLineRun[] = [];
		const join = (from: string, to: string) => {
			runs.push({ from, to, ...(details[runs.length % details.length] as (typeof details)[number]) });
		};
		for (let index = 0; index < banks; index += 1) {
			parts.push({
				id: `bank ${index}`,
				kind: 'battery',
				name: `House battery ${index + 1}`,
				detail: '12 V, 100 Ah',
			});
		}
		for (let index = 0; index < buses; index += 1) {
			parts.push({ id: `bus ${index}`, kind: 'busbar', name: `Busbar ${index + 1}` });
			if (index > 0) join(`bus ${index - 1}`, `bus ${index}`);
		}
		for (let index = 0; index < banks; index += 1) join(`bank ${index}`, 'bus 0');
		if (bonded && banks > 0) {
			parts.push({ id: 'chassis', kind: 'chassis', name: 'Chassis' });
			join('bank 0', 'chassis');
		}
		hanging.forEach(({ bus, kind, name: called }, index) => {
			const at = `bus ${bus % buses}`;
			const id = `part ${index}`;
			if (kind === 'load') parts.push({ id, kind: 'load', name: called });
			if (kind === 'inverter') parts.push({ id, kind: 'converter', takes: 'dc', gives: 'ac', name: called });
			if (kind === 'alternator') parts.push({ id, kind: 'alternator', name: called });
			if (kind === 'chain') {
				parts.push({ id, kind: 'converter', takes: 'dc', gives: 'dc', name: called });
				parts.push({ id: `${id} source`, kind: 'solar', name: 'Roof array' });
				join(`${id} source`, id);
			}
			if (kind === 'chain' || kind === 'alternator') join(id, at);
			else join(at, id);
		});
		for (const [a, b] of meshes) {
			const from = parts[a % parts.length]?.id as string;
			const to = parts[b % parts.length]?.id as string;
			if (from !== to) join(from, to);
		}
		return { kind: 'one-line', title: 'DC wiring', units, parts, runs };
	});

describe('the one-line diagram', () => {
	test('of any wiring: no word is cut, small or over another', async () => {
		await fc.assert(
			fc.asyncProperty(wirings, fc.constantFrom('phone' as const, 'page' as const), async (wiring, layout) =>
				expectReadable(await drawOneLine(wiring, layout)),
			),
			{ numRuns: 80 },
		);
	});

	test('of any wiring: every run is told with its conductor, length, devices and their ends', async () => {
		await fc.assert(
			fc.asyncProperty(wirings, async (wiring) => {
				const { alt, shapes } = await drawOneLine(wiring, 'phone');
				const nameOf = (id: string) => wiring.parts.find((part) => part.id === id)?.name;
				for (const { from, to, conductor, devices } of wiring.runs) {
					expect(alt).toContain(`${nameOf(from)} to ${nameOf(to)}: ${conductor ?? 'size?'}, `);
					for (const { kind, ratingA, at } of devices) {
						const end = nameOf(at === 'from' ? from : to);
						expect(alt).toContain(
							`${kind}${ratingA === null ? (kind === 'switch' ? '' : ' ? A') : ` ${ratingA} A`} at the ${end} end`,
						);
					}
				}
				const bare = wiring.runs.filter(
					({ devices, unprotected }) =>
						unprotected === null && !devices.some(({ kind }) => kind !== 'switch'),
				);
				expect([...alt.matchAll(/, no fuse or breaker named/g)]).toHaveLength(bare.length);
				// The picture says it too, once for each such run.
				const marks = wordsOf({ shapes }).filter(({ text }) => text.startsWith('no fuse'));
				expect(marks).toHaveLength(bare.length);
				const devices = wiring.runs.flatMap((run) => run.devices).filter(({ ratingA }) => ratingA !== null);
				const ratings = wordsOf({ shapes }).filter(({ text }) =>
					/(^|fuse |breaker |switch )[\d.]+ A$/.test(text),
				);
				expect(ratings).toHaveLength(devices.length);
			}),
			{ numRuns: 80 },
		);
	});

	test('what hangs from a busbar becomes rows; banks, busbars and meshes stay in the graph', () => {
		const folded = fold(oneLine);
		expect(folded.parts.map(({ id }) => id)).toEqual(['battery', 'main', 'block']);
		expect(folded.rows.get('main')?.map((chain) => chain.map(({ part }) => part.id))).toEqual([
			['controller', 'array'],
			['dcdc', 'alternator'],
			['charger', 'shore'],
			['inverter'],
			['12 V rooftop air conditioner'],
		]);
		expect(folded.rows.get('battery')?.map((chain) => chain.map(({ part }) => part.id))).toEqual([
			['chassis'],
		]);
		expect(fold(meshed).parts.map(({ id }) => id)).toContain('dcdc');
	});

	test('a device stands at its own end of the run', () => {
		const run = (at: 'from' | 'to', from: string, to: string): OneLineRun => ({
			from,
			to,
			conductor: '6 AWG',
			lengthM: 2,
			devices: [{ kind: 'fuse', ratingA: 50, at }],
			unprotected: null,
		});
		const load = { id: 'load', kind: 'load', name: 'fridge' } as const;
		const place = (one: OneLineRun, feeds: boolean) => {
			const { shapes } = drawRow([{ run: one, feeds, part: load }], {
				units: 'us',
				width: 300,
				first: noRoom,
			});
			const at = (text: string) => wordsOf({ shapes }).find((word) => word.text === text)?.left as number;
			return at('50 A') < at('6 AWG') ? 'at the busbar' : 'at the far end';
		};
		// Out of the busbar: its own end is where the run comes from.
		expect(place(run('from', 'bus', 'load'), false)).toBe('at the busbar');
		expect(place(run('to', 'bus', 'load'), false)).toBe('at the far end');
		// Into the busbar, as from a charger: the bank's end is where the run goes to.
		expect(place(run('to', 'load', 'bus'), true)).toBe('at the busbar');
		expect(place(run('from', 'load', 'bus'), true)).toBe('at the far end');
	});

	test('the main fuse stands between the battery and the run to the busbar', async () => {
		const figure = await drawOneLine(oneLine, 'phone');
		const top = (text: string) => wordsOf(figure).find((word) => word.text === text)?.top as number;
		expect(top('House battery')).toBeLessThan(top('fuse 300 A'));
		expect(top('fuse 300 A')).toBeLessThan(top('switch 350 A'));
		expect(top('switch 350 A')).toBeLessThan(top('Main bus'));
	});

	test('a busbar is drawn as one thick line without a gap', async () => {
		const figure = await drawOneLine(oneLine, 'phone');
		const bars = pathsOf(figure).filter(({ path }) => path.strokeWidth === 5);
		const upright = bars.filter(({ points }) => points[0]?.[0] === points[1]?.[0]);
		expect(upright).toHaveLength(2);
		for (const { points } of upright)
			expect(points[1]?.[1] as number).toBeGreaterThan((points[0]?.[1] as number) + 200);
	});

	test('what can not be drawn is refused, each fault named', async () => {
		const faulty: OneLinePicture = {
			...oneLine,
			parts: [...oneLine.parts, { id: 'main', kind: 'load', name: 'second main' }],
			runs: [
				{ from: 'main', to: 'moon', conductor: null, lengthM: null, devices: [], unprotected: null },
				{ from: 'main', to: 'main', conductor: null, lengthM: null, devices: [], unprotected: null },
			],
		};
		expect(oneLineProblems(faulty)).toEqual([
			'two parts have the id "main" (the second is "second main")',
			'the run from "main" to "moon" ends at "moon", which is no part',
			'a run begins and ends at "main"',
		]);
		await expect(drawOneLine(faulty, 'phone')).rejects.toThrow(/can't be drawn: two parts .*moon/);
		expect(oneLineProblems({ ...oneLine, parts: [], runs: [] })).toEqual(['there is no part to draw']);
	});
});
