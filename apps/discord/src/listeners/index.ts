/** The listeners: each translates one kind of event and hands it over. Nothing is decided here. */

import { type Desk, errorFacts, type ProgramLog } from '@lugbook/chat';
import { type Client, Events } from 'discord.js';
import type { DiscordPlatform } from '../platform.js';
import { suggest } from './autocomplete.js';
import { onButton, onForm, onMenu } from './buttons.js';
import { onCommand } from './commands.js';
import { onMessage } from './messages.js';

export interface Wiring {
	readonly desk: Desk;
	readonly platform: DiscordPlatform;
	readonly log: ProgramLog;
	readonly nowMs: () => number;
}

export function listen(client: Client<true>, wiring: Wiring): void {
	const failed = (error: unknown) => wiring.log.error(errorFacts(error), 'a listener failed');
	client.on(Events.InteractionCreate, async (interaction) => {
		try {
			if (interaction.isAutocomplete()) await suggest(interaction, wiring.desk);
			else if (interaction.isChatInputCommand()) await onCommand(interaction, wiring);
			else if (interaction.isButton()) await onButton(interaction, wiring);
			else if (interaction.isStringSelectMenu()) await onMenu(interaction, wiring);
			else if (interaction.isModalSubmit()) await onForm(interaction, wiring);
		} catch (error) {
			failed(error);
		}
	});
	client.on(Events.MessageCreate, async (message) => {
		try {
			await onMessage(message, client.user.id, wiring);
		} catch (error) {
			failed(error);
		}
	});
}
