import { writeNumber } from '../quantity/write.js';
import {
	fittingLossSource,
	type PipeSize,
	pexSizes,
	pexSizeWritten,
	pipeSizePattern,
	plasticHazenWilliamsC,
	plasticRoughnessMm,
	plasticRoughnessSource,
} from '../tables/pipes.js';
import {
	kitchenMaximumLMin,
	kitchenMaximumSource,
	lavatoryMaximumLMin,
	lavatoryMaximumSource,
	showerMaximumLMin,
	showerMaximumSource,
	waterSource,
} from '../tables/water.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { cautionPotable, cautionPressure } from '../water/cautions.js';
import { hazenWilliamsPa } from '../water/flow.js';
import { type PipeRun, type RunLoss, runLoss } from '../water/piping.js';
import { waterAt } from '../water/properties.js';
import { wire } from './wire.js';

const fields = {
	pipe: text({
		label: 'pipe size',
		pattern: pipeSizePattern,
		help: 'A size of PEX (3/8, 1/2, 3/4 in; 12, 16, 20 mm) to have it judged; leave it out to have one chosen.',
	}),
	flowLMin: quantity({
		label: 'flow',
		kind: 'flow',
		min: 0.1,
		max: 100,
		aliases: ['flow', 'flows', 'rate', 'caudal', 'durchfluss'],
	}),
	fixture: choice({
		label: 'fixture',
		options: {
			shower: ['shower', 'shower head', 'ducha', 'dusche'],
			lavatory: ['bathroom tap', 'bathroom sink', 'lavatory', 'basin tap', 'lavabo', 'waschbecken'],
			kitchen: ['kitchen tap', 'kitchen sink', 'sink', 'tap', 'faucet', 'grifo', 'spüle', 'wasserhahn'],
		},
	}),
	lengthM: quantity({
		label: 'length of pipe',
		kind: 'length',
		min: 0.1,
		max: 200,
		aliases: [
			'run',
			'length',
			'long',
			'away',
			'pipe',
			'pex',
			'tubing',
			'line',
			'longitud',
			'largo',
			'tubería',
			'tubo',
			'länge',
			'lang',
			'entfernt',
			'leitung',
			'wasserleitung',
			'rohr',
		],
		required: 'How long is the pipe from the pump to the fixture?',
	}),
	boreMm: quantity({
		label: 'bore',
		kind: 'thickness',
		min: 3,
		max: 80,
		aliases: [
			'bore',
			'id',
			'i.d.',
			'inside diameter',
			'inner diameter',
			'diameter',
			'hose',
			'diámetro',
			'innendurchmesser',
			'durchmesser',
		],
		help: 'For hose and pipe that is not in the table.',
	}),
	pumpKPa: quantity({
		label: 'pressure at the pump',
		kind: 'pressure',
		min: 20,
		max: 1000,
		aliases: [
			'pump',
			'pump pressure',
			'pressure',
			'supply',
			'city water',
			'bomba',
			'presión',
			'pumpe',
			'druck',
		],
		fallback: {
			value: 172.369,
			why: 'the 25 psi at which the usual 12 V pump starts: the least it holds (practice)',
			confirm: true,
		},
	}),
	fixtureKPa: quantity({
		label: 'pressure wanted at the fixture',
		kind: 'pressure',
		min: 5,
		max: 600,
		aliases: [
			'at the shower',
			'at the tap',
			'at the fixture',
			'at the sink',
			'wanted',
			'needs',
			'need',
			'needed',
			'en la ducha',
			'an der dusche',
			'left',
		],
		fallback: { value: 68.948, why: '10 psi, enough for a water-saving head (practice)' },
	}),
	riseM: quantity({
		label: 'rise from pump to fixture',
		kind: 'length',
		min: -3,
		max: 5,
		aliases: [
			'rise',
			'up',
			'higher',
			'above',
			'climb',
			'lift',
			'height',
			'uphill',
			'subida',
			'altura',
			'höhe',
			'höher',
		],
		fallback: { value: 1.5, why: 'a shower head above a pump on the floor (practice)', confirm: true },
	}),
	elbows: count({
		label: 'elbows',
		min: 0,
		max: 60,
		aliases: ['elbows', 'elbow', 'ells', 'bends', '90s', 'nineties', 'codos', 'winkel', 'bögen'],
		fallback: { value: 4, why: 'a usual run (practice)', confirm: true },
	}),
	tees: count({
		label: 'tees taken through the branch',
		min: 0,
		max: 30,
		aliases: ['tees', 'tee', 't-pieces', 'tes', 't-stücke'],
		fallback: { value: 1, why: 'a usual run (practice)' },
	}),
	valves: count({
		label: 'stop valves',
		min: 0,
		max: 20,
		aliases: ['valves', 'valve', 'ball valves', 'shutoffs', 'shutoff', 'válvulas', 'ventile', 'hähne'],
		fallback: { value: 1, why: 'a usual run (practice)' },
	}),
	fittings: choice({
		label: 'kind of fittings',
		options: {
			insert: ['crimp', 'clamp', 'insert', 'barbed', 'barb', 'pinch', 'press'],
			full: ['expansion', 'full bore', 'full-bore', 'push-fit', 'push fit', 'compression'],
		},
		fallback: { value: 'insert', why: 'the safe side: fittings pushed into the pipe, narrower than it' },
	}),
	waterC: quantity({
		label: 'water temperature',
		kind: 'temperature',
		worseEnd: 'low',
		min: 0,
		max: 95,
		aliases: ['water', 'hot', 'cold', 'agua', 'wasser'],
		fallback: { value: 10, why: 'cold water, which flows hardest' },
	}),
	currentA: quantity({
		label: 'pump current',
		kind: 'current',
		min: 0.1,
		max: 50,
		aliases: ['pump', 'pump draws', 'draws', 'pulls', 'bomba', 'pumpe'],
	}),
	powerW: quantity({
		label: 'pump power',
		kind: 'power',
		min: 1,
		max: 2000,
		aliases: ['pump', 'pump power', 'bomba', 'pumpe'],
	}),
	voltageV: quantity({
		label: 'pump voltage',
		kind: 'voltage',
		min: 10,
		max: 60,
		aliases: ['pump', 'system', 'battery', 'bomba', 'pumpe'],
	}),
	wireLengthM: quantity({
		label: 'wire from the fuse block to the pump, one way',
		kind: 'length',
		min: 0.1,
		max: 50,
		aliases: ['wire', 'wire run', 'cable', 'cable run', 'wiring', 'kabel', 'cableado'],
	}),
};

