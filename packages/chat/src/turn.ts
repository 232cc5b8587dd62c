import type { Context, Region, UnitHabit } from '@lugbook/core';
import type { Reader } from '@lugbook/language';
import type { Entry, Json, Log, NewEntry } from '@lugbook/log';
import { buildOf, exchangeOf, lastQuestion, type Remembered } from './memory.js';
import type { Button, Incoming, Part, Reply } from './message.js';
import { bodyOf, type Worked } from './question.js';
import { audienceOf, listed, replyWith, withExtras } from './reply.js';

export interface ShopDefaults {
	readonly region: Region;
	/** the shop's unit habit; the region's where none is set */
	readonly units?: UnitHabit;
	/** the clock for the time of entries; order never comes from it */
	readonly now?: () => Date;
}

/** Hears how far work that takes its time has come; a platform shows it as one message that is brought up to date. */
export type Progress = (text: string) => void;

/** The shop's rule set and units, where nothing else is said. */
export function contextOf(
	defaults: ShopDefaults,
	{ region: asked, units }: Pick<Incoming, 'region' | 'units'> = {},
): Context {
	const region = asked ?? defaults.region;
	const habit: UnitHabit = region === 'us' ? 'us' : 'metric';
	const usual = asked === undefined ? (defaults.units ?? habit) : habit;
	return { region, units: units ?? usual, language: 'en' };
}

/** One message on its way to a reply: what the commands need to read the log, to keep and to answer. */
export class Turn {
	readonly log: Log;
	readonly reader: Reader;
	readonly incoming: Incoming;
	/** what stands after the command, trimmed */
	readonly text: string;
	readonly #defaults: ShopDefaults;
	readonly #progress: Progress;
	#lastQuestion: Promise<Remembered | null> | null = null;
	/** what was kept last for this message, with its build */
	kept: { readonly worked: Worked; readonly build: string | null } | null = null;

	constructor(log: Log, reader: Reader, defaults: ShopDefaults, incoming: Incoming, progress: Progress) {
		this.#progress = progress;
		this.log = log;
		this.reader = reader;
		this.#defaults = defaults;
		this.incoming = incoming;
		this.text = incoming.text.trim();
	}

	/** Says how far work that takes its time has come. */
	progress(text: string): void {
		this.#progress(text);
	}

	/** The day by the clock of entries, "2026-05-04". */
	today(): string {
		return (this.#defaults.now?.() ?? new Date()).toISOString().slice(0, 10);
	}

	/** The build this message is about: the one it names, or the one its channel works on. */
	async build(): Promise<string | null> {
		const { build, keep, shop, channel } = this.incoming;
		if (build !== undefined) return build;
		return keep === false ? null : await buildOf(this.log, shop, channel);
	}

	/** The question that this message may go on with. Nothing that the message itself brings about changes it. */
	lastQuestion(): Promise<Remembered | null> {
		const { shop, channel, thread, person } = this.incoming;
		this.#lastQuestion ??= lastQuestion(this.log, { shop, channel, thread, personId: person.id });
		return this.#lastQuestion;
	}

	/** Rule set and units before the message itself has said anything of them. */
	context(): Context {
		return contextOf(this.#defaults, this.incoming);
	}

	/** The clock, for what people say of days. */
	now(): Date {
		return this.#defaults.now?.() ?? new Date();
	}

	/** The parts of an entry that come from the message. */
	entry(build: string | null): Omit<NewEntry, 'kind' | 'topic' | 'follows' | 'state' | 'body'> {
		const { incoming } = this;
		return {
			shop: incoming.shop,
			delivery: incoming.delivery,
			platform: incoming.platform,
			channel: incoming.channel,
			thread: incoming.thread,
			build,
			personId: incoming.person.id,
			personName: incoming.person.name,
			text: keepable(incoming.text),
			at: this.now().toISOString(),
			replaces: null,
		};
	}

	/** Makes an exchange durable, then lets the reply go. */
	async keep(
		build: string | null,
		worked: Worked,
		more: {
			readonly follows?: number | null;
			readonly replaces?: number | null;
			/** where one message makes several entries, each has a delivery of its own */
			readonly delivery?: string | null;
			readonly parts?: readonly Part[];
			readonly choices?: readonly Button[];
		} = {},
	): Promise<Reply> {
		const { follows = null, replaces = null, parts = [], choices = [] } = more;
		const audience = audienceOf(worked.answer);
		this.kept = { worked, build };
		if (this.incoming.keep === false) {
			return withExtras(replyWith(worked.answer, build, audience), parts, choices);
		}
		const { entry, repeated } = await this.log.append({
			...this.entry(build),
			kind: 'exchange',
			topic: worked.answer.topic,
			follows,
			replaces,
			...(more.delivery === undefined ? {} : { delivery: more.delivery }),
			state: worked.answer.status,
			body: JSON.parse(JSON.stringify(bodyOf(worked))) as Json,
		});
		// Another process was faster with the same delivery: its answer stands.
		if (repeated) return replay(this.reader, entry);
		return withExtras(replyWith({ ...worked.answer, entry: entry.number }, build, audience), parts, choices);
	}
}

/** The reply to a delivery that was answered before, from its entry. */
export function replay(reader: Reader, entry: Entry): Reply {
	const exchange = exchangeOf(entry);
	if (exchange === null) {
		return { ...listed(`Done already, as No. ${entry.number}.`, 'asker'), repeated: true };
	}
	const { request, answer } = exchange;
	const unread =
		entry.erased || request === null
			? []
			: reader.read(entry.text, { context: request.context, topic: request.topic }).unread;
	const kept = { ...answer, unread: [...unread], entry: entry.number };
	return { ...replyWith(kept, entry.build, audienceOf(kept)), repeated: true };
}

/** The text as typed, without what no database keeps, and at most so much of it. */
function keepable(text: string): string {
	return text.slice(0, 20_000).toWellFormed().replaceAll('\0', '');
}
