/** The answer to an interaction while it is fresh. */

import {
	assumedInputs,
	type FileRoom,
	inLanguage,
	type LoadedReply,
	PART_UNSHOWN,
	type ShownAt,
	type StillOurs,
	TakenOver,
	type Way,
} from '@lugbook/chat';
import {
	type ChatInputCommandInteraction,
	DiscordAPIError,
	type MessageComponentInteraction,
	MessageFlags,
	type ModalSubmitInteraction,
	RESTJSONErrorCodes,
} from 'discord.js';
import { FILE_BYTES_MAX } from './limits.js';
import { asMessage, type Page, pagesOf, textPage } from './render.js';
import { type DiscordPlace, type RestWay, repeatedly, roomFor } from './rest-way.js';

export type Answerable = ChatInputCommandInteraction | MessageComponentInteraction | ModalSubmitInteraction;

/** Of the three seconds the platform gives for the first response, so many are waited for the answer itself [ms]. */
const DEFER_AFTER_MS = 1500;

/**
 * Usually the answer is the first response itself; when it takes longer, the platform is told to wait. Who sees it has
 * to be said by then: a late answer for the asker alone is sent apart, and the notice removed. When the platform does
 * not take the interaction any more, the answer goes into the channel by itself.
 */
export class InteractionWay implements Way {
	readonly room: FileRoom;
	readonly #timer: NodeJS.Timeout;
	#deferred: Promise<unknown> | null = null;
	#isAnswered = false;
	/** the response says how far the work has come, which the library takes for an answer */
	#isInProgress = false;

	constructor(
		private readonly interaction: Answerable,
		private readonly otherwise: RestWay,
		private readonly warn: (error: unknown, what: string) => void,
		deferAfterMs = DEFER_AFTER_MS,
	) {
		this.room = roomFor(interaction.attachmentSizeLimit ?? FILE_BYTES_MAX);
		this.#timer = setTimeout(() => {
			// Whoever answers meets the failure again.
			this.#defer().catch(() => {});
		}, deferAfterMs);
	}

	#defer(): Promise<unknown> {
		clearTimeout(this.#timer);
		this.#deferred ??= this.interaction.deferReply();
		return this.#deferred;
	}

	/** The notice that the bot is thinking says how far it has come. */
	async progress(text: string): Promise<DiscordPlace | null> {
		try {
			await this.#defer();
			const { id } = await this.interaction.editReply(asMessage(textPage(text)));
			this.#isInProgress = true;
			return this.otherwise.progressAt(id);
		} catch (error) {
			if (!isGone(error)) throw error;
			return await this.otherwise.progress(text);
		}
	}

	/** There will be no answer by this way, as when the same delivery is answered already. */
	release(): void {
		clearTimeout(this.#timer);
	}

	async show(reply: LoadedReply, mayBeShown: boolean, stillOurs: StillOurs): Promise<ShownAt> {
		clearTimeout(this.#timer);
		if (mayBeShown) {
			// A notice still on its way would come to stand beside the answer.
			await this.#deferred?.catch(() => undefined);
			return await this.otherwise.show(reply, true, stillOurs);
		}
		const channel = this.interaction.channelId ?? '';
		const [first, ...others] = pagesOf(reply, assumedInputs(reply.answer));
		if (first === undefined) throw new Error('a reply without a word');
		const flags = reply.audience === 'asker' ? MessageFlags.Ephemeral : undefined;
		let message: string | null;
		try {
			message = await this.#first(first, flags);
		} catch (error) {
			if (!isGone(error)) throw error;
			this.warn(error, 'the platform did not take the interaction any more; answered in the channel');
			// An earlier try of the same response may have got through all the same.
			return await this.otherwise.show(reply, true, stillOurs);
		}
		try {
			for (const page of others) {
				await stillOurs();
				await this.interaction.followUp(
					flags === undefined ? asMessage(page) : { ...asMessage(page), flags },
				);
			}
		} catch (error) {
			if (error instanceof TakenOver) throw error;
			this.warn(error, 'part of an answer could not be shown');
			await this.tell(inLanguage(reply.language ?? 'en', PART_UNSHOWN)).catch(() => undefined);
		}
		return { channel, message };
	}

	async tell(text: string): Promise<void> {
		try {
			await this.#first(textPage(text), MessageFlags.Ephemeral);
		} catch (error) {
			if (!isGone(error)) throw error;
			await this.otherwise.tell(text);
		}
	}

	/** @returns the message's id; null where one person alone sees it */
	async #first(page: Page, flags: MessageFlags.Ephemeral | undefined): Promise<string | null> {
		clearTimeout(this.#timer);
		await this.#deferred;
		const { interaction } = this;
		const whole = flags === undefined ? asMessage(page) : { ...asMessage(page), flags };
		if (this.#isAnswered || (interaction.replied && !this.#isInProgress)) {
			const { id } = await interaction.followUp(whole);
			return flags === undefined ? id : null;
		}
		if (interaction.deferred) {
			if (flags === undefined) {
				const { id } = await repeatedly(() => interaction.editReply(asMessage(page)));
				this.#isAnswered = true;
				return id;
			}
			await interaction.followUp(whole);
			await interaction.deleteReply();
			this.#isAnswered = true;
			return null;
		}
		const id = await this.#reply(whole);
		this.#isAnswered = true;
		return flags === undefined ? id : null;
	}

	async #reply(whole: ReturnType<typeof asMessage> & { flags?: MessageFlags.Ephemeral }): Promise<string> {
		try {
			const answer = await repeatedly(() => this.interaction.reply({ ...whole, withResponse: true }));
			const id = answer.resource?.message?.id;
			if (id !== undefined) return id;
		} catch (error) {
			// The desk gives each interaction to one process: an answer that stands there already is an earlier try's.
			const isThere =
				error instanceof DiscordAPIError &&
				error.code === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged;
			if (!isThere) throw error;
		}
		const { id, flags: there } = await repeatedly(() => this.interaction.fetchReply());
		// A notice that the bot is thinking is no answer: another process told the platform to wait.
		if (there.has(MessageFlags.Loading)) {
			const { flags: _, ...page } = whole;
			await repeatedly(() => this.interaction.webhook.editMessage('@original', page));
		}
		return id;
	}
}

/** Three seconds are over, or fifteen minutes. */
function isGone(error: unknown): boolean {
	return (
		error instanceof DiscordAPIError &&
		(error.code === RESTJSONErrorCodes.UnknownInteraction ||
			error.code === RESTJSONErrorCodes.UnknownWebhook ||
			error.code === RESTJSONErrorCodes.InvalidWebhookToken)
	);
}
