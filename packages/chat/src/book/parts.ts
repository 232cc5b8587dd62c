/** The parts of a build's book that are told in facts: energy, water, climate, weights, and what the owner has to know. */

import {
	type Context,
	equipmentOf,
	labelOf,
	type Piece,
	type System,
	showValue,
	topicNamed,
	type Van,
	type VanSummary,
	write,
} from '@lugbook/core';
import type {
	AxlesPicture,
	ChargePicture,
	EnergyPart,
	FactsPart,
	Handover,
	MonthsPicture,
	OwnerLimit,
	Picture,
	RunRow,
	WeightsPart,
} from '@lugbook/report';
import { counts, type Reviewed } from './answers.js';

type Fact = FactsPart['facts'][number];

/** What a newest answer says in the book. */
interface Told {
	readonly system: System;
	readonly fact: Fact;
	readonly reviewed: Reviewed;
}

/** The newest standing answer of each topic but "wire", whose answers are runs of the schedule. */
export class Newest {
	readonly #byTopic = new Map<string, Told>();

	add(reviewed: Reviewed): void {
		const { entry, exchange, review } = reviewed;
		const topic = entry.topic === null ? null : topicNamed(entry.topic);
		if (topic === null || topic.name === 'wire' || !counts(reviewed)) return;
		const label = `${topic.title} (No. ${entry.number}, ${review.state})`;
		const fact = { label, text: exchange.answer.headline };
		// Set anew it stands last: the newest is at the end.
		this.#byTopic.delete(topic.name);
		this.#byTopic.set(topic.name, { system: topic.system, fact, reviewed });
	}

	facts(...ofSystems: readonly System[]): Fact[] {
		return [...this.#byTopic.values()].flatMap(({ system, fact }) =>
			ofSystems.includes(system) ? [fact] : [],
		);
	}

	of(topic: string): Reviewed | null {
		return this.#byTopic.get(topic)?.reviewed ?? null;
	}
}

/** A piece by what was told of it: "LiFePO4, 12 V, 100 Ah"; null where nothing was. */
export function ratingOf(piece: Piece, context: Context): string | null {
	const { fields, label } = equipmentOf(piece.kind);
	const texts = Object.entries(piece.values).flatMap(([name, value]) => {
		const field = fields[name];
		if (field === undefined || elsewhere.has(name)) return [];
		const shown = showValue(field, value, context);
		// "people 2" of the people aboard would say the word twice.
		return [field.meta.label === label ? shown : `${field.meta.label} ${shown}`];
	});
	return texts.length === 0 ? null : texts.join('; ');
}

/** Fields that have a column of their own, in the equipment, the schedule or the weights. */
const elsewhere: ReadonlySet<string> = new Set([
	'name',
	'count',
	'unitCount',
	'zone',
	'massKg',
	'wireSize',
	'runM',
	'fuseA',
]);

export function placeOf(piece: Piece, context: Context): string | null {
	const field = equipmentOf(piece.kind).fields.zone;
	const { zone, onRoof } = piece.values;
	if (zone !== undefined && field !== undefined) return showValue(field, zone, context);
	return onRoof === true ? 'on the roof' : null;
}

function piecesFacts(van: Van, system: System, context: Context): Fact[] {
	return van.pieces
		.filter(({ kind }) => equipmentOf(kind).system === system)
		.map((piece) => ({
			label: labelOf(piece),
			text: ratingOf(piece, context) ?? 'nothing told but that it is there',
		}));
}

export function energyPart(
	summary: VanSummary,
	newest: Newest,
	pictures: readonly Picture[],
	context: Context,
): EnergyPart {
	const { units } = context;
	const energy = (valueWh: number, round: 'up' | 'down') => write('energy', valueWh, units, { round });
	const { bank, dailyWh, arrayW } = summary;
	const facts: Fact[] = [];
	if (dailyWh !== null) facts.push({ label: 'Used on an ordinary day', text: energy(dailyWh, 'up') });
	if (bank !== null) {
		const size = `${bank.chemistry}, ${bank.classV} V, ${write('charge', bank.capacityAh, units, { round: 'down' })}`;
		facts.push({
			label: 'Battery bank',
			text: `${size}: ${energy(bank.usableWh, 'down')} usable of ${energy(bank.fullWh, 'down')}`,
		});
	}
	if (bank !== null && dailyWh !== null && dailyWh > 0) {
		const days = Math.floor((bank.usableWh / dailyWh) * 10) / 10;
		facts.push({ label: 'Lasts without charging', text: `${days} days` });
	}
	if (arrayW !== null) facts.push({ label: 'Solar panels', text: write('power', arrayW, units) });
	const notes = [
		...(dailyWh !== null && summary.loads.some(({ mains }) => mains)
			? ['The ordinary day counts what the inverter loses and draws when idle.']
			: []),
		...(summary.loads.some(({ isTypical }) => isTypical)
			? ['Typical figures stand in where no nameplate was told; these loads are marked.']
			: []),
		...(summary.loads.some(({ isDaily }) => !isDaily)
			? ['Heavy loads without told hours are listed and not counted into the ordinary day.']
			: []),
	];
	const charges = pictures.filter((one): one is ChargePicture => one.kind === 'charge');
	return {
		facts: [...facts, ...newest.facts('energy')],
		notes,
		loads: summary.loads.map(({ name, count, powerW, hoursPerDay, energyWh, mains, isTypical }) => ({
			name,
			count,
			powerW,
			hoursPerDay,
			energyWh,
			mains,
			assumed: isTypical,
		})),
		day: charges[0] ?? null,
		week: charges[1] ?? null,
		months: pictures.find((one): one is MonthsPicture => one.kind === 'months') ?? null,
	};
}

