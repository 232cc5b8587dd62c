import { createHash } from 'node:crypto';
import {
	type AnyTopic,
	baseUnitOf,
	type Context,
	calculationVersion,
	type Field,
	type FieldValue,
	runTopic,
	showValue,
	topicNamed,
} from '@lugbook/core';
import { type InputOrigin, picturesOf, type SheetRecord } from '../src/index.js';

// Invented for the gallery: no real shop, person or van. No check rests on these numbers.

export const us: Context = { region: 'us', units: 'us', language: 'en' };
export const eu: Context = { region: 'eu', units: 'metric', language: 'en' };
export const ft = 0.3048;
export const lb = 0.45359237;
export const gal = 3.785411784;

/** An input: its value in base units, and the words it was read from, or where else it came from. */
export type DemoInput = readonly [value: FieldValue, from: string | Exclude<InputOrigin, { kind: 'said' }>];

/** A sheet of a real answer of the named topic to invented inputs. */
export function demoSheet(
	number: number,
	topicName: string,
	inputs: Readonly<Record<string, DemoInput>>,
	more: Partial<SheetRecord> = {},
): SheetRecord {
	const topic = topicNamed(topicName) as AnyTopic;
	const context = more.context ?? us;
	const given = Object.fromEntries(Object.entries(inputs).map(([name, [value]]) => [name, value]));
	const outcome = runTopic(topic, given, context);
	if (outcome.status !== 'answered') throw new Error(`No. ${number}: ${JSON.stringify(outcome)}`);
	const { sizing } = outcome;
	const hashOf = (of: number) => createHash('sha256').update(`demo entry ${of}`).digest('hex');
	return {
		number,
		shop: 'Demo van shop',
		build: 'heron',
		vehicle: 'demo van, long wheelbase, high roof',
		state: 'not checked',
		stateReason: null,
		decision: null,
		context,
		typed: Object.values(inputs)
			.flatMap(([, from]) => (typeof from === 'string' ? [from] : []))
			.join(' '),
		inputs: Object.entries(inputs).map(([name, [value, from]]) => {
			const field = topic.fields[name] as Field;
			return {
				name,
				label: field.meta.label,
				value,
				unit: baseUnitOf(field),
				text: showValue(field, value, context),
				from: typeof from === 'string' ? { kind: 'said', words: from } : from,
				basis: null,
			};
		}),
		notes: [],
		unread: [],
		sizing,
		checks: [],
		deviations: [],
		asked: { name: 'Robin (demo)', at: '2026-05-04T09:12:00.000Z' },
		rerun: null,
		signatures: [],
		revision: null,
		replacedBy: null,
		recomputed: null,
		versions: { calculation: calculationVersion, program: '0.1.0' },
		place: { channel: 'build-heron', thread: null, hash: hashOf(number), previousHash: hashOf(number - 1) },
		pictures: picturesOf({ sizing, given, context }),
		...more,
	};
}

/** Checked and signed by the lead. */
export const feedSheet = demoSheet(
	128,
	'wire',
	{
		currentA: [40, '40A'],
		voltageV: [12, { kind: 'build', entry: 3 }],
		lengthM: [15 * ft, '15 ft'],
		engineBay: [false, 'not in the engine bay'],
	},
	{
		state: 'signed',
		decision: 'the cable from the main bus to the fuse block of the living space.',
		notes: ['15 ft was taken as one way.'],
		signatures: [
			{
				act: 'signed',
				name: 'Kim (demo)',
				at: '2026-05-05T07:31:00.000Z',
				meaning: 'I have checked inputs, method and result and answer for its use in this build.',
				entry: 140,
				ownQuestion: false,
			},
		],
		revision: {
			replaces: 121,
			reason: 'the run was measured: 15 ft, not 12 ft',
			affects: ['wire and fuse schedule'],
		},
	},
);

/** A conductor that is too thin: a danger, rejected. */
export const thinSheet = demoSheet(
	131,
	'wire',
	{ currentA: [30, '30 amps'], lengthM: [10 * ft, '10ft'], size: ['14 AWG', '14 awg ok?'] },
	{
		state: 'rejected',
		stateReason: 'take the size that the answer names',
		signatures: [
			{
				act: 'rejected',
				name: 'Kim (demo)',
				at: '2026-05-05T07:40:00.000Z',
				meaning: 'This may not be built as asked.',
				entry: 141,
				ownQuestion: false,
			},
		],
		replacedBy: 132,
	},
);

export const metricSheet = demoSheet(
	12,
	'wire',
	{ currentA: [20, '20A'], voltageV: [24, '24v'], lengthM: [3.5, '3.5m'], size: ['10 mm²', '10mm2 ok?'] },
	{ context: eu, build: 'Reiher', vehicle: null },
);

export const payloadSheet = demoSheet(133, 'payload', {
	wheelbase: ['long', 'long wheelbase'],
	roof: ['high', 'high roof'],
	gvwrKg: [9350 * lb, 'gvwr 9350 lb'],
	rearRatingKg: [5500 * lb, 'rear 5500'],
	frontRatingKg: [4130 * lb, 'front 4130'],
	people: [2, '2 people'],
	items: [
		[
			{ name: 'water', volumeL: 30 * gal, positionM: 4.3 },
			{ name: 'battery bank', massKg: 140 * lb, positionM: 2.6 },
			{ name: 'bed and garage', massKg: 420 * lb, positionM: 4.2 },
			{ name: 'kitchen', massKg: 380 * lb, positionM: 2.2 },
			{ name: 'air conditioner', massKg: 75 * lb, positionM: 3, onRoof: true },
			{ name: 'insulation and walls', massKg: 420 * lb, positionM: 3 },
		],
		'the ledger of the build',
	],
});

export const tankSheet = demoSheet(134, 'tank', {
	freshL: [30 * gal, '30 gal fresh'],
	grayL: [20 * gal, '20 gal gray'],
	people: [2, '2 people'],
});

export const batterySheet = demoSheet(135, 'battery', {
	energyPerDayWh: [1500, '1.5 kWh a day'],
	autonomyH: [48, '2 days'],
});

/** Rests on the sizing of its cable. */
export const inverterSheet = demoSheet(136, 'inverter', {
	ratedW: [2000, '2000w inverter'],
	bankV: [12, { kind: 'build', entry: 3 }],
	lengthM: [4 * ft, '4 ft of cable'],
});

export const heatSheet = demoSheet(137, 'heat', {
	wheelbase: ['long', 'long wheelbase'],
	outsideC: [-18, '0 F'],
});

export const demoSheets: readonly SheetRecord[] = [
	feedSheet,
	thinSheet,
	payloadSheet,
	tankSheet,
	batterySheet,
	inverterSheet,
	heatSheet,
];
