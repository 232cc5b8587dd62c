import { errorFacts, FormWords, type ProgramLog, saidByForm, shortened, topicNamed } from '@lugbook/chat';
import type { App, types, ViewSubmitAction, webApi } from '@slack/bolt';
import { enteredIn, FORM, openedIn, TOPIC_CHOICE, topicForm } from '../form.js';
import { FIELD_ERROR_CHARACTERS_MAX } from '../limits.js';
import { shopOf } from '../platform.js';
import type { Wiring } from './index.js';
import { notedOrLate } from './note.js';

/** @returns whether the platform opened it: three seconds after the command or button it does not any more */
export async function openForm(
	client: webApi.WebClient,
	triggerId: string,
	view: types.ModalView,
	log: ProgramLog,
): Promise<boolean> {
	try {
		await client.views.open({ trigger_id: triggerId, view });
		return true;
	} catch (error) {
		log.warn(errorFacts(error), 'could not open a form');
		return false;
	}
}

export function listenToForms(app: App, { desk, platform }: Wiring): void {
	app.view<ViewSubmitAction>(
		{ callback_id: TOPIC_CHOICE, type: 'view_submission' },
		async ({ ack, view }) => {
			const topic = topicNamed(enteredIn(view).topic ?? '');
			if (topic === null)
				await ack({
					response_action: 'errors',
					errors: { topic: new FormWords(openedIn(view).language).chooseOne },
				});
			else await ack({ response_action: 'update', view: topicForm(topic, openedIn(view)) });
		},
	);

	app.view<ViewSubmitAction>(
		{ callback_id: FORM, type: 'view_submission' },
		async ({ ack, view, body, client }) => {
			const { form, topic, entry, language, place: opened } = openedIn(view);
			const entered = enteredIn(view);
			const known = topicNamed(topic ?? '');
			const unread = known === null ? null : desk.fieldErrors(known, entered, language);
			// While the form is open each field says what is wrong with it; afterwards all would have to be typed again.
			if (unread !== null && unread.size > 0) {
				const errors = [...unread].map(([name, error]) => [
					name,
					shortened(error, FIELD_ERROR_CHARACTERS_MAX),
				]);
				return await ack({ response_action: 'errors', errors: Object.fromEntries(errors) });
			}
			await ack();
			const place = { ...opened, user: body.user.id, delivery: body.trigger_id };
			const shop = shopOf(body.team?.id ?? '');
			const base = {
				shop,
				channel: place.channel,
				thread: place.thread,
				delivery: place.delivery,
				user: { id: place.user },
			};
			const way = platform.way(client, place);
			if (form === 'size' || entry === null) {
				const asked = { ...base, command: 'size' as const, text: topic ?? '', fields: entered };
				return await notedOrLate(desk.receive(asked, place, way).noted);
			}
			await desk.attempt(
				{ ...base, command: 'size' },
				(text, language) => way.tell(text, language),
				async () => {
					const answer = (await desk.answerOf(shop, entry))?.answer ?? null;
					// A form of all inputs says also which ones were emptied.
					const said =
						form === 'change' && topic !== null
							? { command: 'size' as const, text: topic, fields: entered }
							: saidByForm(form, entry, answer, entered);
					if (said === null) throw new Error('the answer that the form is about has no topic');
					await notedOrLate(desk.receive({ ...base, ...said }, place, way).noted);
				},
			);
		},
	);
}
