import { randomUUID } from 'node:crypto';
import { topicNamed } from '@lugbook/chat';
import type { App, types, ViewSubmitAction, webApi } from '@slack/bolt';
import { z } from 'zod';
import { type Conversation, type Show, shopOf } from '../conversation.js';
import { enteredIn, FORM, type Opened, TOPIC_CHOICE, topicForm } from '../form.js';
import { errorFacts, type Logger } from '../log.js';
import { throughChannel } from '../show.js';

/** forms whose way back to the channel is remembered at once */
const REMEMBERED_MAX = 1000;

const openedSchema = z.object({
	topic: z.string().nullable(),
	id: z.string(),
	channel: z.string(),
	thread: z.string().nullable(),
});

/** Open forms, and the way back from each. A form carries no address that a response could be sent to. */
export class Forms {
	readonly #waysBack = new Map<string, Show>();

	constructor(private readonly log: Logger) {}

	from(place: { readonly channel: string; readonly thread: string | null }, show: Show): Opened {
		const id = randomUUID();
		this.#waysBack.set(id, show);
		const [oldest] = this.#waysBack.keys();
		if (this.#waysBack.size > REMEMBERED_MAX && oldest !== undefined) this.#waysBack.delete(oldest);
		return { topic: null, id, ...place };
	}

	/** The way back; undefined when the bot was started anew since the form was opened. */
	wayBack(id: string): Show | undefined {
		return this.#waysBack.get(id);
	}

	/** @returns whether the platform opened it: three seconds after the command or button it does not any more */
	async open(client: webApi.WebClient, triggerId: string, view: types.ModalView): Promise<boolean> {
		try {
			await client.views.open({ trigger_id: triggerId, view });
			return true;
		} catch (error) {
			this.log.warn(errorFacts(error), 'could not open a form');
			return false;
		}
	}
}

export function listenToForms(app: App, conversation: Conversation, forms: Forms): void {
	app.view<ViewSubmitAction>(
		{ callback_id: TOPIC_CHOICE, type: 'view_submission' },
		async ({ ack, view }) => {
			const topic = topicNamed(enteredIn(view).topic ?? '');
			const opened = openedSchema.parse(JSON.parse(view.private_metadata));
			if (topic === null)
				await ack({ response_action: 'errors', errors: { topic: 'Choose one of the list.' } });
			else await ack({ response_action: 'update', view: topicForm(topic, opened) });
		},
	);

	app.view<ViewSubmitAction>(
		{ callback_id: FORM, type: 'view_submission' },
		async ({ ack, view, body, client }) => {
			await ack();
			const { topic, id, channel, thread } = openedSchema.parse(JSON.parse(view.private_metadata));
			const user = body.user.id;
			const asked = {
				shop: shopOf(body.team?.id ?? ''),
				channel,
				thread,
				delivery: body.trigger_id,
				user,
				command: 'size' as const,
				text: topic ?? '',
				fields: enteredIn(view),
			};
			await conversation.answer(
				asked,
				client,
				forms.wayBack(id) ?? throughChannel(client, { channel, thread, user }),
			);
		},
	);
}