type Input = InputOf<typeof fields>;

export const pipe = declareTopic({
	name: 'pipe',
	title: 'Pressure lost in a water pipe',
	system: 'water',
	purpose:
		'Which pipe a fixture needs, or whether a named one will do, and what pressure is left at the tap.',
	words: [
		'pipe',
		'pex',
		'pipe size',
		'pressure loss',
		'pressure drop',
		'water pressure',
		'plumbing',
		'water line',
		'wasserleitung',
		'druckverlust',
		'tubería',
		'pérdida de presión',
		'tubing',
		'psi at the shower',
		'psi left',
		'rohr',
	],
	examples: [
		'2 gpm through 20 ft of 1/2 pex, 45 psi pump',
		'pipe size for a shower, 25 ft run, 6 elbows',
		'3/8 pex 18 ft 1.5 gpm ok?',
		'druckverlust 16 mm pex 6 m 8 l/min',
	],
	method:
		'Darcy-Weisbach with the Swamee-Jain friction factor (laminar below Re 2300), fittings by loss coefficients, rise by the weight of the water; Hazen-Williams beside. Judged on the smallest bore the standard allows. One fixture running, pump at a constant pressure.',
	fields,
	needs: [{ anyOf: ['flowLMin', 'fixture'], question: 'What flow (or which fixture)?' }],
	calculate: calculatePipe,
});

const fixtureFlows = {
	shower: { flowLMin: showerMaximumLMin, source: showerMaximumSource },
	lavatory: { flowLMin: lavatoryMaximumLMin, source: lavatoryMaximumSource },
	kitchen: { flowLMin: kitchenMaximumLMin, source: kitchenMaximumSource },
} as const;

