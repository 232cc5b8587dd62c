import { actOf, topicOfForm, UNKNOWN_BUTTON, wordsForm } from '@lugbook/chat';
import type { App, BlockAction, ButtonAction, StaticSelectAction } from '@slack/bolt';
import { type Opened, topicForm, wordsView } from '../form.js';
import { shopOf } from '../platform.js';
import { BUTTON_ACTION } from '../render.js';
import { openForm } from './forms.js';
import type { Wiring } from './index.js';
import { notedOrLate } from './note.js';

export function listenToButtons(app: App, { desk, platform, log, nowMs }: Wiring): void {
	app.action<BlockAction<ButtonAction | StaticSelectAction>>(
		{ type: 'block_actions', action_id: BUTTON_ACTION },
		async ({ ack, action, body, client }) => {
			await ack();
			if (body.channel === undefined) return;
			const channel = body.channel.id;
			const { container, trigger_id: delivery } = body;
			const name = BUTTON_ACTION.exec(action.action_id)?.[1] ?? '';
			const value = action.type === 'button' ? (action.value ?? '') : action.selected_option.value;
			const act = actOf(name, value);
			const shop = shopOf(body.team?.id ?? '');
			const thread = typeof container.thread_ts === 'string' ? container.thread_ts : null;
			const under = container.is_ephemeral === true ? null : String(container.message_ts);
			// The choice among two readings, and what is shared, goes on where the question stands; anything longer goes
			// below the message.
			const isOnTop = name === 'answer' || act?.kind === 'share';
			const place = {
				channel,
				thread: isOnTop ? thread : (thread ?? under),
				user: body.user.id,
				responseUrl: body.response_url ?? null,
				sinceMs: nowMs(),
				delivery,
			};
			const about = { shop, channel, thread: place.thread, delivery, user: { id: body.user.id } };
			const way = platform.way(client, place);
			if (act === null) {
				log.warn({ shop, action: name }, 'a button that none of ours sends');
				const pressed = { ...about, command: 'ask' as const };
				return await desk.attempt(pressed, way.tell.bind(way), () => desk.tell(pressed, way, UNKNOWN_BUTTON));
			}
			if (act.kind === 'say') {
				const asked = { ...about, command: act.command, text: act.text };
				return await notedOrLate(desk.receive(asked, place, way).noted);
			}
			if (act.kind === 'share') {
				return await notedOrLate(desk.share({ ...about, command: 'log' }, act.entry, way));
			}
			await desk.attempt(
				{ ...about, command: 'size' },
				(text, language) => way.tell(text, language),
				async () => {
					const { form, entry } = act;
					const language = await desk.languageFor({ ...about, command: 'size' }, entry);
					const opened: Opened = { form, topic: null, entry, language, place };
					if (form !== 'change' && form !== 'assume') {
						const view = wordsView(wordsForm(form, entry, language), opened);
						if (!(await openForm(client, delivery, view, log)))
							throw new Error('the form could not be opened');
						return;
					}
					const answer = (await desk.answerOf(shop, entry))?.answer ?? null;
					const topic = topicOfForm(answer, act.field);
					if (answer === null || topic === null)
						throw new Error('the answer to be changed has no such input');
					const known = [...answer.assumed, ...answer.understood].map((one) => [one.name, one.text] as const);
					const given = answer.understood.map((one) => [one.name, one.text] as const);
					const prefilled = Object.fromEntries(form === 'assume' ? known : given);
					const view = topicForm(topic, { ...opened, topic: topic.name }, prefilled, act.field);
					if (!(await openForm(client, delivery, view, log))) throw new Error('the form could not be opened');
				},
			);
		},
	);
}