export function waterPart(van: Van, newest: Newest, context: Context): FactsPart | null {
	return partOf([...piecesFacts(van, 'water', context), ...newest.facts('water')]);
}

export function climatePart(van: Van, newest: Newest, context: Context): FactsPart | null {
	const burns = van.pieces.some(({ values }) => values.fuel !== undefined && values.fuel !== 'electric');
	const notes = burns
		? [
				'A carbon-monoxide alarm belongs where people sleep near a fuel-burning appliance; test it at each start of a season.',
			]
		: [];
	return partOf([...piecesFacts(van, 'climate', context), ...newest.facts('climate')], notes);
}

function partOf(facts: readonly Fact[], notes: readonly string[] = []): FactsPart | null {
	return facts.length + notes.length === 0 ? null : { facts, notes };
}

export function weightsPart(
	summary: VanSummary,
	newest: Newest,
	pictures: readonly Picture[],
): WeightsPart | null {
	const items = summary.weights.map(({ name, massKg, positionM, isToldMass }) => ({
		name: isToldMass ? name : `${name} (usual mass, to be weighed)`,
		massKg,
		positionM,
		sideM: null,
	}));
	const facts = newest.facts('weight', 'structure');
	const axles = pictures.find((one): one is AxlesPicture => one.kind === 'axles') ?? null;
	if (items.length + facts.length === 0 && axles === null) return null;
	return {
		facts,
		notes: [
			'The scale decides: these are sums of what was told, tanks full. Where no place was told, the usual one of its kind stands in.',
		],
		items,
		axles,
	};
}

/** The limits that follow from what was told of the equipment and from the answers that stand. */
export function handoverOf(
	van: Van,
	summary: VanSummary,
	runs: readonly RunRow[],
	fromAnswers: readonly OwnerLimit[],
	cautions: ReadonlySet<string>,
	context: Context,
): Handover {
	const { units } = context;
	const atMost = (kind: 'mass' | 'current' | 'power', value: number) =>
		`at most ${write(kind, value, units, { round: 'down', ...(kind === 'mass' ? { decimals: 0 } : {}) })}`;
	const limits: OwnerLimit[] = [];
	const body = van.pieces.find(({ kind }) => kind === 'van');
	const label = 'rating on the vehicle label, as told; the label decides';
	for (const [field, what] of [
		['gvwrKg', 'Whole van, loaded, with people and water (GVWR)'],
		['frontRatingKg', 'Front axle'],
		['rearRatingKg', 'Rear axle'],
	] as const) {
		const value = body?.values[field];
		if (typeof value === 'number') limits.push({ what, limit: atMost('mass', value), why: label });
	}
	const { bank } = summary;
	if (bank !== null) {
		const why = (given: boolean) =>
			given ? "the maker's figure, as told" : `usual for ${bank.chemistry}; the maker's figure decides`;
		limits.push(
			{
				what: 'Charging the bank',
				limit: atMost('current', bank.charge.limitA),
				why: why(bank.charge.given),
			},
			{
				what: 'Drawing on the bank, steadily',
				limit: atMost('current', bank.discharge.limitA),
				why: why(bank.discharge.given),
			},
		);
		if (!bank.leadAcid) {
			const between = [bank.chargeMinC, bank.chargeMaxC].map((value) =>
				write('temperature', value, units, { decimals: 0 }),
			);
			limits.push({
				what: 'Charging the bank, cell temperature',
				limit: `${between.join(' to ')}`,
				why: `usual for ${bank.chemistry}: charged in frost a cell is lost; the maker's figure decides`,
			});
		}
	}
	for (const piece of van.pieces) {
		const { ratedW, ratingA } = piece.values;
		if (piece.kind === 'inverter' && typeof ratedW === 'number') {
			limits.push({
				what: 'Everything on the inverter together',
				limit: atMost('power', ratedW),
				why: 'its continuous power, as told',
			});
		}
		if (piece.kind === 'shore-inlet' && typeof ratingA === 'number') {
			limits.push({
				what: 'Shore power',
				limit: atMost('current', ratingA),
				why: 'rating of the inlet, as told; 80 % of it for 3 h or more is common practice',
			});
		}
	}
	for (const { from, to, deviceA, device, entry } of runs) {
		if (deviceA === null || device === null) continue;
		const why =
			entry === null
				? `the ${device} as told; never fit a larger one`
				: `the ${device} of No. ${entry}; never fit a larger one`;
		limits.push({ what: `Circuit ${from} to ${to}`, limit: atMost('current', deviceA), why });
	}
	return { limits: [...limits, ...fromAnswers], cautions: [...cautions] };
}
