import { type AnyTopic, type Context, conductorSize, runTopic, type Sizing, topicNamed } from '@lugbook/core';
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

/** The pictures that go with an answer: drop against length for a run, axle loads for a payload; none for the others. */
export function picturesOf(computed: Computed): Picture[] {
	switch (computed.sizing.topic) {
		case 'wire':
			return dropPicture(computed);
		case 'payload':
			return axlesPicture(computed);
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
