import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expectReadable, pathsOf, type Word, wordsOf } from '../../gallery/inspect.js';
import { gallery, months, oneLine, weekOfCharge } from '../../gallery/pictures.js';
import type { AxlesPicture } from './axles.js';
import type { ChargePicture } from './charge.js';
import { drawPicture, type Picture } from './draw.js';
import type { DropPicture, DropSize } from './drop.js';
import { figureSvg, slices } from './figure.js';
import { fontFiles } from './font.js';
import type { MonthsPicture } from './months.js';
import type { SwingPicture } from './swing.js';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const units = fc.constantFrom('us' as const, 'metric' as const);

const drops: fc.Arbitrary<DropPicture> = fc
	.record({
		kind: fc.constant('drop' as const),
		units,
		currentA: share(0.5, 400),
		voltageV: fc.constantFrom(12, 24, 48, 120, 230),
		limit: fc.constantFrom(0.01, 0.03, 0.1),
		lengthM: share(0.2, 40),
		middle: share(0.001, 0.15),
		ratios: fc.tuple(share(1.05, 2), share(0.4, 0.95)),
		name: fc.constantFrom('4 AWG', '2 x 4/0 AWG', '95 mm²'),
		which: fc.constantFrom('all', 'smaller', 'larger', 'alone'),
	})
	.map(({ middle, ratios, name, which, ...rest }) => {
		const sizes: DropSize[] = [{ name, drop: middle, role: 'chosen' }];
		if (which === 'all' || which === 'smaller')
			sizes.unshift({ name: 'thinner', drop: middle * ratios[0], role: 'smaller' });
		if (which === 'all' || which === 'larger')
			sizes.push({ name: 'thicker', drop: middle * ratios[1], role: 'larger' });
		return { ...rest, sizes };
	});

const charges: fc.Arbitrary<ChargePicture> = fc
	.record({
		days: fc.constantFrom(1, 2, 3, 7),
		startHour: fc.integer({ min: 0, max: 23 }),
		units,
		reserve: fc.option(share(0, 1), { nil: null }),
		names: fc.uniqueArray(fc.constantFrom('as planned', 'parked', 'no sun'), { minLength: 1, maxLength: 3 }),
		seed: fc.array(share(0, 1), { minLength: 24 * 7 + 1, maxLength: 24 * 7 + 1 }),
	})
	.map(({ days, names, seed, ...rest }) => ({
		kind: 'charge' as const,
		title: 'State of charge',
		stepH: 1,
		...rest,
		cases: names.map((name) => ({ name, charge: seed.slice(0, days * 24 + 1) })),
	}));

const yearly = fc.array(share(0, 9000), { minLength: 12, maxLength: 12 });
const years: fc.Arbitrary<MonthsPicture> = fc.record({
	kind: fc.constant('months' as const),
	title: fc.constant('Energy in and out by month'),
	inWh: yearly,
	outWh: yearly,
});

const axles: fc.Arbitrary<AxlesPicture> = fc.record({
	kind: fc.constant('axles' as const),
	title: fc.constant('Loads against ratings'),
	units,
	rows: fc.array(
		fc.record({
			name: fc.constantFrom('front axle', 'rear axle', 'whole van'),
			loadKg: share(0, 6000),
			ratingKg: fc.option(share(500, 6000), { nil: null }),
		}),
		{ minLength: 1, maxLength: 4 },
	),
});

const swings: fc.Arbitrary<SwingPicture> = fc
	.record({
		units,
		closed: fc.integer({ min: -90, max: 20 }),
		span: fc.integer({ min: 20, max: 110 }),
		forces: fc.array(fc.tuple(share(-400, 400), share(-400, 400), share(-400, 400)), {
			minLength: 1,
			maxLength: 3,
		}),
	})
	.map(({ units: habit, closed, span, forces }) => ({
		kind: 'swing' as const,
		title: 'Hand force over the swing',
		units: habit,
		curves: forces.map((three, index) => ({
			temperatureC: [20, -10, 40][index] ?? 0,
			points: three.map((handN, step) => ({ angleDeg: closed + (span * step) / 2, handN })),
		})),
	}));

const any: fc.Arbitrary<Picture> = fc.oneof(drops, charges, years, axles, swings);

const all = Object.entries(gallery);

