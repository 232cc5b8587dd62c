import { type Button, topicNamed } from '@lugbook/chat';
import { type ButtonInteraction, MessageFlags, type ModalSubmitInteraction } from 'discord.js';
import { pressed } from '../buttons.js';
import { type Conversation, shopOf } from '../conversation.js';
import { changeForm, FORM_ID } from '../form.js';
import { InteractionOutlet } from '../outlets.js';
import { placeOf } from '../place.js';
import { BUTTON_ID, NO_MENTIONS } from '../render.js';

function aboutOf(interaction: ButtonInteraction | ModalSubmitInteraction) {
	const { user, guildId, channel, channelId } = interaction;
	return {
		shop: shopOf(guildId, user.id),
		...placeOf(channel, channelId ?? ''),
		delivery: interaction.id,
		user: { id: user.id, name: user.displayName },
	};
}

export async function onButton(interaction: ButtonInteraction, conversation: Conversation): Promise<void> {
	const match = BUTTON_ID.exec(interaction.customId);
	if (match === null) return;
	const about = aboutOf(interaction);
	const what = pressed(match[1] as Button['action'], match[2] as string);
	if ('change' in what) {
		// A form has to be the very first response: there is no waiting for it.
		const outlet = {
			fail: async (content: string) => {
				await interaction.reply({ content, allowedMentions: NO_MENTIONS, flags: MessageFlags.Ephemeral });
			},
		};
		await conversation.attempt({ ...about, command: 'size' }, outlet, async () => {
			const { answer } = await conversation.lookUp({ ...about, command: 'log', text: `show ${what.change}` });
			const topic = topicNamed(answer.topic ?? '');
			if (topic === null) throw new Error('the answer to be changed has no topic');
			await interaction.showModal(changeForm(topic, answer, what.change));
		});
		return;
	}
	const outlet = new InteractionOutlet(interaction);
	await conversation.answer({ ...about, ...what }, outlet);
	outlet.release();
}

export async function onForm(interaction: ModalSubmitInteraction, conversation: Conversation): Promise<void> {
	const entry = FORM_ID.exec(interaction.customId)?.[1];
	if (entry === undefined) return;
	const about = aboutOf(interaction);
	const outlet = new InteractionOutlet(interaction);
	await conversation.attempt({ ...about, command: 'size' }, outlet, async () => {
		const { answer } = await conversation.lookUp({ ...about, command: 'log', text: `show ${entry}` });
		const before = Object.fromEntries(answer.understood.map((one) => [one.name, one.text]));
		const entered = Object.fromEntries(
			[...interaction.fields.fields.values()].map((field) => [
				field.customId,
				'value' in field ? String(field.value) : '',
			]),
		);
		const fields = { ...before, ...entered };
		await conversation.answer({ ...about, command: 'size', text: answer.topic ?? '', fields }, outlet);
	});
	outlet.release();
}
