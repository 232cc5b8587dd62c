import { cautionDisconnect, cautionLugs, cautionSourceEnd } from '../electrical/cautions.js';
import {
	type Distribution,
	hasRing,
	type LoadNode,
	type Segment,
	type SolvedDistribution,
	solveDistribution,
	type Thicker,
	thickenFirst,
	unknownSegment,
} from '../electrical/distribution.js';
import { readParts, segmentName, sourceNodeOf } from '../electrical/distribution-parts.js';
import { writeNumber } from '../quantity/write.js';
import { copperAlphaSource } from '../tables/conductors.js';
import { declareTopic } from '../topic/declare.js';
import { choice, conductor, count, type InputOf, list, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { wire } from './wire.js';

const fields = {
	voltageV: quantity({
		label: 'source voltage',
		kind: 'voltage',
		min: 5,
		max: 60,
		aliases: ['system', 'volts', 'tensión', 'spannung'],
		fallback: { value: 12, why: 'the usual house voltage', confirm: true },
	}),
	parts: list({
		label: 'segments and loads',
		help: 'Segments: from - to, size, one-way length. Loads: node, amperes or watts. "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
		max: 300,
		required:
			'Which conductors and loads are there? "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
		item: {
			from: text({ label: 'node it starts at, or the node of a load', required: 'Between which nodes?' }),
			to: text({ label: 'node it ends at' }),
			size: conductor({ label: 'conductor' }),
			lengthM: quantity({ label: 'one-way length', kind: 'length', min: 0.02, max: 300 }),
			ohm: quantity({ label: 'resistance of the segment', kind: 'resistance', min: 1e-6, max: 100 }),
			currentA: quantity({ label: 'current of the load', kind: 'current', min: 0.001, max: 2000 }),
			powerW: quantity({ label: 'power of the load', kind: 'power', min: 0.01, max: 50_000 }),
			count: count({ label: 'how many', min: 1, max: 50 }),
			leg: choice({
				label: 'leg',
				options: {
					both: ['both legs', 'pair', 'two-wire'],
					positive: ['positive', 'positive leg', 'feed only', 'plus leg'],
					return: ['return', 'return leg', 'negative leg', 'rückleiter', 'retorno'],
				},
			}),
		},
	}),
	sourceNode: text({ label: 'node that the source feeds', help: 'Only where its name does not say so.' }),
	internalOhm: quantity({
		label: 'internal resistance of the bank',
		kind: 'resistance',
		min: 0.0001,
		max: 1,
		aliases: ['internal resistance', 'internal', 'innenwiderstand', 'resistencia interna'],
	}),
	dropLimit: wire.fields.dropLimit,
	critical: wire.fields.critical,
	insulationC: wire.fields.insulationC,
	ambientC: wire.fields.ambientC,
};

type Input = InputOf<typeof fields>;

export const network = declareTopic({
	name: 'network',
	title: 'Voltages in the whole distribution',
	system: 'wiring',
	purpose:
		'The true voltage at every load with all loads on, the current in every segment, and which segment to thicken first.',
	words: [
		'network',
		'distribution',
		'dc distribution',
		'all loads on',
		'everything on',
		'with everything on',
		'voltages with everything on',
		'whole distribution',
		'whole network',
		'voltages',
		'wiring tree',
		'distribution tree',
		'node voltages',
		'voltage everywhere',
		'everything is on',
		"everything's on",
		'everythings on',
		'all on',
		'volts at',
		'verteiler',
		'stromverteiler',
		'alles an',
		'alle verbraucher an',
		'todo encendido',
		'distribuidor',
		'verteilung',
		'netzwerk',
		'red de distribución',
		'distribución',
	],
	examples: [
		'network 12v: battery-bus 2/0 3 ft, bus-fridge 10 awg 20 ft, bus-fan 14 awg 12 ft, fridge 5A, fan 30W',
		'distribution 24V: battery-panel 35mm2 1.5 m; panel-pump 2.5mm2 6 m; panel-heater 4mm2 4 m; pump 8A; heater 100W',
		'everything on: battery-bus 4 awg 6 ft; bus-lights 16 awg 15 ft 3A; bus-pump 12 awg 10 ft 8A',
	],
	method:
		'Nodal analysis of both legs with all loads on; constant-power loads are repeated until current and voltage agree, conductors stand at their operating temperature. Steady state only: no starting currents, no joints or fuses in the way.',
	fields,
	calculate: calculateNetwork,
});

const kirchhoff = physics("Kirchhoff's laws, solved by nodal analysis");
/** Loads and segments shown by name; the rest of a large network is told by its worst. */
const mostShown = 40;

function calculateNetwork(input: Input, sheet: Sheet) {
	const parts = readParts(input.parts, sheet.say);
	if ('missing' in parts) return sheet.ask(parts.missing);
	if ('refusal' in parts) {
		const { code, text: what, instead, field } = parts.refusal;
		return sheet.refuse(code, what, instead, field);
	}
	const { segments, loads } = parts;
	const nodes = new Set(segments.flatMap(({ from, to }) => [from, to]));
	const source = input.sourceNode?.trim().toLowerCase() ?? sourceNodeOf(segments);
	if (!nodes.has(source)) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read "${source}" as the node that the source feeds, but no segment begins there.`,
			sheet.say`Name one of: ${[...nodes].join(', ')}.`,
			'sourceNode',
		);
	}
	if (input.sourceNode === undefined) {
		sheet.assume('sourceNode', fields.sourceNode.meta.label, source, 'named for it, or the first named');
	}
	if (parts.positiveTaken) {
		sheet.assume(
			'leg',
			'segments without a leg named',
			'positive',
			'return segments are named, so the others are taken for the positive leg alone',
			{ confirm: true },
		);
	}
	const distribution: Distribution = {
		source,
		sourceV: input.voltageV,
		sourceOhm: input.internalOhm ?? 0,
		segments,
		loads,
		insulationC: input.insulationC,
		ambientC: input.ambientC,
	};
	if (input.ambientC >= input.insulationC) {
		return sheet.refuse(
			'impossible',
			sheet.say`At ${sheet.show('temperature', input.ambientC)} around it, insulation of ${sheet.show('temperature', input.insulationC, { unit: '°C' })} carries nothing.`,
			'Choose a cable with a hotter insulation class or a cooler way.',
			'ambientC',
		);
	}
	const unknown = unknownSegment(distribution, sheet.rules);
	if (unknown !== null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I have no ampacity for the conductor of ${segmentName(unknown)} at ${sheet.show('temperature', input.insulationC, { unit: '°C' })} insulation.`,
			'Name another size or insulation class.',
			'parts',
		);
	}
	const answer = solveDistribution(distribution, sheet.rules);
	if ('reason' in answer) {
		return answer.reason === 'floating' ? refuseFloating(sheet, answer.nodes) : refuseCollapse(sheet);
	}
	sheet.caution(cautionSourceEnd, cautionDisconnect, cautionLugs);
	const steps = thickenFirst(distribution, answer, sheet.rules);
	writeResults(sheet, distribution, answer, steps);
	writeWorking(sheet, distribution, answer);
	const overloaded = writeFindings(sheet, input, distribution, answer);
	for (const step of steps.slice(0, 3)) writeNeighbour(sheet, input, segments, step);
	return decide(sheet, input, distribution, answer, steps, overloaded);
}

