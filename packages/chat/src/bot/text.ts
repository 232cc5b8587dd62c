/** Cutting of texts to what a platform takes. Lengths in UTF-16 code units. */

/** Cuts at a word, marking the cut; never inside a surrogate pair. */
export function shortened(text: string, max: number): string {
	if (text.length <= max) return text;
	const room = text.slice(0, max - 1).replace(/[\uD800-\uDBFF]$/, '');
	const atWord = /^\s/.test(text.slice(room.length)) ? room.trimEnd() : room.replace(/\s+\S*$/, '');
	return `${atWord.length > max / 2 ? atWord : room}…`;
}

/** Splits a text into pieces of at most `max`, at line ends or words where it can. Nothing is lost but the blank at a cut. */
export function pieces(text: string, max: number): string[] {
	const found: string[] = [];
	let rest = text;
	while (rest.length > max) {
		const head = rest.slice(0, max + 1);
		const cut = Math.max(head.lastIndexOf('\n'), head.lastIndexOf(' '));
		let at = cut > max / 2 ? cut : max;
		if (at === max && /[\uD800-\uDBFF]/.test(rest[max - 1] ?? '')) at -= 1;
		found.push(rest.slice(0, at));
		rest = rest.slice(at).replace(/^[ \n]/, '');
	}
	return rest === '' && found.length > 0 ? found : [...found, rest];
}

/** A text around the number of an answer, "No. 129", "N.º 129" or "Nr. 129", where it first names it; null where it does not. */
export function aroundNumber(
	text: string,
	entry: number,
): { readonly before: string; readonly name: string; readonly after: string } | null {
	const match = new RegExp(`\\b(?:No\\.|N\\.º|Nr\\.) ${entry}\\b`, 'i').exec(text);
	if (match === null) return null;
	const [name] = match;
	return { before: text.slice(0, match.index), name, after: text.slice(match.index + name.length) };
}
