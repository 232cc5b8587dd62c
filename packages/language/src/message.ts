/** Longest message that is read [UTF-16 units]; the rest could change the answer, so nothing of it is answered. */
export const longestMessage = 2000;

const replacements: Readonly<Record<string, string>> = {
	'’': "'",
	'‘': "'",
	'′': "'",
	'´': "'",
	'`': "'",
	'“': '"',
	'”': '"',
	'″': '"',
	'×': 'x',
	'✕': 'x',
	'–': '-',
	'—': '-',
	'−': '-',
	'‑': '-',
	'\u00a0': ' ',
	'\u202f': ' ',
	'\t': ' ',
	µ: 'u',
	Ω: 'ω',
	'₄': '4',
};

/**
 * The message in lower case with the many shapes of quotes, dashes and spaces brought to one, character for
 * character: positions in the result are positions in the message.
 */
export function plain(message: string): string {
	// Asked for by every step of a reading, one message at a time.
	if (message === last.message) return last.text;
	let text = '';
	for (let index = 0; index < message.length; index += 1) {
		const unit = message[index] as string;
		const replaced = replacements[unit] ?? unit;
		const lower = replaced.toLowerCase();
		text += lower.length === 1 ? lower : replaced;
	}
	last = { message, text };
	return text;
}

let last = { message: '', text: '' };
