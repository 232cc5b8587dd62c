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
