import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/**
 * The fonts of pictures and pages. They come with the program, so the same record gives the same bytes on every
 * machine; the renderer reads plain TrueType only. The text face lacks ≤, √ and their like: the mathematical one of
 * the same family stands in, character by character.
 */
const require = createRequire(import.meta.url);
export const fontFamily = 'Noto Sans';
export const fontFiles = {
	regular: require.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'),
	bold: require.resolve('@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf'),
	math: require.resolve('@expo-google-fonts/noto-sans-math/400Regular/NotoSansMath_400Regular.ttf'),
} as const;
export type Face = keyof typeof fontFiles;

interface Metrics {
	readonly unitsPerEm: number;
	/** advance width by glyph, in font units; the last one holds for all glyphs after it */
	readonly advances: readonly number[];
	/** glyph by code point */
	readonly glyphs: ReadonlyMap<number, number>;
}

const known = new Map<Face, Metrics>();

/** The face that draws a character, or null where none has it. */
function faceOf(character: string, bold = false): Face | null {
	const codePoint = character.codePointAt(0) as number;
	const face = bold ? 'bold' : 'regular';
	if (metricsOf(face).glyphs.has(codePoint)) return face;
	return metricsOf('math').glyphs.has(codePoint) ? 'math' : null;
}

/** A line in pieces of one face each; a character that no face has becomes a replacement mark. */
export function faceRuns(text: string, bold = false): { readonly face: Face; readonly text: string }[] {
	const runs: { face: Face; text: string }[] = [];
	for (const character of text) {
		const face = faceOf(character, bold);
		const shown = face === null ? unknownCharacter : character;
		const last = runs.at(-1);
		const wanted = face ?? (bold ? 'bold' : 'regular');
		if (last?.face === wanted) last.text += shown;
		else runs.push({ face: wanted, text: shown });
	}
	return runs;
}

const unknownCharacter = '\u{fffd}';

/**
 * Width of a line of text, without kerning: never narrower than what is drawn.
 * @param size font size, in whatever unit the width is wanted
 */
export function textWidth(text: string, size: number, bold = false): number {
	let ems = 0;
	for (const character of text) {
		const face = faceOf(character, bold);
		const metrics = metricsOf(face ?? (bold ? 'bold' : 'regular'));
		const glyph =
			metrics.glyphs.get((face === null ? unknownCharacter : character).codePointAt(0) as number) ?? 0;
		ems += (metrics.advances[Math.min(glyph, metrics.advances.length - 1)] as number) / metrics.unitsPerEm;
	}
	return ems * size;
}

/**
 * Breaks text into lines no wider than asked, at spaces where it can, inside a word only where the word alone is too
 * wide.
 */
export function wrap(text: string, width: number, size: number, bold = false): string[] {
	const lines: string[] = [];
	for (const paragraph of text.split('\n')) {
		let line = '';
		for (const word of paragraph.split(' ')) {
			const longer = line === '' ? word : `${line} ${word}`;
			if (textWidth(longer, size, bold) <= width) {
				line = longer;
				continue;
			}
			if (line !== '') lines.push(line);
			const pieces = piecesOf(word, width, size, bold);
			lines.push(...pieces.slice(0, -1));
			line = pieces.at(-1) ?? '';
		}
		lines.push(line);
	}
	return lines;
}

function piecesOf(word: string, width: number, size: number, bold: boolean): string[] {
	if (textWidth(word, size, bold) <= width) return [word];
	const pieces: string[] = [];
	let piece = '';
	let pieceWidth = 0;
	for (const character of word) {
		const characterWidth = textWidth(character, size, bold);
		if (piece !== '' && pieceWidth + characterWidth > width) {
			pieces.push(piece);
			piece = '';
			pieceWidth = 0;
		}
		piece += character;
		pieceWidth += characterWidth;
	}
	pieces.push(piece);
	return pieces;
}

function metricsOf(face: Face): Metrics {
	let metrics = known.get(face);
	if (metrics === undefined) {
		metrics = readMetrics(readFileSync(fontFiles[face]));
		known.set(face, metrics);
	}
	return metrics;
}

/** The tables head, hhea, hmtx and cmap of the OpenType specification (ISO/IEC 14496-22). */
function readMetrics(font: Buffer): Metrics {
	const table = (tag: string): number => {
		const count = font.readUInt16BE(4);
		for (let index = 0; index < count; index += 1) {
			const entry = 12 + index * 16;
			if (font.toString('latin1', entry, entry + 4) === tag) return font.readUInt32BE(entry + 8);
		}
		throw new Error(`the font has no table "${tag}"`);
	};
	const advanceCount = font.readUInt16BE(table('hhea') + 34);
	const hmtx = table('hmtx');
	return {
		unitsPerEm: font.readUInt16BE(table('head') + 18),
		advances: Array.from({ length: advanceCount }, (_, index) => font.readUInt16BE(hmtx + index * 4)),
		glyphs: readCharacterMap(font, table('cmap')),
	};
}

function readCharacterMap(font: Buffer, start: number): Map<number, number> {
	const count = font.readUInt16BE(start + 2);
	for (let index = 0; index < count; index += 1) {
		const subtable = start + font.readUInt32BE(start + 4 + index * 8 + 4);
		// Format 12 covers all of Unicode; both fonts carry it.
		if (font.readUInt16BE(subtable) === 12) return readGroups(font, subtable);
	}
	throw new Error('the font has no character map of format 12');
}

function readGroups(font: Buffer, subtable: number): Map<number, number> {
	const glyphs = new Map<number, number>();
	const groups = font.readUInt32BE(subtable + 12);
	for (let group = 0; group < groups; group += 1) {
		const at = subtable + 16 + group * 12;
		const first = font.readUInt32BE(at);
		const last = font.readUInt32BE(at + 4);
		const glyph = font.readUInt32BE(at + 8);
		for (let codePoint = first; codePoint <= last; codePoint += 1) {
			glyphs.set(codePoint, glyph + codePoint - first);
		}
	}
	return glyphs;
}
