import type { App } from '@slack/bolt';
import { homeView } from '../home.js';
import type { Wiring } from './index.js';

export function listenToHome(app: App, { desk }: Wiring): void {
	app.event('app_home_opened', async ({ event, client }) => {
		if (event.tab !== 'home') return;
		await client.views.publish({ user_id: event.user, view: await homeView(desk) });
	});
}
