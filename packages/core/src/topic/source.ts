/** How far a published value or method was checked against its source. */
type SourceMark = 'verified' | 'from-memory' | 'practice' | 'computed';

/** Where a number or a method comes from. */
export interface Source {
	readonly document: string;
	readonly clause: string | null;
	readonly mark: SourceMark;
}

/** A published document read (or reprinted) and checked. */
export function published(document: string, clause: string | null = null): Source {
	return { document, clause, mark: 'verified' };
}

/** A published document whose value was written down from memory: it may tighten a limit, never loosen one. */
export function fromMemory(document: string, clause: string | null = null): Source {
	return { document, clause, mark: 'from-memory' };
}

/** What careful shops do; no document says so. */
export function practice(what: string | null = null): Source {
	return { document: 'common practice of the trade', clause: what, mark: 'practice' };
}

/** A law of physics or plain arithmetic. */
export function physics(law: string): Source {
	return { document: law, clause: null, mark: 'computed' };
}

/** The source as it stands in an answer. */
export function sourceText(source: Source): string {
	const clause = source.clause === null ? '' : `, ${source.clause}`;
	const mark = source.mark === 'from-memory' ? ' (from memory, to be checked)' : '';
	return `${source.document}${clause}${mark}`;
}
