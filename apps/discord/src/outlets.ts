/** The two ways a reply gets to where the question stood. */

import type { Reply } from '@lugbook/chat';
import {
	type ChatInputCommandInteraction,
	type Message,
	type MessageComponentInteraction,
	MessageFlags,
	type ModalSubmitInteraction,
} from 'discord.js';
import type { Outlet } from './conversation.js';
import { NO_MENTIONS, pagesOf } from './render.js';

export type Answerable = ChatInputCommandInteraction | MessageComponentInteraction | ModalSubmitInteraction;

/** Of the three seconds the platform gives for the first response, so many are waited for the answer itself [ms]. */
const DEFER_AFTER_MS = 1500;

/**
 * The answer to an interaction. Usually it is the first response itself; when it takes longer, the platform is told to
 * wait. Who sees it has to be said by then: a late answer for the asker alone is sent apart, and the notice removed.
 */
export class InteractionOutlet implements Outlet {
	readonly #timer: NodeJS.Timeout;
	#deferred: Promise<unknown> | null = null;

	constructor(
		private readonly interaction: Answerable,
		deferAfterMs = DEFER_AFTER_MS,
	) {
		this.#timer = setTimeout(() => {
			this.#deferred = interaction.deferReply();
			// Whoever answers meets the failure again.
			this.#deferred.catch(() => {});
		}, deferAfterMs);
	}

	/** There will be no answer by this way, as when the same delivery is answered already. */
	release(): void {
		clearTimeout(this.#timer);
	}

	async show(reply: Reply): Promise<void> {
		const flags = reply.audience === 'asker' ? MessageFlags.Ephemeral : undefined;
		const [first, ...others] = pagesOf(reply);
		if (first !== undefined) await this.#first({ ...first }, flags);
		for (const page of others) {
			await this.interaction.followUp(flags === undefined ? { ...page } : { ...page, flags });
		}
	}

	async fail(text: string): Promise<void> {
		await this.#first({ content: text, allowedMentions: NO_MENTIONS }, MessageFlags.Ephemeral);
	}

	async #first(
		page: { content: string; allowedMentions: typeof NO_MENTIONS },
		flags: MessageFlags.Ephemeral | undefined,
	): Promise<void> {
		clearTimeout(this.#timer);
		await this.#deferred;
		const whole = flags === undefined ? page : { ...page, flags };
		if (this.interaction.replied) await this.interaction.followUp(whole);
		else if (!this.interaction.deferred) await this.interaction.reply(whole);
		else if (flags === undefined) await this.interaction.editReply(page);
		else {
			await this.interaction.followUp(whole);
			await this.interaction.deleteReply();
		}
	}
}

/**
 * The answer to a message, as a reply to it. The nonce is the question's id: when an answer was lost on the way and is
 * sent again, the platform gives back the first message in place of a second.
 */
export class MessageOutlet implements Outlet {
	constructor(private readonly message: Message) {}

	async show(reply: Reply): Promise<void> {
		for (const [at, page] of pagesOf(reply).entries()) {
			await this.message.reply({
				...page,
				failIfNotExists: false,
				nonce: this.#nonce(`${at}`),
				enforceNonce: true,
			});
		}
	}

	async fail(text: string): Promise<void> {
		await this.message.reply({
			content: text,
			allowedMentions: NO_MENTIONS,
			failIfNotExists: false,
			nonce: this.#nonce('f'),
			enforceNonce: true,
		});
	}

	/** 25 characters at most; an id has up to 20. */
	#nonce(part: string): string {
		return `${this.message.id}-${part}`;
	}
}
