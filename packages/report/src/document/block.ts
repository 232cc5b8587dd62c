import type { Figure } from '../picture/figure.js';

/**
 * A page is a row of blocks. Text, HTML and PDF are written from the same blocks, so that the three say the same in
 * the same order. Texts are plain; each writer escapes for itself. A line break in a cell is a "\n".
 */
export type Block =
	| HeadingBlock
	| ParagraphBlock
	| FactsBlock
	| TableBlock
	| { readonly kind: 'list'; readonly items: readonly string[] }
	| BoxBlock
	| { readonly kind: 'figure'; readonly figure: Figure }
	| { readonly kind: 'contents'; readonly entries: readonly ContentsEntry[] }
	/** what follows begins on a new page */
	| { readonly kind: 'page' };

export interface HeadingBlock {
	readonly kind: 'heading';
	/** 1 for the title of the whole document */
	readonly level: 1 | 2 | 3 | 4;
	readonly text: string;
	/** where links and the outline point; null for small headings */
	readonly id: string | null;
}

export interface ParagraphBlock {
	readonly kind: 'paragraph';
	readonly text: string;
	/** it says what follows: never the last thing on a page */
	readonly leads: boolean;
}

/** Names with what belongs to them, one a line. */
export interface FactsBlock {
	readonly kind: 'facts';
	readonly rows: readonly Fact[];
}

export interface Fact {
	readonly label: string;
	readonly text: string;
}

export interface TableBlock {
	readonly kind: 'table';
	readonly columns: readonly Column[];
	readonly rows: readonly (readonly string[])[];
}

interface Column {
	readonly label: string;
	/** share of the width in twentieths; all of a table's together are 20 */
	readonly width: number;
	/** numbers stand at the end of their column */
	readonly align: 'start' | 'end';
}

/** Set off from the rest. What it means is said by its word, never by its looks alone. */
export interface BoxBlock {
	readonly kind: 'box';
	/** "Result", "Danger", "Warning" */
	readonly word: string;
	readonly lines: readonly string[];
	readonly weight: 'strong' | 'plain';
}

export interface ContentsEntry {
	readonly text: string;
	readonly id: string;
}

export function heading(level: HeadingBlock['level'], text: string, id: string | null = null): HeadingBlock {
	return { kind: 'heading', level, text, id };
}

export function paragraph(text: string): ParagraphBlock {
	return { kind: 'paragraph', text, leads: false };
}

/** A sentence that says what the block behind it is. */
export function lead(text: string): ParagraphBlock {
	return { kind: 'paragraph', text, leads: true };
}

/** So few rows are kept on one page. */
export const fewRows = 8;

/** Facts without those that are not known. */
export function facts(rows: readonly (readonly [label: string, text: string | null])[]): FactsBlock {
	return {
		kind: 'facts',
		rows: rows.flatMap(([label, text]) => (text === null || text === '' ? [] : [{ label, text }])),
	};
}

/**
 * A column that holds nothing in any row is left out, its width given to the widest of the others behind the first.
 * @param columns as "label:width" in twentieths; with ">" before the width for numbers
 */
export function table(columns: readonly string[], rows: readonly (readonly string[])[]): TableBlock {
	const read = columns.map((column): Column => {
		const [, label, end, width] = /^(.*):(>?)(\d+)$/.exec(column) ?? [];
		if (label === undefined || width === undefined) throw new Error(`"${column}" describes no column`);
		return { label, width: Number(width), align: end === '>' ? 'end' : 'start' };
	});
	const whole = read.reduce((sum, { width }) => sum + width, 0);
	if (whole !== 20) throw new Error(`the columns of a table are ${whole} twentieths wide; they must be 20`);
	const filled = read.flatMap((_, index) => (rows.some((row) => (row[index] ?? '') !== '') ? [index] : []));
	if (rows.length === 0 || filled.length === read.length) return { kind: 'table', columns: read, rows };
	const columnsLeft = filled.map((index) => read[index] as Column);
	const spare = columnsLeft.reduce((left, { width }) => left - width, whole);
	const [first, ...others] = columnsLeft;
	const widest = others.toSorted((a, b) => b.width - a.width)[0] ?? first;
	return {
		kind: 'table',
		columns: columnsLeft.map((one) => (one === widest ? { ...one, width: one.width + spare } : one)),
		rows: rows.map((row) => filled.map((index) => row[index] ?? '')),
	};
}
