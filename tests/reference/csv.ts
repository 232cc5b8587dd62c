import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../shared/reference/', import.meta.url));

/** The rows of a reference table by column name; cells stay text. Quotes are read as in RFC 4180. */
export function readTable(file: string): Record<string, string>[] {
	const [header, ...lines] = readFileSync(folder + file, 'utf8')
		.trimEnd()
		.split(/\r?\n/)
		.map(cells);
	if (header === undefined) throw new Error(`${file} is empty`);
	return lines.map((line) => Object.fromEntries(header.map((name, index) => [name, line[index] ?? ''])));
}

export function readJson<T>(file: string): T {
	return JSON.parse(readFileSync(folder + file, 'utf8')) as T;
}

function cells(line: string): string[] {
	const found: string[] = [];
	for (const match of line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)) {
		found.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
	}
	return found;
}
