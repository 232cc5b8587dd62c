/**
 * The desk of a bot: from a delivery to what is shown, one path for commands, mentions, private messages, buttons and
 * forms of every platform. A message is noted, answered, kept, shown, and only then struck off; what a process leaves
 * behind, another takes over.
 */

import { randomUUID } from 'node:crypto';
import type { Language } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import { replyOf, reviewedReplyOf } from '../again.js';
import type { Conversation } from '../chat.js';
import { placeOf } from '../memory.js';
import type { CommandName, Mark, Person, Reply } from '../message.js';
import { digestGiven, dueDigests } from '../review/digest.js';
import { asGiven, languageAt, languageOf } from '../tongue.js';
import { withButtons } from './actions.js';
import { Deliveries } from './deliveries.js';
import { type FileRoom, type LoadedReply, loaded } from './files.js';
import { Metrics } from './metrics.js';
import { Notices } from './notice.js';
import { type Held, Outbox } from './outbox.js';
import { defaultPace, type Pace, Paces } from './pace.js';
import { errorFacts, type ProgramLog } from './program-log.js';
import { ProgressNews } from './progress.js';
import {
	FAILED,
	inLanguage,
	keptUnshown,
	NOT_KEPT_UNSHOWN,
	SHARED_ALREADY,
	TOO_FAST,
	TOO_LONG,
} from './words.js';

/** A message as it was delivered. */
export interface Asked {
	readonly shop: string;
	readonly channel: string;
	readonly thread: string | null;
	readonly delivery: string;
	readonly command: CommandName;
	readonly text: string;
	readonly fields?: Readonly<Record<string, string>>;
	readonly build?: string;
	readonly user: { readonly id: string; readonly name?: string; readonly roles?: readonly string[] };
}

/** Where an answer stands. */
export interface ShownAt {
	readonly channel: string;
	/** the platform's id of the message; null where the platform does not tell it */
	readonly message: string | null;
}

/** A message of the platform. */
export interface MessageAt {
	readonly channel: string;
	readonly message: string;
}

/** @throws TakenOver where another process has the message now */
export type StillOurs = () => Promise<void>;

/** Another process took the message over while this one stood still for longer than its lease. */
export class TakenOver extends Error {}

/** How a reply gets to where the question stood. */
export interface Way {
	/** what files go along with a reply */
	readonly room: FileRoom;
	/**
	 * Says how far the work has come, in one message that the next words replace and that `show` turns into the reply.
	 * @returns the place that leads whoever takes over to that message, where it has become another; else null
	 * @throws when the words did not get there, other than for a pause that the platform asks for
	 */
	progress(text: string): Promise<unknown>;
	/**
	 * Shows a reply: one message in the channel, what is long below it or beside it.
	 * @param mayBeShown an earlier try may have got through: look first, where the platform lets us
	 * @param stillOurs asked before each message; what it throws ends the showing and is thrown on
	 * @throws when the message did not get there; what could not go along with it is told, not thrown
	 */
	show(reply: LoadedReply, mayBeShown: boolean, stillOurs: StillOurs): Promise<ShownAt>;
	/**
	 * Says something to the asker alone, where the platform can, and in place of what was said of the progress.
	 * @param language of what it adds itself
	 */
	tell(text: string, language?: Language): Promise<void>;
}

/** What a platform does for the desk. */
export interface Platform {
	readonly name: string;
	person(asked: Asked): Promise<Person>;
	/** the way back to a place that another process noted; null where there is none any more */
	wayBack(asked: Asked, place: unknown): Promise<Way | null>;
	/** a place of the platform for what nobody asked for, as `wayBack` takes it */
	placeIn(channel: string, delivery: string): unknown;
	/**
	 * Shows what became of an earlier answer in its own message: one that stands as the reply says, one that no longer
	 * stands struck through, behind the mark's text.
	 * @param instead the message of the answer that holds in its place, to which the mark links
	 */
	mark(
		at: { readonly shop: string } & MessageAt,
		reply: Reply,
		mark: Pick<Mark, 'text' | 'stands' | 'instead'>,
		instead: MessageAt | null,
	): Promise<void>;
}

