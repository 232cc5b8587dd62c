import {
	type Act,
	actOf,
	saidByForm,
	topicNamed,
	topicOfForm,
	UNKNOWN_BUTTON,
	wordsForm,
} from '@lugbook/chat';
import {
	type ButtonInteraction,
	type MessageComponentInteraction,
	MessageFlags,
	type ModalSubmitInteraction,
	type StringSelectMenuInteraction,
} from 'discord.js';
import { FORM_ID, SIZE_FORM_ID, topicForm, wordsModal } from '../form.js';
import { InteractionWay } from '../interaction-way.js';
import { ASSUME_ID, BUTTON_ID, NO_MENTIONS } from '../render.js';
import { askedFrom, interactionPlace, receive } from './about.js';
import type { Wiring } from './index.js';

export async function onButton(interaction: ButtonInteraction, wiring: Wiring): Promise<void> {
	const match = BUTTON_ID.exec(interaction.customId);
	const act = match === null ? null : actOf(match[1] as string, match[2] as string);
	await onAct(interaction, act, wiring);
}

export async function onMenu(interaction: StringSelectMenuInteraction, wiring: Wiring): Promise<void> {
	if (interaction.customId !== ASSUME_ID) return;
	await onAct(interaction, actOf('assume', interaction.values[0] ?? ''), wiring);
}

async function onAct(
	interaction: MessageComponentInteraction,
	act: Act | null,
	wiring: Wiring,
): Promise<void> {
	const { desk, platform, log, nowMs } = wiring;
	const about = askedFrom(interaction);
	const tell = async (content: string) => {
		await interaction.reply({ content, allowedMentions: NO_MENTIONS, flags: MessageFlags.Ephemeral });
	};
	if (act === null) {
		log.warn({ shop: about.shop }, 'a button that none of ours sends');
		return await desk.tell({ ...about, command: 'ask' }, { tell }, UNKNOWN_BUTTON);
	}
	if (act.kind === 'say') return await receive(interaction, { command: act.command, text: act.text }, wiring);
	if (act.kind === 'share') {
		const place = interactionPlace(interaction, nowMs());
		const way = new InteractionWay(interaction, platform.way(place), (error, what) =>
			platform.warn(error, what),
		);
		await desk.share({ ...about, command: 'log' }, act.entry, way);
		return way.release();
	}
	// A form has to be the very first response: there is no waiting for it.
	await desk.attempt({ ...about, command: 'size' }, tell, async () => {
		const { form, entry } = act;
		const language = await desk.languageFor({ ...about, command: 'size' }, entry);
		if (form !== 'change' && form !== 'assume') {
			await interaction.showModal(wordsModal(form, entry, wordsForm(form, entry, language)));
			return;
		}
		const answer = (await desk.answerOf(about.shop, entry))?.answer ?? null;
		const topic = topicOfForm(answer, act.field);
		if (answer === null || topic === null) {
			throw new Error('the answer to be changed has no such input');
		}
		await interaction.showModal(topicForm(topic, answer, entry, language, act.field));
	});
}

export async function onForm(interaction: ModalSubmitInteraction, wiring: Wiring): Promise<void> {
	const entered = Object.fromEntries(
		[...interaction.fields.fields.values()].map((field) => [
			field.customId,
			'value' in field ? String(field.value) : '',
		]),
	);
	const topic = topicNamed(SIZE_FORM_ID.exec(interaction.customId)?.[1] ?? '');
	if (topic !== null) {
		const filled = Object.entries(entered).filter(([, text]) => text.trim() !== '');
		const said = { command: 'size' as const, text: topic.name, fields: Object.fromEntries(filled) };
		return await receive(interaction, said, wiring);
	}
	const match = FORM_ID.exec(interaction.customId);
	if (match === null) return;
	const form = match[1] as Parameters<typeof saidByForm>[0];
	const entry = Number(match[2]);
	const { desk } = wiring;
	const about = askedFrom(interaction);
	const tell = async (content: string) => {
		await interaction.reply({ content, allowedMentions: NO_MENTIONS, flags: MessageFlags.Ephemeral });
	};
	await desk.attempt({ ...about, command: 'size' }, tell, async () => {
		const answer = (await desk.answerOf(about.shop, entry))?.answer ?? null;
		const said = saidByForm(form, entry, answer, entered);
		if (said === null) throw new Error('the answer that the form is about has no topic');
		await receive(interaction, said, wiring);
	});
}
