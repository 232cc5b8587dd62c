/** Calls of the platform's Web API that go on through its pauses and its failures, without doing anything twice. */

import { createHash } from 'node:crypto';
import type { types, webApi } from '@slack/bolt';

/** beside the first [times] */
const TRIES_AGAIN = 3;
const FIRST_WAIT_MS = 400;
/** pauses longer than this are left to the outbox [s] */
const PAUSE_MAX_S = 120;
/** messages on a page, and pages, that are looked through for one that may have been posted already */
const LOOKED_THROUGH = 200;
const PAGES_LOOKED_THROUGH_MAX = 5;
/** how far before the question they begin: the platform's clock is not the bot's [s] */
const LOOKED_BACK_S = 3600;
const METADATA_EVENT = 'lugbook_answer';
const BLOCK_ID = 'lugbook-answer-';

/**
 * Nothing becomes a link or a mention that is not one of the blocks. Said on posts and edits alike: an edit that does not
 * say it is read by other rules than a post (docs.slack.dev/reference/methods/chat.update).
 */
export const AS_WRITTEN = { parse: 'none', link_names: false } as const;
/** The same of a new message, which opens no page of somebody else's either. */
export const NEW_AS_WRITTEN = { ...AS_WRITTEN, unfurl_links: false, unfurl_media: false } as const;

/** What became of a call that failed. */
type Failure =
	| { readonly kind: 'busy'; readonly pauseS: number }
	/** it may have been done or not */
	| { readonly kind: 'unsure' }
	/** it was not done, and will not be by trying again */
	| { readonly kind: 'refused' };

export function failureOf(error: unknown): Failure {
	const { code, retryAfter, original } = error as {
		code?: unknown;
		retryAfter?: unknown;
		original?: { cause?: { code?: unknown }; code?: unknown };
	};
	if (code === 'slack_webapi_rate_limited_error') return { kind: 'busy', pauseS: Number(retryAfter) };
	if (code === 'slack_webapi_platform_error') {
		return { kind: MAY_BE_DONE.test(refusalOf(error) ?? '') ? 'unsure' : 'refused' };
	}
	const cause = original?.cause?.code ?? original?.code;
	// Nobody listened: nothing can have been done, and a moment later somebody may listen.
	if (cause === 'ECONNREFUSED') return { kind: 'busy', pauseS: 1 };
	return { kind: 'unsure' };
}

/**
 * The platform's own troubles, of which its reference of methods says that part of what was asked may have been done;
 * and what is no name of a refusal at all, as the library makes of an answer that it can't read.
 */
const MAY_BE_DONE = /^(?:internal_error|fatal_error|service_unavailable|request_timeout)$|[^a-z0-9_:]|^$/;

/** The name of the platform's refusal, such as not_in_channel. */
export function refusalOf(error: unknown): string | null {
	const refusal = (error as { data?: { error?: unknown } }).data?.error;
	return typeof refusal === 'string' ? refusal : null;
}

export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** A call that may be repeated without harm. */
export async function repeatedly<T>(call: () => Promise<T>): Promise<T> {
	for (let tries = 0, pauses = 0; ; ) {
		try {
			return await call();
		} catch (error) {
			const failure = failureOf(error);
			if (failure.kind === 'refused') throw error;
			if (failure.kind === 'busy' && pauses < 10 && failure.pauseS <= PAUSE_MAX_S) {
				pauses += 1;
				await wait(failure.pauseS * 1000);
			} else if (tries < TRIES_AGAIN) {
				tries += 1;
				await wait(FIRST_WAIT_MS * 2 ** tries);
			} else throw error;
		}
	}
}

export interface Post {
	readonly channel: string;
	readonly thread: string | null;
	/** what is posted, the same for each try: the delivery and the number of the page */
	readonly id: string;
	readonly text: string;
	readonly blocks: types.KnownBlock[];
	/** when the question was asked: it can't stand before it [ms since 1970] */
	readonly sinceMs: number;
	/** asked before each try; ends it by what it throws */
	readonly stillOurs?: () => Promise<void>;
}

