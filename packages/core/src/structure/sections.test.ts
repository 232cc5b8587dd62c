import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardPattern, readBoardMm, readSection, type ShapeName, sectionPattern } from './section-text.js';
import { isPossible, type Shape, sectionOf, shapeName } from './sections.js';

/** Area and second moment of an outline by strips, to stand against the formulas. */
function byStrips(inside: (x: number, y: number) => boolean, width: number, height: number) {
	const steps = 400;
	const cell = (width / steps) * (height / steps);
	let area = 0;
	let first = 0;
	const points: number[] = [];
	for (let i = 0; i < steps; i += 1) {
		for (let j = 0; j < steps; j += 1) {
			const x = ((i + 0.5) / steps) * width;
			const y = ((j + 0.5) / steps) * height;
			if (!inside(x, y)) continue;
			area += cell;
			first += y * cell;
			points.push(y);
		}
	}
	const middle = first / area;
	return { area, second: points.reduce((sum, y) => sum + (y - middle) ** 2 * cell, 0) };
}

describe('sections against their outline cut into strips', () => {
	test.each([
		{ shape: { shape: 'rectangle', widthMm: 30, heightMm: 6 } as Shape, inside: () => true, box: [30, 6] },
		{
			shape: { shape: 'tube', widthMm: 40, heightMm: 60, wallMm: 3 } as Shape,
			inside: (x: number, y: number) => x < 3 || x > 37 || y < 3 || y > 57,
			box: [40, 60],
		},
		{
			shape: { shape: 'angle', widthMm: 40, heightMm: 60, wallMm: 4 } as Shape,
			inside: (x: number, y: number) => x < 4 || y < 4,
			box: [40, 60],
		},
		{
			shape: { shape: 'round', diameterMm: 20 } as Shape,
			inside: (x: number, y: number) => Math.hypot(x - 10, y - 10) < 10,
			box: [20, 20],
		},
		{
			shape: { shape: 'pipe', diameterMm: 30, wallMm: 2 } as Shape,
			inside: (x: number, y: number) => Math.hypot(x - 15, y - 15) < 15 && Math.hypot(x - 15, y - 15) > 13,
			box: [30, 30],
		},
	])('$shape.shape', ({ shape, inside, box }) => {
		const section = sectionOf(shape);
		const strips = byStrips(inside, box[0] as number, box[1] as number);
		// four hundred strips see a round edge within half a percent
		expect(section.areaMm2 / strips.area).toBeCloseTo(1, 2);
		expect(section.secondMomentMm4 / strips.second).toBeCloseTo(1, 2);
	});
});

describe('angles, whose level axis is no principal axis', () => {
	test('a free angle is softer than one held upright, every other shape is not', () => {
		const angle = sectionOf({ shape: 'angle', widthMm: 40, heightMm: 40, wallMm: 4 });
		expect(angle.freeSecondMomentMm4).toBeLessThan(0.7 * angle.secondMomentMm4);
		const tube = sectionOf({ shape: 'tube', widthMm: 40, heightMm: 40, wallMm: 4 });
		expect(tube.freeSecondMomentMm4).toBe(tube.secondMomentMm4);
	});

	test('equal legs: the free modulus lies within the code factor of 0.8 on the geometric one', () => {
		// AISC 360 F10 takes 0.80 of the geometric modulus for equal legs free to move (from memory).
		const angle = sectionOf({ shape: 'angle', widthMm: 76.2, heightMm: 76.2, wallMm: 6.35 });
		const y = 76.2 - 21.2;
		const geometric = angle.secondMomentMm4 / y;
		expect(angle.modulusMm3).toBeGreaterThan(0.7 * geometric);
		expect(angle.modulusMm3).toBeLessThan(geometric);
	});
});

test('no wall thicker than the shape', () => {
	expect(isPossible({ shape: 'tube', widthMm: 20, heightMm: 40, wallMm: 10 })).toBe(false);
	expect(isPossible({ shape: 'pipe', diameterMm: 20, wallMm: 10 })).toBe(false);
	expect(isPossible({ shape: 'angle', widthMm: 20, heightMm: 20, wallMm: 20 })).toBe(false);
	expect(() => sectionOf({ shape: 'tube', widthMm: 20, heightMm: 20, wallMm: 10 })).toThrow(
		'20 × 20 × 10 mm tube',
	);
});

