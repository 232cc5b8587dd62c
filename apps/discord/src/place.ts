/** Where a message stands, as the log names it. */

import type { Channel } from 'discord.js';

/** A thread counts as a thread of its parent channel. */
export function placeOf(
	channel: Channel | null,
	channelId: string,
): { channel: string; thread: string | null } {
	if (channel?.isThread()) return { channel: channel.parentId ?? channelId, thread: channelId };
	return { channel: channelId, thread: null };
}
