import { commandNames, topicNamed } from '@lugbook/chat';
import type { App } from '@slack/bolt';
import { type Conversation, shopOf } from '../conversation.js';
import { topicChoiceForm, topicForm } from '../form.js';
import { throughResponse } from '../show.js';
import { typedText } from '../text.js';
import type { Forms } from './forms.js';

export function listenToCommands(app: App, conversation: Conversation, forms: Forms): void {
	for (const name of commandNames) {
		app.command(`/${name}`, async ({ ack, command, respond, client, context }) => {
			await ack();
			const show = throughResponse(respond, null);
			const channel = command.channel_id;
			const text = typedText(command.text, context.botUserId ?? '');
			const topic = topicNamed(text.toLowerCase());
			if (name === 'size' && (text === '' || topic !== null)) {
				const opened = forms.from({ channel, thread: null }, show);
				const view = topic === null ? topicChoiceForm(opened) : topicForm(topic, opened);
				// Where the form could not be opened, the conversation asks in words.
				if (await forms.open(client, command.trigger_id, view)) return;
			}
			const asked = {
				shop: shopOf(command.team_id),
				channel,
				thread: null,
				delivery: command.trigger_id,
				user: command.user_id,
				command: name,
				text,
			};
			await conversation.answer(asked, client, show);
		});
	}
}
