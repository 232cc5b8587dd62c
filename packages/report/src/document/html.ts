import { createHash } from 'node:crypto';
import { figureSvg, phoneWidth } from '../picture/figure.js';
import { escapeMarkup } from '../plain.js';
import { type Block, fewRows, type TableBlock } from './block.js';
import { style } from './style.js';

/** Blocks as a fragment of HTML: no script, no style attribute, everything escaped. */
export function* htmlOf(blocks: Iterable<Block>): Generator<string> {
	for (const block of blocks) yield htmlOfBlock(block);
}

export function htmlOfBlock(block: Block): string {
	switch (block.kind) {
		case 'heading': {
			const id = block.id === null ? '' : ` id="${escapeMarkup(block.id)}"`;
			return `<h${block.level}${id}>${escapeMarkup(block.text)}</h${block.level}>\n`;
		}
		case 'paragraph':
			return `<p${block.leads ? ' class="lead"' : ''}>${lines(block.text)}</p>\n`;
		case 'facts':
			return `<dl${together(block.rows)}>\n${block.rows
				.map(({ label, text }) => `<div><dt>${escapeMarkup(label)}</dt><dd>${lines(text)}</dd></div>\n`)
				.join('')}</dl>\n`;
		case 'table':
			return tableHtml(block);
		case 'list':
			return `<ul>\n${block.items.map((item) => `<li>${lines(item)}</li>\n`).join('')}</ul>\n`;
		case 'box':
			return `<div class="box ${block.weight}">\n<p class="word">${escapeMarkup(block.word)}</p>\n${block.lines
				.map((line) => `<p>${lines(line)}</p>\n`)
				.join('')}</div>\n`;
		case 'figure': {
			const { figure } = block;
			const wide = figure.width > phoneWidth ? ' class="wide"' : '';
			return `<figure${wide}>\n${figureSvg(figure)}</figure>\n`;
		}
		case 'contents':
			return `<nav aria-label="Contents">\n<ol>\n${block.entries
				.map(({ text, id }) => `<li><a href="#${escapeMarkup(id)}">${escapeMarkup(text)}</a></li>\n`)
				.join('')}</ol>\n</nav>\n`;
		case 'page':
			return '<div class="page"></div>\n';
	}
}

/** Few rows are not parted by the end of a page. */
function together(rows: readonly unknown[]): string {
	return rows.length <= fewRows ? ' class="few"' : '';
}

function lines(text: string): string {
	return escapeMarkup(text).replaceAll('\n', '<br>');
}

function tableHtml({ columns, rows }: TableBlock): string {
	const classOf = (index: number) => (columns[index]?.align === 'end' ? ' class="number"' : '');
	const widths = columns.map(({ width }) => `<col class="w${width}">`).join('');
	const head = columns
		.map(({ label }, index) => `<th scope="col"${classOf(index)}>${escapeMarkup(label)}</th>`)
		.join('');
	const body = rows
		.map(
			(row) =>
				`<tr>${columns
					.map((_, index) => {
						const cell = lines(row[index] ?? '');
						return index === 0
							? `<th scope="row"${classOf(index)}>${cell}</th>`
							: `<td${classOf(index)} data-label="${escapeMarkup(columns[index]?.label ?? '')}">${cell}</td>`;
					})
					.join('')}</tr>\n`,
		)
		.join('');
	return `<table${together(rows)}>\n<colgroup>${widths}</colgroup>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${body}</tbody>\n</table>\n`;
}

// The page allows its own style sheet by its hash and nothing else: no script, no picture or font from anywhere.
const styleHash = createHash('sha256').update(style).digest('base64');
const policy = `default-src 'none'; style-src 'sha256-${styleHash}'; base-uri 'none'; form-action 'none'`;

/** What stands before the blocks of a whole page. */
export function pageStart(title: string, language = 'en'): string {
	return `<!DOCTYPE html>
<html lang="${escapeMarkup(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light">
<meta name="referrer" content="no-referrer">
<title>${escapeMarkup(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
`;
}

export const pageEnd = '</main>\n</body>\n</html>\n';
