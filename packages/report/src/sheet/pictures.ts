import {
	type AnyTopic,
	type Context,
	conductorSize,
	monthNames,
	runTopic,
	type Sizing,
	simulatedHours,
	strutSwing,
	topicNamed,
} from '@lugbook/core';
import type { AxleRow } from '../picture/axles.js';
import type { Picture } from '../picture/draw.js';
import type { DropSize } from '../picture/drop.js';

/** An answer and what it was computed from, by field name and in base units. */
export interface Computed {
	readonly sizing: Sizing;
	/** what was given; what was assumed stands in the sizing */
	readonly given: Readonly<Record<string, unknown>>;
	readonly context: Context;
}

/**
 * The pictures that go with an answer: drop against length for a run, loads for a payload, the charge of the bank for a
 * simulation, energy by month for an array, the force of the hand for a gas spring; none for the others.
 */
export function picturesOf(computed: Computed): Picture[] {
	switch (computed.sizing.topic) {
		case 'wire':
			return dropPicture(computed);
		case 'payload':
			return axlesPicture(computed);
		case 'simulate':
			return chargePictures(computed);
		case 'solar':
			return monthsPicture(computed);
		case 'strut':
			return swingPicture(computed);
		default:
			return [];
	}
}

function resultOf({ results }: Sizing, ...names: readonly string[]): number | null {
	for (const name of names) {
		const found = results.find((result) => result.name === name);
		if (typeof found?.value === 'number') return found.value;
	}
	return null;
}

/** An input's number, given or assumed. */
function inputOf({ given, sizing }: Computed, name: string): number | null {
	const value = given[name] ?? sizing.assumed.find((one) => one.name === name)?.value;
	return typeof value === 'number' ? value : null;
}

function dropPicture(computed: Computed): Picture[] {
	const { sizing, given, context } = computed;
	const conductor = sizing.results.find(({ name }) => name === 'conductor')?.value;
	const percent = resultOf(sizing, 'dropPercent');
	const voltageV = inputOf(computed, 'voltageV');
	const lengthM = inputOf(computed, 'lengthM');
	const limit = inputOf(computed, 'dropLimit');
	if (typeof conductor !== 'string' || percent === null) return [];
	if (voltageV === null || lengthM === null || limit === null) return [];
	const powerW = inputOf(computed, 'powerW');
	const currentA =
		resultOf(sizing, 'current') ??
		inputOf(computed, 'currentA') ??
		(powerW === null ? null : powerW / (voltageV * (inputOf(computed, 'efficiency') ?? 1)));
	if (currentA === null) return [];
	const chosenMm2 = conductorSize(conductor)?.areaMm2 ?? 0;
	const sizes: DropSize[] = [{ name: conductor, drop: percent / 100, role: 'chosen' }];
	for (const { choice } of sizing.neighbours) {
		// Conductors in parallel read "2 x 4/0 AWG"; the size alone is asked about.
		const size = choice.replace(/^\d+ x /, '');
		const outcome = runTopic(topicNamed('wire') as AnyTopic, { ...given, size }, context);
		const drop = outcome.status === 'answered' ? resultOf(outcome.sizing, 'dropPercent') : null;
		const areaMm2 = conductorSize(size)?.areaMm2;
		if (drop === null || areaMm2 === undefined || areaMm2 === chosenMm2) continue;
		const role = areaMm2 < chosenMm2 ? 'smaller' : 'larger';
		sizes.push({ name: size, drop: drop / 100, role });
	}
	sizes.sort((a, b) => b.drop - a.drop);
	return [{ kind: 'drop', units: context.units, currentA, voltageV, limit, lengthM, sizes }];
}

function axlesPicture(computed: Computed): Picture[] {
	const { sizing, context } = computed;
	const rows: AxleRow[] = [];
	const add = (name: string, loadKg: number | null, rating: string) => {
		if (loadKg !== null) rows.push({ name, loadKg, ratingKg: inputOf(computed, rating) });
	};
	add('front axle', resultOf(sizing, 'frontAxle', 'frontAxleAtMost'), 'frontRatingKg');
	add('rear axle', resultOf(sizing, 'rearAxle', 'rearAxleAtMost'), 'rearRatingKg');
	add('whole van', resultOf(sizing, 'total'), 'gvwrKg');
	if (rows.length === 0) return [];
	const title = 'Loads against ratings, tanks full';
	return [{ kind: 'axles', title, units: context.units, rows }];
}

