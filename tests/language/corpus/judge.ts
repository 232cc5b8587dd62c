import type { Answer, Chat } from '@lugbook/chat';
import type { Meant, Phrasing } from './phrasing.js';

type Verdict = 'exact' | 'asked' | 'wrong';

export interface Judged {
	readonly phrasing: Phrasing;
	readonly verdict: Verdict;
	/** what differs, in words */
	readonly why: string;
}

/**
 * Asks the chat and compares with what was meant. "asked": not as meant, but nothing was answered on it: a question
 * came back or it was said not to be understood. "wrong": an answer on a reading that was not meant.
 */
export async function judge(chat: Chat, phrasing: Phrasing, region: 'us' | 'eu'): Promise<Judged> {
	const { answer } = await chat.handle({
		platform: 'test',
		shop: 's',
		channel: 'c',
		thread: null,
		delivery: null,
		person: { id: 'u', name: 'u', lead: false },
		command: 'ask',
		text: phrasing.text,
		keep: false,
		region,
	});
	const why = differenceOf(answer, phrasing);
	const safe = ['needs-input', 'not-understood', 'small-talk'].includes(answer.status);
	if (why === null) return { phrasing, verdict: 'exact', why: '' };
	return {
		phrasing,
		verdict: safe ? 'asked' : 'wrong',
		why: `${why}  [${answer.status} ${answer.topic}: ${answer.headline}]`,
	};
}

function differenceOf(answer: Answer, { expect, topics, given, unread }: Phrasing): string | null {
	switch (expect) {
		case 'small-talk':
		case 'not-understood':
			return answer.status === expect ? null : `taken as ${answer.status}`;
		case 'declined':
			return answer.status === 'refused' && answer.topic === null ? null : 'not declined';
		case 'asks':
			if (answer.status !== 'needs-input') return `not asked`;
			break;
		case 'read':
			if (answer.topic === null) return 'no topic';
	}
	if (topics.length > 0 && !topics.includes(answer.topic ?? '')) {
		// "Is this about a, or b?" leaves the topic open.
		if (expect === 'asks' && answer.topic === null) return null;
		return `topic is ${topics.join(' or ')}`;
	}
	if (topics.length === 0) return null;
	const differences = [
		...differencesIn(given, answer),
		...unread
			.filter((word) => !answer.unread.join(' ').includes(word))
			.map((word) => `"${word}" is not said back`),
	];
	return differences.length === 0 ? null : differences.join('; ');
}

/**
 * What stands for the same thing: the inverter itself among its loads is its rating, and a charger that was given by
 * its current needs no place in the load list.
 */
function asOneThing(understood: Answer['understood']): Answer['understood'] {
	return understood.flatMap((one) => {
		if (one.name !== 'loads' || !Array.isArray(one.value)) return [one];
		const own = one.value.find(
			({ name, powerW }) => inverterNames.test(String(name)) && powerW !== undefined,
		);
		const others = one.value.filter((item) => item !== own && !isBareCharger(item));
		const rating = own === undefined ? [] : [{ ...one, name: 'ratedW', value: own.powerW as number }];
		return others.length === 0 ? rating : [...rating, { ...one, value: others }];
	});
}

const inverterNames = /^(?:inverter|inversor|wechselrichter)$/;

function isBareCharger(item: Record<string, unknown>): boolean {
	return Object.keys(item).length === 1 && /charger|ladegerät|cargador/.test(String(item.name));
}

function differencesIn(given: Phrasing['given'], { understood }: Answer): string[] {
	const left = new Map(asOneThing(understood).map((one) => [one.name, one]));
	const differences: string[] = [];
	for (const [key, meant] of Object.entries(given)) {
		const optional = key.endsWith('?');
		const names = (optional ? key.slice(0, -1) : key).split('|');
		const found = names.filter((name) => left.has(name));
		if (found.length === 0) {
			if (!optional) differences.push(`${key} is missing`);
			continue;
		}
		for (const name of found) {
			const value = left.get(name)?.value;
			left.delete(name);
			if (!same(meant, value))
				differences.push(`${name} is ${JSON.stringify(value)}, meant ${JSON.stringify(meant)}`);
		}
	}
	for (const [name, one] of left) {
		if (freeNames.has(name)) continue;
		differences.push(`${name}=${JSON.stringify(one.value)} was not said ("${one.said}")`);
	}
	return differences;
}

/** Names people give to a load or an item; they change no number. */
const freeNames: ReadonlySet<string> = new Set(['load', 'item', 'point']);
const freeInItems: ReadonlySet<string> = new Set(['name', 'supply']);

function same(meant: Meant, value: unknown): boolean {
	if (meant === '*') return value !== undefined;
	if (typeof meant === 'number')
		return typeof value === 'number' && Math.abs(value - meant) <= 1e-3 * Math.max(Math.abs(meant), 0.1);
	if (typeof meant === 'object') {
		if (!Array.isArray(value) || value.length !== meant.length) return false;
		return meant.every((item, index) => sameItem(item, value[index] as Record<string, unknown>));
	}
	return value === meant;
}

function sameItem(
	meant: Readonly<Record<string, number | string | boolean>>,
	item: Record<string, unknown>,
): boolean {
	const expected = Object.entries(meant).map(([key, value]) => ({
		name: key.replace(/\?$/, ''),
		optional: key.endsWith('?'),
		value,
	}));
	return (
		expected.every(({ name, optional, value }) =>
			item[name] === undefined ? optional : same(value, item[name]),
		) && Object.keys(item).every((name) => freeInItems.has(name) || expected.some((one) => one.name === name))
	);
}

export function report(judged: readonly Judged[]): string {
	const count = (verdict: Verdict) => judged.filter((one) => one.verdict === verdict).length;
	const lines = judged
		.filter(({ verdict }) => verdict !== 'exact')
		.map(({ phrasing, verdict, why }) => `${verdict.toUpperCase()} "${phrasing.text}"\n    ${why}`);
	const share = ((100 * count('exact')) / judged.length).toFixed(1);
	return [
		`${judged.length} phrasings: ${count('exact')} exact (${share} %), ${count('asked')} asked or not understood, ${count('wrong')} wrong with confidence`,
		...lines,
	].join('\n');
}
