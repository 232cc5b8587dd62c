/** How a reply gets to where the question stood. */

import {
	assumedInputs,
	FILE_FOR_ONE,
	type FileRoom,
	fileNotSent,
	inLanguage,
	type Language,
	type LoadedFile,
	type LoadedReply,
	PART_UNSHOWN,
	type ShownAt,
	type StillOurs,
	TakenOver,
	type Way,
} from '@lugbook/chat';
import type { webApi } from '@slack/bolt';
import { z } from 'zod';
import {
	AS_WRITTEN,
	failureOf,
	lookFor,
	marked,
	NEW_AS_WRITTEN,
	PostRefused,
	postOnce,
	refusalOf,
	repeatedly,
	sayAlone,
	wait,
} from './calls.js';
import { ALT_TEXT_CHARACTERS_MAX, FILE_BYTES_MAX, POSTS_PER_RESPONSE_URL_MAX } from './limits.js';
import { asPost, bare, notedAgainIn, type Page, pagesOf, textPage } from './render.js';

/** Where a question stood, as it is noted for whoever shows the answer. */
export const placeSchema = z.object({
	channel: z.string(),
	/** the thread the answer goes into, or null for the channel itself */
	thread: z.string().nullable(),
	user: z.string(),
	/** of a command or a button; it works also where the bot is no member */
	responseUrl: z.string().nullable(),
	/** when that address was given [ms since 1970] */
	sinceMs: z.number(),
	delivery: z.string(),
	/** the message that says how far the work has come and is to become the answer */
	progress: z.string().optional(),
	/** what the response_url shows can be replaced by it: that of a button would replace the message with the button */
	replaceable: z.boolean().optional(),
	/** uses of the response_url so far, where it shows how far the work has come */
	progressUses: z.number().optional(),
});
export type SlackPlace = z.infer<typeof placeSchema>;

/** Direct messages with one person. */
export const isPrivate = (channel: string): boolean => channel.startsWith('D');

/** a response_url works for 30 minutes; the last one is left unused */
const RESPONSE_URL_MS = 29 * 60 * 1000;
/** Of the few uses of a response_url words on the progress take two, the second not soon [ms]. */
const PROGRESS_USES_MAX = 2;
const PROGRESS_BY_URL_EVERY_MS = 20_000;

/** The bot can't write there by itself. */
const NOT_THERE = new Set(['not_in_channel', 'channel_not_found', 'no_permission', 'restricted_action']);

const BLOCKS_REFUSED = new Set(['invalid_blocks', 'msg_blocks_too_long']);

/** The message can't be changed any more, or is gone. */
const NOT_CHANGEABLE = new Set([
	'message_not_found',
	'cant_update_message',
	'edit_window_closed',
	...NOT_THERE,
]);

/** It was not shown, for certain. */
class Refused extends Error {}

const ROOM: FileRoom = {
	fileBytes: FILE_BYTES_MAX,
	allBytes: FILE_BYTES_MAX,
	files: Number.POSITIVE_INFINITY,
};

export class SlackWay implements Way {
	readonly room = ROOM;
	#uses = 0;
	/** the message that says how far the work has come */
	#progress: string | null;
	/** whether that message says what this process said */
	#isProgressOurs = false;
	/** until when the platform wants no more of it [ms of the process] */
	#pauseUntilMs = 0;
	/** whether the bot may write where it was asked */
	#mayPost = true;
	/** whether the response_url shows how far the work has come, and since when [ms of the process] */
	#isProgressByUrl: boolean;
	#progressByUrlMs = Number.NEGATIVE_INFINITY;

	constructor(
		private readonly client: webApi.WebClient,
		private readonly place: SlackPlace,
		private readonly warn: (error: unknown, what: string) => void,
		private readonly nowMs: () => number = Date.now,
	) {
		this.#progress = place.progress ?? null;
		this.#isProgressByUrl = place.progressUses !== undefined;
		this.#uses = place.progressUses ?? 0;
	}

