/** Who asks from where, in an interaction. */

import type { Asked } from '@lugbook/chat';
import { type Answerable, InteractionWay } from '../interaction-way.js';
import { placeOf } from '../place.js';
import { shopOf } from '../platform.js';
import type { DiscordPlace } from '../rest-way.js';
import type { Wiring } from './index.js';

export function askedFrom(interaction: Answerable): Omit<Asked, 'command' | 'text'> {
	const { user, guildId, channel, channelId, member } = interaction;
	// A member out of the cache and one as it was sent have their roles in two shapes.
	const roles =
		member === null ? [] : Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()];
	return {
		shop: shopOf(guildId, user.id),
		...placeOf(channel, channelId ?? ''),
		delivery: interaction.id,
		user: { id: user.id, name: user.displayName, roles },
	};
}

/** Takes on what an interaction asks. */
export async function receive(
	interaction: Answerable,
	words: Pick<Asked, 'command' | 'text' | 'fields' | 'build'>,
	{ desk, platform, nowMs }: Wiring,
	thread?: string | null,
): Promise<void> {
	const base = askedFrom(interaction);
	const asked = { ...base, ...(thread == null ? {} : { thread }), ...words };
	const place = interactionPlace(interaction, nowMs());
	const way = new InteractionWay(interaction, platform.way(place), (error, what) =>
		platform.warn(error, what),
	);
	await desk.receive(asked, place, way).done;
	way.release();
}

export function interactionPlace(interaction: Answerable, nowMs: number): DiscordPlace {
	const { applicationId, token, channelId, user, id } = interaction;
	return {
		channel: channelId ?? '',
		message: null,
		interaction: { applicationId, token },
		user: user.id,
		sinceMs: nowMs,
		delivery: id,
	};
}
