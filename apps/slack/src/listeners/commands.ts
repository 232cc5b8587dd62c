import { commandNames, topicNamed } from '@lugbook/chat';
import type { App } from '@slack/bolt';
import { topicChoiceForm, topicForm } from '../form.js';
import { shopOf } from '../platform.js';
import { typedText } from '../text.js';
import { openForm } from './forms.js';
import type { Wiring } from './index.js';
import { notedOrLate } from './note.js';

export function listenToCommands(app: App, { desk, platform, log, nowMs }: Wiring): void {
	for (const name of commandNames) {
		app.command(`/${name}`, async ({ ack, command, client, context }) => {
			await ack();
			const { channel_id: channel, trigger_id: delivery, user_id: user } = command;
			const text = typedText(command.text, context.botUserId ?? '');
			const topic = topicNamed(text.toLowerCase());
			const place = {
				channel,
				thread: null,
				user,
				responseUrl: command.response_url,
				replaceable: true,
				sinceMs: nowMs(),
				delivery,
			};
			if (name === 'size' && (text === '' || topic !== null)) {
				const about = { shop: shopOf(command.team_id), channel, thread: null, delivery, command: name };
				const language = await desk.languageFor(about);
				const opened = { form: 'size' as const, topic: null, entry: null, language, place };
				const view = topic === null ? topicChoiceForm(opened) : topicForm(topic, opened);
				// Where the form could not be opened, the conversation asks in words.
				if (await openForm(client, delivery, view, log)) return;
			}
			const asked = {
				shop: shopOf(command.team_id),
				channel,
				thread: null,
				delivery,
				user: { id: user },
				command: name,
				text,
			};
			await notedOrLate(desk.receive(asked, place, platform.way(client, place)).noted);
		});
	}
}
