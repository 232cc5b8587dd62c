import type { Part, Reply } from '../message.js';

const words: Partial<Record<Part['kind'], string>> = {
	danger: 'DANGER: ',
	warning: 'Warning: ',
	note: 'Note: ',
	caution: 'Caution: ',
};

/** One part as plain text; severity is a word, never a colour or a sign alone. */
export function partText(part: Part): string {
	const word = part.severity === undefined ? words[part.kind] : `${part.severity}: `;
	return `${word ?? ''}${part.text}`;
}

/** The whole reply as plain text, as the terminal shows it and as a fallback elsewhere. */
export function plainText(reply: Reply, options: { readonly folded: boolean } = { folded: false }): string {
	const lines = reply.parts.filter((part) => options.folded || !part.fold).map(partText);
	const labels = reply.buttons.map((button) => `[${button.label}]`);
	if (labels.length > 0) lines.push(labels.join(' '));
	return lines.join('\n');
}

/** The shortest true form, for a notification: the decision, and the gravest finding where there is one. */
export function shortText(reply: Reply): string {
	const gravest = reply.parts.find((part) => part.kind === 'danger' || part.kind === 'warning');
	// A notification of blanks would be none.
	const headline = reply.parts[0]?.text.trim() || 'No words in this answer';
	return gravest === undefined ? headline : `${headline}. ${partText(gravest)}`;
}
