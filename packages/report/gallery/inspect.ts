import { expect } from 'vitest';
import type { Figure } from '../src/picture/figure.js';
import { textWidth } from '../src/picture/font.js';
import type { PathShape, Shape } from '../src/picture/shape.js';

/** A word of a figure with the box it takes up [CSS px]. */
export interface Word {
	readonly text: string;
	readonly size: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

type Matrix = readonly [number, number, number, number, number, number];
const unit: Matrix = [1, 0, 0, 1, 0, 0];

/** All words of a figure, where they stand in it; for tests that nothing is cut and nothing overlaps. */
export function wordsOf({ shapes }: Pick<Figure, 'shapes'>): Word[] {
	return shapes.flatMap((shape) => words(shape, unit));
}

function words(shape: Shape, at: Matrix): Word[] {
	if (shape.kind === 'path') return [];
	if (shape.kind === 'group') {
		const inside = times(at, shape.transform);
		return shape.shapes.flatMap((inner) => words(inner, inside));
	}
	const width = textWidth(shape.text, shape.size, shape.bold);
	const start = shape.anchor === 'start' ? 0 : shape.anchor === 'end' ? -width : -width / 2;
	const [x0, y0] = applied(at, shape.x + start, shape.y - shape.size * 0.74);
	const [x1, y1] = applied(at, shape.x + start + width, shape.y + shape.size * 0.22);
	return [
		{
			text: shape.text,
			size: shape.size,
			left: Math.min(x0, x1),
			right: Math.max(x0, x1),
			top: Math.min(y0, y1),
			bottom: Math.max(y0, y1),
		},
	];
}

function overlap(a: Word, b: Word): number {
	const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
	const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
	return width > 0 && height > 0 ? Math.min(width, height) : 0;
}

/** Fails where a word of the figure is cut off, too small or over another one. */
export function expectReadable(figure: Figure): void {
	const words = wordsOf(figure).filter(({ text }) => text.trim() !== '');
	for (const word of words) {
		const where = `"${word.text}" in "${figure.title}"`;
		expect(word.left, `${where} is cut at the left`).toBeGreaterThanOrEqual(0);
		expect(word.right, `${where} is cut at the right`).toBeLessThanOrEqual(figure.width);
		expect(word.top, `${where} is cut at the top`).toBeGreaterThanOrEqual(0);
		expect(word.bottom, `${where} is cut at the bottom`).toBeLessThanOrEqual(figure.height);
		expect(word.size, `${where} is small`).toBeGreaterThanOrEqual(11);
	}
	for (const [index, word] of words.entries()) {
		for (const other of words.slice(index + 1)) {
			expect(overlap(word, other), `"${word.text}" over "${other.text}" in "${figure.title}"`).toBeLessThan(
				1.5,
			);
		}
	}
}

/** All paths of a figure with their corner points in the figure; curves by their ends. */
export function pathsOf({
	shapes,
}: Pick<Figure, 'shapes'>): { path: PathShape; points: [number, number][] }[] {
	return shapes.flatMap((shape) => paths(shape, unit));
}

function paths(shape: Shape, at: Matrix): { path: PathShape; points: [number, number][] }[] {
	if (shape.kind === 'text') return [];
	if (shape.kind === 'group') {
		const inside = times(at, shape.transform);
		return shape.shapes.flatMap((inner) => paths(inner, inside));
	}
	return [{ path: shape, points: cornersOf(shape.d).map(([x, y]) => applied(at, x, y)) }];
}

function cornersOf(d: string): [number, number][] {
	const corners: [number, number][] = [];
	let [x, y] = [0, 0];
	for (const [, command = '', list = ''] of d.matchAll(/([MLHVhvacZ])([^MLHVhvacZ]*)/g)) {
		const values = list
			.trim()
			.split(/[\s,]+/)
			.filter((part) => part !== '')
			.map(Number);
		const last = (count: number) => values.slice(-count) as [number, number];
		switch (command) {
			case 'M':
			case 'L':
				[x, y] = last(2);
				break;
			case 'H':
				x = values[0] as number;
				break;
			case 'V':
				y = values[0] as number;
				break;
			case 'h':
				x += values[0] as number;
				break;
			case 'v':
				y += values[0] as number;
				break;
			case 'a':
			case 'c':
				x += last(2)[0];
				y += last(2)[1];
				break;
		}
		corners.push([x, y]);
	}
	return corners;
}

function times(a: Matrix, b: Matrix): Matrix {
	return [
		a[0] * b[0] + a[2] * b[1],
		a[1] * b[0] + a[3] * b[1],
		a[0] * b[2] + a[2] * b[3],
		a[1] * b[2] + a[3] * b[3],
		a[0] * b[4] + a[2] * b[5] + a[4],
		a[1] * b[4] + a[3] * b[5] + a[5],
	];
}

function applied(m: Matrix, x: number, y: number): [number, number] {
	return [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];
}
