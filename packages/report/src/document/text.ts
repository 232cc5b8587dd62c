import { plain, plainLine } from '../plain.js';
import type { Block, TableBlock } from './block.js';

/**
 * Blocks as plain text.
 * @param width longest line, in characters; a word longer than that stays whole
 */
export function* textOf(blocks: Iterable<Block>, width = 80): Generator<string> {
	let first = true;
	for (const block of blocks) {
		const lines = linesOf(block, width);
		if (lines.length === 0) continue;
		yield `${first ? '' : '\n'}${lines.join('\n')}\n`;
		first = false;
	}
}

/** A tab has no width of its own: lines are counted in characters. */
function clean(text: string): string {
	return plain(text).replaceAll('\t', ' ');
}

function linesOf(block: Block, width: number): string[] {
	switch (block.kind) {
		case 'heading': {
			const lines = wrapped(plainLine(block.text), width);
			const rule = { 1: '=', 2: '=', 3: '-', 4: '' }[block.level];
			const longest = Math.max(...lines.map(({ length }) => length));
			return rule === '' ? lines : [...lines, rule.repeat(longest)];
		}
		case 'paragraph':
			return wrapped(clean(block.text), width);
		case 'facts': {
			const column = Math.min(24, Math.max(0, ...block.rows.map(({ label }) => label.length)) + 2);
			return block.rows.flatMap(({ label, text }) => hung(`${plainLine(label)}:`, text, column, width));
		}
		case 'table':
			return tableLines(block, width);
		case 'list':
			return block.items.flatMap((item) => hung('-', item, 2, width));
		case 'box': {
			const [head = '', ...others] = block.lines;
			return hung(`${plainLine(block.word).toUpperCase()}:`, [head, ...others].join('\n'), 4, width);
		}
		case 'figure':
			return hung('[Picture]', block.figure.alt, 2, width);
		case 'contents':
			return block.entries.flatMap(({ text }) => hung('-', text, 2, width));
		case 'page':
			return [];
	}
}

/** A word at the margin, its text beside it or, where the word is long, under it. */
function hung(word: string, text: string, indent: number, width: number): string[] {
	const lines = wrapped(clean(text), width - indent);
	const pad = ' '.repeat(indent);
	const body = lines.map((one) => `${pad}${one}`.trimEnd());
	if (word.length < indent) return [`${word.padEnd(indent)}${lines[0] ?? ''}`.trimEnd(), ...body.slice(1)];
	const together = `${word} ${lines[0] ?? ''}`;
	return lines.length === 1 && together.length <= width ? [together.trimEnd()] : [word, ...body];
}

/** Columns where they fit the width, else each row under one another. */
function tableLines({ columns, rows }: TableBlock, width: number): string[] {
	const cells = rows.map((row) => row.map((cell) => clean(cell).split('\n')));
	const widths = columns.map(({ label }, index) =>
		Math.max(label.length, ...cells.flatMap((row) => (row[index] ?? ['']).map(({ length }) => length))),
	);
	const whole = widths.reduce((sum, one) => sum + one + 2, -2);
	if (whole > width) {
		return rows.flatMap((row) => [
			...hung('*', row[0] ?? '', 2, width),
			...columns
				.slice(1)
				.flatMap(({ label }, index) =>
					row[index + 1] === '' || row[index + 1] === undefined
						? []
						: hung(`  ${label}:`, row[index + 1] as string, 4, width),
				),
		]);
	}
	const write = (parts: readonly string[]) =>
		parts
			.map((part, index) =>
				columns[index]?.align === 'end'
					? part.padStart(widths[index] as number)
					: part.padEnd(widths[index] as number),
			)
			.join('  ')
			.trimEnd();
	const body = cells.flatMap((row) => {
		const height = Math.max(...row.map(({ length }) => length));
		return Array.from({ length: height }, (_, line) => write(row.map((cell) => cell[line] ?? '')));
	});
	return [write(columns.map(({ label }) => label)), write(widths.map((one) => '-'.repeat(one))), ...body];
}

function wrapped(text: string, width: number): string[] {
	return text.split('\n').flatMap((paragraph) => {
		const lines: string[] = [];
		let line = '';
		for (const word of paragraph.split(/ +/)) {
			if (line !== '' && line.length + 1 + word.length > width) {
				lines.push(line);
				line = word;
			} else line = line === '' ? word : `${line} ${word}`;
		}
		return [...lines, line];
	});
}
