import { type UnitHabit, writeNumber } from '@lugbook/core';
import { must, mustBeNumber } from './check.js';
import { type Figure, figure, heading, key, phoneWidth, strokeSample, strokes } from './figure.js';
import { textWidth } from './font.js';
import { clearTag, plot } from './plot.js';
import { circle, ink, label, line, type Shape, smallText } from './shape.js';

/** The battery bank's state of charge over hours or days, one line for each case. */
export interface ChargePicture {
	readonly kind: 'charge';
	/** "A day in December" */
	readonly title: string;
	readonly units: UnitHabit;
	/** from one value to the next [h] */
	readonly stepH: number;
	/** hour at the first value, counted from the midnight before day 1: 24 and more where it begins on a later day */
	readonly startHour: number;
	/** one to three cases, the one that matters first */
	readonly cases: readonly ChargeCase[];
	/** what should always be left, as a share of the full bank */
	readonly reserve: number | null;
}

export interface ChargeCase {
	/** "as planned", "no sun" */
	readonly name: string;
	/** state of charge, as a share of the full bank */
	readonly charge: readonly number[];
}

export async function drawCharge(picture: ChargePicture): Promise<Figure> {
	const { title, cases, stepH, startHour, reserve, units } = picture;
	checkCharge(picture);
	const steps = Math.max(...cases.map(({ charge }) => charge.length)) - 1;
	const hours = steps * stepH;
	const byDays = hours > 36;
	const lows = cases.map((one) => lowestOf(one, picture));
	const head = heading(title, [`Lowest (ring): ${whenText(lows[0] as Lowest, picture, byDays)}`], phoneWidth);
	const names = key(
		cases.length > 1
			? cases.map(({ name }, index) => ({ name, sample: strokeSample(strokes[index] ?? strokes[2]) }))
			: [],
		head.bottom,
		phoneWidth,
	);
	const drawn = await plot({
		width: phoneWidth,
		top: cases.length > 1 ? names.bottom : head.bottom,
		fieldHeight: 210,
		right: 18,
		x: { min: 0, max: hours, step: byDays ? 24 : 6, tick: () => '' },
		y: { min: 0, max: 100, step: 20 },
		xName: byDays ? '' : 'time of day',
		yName: 'state of charge, %',
		lines: cases.map(({ charge }, index) => ({
			points: charge.map((value, step) => [step * stepH, value * 100]),
			...(strokes[index] ?? strokes[2]),
		})),
	});
	return figure({
		title,
		alt: altOf(picture, lows),
		width: phoneWidth,
		height: drawn.bottom + (byDays ? -12 : 8),
		shapes: [...head.shapes, ...names.shapes, ...drawn.shapes, ...words()],
	});

	function words(): Shape[] {
		const { field, at } = drawn;
		const shapes: Shape[] = [];
		if (byDays) {
			for (let day = 0; day * 24 < hours; day += 1) {
				const middle = Math.min(day * 24 + 12, (day * 24 + hours) / 2);
				shapes.push(
					label(`day ${day + 1 + Math.floor(startHour / 24)}`, at(middle, 0)[0], field.bottom + 19, {
						anchor: 'middle',
					}),
				);
			}
		} else {
			for (let hour = 0; hour <= hours; hour += 6) {
				const text = clock(startHour + hour, units);
				const half = textWidth(text, smallText) / 2;
				const middle = Math.min(at(hour, 0)[0], phoneWidth - 8 - half);
				shapes.push(label(text, middle, field.bottom + 19, { anchor: 'middle' }));
			}
		}
		const curves = cases.map(({ charge }) => charge.map((value, step) => at(step * stepH, value * 100)));
		if (reserve !== null) shapes.push(...reserveMark(reserve, curves));
		const low = lows[0] as Lowest;
		const [x, y] = at(low.hour, low.charge * 100);
		shapes.push(circle(x, y, 4.5, { fill: ink.paper, stroke: ink.accent, strokeWidth: 2.5 }));
		return shapes;
	}

	function reserveMark(share: number, curves: Curves): Shape[] {
		const { field, at } = drawn;
		const [, y] = at(0, share * 100);
		const text = `reserve ${writeNumber(share * 100, 0, 'up')} %`;
		// Under the line, or over it where it lies at the bottom of the field or peaks of a curve stand in the way.
		const sides = [y + 11, y - 11, y - 20].filter(
			(middle) => middle > field.top + 8 && middle < field.bottom - 8,
		);
		const places = sides.flatMap((middle) => [
			[field.left + 5, middle, 'start'] as const,
			[field.right - 5, middle, 'end'] as const,
		]);
		return [
			line([field.left, y], [field.right, y], { dash: [9, 3, 2, 3] }),
			...clearTag(text, places, curves),
		];
	}
}