function refuseFloating(sheet: Sheet, rails: readonly string[]) {
	const name = (rail: string) => rail.slice(2);
	const plus = rails.filter((rail) => rail.startsWith('+')).map(name);
	const minus = rails.filter((rail) => rail.startsWith('-')).map(name);
	return plus.length > 0
		? sheet.refuse(
				'contradiction',
				sheet.say`No segment leads from the source to: ${plus.join(', ')}.`,
				sheet.say`Name the conductor that feeds it, "bus-${plus[0] as string} 10 awg 12 ft".`,
				'parts',
			)
		: sheet.refuse(
				'contradiction',
				sheet.say`No return leads back to the source from: ${minus.join(', ')}.`,
				sheet.say`Name the return, "${minus[0] as string}-battery return 10 awg 12 ft", or leave out the legs to have both counted.`,
				'parts',
			);
}

function refuseCollapse(sheet: Sheet) {
	return sheet.refuse(
		'impossible',
		sheet.say`These loads want more power than the conductors can carry to them: the voltage collapses.`,
		sheet.say`Thicken or shorten the segments, raise the voltage, or check the powers.`,
		'parts',
	);
}

/** "battery-bus" as a part of a result's name: "BatteryBus". */
function camel(name: string): string {
	const words = name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
	return words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join('');
}

