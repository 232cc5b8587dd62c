import {
	type Network,
	type SolvedNetwork,
	solveNetwork,
} from '../../packages/core/src/electrical/network.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceMark, EvidenceRow } from './evidence.js';

// Circuits solved in print, with their own resistances: the network solver must find the printed figures.

function solved(network: Network): SolvedNetwork {
	const solution = solveNetwork(network);
	if ('reason' in solution) throw new Error(JSON.stringify(solution));
	return solution;
}

const volts = (network: Network, node: string) => solved(network).voltageV.get(node) as number;
const amps = (network: Network, branch: number) => solved(network).branchA[branch] as number;
const load = (from: string, currentA: number) => ({ from, to: '-', currentA });

const topic = 'network';
const mark: EvidenceMark = 'from memory';

function circuit(source: string, network: Network) {
	return (
		what: string,
		published: number,
		unit: string,
		/** half of the last printed figure, unless said otherwise */
		abs: number,
		ours: (network: Network) => number,
	): EvidenceRow => ({
		topic,
		what,
		source,
		mark,
		published,
		unit,
		tolerance: { abs },
		ours: () => ours(network),
	});
}

const fed = (source: string, at: number) => ({ [source]: at, '-': 0 });

const distributor = circuit(
	'Principles of Power System, Example 13.1 (two-wire d.c. distributor fed at one end)',
	{
		fixedV: fed('A', 300),
		// 0.02 ohm per 1000 m of distributor, both conductors
		branches: [
			{ from: 'A', to: 'C', ohm: 0.01 },
			{ from: 'C', to: 'D', ohm: 0.01 },
			{ from: 'D', to: 'E', ohm: 0.012 },
			{ from: 'E', to: 'B', ohm: 0.008 },
		],
		loads: [load('C', 100), load('D', 150), load('E', 200), load('B', 50)],
	},
);

const sized = circuit('Principles of Power System, Example 13.2 (1.16 cm² for a drop of 10 V)', {
	fixedV: fed('A', 200),
	// 1.78e-8 ohm m, both conductors of 1.164 cm², per metre
	branches: [
		{ from: 'A', to: 'C', ohm: (40 * 2 * 1.78e-8) / 1.164e-4 },
		{ from: 'C', to: 'D', ohm: (60 * 2 * 1.78e-8) / 1.164e-4 },
		{ from: 'D', to: 'E', ohm: (50 * 2 * 1.78e-8) / 1.164e-4 },
		{ from: 'E', to: 'F', ohm: (100 * 2 * 1.78e-8) / 1.164e-4 },
	],
	loads: [load('C', 30), load('D', 40), load('E', 100), load('F', 50)],
});

const bothEnds = circuit('Principles of Power System, Example 13.6 (distributor fed at both ends, 220 V)', {
	fixedV: { A: 220, B: 220, '-': 0 },
	// 0.034 ohm per 100 m of distributor
	branches: [
		{ from: 'A', to: 'C', ohm: 0.034 },
		{ from: 'C', to: 'D', ohm: 0.051 },
		{ from: 'D', to: 'E', ohm: 0.051 },
		{ from: 'E', to: 'F', ohm: 0.034 },
		{ from: 'F', to: 'B', ohm: 0.034 },
	],
	loads: [load('C', 20), load('D', 40), load('E', 50), load('F', 30)],
});

const ring = circuit('Principles of Power System, ring distributor of 300 m fed at 240 V', {
	fixedV: fed('A', 240),
	branches: [
		{ from: 'A', to: 'B', ohm: 0.09 },
		{ from: 'C', to: 'B', ohm: 0.03 },
		{ from: 'A', to: 'C', ohm: 0.06 },
	],
	loads: [load('B', 120), load('C', 80)],
});

const nodal = circuit('Fundamentals of Electric Circuits, Example 3.1 (nodal analysis)', {
	fixedV: { '-': 0 },
	branches: [
		{ from: '1', to: '2', ohm: 4 },
		{ from: '1', to: '-', ohm: 2 },
		{ from: '2', to: '-', ohm: 6 },
	],
	loads: [
		{ from: '2', to: '1', currentA: 5 },
		{ from: '-', to: '2', currentA: 10 },
	],
});

const nodalPractice = circuit('Fundamentals of Electric Circuits, Practice Problem 3.1', {
	fixedV: { '-': 0 },
	branches: [
		{ from: '1', to: '-', ohm: 2 },
		{ from: '1', to: '2', ohm: 6 },
		{ from: '2', to: '-', ohm: 7 },
	],
	loads: [
		{ from: '-', to: '1', currentA: 1 },
		{ from: '2', to: '-', currentA: 4 },
	],
});