type Curves = readonly (readonly (readonly [number, number])[])[];

function checkCharge({ cases, reserve, stepH, startHour }: ChargePicture): void {
	must(cases.length >= 1 && cases.length <= 3, `${cases.length} cases`, 'one to three can be drawn');
	for (const { name, charge } of cases) {
		const wrong = charge.find((share) => !(share >= 0 && share <= 1));
		must(
			charge.length >= 2 && wrong === undefined,
			`${wrong ?? `${charge.length} values`} for the case "${name}"`,
			'there must be two or more shares from 0 to 1',
		);
	}
	must(
		reserve === null || (reserve >= 0 && reserve <= 1),
		`${reserve} as the reserve`,
		'it must be a share from 0 to 1',
	);
	must(stepH > 0 && Number.isFinite(stepH), `${stepH} h from value to value`, 'it must be above 0');
	mustBeNumber(startHour, 'the hour at the beginning', 0);
}

interface Lowest {
	readonly hour: number;
	readonly charge: number;
	readonly text: string;
}

function lowestOf({ charge }: ChargeCase, { stepH, startHour, units }: ChargePicture): Lowest {
	const lowest = Math.min(...charge);
	const hour = charge.indexOf(lowest) * stepH;
	return { hour, charge: lowest, text: `${percentDown(lowest)} at ${clock(startHour + hour, units)}` };
}

/** What is left is rounded down. */
function percentDown(share: number): string {
	return `${writeNumber(share * 100, 0, 'down')} %`;
}

/** The hour of the day as the shop says it. */
function clock(hour: number, units: UnitHabit): string {
	const minutes = Math.round(hour * 60) % (24 * 60);
	const whole = Math.floor(minutes / 60);
	const rest = String(minutes % 60).padStart(2, '0');
	if (units === 'metric') return `${whole}:${rest}`;
	if (minutes === 0) return 'midnight';
	if (minutes === 12 * 60) return 'noon';
	const hour12 = whole % 12 === 0 ? 12 : whole % 12;
	return `${hour12}${rest === '00' ? '' : `:${rest}`} ${whole < 12 ? 'am' : 'pm'}`;
}

function whenText(low: Lowest, { startHour }: ChargePicture, byDays: boolean): string {
	return byDays ? `${low.text} on day ${Math.floor((startHour + low.hour) / 24) + 1}` : low.text;
}

function altOf(picture: ChargePicture, lows: readonly Lowest[]): string {
	const { title, cases, stepH, startHour, units, reserve } = picture;
	const byDays = ((cases[0] as ChargeCase).charge.length - 1) * stepH > 36;
	const each = cases.map(({ name, charge }, index) => {
		const when = whenText(lows[index] as Lowest, picture, byDays);
		const start = percentDown(charge[0] ?? 0);
		const end = percentDown(charge.at(-1) ?? 0);
		return `${name}: begins at ${start}, lowest ${when}, ends at ${end}`;
	});
	const kept =
		reserve === null
			? ''
			: ` The reserve of ${writeNumber(reserve * 100, 0, 'up')} % is ${(lows[0] as Lowest).charge < reserve ? 'not ' : ''}kept${cases.length > 1 ? ` ${cases[0]?.name}` : ''}.`;
	const from = ` From ${clock(startHour, units)}, ${writeNumber((cases[0]?.charge.length ?? 1) * stepH - stepH, 1)} h.`;
	return `${title}: state of charge of the battery bank.${from} ${each.join('; ')}.${kept}`;
}
