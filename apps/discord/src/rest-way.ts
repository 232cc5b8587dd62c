/**
 * The way to a place by the platform's REST API alone: answers to messages, and whatever another process noted. Every
 * message carries a nonce made of the question's id: when an answer was lost on the way and is sent again, the platform
 * gives back the first message in place of a second, for some minutes. After that the bot looks for it in the channel.
 */

import {
	assumedInputs,
	type FileRoom,
	inLanguage,
	type Language,
	type LoadedReply,
	SENT_AGAIN,
	type ShownAt,
	type StillOurs,
	type Way,
} from '@lugbook/chat';
import { DiscordAPIError, MessageFlags, type REST, Routes, SnowflakeUtil } from 'discord.js';
import { z } from 'zod';
import { CONTENT_CHARACTERS_MAX, FILE_BYTES_MAX, FILES_MAX, REQUEST_BYTES_MAX } from './limits.js';
import { asBody, type Page, pagesOf, textPage } from './render.js';

/** Where a question stood, as it is noted for whoever shows the answer. */
export const placeSchema = z.object({
	/** the channel or thread itself */
	channel: z.string(),
	/** the message that is answered, or null */
	message: z.string().nullable(),
	/** of a command, a button or a form; its token opens nothing after 15 minutes */
	interaction: z.object({ applicationId: z.string(), token: z.string() }).nullable(),
	user: z.string(),
	/** when it was asked [ms since 1970] */
	sinceMs: z.number(),
	delivery: z.string(),
	/** the message that says how far the work has come and is to become the answer */
	progress: z.string().optional(),
});
export type DiscordPlace = z.infer<typeof placeSchema>;

const TOKEN_MS = 15 * 60 * 1000;
/** the platform knows a nonce for "the past few minutes" (resources/message.mdx); we trust it this long [ms] */
const NONCE_MS = 2 * 60 * 1000;
/** messages after the question that are looked through: on a page the most the platform gives at once */
const LOOKED_THROUGH = 100;
const PAGES_LOOKED_THROUGH_MAX = 5;
/** more than the bot's clock is from the platform's [ms] */
const CLOCKS_APART_MS = 60 * 60 * 1000;
/** the message is not there, or the bot may not change it */
const GONE_STATUS = new Set([403, 404]);
const REFUSED_STATUS = new Set([400, ...GONE_STATUS]);
const TRIES = 3;
const FIRST_WAIT_MS = 300;

interface Sent {
	readonly id: string;
	readonly flags?: number;
	readonly content?: string;
	readonly author?: { readonly id: string };
	readonly interaction_metadata?: { readonly id?: string };
	readonly message_reference?: { readonly message_id?: string };
}

/**
 * A call that may be repeated without harm. The library waits out 429 and repeats after 5xx by itself; connections that
 * are cut and answers that can't be read are left to its caller.
 */
export async function repeatedly<T>(call: () => Promise<T>): Promise<T> {
	for (let tries = 1; ; tries += 1) {
		try {
			return await call();
		} catch (error) {
			if (error instanceof DiscordAPIError || tries >= TRIES) throw error;
			await new Promise((resolve) => setTimeout(resolve, FIRST_WAIT_MS * 2 ** tries));
		}
	}
}

/**
 * What goes along with an answer; one place more is kept for the answer itself as a file.
 * @param fileBytes the size limit of the place it is shown in [bytes]
 */
export const roomFor = (fileBytes: number): FileRoom => ({
	fileBytes,
	allBytes: REQUEST_BYTES_MAX,
	files: FILES_MAX - 1,
});

export class RestWay implements Way {
	readonly room = roomFor(FILE_BYTES_MAX);
	/** the message that says how far the work has come */
	#progress: string | null;
	/** whether that message says what this process said */
	#isProgressOurs = false;

	constructor(
		private readonly rest: REST,
		private readonly place: DiscordPlace,
		private readonly botId: () => string | undefined,
		private readonly nowMs: () => number,
	) {
		this.#progress = place.progress ?? null;
	}

	async progress(text: string): Promise<DiscordPlace | null> {
		const page = textPage(text);
		if (this.#progress !== null) {
			await this.#edit(this.#progress, page);
			this.#isProgressOurs = true;
			return null;
		}
		const { id } = await this.#send(this.place.channel, page, 'w');
		return this.progressAt(id);
	}

