import { type AnyTopic, type Language, topics } from '@lugbook/core';
import { describe, Reader } from '@lugbook/language';
import { type Log, openLog, openLogInThread } from '@lugbook/log';
import { buildExample, buildVerbs } from './build/verbs.js';
import { ask } from './commands/ask.js';
import { logExample, logVerbs } from './commands/log.js';
import { readFields, size } from './commands/size.js';
import { failureAnswer, isLogError } from './failure.js';
import { helpFor } from './help.js';
import { rememberShown, type Shown } from './memory.js';
import type { Incoming, Reply } from './message.js';
import { rephraser } from './render/rephrase.js';
import { listed, replyWith } from './reply.js';
import { verbMeant } from './review/said.js';
import { inTheirTongue, repliedIn, sayingIn, tongueOf, unkept } from './tongue.js';
import { contextOf, type Progress, replay, type ShopDefaults, Turn } from './turn.js';
import { runVerb } from './verb.js';

export interface ChatOptions extends ShopDefaults {
	/** `sqlite:PATH` or `postgres://...` */
	readonly databaseUrl: string;
	/** Hears, in a sentence, why the opening takes its time: another process brings the log up to date. */
	readonly waiting?: ((sentence: string) => void) | undefined;
	/** keeps the log in a thread of its own, so that nothing else waits while it waits for the disk */
	readonly ownThread?: boolean | undefined;
}

/** Opens the log and the conversation over it. */
export async function openChat(options: ChatOptions): Promise<Chat> {
	const { databaseUrl, waiting, ownThread, ...defaults } = options;
	const open = ownThread === true ? openLogInThread : openLog;
	// Search finds the headline of an answer beside what was typed.
	return new Chat(await open(databaseUrl, { searchable: ['answer', 'headline'], waiting }), defaults);
}

/** Once puts the tables together, the second time the engine compiles. */
const PRACTICE_ROUNDS = 2;

/** What a bot needs of the conversation. */
export type Conversation = Pick<Chat, 'handle' | 'shown' | 'log' | 'fieldErrors'>;

/** A conversation with shops, the same on every platform: a message in, a reply out, kept before it leaves. */
export class Chat {
	readonly log: Log;
	readonly #reader = new Reader();
	readonly #defaults: ShopDefaults;

	constructor(log: Log, defaults: ShopDefaults) {
		this.log = log;
		this.#defaults = defaults;
	}

	async close(): Promise<void> {
		await this.log.close();
	}

	/**
	 * Answers the examples of every topic, so that the first questions of people are answered as fast as later ones:
	 * tables of words and places are put together then, and the engine has compiled what runs often. Left to people's
	 * questions a busy bot would acknowledge nothing for seconds. Takes a second or two; nothing is kept.
	 */
	async prepare(): Promise<void> {
		const nowhere = { platform: 'none', shop: 'none', channel: 'none', thread: null, delivery: null };
		const person = { id: 'nobody', name: 'nobody', lead: false };
		const context = contextOf(this.#defaults);
		for (let round = 1; round <= PRACTICE_ROUNDS; round += 1) {
			for (const text of topics.flatMap(({ examples }) => examples)) {
				describe(text, context);
				await this.handle({ ...nowhere, person, command: 'ask', text, keep: false });
			}
		}
	}

	/** Remembers which message of the platform shows an answer: its thread then goes on with that question. */
	async shown(shown: Shown): Promise<void> {
		await rememberShown(this.log, shown);
	}

	/** What of a form's fields can't be read, by field, while the form is still open. Nothing is kept. */
	fieldErrors(
		topic: AnyTopic,
		fields: Readonly<Record<string, string>>,
		language: Language = 'en',
	): ReadonlyMap<string, string> {
		const context = contextOf(this.#defaults);
		const { errors } = readFields(this.#reader, topic, fields, context);
		const told = rephraser({ language, units: context.units });
		return new Map([...errors].map(([field, error]) => [field, told(error)]));
	}

	/**
	 * Answers a message. Every path ends in a reply; what is kept is durable when it resolves.
	 *
	 * @param progress hears how far work that takes its time has come, also while the files of the reply are read
	 */
	async handle(incoming: Incoming, progress?: Progress): Promise<Reply> {
		let told = (text: string) => text;
		const turn = new Turn(this.log, this.#reader, this.#defaults, incoming, (text) => progress?.(told(text)));
		try {
			if (incoming.delivery !== null && incoming.keep !== false) {
				const before = await this.log.byDelivery(incoming.shop, incoming.delivery);
				if (before !== null) return await repliedIn(turn, replay(this.#reader, before), before);
			}
			const tongue = await tongueOf(turn);
			told = sayingIn(turn, tongue);
			return await inTheirTongue(turn, tongue, await this.#reply(turn));
		} catch (error) {
			if (!isLogError(error)) throw error;
			return unkept(turn, replyWith(failureAnswer(error), null, 'asker'));
		}
	}

	async #reply(turn: Turn): Promise<Reply> {
		const { command } = turn.incoming;
		if (/^(?:help|\?|ayuda|hilfe)$/i.test(turn.text)) return listed(helpFor(command), 'asker');
		switch (command) {
			case 'ask':
				return await ask(turn);
			case 'size':
				return await size(turn);
			case 'build':
				return await runVerb(turn, 'build', buildVerbs, buildExample);
			case 'log':
				return await runVerb(turn, 'log', logVerbs, logExample, verbMeant);
		}
	}
}
