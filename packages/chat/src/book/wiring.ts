/** The wire and fuse schedule of a build, and its one-line diagram, from what was told of its equipment and from its answers. */

import { type Context, labelOf, type Piece, type Van, type VanSummary, write } from '@lugbook/core';
import type { OneLineDevice, OneLinePart, OneLinePicture, OneLineRun, RunRow } from '@lugbook/report';
import { numberOf, wordOf } from './answer-values.js';
import { counts, type Reviewed } from './answers.js';

/** A row of the schedule and the piece whose circuit it is. */
export interface Run {
	readonly row: RunRow;
	/** the piece's name in the build; null where the answer named none */
	readonly piece: string | null;
}

/** What an answer of the topic "wire" says of a run, small enough to be held for every one. */
interface SizedRun {
	readonly entry: number;
	readonly isSigned: boolean;
	readonly state: Reviewed['review']['state'];
	readonly named: readonly string[];
	readonly conductor: string | null;
	readonly device: string | null;
	readonly deviceA: number | null;
	readonly currentA: number | null;
	readonly voltageV: number | null;
	readonly lengthM: number | null;
	readonly drop: number | null;
}

/** Gathers the answers about runs, oldest first. */
export class SizedRuns {
	readonly #runs = new Map<number, SizedRun>();
	/** answers that another one went on from: what if it were 20 ft */
	readonly #goneOnFrom = new Set<number>();

	add(reviewed: Reviewed): void {
		const { entry, exchange, review } = reviewed;
		if (entry.topic !== 'wire') return;
		if (entry.follows !== null) this.#goneOnFrom.add(entry.follows);
		if (!counts(reviewed)) return;
		const { answer, request } = exchange;
		const isThin = wordOf(answer, 'verdict') === 'too thin';
		const size = wordOf(answer, 'conductor');
		const parallel = numberOf(exchange, 'parallel') ?? 1;
		const conductor = size === null ? null : parallel > 1 ? `${parallel} x ${size}` : size;
		const percent = numberOf(exchange, 'dropPercent');
		const device = answer.results.find(({ name }) => name === 'device');
		this.#runs.set(entry.number, {
			entry: entry.number,
			isSigned: review.state === 'signed',
			state: review.state,
			named: request?.named ?? [],
			conductor: conductor === null || !isThin ? conductor : `${conductor}: TOO THIN, see the sheet`,
			device: device === undefined ? null : device.label === 'breaker' ? 'circuit breaker' : 'fuse',
			deviceA: numberOf(exchange, 'device'),
			currentA: numberOf(exchange, 'current') ?? numberOf(exchange, 'currentA'),
			voltageV: numberOf(exchange, 'voltageV'),
			lengthM: numberOf(exchange, 'lengthM'),
			drop: percent === null ? null : percent / 100,
		});
	}

	/** The answers that stand for a run: of a row of what-ifs the last one, and any that is signed. */
	standing(): SizedRun[] {
		return [...this.#runs.values()].filter(({ entry, isSigned }) => isSigned || !this.#goneOnFrom.has(entry));
	}
}

/** Pieces that give to the bank, their own fuse at its end. */
const feeding: ReadonlySet<string> = new Set(['charger', 'dcdc', 'solar-controller']);

/** The schedule: every circuit that is known to be there, sized or not, then the runs that no piece was named for. */
export function runsOf(van: Van, summary: VanSummary, sized: SizedRuns): Run[] {
	const standing = sized.standing();
	const used = new Set<number>();
	const pieces = summary.circuits.map(({ piece }) => piece);
	const own = summary.circuits.map((circuit): Run => {
		const { piece, supply } = circuit;
		const about = standing.filter(({ named }) => pieceMeant(named, pieces) === piece);
		for (const { entry } of about) used.add(entry);
		const best = about.findLast(({ isSigned }) => isSigned) ?? about.at(-1);
		const toldA = figure(piece, 'fuseA');
		const [from, to] = ends(piece, supply, van);
		const told: RunRow = {
			from,
			to,
			currentA: circuit.currentA,
			voltageV: circuit.voltageV,
			lengthM: figure(piece, 'runM'),
			conductor: text(piece, 'wireSize'),
			device: toldA === null ? null : supply === 'mains' ? 'circuit breaker' : 'fuse',
			deviceA: toldA,
			deviceAt: null,
			unprotected: null,
			drop: null,
			entry: null,
			state: null,
		};
		if (best === undefined) return { row: told, piece: piece.id };
		return { row: { ...told, ...rowOf(best), from, to }, piece: piece.id };
	});
	const others = standing
		.filter(({ entry }) => !used.has(entry))
		.map(
			(run): Run => ({
				row: {
					from: 'source',
					to: namesOf(run.named) ?? `load of No. ${run.entry}`,
					unprotected: null,
					...rowOf(run),
				},
				piece: null,
			}),
		);
	return [...own, ...others];
}