const share = (node: LoadNode, voltageV: number) => node.dropV / voltageV;

/** A drop: rounded up, so that one above its limit is never read as at it. */
function dropText(fraction: number): string {
	return `${writeNumber(fraction * 100, 1, 'up')} %`;
}

/** A limit as it was asked for, which no rounding may loosen. */
function limitText(fraction: number): string {
	return `${writeNumber(fraction * 100, 2, 'down')} %`;
}

function wayText(segment: Segment): string {
	if (!('size' in segment.way)) return '';
	return segment.way.parallel === 1
		? segment.way.size.name
		: `${segment.way.parallel} x ${segment.way.size.name}`;
}

function writeResults(
	sheet: Sheet,
	distribution: Distribution,
	answer: SolvedDistribution,
	steps: readonly Thicker[],
): void {
	const { sourceV, segments } = distribution;
	const worst = answer.loadNodes[0] as LoadNode;
	const totalA = answer.loadNodes.reduce((sum, node) => sum + node.currentA, 0);
	sheet.result('worstLoad', 'load with the lowest voltage', worst.node);
	sheet.result('worstVoltage', 'its voltage', worst.voltageV, { kind: 'voltage', write: { round: 'down' } });
	sheet.result('worstDropPercent', 'its drop', share(worst, sourceV) * 100, {
		unit: '%',
		write: { decimals: 2, round: 'up' },
	});
	sheet.result('totalCurrent', 'current from the source', totalA, {
		kind: 'current',
		write: { round: 'up' },
	});
	sheet.result('totalLoad', 'power that reaches the loads', answer.solved.loadW, {
		kind: 'power',
		write: { decimals: 1 },
	});
	sheet.result('loss', 'power lost on the way', answer.solved.lossW, {
		kind: 'power',
		write: { decimals: 1 },
	});
	if (distribution.sourceOhm > 0) {
		sheet.result('busVoltage', 'voltage at the source node', answer.busV, {
			kind: 'voltage',
			write: { round: 'down' },
		});
	}
	const first = steps[0];
	if (first !== undefined) {
		sheet.result('thickenFirst', 'segment to thicken first', segmentName(segments[first.segment] as Segment));
		sheet.result('thickenTo', 'to', first.size.name);
		sheet.result('thickenDropPercent', 'drop of the worst load then', (first.dropV / sourceV) * 100, {
			unit: '%',
			write: { decimals: 2, round: 'up' },
		});
	}
	for (const node of answer.loadNodes.slice(0, mostShown)) {
		const name = camel(node.node);
		sheet.result(`voltageAt${name}`, sheet.say`voltage at ${node.node}`, node.voltageV, {
			kind: 'voltage',
			write: { round: 'down' },
		});
		sheet.result(`dropAt${name}`, sheet.say`drop at ${node.node}`, share(node, sourceV) * 100, {
			unit: '%',
			write: { decimals: 2, round: 'up' },
		});
	}
	const busiest = segments
		.map((segment, index) => ({ segment, currentA: answer.segmentA[index] as number }))
		.sort((a, b) => Math.abs(b.currentA) - Math.abs(a.currentA));
	const used = new Map<string, number>();
	for (const { segment, currentA } of busiest.slice(0, mostShown)) {
		const name = camel(segmentName(segment));
		const times = (used.get(name) ?? 0) + 1;
		used.set(name, times);
		sheet.result(
			`currentIn${name}${times === 1 ? '' : times}`,
			sheet.say`current in ${segmentName(segment)}`,
			currentA,
			{ kind: 'current', write: { round: 'nearest' } },
		);
	}
}