/** Water faster than this hammers and sings [m/s] (8 ft/s). */
const fastestMS = 2.4;
const fastestSource = practice('8 ft/s at most in cold water pipes, against noise and hammer');
const darcyWeisbach = physics('Darcy-Weisbach');
const swameeJainSource = fromMemory(
	'Swamee and Jain, J. Hydraulics Div. ASCE 1976',
	'explicit friction factor',
);
const hazenWilliamsSource = fromMemory('Hazen-Williams', 'C = 150 for plastic pipe');

/** Pipe that is judged: its name and bore. */
interface Bore {
	readonly name: string;
	readonly boreMm: number;
	readonly size: PipeSize | null;
}

interface Judged {
	readonly bore: Bore;
	readonly loss: RunLoss;
	readonly leftKPa: number;
	readonly enough: boolean;
	readonly calm: boolean;
}

function calculatePipe(input: Input, sheet: Sheet) {
	const flowLMin = flowOf(input, sheet);
	const run: PipeRun = {
		flowLMin,
		lengthM: input.lengthM,
		riseM: input.riseM,
		fittings: { elbow: input.elbows, tee: input.tees, valve: input.valves },
		insert: input.fittings === 'insert',
		waterC: input.waterC,
	};
	if (Math.abs(input.riseM) > input.lengthM) {
		if (sheet.isGiven('riseM')) {
			return sheet.refuse(
				'contradiction',
				sheet.say`A pipe of ${sheet.show('length', input.lengthM)} can't rise ${sheet.show('length', input.riseM)}.`,
				'Give a rise no larger than the length of the pipe.',
				'riseM',
			);
		}
		// The assumed rise gives way to the length that was said.
		return calculatePipe({ ...input, riseM: input.lengthM }, sheet);
	}
	if (input.pipe !== undefined && pexSizeWritten(input.pipe) === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${input.pipe}" as the pipe size; no such tubing is in my tables.`,
			sheet.say`Name one of: ${pexSizes.map((size) => size.name).join(', ')}; or the bore of a hose.`,
			'pipe',
		);
	}
	const judge = (bore: Bore): Judged => {
		const loss = runLoss(run, bore.boreMm);
		const leftKPa = input.pumpKPa - loss.totalPa / 1000;
		return {
			bore,
			loss,
			leftKPa,
			enough: leftKPa >= input.fixtureKPa,
			calm: loss.flow.velocityMS <= fastestMS,
		};
	};
	const offered = pexSizes
		.filter((size) => (size.system === 'us') === (sheet.context.region === 'us'))
		.map((size) => judge({ name: size.name, boreMm: size.smallestBoreMm, size }));
	const named = namedBore(input, sheet);
	const chosen =
		named === null ? (offered.find((one) => one.enough && one.calm) ?? offered.at(-1)) : judge(named);
	if (chosen === undefined) throw new Error('the table of pipes is empty');

	writeWorking(sheet, input, run, chosen);
	writeResults(sheet, run, chosen);
	writeNeighbours(sheet, offered, chosen);
	writeTipping(sheet, input, run, chosen);
	writeFindings(sheet, input, chosen, offered);
	if (input.wireLengthM !== undefined) callWire(sheet, input);
	sheet.caution(cautionPressure, cautionPotable);

	const left = sheet.show('pressure', Math.max(0, chosen.leftKPa), { decimals: 1, round: 'down' });
	const lost = sheet.show('pressure', chosen.loss.totalPa / 1000, { decimals: 1, round: 'up' });
	const speed = sheet.show('speed', chosen.loss.flow.velocityMS, { decimals: 1 });
	const { name } = chosen.bore;
	const passes = chosen.enough && chosen.calm;
	const headline = passes
		? named === null
			? sheet.say`${name}: ${lost} lost, ${left} left at the fixture`
			: sheet.say`${name} will do: ${lost} lost, ${left} left at the fixture`
		: named === null
			? sheet.say`No pipe offered will do: even ${name} leaves only ${left}`
			: chosen.enough
				? sheet.say`${name} is too thin: the water runs at ${speed}`
				: sheet.say`${name} won't do: ${lost} lost, ${left} left at the fixture`;
	const straight = sheet.show('pressure', chosen.loss.straightPa / 1000, { decimals: 2 });
	const fittings = sheet.show('pressure', chosen.loss.fittingsPa / 1000, { decimals: 2 });
	const rise = sheet.show('pressure', chosen.loss.risePa / 1000, { decimals: 2 });
	return sheet.answer(headline, {
		governedBy: chosen.calm ? 'pressure at the fixture' : 'velocity',
		because: sheet.say`Pipe ${straight}, fittings ${fittings}, rise ${rise}; the water runs at ${speed}.`,
	});
}

