import { type Context, type Region, runTopic, topicNamed, topics, type UnitHabit } from '@lugbook/core';
import { type Given, Reader, type Reading } from '@lugbook/language';
import { type Entry, type Json, type Log, openLog } from '@lugbook/log';
import { type Answer, bareAnswer } from './answer.js';
import { failureAnswer, isLogError } from './failure.js';
import { helpFor } from './help.js';
import { buildOf, exchangeOf, lastQuestion, type Remembered } from './memory.js';
import type { Audience, Button, Incoming, Part, Reply } from './message.js';
import { answerOf, bodyOf, understoodOf, valuesOf, type Worked, workOut } from './question.js';
import { buttonsOf, partsOf, workingParts } from './render/parts.js';

export interface ChatOptions {
	/** `sqlite:PATH` or `postgres://...` */
	readonly databaseUrl: string;
	readonly region: Region;
	/** the shop's unit habit; the region's where none is set */
	readonly units?: UnitHabit;
	/** the clock for the time of entries; order never comes from it */
	readonly now?: () => Date;
}

/** Opens the log and the conversation over it. */
export async function openChat(options: ChatOptions): Promise<Chat> {
	const log = await openLog(options.databaseUrl, { searchable: searchableText });
	return new Chat(log, options);
}

/** What full-text search finds of an answer beside what was typed. */
function searchableText(body: Json): string {
	const answer = typeof body === 'object' && body !== null && !Array.isArray(body) ? body.answer : null;
	const headline =
		typeof answer === 'object' && answer !== null && !Array.isArray(answer) ? answer.headline : null;
	return typeof headline === 'string' ? headline : '';
}

/** A conversation with shops, the same on every platform: a message in, a reply out, kept before it leaves. */
export class Chat {
	readonly log: Log;
	readonly #reader = new Reader();
	readonly #options: ChatOptions;

	constructor(log: Log, options: ChatOptions) {
		this.log = log;
		this.#options = options;
	}

	async close(): Promise<void> {
		await this.log.close();
	}

	/** Answers a message. Every path ends in a reply; what is kept is durable when it resolves. */
	async handle(incoming: Incoming): Promise<Reply> {
		try {
			if (incoming.delivery !== null && incoming.keep !== false) {
				const before = await this.log.byDelivery(incoming.shop, incoming.delivery);
				if (before !== null) return this.#replay(before);
			}
			const text = incoming.text.trim();
			if (/^(?:help|\?)$/i.test(text)) return listed(helpFor(incoming.command), 'asker');
			switch (incoming.command) {
				case 'ask':
					return await this.#ask(incoming, text);
				case 'size':
					return await this.#size(incoming, text);
				case 'build':
					return await this.#build(incoming, text);
				case 'log':
					return await this.#showLog(incoming, text);
			}
		} catch (error) {
			if (!isLogError(error)) throw error;
			return replyWith(failureAnswer(error), null, 'asker');
		}
	}

