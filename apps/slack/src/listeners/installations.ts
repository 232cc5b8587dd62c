import type { App } from '@slack/bolt';
import type { Installations } from '../installations.js';

/** A workspace that took the app away, or its token, is forgotten; its log stays. */
export function listenToInstallations(app: App, installations: Installations | null): void {
	app.event('app_uninstalled', async ({ body }) => {
		await installations?.remove(body.team_id);
	});
	app.event('tokens_revoked', async ({ event, body }) => {
		if ((event.tokens.bot ?? []).length > 0) await installations?.remove(body.team_id);
	});
}
