import type { Figure } from '../../picture/figure.js';
import { textWidth, wrap } from '../../picture/font.js';
import { ink } from '../../picture/shape.js';
import { plain, plainLine } from '../../plain.js';
import {
	type Block,
	type BoxBlock,
	type ContentsEntry,
	type FactsBlock,
	fewRows,
	type HeadingBlock,
	type ParagraphBlock,
	type TableBlock,
} from '../block.js';
import type { Element, Paper } from './paper.js';

/** What the first going-through finds out for the second. */
export interface Places {
	/** page of each heading with an id, from 1 */
	readonly pages: ReadonlyMap<string, number>;
	readonly total: number;
}

const margins = { left: 48, right: 48, top: 46, bottom: 56 } as const;
const body = { size: 9.5, line: 13 } as const;
const cell = { size: 8.5, line: 11.5, pad: 3.5, gap: 5 } as const;
const headings = {
	1: { size: 19, before: 0, after: 8 },
	2: { size: 14.5, before: 16, after: 6 },
	3: { size: 12.5, before: 12, after: 5 },
	4: { size: 10.5, before: 10, after: 3 },
} as const;
/** Points for a CSS pixel of a figure: a phone's width becomes a good half of the page. */
const figureScale = 0.82;
const lineFromTop = 0.78;
/** Where the texts of facts begin, from the margin. */
const factsColumn = 122;

function heightOfRow(cells: readonly (readonly string[])[]): number {
	return Math.max(1, ...cells.map(({ length }) => length)) * cell.line + 2 * cell.pad;
}

/**
 * Writes blocks on pages, one after another. Every line is placed here, so that the same blocks give the same pages
 * however they are read, and nothing is cut at the end of a page that should not be. The text is marked with what it is
 * (heading, paragraph, cell of a table, figure with its description) for those who have it read to them.
 */
export class PdfWriter {
	readonly pages = new Map<string, number>();
	page = 0;
	#y = 0;
	readonly #paper: Paper;
	readonly #places: Places | null;
	readonly #footer: string;
	#fresh = true;
	/** headings and leading sentences that wait for what they lead to, so as not to be the last thing on a page */
	#held: (HeadingBlock | ParagraphBlock)[] = [];

	constructor(paper: Paper, footer: string, places: Places | null) {
		this.#paper = paper;
		this.#footer = plainLine(footer);
		this.#places = places;
		this.#newPage();
	}

	write(block: Block): void {
		if (block.kind === 'heading' || (block.kind === 'paragraph' && block.leads)) {
			this.#held.push(block);
			return;
		}
		this.#release(this.#held.length === 0 ? 0 : this.#beginning(block));
		this.#put(block);
	}

	/** Writes what waited; on a new page where it and the beginning of what follows don't fit on this one together. */
	#release(follows: number): void {
		const held = this.#held;
		this.#held = [];
		const before = held.reduce((sum, block) => sum + this.#beginning(block), 0);
		if (held.length > 0 && before + follows <= this.#pageHeight) this.#room(before + follows);
		for (const block of held) this.#put(block);
	}

	/** Height of as much of a block as stays together with what stands over it [pt]. */
	#beginning(block: Block): number {
		switch (block.kind) {
			case 'heading': {
				const { size, before, after } = headings[block.level];
				const lines = wrap(plainLine(block.text), this.#width, size, true).length;
				return before + lines * size * 1.25 + after + 4;
			}
			case 'paragraph':
				return wrap(plain(block.text), this.#width, body.size).length * body.line + 6;
			case 'facts':
				return this.#firstFacts(block.rows);
			case 'table': {
				const { headHeight, rowHeights } = this.#tableHeights(block);
				return headHeight + this.#firstRows(rowHeights);
			}
			case 'list':
				return wrap(plain(block.items[0] ?? ''), this.#width - 14, body.size).length * body.line;
			case 'box':
				return this.#boxLines(block).height;
			case 'figure':
				return block.figure.height * this.#figureScale(block.figure);
			case 'contents':
				return 24;
			case 'page':
				return 0;
		}
	}

	#put(block: Block): void {
		switch (block.kind) {
			case 'heading':
				this.#heading(block);
				return;
			case 'paragraph':
				this.#lines('P', wrap(plain(block.text), this.#width, body.size), { after: 6 });
				return;
			case 'facts':
				this.#facts(block);
				return;
			case 'table':
				this.#table(block);
				return;
			case 'list':
				this.#list(block.items);
				return;
			case 'box':
				this.#box(block);
				return;
			case 'figure':
				this.#figure(block.figure);
				return;
			case 'contents':
				this.#contents(block.entries);
				return;
			case 'page':
				if (!this.#fresh) this.#newPage();
				return;
		}
	}

	end(): void {
		this.#release(0);
		this.#paper.end();
	}

	get #width(): number {
		return this.#paper.width - margins.left - margins.right;
	}

	get #bottom(): number {
		return this.#paper.height - margins.bottom;
	}

	get #pageHeight(): number {
		return this.#bottom - margins.top;
	}