	async #ask(incoming: Incoming, text: string): Promise<Reply> {
		const build = await this.#buildFor(incoming);
		const context = this.#contextFor(incoming);
		const { topic, rest } = namedTopic(text);
		const goesOn = /^>\s*/.exec(rest);
		const question = goesOn === null ? rest : rest.slice(goesOn[0].length);
		const fresh = this.#reader.read(question, { context, ...(topic === null ? {} : { topic }) });
		const remembered =
			incoming.keep !== false && (incoming.thread !== null || goesOn !== null || fresh.said.length > 0)
				? await lastQuestion(this.log, {
						shop: incoming.shop,
						channel: incoming.channel,
						thread: incoming.thread,
						personId: incoming.person.id,
					})
				: null;
		const reading =
			remembered === null || topic !== null
				? fresh
				: this.#reader.read(question, {
						context: { ...context, region: remembered.context.region },
						previous: remembered,
					});
		return await this.#answer(incoming, build, reading, remembered, question);
	}

	async #answer(
		incoming: Incoming,
		build: string | null,
		reading: Reading,
		remembered: Remembered | null,
		text: string,
	): Promise<Reply> {
		const about = remembered === null ? null : aboutPrevious(reading, remembered);
		if (about !== null && remembered !== null) {
			const worked = { answer: about.answer, request: remembered.exchange.request };
			return await this.#keep(incoming, build, worked, remembered.entry, about.parts);
		}
		if (reading.rival !== null && reading.topic !== null) {
			return await this.#keep(
				incoming,
				build,
				whichTopic(reading.topic, reading.rival),
				null,
				[],
				[reading.topic, reading.rival].map((name) => ({
					action: 'answer',
					label: name,
					value: `${name}: ${text}`,
				})),
			);
		}
		const follows = reading.followsUp && remembered !== null ? remembered.entry : null;
		const worked = workOut(reading);
		return await this.#keep(incoming, build, worked, follows, [], choicesOf(reading));
	}

	async #size(incoming: Incoming, text: string): Promise<Reply> {
		const [name = ''] = text.split(/\s+/, 1);
		const topic = topicNamed(name.toLowerCase());
		if (topic === null) {
			const headline =
				name === '' ? 'Name a topic, then its inputs.' : `"${name.slice(0, 40)}" is no topic of mine.`;
			return listed(`${headline}\n${topics.map((one) => `${one.name}: ${one.title}`).join('\n')}`, 'asker');
		}
		const build = await this.#buildFor(incoming);
		const context = this.#contextFor(incoming);
		if (incoming.fields === undefined) {
			const reading = this.#reader.read(text.slice(name.length).trim(), { context, topic: topic.name });
			return await this.#answer(incoming, build, reading, null, text);
		}
		const given: Given[] = [];
		const errors: string[] = [];
		for (const [field, typed] of Object.entries(incoming.fields)) {
			if (typed.trim() === '') continue;
			const read = this.#reader.readField(topic, field, typed, context);
			if (read.ok) given.push({ name: field, value: read.value, said: typed });
			else errors.push(read.error);
		}
		if (errors.length > 0) {
			const answer = bareAnswer('refused', errors.join(' '), { topic: topic.name });
			return await this.#keep(incoming, build, { answer, request: null }, null);
		}
		const outcome = runTopic(topic, valuesOf(given), context);
		const answer = { ...answerOf(outcome), understood: understoodOf(given, topic, context) };
		const request = {
			topic: topic.name,
			given: given.map((one) => ({ ...one, value: plainValue(one.value) })),
			asked: null,
			context,
		};
		return await this.#keep(incoming, build, { answer, request }, null);
	}

	async #build(incoming: Incoming, text: string): Promise<Reply> {
		const use = /^use\s+(\S.{0,59})$/i.exec(text);
		if (use !== null) {
			const name = (use[1] as string).trim().toLowerCase();
			await this.log.append({
				...this.#entryOf(incoming, name),
				kind: 'channel-bound',
				topic: null,
				follows: null,
				state: null,
				body: { build: name },
			});
			return replyWith(bareAnswer('listed', `This channel now works on build "${name}".`), name, 'channel');
		}
		const build = await this.#buildFor(incoming);
		if (/^(?:show)?$/i.test(text)) {
			if (build === null)
				return listed('No build is chosen for this channel. Say "/build use NAME".', 'asker');
			const { entries } = await this.log.find(incoming.shop, { build, kinds: ['exchange'], limit: 10 });
			return listed(
				[`Build "${build}"`, ...entries.map(entryLine)].join('\n'),
				'channel',
				entries.length === 0 ? null : (entries[0]?.number ?? null),
			);
		}
		return listed(`I don't know "/build ${text.slice(0, 40)}".\n${helpFor('build')}`, 'asker');
	}

	async #showLog(incoming: Incoming, text: string): Promise<Reply> {
		if (/^verify$/i.test(text)) {
			const report = await this.log.verify(incoming.shop);
			const broken = report.shops.flatMap((shop) => shop.problem ?? [])[0];
			const count = report.shops.reduce((sum, shop) => sum + shop.entries, 0);
			return listed(
				broken === undefined
					? `The log is unbroken: ${count} entries.`
					: `The log is broken: ${broken.message}.`,
				'channel',
			);
		}
		const show = /^(?:show)?\s*(\S*)$/i.exec(text);
		if (show === null) return listed(`I don't know "/log ${text.slice(0, 40)}".\n${helpFor('log')}`, 'asker');
		const what = (show[1] as string).toLowerCase();
		if (/^#?\d{1,9}$/.test(what)) return await this.#showEntry(incoming, Number(what.replace('#', '')));
		const build = await this.#buildFor(incoming);
		const topic = what === '' ? null : topicNamed(what);
		if (what !== '' && topic === null)
			return listed(`"${what.slice(0, 40)}" is no topic and no number.\n${helpFor('log')}`, 'asker');
		const { entries } = await this.log.find(incoming.shop, {
			...(build === null ? { channel: incoming.channel } : { build }),
			...(topic === null ? {} : { topic: topic.name }),
			kinds: ['exchange'],
			limit: 10,
		});
		const title = build === null ? 'Newest answers of this channel' : `Newest answers of build "${build}"`;
		return listed(
			entries.length === 0 ? `${title}: none yet.` : [title, ...entries.map(entryLine)].join('\n'),
			'channel',
		);
	}

	async #showEntry(incoming: Incoming, number: number): Promise<Reply> {
		const entry = await this.log.entry(incoming.shop, number);
		const exchange = entry === null ? null : exchangeOf(entry);
		if (entry === null || exchange === null)
			return listed(`There is no answer No. ${number} in this shop's log.`, 'asker');
		const answer = { ...exchange.answer, entry: entry.number };
		const reply = replyWith(answer, entry.build, 'channel');
		return {
			...reply,
			parts: [...reply.parts.map((one) => ({ ...one, fold: false })), ...workingParts(answer)],
			buttons: [],
		};
	}

	async #buildFor(incoming: Incoming): Promise<string | null> {
		if (incoming.build !== undefined) return incoming.build;
		return incoming.keep === false ? null : await buildOf(this.log, incoming.shop, incoming.channel);
	}

	#contextFor(incoming: Incoming): Context {
		const region = incoming.region ?? this.#options.region;
		const habit: UnitHabit = region === 'us' ? 'us' : 'metric';
		const units = incoming.units ?? (incoming.region === undefined ? (this.#options.units ?? habit) : habit);
		return { region, units, language: 'en' };
	}

	#entryOf(incoming: Incoming, build: string | null) {
		return {
			shop: incoming.shop,
			delivery: incoming.delivery,
			platform: incoming.platform,
			channel: incoming.channel,
			thread: incoming.thread,
			build,
			personId: incoming.person.id,
			personName: incoming.person.name,
			// What is longer than is read is kept as far as it goes.
			text: keepable(incoming.text),
			at: (this.#options.now?.() ?? new Date()).toISOString(),
			replaces: null,
		};
	}

	/** Makes the exchange durable, then lets the reply go. */
	async #keep(
		incoming: Incoming,
		build: string | null,
		worked: Worked,
		follows: number | null,
		extraParts: readonly Part[] = [],
		choices: readonly Button[] = [],
	): Promise<Reply> {
		const audience = audienceOf(worked.answer);
		if (incoming.keep === false)
			return withExtras(replyWith(worked.answer, build, audience), extraParts, choices);
		const { entry, repeated } = await this.log.append({
			...this.#entryOf(incoming, build),
			kind: 'exchange',
			topic: worked.answer.topic,
			follows,
			state: worked.answer.status,
			body: JSON.parse(JSON.stringify(bodyOf(worked))) as Json,
		});
		// Another process was faster with the same delivery: its answer stands.
		if (repeated) return this.#replay(entry);
		return withExtras(
			replyWith({ ...worked.answer, entry: entry.number }, build, audience),
			extraParts,
			choices,
		);
	}

	#replay(entry: Entry): Reply {
		const exchange = exchangeOf(entry);
		if (exchange === null)
			return { ...listed(`Done already, as No. ${entry.number}.`, 'asker'), repeated: true };
		const { request, answer } = exchange;
		const unread =
			entry.erased || request === null
				? []
				: this.#reader.read(entry.text, { context: request.context, topic: request.topic }).unread;
		const kept = { ...answer, unread: [...unread], entry: entry.number };
		return { ...replyWith(kept, entry.build, audienceOf(kept)), repeated: true };
	}
}