/** The platform refused a post, for certain. */
export class PostRefused extends Error {
	/**
	 * @param post what is to be shown by another way: it says that it may be there twice, where a try before the refusal
	 * may have got through and can't be looked for
	 * @param mayBePosted a try before the refusal may have got through
	 */
	constructor(
		readonly refusal: string,
		readonly post: Post,
		readonly mayBePosted: boolean,
		cause: unknown,
	) {
		super(`a post was refused: ${refusal}`, { cause });
	}
}

/**
 * Posts a message once. After a failure that leaves open whether it was posted, it is looked for by its mark before it
 * is posted again; where the app's scopes don't let it look, `again` says so in the message. Once it is posted, it is
 * looked for again where another may stand beside it: one that was late, or that of a process which took the message
 * over. The oldest stays.
 * @returns its ts
 * @throws PostRefused; anything else leaves open whether it is posted
 */
export async function postOnce(
	client: webApi.WebClient,
	post: Post,
	mayBePosted: boolean,
	again: (post: Post) => Post,
): Promise<string> {
	const place = { channel: post.channel, ...(post.thread === null ? {} : { thread_ts: post.thread }) };
	const metadata = { event_type: METADATA_EVENT, event_payload: { id: nameOf(post.id) } };
	let isUnsure = mayBePosted;
	let body = post;
	for (let tries = 0; ; ) {
		if (isUnsure) {
			const found = await lookFor(client, post);
			if (typeof found === 'object') return found.ts;
			if (found === 'unknown') body = again(post);
		}
		await post.stillOurs?.();
		try {
			const answer = await repeatedlyWhileBusy(() =>
				client.chat.postMessage({
					...place,
					text: body.text,
					blocks: marked(body.blocks, post.id),
					metadata,
					...NEW_AS_WRITTEN,
				}),
			);
			if (typeof answer.ts !== 'string') throw new Error('the platform answered a post without a ts');
			const isAlone = !isUnsure && (await (post.stillOurs?.() ?? Promise.resolve()).then(yes, no));
			return isAlone ? answer.ts : await oldestOf(client, post, answer.ts);
		} catch (error) {
			const { kind } = failureOf(error);
			if (kind === 'refused') throw new PostRefused(refusalOf(error) ?? '', body, isUnsure, error);
			if (kind !== 'unsure' || tries >= TRIES_AGAIN) throw error;
			tries += 1;
			isUnsure = true;
			await wait(FIRST_WAIT_MS * 2 ** tries);
		}
	}
}

async function repeatedlyWhileBusy<T>(call: () => Promise<T>): Promise<T> {
	for (let pauses = 0; ; pauses += 1) {
		try {
			return await call();
		} catch (error) {
			const failure = failureOf(error);
			if (failure.kind !== 'busy' || pauses >= 10 || failure.pauseS > PAUSE_MAX_S) throw error;
			await wait(failure.pauseS * 1000);
		}
	}
}

/** Says something to one person, which can't be looked for: said again where it is open whether it was said. */
export async function sayAlone(
	client: webApi.WebClient,
	place: { readonly channel: string; readonly user: string; readonly thread: string | null },
	page: Pick<Post, 'text' | 'blocks'>,
	again: (page: Pick<Post, 'text' | 'blocks'>) => Pick<Post, 'text' | 'blocks'>,
): Promise<void> {
	const { channel, user, thread } = place;
	const where = { channel, user, ...(thread === null ? {} : { thread_ts: thread }) };
	let body = page;
	for (let tries = 0; ; ) {
		try {
			const { text, blocks } = body;
			await repeatedlyWhileBusy(() => client.chat.postEphemeral({ ...where, text, blocks, ...AS_WRITTEN }));
			return;
		} catch (error) {
			if (failureOf(error).kind !== 'unsure' || tries >= TRIES_AGAIN) throw error;
			tries += 1;
			body = again(page);
			await wait(FIRST_WAIT_MS * 2 ** tries);
		}
	}
}

