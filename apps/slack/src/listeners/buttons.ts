import { type Button, topicNamed } from '@lugbook/chat';
import type { App, BlockAction, ButtonAction } from '@slack/bolt';
import { pressed } from '../buttons.js';
import { type Conversation, shopOf } from '../conversation.js';
import { topicForm } from '../form.js';
import { BUTTON_ACTION } from '../render.js';
import { throughResponse } from '../show.js';
import type { Forms } from './forms.js';

export function listenToButtons(app: App, conversation: Conversation, forms: Forms): void {
	app.action<BlockAction<ButtonAction>>(
		{ type: 'block_actions', action_id: BUTTON_ACTION },
		async ({ ack, action, body, respond, client }) => {
			await ack();
			if (body.channel === undefined) return;
			const channel = body.channel.id;
			const { container, trigger_id: delivery } = body;
			const button = BUTTON_ACTION.exec(action.action_id)?.[1] as Button['action'];
			const what = pressed(button, action.value ?? '');
			const thread = typeof container.thread_ts === 'string' ? container.thread_ts : null;
			const under = container.is_ephemeral === true ? null : String(container.message_ts);
			const about = { shop: shopOf(body.team?.id ?? ''), channel, delivery };
			if ('change' in what) {
				const show = throughResponse(respond, thread ?? under);
				await conversation.attempt({ ...about, command: 'size' }, show, async () => {
					const { answer } = await conversation.lookUp({
						...about,
						command: 'log',
						text: `show ${what.change}`,
					});
					const topic = topicNamed(answer.topic ?? '');
					if (topic === null) throw new Error('the answer to be changed has no topic');
					const prefilled = Object.fromEntries(answer.understood.map((one) => [one.name, one.text]));
					const view = topicForm(topic, forms.from({ channel, thread }, show), prefilled);
					if (!(await forms.open(client, delivery, view))) throw new Error('the form could not be opened');
				});
				return;
			}
			// The choice among two readings goes on where the question stands; anything longer goes below the message.
			const shownIn = button === 'answer' ? thread : (thread ?? under);
			const asked = { ...about, thread, user: body.user.id, ...what };
			await conversation.answer(asked, client, throughResponse(respond, shownIn));
		},
	);
}
