import { shownIn, type UnitHabit, write, writeNumber } from '@lugbook/core';
import { must, mustBeNumber } from './check.js';
import { type Figure, figure, heading, phoneWidth, strokes } from './figure.js';
import { textWidth } from './font.js';
import { clearTag, plot, tag } from './plot.js';
import { roundScale, spread } from './scale.js';
import { circle, ink, label, line, type Shape, smallText } from './shape.js';

/** Voltage drop of a run against its length, for the size chosen and its neighbours. */
export interface DropPicture {
	readonly kind: 'drop';
	readonly units: UnitHabit;
	readonly currentA: number;
	readonly voltageV: number;
	/** allowed drop, as a share of the voltage */
	readonly limit: number;
	/** one way [m] */
	readonly lengthM: number;
	readonly sizes: readonly DropSize[];
}

export interface DropSize {
	/** "4 AWG" */
	readonly name: string;
	/** drop at the run's own length, as a share of the voltage */
	readonly drop: number;
	readonly role: 'smaller' | 'chosen' | 'larger';
}

const strokeOf = { chosen: strokes[0], smaller: strokes[1], larger: strokes[2] } as const;

/**
 * The drop grows in proportion to the length, so each size is a straight line through nothing at no length and its
 * drop at the run's length.
 */
export async function drawDrop(picture: DropPicture): Promise<Figure> {
	const { units, lengthM, limit, sizes } = picture;
	must(sizes.length > 0, 'no size', 'there must be at least one');
	must(lengthM > 0 && Number.isFinite(lengthM), `${lengthM} m as the length`, 'it must be above 0');
	mustBeNumber(picture.currentA, 'the current [A]', 0);
	mustBeNumber(picture.voltageV, 'the voltage [V]', 0);
	mustBeNumber(limit, 'the limit of the drop', 0);
	for (const { name, drop } of sizes) mustBeNumber(drop, `the drop of ${name}`, 0);
	const length = shownIn('length', lengthM, units);
	const lengthText = write('length', lengthM, units, { round: 'up' });
	const title = 'Voltage drop against length';
	const head = heading(
		title,
		[
			`${write('current', picture.currentA, units, { round: 'up' })} at ${write('voltage', picture.voltageV, units)}; this run is ${lengthText} one way`,
		],
		phoneWidth,
	);
	const x = roundScale(0, length.value * 1.4, 5);
	const steepest = Math.max(...sizes.map(({ drop }) => drop), 1e-6);
	const y = roundScale(0, Math.max(limit * 125, (steepest * 100 * x.max) / length.value), 6);
	const ofSize = (size: DropSize, at: number) => (size.drop * 100 * at) / length.value;
	const nameWidth = Math.max(...sizes.map(({ name, role }) => textWidth(name, 13, role === 'chosen')));
	const drawn = await plot({
		width: phoneWidth,
		top: head.bottom,
		fieldHeight: 230,
		right: Math.ceil(nameWidth) + 20,
		x,
		y,
		xName: `one-way length, ${length.symbol}`,
		yName: 'drop, % of the voltage',
		lines: sizes.map((size) => ({
			points: [
				[0, 0],
				[x.max, ofSize(size, x.max)],
			],
			...strokeOf[size.role],
		})),
	});
	return figure({
		title,
		alt: altOf(picture, lengthText),
		width: phoneWidth,
		height: drawn.bottom + 8,
		shapes: [...head.shapes, ...drawn.shapes, ...words()],
	});

	function words(): Shape[] {
		const { field, at } = drawn;
		const [runX] = at(length.value, 0);
		const [, limitY] = at(0, limit * 100);
		const nameYs = spread(
			sizes.map((size) => at(0, ofSize(size, x.max))[1]),
			16,
			{ from: field.top, to: field.bottom - 4 },
		);
		const valueYs = spread(
			sizes.map((size) => at(0, size.drop * 100)[1] + 10),
			15,
			{ from: field.top + 26, to: field.bottom - 9 },
		);
		// In the way of the limit's name: the lines, the marker of this run and the figures beside it.
		const curves = [
			...sizes.map((size) => [at(0, 0), at(x.max, ofSize(size, x.max))]),
			[at(length.value, 0), at(length.value, y.max)],
			...sizes.map((size, index): [number, number][] => {
				const right = runX + 12 + textWidth(dropText(size), smallText, true);
				const middle = valueYs[index] as number;
				return [middle - 8, middle, middle + 8].flatMap((height): [number, number][] => [
					[runX, height],
					[right, height],
				]);
			}),
		];
		const limitPlaces = [limitY - 10, limitY + 10].flatMap((middle) => [
			[field.left + 5, middle, 'start'] as const,
			[field.right - 5, middle, 'end'] as const,
			[runX + 60, middle, 'start'] as const,
		]);
		return [
			line([field.left, limitY], [field.right, limitY], { dash: [9, 3, 2, 3] }),
			line([runX, field.top], [runX, field.bottom], { strokeWidth: 1, stroke: ink.quiet }),
			...clearTag(`limit ${limitText(limit)}`, limitPlaces, curves),
			...tag('this run', runX - 6, field.top + 11, { anchor: 'end' }),
			...sizes.flatMap((size, index) => [
				circle(runX, at(0, size.drop * 100)[1], 4, { fill: strokeOf[size.role].colour }),
				...tag(dropText(size), runX + 7, valueYs[index] as number, {
					bold: size.role === 'chosen',
				}),
				label(size.name, field.right + 6, (nameYs[index] as number) + 4.6, {
					size: 13,
					bold: size.role === 'chosen',
				}),
			]),
		];
	}
}

/** Rounded up, as in the answer: a drop above its limit is never read as at it. */
function dropText({ drop }: DropSize): string {
	return `${writeNumber(drop * 100, 1, 'up')} %`;
}

/** As it was asked for: no rounding may loosen it. */
function limitText(limit: number): string {
	return `${writeNumber(limit * 100, 2, 'down')} %`;
}

function altOf({ sizes, limit, currentA, voltageV, units }: DropPicture, lengthText: string): string {
	const each = sizes.map(
		(size) =>
			`${size.name}${size.role === 'chosen' ? ' (this run)' : ''} ${dropText(size)}${size.drop > limit ? ', over the limit' : ''}`,
	);
	return `Voltage drop against one-way length for ${sizes.length} conductor sizes at ${write('current', currentA, units, { round: 'up' })} and ${write('voltage', voltageV, units)}. At this run's ${lengthText}: ${each.join('; ')}. The limit is ${limitText(limit)}.`;
}
