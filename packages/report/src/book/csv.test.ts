import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBook } from '../../gallery/book.js';
import { demoSheets, ft } from '../../gallery/records.js';
import { plain } from '../plain.js';
import type { EquipmentItem, RunRow, WeightRow } from './book.js';
import { type Schedule, scheduleCsv, scheduleCsvLines } from './csv.js';

/** Reads CSV by the grammar of RFC 4180, section 2. */
function readCsv(text: string): string[][] {
	const rows: string[][] = [];
	let at = 0;
	while (at < text.length) {
		const row: string[] = [];
		for (;;) {
			let cell = '';
			if (text[at] === '"') {
				at += 1;
				for (;;) {
					const end = text.indexOf('"', at);
					if (end === -1) throw new Error('a quote is never closed');
					cell += text.slice(at, end);
					at = end + 1;
					if (text[at] !== '"') break;
					cell += '"';
					at += 1;
				}
			} else {
				const [plainCell = ''] = /^[^",\r\n]*/.exec(text.slice(at)) ?? [];
				cell = plainCell;
				at += cell.length;
			}
			row.push(cell);
			if (text[at] === ',') at += 1;
			else if (text.startsWith('\r\n', at)) {
				at += 2;
				break;
			} else
				throw new Error(
					`neither a comma nor the end of a line at ${JSON.stringify(text.slice(at, at + 20))}`,
				);
		}
		rows.push(row);
	}
	return rows;
}

const equipment = (name: string): EquipmentItem => ({
	name,
	count: 1,
	rating: name,
	place: null,
	entry: null,
});
const anyText = fc.oneof(
	fc.string({ unit: 'binary', maxLength: 30 }),
	fc.constantFrom(
		'=1+1',
		'+A1',
		'-2',
		'@SUM(A1)',
		'\t=1',
		'\r=1',
		' =1',
		'"',
		'a,b',
		'a\r\nb',
		'\uff1d1',
		"=cmd|' /C calc'!A0",
	),
);

describe('schedules as CSV', () => {
	test('every cell reads back as it was', async () => {
		await fc.assert(
			fc.asyncProperty(fc.array(anyText, { maxLength: 8 }), async (names) => {
				const rows = readCsv(await scheduleCsv({ kind: 'equipment', rows: names.map(equipment) }));
				expect(rows).toHaveLength(names.length + 1);
				names.forEach((name, index) => {
					const [cell = ''] = rows[index + 1] as string[];
					expect([plain(name), `'${plain(name)}`]).toContain(cell);
				});
			}),
		);
	});

	test('no text can begin a formula', async () => {
		await fc.assert(
			fc.asyncProperty(anyText, async (name) => {
				const [, row] = readCsv(await scheduleCsv({ kind: 'equipment', rows: [equipment(name)] }));
				// Signs that spreadsheets take for the beginning of a formula, by the advice of OWASP on CSV injection.
				expect(row?.[0]).not.toMatch(/^[=+\-@\t\r\n]|^\s*[=+@]/);
			}),
		);
	});

	test.each([
		['=1+1', "'=1+1"],
		['-2', "'-2"],
		['+49 30', "'+49 30"],
		['@home', "'@home"],
		['\t=1', "'\t=1"],
		['\r=1', "'\n=1"],
		['12 V, 100 Ah', '12 V, 100 Ah'],
		['2-pole', '2-pole'],
	])('%j becomes %j', async (name, cell) => {
		const [, row] = readCsv(await scheduleCsv({ kind: 'equipment', rows: [equipment(name)] }));
		expect(row?.[0]).toBe(cell);
	});

	test('names of loads, of what is weighed and of runs begin none either', async () => {
		const name = '=HYPERLINK("x")';
		const load = { count: 1, powerW: 1, hoursPerDay: 1, energyWh: 1, mains: false, assumed: false };
		const [run] = demoBook.runs as [RunRow];
		const schedules: readonly Schedule[] = [
			{ kind: 'loads', rows: [{ name, ...load }] },
			{ kind: 'weights', units: 'us', rows: [{ name, massKg: 1, positionM: 0, sideM: 0 }] },
			{
				kind: 'runs',
				units: 'us',
				rows: [{ ...run, from: name, to: name, unprotected: name, deviceAt: name }],
			},
		];
		for (const schedule of schedules) {
			const [, row = []] = readCsv(await scheduleCsv(schedule));
			expect(row[0]).toBe(`'${name}`);
			expect(row.join('|')).not.toMatch(/(?:^|\|)=/);
		}
	});

	test('a drop, a current, a power and a weight are never written as less than they are', async () => {
		const [run] = demoBook.runs as [RunRow];
		const near = { ...run, drop: 0.030001, currentA: 40.0001 };
		const [, row = []] = readCsv(await scheduleCsv({ kind: 'runs', units: 'us', rows: [near] }));
		expect([row[2], row[10]]).toEqual(['40.01', '3.01']);
		const load = { name: 'fridge', count: 2, powerW: 60.001, hoursPerDay: 24, energyWh: 576.01 };
		const [, loads = []] = readCsv(
			await scheduleCsv({ kind: 'loads', rows: [{ ...load, mains: false, assumed: true }] }),
		);
		expect(loads.slice(1, 6)).toEqual(['2', '60.01', '24', '40', '576.1']);
		const weight = { name: 'box', massKg: 100.001, positionM: null, sideM: null };
		const [, weights = []] = readCsv(await scheduleCsv({ kind: 'weights', units: 'metric', rows: [weight] }));
		expect(weights[1]).toBe('100.01');
	});

	test('numbers are numbers, also below nothing, in the unit that the head names', async () => {
		const rows: WeightRow[] = [
			{ name: 'bike', massKg: 0.45359237 * 33, positionM: -2 * ft, sideM: -0.5 * ft },
			{ name: 'box', massKg: 10, positionM: null, sideM: 0 },
		];
		const us = readCsv(await scheduleCsv({ kind: 'weights', units: 'us', rows }));
		expect(us[0]).toEqual(['item', 'weight [lb]', 'behind the front axle [ft]', 'right of the middle [ft]']);
		expect(us[1]).toEqual(['bike', '33', '-2', '-0.5']);
		expect(us[2]).toEqual(['box', '22.05', '', '0']);
		const metric = readCsv(await scheduleCsv({ kind: 'weights', units: 'metric', rows }));
		expect(metric[0]?.[1]).toBe('weight [kg]');
		expect(metric[2]?.[1]).toBe('10');
	});

	test('the wire and fuse schedule and the loads stand there with all their rows', async () => {
		const runs = readCsv(await scheduleCsv({ kind: 'runs', units: 'us', rows: demoBook.runs }));
		expect(runs).toHaveLength(demoBook.runs.length + 1);
		const feed = runs.find((row) => row[10] === '2.68') as string[];
		expect(feed.slice(0, 9)).toEqual([
			'Main bus',
			'Fuse block',
			'40',
			'12',
			'15',
			'4 AWG',
			'circuit breaker',
			'50',
			'Main bus',
		]);
		for (const row of runs) expect(row).toHaveLength(13);
		const loads = readCsv(await scheduleCsv({ kind: 'loads', rows: demoBook.energy?.loads ?? [] }));
		expect(loads[1]).toEqual(['fridge', '1', '60', '9.6', '100', '576', 'no', 'yes']);
	});

	test('the register tells dangers and what is still to be confirmed', async () => {
		const rows = readCsv(await scheduleCsv({ kind: 'sheets', rows: demoSheets }));
		expect(rows[2]?.slice(0, 7)).toEqual([
			'131',
			'heron',
			'Conductor size and protection for one run',
			demoSheets[1]?.sizing.headline,
			'4',
			'1',
			'rejected',
		]);
	});

	test('rows are read one at a time', async () => {
		let read = 0;
		async function* many() {
			for (; read < 10_000; read += 1) yield equipment(`item ${read}`);
		}
		let lines = 0;
		for await (const line of scheduleCsvLines({ kind: 'equipment', rows: many() })) {
			lines += 1;
			expect(read).toBeLessThanOrEqual(lines);
			expect(line.endsWith('\r\n')).toBe(true);
		}
		expect(lines).toBe(10_001);
	});
});
