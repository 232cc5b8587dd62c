import type { App } from '@slack/bolt';
import type { Conversation } from '../conversation.js';
import { homeView } from '../home.js';

export function listenToHome(app: App, conversation: Conversation): void {
	app.event('app_home_opened', async ({ event, client }) => {
		if (event.tab !== 'home') return;
		await client.views.publish({ user_id: event.user, view: await homeView(conversation) });
	});
}
