/** A cell of a Markdown table: one line, with its bars escaped. */
export function cell(text: string): string {
	return text
		.replaceAll('|', '\\|')
		.replaceAll(/\s*\n\s*/g, ' ')
		.trim();
}

export function table(header: readonly string[], rows: readonly (readonly string[])[]): string {
	const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
	return [line(header), line(header.map(() => '---')), ...rows.map(line)].join('\n');
}
