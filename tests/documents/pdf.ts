import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A word on a printed page, as another reader of the file finds it [pt]. */
export interface PrintedWord {
	readonly text: string;
	/** from 1 */
	readonly page: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

export interface Printed {
	readonly pages: readonly { readonly width: number; readonly height: number }[];
	readonly words: readonly PrintedWord[];
}

/** Runs one of poppler's tools on a file. */
export function poppler(
	tool: 'pdftotext' | 'pdfinfo' | 'pdffonts' | 'pdfimages',
	options: readonly string[],
	pdf: Uint8Array,
): string {
	const folder = mkdtempSync(join(tmpdir(), 'document-'));
	try {
		const path = join(folder, 'file.pdf');
		writeFileSync(path, pdf);
		const before = tool === 'pdftotext' ? [...options, path, '-'] : [...options, path];
		return execFileSync(tool, before, { encoding: 'utf8', maxBuffer: 256 * 1024 * 1024 });
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** Every word of a PDF with its page and its place. */
export function printed(pdf: Uint8Array): Printed {
	const pages: { width: number; height: number }[] = [];
	const words: PrintedWord[] = [];
	for (const line of poppler('pdftotext', ['-bbox'], pdf).split('\n')) {
		const page = /<page width="([\d.]+)" height="([\d.]+)">/.exec(line);
		if (page !== null) pages.push({ width: Number(page[1]), height: Number(page[2]) });
		const word =
			/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)<\/word>/.exec(line);
		if (word === null) continue;
		const [, left, top, right, bottom, text = ''] = word;
		words.push({
			text: text
				.replaceAll('&lt;', '<')
				.replaceAll('&gt;', '>')
				.replaceAll('&amp;', '&')
				.replaceAll('&quot;', '"'),
			page: pages.length,
			left: Number(left),
			top: Number(top),
			right: Number(right),
			bottom: Number(bottom),
		});
	}
	return { pages, words };
}

/** Where a word stands that stands there once. */
export function only({ words }: Printed, text: string): PrintedWord {
	const found = words.filter((word) => word.text === text);
	if (found.length !== 1) throw new Error(`"${text}" stands ${found.length} times in the print`);
	return found[0] as PrintedWord;
}
