/** Marks that turn the direction of the text after them: they could make a number read otherwise than it stands. */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/g;

/**
 * Text as it may stand on a page: whole characters, no control characters, no turning of its direction. What may not
 * stand becomes U+FFFD, so that a reader sees that something was there.
 */
export function plain(text: string): string {
	return wellFormed(text).replace(/\r\n?/g, '\n').replace(control, '\ufffd').replace(turning, '\ufffd');
}

/** The same on one line. */
export function plainLine(text: string): string {
	return plain(text).replace(/[\t\n\u2028\u2029]+/g, ' ');
}

function wellFormed(text: string): string {
	return text.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');
}

const entities: Readonly<Record<string, string>> = {
	'&': '&amp;',
	'<': '&lt;',
	'>': '&gt;',
	'"': '&quot;',
	"'": '&#39;',
};

/** Text for HTML and SVG, between tags as well as in a quoted attribute. */
export function escapeMarkup(text: string): string {
	return plain(text).replace(/[&<>"']/g, (character) => entities[character] as string);
}