function writeWorking(sheet: Sheet, distribution: Distribution, answer: SolvedDistribution): void {
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	for (const [index, segment] of distribution.segments.slice(0, mostShown).entries()) {
		const check = answer.checks[index] ?? null;
		if (check === null || !('size' in segment.way)) continue;
		const ohm = answer.segmentOhm[index] as number;
		const { size, lengthM, parallel } = segment.way;
		sheet.step(
			sheet.say`resistance of ${segmentName(segment)}`,
			segment.leg === 'both'
				? 'R = 2 · L · r20 · (1 + 0.00393 · (T − 20)) / n'
				: 'R = L · r20 · (1 + 0.00393 · (T − 20)) / n',
			`${segment.leg === 'both' ? '2 × ' : ''}${n(lengthM)} m × ${n(size.bareOhmPerM20C * 1000, 4)} mohm/m × (1 + 0.00393 × (${n(check.conductorC, 1)} − 20)) / ${parallel}`,
			ohm,
			{ kind: 'resistance', source: sheet.rules.resistanceSource },
		);
	}
	sheet.source(copperAlphaSource);
	sheet.step(
		'node voltages',
		'G · u = i, I = P / U',
		`${distribution.segments.length} segments, ${distribution.loads.length} loads, ${answer.solved.rounds} rounds`,
		(answer.loadNodes[0] as LoadNode).voltageV,
		{ kind: 'voltage', source: kirchhoff },
	);
	sheet.step(
		'balance of power',
		'Ps = Pl + Pv',
		`${n(answer.solved.sourceW, 4)} W = ${n(answer.solved.loadW, 4)} W + ${n(answer.solved.lossW, 4)} W`,
		answer.solved.sourceW,
		{ kind: 'power', source: kirchhoff },
	);
}

/** @returns the segments that carry more than they may, worst first */
function writeFindings(
	sheet: Sheet,
	input: Input,
	distribution: Distribution,
	answer: SolvedDistribution,
): readonly number[] {
	const { segments, sourceV } = distribution;
	const overloaded: { index: number; over: number }[] = [];
	for (const [index, check] of answer.checks.entries()) {
		if (check === null) continue;
		const segment = segments[index] as Segment;
		const currentA = Math.abs(answer.segmentA[index] as number);
		const carries = sheet.show('current', currentA, { round: 'up' });
		const may = sheet.show('current', check.allowableA, { round: 'down' });
		const name = segmentName(segment);
		if (currentA > check.allowableA) {
			overloaded.push({ index, over: currentA / check.allowableA });
			sheet.finding(
				'danger',
				'segment-overloaded',
				sheet.say`${name} carries ${carries} on ${wayText(segment)}, which may carry ${may}: it overheats.`,
				check.tableA.source,
			);
		} else if (!check.passes.heat || !check.passes.protection) {
			const cap = sheet.show('current', check.deviceCapA, { round: 'down' });
			sheet.finding(
				'warning',
				'segment-without-fuse',
				sheet.say`${name} carries ${carries} on ${wayText(segment)}: no standard fuse both carries that for hours (125 %) and protects it (at most ${cap}).`,
				sheet.rules.dc.deviceSource,
			);
		}
	}
	for (const node of answer.loadNodes) {
		if (share(node, sourceV) <= input.dropLimit) continue;
		const drop = dropText(share(node, sourceV));
		sheet.finding(
			'warning',
			'drop-over-limit',
			sheet.say`${node.node}: ${sheet.show('voltage', node.voltageV, { round: 'down' })}, ${drop} lost on the way (limit ${limitText(input.dropLimit)}).`,
			practice('limit of the voltage drop'),
		);
	}
	if (hasRing(segments)) {
		sheet.finding(
			'warning',
			'ring-fed-from-both-sides',
			sheet.say`Some segments close a ring: a short on it is fed from both sides, so it needs a fuse at both ends, and each must carry the whole when the other opens.`,
			practice('protection of a ring at both ends'),
		);
	}
	if (segments.some((segment) => segment.leg === 'return' && !('size' in segment.way))) {
		sheet.finding(
			'note',
			'measured-return',
			sheet.say`A return through chassis or busbar is only as good as its joints: measure its resistance under load, and use no chassis return near gas or for mains.`,
			practice('chassis returns are measured'),
		);
	}
	return overloaded.sort((a, b) => b.over - a.over).map((one) => one.index);
}