function flowOf(input: Input, sheet: Sheet): number {
	if (input.flowLMin !== undefined) return input.flowLMin;
	const fixture = fixtureFlows[input.fixture ?? 'shower'];
	sheet.assume('flowLMin', 'flow', fixture.flowLMin, 'the most such a fixture may pass', {
		kind: 'flow',
		confirm: true,
	});
	sheet.source(fixture.source);
	return fixture.flowLMin;
}

function namedBore(input: Input, sheet: Sheet): Bore | null {
	if (input.pipe !== undefined) {
		const size = pexSizeWritten(input.pipe);
		return size === null ? null : { name: size.name, boreMm: size.smallestBoreMm, size };
	}
	if (input.boreMm === undefined) return null;
	return { name: sheet.say`${sheet.show('thickness', input.boreMm)} bore`, boreMm: input.boreMm, size: null };
}

function writeWorking(sheet: Sheet, input: Input, run: PipeRun, { bore, loss, leftKPa }: Judged): void {
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	const water = waterAt(run.waterC);
	const { flow } = loss;
	sheet.step(
		'velocity',
		'v = Q / (π D² / 4)',
		`${n(run.flowLMin)} L/min / (π × (${n(bore.boreMm)} mm)² / 4)`,
		flow.velocityMS,
		{ kind: 'speed', source: bore.size?.source ?? physics('continuity') },
	);
	sheet.step(
		'Reynolds number',
		'Re = v · D / ν',
		`${n(flow.velocityMS)} m/s × ${n(bore.boreMm)} mm / ${n(water.viscosityM2S * 1e6)} mm²/s`,
		flow.reynolds,
		{ source: waterSource },
	);
	sheet.step(
		'friction factor',
		flow.reynolds < 2300 ? 'f = 64 / Re' : 'f = 0.25 / (log10(e/(3.7 D) + 5.74/Re^0.9))²',
		`Re = ${n(flow.reynolds, 0)}, e/D = ${n(plasticRoughnessMm / bore.boreMm, 6)}`,
		flow.frictionFactor,
		{ source: swameeJainSource },
	);
	sheet.source(plasticRoughnessSource);
	sheet.step(
		'loss in the straight pipe',
		'Δp = f · (L / D) · ρ · v² / 2',
		`${n(flow.frictionFactor, 4)} × (${n(run.lengthM)} m / ${n(bore.boreMm)} mm) × ${n(water.densityKgM3, 1)} kg/m³ × (${n(flow.velocityMS)} m/s)² / 2`,
		loss.straightPa / 1000,
		{ kind: 'pressure', source: darcyWeisbach },
	);
	sheet.step(
		'loss in the fittings',
		'Δp = ΣK · ρ · v² / 2',
		`${input.elbows} elbows, ${input.tees} tees, ${input.valves} valves; as much as ${n(loss.fittingsAsLengthM, 1)} m of pipe`,
		loss.fittingsPa / 1000,
		{ kind: 'pressure', source: fittingLossSource },
	);
	if (run.insert) sheet.source(practice('insert fittings have about 0.72 of the bore of the pipe'));
	sheet.step(
		'rise',
		'Δp = ρ · g · h',
		`${n(water.densityKgM3, 1)} × 9.80665 × ${n(run.riseM)} m`,
		loss.risePa / 1000,
		{
			kind: 'pressure',
			source: physics('hydrostatics'),
		},
	);
	sheet.step(
		'pressure left at the fixture',
		'p = p,pump − ΣΔp',
		`${n(input.pumpKPa, 1)} kPa − ${n(loss.totalPa / 1000, 1)} kPa`,
		leftKPa,
		{ kind: 'pressure', source: physics('Bernoulli') },
	);
}