function rowOf(run: SizedRun): Omit<RunRow, 'from' | 'to' | 'unprotected'> {
	const { entry, state, conductor, device, deviceA, currentA, voltageV, lengthM, drop } = run;
	const deviceAt = device === null ? null : 'the source end';
	return { currentA, voltageV, lengthM, conductor, device, deviceA, deviceAt, drop, entry, state };
}

/** The one piece whose circuit an answer is about; null where it names none, or more than one could be meant. */
function pieceMeant(named: readonly string[], pieces: readonly Piece[]): Piece | null {
	const byId = pieces.filter(({ id }) => named.includes(id));
	const meant = byId.length > 0 ? byId : pieces.filter(({ kind }) => named.includes(kind));
	return meant.length === 1 ? (meant[0] as Piece) : null;
}

function namesOf(named: readonly string[]): string | null {
	return named.length === 0 ? null : named.map((name) => name.replaceAll('-', ' ')).join(', ');
}

function ends(piece: Piece, supply: 'dc' | 'mains', van: Van): [from: string, to: string] {
	const label = labelOf(piece);
	if (piece.kind === 'shore-inlet') return [label, 'mains panel'];
	if (supply === 'mains') return ['mains panel', label];
	if (feeding.has(piece.kind)) return [label, 'main bus'];
	const isBranch = piece.kind !== 'inverter' && van.pieces.some(({ kind }) => kind === 'fuse-block');
	return [isBranch ? 'fuse block' : 'main bus', label];
}

function figure(piece: Piece, field: string): number | null {
	const value = piece.values[field];
	return typeof value === 'number' ? value : null;
}

function text(piece: Piece, field: string): string | null {
	const value = piece.values[field];
	return typeof value === 'string' ? value : null;
}

const converters: Readonly<Record<string, { readonly takes: 'dc' | 'ac'; readonly gives: 'dc' | 'ac' }>> = {
	'solar-controller': { takes: 'dc', gives: 'dc' },
	dcdc: { takes: 'dc', gives: 'dc' },
	charger: { takes: 'ac', gives: 'dc' },
	inverter: { takes: 'dc', gives: 'ac' },
};

/**
 * The wiring at the bank's voltage as it follows from what was told: everything hangs on one main bus, since nobody
 * tells more. Null where there is no bank to begin at.
 */