function writeNeighbour(sheet: Sheet, input: Input, segments: readonly Segment[], step: Thicker): void {
	const name = segmentName(segments[step.segment] as Segment);
	const fraction = step.dropV / input.voltageV;
	sheet.neighbour(
		sheet.say`${name} in ${step.size.name}`,
		fraction <= input.dropLimit,
		sheet.say`worst load then ${dropText(fraction)}`,
	);
}

function decide(
	sheet: Sheet,
	input: Input,
	distribution: Distribution,
	answer: SolvedDistribution,
	steps: readonly Thicker[],
	overloaded: readonly number[],
) {
	const { segments, sourceV } = distribution;
	const worst = answer.loadNodes[0] as LoadNode;
	const volts = sheet.show('voltage', worst.voltageV, { round: 'down' });
	const drop = dropText(share(worst, sourceV));
	const totalA = answer.loadNodes.reduce((sum, node) => sum + node.currentA, 0);
	const total = sheet.show('current', totalA, { round: 'up' });
	const loss = sheet.show('power', answer.solved.lossW, { decimals: 1 });
	const first = steps[0];
	const next =
		first === undefined
			? ''
			: ` ${sheet.say`${segmentName(segments[first.segment] as Segment)} in ${first.size.name} would bring it to ${dropText(first.dropV / sourceV)}.`}`;
	const because = `${sheet.say`${total} flow with everything on, ${loss} stay in the copper; the worst load is ${worst.node} with ${volts} (${drop}).`}${next}`;
	const worstSegment = overloaded[0];
	if (worstSegment !== undefined) {
		const segment = segments[worstSegment] as Segment;
		const carries = sheet.show('current', Math.abs(answer.segmentA[worstSegment] as number), { round: 'up' });
		const may = sheet.show('current', answer.checks[worstSegment]?.allowableA ?? 0, { round: 'down' });
		return sheet.answer(
			sheet.say`${segmentName(segment)} is overloaded: ${carries} on ${wayText(segment)} (${may})`,
			{
				because,
				governedBy: 'ampacity',
			},
		);
	}
	if (share(worst, sourceV) > input.dropLimit) {
		return sheet.answer(
			first === undefined
				? sheet.say`${worst.node} gets only ${volts} (${drop} lost)`
				: sheet.say`${worst.node} gets only ${volts} (${drop} lost): thicken ${segmentName(segments[first.segment] as Segment)} first`,
			{ because, governedBy: 'voltage drop' },
		);
	}
	return sheet.answer(
		sheet.say`All loads within ${limitText(input.dropLimit)}: the worst is ${worst.node}, ${volts} (${drop})`,
		{ because, governedBy: 'voltage drop' },
	);
}