test('more metal is stiffer', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 10, max: 200, noNaN: true }),
			fc.double({ min: 10, max: 200, noNaN: true }),
			fc.double({ min: 0.5, max: 4, noNaN: true }),
			(widthMm, heightMm, wallMm) => {
				const tube = sectionOf({ shape: 'tube', widthMm, heightMm, wallMm });
				const solid = sectionOf({ shape: 'rectangle', widthMm, heightMm });
				const thicker = sectionOf({ shape: 'tube', widthMm, heightMm, wallMm: wallMm * 1.05 });
				expect(tube.secondMomentMm4).toBeLessThan(solid.secondMomentMm4);
				expect(thicker.secondMomentMm4).toBeGreaterThan(tube.secondMomentMm4);
			},
		),
	);
});

describe('sections as people write them', () => {
	test.each<[string, ShapeName | undefined, string]>([
		['40x40x2', undefined, '40 × 40 × 2 mm tube'],
		['40 x 40 x 2 mm', undefined, '40 × 40 × 2 mm tube'],
		['40×20×1,5', undefined, '40 × 20 × 1.5 mm tube'],
		['40x4', 'angle', '40 × 40 × 4 mm angle'],
		['40x2', 'tube', '40 × 40 × 2 mm tube'],
		['30x6', undefined, '30 × 6 mm solid'],
		['25x2', 'pipe', '25 × 2 mm round tube'],
		['50x30x4', 'angle', '50 × 30 × 4 mm angle'],
		['1.5x1.5x0.125', undefined, '38.1 × 38.1 × 3.17 mm tube'],
		['2x2x0.125 in', undefined, '50.8 × 50.8 × 3.17 mm tube'],
		['2x4', undefined, '50.8 × 101.6 mm solid'],
	])('%s %s is %s', (text, named, name) => {
		const shape = readSection(text, named);
		expect(shape === null ? null : shapeName(shape, 'mm')).toBe(name);
	});

	test.each<[string, ShapeName | undefined]>([
		['40', undefined],
		['forty', undefined],
		['40x40x25', undefined],
		['40x30', 'tube'],
		['0x40x2', undefined],
		['40x40x2', 'rectangle'],
	])('%s %s is none', (text, named) => {
		expect(readSection(text, named)).toBeNull();
	});

	test('the pattern finds a section and leaves counts of things alone', () => {
		const find = (text: string) => text.match(new RegExp(sectionPattern, 'giu'));
		expect(find('rail 40x40x2 span 1.2 m')).toEqual(['40x40x2']);
		expect(find('rail 1.5x1.5x0.125 in, 4 ft')).toEqual(['1.5x1.5x0.125 in']);
		expect(find('2x200w panels')).toBeNull();
		expect(find('2x80 kg people')).toBeNull();
		expect(find('2 x 80kg')).toBeNull();
		expect(find('40 x 40 x 2 mm tube')).toEqual(['40 x 40 x 2 mm']);
		expect(find('a 40x40x2 in the van')).toEqual(['40x40x2']);
		expect(find('two 30x6 slats')).toEqual(['30x6']);
	});
});

describe('boards by their nominal thickness', () => {
	test('found before the word for a board alone', () => {
		const find = (text: string) => text.match(new RegExp(boardPattern, 'giu'));
		expect(find('shelf 3/4 plywood 16 in wide')).toEqual(['3/4']);
		expect(find('1/2 in birch ply')).toEqual(['1/2']);
		expect(find('3/4 in bolt')).toBeNull();
	});
	test.each([
		['3/4', 19.05],
		['1/2', 12.7],
	])('%s', (text, millimetres) => {
		expect(readBoardMm(text)).toBeCloseTo(millimetres, 9);
	});
	test.each(['3', '3/0', 'three'])('%s is none', (text) => {
		expect(readBoardMm(text)).toBeUndefined();
	});
});