/** An answer or a question goes to the channel; a correction or a failure to the asker alone. */
function audienceOf(answer: Answer): Audience {
	return answer.status === 'not-understood' || answer.status === 'refused' ? 'asker' : 'channel';
}

function replyWith(answer: Answer, build: string | null, audience: Audience): Reply {
	return { answer, audience, parts: partsOf(answer, build), buttons: buttonsOf(answer), repeated: false };
}

function withExtras(reply: Reply, parts: readonly Part[], choices: readonly Button[]): Reply {
	if (parts.length === 0 && choices.length === 0) return reply;
	return { ...reply, parts: [...reply.parts, ...parts], buttons: [...choices, ...reply.buttons] };
}

function listed(text: string, audience: Audience, entry: number | null = null): Reply {
	const [headline = '', ...lines] = text.split('\n');
	const answer = bareAnswer('listed', headline, { entry });
	return {
		answer,
		audience,
		parts: [
			{ kind: 'headline', text: headline, fold: false },
			...lines.map((line) => ({ kind: 'list' as const, text: line, fold: false })),
		],
		buttons: [],
		repeated: false,
	};
}

function entryLine(entry: Entry): string {
	const exchange = exchangeOf(entry);
	return `No. ${entry.number}  ${entry.topic ?? entry.state ?? ''}  ${exchange?.answer.headline ?? ''}`;
}