describe('every picture', () => {
	test.each(all)('%s: no word is cut, small or over another', async (_, picture) => {
		expectReadable(await drawPicture(picture));
		expectReadable(await drawPicture(picture, 'page'));
	});

	test('of any record: no word is cut, small or over another', async () => {
		await fc.assert(
			fc.asyncProperty(any, async (picture) => expectReadable(await drawPicture(picture))),
			{ numRuns: 150 },
		);
	});

	test.each(all)('%s: as wide as a phone, or no wider than its wiring needs', async (name, picture) => {
		const { width } = await drawPicture(picture);
		if (name === 'one-line-meshed') expect(width).toBeGreaterThan(360);
		else expect(width).toBe(360);
	});

	test.each(all)('%s: its words are truly drawn', async (_, picture) => {
		const figure = await drawPicture(picture);
		const [title] = wordsOf(figure) as [Word];
		const dark = (fonts: string[]) => {
			const image = new Resvg(figureSvg(figure), {
				font: { loadSystemFonts: false, fontFiles: fonts, defaultFontFamily: 'Noto Sans' },
			}).render();
			// Each look at the image's own pixels copies them all.
			const { pixels, width } = image;
			let count = 0;
			for (let y = Math.floor(title.top); y < title.bottom; y += 1) {
				for (let x = Math.floor(title.left); x < title.right; x += 1) {
					if ((pixels[(y * width + x) * 4] as number) < 100) count += 1;
				}
			}
			return count;
		};
		const area = (title.right - title.left) * (title.bottom - title.top);
		expect(dark([])).toBe(0);
		expect(dark(Object.values(fontFiles))).toBeGreaterThan(area * 0.1);
	});

	test('of the same record is the same, whatever was drawn before it', async () => {
		const first = await Promise.all(all.map(async ([, picture]) => figureSvg(await drawPicture(picture))));
		for (const [, picture] of all.toReversed()) await drawPicture(picture, 'page');
		const again: string[] = [];
		for (const [, picture] of all) again.push(figureSvg(await drawPicture(structuredClone(picture))));
		expect(again).toEqual(first);
	});

	test('holds nothing but paths and words: no script, style, link or id', async () => {
		for (const [, picture] of all) {
			const svg = figureSvg(await drawPicture(picture));
			const tags = new Set([...svg.matchAll(/<([a-z]+)/gi)].map(([, tag]) => tag));
			expect(
				[...tags].filter((tag) => !['svg', 'title', 'desc', 'g', 'path', 'text'].includes(tag as string)),
			).toEqual([]);
			expect(svg).not.toMatch(/\s(?:id|class|style|href|on\w+)=/);
		}
	});
});

describe('voltage drop against length', () => {
	test('the description tells each size with its drop, and which are over the limit', async () => {
		await fc.assert(
			fc.asyncProperty(drops, async (picture) => {
				const { alt } = await drawPicture(picture);
				const told = [
					...alt.matchAll(/(?:^|[:;] )([^;:]+?)(?: \(this run\))? ([\d.]+) %(, over the limit)?(?=[;.])/g),
				];
				const limit = picture.limit * 100;
				expect(told).toHaveLength(picture.sizes.length);
				for (const [index, size] of picture.sizes.entries()) {
					const [, name, figure, over] = told[index] as RegExpExecArray;
					expect(name).toBe(size.name);
					expect(Math.abs(Number(figure) - size.drop * 100)).toBeLessThanOrEqual(0.1);
					expect(over !== undefined).toBe(size.drop > picture.limit);
					// What is over the limit never reads as on it or under it.
					if (size.drop > picture.limit) expect(Number(figure)).toBeGreaterThan(limit);
				}
			}),
		);
	});

	test('each line runs through its drop at the length of the run', async () => {
		const picture = gallery['drop-against-length'] as DropPicture;
		const figure = await drawPicture(picture);
		const dots = pathsOf(figure).filter(({ path }) => path.d.includes('a4 4') && path.stroke === null);
		const lines = pathsOf(figure).filter(({ path, points }) => path.strokeWidth >= 2 && points.length === 2);
		expect(dots).toHaveLength(3);
		expect(lines).toHaveLength(3);
		for (const [index, line] of lines.entries()) {
			const [[x0, y0], [x1, y1]] = line.points as [[number, number], [number, number]];
			const [x, y] = [(dots[index]?.points[0]?.[0] as number) + 4, dots[index]?.points[0]?.[1] as number];
			expect(y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)).toBeCloseTo(y, 0);
		}
		// Heights over the axis stand in the ratio of the drops.
		const base = Math.max(...lines.map(({ points }) => points[0]?.[1] as number));
		const heights = dots.map(({ points }) => base - (points[0]?.[1] as number));
		expect((heights[0] as number) / (heights[1] as number)).toBeCloseTo(
			(picture.sizes[0]?.drop as number) / (picture.sizes[1]?.drop as number),
			1,
		);
	});
});

