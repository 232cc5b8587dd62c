import { fromBase, shownIn, type UnitHabit, write, writeNumber } from '@lugbook/core';
import { must, mustBeNumber } from './check.js';
import { type Figure, figure, heading, key, phoneWidth, strokeSample, strokes } from './figure.js';
import { plot } from './plot.js';
import { roundScale } from './scale.js';
import { ink, line } from './shape.js';

/** The force a hand needs at the edge of a lid over its swing, one line for each temperature. */
export interface SwingPicture {
	readonly kind: 'swing';
	readonly title: string;
	readonly units: UnitHabit;
	/** one to three curves, the one that matters first */
	readonly curves: readonly SwingCurve[];
}

export interface SwingCurve {
	readonly temperatureC: number;
	readonly points: readonly {
		/** of the lid over the level, from closed to open [°] */
		readonly angleDeg: number;
		/** above 0 the hand lifts, below 0 it presses the lid down [N] */
		readonly handN: number;
	}[];
}

export async function drawSwing(picture: SwingPicture): Promise<Figure> {
	const { title, units, curves } = picture;
	must(curves.length >= 1 && curves.length <= 3, `${curves.length} curves`, 'one to three can be drawn');
	for (const { temperatureC, points } of curves) {
		mustBeNumber(temperatureC, 'a temperature [°C]');
		must(points.length >= 2, `${points.length} points of a curve`, 'there must be two or more');
		for (const { angleDeg, handN } of points) {
			mustBeNumber(angleDeg, 'an angle [°]');
			mustBeNumber(handN, 'a force [N]');
		}
	}
	const symbol = shownIn('force', 1, units).symbol;
	const inUnit = (forceN: number) => fromBase('force', forceN, symbol);
	const all = curves.flatMap(({ points }) => points);
	const closed = curves[0]?.points[0]?.angleDeg ?? 0;
	const open = curves[0]?.points.at(-1)?.angleDeg ?? 90;
	const span = Math.abs(open - closed);
	const head = heading(title, ['Above 0 the hand lifts, below 0 it presses down.'], phoneWidth);
	const names = key(
		curves.map(({ temperatureC }, index) => ({
			name: `at ${write('temperature', temperatureC, units)}`,
			sample: strokeSample(strokes[index] ?? strokes[2]),
		})),
		head.bottom,
		phoneWidth,
	);
	const y = roundScale(
		Math.min(...all.map(({ handN }) => inUnit(handN))),
		Math.max(...all.map(({ handN }) => inUnit(handN))),
		6,
	);
	const step = span > 60 ? 15 : span > 30 ? 10 : 5;
	const drawn = await plot({
		width: phoneWidth,
		top: names.bottom,
		fieldHeight: 220,
		right: 20,
		// Ticks count from the closed lid, whichever way it turns.
		x: { min: 0, max: Math.ceil(span / step - 1e-9) * step, step },
		y,
		xName: 'lid opened by, degrees',
		yName: `force of the hand, ${symbol}`,
		lines: curves.map(({ points }, index) => ({
			points: points.map(({ angleDeg, handN }) => [Math.abs(angleDeg - closed), inUnit(handN)]),
			...(strokes[index] ?? strokes[2]),
		})),
	});
	const [, zero] = drawn.at(0, 0);
	const balance = line([drawn.field.left, zero], [drawn.field.right, zero], { stroke: ink.text });
	return figure({
		title,
		alt: altOf(picture, closed),
		width: phoneWidth,
		height: drawn.bottom + 8,
		shapes: [...head.shapes, ...names.shapes, ...drawn.shapes, balance],
	});
}

function altOf({ title, units, curves }: SwingPicture, closed: number): string {
	const force = (forceN: number) =>
		forceN >= 0
			? `lift ${write('force', forceN, units, { round: 'up' })}`
			: `press down ${write('force', -forceN, units, { round: 'up' })}`;
	const each = curves.map(({ temperatureC, points }) => {
		const hardest = points.reduce((most, point) => (point.handN > most.handN ? point : most));
		const first = points[0] as SwingCurve['points'][number];
		const last = points.at(-1) as SwingCurve['points'][number];
		return `at ${write('temperature', temperatureC, units)} from closed: ${force(first.handN)}, hardest ${force(hardest.handN)} at ${writeNumber(Math.abs(hardest.angleDeg - closed), 0)}°, open at ${writeNumber(Math.abs(last.angleDeg - closed), 0)}°: ${force(last.handN)}`;
	});
	return `${title}. Force of the hand at the edge: ${each.join('; ')}.`;
}
