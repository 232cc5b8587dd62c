import { swingCurve } from '../../core/src/structure/strut.js';
import type { OneLineRun, Picture } from '../src/index.js';
import { feedSheet, ft, metricSheet, payloadSheet, thinSheet } from './records.js';

// Invented for the gallery, as the records are.

function run(
	from: string,
	to: string,
	conductor: string | null,
	lengthFt: number | null,
	more: Partial<OneLineRun> = {},
): OneLineRun {
	const lengthM = lengthFt === null ? null : lengthFt * ft;
	return { from, to, conductor, lengthM, devices: [], unprotected: null, ...more };
}

function fuse(ratingA: number | null, at: 'from' | 'to' = 'from'): Pick<OneLineRun, 'devices'> {
	return { devices: [{ kind: 'fuse', ratingA, at }] };
}

function breaker(ratingA: number, at: 'from' | 'to' = 'from'): Pick<OneLineRun, 'devices'> {
	return { devices: [{ kind: 'circuit breaker', ratingA, at }] };
}

function load(name: string) {
	return { id: name, kind: 'load', name } as const;
}

export const oneLine: Picture & { kind: 'one-line' } = {
	kind: 'one-line',
	title: 'DC wiring of build heron',
	units: 'us',
	parts: [
		{ id: 'battery', kind: 'battery', name: 'House battery', detail: '12 V, 400 Ah' },
		{ id: 'chassis', kind: 'chassis', name: 'Chassis' },
		{ id: 'main', kind: 'busbar', name: 'Main bus' },
		{ id: 'array', kind: 'solar', name: 'Roof array', detail: '400 W' },
		{ id: 'controller', kind: 'converter', takes: 'dc', gives: 'dc', name: 'Solar controller' },
		{ id: 'alternator', kind: 'alternator', name: 'Alternator' },
		{ id: 'dcdc', kind: 'converter', takes: 'dc', gives: 'dc', name: 'DC-DC charger' },
		{ id: 'shore', kind: 'shore', name: 'Shore inlet', detail: '30 A' },
		{ id: 'charger', kind: 'converter', takes: 'ac', gives: 'dc', name: 'Shore charger' },
		{ id: 'inverter', kind: 'converter', takes: 'dc', gives: 'ac', name: 'Inverter', detail: '2000 W' },
		load('12 V rooftop air conditioner'),
		{ id: 'block', kind: 'busbar', name: 'Fuse block' },
		load('fridge'),
		load('water pump'),
		load('roof fan'),
		load('lights'),
		load('diesel heater'),
		load('USB outlets'),
	],
	runs: [
		run('battery', 'chassis', '4/0 AWG', 2, { unprotected: 'bond of the negative pole' }),
		run('battery', 'main', '4/0 AWG', 3, {
			devices: [
				{ kind: 'fuse', ratingA: 300, at: 'from' },
				{ kind: 'switch', ratingA: 350, at: 'from' },
			],
		}),
		run('array', 'controller', '10 AWG', 14, breaker(30, 'to')),
		run('controller', 'main', '6 AWG', 4, fuse(50, 'to')),
		run('alternator', 'dcdc', '4 AWG', 16, fuse(60)),
		run('dcdc', 'main', '6 AWG', 4, fuse(50, 'to')),
		run('shore', 'charger', '10 AWG', 6, breaker(15)),
		run('charger', 'main', '6 AWG', 5, fuse(60, 'to')),
		run('main', 'inverter', '4/0 AWG', 4, fuse(250)),
		run('main', '12 V rooftop air conditioner', '2 AWG', 18, fuse(80)),
		run('main', 'block', '4 AWG', 15, breaker(50)),
		run('block', 'fridge', '10 AWG', 12, fuse(10)),
		run('block', 'water pump', '12 AWG', 9, fuse(10)),
		run('block', 'roof fan', '14 AWG', 15, fuse(7.5)),
		run('block', 'lights', '16 AWG', 22, fuse(5)),
		run('block', 'diesel heater', '12 AWG', 11, fuse(20)),
		run('block', 'USB outlets', '12 AWG', null),
	],
};