	async progress(text: string): Promise<SlackPlace | null> {
		if (performance.now() < this.#pauseUntilMs) return null;
		if (!this.#mayPost || this.#isProgressByUrl) return await this.#progressByUrl(text);
		const { channel, thread } = this.place;
		const page = asPost(textPage(text));
		try {
			if (this.#progress !== null) {
				await this.client.chat.update({ channel, ts: this.#progress, ...page, ...AS_WRITTEN });
				this.#isProgressOurs = true;
				return null;
			}
			const place = { channel, ...(thread === null ? {} : { thread_ts: thread }) };
			const id = `${this.place.delivery} progress`;
			const blocks = marked(page.blocks, id);
			let ts: string | undefined;
			try {
				({ ts } = await this.client.chat.postMessage({ ...place, ...page, blocks, ...NEW_AS_WRITTEN }));
			} catch (error) {
				if (failureOf(error).kind !== 'unsure') throw error;
				// What stands there already becomes the answer; words on the progress are not worth a second message.
				const found = await lookFor(this.client, { channel, thread, sinceMs: this.place.sinceMs, id });
				if (typeof found !== 'object') throw error;
				ts = found.ts;
			}
			if (typeof ts !== 'string') throw new Error('the platform answered a post without a ts');
			this.#progress = ts;
			this.#isProgressOurs = true;
			return { ...this.place, progress: ts };
		} catch (error) {
			const failure = failureOf(error);
			if (failure.kind === 'busy') {
				this.#pauseUntilMs = performance.now() + failure.pauseS * 1000;
				return null;
			}
			if (!NOT_THERE.has(refusalOf(error) ?? '') || !this.#canRespond()) throw error;
			this.#mayPost = false;
			return await this.#progressByUrl(text);
		}
	}

	/** Where the bot is no member. What can't become the answer is said once, to the asker. */
	async #progressByUrl(text: string): Promise<SlackPlace | null> {
		const isEarly = performance.now() - this.#progressByUrlMs < PROGRESS_BY_URL_EVERY_MS;
		const max = this.place.replaceable === true ? PROGRESS_USES_MAX : 1;
		if (isEarly || this.#uses >= max) return null;
		this.#progressByUrlMs = performance.now();
		const id = `${this.place.delivery} progress`;
		if (this.place.replaceable !== true) {
			await this.#respond(textPage(text), id, 'ephemeral');
			return null;
		}
		await this.#respond(textPage(text), id, this.#isProgressByUrl ? 'replacing' : 'in_channel');
		this.#isProgressByUrl = true;
		this.#isProgressOurs = true;
		return { ...this.place, progressUses: this.#uses };
	}

	async show(reply: LoadedReply, mayBeShown: boolean, stillOurs: StillOurs): Promise<ShownAt> {
		const { channel, thread } = this.place;
		const { language = 'en' } = reply;
		const [first, ...others] = pagesOf(reply, assumedInputs(reply.answer));
		if (first === undefined) throw new Error('a reply without a word');
		if (reply.audience === 'asker' && !this.#isPrivate) {
			await this.#takeBackProgress();
			for (const [at, page] of [first, ...others].entries()) {
				await stillOurs();
				await this.#toAsker(page, `${at}`);
			}
			// A file would be seen by the whole channel.
			if ((reply.files ?? []).length > 0) {
				await this.tell(inLanguage(language, FILE_FOR_ONE), language);
			}
			return { channel, message: null };
		}
		const turned = await this.#asProgress(first, '0');
		const ts = turned?.ts ?? (turned ? null : await this.#toChannel(first, 0, thread, mayBeShown, stillOurs));
		// What is long stands below the answer; the page is there, so what fails now is told and not thrown.
		const below = thread ?? ts;
		try {
			for (const [at, page] of others.entries()) {
				await this.#toChannel(page, at + 1, page.folded ? below : thread, mayBeShown, stillOurs);
			}
			await stillOurs();
			await this.#files(reply.files ?? [], below, language);
		} catch (error) {
			if (error instanceof TakenOver) throw error;
			this.warn(error, 'part of an answer could not be shown');
			await this.tell(inLanguage(language, PART_UNSHOWN), language).catch(() => undefined);
		}
		return { channel, message: ts };
	}

	async tell(text: string, language: Language = 'en'): Promise<void> {
		const page = textPage(text, language);
		if (this.#isProgressOurs && (await this.#asProgress(page, text)) !== null) return;
		// What failed may take the last use of the response_url.
		if (!this.#isPrivate) return await this.#toAsker(page, text, 0);
		const { channel, thread, delivery, sinceMs } = this.place;
		const post = { channel, thread, sinceMs, id: `${delivery} ${text}`, ...page };
		await postOnce(this.client, post, false, notedAgainIn(language));
	}

	/**
	 * Turns the message that says how far the work has come into the page. That may be repeated without harm, so it is
	 * also right where the page may stand there already.
	 * @param part which piece of what is said this is
	 * @returns its ts, which a response_url does not tell; null where there is no message to turn
	 */
	async #asProgress(page: Page, part: string): Promise<{ readonly ts: string | null } | null> {
		if (this.#isProgressByUrl) return (await this.#asProgressByUrl(page, part)) ? { ts: null } : null;
		const ts = this.#progress;
		if (ts === null) return null;
		const { channel, delivery } = this.place;
		const update = async ({ text, blocks }: Page) => {
			await wait(Math.max(0, this.#pauseUntilMs - performance.now()));
			await repeatedly(() =>
				this.client.chat.update({
					...{ channel, ts, text, blocks: marked(blocks, `${delivery} ${part}`) },
					...AS_WRITTEN,
				}),
			);
		};
		this.#progress = null;
		this.#isProgressOurs = false;
		try {
			await update(page);
		} catch (error) {
			const refusal = refusalOf(error) ?? '';
			if (NOT_CHANGEABLE.has(refusal)) return null;
			if (!BLOCKS_REFUSED.has(refusal)) {
				this.#progress = ts;
				throw error;
			}
			this.warn(error, 'the platform refused the blocks; shown as plain text');
			await update(bare(page));
		}
		return { ts };
	}

	/** @returns whether the words on the progress have become the page */
	async #asProgressByUrl(page: Page, part: string): Promise<boolean> {
		if (!this.#canRespond(0)) return false;
		try {
			await this.#respond(page, `${this.place.delivery} ${part}`, 'replacing', 0);
		} catch (error) {
			if (!(error instanceof Refused)) throw error;
			this.warn(error, 'a response_url did not turn words on the progress into the answer');
			return false;
		}
		this.#isProgressByUrl = false;
		this.#isProgressOurs = false;
		return true;
	}

	/** What is for the asker alone does not stand in the channel, nor does how far it has come. */
	async #takeBackProgress(): Promise<void> {
		if (this.#isProgressByUrl) {
			this.#isProgressByUrl = false;
			this.#isProgressOurs = false;
			await this.#send({ delete_original: true }).catch((error: unknown) =>
				this.warn(error, 'the message about the progress could not be removed'),
			);
		}
		const ts = this.#progress;
		if (ts === null) return;
		this.#progress = null;
		this.#isProgressOurs = false;
		await repeatedly(() => this.client.chat.delete({ channel: this.place.channel, ts })).catch((error) =>
			this.warn(error, 'the message about the progress could not be removed'),
		);
	}

	get #isPrivate(): boolean {
		return isPrivate(this.place.channel);
	}

	/** @returns the message's ts; null where it could only be sent by an address that does not tell it */
	async #toChannel(
		page: Page,
		at: number,
		thread: string | null,
		mayBeShown: boolean,
		stillOurs: StillOurs,
	): Promise<string | null> {
		const { channel, delivery, sinceMs } = this.place;
		const { text, blocks } = page;
		const post = { channel, thread, sinceMs, id: `${delivery} ${at}`, text, blocks, stillOurs };
		const again = notedAgainIn(page.language);
		try {
			return await postOnce(this.client, post, mayBeShown, again);
		} catch (error) {
			if (!(error instanceof PostRefused)) throw error;
			const { refusal, mayBePosted } = error;
			if (NOT_THERE.has(refusal) && this.#canRespond()) {
				await this.#respond({ ...page, ...error.post }, post.id, 'in_channel');
				return null;
			}
			// A message the platform refuses for its blocks is shown as its text: better plain than not at all.
			if (!BLOCKS_REFUSED.has(refusal)) throw error;
			this.warn(error, 'the platform refused the blocks; shown as plain text');
			return await postOnce(this.client, { ...post, ...bare(page) }, mayBePosted, again);
		}
	}

	/**
	 * @param part which piece of what is said to the asker this is
	 * @param kept uses of the response_url that are left for others
	 */
	async #toAsker(page: Page, part: string, kept = 1): Promise<void> {
		let body = page;
		const again = notedAgainIn(page.language);
		if (this.#canRespond(kept)) {
			try {
				return await this.#respond(page, `${this.place.delivery} ${part}`, 'ephemeral', kept);
			} catch (error) {
				this.warn(error, 'a response_url did not take an answer');
				if (!(error instanceof Refused)) body = again(page);
			}
		}
		await sayAlone(this.client, this.place, body, again);
	}

	/** @param kept uses that are left for others: one is for saying that something failed */
	#canRespond(kept = 1): boolean {
		const { responseUrl, sinceMs } = this.place;
		return (
			responseUrl !== null &&
			this.nowMs() - sinceMs < RESPONSE_URL_MS &&
			this.#uses < POSTS_PER_RESPONSE_URL_MAX - kept
		);
	}

	/**
	 * Shows a page by the response_url. After a failure that leaves open whether it was shown, one for the channel is
	 * looked for before it is shown again; what replaces another is shown again without harm.
	 * @param kept uses that are left for others
	 * @throws Refused where it was not shown; anything else leaves that open
	 */
	async #respond(
		page: Pick<Page, 'text' | 'blocks' | 'language'>,
		id: string,
		to: 'ephemeral' | 'in_channel' | 'replacing',
		kept = 1,
	): Promise<void> {
		const { channel, thread, sinceMs } = this.place;
		let body = page;
		for (let tries = 0; ; tries += 1) {
			const answer = await this.#send({
				text: body.text,
				blocks: marked(body.blocks, id),
				...NEW_AS_WRITTEN,
				replace_original: to === 'replacing',
				response_type: to === 'ephemeral' ? 'ephemeral' : 'in_channel',
				...(thread === null ? {} : { thread_ts: thread }),
			});
			if (answer.is === 'done') return;
			const isLast = tries >= 2 || !this.#canRespond(kept);
			if (answer.is === 'refused' || (answer.is === 'busy' && isLast)) {
				throw new Refused(`a response_url answered with ${answer.why}`);
			}
			if (isLast) throw new Error(`a response_url answered with ${answer.why}`);
			await wait(answer.pauseS * 1000);
			if (answer.is === 'busy' || to === 'replacing') continue;
			const found =
				to === 'ephemeral' ? 'unknown' : await lookFor(this.client, { channel, thread, sinceMs, id });
			if (typeof found === 'object') return;
			if (found === 'unknown') body = notedAgainIn(page.language)(page);
		}
	}

	/** One use of the response_url, and what became of it. `unsure`: it may be done or not. */
	async #send(
		body: object,
	): Promise<
		| { readonly is: 'done' }
		| { readonly is: 'refused'; readonly why: string }
		| { readonly is: 'busy' | 'unsure'; readonly why: string; readonly pauseS: number }
	> {
		const { responseUrl } = this.place;
		if (responseUrl === null) return { is: 'refused', why: 'nothing: there is none' };
		this.#uses += 1;
		try {
			const answer = await fetch(responseUrl, {
				method: 'POST',
				headers: { 'content-type': 'application/json' },
				redirect: 'error',
				signal: AbortSignal.timeout(10_000),
				body: JSON.stringify(body),
			});
			const text = await answer.text();
			if (answer.ok && !/"ok"\s*:\s*false/.test(text)) return { is: 'done' };
			const why = `status ${answer.status}`;
			const pauseS = Math.min(Number(answer.headers.get('retry-after') ?? 1), 60);
			if (answer.status === 429) return { is: 'busy', why, pauseS };
			return answer.status >= 500 ? { is: 'unsure', why, pauseS } : { is: 'refused', why };
		} catch (error) {
			return { is: 'unsure', why: error instanceof Error ? error.message : String(error), pauseS: 1 };
		}
	}

	async #files(files: readonly LoadedFile[], thread: string | null, language: Language): Promise<void> {
		const { channel } = this.place;
		for (const file of files) {
			const upload = {
				channel_id: channel,
				filename: file.name,
				title: file.name,
				file: Buffer.from(file.bytes),
				alt_text: file.alternativeText.slice(0, ALT_TEXT_CHARACTERS_MAX),
			};
			try {
				await repeatedly(() =>
					this.client.files.uploadV2(thread === null ? upload : { ...upload, thread_ts: thread }),
				);
			} catch (error) {
				if (failureOf(error).kind !== 'refused') throw error;
				this.warn(error, 'a file could not be sent');
				await this.tell(fileNotSent(language, file.name, refusalOf(error) ?? ''), language);
			}
		}
	}
}
