import type { App } from '@slack/bolt';
import { homeView } from '../home.js';
import { shopOf } from '../platform.js';
import type { Wiring } from './index.js';

export function listenToHome(app: App, { desk }: Wiring): void {
	app.event('app_home_opened', async ({ event, body, client }) => {
		if (event.tab !== 'home') return;
		const view = await homeView(desk, shopOf(body.team_id));
		await client.views.publish({ user_id: event.user, view });
	});
}
