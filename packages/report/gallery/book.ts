import type { BuildBook } from '../src/index.js';
import { dayOfCharge, months, oneLine, weekOfCharge } from './pictures.js';
import { demoSheets, ft, lb, payloadSheet } from './records.js';

/** The book of an invented build. */
export const demoBook: BuildBook = {
	shop: 'Demo van shop',
	build: 'heron',
	vehicle: 'demo van, long wheelbase, high roof',
	use: [{ label: 'People', text: '2' }],
	date: '2026-05-06',
	units: 'us',
	program: '0.1.0',
	log: { entry: 142, hash: '5f3c9a1e'.repeat(8) },
	signing: {
		answers: { signed: [128], rejected: [131], 'not checked': [132, 133, 134, 135, 136] },
		signers: [
			{
				name: 'Kim (demo)',
				answers: [128],
				first: '2026-05-05T07:31:00.000Z',
				last: '2026-05-05T07:31:00.000Z',
				own: 0,
			},
		],
		whole: {
			entry: 140,
			name: 'Kim (demo)',
			at: '2026-05-05T16:02:00.000Z',
			meaning: 'approved as a whole, with what is open',
			words: 'the wiring stands, so that the walls can be closed; the rest is checked at the handover',
			covers: { now: null, entry: 139, hash: '77c0d2b4'.repeat(8) },
			signed: 1,
			open: '1 danger (No. 138); 5 not checked (No. 132, 133, 134, 135, 136); 1 rejected (No. 131)',
			ownQuestion: false,
			since: [141],
			withdrawn: null,
		},
		toConfirm: { values: 31, answers: 6 },
	},
	part: null,
	findings: [
		{
			code: 'device-not-named',
			severity: 'danger',
			text: 'The run from the fuse block to the USB outlets has no fuse or breaker named.',
			source: 'common practice of the trade: every run is protected at its source',
			clears: 'Ask for the size of this run; it names the fuse.',
			entries: [138],
		},
		{
			code: 'gray-too-small',
			severity: 'warning',
			text: 'The gray tank is full before the fresh tank is empty.',
			source: 'volume balance',
			clears: 'A gray tank of 26 gal, or emptying it on the way.',
			entries: [134],
		},
		{
			code: 'empty-weight-typical',
			severity: 'note',
			text: 'The empty weight is a typical one: weigh the van.',
			source: 'common practice of the trade',
			clears: 'A scale slip with both axles.',
			entries: [133],
		},
	],
	notKnown: [
		'make and age of the starter battery',
		'length of the run to the USB outlets',
		'tire pressure on the door label',
	],
	equipment: [
		{
			name: 'house battery, LiFePO4',
			count: 4,
			rating: '12 V, 100 Ah',
			place: 'under the bench',
			entry: 135,
		},
		{ name: 'inverter', count: 1, rating: '2000 W, 12 V to 120 V', place: 'driver side garage', entry: 136 },
		{ name: '12 V rooftop air conditioner', count: 1, rating: '600 W', place: 'roof, front', entry: null },
		{ name: 'roof array', count: 2, rating: '200 W', place: 'roof', entry: null },
		{ name: 'diesel heater', count: 1, rating: '5 kW', place: 'passenger seat base', entry: 137 },
		{ name: 'fresh water tank', count: 1, rating: '30 gal', place: 'over the rear axle', entry: 134 },
		{ name: 'gray water tank', count: 1, rating: '20 gal', place: 'under the floor', entry: 134 },
	],
	runs: oneLine.runs.map((run, index) => {
		const device = run.devices.find(({ kind }) => kind !== 'switch');
		const nameOf = (id: string) => oneLine.parts.find((part) => part.id === id)?.name ?? id;
		return {
			from: nameOf(run.from),
			to: nameOf(run.to),
			currentA: [null, 200, 11.4, 28, 40, 40, 10, 50, 190, 55, 40, 5, 4, 3, 2, 8, null][index] ?? null,
			voltageV: run.from === 'shore' ? 120 : 12,
			lengthM: run.lengthM,
			conductor: run.conductor,
			device: device?.kind ?? null,
			deviceA: device?.ratingA ?? null,
			deviceAt: device === undefined ? null : nameOf(device.at === 'from' ? run.from : run.to),
			unprotected: run.unprotected,
			drop: index === 10 ? 0.0268 : null,
			entry: index === 10 ? 128 : null,
			state: index === 10 ? 'signed' : null,
		};
	}),
	oneLine,
	energy: {
		facts: [
			{ label: 'Used on a day', text: '1.5 kWh' },
			{ label: 'Bank', text: '400 Ah of LiFePO4 at 12 V' },
			{ label: 'Lasts without charging', text: '2 days' },
		],
		notes: ['Typical loads stand in where no nameplate was read; they are marked.'],
		loads: [
			{ name: 'fridge', count: 1, powerW: 60, hoursPerDay: 9.6, energyWh: 576, mains: false, assumed: true },
			{ name: 'roof fan', count: 1, powerW: 30, hoursPerDay: 8, energyWh: 240, mains: false, assumed: false },
			{ name: 'lights', count: 6, powerW: 18, hoursPerDay: 5, energyWh: 90, mains: false, assumed: false },
			{
				name: 'induction cooktop',
				count: 1,
				powerW: 1800,
				hoursPerDay: 0.25,
				energyWh: 500,
				mains: true,
				assumed: true,
			},
		],
		day: dayOfCharge,
		week: weekOfCharge,
		months,
	},
	water: {
		facts: [
			{ label: 'Fresh water', text: '30 gal' },
			{ label: 'Gray water', text: '20 gal, full first' },
			{ label: 'Lasts for two', text: '1.3 days' },
		],
		notes: [],
	},
	climate: {
		facts: [{ label: 'Heater', text: '5 kW, 1.9 gal of fuel on a night at 0 °F' }],
		notes: ['A carbon-monoxide alarm belongs in the living space; it is tested at each start of a season.'],
	},
	weights: {
		facts: [{ label: 'Left to the GVWR', text: '2527 lb' }],
		notes: ['The scale decides: these are sums.'],
		items: [
			{ name: 'water', massKg: 250 * lb, positionM: 4.3, sideM: 0 },
			{ name: 'battery bank', massKg: 140 * lb, positionM: 2.6, sideM: -0.6 },
			{ name: 'bed and garage', massKg: 420 * lb, positionM: 4.2, sideM: null },
			{ name: 'kitchen', massKg: 380 * lb, positionM: 2.2, sideM: 0.6 },
			{ name: 'air conditioner', massKg: 75 * lb, positionM: 3, sideM: 0 },
			{ name: 'spare wheel', massKg: 20, positionM: -0.5 * ft, sideM: null },
		],
		axles: payloadSheet.pictures.find((picture) => picture.kind === 'axles') ?? null,
	},
	handover: {
		limits: [
			{ what: 'Rear axle', limit: 'at most 5500 lb', why: 'rating on the door label' },
			{
				what: 'Charging the bank',
				limit: 'not below 32 °F',
				why: 'lithium plates on the electrodes and the cell is lost',
			},
			{ what: 'Shore power', limit: '24 A for 3 h or more', why: '80 % of the 30 A inlet' },
		],
		cautions: [
			'Switch the battery off and pull the shore cord before any work on the wiring.',
			'Never run a fuel-burning appliance with the alarm off or the vents shut.',
			'Empty tank, pump and heater before a night of frost without heating.',
		],
	},
	sheets: demoSheets,
};