export interface DeskOptions {
	readonly chat: Conversation;
	readonly platform: Platform;
	readonly log: ProgramLog;
	readonly pace?: Pace;
	readonly nowMs?: () => number;
	/** how often leases are renewed and left-behind rows are looked for; 0 never [ms] */
	readonly sweepMs?: number;
	/** how long a row is another process's before it is taken over [ms] */
	readonly leaseMs?: number;
	/** how often people hear how far long work has come [ms] */
	readonly progressEveryMs?: number;
}

/** What a person did, in words or by a button. */
type Acted = Pick<Asked, 'command' | 'delivery' | 'shop' | 'channel' | 'thread'> &
	Partial<Pick<Asked, 'text'>>;

/** A reply that stands before the people. */
interface Placed {
	/** the message that everybody in the channel sees, where there is one */
	readonly at: MessageAt | null;
	/** resolves, whatever comes of it, when the place has been written down */
	readonly remembered: Promise<void>;
}

/** How a reply is shown. */
interface Showing {
	readonly way: Way;
	/** an earlier try, here or in another process, may have shown it */
	readonly mayBeShown: boolean;
	readonly stillOurs: StillOurs;
	/** what is said of the progress until then */
	readonly news?: ProgressNews;
}

/** Characters of a message and its fields together that are looked at at all. */
const TEXT_CHARACTERS_MAX = 8000;
const LANGUAGE_CHARACTERS = 1000;
const SWEEP_MS = 3000;
/** how often a bot looks whose daily digest is due [ms] */
const DIGESTS_MS = 60_000;

export class Desk {
	readonly metrics = new Metrics();
	readonly #chat: DeskOptions['chat'];
	readonly #platform: Platform;
	readonly #log: ProgramLog;
	readonly #outbox: Outbox;
	readonly #deliveries = new Deliveries();
	readonly #paces: Paces;
	readonly #notices: Notices;
	readonly #running = new Set<Promise<void>>();
	readonly #held = new Set<Held>();
	#timer: NodeJS.Timeout | null = null;
	#sweeping: Promise<void> | null = null;
	#isClosing = false;
	readonly #nowMs: () => number;
	readonly #progressEveryMs: number | undefined;
	#digestsMs = Number.NEGATIVE_INFINITY;

	constructor(options: DeskOptions) {
		const { chat, platform, log } = options;
		const nowMs = options.nowMs ?? Date.now;
		this.#chat = chat;
		this.#platform = platform;
		this.#nowMs = nowMs;
		this.#log = log;
		this.#progressEveryMs = options.progressEveryMs;
		this.#outbox = new Outbox(chat.log, platform.name, randomUUID(), nowMs, options.leaseMs);
		this.#paces = new Paces(options.pace ?? defaultPace, nowMs);
		this.#notices = new Notices(chat.log, nowMs);
		const sweepMs = options.sweepMs ?? SWEEP_MS;
		if (sweepMs > 0) {
			this.#timer = setInterval(() => void this.sweep(), sweepMs);
			this.#timer.unref();
		}
	}

	get log(): Log {
		return this.#chat.log;
	}

	/**
	 * Takes a message on.
	 * @returns `noted` when it can't get lost any more, `done` when its answer is shown; neither ever rejects
	 */
	receive(
		asked: Asked,
		place: unknown,
		way: Way,
	): { readonly noted: Promise<void>; readonly done: Promise<void> } {
		let note: () => void = () => {};
		const noted = new Promise<void>((resolve) => {
			note = resolve;
		});
		const done = this.#track(asked, this.#take(asked, place, way, note).finally(note));
		return { noted, done };
	}