function writeResults(sheet: Sheet, run: PipeRun, { bore, loss, leftKPa, enough, calm }: Judged): void {
	const up = { kind: 'pressure', write: { round: 'up' } } as const;
	sheet.result('pipe', 'pipe', bore.name);
	sheet.result('verdict', 'verdict', enough && calm ? 'passes' : 'fails');
	sheet.result('bore', 'bore it was judged by', bore.boreMm, { kind: 'thickness', write: { decimals: 3 } });
	sheet.result('pressureAtFixture', 'pressure left at the fixture', leftKPa, {
		kind: 'pressure',
		write: { round: 'down' },
	});
	sheet.result('pressureLoss', 'pressure lost in all', loss.totalPa / 1000, up);
	sheet.result('pipeLoss', 'lost in the straight pipe', loss.straightPa / 1000, up);
	sheet.result('fittingLoss', 'lost in the fittings', loss.fittingsPa / 1000, up);
	sheet.result('riseLoss', 'lost in the rise', loss.risePa / 1000, up);
	sheet.result(
		'hazenWilliamsLoss',
		'straight pipe by Hazen-Williams, for comparison',
		hazenWilliamsPa(
			run.flowLMin,
			{ boreMm: bore.boreMm, lengthM: run.lengthM, coefficient: plasticHazenWilliamsC },
			waterAt(run.waterC).densityKgM3,
		) / 1000,
		{ kind: 'pressure' },
	);
	sheet.source(hazenWilliamsSource);
	sheet.result('velocity', 'velocity', loss.flow.velocityMS, { kind: 'speed', write: { round: 'up' } });
	sheet.result('reynolds', 'Reynolds number', loss.flow.reynolds, { write: { decimals: 0 } });
	sheet.result('frictionFactor', 'friction factor', loss.flow.frictionFactor, { write: { decimals: 4 } });
	sheet.result('fittingsAsLength', 'fittings as straight pipe', loss.fittingsAsLengthM, {
		kind: 'length',
		write: { round: 'up' },
	});
	sheet.result('waterInPipe', 'water standing in the pipe', loss.volumeL, {
		kind: 'volume',
		write: { round: 'up', decimals: 2 },
	});
	sheet.result('wait', 'time until water from the far end arrives', loss.volumeL / run.flowLMin / 60, {
		kind: 'duration',
		write: { unit: 's', round: 'up', decimals: 0 },
	});
}

function writeNeighbours(sheet: Sheet, offered: readonly Judged[], chosen: Judged): void {
	const smaller = offered.findLast((one) => one.bore.boreMm < chosen.bore.boreMm - 0.01);
	const larger = offered.find((one) => one.bore.boreMm > chosen.bore.boreMm + 0.01);
	for (const one of [smaller, larger]) {
		if (one === undefined) continue;
		const left = sheet.show('pressure', Math.max(0, one.leftKPa), { decimals: 1, round: 'down' });
		const speed = sheet.show('speed', one.loss.flow.velocityMS, { decimals: 1 });
		sheet.neighbour(one.bore.name, one.enough && one.calm, sheet.say`leaves ${left}, water at ${speed}`);
	}
}

function writeTipping(sheet: Sheet, input: Input, run: PipeRun, chosen: Judged): void {
	if (!chosen.enough || !chosen.calm) return;
	const holds = (changed: Partial<PipeRun>) => {
		const loss = runLoss({ ...run, ...changed }, chosen.bore.boreMm);
		return input.pumpKPa - loss.totalPa / 1000 >= input.fixtureKPa && loss.flow.velocityMS <= fastestMS;
	};
	const flowLMin = largest(run.flowLMin, run.flowLMin * 20, (value) => holds({ flowLMin: value }));
	const lengthM = largest(run.lengthM, run.lengthM * 100, (value) => holds({ lengthM: value }));
	const flow = sheet.show('flow', flowLMin, { round: 'down' });
	const length = sheet.show('length', lengthM, { round: 'down' });
	sheet.tipping('flowLMin', 'flow', flowLMin, sheet.say`up to ${flow}`, { kind: 'flow' });
	sheet.tipping('lengthM', 'length of pipe', lengthM, sheet.say`up to ${length}`, { kind: 'length' });
}