/** Two banks, a meshed supply, long names: what the graph's layout is for. */
export const meshed: Picture & { kind: 'one-line' } = {
	kind: 'one-line',
	title: 'DC wiring of build Reiher: two banks, 24 V and 12 V',
	units: 'metric',
	parts: [
		{ id: 'a', kind: 'battery', name: 'House battery A', detail: '24 V, 200 Ah' },
		{ id: 'b', kind: 'battery', name: 'House battery B', detail: '24 V, 200 Ah' },
		{ id: 'starter', kind: 'battery', name: 'Starter battery', detail: '12 V' },
		{ id: 'main', kind: 'busbar', name: 'Main bus 24 V' },
		{ id: 'alternator', kind: 'alternator', name: 'Alternator' },
		{ id: 'dcdc', kind: 'converter', takes: 'dc', gives: 'dc', name: 'DC-DC charger 12 V to 24 V' },
		{ id: 'down', kind: 'converter', takes: 'dc', gives: 'dc', name: 'Converter 24 V to 12 V' },
		{ id: 'block', kind: 'busbar', name: 'Fuse block 12 V' },
		{ id: 'inverter', kind: 'converter', takes: 'dc', gives: 'ac', name: 'Inverter', detail: '3000 W' },
		load('mains distribution'),
		load('Seilwinde am Heck mit Fernbedienung'),
		load('fridge'),
	],
	runs: [
		run('a', 'main', '70 mm²', 5, fuse(250)),
		run('b', 'main', '70 mm²', 5, fuse(250)),
		run('alternator', 'starter', '35 mm²', 5, { unprotected: 'as the maker of the vehicle built it' }),
		run('starter', 'dcdc', '25 mm²', 12, fuse(80)),
		run('dcdc', 'main', '16 mm²', 5, fuse(60, 'to')),
		run('main', 'down', '16 mm²', 5, fuse(60)),
		run('down', 'block', '25 mm²', 5, fuse(80)),
		run('main', 'inverter', '70 mm²', 5, fuse(200)),
		run('inverter', 'mains distribution', '2.5 mm²', 5, breaker(16)),
		run('main', 'Seilwinde am Heck mit Fernbedienung', null, null),
		run('block', 'fridge', '4 mm²', 12, fuse(10)),
	],
};

/** A bank of 5 kWh in a week that grows duller: an hourly sum, invented sun and loads. */
function week(sunWh: readonly number[], drivingW: number): number[] {
	let charge = 0.92;
	const series = [charge];
	for (let hour = 0; hour < sunWh.length * 24; hour += 1) {
		const clock = (hour % 24) + 0.5;
		const dayWh = sunWh[Math.floor(hour / 24)] as number;
		const sunW = clock > 8 && clock < 16 ? (dayWh * Math.PI * Math.sin(((clock - 8) / 8) * Math.PI)) / 16 : 0;
		const loadW = clock > 18 && clock < 23 ? 130 : 52;
		const engineW = clock > 10 && clock < 12 ? drivingW : 0;
		charge = Math.min(1, Math.max(0.1, charge + (sunW + engineW - loadW) / 5000));
		series.push(charge);
	}
	return series;
}

const dull = [1100, 950, 700, 400, 350, 500, 800];

export const weekOfCharge: Picture & { kind: 'charge' } = {
	kind: 'charge',
	title: 'State of charge over a week in December',
	units: 'us',
	stepH: 1,
	startHour: 0,
	reserve: 0.2,
	cases: [
		{ name: 'with 2 h of driving', charge: week(dull, 250) },
		{ name: 'parked', charge: week(dull, 0) },
	],
};

export const dayOfCharge: Picture & { kind: 'charge' } = {
	kind: 'charge',
	title: 'State of charge on a day in March',
	units: 'metric',
	stepH: 1,
	startHour: 0,
	reserve: 0.3,
	cases: [{ name: 'as planned', charge: week([1700], 0) }],
};

export const months: Picture & { kind: 'months' } = {
	kind: 'months',
	title: 'Energy in and out by month',
	inWh: [950, 1330, 1860, 2310, 2620, 2790, 2740, 2480, 2050, 1520, 1040, 830],
	outWh: [1610, 1560, 1480, 1400, 1380, 1450, 1540, 1520, 1420, 1430, 1530, 1620],
};

export const overloaded: Picture & { kind: 'axles' } = {
	kind: 'axles',
	title: 'Loads against ratings, tanks full',
	units: 'metric',
	rows: [
		{ name: 'front axle', loadKg: 1498.2, ratingKg: 1850 },
		{ name: 'rear axle', loadKg: 2316.7, ratingKg: 2240 },
		{ name: 'whole van', loadKg: 3814.9, ratingKg: null },
	],
};

const lid = {
	massKg: 14,
	centre: { x: 0.42, y: 0 },
	closedDeg: 0,
	openDeg: 80,
	handleM: 0.82,
	lidMount: { x: 0.24, y: -0.02 },
	bodyMount: { x: 0.05, y: -0.31 },
	springs: 2,
};
const spring = { extendedN: 128, progression: 1.3, extendedM: 0.58, strokeM: 0.22 };

export const swing: Picture & { kind: 'swing' } = {
	kind: 'swing',
	title: 'Hand force over the swing of a bench lid',
	units: 'us',
	curves: [20, -10, 40].map((temperatureC) => ({
		temperatureC,
		points: swingCurve(lid, spring, temperatureC, 40),
	})),
};

function only(pictures: readonly Picture[]): Picture {
	const [picture] = pictures;
	if (picture === undefined) throw new Error('this sheet has no picture');
	return picture;
}

/** What the gallery shows, by the name of its file. */
export const gallery: Readonly<Record<string, Picture>> = {
	'drop-against-length': only(feedSheet.pictures),
	'drop-too-thin': only(thinSheet.pictures),
	'drop-metric': only(metricSheet.pictures),
	'charge-over-a-day': dayOfCharge,
	'charge-over-a-week': weekOfCharge,
	'energy-by-month': months,
	'axle-loads': only(payloadSheet.pictures),
	'axle-overloaded': overloaded,
	'one-line': oneLine,
	'one-line-meshed': meshed,
	'hand-force': swing,
};
