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
