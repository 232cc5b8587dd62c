/**
 * Text on its way in and out. What people typed reaches the bot with `&`, `<`, `>` as entities and mentions as
 * `<...>` (docs.slack.dev/messaging/formatting-message-text); what the bot shows is never read as markup again.
 */

/** The words a person typed, without the bot's own mention; other mentions and links become what people see of them. */
export function typedText(transmitted: string, botUserId: string): string {
	return transmitted
		.replaceAll(`<@${botUserId}>`, ' ')
		.replace(/<([^<>]*)>/g, (_, inside: string) => shownLink(inside))
		.replaceAll('&lt;', '<')
		.replaceAll('&gt;', '>')
		.replaceAll('&amp;', '&')
		.trim();
}

/** What stands on the screen for `<...>`: "<!here>" is "@here", "<https://a|b>" is "b". */
function shownLink(inside: string): string {
	const [target = '', label] = inside.split('|', 2);
	if (target.startsWith('!')) return `@${label ?? target.slice(1)}`;
	if (target.startsWith('@')) return `@${label ?? target.slice(1)}`;
	if (target.startsWith('#')) return `#${label ?? target.slice(1)}`;
	return label ?? target;
}

/** Makes a text safe where the platform reads markup: no mention, no link, no entity comes of it. */
export function inert(text: string): string {
	return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
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
