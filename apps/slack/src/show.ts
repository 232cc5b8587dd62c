/** The two ways a message gets to where the question stood. */

import type { RespondFn, webApi } from '@slack/bolt';
import type { Show } from './conversation.js';

/** Links in an answer open nothing below it. */
const quiet = { unfurl_links: false, unfurl_media: false } as const;

/** Through the response_url of a command or a button; it works also where the bot is no member. */
export function throughResponse(respond: RespondFn, threadTs: string | null): Show {
	return async (page, audience) => {
		await respond({
			...page,
			...quiet,
			replace_original: false,
			response_type: audience === 'asker' ? 'ephemeral' : 'in_channel',
			...(threadTs === null ? {} : { thread_ts: threadTs }),
		});
	};
}

/** Into a channel or a conversation in private, by the Web API. */
export function throughChannel(
	client: webApi.WebClient,
	place: { readonly channel: string; readonly thread: string | null; readonly user: string },
): Show {
	const { channel, thread, user } = place;
	const where = thread === null ? { channel } : { channel, thread_ts: thread };
	return async (page, audience) => {
		const isPrivate = channel.startsWith('D');
		if (audience === 'asker' && !isPrivate) await client.chat.postEphemeral({ ...where, ...page, user });
		else await client.chat.postMessage({ ...where, ...page, ...quiet });
	};
}