	/** Does something else that a person asked for, such as opening a form; when it fails, the person is told. */
	attempt(asked: Acted, tell: Way['tell'], work: () => Promise<void>): Promise<void> {
		return this.#track(
			asked,
			work().catch(async (error: unknown) => {
				this.#failed(asked, 'attempt', error);
				await this.tell(asked, { tell }, FAILED);
			}),
		);
	}

	/** What of a form's fields can't be read, by field, while the form is still open. */
	fieldErrors(...form: Parameters<Conversation['fieldErrors']>): ReadonlyMap<string, string> {
		return this.#chat.fieldErrors(...form);
	}

	/** Looks something up without keeping or showing it. */
	async lookUp(
		asked: Pick<Asked, 'shop' | 'channel' | 'command' | 'text' | 'build'> & { readonly language: Language },
	): Promise<Reply> {
		const { name } = this.#platform;
		const person = { id: name, name, lead: false };
		return await this.#chat.handle({
			...asked,
			platform: name,
			thread: null,
			delivery: null,
			person,
			keep: false,
		});
	}

	/** An answer of a shop as it was given, with what became of it since. */
	async answerOf(shop: string, entry: number): Promise<Reply | null> {
		return await reviewedReplyOf(this.#chat.log, shop, entry);
	}

	/** Shows an answer that one person saw to everyone: once, however often and by whomever it is asked for. */
	share(asked: Acted, entry: number, way: Way): Promise<void> {
		const { log } = this.#chat;
		const { shop, delivery } = asked;
		const key = `shared answer ${entry}`;
		return this.attempt(
			asked,
			(text, language) => way.tell(text, language),
			async () => {
				const known = await this.answerOf(shop, entry);
				if (known === null) throw new Error('there is no such answer to share');
				const { reply } = await asGiven(log, shop, entry, { reply: known, words: '', other: null });
				if (!(await log.swapSetting(shop, key, null, delivery))) {
					if ((await log.getSetting(shop, key)) !== delivery) await this.tell(asked, way, SHARED_ALREADY);
					return;
				}
				try {
					const { remembered } = await this.#show(
						shop,
						{ ...reply, audience: 'channel' },
						{ way, mayBeShown: false, stillOurs: async () => {} },
					);
					await remembered;
				} catch (error) {
					await log.setSetting(shop, key, null);
					throw error;
				}
			},
		);
	}

	/** Says a fixed sentence to who did something, in the language of the place. */
	async tell(asked: Acted, way: Pick<Way, 'tell'>, sentence: string): Promise<void> {
		const language = await this.languageFor(asked);
		await way.tell(inLanguage(language, sentence), language);
	}

	/**
	 * The language of what a person is shown before anything is answered, such as a form.
	 * @param entry the answer that it is about, which tells the language; else the place does
	 */
	async languageFor(
		asked: Pick<Acted, 'shop' | 'channel' | 'thread' | 'command' | 'text'>,
		entry: number | null = null,
	): Promise<Language> {
		const { log } = this.#chat;
		if (entry !== null) return await languageOf(log, asked.shop, entry);
		// However long the message is, its beginning tells the language.
		const text = (asked.text ?? '').slice(0, LANGUAGE_CHARACTERS);
		return await languageAt(log, { ...asked, text });
	}

	/** Renews what is held and takes over what was left behind or waits. */
	sweep(): Promise<void> {
		this.#sweeping ??= this.#sweep()
			.catch((error: unknown) => this.#log.warn(errorFacts(error), 'could not look through the outbox'))
			.finally(() => {
				this.#sweeping = null;
			});
		return this.#sweeping;
	}

	/** Answers kept or asked for and not yet shown, of all processes. */
	async waiting(): Promise<number> {
		return await this.#outbox.open();
	}

	/** Whether an answer could be kept right now. */
	async canKeep(): Promise<boolean> {
		await this.#chat.log.getSetting('outbox', 'alive');
		return true;
	}

	/** Resolves when everything taken on has been done. */
	async settled(): Promise<void> {
		while (this.#running.size > 0) await Promise.all(this.#running);
	}

	/** Finishes what is in hand; what takes longer than `patienceMs` is left to the next process. */
	async close(patienceMs: number): Promise<void> {
		this.#isClosing = true;
		if (this.#timer !== null) clearInterval(this.#timer);
		await this.#sweeping;
		let timer: NodeJS.Timeout | undefined;
		const patience = new Promise<void>((resolve) => {
			timer = setTimeout(resolve, patienceMs);
		});
		await Promise.race([this.settled(), patience]);
		clearTimeout(timer);
		for (const held of this.#held) await this.#outbox.waiting(held, null, 0).catch(() => undefined);
	}

	#track(asked: Pick<Asked, 'command' | 'delivery' | 'shop'>, work: Promise<void>): Promise<void> {
		const running = work
			.catch((error: unknown) => this.#failed(asked, 'tell', error))
			.finally(() => this.#running.delete(running));
		this.#running.add(running);
		return running;
	}

	#failed(
		{ command, delivery, shop }: Pick<Asked, 'command' | 'delivery' | 'shop'>,
		stage: string,
		error: unknown,
	): void {
		this.metrics.count('failures_total', { platform: this.#platform.name, stage });
		this.#log.error({ command, delivery, shop, stage, ...errorFacts(error) }, 'failed');
	}

	async #take(asked: Asked, place: unknown, way: Way, note: () => void): Promise<void> {
		const startedMs = performance.now();
		const platform = this.#platform.name;
		const { command, delivery, shop } = asked;
		const id = `${shop} ${delivery}`;
		const before = this.#deliveries.begin(id);
		if (before === 'done') {
			this.metrics.count('repeated_total', { platform });
			this.#log.info({ command, delivery, shop }, 'delivered again, answered already');
			return;
		}
		let isShown = false;
		try {
			const refusal = before === 'new' ? this.#refusal(asked) : null;
			if (refusal !== null) {
				isShown = true;
				if (refusal !== '') await this.tell(asked, way, refusal);
				return;
			}
			this.metrics.count('messages_total', { platform, command });
			let held: Held | null = null;
			try {
				held = await this.#outbox.note(asked, place);
				if (held === null) {
					isShown = true;
					this.metrics.count('repeated_total', { platform });
					this.#log.info({ command, delivery, shop }, 'another process has it');
					return;
				}
			} catch (error) {
				// Without a note the log itself will say that nothing can be kept.
				this.#log.warn({ command, delivery, shop, ...errorFacts(error) }, 'could not note a message');
			}
			this.metrics.time('noted_seconds', { platform }, performance.now() - startedMs);
			note();
			isShown = await this.#answer(asked, way, held, before === 'unshown', startedMs);
		} finally {
			this.#deliveries.end(id, isShown);
		}
	}

	/** Why a message is not looked at; empty where that has been said already. */
	#refusal({ shop, user, text, fields }: Asked): string | null {
		const pace = this.#paces.take(`${shop} ${user.id}`);
		if (pace !== 'go') {
			this.metrics.count('slowed_total', { platform: this.#platform.name });
			return pace === 'tell' ? TOO_FAST : '';
		}
		const characters = Object.values(fields ?? {}).reduce((sum, one) => sum + one.length, text.length);
		return characters > TEXT_CHARACTERS_MAX ? TOO_LONG : null;
	}

	/** @returns whether the answer stands before the people, or the asker knows that there is none */
	async #answer(
		asked: Asked,
		way: Way,
		held: Held | null,
		wasUnshown: boolean,
		startedMs: number,
	): Promise<boolean> {
		const platform = this.#platform.name;
		const { command, delivery, shop } = asked;
		if (held !== null) this.#held.add(held);
		const stillOurs = async () => {
			if (held !== null && !(await this.#outbox.isOurs(held))) throw new TakenOver('another process has it');
		};
		const isLost = async () => held !== null && !(await this.#outbox.isOurs(held).catch(() => true));
		const leftToOther = () => {
			this.metrics.count('repeated_total', { platform });
			this.#log.warn({ command, delivery, shop }, 'another process has taken it over');
			return true;
		};
		const news = new ProgressNews(
			async (text) => {
				await stillOurs();
				const at = await way.progress(text);
				if (held !== null && at !== null) await this.#outbox.moved(held, at);
			},
			(error) =>
				this.#log.warn(
					{ command, delivery, shop, ...errorFacts(error) },
					'could not say how far the work has come',
				),
			this.#progressEveryMs,
		);
		try {
			const mayBeShown = held?.mayBeShown ?? wasUnshown;
			let reply: Reply;
			try {
				const person = await this.#platform.person(asked);
				const { user: _, ...message } = asked;
				reply = await this.#chat.handle({ ...message, platform, person }, news.hear);
			} catch (error) {
				await news.end();
				this.#failed(asked, 'answer', error);
				if (await isLost()) return leftToOther();
				// Asked to ask again, the person must not get a late answer as well.
				if (held !== null) await this.#outbox.shown(held).catch(() => undefined);
				await this.tell(asked, way, FAILED);
				return false;
			}
			let remembered: Promise<void> = Promise.resolve();
			// Answered and shown long ago, when no row is left that says so.
			if (reply.repeated && !mayBeShown && !wasUnshown) {
				this.metrics.count('repeated_total', { platform });
			} else {
				try {
					({ remembered } = await this.#present(asked, reply, { way, mayBeShown, stillOurs, news }));
				} catch (error) {
					await news.end();
					if (error instanceof TakenOver || (await isLost())) return leftToOther();
					this.#failed(asked, 'show', error);
					if (held !== null) {
						// A reply may show the answer of another message: its number is not where this one is kept.
						const kept = await this.#chat.log.byDelivery(shop, delivery).catch(() => null);
						await this.#outbox.waiting(held, kept?.number ?? null).catch(() => undefined);
					}
					if ((held?.tries ?? 0) === 0) {
						const { language = 'en', answer } = reply;
						const text =
							answer.entry === null
								? inLanguage(language, NOT_KEPT_UNSHOWN)
								: keptUnshown(language, answer.entry);
						await way.tell(text, language);
					}
					return false;
				}
			}
			const { status, topic, entry } = reply.answer;
			const struckOff = (error: unknown) => this.#failed(asked, 'strike off', error);
			// Together: where the database has a single writer they are one commit.
			const left = held === null ? Promise.resolve() : this.#outbox.shown(held).catch(struckOff);
			await Promise.all([remembered, left]);
			if (command === 'log' && entry !== null) {
				await this.#outbox.shownOtherwise(shop, entry).catch(struckOff);
			}
			const ms = Math.round(performance.now() - startedMs);
			this.metrics.count('answers_total', { platform, status });
			this.metrics.time('answer_seconds', { platform }, performance.now() - startedMs);
			this.#log.info(
				{ command, delivery, shop, status, topic, entry, repeated: reply.repeated, ms },
				'answered',
			);
			return true;
		} finally {
			await news.end();
			if (held !== null) this.#held.delete(held);
		}
	}

	async #present(asked: Asked, reply: Reply, how: Showing): Promise<Placed> {
		const { shop, channel } = asked;
		const complete = withButtons(reply, asked, await this.#buildOf(shop, reply));
		// It is for everybody in the place: what one person alone sees does not count as having said it.
		const isForAll = reply.audience === 'channel';
		const notice = isForAll
			? await this.#notices.take(shop, channel, reply.language ?? 'en').catch(() => null)
			: null;
		let placed: Placed;
		try {
			placed = await this.#show(
				shop,
				notice === null ? complete : { ...complete, parts: [...complete.parts, notice] },
				how,
			);
		} catch (error) {
			if (notice !== null) await this.#notices.giveBack(shop, channel).catch(() => undefined);
			throw error;
		}
		for (const mark of reply.marks ?? []) await this.#mark(shop, mark, placed.at);
		return placed;
	}

	async #buildOf(shop: string, { build, answer }: Reply): Promise<string | null> {
		if (build !== undefined || answer.entry === null) return build ?? null;
		return (await this.#chat.log.entry(shop, answer.entry))?.build ?? null;
	}

	/** Shows a reply and remembers where it stands, so that a thread or a reply under it goes on with it. */
	async #show(shop: string, reply: Reply, { way, mayBeShown, stillOurs, news }: Showing): Promise<Placed> {
		// Large files are made as they are read: that is the long work.
		const whole = await loaded(reply, way.room);
		await news?.end();
		await stillOurs();
		const { channel, message } = await way.show(whole, mayBeShown, stillOurs);
		if (message === null || reply.audience === 'asker') return { at: null, remembered: Promise.resolve() };
		const { entry } = reply.answer;
		const at = { channel, message };
		if (entry === null) return { at, remembered: Promise.resolve() };
		const remembered = this.#chat
			.shown({ shop, channel, message, entry })
			.catch((error: unknown) =>
				this.#log.warn(errorFacts(error), 'could not remember where an answer stands'),
			);
		return { at, remembered };
	}

	/** @param by the message that says so, as it names the answers that a build was worked out into again */
	async #mark(shop: string, mark: Mark, by: MessageAt | null): Promise<void> {
		const { entry, stands, instead = null } = mark;
		const { log } = this.#chat;
		try {
			const at = await placeOf(log, shop, entry);
			const known = stands ? await this.answerOf(shop, entry) : await replyOf(log, shop, entry);
			if (at === null || known === null) return;
			const next = instead === null ? null : ((await placeOf(log, shop, instead)) ?? by);
			// The message keeps its language, whatever the channel speaks by now.
			const what = { reply: known, words: mark.text, other: instead };
			const { reply, words } = await asGiven(log, shop, entry, what);
			await this.#platform.mark({ shop, ...at }, reply, { ...mark, text: words }, next);
		} catch (error) {
			this.#log.warn({ shop, entry, ...errorFacts(error) }, 'could not mark an earlier answer');
		}
	}

	/** Says what is unsigned where a shop has its daily digest; noted as a question is, so that one process does it. */
	async #digests(): Promise<void> {
		const nowMs = this.#nowMs();
		if (nowMs - this.#digestsMs < DIGESTS_MS) return;
		this.#digestsMs = nowMs;
		const { log } = this.#chat;
		const { name } = this.#platform;
		for (const { shop, channel, day } of await dueDigests(log, name, new Date(nowMs))) {
			const delivery = `digest ${day}`;
			const asked: Asked = {
				...{ shop, channel, thread: null, delivery, command: 'log', text: 'digest now' },
				user: { id: name, name },
			};
			const place = this.#platform.placeIn(channel, delivery);
			const way = await this.#platform.wayBack(asked, place);
			if (way === null) continue;
			await this.receive(asked, place, way).noted;
			await digestGiven(log, { shop, day });
		}
	}

	async #sweep(): Promise<void> {
		await this.#outbox.renew();
		if (this.#isClosing) return;
		await this.#digests();
		const { held: rows, givenUp } = await this.#outbox.due();
		for (const { shop, delivery } of givenUp) {
			this.metrics.count('failures_total', { platform: this.#platform.name, stage: 'give up' });
			this.#log.error({ shop, delivery }, 'an answer was not shown within a day: given up');
		}
		for (const held of rows) {
			const { asked, place } = held;
			const id = `${asked.shop} ${asked.delivery}`;
			this.metrics.count('resumed_total', { platform: this.#platform.name });
			const work = async () => {
				const way = await this.#platform.wayBack(asked, place);
				if (way === null) {
					this.#log.error(
						{ delivery: asked.delivery, shop: asked.shop },
						'there is no way back to where it was asked',
					);
					await this.#outbox.shown(held);
					return;
				}
				const isShown = await this.#answer(asked, way, held, true, performance.now());
				this.#deliveries.end(id, isShown);
			};
			void this.#track(asked, work());
		}
	}
}