	#newPage(): void {
		this.#paper.newPage();
		this.page += 1;
		this.#y = margins.top;
		this.#fresh = true;
		const total = this.#places === null ? '' : ` of ${this.#places.total}`;
		const number = `page ${this.page}${total}`;
		const baseline = this.#paper.height - 32;
		const style = { size: 8, colour: ink.quiet };
		this.#paper.artifact('Pagination', () => {
			const room = this.#width - textWidth(number, style.size) - 16;
			this.#paper.line(wrap(this.#footer, room, style.size)[0] ?? '', margins.left, baseline, style);
			const right = this.#paper.width - margins.right;
			this.#paper.line(number, right - textWidth(number, style.size), baseline, style);
		});
	}

	/** Begins a new page where so much does not fit any more on this one. */
	#room(height: number): void {
		if (this.#y + height > this.#bottom && !this.#fresh) this.#newPage();
	}

	/** Lines of one element; they stay together where a page holds them all. */
	#lines(
		type: string,
		lines: readonly string[],
		options: {
			size?: number;
			line?: number;
			bold?: boolean;
			indent?: number;
			after?: number;
			mark?: string;
		} = {},
	): void {
		const { size = body.size, line = body.line, bold = false, indent = 0, after = 0, mark } = options;
		if (lines.length * line <= this.#pageHeight) this.#room(lines.length * line);
		const element = this.#paper.element(type);
		let rest = lines;
		let first = true;
		while (rest.length > 0) {
			const fit = Math.max(1, Math.floor((this.#bottom - this.#y) / line));
			const now = rest.slice(0, fit);
			element.add(() => {
				now.forEach((text, row) => {
					const baseline = this.#y + row * line + line * lineFromTop;
					if (first && row === 0 && mark !== undefined)
						this.#paper.line(mark, margins.left + 3, baseline, { size, colour: ink.text });
					this.#paper.line(text, margins.left + indent, baseline, { size, bold, colour: ink.text });
				});
			});
			first = false;
			this.#y += now.length * line;
			this.#fresh = false;
			rest = rest.slice(fit);
			if (rest.length > 0) this.#newPage();
		}
		element.end();
		this.#y += after;
	}

	#heading({ level, text, id }: HeadingBlock): void {
		const { size, before, after } = headings[level];
		const shown = plainLine(text);
		const lines = wrap(shown, this.#width, size, true);
		const line = size * 1.25;
		if (!this.#fresh) this.#y += before;
		this.#room(lines.length * line + after);
		if (id !== null) {
			this.pages.set(id, this.page);
			this.#paper.place(id, margins.left, Math.max(0, this.#y - 8));
			this.#paper.bookmark(shown, level === 2);
		}
		this.#lines(`H${level}`, lines, { size, line, bold: true, after });
		if (level === 2) {
			this.#paper.artifact('Layout', () => this.#rule(this.#y - after + 1, 1.2));
			this.#y += 4;
		}
	}

	#rule(y: number, width: number, colour: string = ink.line): void {
		this.#paper.rule(margins.left, this.#paper.width - margins.right, y, { width, colour });
	}

	#fact({ label, text }: FactsBlock['rows'][number]) {
		const names = wrap(plainLine(label), factsColumn - 10, body.size);
		const lines = wrap(plain(text), this.#width - factsColumn, body.size);
		return { names, lines, height: Math.max(names.length, lines.length) * body.line + 3 };
	}

	#firstFacts(rows: FactsBlock['rows']): number {
		return this.#firstRows(rows.slice(0, fewRows + 1).map((row) => this.#fact(row).height));
	}

	#facts({ rows }: FactsBlock): void {
		this.#room(this.#firstFacts(rows));
		for (const row of rows) {
			const { label, text } = row;
			const { names, lines, height } = this.#fact(row);
			if (height > this.#pageHeight) {
				this.#lines('P', wrap(`${plainLine(label)}: ${plain(text)}`, this.#width, body.size), { after: 3 });
				continue;
			}
			this.#room(height);
			const top = this.#y;
			const baseline = (row: number) => top + row * body.line + body.line * lineFromTop;
			const element = this.#paper.element('P');
			element.add(() => {
				names.forEach((one, row) => {
					this.#paper.line(one, margins.left, baseline(row), { size: body.size, colour: ink.quiet });
				});
				lines.forEach((one, row) => {
					this.#paper.line(one, margins.left + factsColumn, baseline(row), {
						size: body.size,
						colour: ink.text,
					});
				});
			});
			element.end();
			this.#y += height;
			this.#fresh = false;
			this.#paper.artifact('Layout', () => this.#rule(this.#y - 1.5, 0.5, ink.grid));
		}
		this.#y += 6;
	}

	#list(items: readonly string[]): void {
		for (const item of items) {
			this.#lines('LI', wrap(plain(item), this.#width - 14, body.size), { indent: 14, mark: '•', after: 2 });
		}
		this.#y += 4;
	}

	#boxLines({ lines, weight }: BoxBlock) {
		const pad = 8;
		const bold = weight === 'strong';
		const wrapped = lines.flatMap((line) => wrap(plain(line), this.#width - 2 * pad, body.size + 0.5, bold));
		const line = body.line + 0.5;
		return { pad, bold, wrapped, line, height: (wrapped.length + 1) * line + 2 * pad };
	}

	#box(box: BoxBlock): void {
		const { word } = box;
		const { pad, bold, wrapped, line, height } = this.#boxLines(box);
		if (height > this.#pageHeight) {
			this.#lines('P', [plainLine(word), ...wrapped], { bold, after: 8 });
			return;
		}
		this.#room(height);
		const top = this.#y;
		this.#paper.artifact('Layout', () => {
			this.#paper.frame(margins.left + 1, top + 1, this.#width - 2, height - 2, {
				width: bold ? 2 : 1,
				colour: ink.line,
			});
		});
		this.#y = top + pad;
		this.#lines('P', [plainLine(word)], { bold: true, indent: pad, line });
		this.#lines('P', wrapped, { size: body.size + 0.5, bold, indent: pad, line });
		this.#y = top + height + 8;
	}

	#figureScale({ width, height }: Figure): number {
		return Math.min(figureScale, this.#width / width, (this.#pageHeight - 8) / height);
	}

	#figure(figure: Figure): void {
		const scale = this.#figureScale(figure);
		const height = figure.height * scale;
		this.#room(height);
		const [x, y] = [margins.left, this.#y];
		const element = this.#paper.element('Figure', {
			alt: figure.alt,
			title: figure.title,
		});
		element.add(() => this.#paper.figure(figure, { x, y, scale }));
		element.end();
		this.#y += height + 10;
		this.#fresh = false;
	}

	#contents(entries: readonly ContentsEntry[]): void {
		this.#y += 6;
		for (const { text, id } of entries) {
			this.#room(16);
			const page = this.#places?.pages.get(id);
			const number = page === undefined ? '' : String(page);
			const baseline = this.#y + 16 * lineFromTop;
			const [top, shown] = [this.#y, plainLine(text)];
			const element = this.#paper.element('TOCI');
			element.add(() => {
				const style = { size: 10.5, colour: ink.text };
				this.#paper.line(wrap(shown, this.#width - 60, style.size)[0] ?? '', margins.left, baseline, style);
				const right = this.#paper.width - margins.right;
				this.#paper.line(number, right - textWidth(number, style.size), baseline, style);
			});
			element.end();
			this.#paper.link(margins.left, top, this.#width, 16, id);
			this.#y += 17;
			this.#paper.artifact('Layout', () => this.#rule(this.#y - 1.5, 0.5, ink.grid));
			this.#fresh = false;
		}
		this.#y += 8;
	}

	#tableHeights({ columns, rows }: TableBlock) {
		const widths = columns.map(({ width }) => (width / 20) * this.#width);
		const wrapCell = (text: string, index: number, bold: boolean) =>
			wrap(plain(text), (widths[index] as number) - 2 * cell.gap, cell.size, bold);
		const head = columns.map(({ label }, index) => wrapCell(label, index, true));
		const wrappedRows = rows.map((row) =>
			columns.map((_, index) => wrapCell(row[index] ?? '', index, false)),
		);
		const rowHeights = wrappedRows.map(heightOfRow);
		return { widths, head, headHeight: heightOfRow(head), wrappedRows, rowHeights };
	}

	/** Height of the rows that are not parted: all where they are few and no third of a page, else the first. */
	#firstRows(rowHeights: readonly number[]): number {
		const whole = rowHeights.reduce((sum, one) => sum + one, 0);
		return rowHeights.length <= fewRows && whole <= this.#pageHeight / 3 ? whole : (rowHeights[0] ?? 0);
	}

	#table(block: TableBlock): void {
		const { columns } = block;
		const { widths, head, headHeight, wrappedRows, rowHeights } = this.#tableHeights(block);
		const lefts = widths.map((_, index) =>
			widths.slice(0, index).reduce((sum, one) => sum + one, margins.left),
		);
		const table = this.#paper.element('Table');
		const drawCells = (cells: readonly (readonly string[])[], bold: boolean, index: number) => {
			for (const [row, text] of (cells[index] ?? []).entries()) {
				const left = (lefts[index] as number) + cell.gap;
				const right = left + (widths[index] as number) - 2 * cell.gap;
				const x = columns[index]?.align === 'end' ? right - textWidth(text, cell.size, bold) : left;
				const baseline = this.#y + cell.pad + row * cell.line + cell.line * lineFromTop;
				this.#paper.line(text, x, baseline, { size: cell.size, bold, colour: ink.text });
			}
		};
		const drawHead = (again: boolean) => {
			if (again) {
				// The head on a later page repeats what was said: it is for the eye alone.
				this.#paper.artifact('Pagination', () => {
					columns.forEach((_, index) => {
						drawCells(head, true, index);
					});
				});
			} else
				this.#row(
					table,
					columns.length,
					() => 'TH',
					(index) => drawCells(head, true, index),
				);
			this.#y += headHeight;
			this.#fresh = false;
			this.#paper.artifact('Layout', () => this.#rule(this.#y, 1));
		};
		this.#room(Math.min(this.#pageHeight, headHeight + this.#firstRows(rowHeights)));
		drawHead(false);
		for (const whole of wrappedRows) {
			for (const cells of this.#pieces(whole, headHeight)) {
				const height = heightOfRow(cells);
				if (this.#y + height > this.#bottom) {
					this.#newPage();
					drawHead(true);
				}
				this.#row(
					table,
					columns.length,
					(index) => (index === 0 ? 'TH' : 'TD'),
					(index) => drawCells(cells, false, index),
				);
				this.#y += height;
				this.#paper.artifact('Layout', () => this.#rule(this.#y, 0.5, ink.grid));
			}
		}
		table.end();
		this.#y += 9;
	}

	#row(
		table: Element,
		count: number,
		typeOf: (index: number) => 'TH' | 'TD',
		draw: (index: number) => void,
	): void {
		const row = table.child('TR');
		for (let index = 0; index < count; index += 1) {
			const element = row.child(typeOf(index));
			element.add(() => draw(index));
			element.end();
		}
		row.end();
	}

	/** A row stays whole unless it is taller than a page. */
	#pieces(cells: readonly (readonly string[])[], headHeight: number): (readonly (readonly string[])[])[] {
		const most = Math.floor((this.#pageHeight - headHeight - 2 * cell.pad) / cell.line);
		const tallest = Math.max(...cells.map(({ length }) => length));
		return Array.from({ length: Math.max(1, Math.ceil(tallest / most)) }, (_, piece) =>
			cells.map((lines) => lines.slice(piece * most, (piece + 1) * most)),
		);
	}
}