const engineering = circuit('Engineering Circuit Analysis, Example 4.1 (nodal analysis)', {
	fixedV: { '-': 0 },
	branches: [
		{ from: '1', to: '-', ohm: 2 },
		{ from: '1', to: '2', ohm: 5 },
		{ from: '2', to: '-', ohm: 1 },
	],
	loads: [
		{ from: '-', to: '1', currentA: 3.1 },
		{ from: '-', to: '2', currentA: 1.4 },
	],
});

const kirchhoff = circuit('College Physics (open textbook), Example 21.5: Kirchhoff’s rules', {
	fixedV: { e: 0 },
	branches: [
		{ from: 'e', to: 'a', ohm: 6 },
		{ from: 'a', to: 'e', ohm: 3, emfV: 18 },
		{ from: 'a', to: 'e', ohm: 2, emfV: 45 },
	],
	loads: [],
});

const multiloop = circuit('Fundamentals of Physics, sample problem on a multiloop circuit', {
	fixedV: { b: 0 },
	branches: [
		// left branch 3.0 V and 2 × 2.0 ohm, middle 6.0 V and 4.0 ohm, right 6.0 V and 2 × 2.0 ohm
		{ from: 'b', to: 'a', ohm: 4, emfV: 3 },
		{ from: 'a', to: 'b', ohm: 4, emfV: -6 },
		{ from: 'b', to: 'a', ohm: 4, emfV: 6 },
	],
	loads: [],
});

function battery(internalOhm: number, loadOhm: number): Network {
	return {
		fixedV: { '-': 0 },
		branches: [
			{ from: '-', to: '+', ohm: internalOhm, emfV: 12 },
			{ from: '+', to: '-', ohm: loadOhm },
		],
		loads: [],
	};
}

const terminal = 'College Physics (open textbook), Example 21.4: terminal voltage under load';
const light = circuit(terminal, battery(0.1, 10));
const heavy = circuit(terminal, battery(0.1, 0.5));
const worn = circuit(terminal, battery(0.5, 0.5));

/** Twelve equal resistors of 1 ohm along the edges of a cube. */
function cube(): Network['branches'] {
	const corners = [0, 1, 2, 3, 4, 5, 6, 7];
	return corners.flatMap((corner) =>
		[1, 2, 4]
			.filter((bit) => (corner & bit) === 0)
			.map((bit) => ({ from: String(corner), to: String(corner + bit), ohm: 1 })),
	);
}

const cubes: EvidenceRow[] = (
	[
		['along an edge', '1', 7 / 12],
		['across a face', '3', 3 / 4],
		['through the body', '7', 5 / 6],
	] as const
).map(([way, corner, ohm]) => ({
	topic,
	what: `cube of twelve 1 ohm resistors, ${way}: resistance`,
	source: 'physics problem books: the resistor cube (7/12, 3/4 and 5/6 of one resistor)',
	mark,
	published: ohm,
	unit: 'ohm',
	tolerance: { abs: 1e-9 },
	ours: () =>
		volts(
			{
				fixedV: { '0': 0 },
				branches: cube(),
				loads: [{ from: '0', to: corner, currentA: 1 }],
			},
			corner,
		),
}));

const bridge: EvidenceRow = {
	topic,
	what: 'balanced Wheatstone bridge (100 : 200 against 300 : 600 ohm): current in the detector',
	source: 'Wheatstone bridge: balance at R1 / R2 = R3 / R4',
	mark,
	published: 0,
	unit: 'A',
	tolerance: { abs: 1e-15 },
	ours: () =>
		amps(
			{
				fixedV: fed('+', 10),
				branches: [
					{ from: 'a', to: 'b', ohm: 50 },
					{ from: '+', to: 'a', ohm: 100 },
					{ from: 'a', to: '-', ohm: 200 },
					{ from: '+', to: 'b', ohm: 300 },
					{ from: 'b', to: '-', ohm: 600 },
				],
				loads: [],
			},
			0,
		),
};

/** Total length and the table's own resistance of aircraft wire. */
const aircraft = new Map(
	readTable('electrical/faa_ac43_13_1b_table11_9.csv').map((row) => [
		row.wire_size_awg_aircraft ?? '',
		Number(row.max_resistance_tinned_copper_ohm_per_kft_20C) / 1000,
	]),
);

interface Example {
	readonly id: string;
	readonly source: string;
	readonly expected: Readonly<Record<string, { readonly value: number }>>;
}
const checked = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples.find((one) => one.id === 'elec-d01');
if (checked === undefined) throw new Error('the aircraft example is missing');

