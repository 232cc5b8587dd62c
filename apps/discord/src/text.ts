/**
 * Text on its way in and out. Mentions reach the bot as `<@ID>` and the like; what the bot shows is never read as
 * markup again: a backslash before a sign makes the platform show the sign itself.
 */

/** The words a person typed, without the bot's own mention; other mentions become words that notify nobody. */
export function typedText(content: string, botId: string): string {
	return content
		.replaceAll(new RegExp(`<@!?${botId}>`, 'g'), ' ')
		.replace(/<@[!&]?(\d+)>/g, '@$1')
		.replace(/<#(\d+)>/g, '#$1')
		.replace(/<a?:(\w+):\d+>/g, ':$1:')
		.trim();
}

/** Makes a text safe to send: shown letter by letter, with no style, link, list, heading or mention coming of it. */
export function inert(text: string): string {
	return (
		text
			.replace(/[\\*_~`|<>#[\]@]/g, '\\$&')
			// A list or small print begins with these at the start of a line.
			.replace(/^(\s*)([-+])/gm, '$1\\$2')
			.replace(/^(\s*\d+)\./gm, '$1\\.')
			// An address would become a link.
			.replaceAll('://', ':\\/\\/')
	);
}

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