export function oneLineOf(
	van: Van,
	summary: VanSummary,
	runs: readonly Run[],
	{ build, units }: { readonly build: string; readonly units: Context['units'] },
): OneLinePicture | null {
	const bank = van.pieces.find(({ kind }) => kind === 'battery');
	if (bank === undefined) return null;
	const parts: OneLinePart[] = [];
	const lines: OneLineRun[] = [];
	const add = (part: OneLinePart) => parts.push(part);
	const join = (from: string, to: string, more: Partial<OneLineRun> = {}) =>
		lines.push({ from, to, conductor: null, lengthM: null, devices: [], unprotected: null, ...more });
	const sizedRun = (id: string, at: 'from' | 'to'): Partial<OneLineRun> => {
		const row = runs.find(({ piece }) => piece === id)?.row;
		if (row === undefined) return {};
		const kind = row.device === 'circuit breaker' ? 'circuit breaker' : 'fuse';
		const devices: OneLineDevice[] = row.device === null ? [] : [{ kind, ratingA: row.deviceA, at }];
		return { conductor: row.conductor, lengthM: row.lengthM, devices };
	};
	const of = (kind: string) => van.pieces.filter((piece) => piece.kind === kind);
	const detailOf = (piece: Piece, field: string, kind: 'power' | 'current') => {
		const value = figure(piece, field);
		return value === null ? {} : { detail: write(kind, value, units) };
	};

	const bankText =
		summary.bank === null
			? {}
			: {
					detail: `${summary.bank.classV} V, ${write('charge', summary.bank.capacityAh, units, { round: 'down' })}`,
				};
	add({ id: bank.id, kind: 'battery', name: labelOf(bank), ...bankText });
	add({ id: '*bus', kind: 'busbar', name: 'main bus' });
	join(bank.id, '*bus', mainRun(of('main-fuse'), of('disconnect'), bank));

	const [controller] = of('solar-controller');
	for (const piece of of('solar-controller')) {
		add({ id: piece.id, kind: 'converter', name: labelOf(piece), ...converters['solar-controller'] });
		join(piece.id, '*bus', sizedRun(piece.id, 'to'));
	}
	for (const piece of of('solar')) {
		add({
			id: piece.id,
			kind: 'solar',
			name: labelOf(piece),
			...(summary.arrayW === null || of('solar').length > 1
				? {}
				: { detail: write('power', summary.arrayW, units) }),
		});
		join(piece.id, controller?.id ?? '*bus', sizedRun(piece.id, 'to'));
	}
	const chargers = of('dcdc');
	const alternators = of('alternator');
	for (const piece of chargers) {
		add({
			id: piece.id,
			kind: 'converter',
			name: labelOf(piece),
			...converters.dcdc,
			...detailOf(piece, 'chargeA', 'current'),
		});
		join(piece.id, '*bus', sizedRun(piece.id, 'to'));
	}
	for (const piece of alternators) {
		add({ id: piece.id, kind: 'alternator', name: labelOf(piece), ...detailOf(piece, 'ratingA', 'current') });
		join(piece.id, chargers[0]?.id ?? '*bus', sizedRun(piece.id, 'from'));
	}
	const inlets = of('shore-inlet');
	for (const piece of inlets)
		add({ id: piece.id, kind: 'shore', name: labelOf(piece), ...detailOf(piece, 'ratingA', 'current') });
	for (const piece of of('charger')) {
		add({
			id: piece.id,
			kind: 'converter',
			name: labelOf(piece),
			...converters.charger,
			...detailOf(piece, 'chargeA', 'current'),
		});
		join(piece.id, '*bus', sizedRun(piece.id, 'to'));
		for (const inlet of inlets) join(inlet.id, piece.id, sizedRun(inlet.id, 'from'));
	}
	for (const piece of of('inverter')) {
		add({
			id: piece.id,
			kind: 'converter',
			name: labelOf(piece),
			...converters.inverter,
			...detailOf(piece, 'ratedW', 'power'),
		});
		join('*bus', piece.id, sizedRun(piece.id, 'from'));
	}
	const loads = summary.circuits.filter(
		({ piece, supply }) => supply === 'dc' && !(piece.kind in converters) && piece.id !== bank.id,
	);
	const [block] = of('fuse-block');
	if (block !== undefined && loads.length > 0) {
		add({ id: block.id, kind: 'busbar', name: labelOf(block) });
		join('*bus', block.id, sizedRun(block.id, 'from'));
	}
	for (const { piece } of loads) {
		if (parts.some(({ id }) => id === piece.id)) continue;
		add({ id: piece.id, kind: 'load', name: labelOf(piece) });
		join(block?.id ?? '*bus', piece.id, sizedRun(piece.id, 'from'));
	}
	// A shore inlet that feeds no charger has no place in the wiring at the bank's voltage.
	const joined = new Set(lines.flatMap(({ from, to }) => [from, to]));
	const title = `Wiring of build "${build}" at the bank's voltage, as told`;
	return { kind: 'one-line', title, units, parts: parts.filter(({ id }) => joined.has(id)), runs: lines };
}

/** From the bank to the main bus: the main fuse and the disconnect as told. */
function mainRun(fuses: readonly Piece[], switches: readonly Piece[], bank: Piece): Partial<OneLineRun> {
	const toldA = figure(bank, 'fuseA');
	const devices: OneLineDevice[] = [
		...fuses.map((piece): OneLineDevice => ({ kind: 'fuse', ratingA: figure(piece, 'ratingA'), at: 'from' })),
		...(fuses.length === 0 && toldA !== null ? [{ kind: 'fuse', ratingA: toldA, at: 'from' } as const] : []),
		...switches.map(
			(piece): OneLineDevice => ({ kind: 'switch', ratingA: figure(piece, 'ratingA'), at: 'from' }),
		),
	];
	return { conductor: text(bank, 'wireSize'), lengthM: figure(bank, 'runM'), devices };
}