/** The largest value up to `most` for which it still holds; it holds for `known`. */
function largest(known: number, most: number, holds: (value: number) => boolean): number {
	if (holds(most)) return most;
	let low = known;
	let high = most;
	for (let step = 0; step < 50; step += 1) {
		const middle = (low + high) / 2;
		if (holds(middle)) low = middle;
		else high = middle;
	}
	return low;
}

function writeFindings(sheet: Sheet, input: Input, chosen: Judged, offered: readonly Judged[]): void {
	const enough = offered.find((one) => one.enough && one.calm);
	if (!chosen.enough) {
		const needed = sheet.show('pressure', input.fixtureKPa + chosen.loss.totalPa / 1000, {
			decimals: 1,
			round: 'up',
		});
		const wanted = sheet.show('pressure', input.fixtureKPa, { decimals: 1 });
		sheet.finding(
			'warning',
			'pressure-short',
			enough === undefined
				? sheet.say`Less than ${wanted} is left at the fixture; the pump must hold ${needed}.`
				: sheet.say`Less than ${wanted} is left at the fixture; ${enough.bore.name} would do, or a pump that holds ${needed}.`,
			practice('pressure wanted at a fixture'),
		);
	}
	if (!chosen.calm) {
		const speed = sheet.show('speed', chosen.loss.flow.velocityMS, { decimals: 1, round: 'up' });
		const limit = sheet.show('speed', fastestMS, { decimals: 1 });
		const calm = offered.find((one) => one.calm);
		sheet.finding(
			'warning',
			'velocity-high',
			calm === undefined
				? sheet.say`At ${speed} (limit ${limit}) the pipe sings and hammers; take less flow.`
				: sheet.say`At ${speed} (limit ${limit}) the pipe sings and hammers; ${calm.bore.name} keeps it quiet.`,
			fastestSource,
		);
	}
	if (input.pumpKPa > 690) {
		sheet.finding(
			'warning',
			'pressure-high',
			sheet.say`${sheet.show('pressure', input.pumpKPa)} is above what van plumbing is rated for; fit a pressure reducer.`,
			fromMemory('ASTM F876', 'PEX tubing: 100 psi at 82 °C, 160 psi at 23 °C'),
		);
	}
	if (chosen.loss.flow.reynolds < 10_000) {
		sheet.finding(
			'note',
			'hazen-williams-low',
			sheet.say`At this Reynolds number Hazen-Williams reads too low; Darcy-Weisbach counts.`,
			hazenWilliamsSource,
		);
	}
}

function callWire(sheet: Sheet, input: Input): void {
	if (input.currentA === undefined && input.powerW === undefined) {
		sheet.finding(
			'note',
			'pump-current-unknown',
			sheet.say`The pump's wire needs its current or power; read it from the label.`,
			practice(),
		);
		return;
	}
	const outcome = sheet.call(wire, {
		currentA: input.currentA,
		powerW: input.powerW,
		voltageV: input.voltageV,
		lengthM: input.wireLengthM,
		motor: true,
		load: 'water pump',
	});
	if (outcome.status === 'answered') {
		const conductor = outcome.sizing.results.find((one) => one.name === 'conductor');
		const device = outcome.sizing.results.find((one) => one.name === 'device');
		const current = outcome.sizing.results.find((one) => one.name === 'current');
		if (current !== undefined)
			sheet.result('pumpCurrent', 'pump current', Number(current.value), { kind: 'current' });
		if (conductor !== undefined) sheet.result('pumpWire', 'wire to the pump', String(conductor.value));
		if (device !== undefined)
			sheet.result('pumpFuse', 'fuse of the pump', Number(device.value), { kind: 'current' });
		return;
	}
	sheet.finding(
		'warning',
		'pump-wire-open',
		sheet.say`The wire to the pump could not be sized from these numbers; ask the wire topic.`,
		practice(),
	);
}