/** True where today's calculation gives the number of the answer: a picture never shows another one beside it. */
function isSame(value: number, ofAnswer: number | null): boolean {
	return ofAnswer !== null && Math.abs(value - ofAnswer) <= 1e-9 * Math.max(1, Math.abs(ofAnswer));
}

/** The day of the lowest charge, and the week around it where more than a day was run. */
function chargePictures({ sizing, given, context }: Computed): Picture[] {
	const hours = simulatedHours(given, context);
	if (hours === null || !isSame(hours.run.lowestSoc, resultOf(sizing, 'lowestCharge'))) return [];
	const { run, days, reserve, startSoc } = hours;
	const lowDay = Math.floor(run.lowestHour / 24);
	const span = (firstDay: number, count: number, title: string): Picture => {
		const before = firstDay === 0 ? startSoc : (run.soc[firstDay * 24 - 1] as number);
		const charge = [before, ...run.soc.subarray(firstDay * 24, (firstDay + count) * 24)];
		const cases = [{ name: 'as asked', charge: charge.map((share) => Math.min(1, Math.max(0, share))) }];
		return {
			kind: 'charge',
			title,
			units: context.units,
			stepH: 1,
			startHour: firstDay * 24,
			cases,
			reserve,
		};
	};
	const day = span(lowDay, 1, `State of charge on day ${lowDay + 1} of ${days}, the day of the lowest`);
	if (days === 1) return [day];
	const count = Math.min(days, 7);
	const first = Math.min(Math.max(0, lowDay - 3), days - count);
	const week =
		count === days
			? `State of charge over ${days} days`
			: `State of charge over the week around the lowest: days ${first + 1} to ${first + count} of ${days}`;
	return [day, span(first, count, week)];
}

/** The array through the year beside the need; none where no need was named, for then nothing goes out. */
function monthsPicture(computed: Computed): Picture[] {
	const { sizing, given, context } = computed;
	const bankV = inputOf(computed, 'bankV');
	const needAh = inputOf(computed, 'needAh');
	const needWh = inputOf(computed, 'needWh') ?? (needAh === null || bankV === null ? null : needAh * bankV);
	if (needWh === null) return [];
	const { month, ...rest } = given;
	const hasArray = rest.arrayW !== undefined || rest.panelW !== undefined;
	const needed = resultOf(sizing, 'arrayNeeded');
	if (!hasArray && needed === null) return [];
	const array = hasArray ? {} : { arrayW: needed };
	const year = runTopic(topicNamed('solar') as AnyTopic, { ...rest, ...array }, context);
	if (year.status !== 'answered') return [];
	const inWh = monthNames.map((name) => resultOf(year.sizing, `energyPerDay${name}`));
	if (!inWh.every((value) => value !== null)) return [];
	const perDay = resultOf(sizing, 'energyPerDay');
	if (!inWh.some((value) => isSame(value, perDay))) return [];
	return [
		{
			kind: 'months',
			title: hasArray ? 'Solar energy by month' : 'Solar energy by month with the array for the need',
			inWh,
			outWh: inWh.map(() => needWh),
		},
	];
}

function swingPicture({ sizing, given, context }: Computed): Picture[] {
	const swing = strutSwing(given, context);
	if (swing === null || !isSame(swing.springN, resultOf(sizing, 'force'))) return [];
	// Cold and hot may be the rated temperature itself; a curve is drawn once.
	const curves = swing.curves.filter(
		({ temperatureC }, index) => swing.curves.findIndex((one) => one.temperatureC === temperatureC) === index,
	);
	// Dust of the sums, a millionth of a newton, is no force.
	const clean = curves.map(({ temperatureC, points }) => ({
		temperatureC,
		points: points.map(({ angleDeg, handN }) => ({ angleDeg, handN: Math.abs(handN) < 1e-3 ? 0 : handN })),
	}));
	return [{ kind: 'swing', title: 'Force of the hand over the swing', units: context.units, curves: clean }];
}
