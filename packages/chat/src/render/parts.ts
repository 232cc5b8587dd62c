import { type Say, sayFor } from '@lugbook/core';
import type { Answer } from '../answer.js';
import { isFromBuild } from '../build/borrowed.js';
import type { Button, Part } from '../message.js';

const inEnglish = sayFor({ language: 'en', units: 'us' });

/** The pieces of an answer in reading order: the decision, what was read, why, what is dangerous, how close, what was assumed. */
export function partsOf(
	answer: Answer,
	build: string | null,
	say: Say = inEnglish,
	rephrase: (text: string) => string = (text) => text,
): Part[] {
	const parts: Part[] = [part('headline', answer.headline)];
	const read = readLine(answer, say, rephrase);
	if (read !== null) parts.push(part('read', read));
	if (answer.because !== null) parts.push(part('because', answer.because));
	for (const finding of answer.findings) {
		// A refusal says its danger in the headline already.
		if (finding.text === answer.headline) continue;
		parts.push(part(finding.severity, finding.text, finding.severity === 'note'));
	}
	const near = nearLine(answer, say);
	if (near !== null) parts.push(part('neighbours', near));
	if (answer.unread.length > 0)
		parts.push(part('unread', say`Not used: ${answer.unread.map(quoted).join(', ')}.`));
	const assumed = assumedLine(answer, say);
	if (assumed !== null) parts.push(part('assumed', assumed));
	if (answer.cautions.length > 0) {
		const [first, ...others] = answer.cautions as [string, ...string[]];
		parts.push(part('caution', first));
		for (const other of others) parts.push(part('caution', other, true));
	}
	if (answer.entry !== null && answer.status === 'answered')
		parts.push(part('kept', keptLine(answer.entry, build, say)));
	return parts;
}

function part(kind: Part['kind'], text: string, fold = false): Part {
	return { kind, text, fold };
}

function quoted(text: string): string {
	return `"${text}"`;
}

/** "40 A, 12 V, 15 ft one way": first the quantities, as they were taken. */
function readLine(answer: Answer, say: Say, rephrase: (text: string) => string): string | null {
	const told = answer.understood.filter(({ value }) => typeof value !== 'boolean');
	const [borrowed, said] = [told.filter(isFromBuild), told.filter((one) => !isFromBuild(one))];
	const sentences = [
		...(said.length === 0 ? [] : [say`Read: ${said.map((one) => takenText(one, say)).join(', ')}.`]),
		...(borrowed.length === 0
			? []
			: [
					`${capital(rephrase(borrowed[0]?.said ?? ''))}: ${borrowed.map((one) => takenText(one, say)).join(', ')}.`,
				]),
		...answer.notes,
	];
	return sentences.length === 0 ? null : sentences.join(' ');
}

function capital(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}

function takenText({ name, label, text, unit }: Answer['understood'][number], say: Say): string {
	if (name === 'lengthM') return say`${text} one way`;
	// A figure with its unit speaks for itself; a bare count or a word needs its name.
	return unit !== null && /^\d/.test(text) ? text : `${label} ${text}`;
}

function nearLine(answer: Answer, say: Say): string | null {
	const near = answer.neighbours.map(({ choice, text }) => `${choice}: ${text}.`);
	if (answer.tipping.length > 0)
		near.push(say`Good ${answer.tipping.map(({ text }) => text).join(say` or `)}.`);
	return near.length === 0 ? null : near.join(' ');
}

/** What should be confirmed stands in the line; the rest of the assumptions are counted and shown with the working. */
function assumedLine(answer: Answer, say: Say): string | null {
	if (answer.assumed.length === 0) return null;
	const confirm = answer.assumed.filter((one) => one.confirm);
	const named = (confirm.length > 0 ? confirm : answer.assumed).map(({ label, text }) => `${label} ${text}`);
	const rest = answer.assumed.length - named.length;
	const more = rest > 0 ? say` and ${rest} more (see the working)` : '';
	const list = `${named.join('; ')}${more}`;
	return confirm.length > 0 ? say`Assumed, please confirm: ${list}.` : say`Assumed: ${list}.`;
}

function keptLine(entry: number, build: string | null, say: Say): string {
	return build === null ? say`No. ${entry}` : say`No. ${entry} in build "${build}"`;
}

/** The calculation step by step, with every assumption and source: what the working button shows. */
export function workingParts(answer: Answer, say: Say = inEnglish): Part[] {
	const steps = answer.working.map(({ label, formula, substituted, value, unit, source }) => {
		const figure = typeof value === 'number' ? String(Number(value.toPrecision(6))) : value;
		return `${label}: ${formula}\n  = ${substituted}\n  = ${figure}${unit === null ? '' : ` ${unit}`}  [${source}]`;
	});
	const chain = answer.chain.map((sizing) => say`Rests on ${sizing.topic}: ${sizing.headline}`);
	const assumed = answer.assumed.map(({ label, text, why }) => say`Assumed ${label} ${text}: ${why}`);
	const sources = answer.sources.length === 0 ? [] : [say`Sources: ${answer.sources.join('; ')}`];
	return [...steps, ...chain, ...assumed, ...sources].map((text) => part('working', text));
}

export function buttonsOf(answer: Answer): Button[] {
	if (answer.status !== 'answered' || answer.entry === null) return [];
	const value = String(answer.entry);
	return [
		{ action: 'working', label: 'Show working', value },
		{ action: 'change', label: 'Change', value },
		{ action: 'ask-lead', label: 'Ask the lead', value },
	];
}