describe('state of charge', () => {
	test('the lowest point is told, rounded down, with its hour; and whether the reserve is kept', async () => {
		await fc.assert(
			fc.asyncProperty(charges, async (picture) => {
				const { alt } = await drawPicture(picture);
				const charge = picture.cases[0]?.charge ?? [];
				const lowest = Math.min(...charge);
				const told = Number(/lowest (\d+) %/.exec(alt)?.[1]);
				expect(told).toBe(Math.floor(lowest * 100 + 1e-7));
				if (picture.reserve === null) expect(alt).not.toContain('reserve');
				else expect(alt.includes('not kept')).toBe(lowest < picture.reserve);
			}),
			{ numRuns: 60 },
		);
	});

	test('names the hour as the shop says it', async () => {
		const { alt } = await drawPicture(weekOfCharge);
		expect(alt).toContain('on day 7');
		expect(alt).toMatch(/at \d+ am on day/);
		const metric = await drawPicture({ ...weekOfCharge, units: 'metric' });
		expect(metric.alt).toMatch(/at \d+:00 on day/);
	});

	test.each([
		['a share above 1', [{ name: 'a', charge: [0.5, 1.2] }], /read 1.2 .* shares from 0 to 1/],
		['one value', [{ name: 'a', charge: [0.5] }], /read 1 values .* two or more/],
		['no case', [], /read 0 cases/],
	])('%s is refused with what was read', async (_, cases, message) => {
		await expect(async () => drawPicture({ ...weekOfCharge, cases })).rejects.toThrow(message);
	});
});

describe('energy by month', () => {
	test('the short months are told, and the worst of them, never better than it is', async () => {
		await fc.assert(
			fc.asyncProperty(years, async (picture) => {
				const { alt } = await drawPicture(picture);
				const short = picture.inWh.filter((value, month) => value < (picture.outWh[month] as number)).length;
				expect([...alt.matchAll(/, short/g)]).toHaveLength(short);
				const most = Math.max(
					...picture.outWh.map((value, month) => value - (picture.inWh[month] as number)),
				);
				if (short > 0) {
					const told = Number(/worst \w+, ([\d.]+) kWh/.exec(alt)?.[1]);
					expect(told * 1000).toBeGreaterThanOrEqual(most - 1e-6);
					expect(told * 1000).toBeLessThan(most + 101);
				}
			}),
			{ numRuns: 60 },
		);
	});

	test('eleven months are refused', async () => {
		await expect(async () => drawPicture({ ...months, inWh: months.inWh.slice(1) })).rejects.toThrow(
			'read 11 months in and 12 out',
		);
	});
});

describe('axle loads', () => {
	test('the words are right: load up, rating down, left no more than there is, over said as over', async () => {
		await fc.assert(
			fc.asyncProperty(axles, async (picture) => {
				const { alt } = await drawPicture(picture);
				const factor = picture.units === 'us' ? 0.45359237 : 1;
				const told = alt.slice(alt.indexOf(': ') + 2, -1).split('; ');
				picture.rows.forEach(({ loadKg, ratingKg }, index) => {
					const text = told[index] as string;
					const load = Number(/ (\d+) (?:lb|kg)/.exec(text)?.[1]);
					expect(load * factor).toBeGreaterThanOrEqual(loadKg - 1e-6);
					if (ratingKg === null) {
						expect(text).toContain('rating not known');
						return;
					}
					const rating = Number(/of (\d+)/.exec(text)?.[1]);
					expect(rating * factor).toBeLessThanOrEqual(ratingKg + 1e-6);
					expect(text.includes('OVER')).toBe(loadKg > ratingKg);
					const left = /(\d+) (?:lb|kg) left/.exec(text)?.[1];
					if (left !== undefined) {
						expect(Number(left)).toBe(rating - load);
						expect(Number(left) * factor).toBeLessThanOrEqual(ratingKg - loadKg + 1e-6);
					}
				});
			}),
		);
	});
});