	/** @returns the place of which the message says how far the work has come; null where that is known already */
	progressAt(message: string): DiscordPlace | null {
		this.#isProgressOurs = true;
		if (this.#progress === message) return null;
		this.#progress = message;
		return { ...this.place, progress: message };
	}

	async show(reply: LoadedReply, mayBeShown: boolean, stillOurs: StillOurs): Promise<ShownAt> {
		const { channel, interaction, sinceMs } = this.place;
		const pages = pagesOf(reply, assumedInputs(reply.answer));
		if (interaction !== null && reply.audience === 'asker') await this.#takeBackProgress();
		const inProgress = await this.#asProgress(pages[0]);
		if (interaction !== null && inProgress === null && mayBeShown && this.#isTokenFresh) {
			const answered = await this.#answered(interaction, reply, pages);
			if (answered !== null) return { channel, message: answered };
		}
		const [first, ...others] = pages;
		if (first === undefined) throw new Error('a reply without a word');
		const isNonceOver = mayBeShown && this.nowMs() - sinceMs > NONCE_MS;
		const isTokenOver = interaction !== null && mayBeShown && !this.#isTokenFresh;
		const isInPrivate = interaction !== null && reply.audience === 'asker';
		const there = (isInPrivate ? isTokenOver : isNonceOver) ? await this.#thereAlready(channel) : [];
		const response = isTokenOver ? there?.find((one) => this.#isResponse(one)) : undefined;
		if (isInPrivate) {
			if (response !== undefined && isLoading(response)) await this.#remove(response.id);
			return await this.#inPrivate(pages);
		}
		const sent = async (page: Page, part: string) => {
			const found = there?.find((one) => isSame(one, page));
			return (
				found ?? (await this.#send(channel, there === null ? notedAgain(page, reply.language) : page, part))
			);
		};
		const standing = response ?? this.#replyAmong(there ?? [], first);
		const turned = inProgress === null && standing !== undefined ? await this.#turned(standing, first) : null;
		const { id } = inProgress ?? turned ?? (await sent(first, '0'));
		for (const [at, page] of others.entries()) {
			await stillOurs();
			await sent(page, `${at + 1}`);
		}
		return { channel, message: id };
	}

	async tell(text: string): Promise<void> {
		if (this.#isProgressOurs && (await this.#asProgress(textPage(text))) !== null) return;
		// What is said to the asker of a command alone can be said in private only, once its token is gone.
		if (this.place.interaction !== null) await this.#inPrivate([textPage(text)]);
		else await this.#send(this.place.channel, textPage(text), 'f');
	}

	get #isTokenFresh(): boolean {
		return this.nowMs() - this.place.sinceMs < TOKEN_MS;
	}

	/**
	 * Turns the message that says how far the work has come into the page. That may be repeated without harm, so it is
	 * also right where the page may stand there already.
	 * @returns null where there is none to turn
	 */
	async #asProgress(page: Page | undefined): Promise<Pick<Sent, 'id'> | null> {
		const id = this.#progress;
		if (id === null || page === undefined) return null;
		try {
			await this.#edit(id, page);
		} catch (error) {
			if (!(error instanceof DiscordAPIError) || !GONE_STATUS.has(error.status)) throw error;
			return null;
		} finally {
			this.#progress = null;
			this.#isProgressOurs = false;
		}
		return { id };
	}

	/** What is for the asker alone does not stand in the channel, nor does how far it has come. */
	async #takeBackProgress(): Promise<void> {
		const id = this.#progress;
		if (id === null) return;
		this.#progress = null;
		this.#isProgressOurs = false;
		await this.#remove(id);
	}

	async #remove(id: string): Promise<void> {
		try {
			await repeatedly(() => this.rest.delete(Routes.channelMessage(this.place.channel, id)));
		} catch (error) {
			if (!isRefused(error)) throw error;
		}
	}

