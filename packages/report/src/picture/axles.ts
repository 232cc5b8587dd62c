import { shownIn, type UnitHabit, writeNumber } from '@lugbook/core';
import { must, mustBeNumber } from './check.js';
import { type Figure, figure, heading, margin, phoneWidth } from './figure.js';
import { textWidth } from './font.js';
import { ink, label, line, rectangle, type Shape } from './shape.js';

/** What stands on each axle, and all of it, against the ratings. */
export interface AxlesPicture {
	readonly kind: 'axles';
	readonly title: string;
	readonly units: UnitHabit;
	readonly rows: readonly AxleRow[];
}

export interface AxleRow {
	/** "front axle", "whole van" */
	readonly name: string;
	readonly loadKg: number;
	/** from the vehicle's label; null where it is not known */
	readonly ratingKg: number | null;
}

const barHeight = 20;
const rowHeight = 76;

export async function drawAxles(picture: AxlesPicture): Promise<Figure> {
	const { title, rows } = picture;
	must(rows.length > 0, 'no load', 'there must be at least one');
	for (const { name, loadKg, ratingKg } of rows) {
		mustBeNumber(loadKg, `the load of the ${name} [kg]`);
		if (ratingKg !== null) mustBeNumber(ratingKg, `the rating of the ${name} [kg]`, 1);
	}
	const head = heading(title, [], phoneWidth);
	const left = margin;
	const room = phoneWidth - 2 * margin;
	const shapes: Shape[] = [...head.shapes];
	rows.forEach((row, index) => {
		const top = head.bottom + 6 + index * rowHeight;
		const full = Math.max(row.loadKg * 1.04, (row.ratingKg ?? row.loadKg) * 1.15) || 1;
		const along = (massKg: number) => (Math.max(0, massKg) / full) * room;
		const { verdict, load, rating: ratingText } = wordsOf(row, picture.units);
		shapes.push(
			label(capital(row.name), left, top + 12, { bold: true, size: 14 }),
			label(load, left + room, top + 12, { anchor: 'end', size: 14 }),
			rectangle(
				{ x: left, y: top + 20, width: along(row.loadKg), height: barHeight },
				{ fill: ink.fill, stroke: ink.accent, strokeWidth: 1.5 },
			),
		);
		if (row.ratingKg === null) {
			shapes.push(label(verdict, left, top + 56, { size: 13, bold: true }));
			return;
		}
		const rating = left + along(row.ratingKg);
		const text = `rating ${ratingText}`;
		const half = textWidth(text, 13) / 2;
		// Under its mark, but never over the verdict nor over the edge.
		const ratingEnd = Math.min(
			Math.max(rating + half, left + textWidth(verdict, 13, true) + 12 + 2 * half),
			left + room,
		);
		if (row.loadKg > row.ratingKg) {
			// What is over the rating is hatched and said in words.
			shapes.push(...hatched({ from: rating, to: left + along(row.loadKg), top: top + 20 }));
		}
		shapes.push(
			line([rating, top + 16], [rating, top + 46], { strokeWidth: 3, stroke: ink.text }),
			label(text, ratingEnd, top + 58, { anchor: 'end', size: 13 }),
			label(verdict, left, top + 58, { size: 13, bold: true }),
		);
	});
	return figure({
		title,
		alt: altOf(picture),
		width: phoneWidth,
		height: head.bottom + rows.length * rowHeight + 8,
		shapes,
	});
}

function hatched({ from, to, top }: { from: number; to: number; top: number }): Shape[] {
	const shapes: Shape[] = [];
	for (let x = from + 4; x < to; x += 6) {
		const reach = Math.min(6, to - x);
		shapes.push(line([x, top + barHeight], [x + reach, top], { stroke: ink.text, strokeWidth: 1.2 }));
	}
	return shapes;
}

/**
 * The load rounds up, the rating down, and what is left is the difference of the two as shown: a person who checks the
 * subtraction finds it right, and never more left than there is.
 */
function wordsOf(
	{ loadKg, ratingKg }: AxleRow,
	units: UnitHabit,
): { readonly load: string; readonly rating: string; readonly verdict: string } {
	const load = whole(loadKg, units, 'up');
	if (ratingKg === null) return { load: load.text, rating: '', verdict: 'rating not known' };
	const rating = whole(ratingKg, units, 'down');
	const left = rating.value - load.value;
	const share = writeNumber((left / rating.value) * 100, 0, 'down');
	const verdict =
		loadKg > ratingKg
			? `OVER by ${-left} ${load.symbol}`
			: left <= 0
				? 'nothing left'
				: `${left} ${load.symbol} left (${share} %)`;
	return { load: load.text, rating: rating.text, verdict };
}

function whole(massKg: number, units: UnitHabit, round: 'up' | 'down') {
	const { value, symbol } = shownIn('mass', massKg, units);
	const figure = writeNumber(value, 0, round);
	return { value: Number(figure), symbol, text: `${figure} ${symbol}` };
}

function capital(text: string): string {
	return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function altOf({ title, rows, units }: AxlesPicture): string {
	const each = rows.map((row) => {
		const { load, rating, verdict } = wordsOf(row, units);
		return `${row.name} ${load}${rating === '' ? '' : ` of ${rating}`}, ${verdict}`;
	});
	return `${title}: ${each.join('; ')}.`;
}