describe('hand force', () => {
	test('the description tells where the hand lifts most, rounded up', async () => {
		await fc.assert(
			fc.asyncProperty(swings, async (picture) => {
				const { alt } = await drawPicture(picture);
				const told = [...alt.matchAll(/hardest (lift|press down) ([\d.]+) (N|lbf)/g)];
				picture.curves.forEach(({ points }, index) => {
					const hardest = Math.max(...points.map(({ handN }) => handN));
					const [, word, figure, unit] = told[index] as RegExpExecArray;
					expect(word).toBe(hardest >= 0 ? 'lift' : 'press down');
					const force = Number(figure) * (unit === 'lbf' ? 4.4482216152605 : 1);
					expect(force).toBeGreaterThanOrEqual(Math.abs(hardest) - 1e-6);
				});
			}),
			{ numRuns: 60 },
		);
	});
});

describe('a record that can not be drawn is refused with what was read', () => {
	const drop = gallery['drop-against-length'] as DropPicture;
	const hand = gallery['hand-force'] as SwingPicture;
	const loads = gallery['axle-loads'] as AxlesPicture;
	test.each<[string, Picture, string]>([
		['a run of no length', { ...drop, lengthM: 0 }, 'read 0 m as the length; it must be above 0'],
		['no size', { ...drop, sizes: [] }, 'read no size'],
		[
			'a drop that is no number',
			{ ...drop, sizes: [{ name: '4 AWG', drop: Number.NaN, role: 'chosen' }] },
			'read NaN as the drop of 4 AWG',
		],
		['a step of no time', { ...weekOfCharge, stepH: 0 }, 'read 0 h from value to value'],
		['a reserve of 20', { ...weekOfCharge, reserve: 20 }, 'read 20 as the reserve; it must be a share'],
		[
			'energy below nothing',
			{ ...months, inWh: months.inWh.map(() => -1) },
			'read -1 as the energy of a day',
		],
		['no axle', { ...loads, rows: [] }, 'read no load'],
		[
			'a rating of nothing',
			{ ...loads, rows: [{ name: 'rear axle', loadKg: 900, ratingKg: 0 }] },
			'read 0 as the rating of the rear axle',
		],
		['no curve', { ...hand, curves: [] }, 'read 0 curves'],
		[
			'one point',
			{ ...hand, curves: [{ temperatureC: 20, points: [{ angleDeg: 0, handN: 1 }] }] },
			'read 1 points of a curve',
		],
	])('%s', async (_, picture, message) => {
		const drawing = drawPicture(picture);
		await expect(drawing).rejects.toThrow(RangeError);
		await expect(drawing).rejects.toThrow(message);
	});
});

describe('a figure cut for pages', () => {
	test('is cut only between what stands together, and nothing is lost', async () => {
		const many = Array.from({ length: 40 }, (_, index) => `load ${index + 1}`);
		const wiring = {
			...oneLine,
			parts: [...oneLine.parts, ...many.map((name) => ({ id: name, kind: 'load' as const, name }))],
			runs: [
				...oneLine.runs,
				...many.map((to) => ({
					from: 'block',
					to,
					conductor: '14 AWG',
					lengthM: 3,
					devices: [{ kind: 'fuse' as const, ratingA: 5, at: 'from' as const }],
					unprotected: null,
				})),
			],
		};
		const whole = await drawPicture(wiring, 'page');
		const pieces = slices(whole, 800);
		expect(pieces.length).toBeGreaterThan(3);
		for (const { height } of pieces) expect(height).toBeLessThanOrEqual(800);
		expect(pieces.reduce((sum, { height }) => sum + height, 0)).toBeCloseTo(whole.height, 6);
		const inside = pieces.flatMap((piece) =>
			wordsOf(piece).filter(({ top, bottom }) => bottom > 0.5 && top < piece.height - 0.5),
		);
		expect(inside.map(({ text }) => text).sort()).toEqual(
			wordsOf(whole)
				.map(({ text }) => text)
				.sort(),
		);
		for (const piece of pieces) {
			for (const word of wordsOf(piece)) {
				const cut =
					(word.top < -0.5 && word.bottom > 0.5) ||
					(word.top < piece.height - 0.5 && word.bottom > piece.height + 0.5);
				expect(cut, `"${word.text}" is cut`).toBe(false);
			}
		}
		expect(pieces[0]?.alt).toBe(whole.alt);
	});

	test('stays whole where it may not be cut', async () => {
		const chart = await drawPicture(weekOfCharge);
		expect(slices(chart, 100).map(({ height }) => height)).toEqual([chart.height]);
	});
});