	/**
	 * The message that replies to the question: the answer, which may read a little otherwise when it is worked out again,
	 * or else what was said when it could not be shown, of which it is to take the place.
	 */
	#replyAmong(there: readonly Sent[], page: Page): Sent | undefined {
		const { message } = this.place;
		const replies = there.filter(
			({ message_reference: at }) => message !== null && at?.message_id === message,
		);
		const headline = page.content.split('\n', 1)[0];
		return (
			replies.find((one) => isSame(one, page)) ??
			replies.find(({ content = '' }) => content.split('\n', 1)[0] === headline) ??
			replies[0]
		);
	}

	/** Whether a message is the response to the interaction: what was said to the asker alone is in no history. */
	#isResponse({ interaction_metadata: by }: Sent): boolean {
		return by?.id === this.place.delivery;
	}

	/**
	 * Turns a message of the bot into the page, such as the response to an interaction whose token opens nothing any more:
	 * a bot may edit and delete its own messages (resources/message.mdx, "Edit Message"). That this holds for the notice
	 * that it is thinking is from memory: where the platform refuses, the notice goes, if it may go.
	 * @returns null where the page does not stand there
	 */
	async #turned(standing: Sent, page: Page): Promise<Pick<Sent, 'id'> | null> {
		const { id } = standing;
		if (isSame(standing, page)) return { id };
		try {
			await repeatedly(() => this.rest.patch(Routes.channelMessage(this.place.channel, id), asBody(page)));
			return { id };
		} catch (error) {
			if (!isRefused(error)) throw error;
			if (isLoading(standing)) await this.#remove(id);
			return null;
		}
	}

	/** Changes a message of the bot. The answer to a command can be reached by its token where the bot may not be. */
	async #edit(id: string, page: Page): Promise<void> {
		const { channel, interaction } = this.place;
		try {
			await repeatedly(() => this.rest.patch(Routes.channelMessage(channel, id), asBody(page)));
		} catch (error) {
			const isClosed = error instanceof DiscordAPIError && GONE_STATUS.has(error.status);
			if (!isClosed || interaction === null || !this.#isTokenFresh) throw error;
			const { applicationId, token } = interaction;
			const route = Routes.webhookMessage(applicationId, token);
			await repeatedly(() => this.rest.patch(route, { ...asBody(page), auth: false }));
		}
	}

	/**
	 * The bot's messages after the question, oldest first; null where it may not look, or not at all of them.
	 * @throws when it can't be told for now: that is not to be taken for messages that are not there
	 */
	async #thereAlready(channel: string): Promise<Sent[] | null> {
		const { delivery, sinceMs } = this.place;
		const own: Sent[] = [];
		// What nobody asked for has no id of the platform.
		let after = /^\d+$/.test(delivery)
			? delivery
			: String(SnowflakeUtil.generate({ timestamp: sinceMs - CLOCKS_APART_MS }));
		for (let page = 1; page <= PAGES_LOOKED_THROUGH_MAX; page += 1) {
			const query = new URLSearchParams({ after, limit: String(LOOKED_THROUGH) });
			let found: Sent[];
			try {
				found = (await repeatedly(() => this.rest.get(Routes.channelMessages(channel), { query }))) as Sent[];
			} catch (error) {
				if (error instanceof DiscordAPIError && GONE_STATUS.has(error.status)) return null;
				throw error;
			}
			// The newest comes first.
			own.push(...found.filter(({ author }) => author?.id === this.botId()).reverse());
			const [newest] = found;
			if (newest === undefined || found.length < LOOKED_THROUGH) return own;
			after = newest.id;
		}
		return null;
	}

	/** What stands as the answer to an interaction already, or may still be put there; null where there is none. */
	async #answered(
		{ applicationId, token }: NonNullable<DiscordPlace['interaction']>,
		reply: LoadedReply,
		[first]: readonly Page[],
	): Promise<string | null> {
		let original: Sent;
		try {
			original = (await repeatedly(() =>
				this.rest.get(Routes.webhookMessage(applicationId, token), { auth: false }),
			)) as Sent;
		} catch (error) {
			if (error instanceof DiscordAPIError && error.status === 404) return null;
			throw error;
		}
		const has = (flag: MessageFlags) => ((original.flags ?? 0) & flag) !== 0;
		// What was said to the asker alone when the answer could not be shown is not the answer.
		const isAnswer = reply.audience === 'asker' && original.content === first?.content;
		if (has(MessageFlags.Ephemeral) && !isLoading(original) && !isAnswer) return null;
		const isWaiting = isLoading(original);
		if (!isWaiting || first === undefined) return original.id;
		// A deferred answer can't be made private any more: then the notice goes, and the asker hears it in private.
		if (reply.audience === 'asker') {
			await this.rest.delete(Routes.webhookMessage(applicationId, token), { auth: false });
			return null;
		}
		await repeatedly(() =>
			this.rest.patch(Routes.webhookMessage(applicationId, token), { ...asBody(first), auth: false }),
		);
		return original.id;
	}

	async #inPrivate(pages: readonly Page[]): Promise<ShownAt> {
		const { user } = this.place;
		const opened = (await repeatedly(() =>
			this.rest.post(Routes.userChannels(), { body: { recipient_id: user } }),
		)) as Sent;
		for (const [at, page] of pages.entries()) await this.#send(opened.id, page, `p${at}`, false);
		return { channel: opened.id, message: null };
	}

	/** @param part which message of the answer; with the question's id at most 25 characters */
	async #send(channel: string, page: Page, part: string, isReply = true): Promise<Sent> {
		const { message, delivery } = this.place;
		const { body, files } = asBody(page);
		const whole = {
			...body,
			nonce: `${delivery}-${part}`,
			enforce_nonce: true,
			...(message === null || !isReply
				? {}
				: { message_reference: { message_id: message, fail_if_not_exists: false } }),
		};
		return (await repeatedly(() =>
			this.rest.post(Routes.channelMessages(channel), { body: whole, files }),
		)) as Sent;
	}
}

/**
 * Whether a message shows a page. One of the two may have a line more, which says once in a place what is kept there.
 */
function isSame({ content = '' }: Sent, page: Page): boolean {
	const [shorter = [], longer = []] = [content.split('\n'), page.content.split('\n')].toSorted(
		(a, b) => a.length - b.length,
	);
	const at = longer.findIndex((line, index) => line !== shorter[index]);
	if (at < 0) return true;
	return longer.length === shorter.length + 1 && longer.toSpliced(at, 1).join('\n') === shorter.join('\n');
}

/** The bot is thinking. */
function isLoading({ flags }: Sent): boolean {
	return ((flags ?? 0) & MessageFlags.Loading) !== 0;
}

/** The platform won't do it, now or later. */
function isRefused(error: unknown): boolean {
	return error instanceof DiscordAPIError && REFUSED_STATUS.has(error.status);
}

/** A page that may stand there already, saying so. */
function notedAgain(page: Page, language: Language = 'en'): Page {
	const content = `${page.content}\n-# ${inLanguage(language, SENT_AGAIN)}`;
	return content.length > CONTENT_CHARACTERS_MAX ? page : { ...page, content };
}
