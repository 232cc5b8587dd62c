/** The listeners: each translates one kind of event and hands it over. Nothing is decided here. */

import { type Client, Events } from 'discord.js';
import type { Conversation } from '../conversation.js';
import { errorFacts, type Logger } from '../log.js';
import { suggest } from './autocomplete.js';
import { onButton, onForm } from './buttons.js';
import { onCommand } from './commands.js';
import { onMessage } from './messages.js';

export function listen(client: Client<true>, conversation: Conversation, log: Logger): void {
	client.on(Events.InteractionCreate, async (interaction) => {
		try {
			if (interaction.isAutocomplete()) await suggest(interaction);
			else if (interaction.isChatInputCommand()) await onCommand(interaction, conversation);
			else if (interaction.isButton()) await onButton(interaction, conversation);
			else if (interaction.isModalSubmit()) await onForm(interaction, conversation);
		} catch (error) {
			log.error(errorFacts(error), 'a listener failed');
		}
	});
	client.on(Events.MessageCreate, async (message) => {
		try {
			await onMessage(message, client.user.id, conversation);
		} catch (error) {
			log.error(errorFacts(error), 'a listener failed');
		}
	});
}
