import { monthNames, write, writeNumber } from '@lugbook/core';
import { must, mustBeNumber } from './check.js';
import { type Figure, figure, heading, key, phoneWidth } from './figure.js';
import { plot } from './plot.js';
import { roundScale } from './scale.js';
import { ink, label, line, rectangle, type Shape } from './shape.js';

/** Energy that comes in and goes out on an average day of each month. */
export interface MonthsPicture {
	readonly kind: 'months';
	readonly title: string;
	/** twelve values, January first: what the sun, driving and shore bring on an average day [Wh] */
	readonly inWh: readonly number[];
	/** twelve values: what is used on an average day [Wh] */
	readonly outWh: readonly number[];
}

const inPaint = { fill: ink.accent, stroke: ink.accent, strokeWidth: 1.2 } as const;
const outPaint = { fill: ink.paper, stroke: ink.line, strokeWidth: 1.2 } as const;

export async function drawMonths(picture: MonthsPicture): Promise<Figure> {
	const { title, inWh, outWh } = picture;
	must(
		inWh.length === 12 && outWh.length === 12,
		`${inWh.length} months in and ${outWh.length} out`,
		'there must be 12 of each',
	);
	for (const value of [...inWh, ...outWh]) mustBeNumber(value, 'the energy of a day [Wh]', 0);
	const short = inWh.flatMap((value, month) => (value < (outWh[month] as number) ? [month] : []));
	const head = heading(title, [shortLine(picture, short)], phoneWidth);
	const names = key(
		[
			{ name: 'comes in', sample: bar(inPaint) },
			{ name: 'goes out', sample: bar(outPaint) },
		],
		head.bottom,
		phoneWidth,
	);
	const scale = roundScale(0, Math.max(...inWh, ...outWh) / 1000, 6);
	const drawn = await plot({
		width: phoneWidth,
		top: names.bottom,
		fieldHeight: 190,
		right: 14,
		x: { categories: monthNames.map(() => '') },
		y: scale,
		xName: '',
		yName: 'kWh a day',
		bars: [
			{ values: inWh.map((value) => value / 1000), fill: inPaint.fill, edge: inPaint.stroke },
			{ values: outWh.map((value) => value / 1000), fill: outPaint.fill, edge: outPaint.stroke },
		],
	});
	return figure({
		title,
		alt: altOf(picture, short),
		width: phoneWidth,
		height: drawn.bottom - 10,
		shapes: [...head.shapes, ...names.shapes, ...drawn.shapes, ...monthWords()],
	});

	/** A short month is in bold with a line under it: seen without colour. */
	function monthWords(): Shape[] {
		const y = drawn.field.bottom + 18;
		return monthNames.flatMap((name, month) => {
			const [x] = drawn.at(month, 0);
			const isShort = short.includes(month);
			const letter = label(name.slice(0, 1), x, y, { anchor: 'middle', bold: isShort, size: 13 });
			return isShort ? [letter, line([x - 8, y + 5], [x + 8, y + 5], { strokeWidth: 2.5 })] : [letter];
		});
	}
}

function bar(paint: { fill: string; stroke: string; strokeWidth: number }) {
	return (x: number, y: number): Shape => rectangle({ x: x + 4, y: y - 6, width: 16, height: 12 }, paint);
}

function shortLine(picture: MonthsPicture, short: readonly number[]): string {
	if (short.length === 0) return 'More comes in than goes out in every month.';
	const names = short.map((month) => (monthNames[month] as string).slice(0, 3));
	return `Short in ${short.length === 12 ? 'every month' : names.join(', ')} (underlined); worst ${worstText(picture)}.`;
}

function worstText({ inWh, outWh }: MonthsPicture): string {
	const lacking = outWh.map((value, month) => value - (inWh[month] as number));
	const most = Math.max(...lacking);
	return `${(monthNames[lacking.indexOf(most)] as string).slice(0, 3)}, ${write('energy', most, 'us', { round: 'up', unit: 'kWh', decimals: 1 }).replace(' ', '\u00a0')} a\u00a0day`;
}

function altOf(picture: MonthsPicture, short: readonly number[]): string {
	const kWh = (value: number, round: 'up' | 'down') => writeNumber(value / 1000, 2, round);
	const each = monthNames.map(
		(name, month) =>
			`${name} ${kWh(picture.inWh[month] as number, 'down')} in, ${kWh(picture.outWh[month] as number, 'up')} out${short.includes(month) ? ', short' : ''}`,
	);
	return `${picture.title}. Energy of an average day by month, in kWh: ${each.join('; ')}. ${shortLine(picture, short).replaceAll('\u00a0', ' ')}`;
}
