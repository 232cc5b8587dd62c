import { shownIn, type UnitHabit, writeNumber } from '@lugbook/core';
import { plain } from '../plain.js';
import { assumptionCount, topicTitle } from '../sheet/blocks.js';
import type { SheetRecord } from '../sheet/record.js';
import { type EquipmentItem, type LoadRow, type RunRow, runsShare, type WeightRow } from './book.js';

/** A table for a spreadsheet; rows may be read one at a time. */
export type Schedule =
	| { readonly kind: 'equipment'; readonly rows: Rows<EquipmentItem> }
	| { readonly kind: 'runs'; readonly units: UnitHabit; readonly rows: Rows<RunRow> }
	| { readonly kind: 'loads'; readonly rows: Rows<LoadRow> }
	| { readonly kind: 'weights'; readonly units: UnitHabit; readonly rows: Rows<WeightRow> }
	| { readonly kind: 'sheets'; readonly rows: Rows<SheetRecord> };

type Rows<T> = Iterable<T> | AsyncIterable<T>;

type Cell = string | number | boolean | null;

/** The schedule as CSV, line by line (RFC 4180: CRLF, quotes doubled). Numbers are numbers, text is never a formula. */
export async function* scheduleCsvLines(schedule: Schedule): AsyncGenerator<string> {
	switch (schedule.kind) {
		case 'equipment':
			yield csvLine(['equipment', 'count', 'rating', 'place', 'entry']);
			for await (const row of schedule.rows)
				yield csvLine([row.name, row.count, row.rating, row.place, row.entry]);
			return;
		case 'runs': {
			const length = lengthIn(schedule.units);
			yield csvLine([
				'from',
				'to',
				'current [A]',
				'voltage [V]',
				`one-way length [${length.symbol}]`,
				'conductor',
				'device',
				'device rating [A]',
				'device at',
				'why no device',
				'drop [%]',
				'entry',
				'state',
			]);
			for await (const row of schedule.rows) {
				yield csvLine([
					row.from,
					row.to,
					rounded(row.currentA, 2, 'up'),
					rounded(row.voltageV, 2),
					length.of(row.lengthM),
					row.conductor,
					row.device,
					rounded(row.deviceA, 2),
					row.deviceAt,
					row.unprotected,
					rounded(row.drop === null ? null : row.drop * 100, 2, 'up'),
					row.entry,
					row.state,
				]);
			}
			return;
		}
		case 'loads':
			yield csvLine([
				'load',
				'count',
				'power of all [W]',
				'hours a day [h]',
				'of which it runs [%]',
				'energy a day [Wh]',
				'mains',
				'typical',
			]);
			for await (const row of schedule.rows) {
				yield csvLine([
					row.name,
					row.count,
					rounded(row.powerW, 2, 'up'),
					rounded(row.hoursPerDay, 3),
					rounded(runsShare(row) * 100, 0),
					rounded(row.energyWh, 1, 'up'),
					row.mains,
					row.assumed,
				]);
			}
			return;
		case 'weights': {
			const length = lengthIn(schedule.units);
			const mass = shownIn('mass', 1, schedule.units).symbol;
			yield csvLine([
				'item',
				`weight [${mass}]`,
				`behind the front axle [${length.symbol}]`,
				`right of the middle [${length.symbol}]`,
			]);
			for await (const row of schedule.rows) {
				yield csvLine([
					row.name,
					rounded(shownIn('mass', row.massKg, schedule.units).value, 2, 'up'),
					length.of(row.positionM),
					length.of(row.sideM),
				]);
			}
			return;
		}
		case 'sheets':
			yield csvLine([
				'number',
				'build',
				'calculation',
				'result',
				'to confirm',
				'dangers',
				'state',
				'asked at',
				'hash',
			]);
			for await (const { number, build, sizing, state, asked, place } of schedule.rows) {
				yield csvLine([
					number,
					build,
					topicTitle(sizing.topic),
					sizing.headline,
					assumptionCount({ sizing }).open,
					sizing.findings.filter(({ severity }) => severity === 'danger').length,
					state,
					asked.at,
					place.hash,
				]);
			}
	}
}

/** The whole schedule at once. */
export async function scheduleCsv(schedule: Schedule): Promise<string> {
	const lines: string[] = [];
	for await (const line of scheduleCsvLines(schedule)) lines.push(line);
	return lines.join('');
}

function lengthIn(units: UnitHabit) {
	const { symbol } = shownIn('length', 1, units);
	return {
		symbol,
		of: (lengthM: number | null) =>
			lengthM === null ? null : rounded(shownIn('length', lengthM, units).value, 2),
	};
}

/** @param round "up" for what a limit stands beside or what is added up: loads and drops */
function rounded(value: number | null, decimals: number, round: 'nearest' | 'up' = 'nearest'): number | null {
	return value === null ? null : Number(writeNumber(value, decimals, round));
}

function csvLine(cells: readonly Cell[]): string {
	return `${cells.map(csvCell).join(',')}\r\n`;
}

function csvCell(cell: Cell): string {
	if (cell === null) return '';
	if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
	if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
	const text = disarmed(plain(cell));
	return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A spreadsheet runs text that begins so as a formula, also behind spaces and in full-width form. The mark in front
 * makes it text; the spreadsheet shows the rest as it was typed.
 */
function disarmed(text: string): string {
	return /^[\s\u00a0]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/.test(text) ? `'${text}` : text;
}