const runs: EvidenceRow[] = (
	[
		['6', 107, checked.expected.voltage_drop?.value ?? 0, 'verified'],
		['4', 90, 0.504, 'from memory'],
		['12', 88, 3.6, 'from memory'],
		['14', 100, 6.12, 'from memory'],
	] as const
).map(([awg, feet, drop, how]) => ({
	topic,
	what: `20 A over ${feet} ft of aircraft wire No. ${awg}, total length: drop`,
	source: 'FAA AC 43.13-1B CHG 1, Table 11-7',
	mark: how,
	published: drop,
	unit: 'V',
	// the table gives three figures and cuts the rest
	tolerance: { rel: 0.015 },
	ours: () =>
		28 -
		volts(
			{
				fixedV: fed('+', 28),
				branches: [{ from: '+', to: 'load', ohm: (aircraft.get(awg) ?? Number.NaN) * feet }],
				loads: [load('load', 20)],
			},
			'load',
		),
}));

export const rows: readonly EvidenceRow[] = [
	distributor('300 V distributor: voltage at C (500 m)', 295, 'V', 1e-9, (net) => volts(net, 'C')),
	distributor('300 V distributor: voltage at D (1000 m)', 291, 'V', 1e-9, (net) => volts(net, 'D')),
	distributor('300 V distributor: voltage at E (1600 m)', 288, 'V', 1e-9, (net) => volts(net, 'E')),
	distributor('300 V distributor: voltage at B (2000 m)', 287.6, 'V', 1e-9, (net) => volts(net, 'B')),
	sized('distributor of 1.164 cm²: drop to the far end', 10, 'V', 0.01, (net) => 200 - volts(net, 'F')),
	bothEnds('distributor fed at both ends: current from end A', 61.67, 'A', 0.006, (net) => amps(net, 0)),
	bothEnds('distributor fed at both ends: current from end B', 78.33, 'A', 0.006, (net) => -amps(net, 4)),
	bothEnds('distributor fed at both ends: lowest voltage', 215.69, 'V', 0.006, (net) => volts(net, 'E')),
	ring('ring distributor: current A to B', 86.67, 'A', 0.006, (net) => amps(net, 0)),
	ring('ring distributor: current C to B', 33.33, 'A', 0.006, (net) => amps(net, 1)),
	ring('ring distributor: current A to C', 113.33, 'A', 0.006, (net) => amps(net, 2)),
	ring('ring distributor: voltage at B', 232.2, 'V', 0.01, (net) => volts(net, 'B')),
	ring('ring distributor: voltage at C', 233.2, 'V', 0.01, (net) => volts(net, 'C')),
	nodal('two current sources, three resistors: v1', 13.333, 'V', 0.0005, (net) => volts(net, '1')),
	nodal('two current sources, three resistors: v2', 20, 'V', 1e-9, (net) => volts(net, '2')),
	nodalPractice('sources of 1 A and 4 A: v1', -2, 'V', 1e-9, (net) => volts(net, '1')),
	nodalPractice('sources of 1 A and 4 A: v2', -14, 'V', 1e-9, (net) => volts(net, '2')),
	engineering('sources of 3.1 A and 1.4 A: v1', 5, 'V', 1e-9, (net) => volts(net, '1')),
	engineering('sources of 3.1 A and 1.4 A: v2', 2, 'V', 1e-9, (net) => volts(net, '2')),
	kirchhoff('two batteries, three branches: I1', 4.75, 'A', 1e-9, (net) => amps(net, 0)),
	kirchhoff('two batteries, three branches: I2', -3.5, 'A', 1e-9, (net) => amps(net, 1)),
	kirchhoff('two batteries, three branches: I3', 8.25, 'A', 1e-9, (net) => amps(net, 2)),
	multiloop('three batteries, three branches: i1', -0.5, 'A', 1e-9, (net) => amps(net, 0)),
	multiloop('three batteries, three branches: i2', 0.25, 'A', 1e-9, (net) => amps(net, 2)),
	multiloop('three batteries, three branches: i3', -0.25, 'A', 1e-9, (net) => amps(net, 1)),
	light('12 V, 0.1 ohm inside, 10 ohm load: current', 1.188, 'A', 0.0005, (net) => amps(net, 1)),
	light('12 V, 0.1 ohm inside, 10 ohm load: terminal voltage', 11.9, 'V', 0.05, (net) => volts(net, '+')),
	heavy('12 V, 0.1 ohm inside, 0.5 ohm load: current', 20, 'A', 1e-9, (net) => amps(net, 1)),
	heavy('12 V, 0.1 ohm inside, 0.5 ohm load: terminal voltage', 10, 'V', 1e-9, (net) => volts(net, '+')),
	heavy(
		'12 V, 0.1 ohm inside, 0.5 ohm load: power in the load',
		200,
		'W',
		1e-9,
		(net) => amps(net, 1) ** 2 * 0.5,
	),
	worn('12 V, worn to 0.5 ohm inside, 0.5 ohm load: current', 12, 'A', 1e-9, (net) => amps(net, 1)),
	worn('12 V, worn to 0.5 ohm inside, 0.5 ohm load: terminal voltage', 6, 'V', 1e-9, (net) =>
		volts(net, '+'),
	),
	...cubes,
	bridge,
	...runs,
];
