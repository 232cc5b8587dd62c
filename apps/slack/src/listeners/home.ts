import { errorFacts } from '@lugbook/chat';
import type { App } from '@slack/bolt';
import { repeatedly } from '../calls.js';
import { homeView } from '../home.js';
import { shopOf } from '../platform.js';
import type { Wiring } from './index.js';
import { notedOrLate } from './note.js';

export function listenToHome(app: App, { desk, log }: Wiring): void {
	app.event('app_home_opened', async ({ event, body, client }) => {
		if (event.tab !== 'home') return;
		const shown = async () => {
			const view = await homeView(desk, shopOf(body.team_id));
			await repeatedly(() => client.views.publish({ user_id: event.user, view }));
		};
		// The platform waits for its acknowledgement, not for the tab.
		await notedOrLate(
			shown().catch((error: unknown) => log.warn(errorFacts(error), 'could not show the Home tab')),
		);
	});
}