/** "wire: 40A 12V 15 ft" names its topic itself. */
function namedTopic(text: string): { topic: string | null; rest: string } {
	const match = /^([a-z][a-z-]{1,30}):\s*/i.exec(text);
	const topic = match === null ? null : topicNamed((match[1] as string).toLowerCase());
	return match === null || topic === null
		? { topic: null, rest: text }
		: { topic: topic.name, rest: text.slice(match[0].length) };
}

/** "why", "show the working", "one size up": about the answer before, not a new calculation. */
function aboutPrevious(reading: Reading, remembered: Remembered): { answer: Answer; parts: Part[] } | null {
	const { answer } = remembered.exchange;
	const changes = reading.given.some((given) => !remembered.given.includes(given));
	if (changes || answer.status !== 'answered') return null;
	const about = { topic: answer.topic, because: answer.because };
	if (reading.said.includes('working')) {
		return {
			answer: bareAnswer('listed', `Working of No. ${remembered.entry}: ${answer.headline}`, {
				...about,
				working: answer.working,
				assumed: answer.assumed,
			}),
			parts: workingParts(answer),
		};
	}
	if (reading.said.includes('why')) {
		const governed =
			answer.governedBy === null ? answer.headline : `${answer.headline}: ${answer.governedBy} governs`;
		return {
			answer: bareAnswer('listed', governed, {
				...about,
				governedBy: answer.governedBy,
				neighbours: answer.neighbours,
				tipping: answer.tipping,
			}),
			parts: [],
		};
	}
	const wanted = reading.said.includes('size-up')
		? answer.neighbours.at(-1)
		: reading.said.includes('size-down')
			? answer.neighbours[0]
			: undefined;
	if (wanted === undefined) return null;
	const verdict = wanted.passes ? 'would do too' : 'would not do';
	return {
		answer: bareAnswer('listed', `${wanted.choice} ${verdict}: ${wanted.text}`, {
			topic: answer.topic,
			neighbours: answer.neighbours,
		}),
		parts: [],
	};
}

function whichTopic(topic: string, rival: string): Worked {
	const titles = [topic, rival].map((name) => topicNamed(name)?.title.toLowerCase() ?? name);
	return {
		answer: bareAnswer('needs-input', `Is this about ${titles.join(', or ')}?`, { missing: ['topic'] }),
		request: null,
	};
}

/** Buttons for the readings that are in doubt. */
function choicesOf(reading: Reading): Button[] {
	const [conflict] = reading.conflicts;
	return conflict === undefined
		? []
		: conflict.values.map(({ said }) => ({ action: 'answer', label: said.slice(0, 60), value: said }));
}

function plainValue(value: Given['value']): string | number | boolean | Record<string, unknown>[] {
	return typeof value === 'object' ? [...value] : value;
}

/** The text as typed, without what no database keeps, and at most so much of it. */
function keepable(text: string): string {
	return text.slice(0, 20_000).toWellFormed().replaceAll('\0', '');
}