/**
 * The blocks with a mark by which the message is found again. Metadata say the same, but a response_url does not take
 * them.
 */
export function marked(blocks: types.KnownBlock[], id: string): types.KnownBlock[] {
	const [first, ...others] = blocks;
	return first === undefined ? [] : [{ ...first, block_id: BLOCK_ID + nameOf(id) }, ...others];
}

/** Marks are seen by every app of the workspace: they hold a hash and no id of a person or a message. */
function nameOf(id: string): string {
	return createHash('sha256').update(id).digest('hex').slice(0, 32);
}

const yes = () => true;
const no = () => false;

/** `unknown` where the bot may not look, or not at all of it. */
type Found = { readonly ts: string } | 'absent' | 'unknown';

/** The bot may not look there. Anything else that hinders it passes. */
const MAY_NOT_LOOK = new Set([
	'missing_scope',
	'no_permission',
	'not_allowed_token_type',
	'not_in_channel',
	'channel_not_found',
	'thread_not_found',
]);

/** A place where a message may stand. */
type Looked = Pick<Post, 'channel' | 'thread' | 'id' | 'sinceMs'>;

/** @throws when it can't be told for now: that is not to be taken for a message that is not there */
export async function lookFor(client: webApi.WebClient, looked: Looked): Promise<Found> {
	const found = await allOf(client, looked);
	if (found === null) return 'unknown';
	const [oldest] = found.marked;
	return oldest === undefined ? (found.isAll ? 'absent' : 'unknown') : { ts: oldest };
}

/**
 * Of several messages with one mark the oldest stays. Whoever looks says the same of it, so that two processes never
 * take away both.
 * @param own the message just posted
 */
async function oldestOf(client: webApi.WebClient, looked: Looked, own: string): Promise<string> {
	try {
		const found = await allOf(client, looked);
		const [oldest = own, ...others] = found?.marked ?? [];
		const { channel } = looked;
		for (const ts of others) await repeatedly(() => client.chat.delete({ channel, ts }));
		return oldest;
	} catch {
		// It is posted; that another stands beside it could not be looked at or mended.
		return own;
	}
}

/**
 * The messages with the mark, oldest first, and whether all were looked through; null where the bot may not look.
 */
async function allOf(
	client: webApi.WebClient,
	{ channel, thread, id, sinceMs }: Looked,
): Promise<{ readonly marked: readonly string[]; readonly isAll: boolean } | null> {
	const question = {
		channel,
		limit: LOOKED_THROUGH,
		include_all_metadata: true,
		oldest: String(Math.max(0, Math.floor(sinceMs / 1000) - LOOKED_BACK_S)),
	} as const;
	const marked: string[] = [];
	let cursor = '';
	for (let page = 1; ; page += 1) {
		const at = cursor === '' ? question : { ...question, cursor };
		const ask = () =>
			thread === null
				? client.conversations.history(at)
				: client.conversations.replies({ ...at, ts: thread });
		let answer: Awaited<ReturnType<typeof ask>>;
		try {
			answer = await repeatedly(ask);
		} catch (error) {
			if (MAY_NOT_LOOK.has(refusalOf(error) ?? '')) return null;
			throw error;
		}
		for (const message of answer.messages ?? []) {
			if (message.ts !== undefined && hasMark(message, id)) marked.push(message.ts);
		}
		cursor = answer.response_metadata?.next_cursor ?? '';
		const isAll = cursor === '' && answer.has_more !== true;
		if (isAll || cursor === '' || page >= PAGES_LOOKED_THROUGH_MAX)
			return { marked: marked.toSorted(), isAll };
	}
}

function hasMark(message: object, id: string): boolean {
	const { metadata, blocks } = message as {
		metadata?: { event_type?: string; event_payload?: { id?: unknown } };
		blocks?: { block_id?: unknown }[];
	};
	return (
		blocks?.[0]?.block_id === BLOCK_ID + nameOf(id) ||
		(metadata?.event_type === METADATA_EVENT && metadata.event_payload?.id === nameOf(id))
	);
}
