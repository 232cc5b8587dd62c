/**
 * A stand-in for the Discord platform on loopback: REST API version 10, the Gateway, interactions with their
 * deadlines, and a model of what people see. It refuses what the platform refuses, and keeps every broken limit
 * in `violations`.
 *
 *     const discord = await startDiscordStandIn();
 *     // start the bot with discord.apiUrl, discord.botToken, discord.applicationId; let it register its commands
 *     const asked = await discord.command('ask', { text: '40A 12V 15 ft' });
 *     const answer = await discord.settled(asked);
 *     await discord.close();
 *
 * Names of routes, for faults: see `discord/rest.ts`. Names of refusals, for the fault `error`: see
 * `discord/errors.ts`.
 */

import { type DiscordOptions, DiscordStandIn } from './discord/stand-in.js';

export { Intent } from './discord/gateway.js';
export { type DiscordInteraction, ResponseType } from './discord/interactions.js';
export { Flag } from './discord/message-limits.js';
export { readable } from './discord/model.js';
export type { DiscordStandIn } from './discord/stand-in.js';

export async function startDiscordStandIn(options: DiscordOptions = {}): Promise<DiscordStandIn> {
	const standIn = new DiscordStandIn(options);
	await standIn.listen();
	return standIn;
}
