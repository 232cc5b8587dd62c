import { describe, expect, test } from 'vitest';
import { type Block, facts, table } from './block.js';
import { htmlOfBlock } from './html.js';
import { textOf } from './text.js';

const written = (blocks: readonly Block[], width?: number) => [...textOf(blocks, width)].join('');

describe('tables', () => {
	test('a table says its columns in twentieths', () => {
		expect(() => table(['A:10', 'B:9'], [])).toThrow('19 twentieths');
		expect(() => table(['A'], [])).toThrow('"A" describes no column');
		expect(table(['A:12', 'B:>8'], []).columns).toEqual([
			{ label: 'A', width: 12, align: 'start' },
			{ label: 'B', width: 8, align: 'end' },
		]);
	});

	test('leave out a column that holds nothing, and give its width to the widest', () => {
		const narrowed = table(
			['A:5', 'B:>4', 'C:11'],
			[
				['one', '', 'two'],
				['three', '', ''],
			],
		);
		expect(narrowed.columns).toEqual([
			{ label: 'A', width: 5, align: 'start' },
			{ label: 'C', width: 15, align: 'start' },
		]);
		expect(narrowed.rows).toEqual([
			['one', 'two'],
			['three', ''],
		]);
	});

	const block = table(
		['Load:10', 'Power:>10'],
		[
			['fridge', '60 W'],
			['lights\nin the back', '5 W'],
		],
	);

	test('stand in columns where they fit', () => {
		expect(written([block])).toBe(
			[
				'Load         Power',
				'-----------  -----',
				'fridge        60 W',
				'lights         5 W',
				'in the back',
				'',
			].join('\n'),
		);
	});

	test('stand under one another where they do not', () => {
		expect(written([block], 16)).toBe(
			['* fridge', '  Power: 60 W', '* lights', '  in the back', '  Power: 5 W', ''].join('\n'),
		);
	});

	test('in HTML carry head, row heads and the name of each cell', () => {
		expect(htmlOfBlock(block)).toBe(
			[
				'<table class="few">',
				'<colgroup><col class="w10"><col class="w10"></colgroup>',
				'<thead><tr><th scope="col">Load</th><th scope="col" class="number">Power</th></tr></thead>',
				'<tbody>',
				'<tr><th scope="row">fridge</th><td class="number" data-label="Power">60 W</td></tr>',
				'<tr><th scope="row">lights<br>in the back</th><td class="number" data-label="Power">5 W</td></tr>',
				'</tbody>',
				'</table>',
				'',
			].join('\n'),
		);
	});
});

test('facts without those that are not known', () => {
	expect(
		facts([
			['Build', 'heron'],
			['Vehicle', null],
			['Thread', ''],
		]).rows,
	).toEqual([{ label: 'Build', text: 'heron' }]);
});

test('a box says its word first', () => {
	expect(
		written([{ kind: 'box', word: 'Danger', lines: ['too thin', 'take 6 AWG'], weight: 'strong' }]),
	).toBe('DANGER:\n    too thin\n    take 6 AWG\n');
});
