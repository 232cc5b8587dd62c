import { type Element, PhraseTable } from '../elements.js';
import { lex, type Token } from '../lex.js';
import { plain } from '../message.js';
import { equipmentVocabulary } from './subjects.js';
import { everyday } from './words.js';

export interface Span {
	readonly start: number;
	readonly end: number;
}

/** A description cut into pieces, once for every kind that looks at it. */
export class Text {
	readonly message: string;
	readonly #table: PhraseTable;
	readonly #byKind = new Map<string, readonly Element[]>();

	constructor(message: string) {
		this.message = message;
		const tokens: Token[] = lex(plain(message), message, equipmentVocabulary().knows, {
			isOther: (word) => everyday.has(word),
		});
		this.#table = new PhraseTable(tokens, equipmentVocabulary());
	}

	/** The pieces as a kind reads them (null: as any kind does). */
	elements(kind: string | null): readonly Element[] {
		const key = kind ?? '';
		const known = this.#byKind.get(key);
		if (known !== undefined) return known;
		const elements = this.#table.elements(kind).map((element) => this.#couple(element));
		this.#byKind.set(key, elements);
		return elements;
	}

	/** The pieces within the spans; a comma parts the spans, as the text did. */
	within(kind: string, spans: readonly Span[]): Element[] {
		const all = this.elements(kind);
		return spans.flatMap((span, index): Element[] => {
			const inside = all.filter((element) => element.start >= span.start && element.end <= span.end);
			return index === 0
				? inside
				: [{ type: 'mark', mark: ',', start: span.start, end: span.start }, ...inside];
		});
	}

	/** The message with all but the spans blanked out: places in it stay where they were. */
	only(spans: readonly Span[]): string {
		let text = '';
		for (const span of spans) {
			text = text.padEnd(span.start, ' ') + this.message.slice(span.start, span.end);
		}
		return text.padEnd(this.message.length, ' ');
	}

	slice({ start, end }: Span): string {
		return this.message.slice(start, end);
	}

	/** "a couple with a dog" are two people; "a couple of fans" are two fans. */
	#couple(element: Element): Element {
		if (element.type !== 'number' || !/^couple$/i.test(this.slice(element))) return element;
		if (/^\s+of\b/i.test(this.message.slice(element.end, element.end + 8))) return element;
		const match = equipmentVocabulary().matches(['couple'], 0)[0];
		if (match === undefined) return element;
		const { start, end } = element;
		return { type: 'phrase', phrase: match.phrase, meanings: match.meanings, corrected: false, start, end };
	}
}

/** The words of a piece in lower case. */
export function textOf(element: Element): string {
	if (element.type === 'phrase') return element.phrase;
	if (element.type === 'unknown') return element.word;
	return element.type === 'mark' ? element.mark : '';
}

/** Kinds that a piece names. */
export function kindsNamed(element: Element): readonly string[] {
	if (element.type !== 'phrase') return [];
	return element.meanings.flatMap((meaning) => (meaning.means === 'topic' ? [meaning.topic] : []));
}

/** Kinds for which a piece is the word of an input or of a value. */
export function kindsServed(element: Element): readonly string[] {
	if (element.type !== 'phrase') return [];
	return element.meanings.flatMap((meaning) =>
		'topic' in meaning && meaning.means !== 'topic' ? [meaning.topic] : [],
	);
}
