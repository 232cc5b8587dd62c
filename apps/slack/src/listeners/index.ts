/**
 * The listeners: translate, hand over, acknowledge once the message is noted. Nothing is decided here but where a reply
 * is to be shown: where the question stood, and what is long under a message goes into its thread.
 */

import { type Desk, errorFacts, type ProgramLog } from '@lugbook/chat';
import type { App } from '@slack/bolt';
import type { SlackPlatform } from '../platform.js';
import { listenToButtons } from './buttons.js';
import { listenToCommands } from './commands.js';
import { listenToForms } from './forms.js';
import { listenToHome } from './home.js';
import { listenToMessages } from './messages.js';

export interface Wiring {
	readonly desk: Desk;
	readonly platform: SlackPlatform;
	readonly log: ProgramLog;
	readonly nowMs: () => number;
}

export function listen(app: App, wiring: Wiring): void {
	listenToCommands(app, wiring);
	listenToMessages(app, wiring);
	listenToButtons(app, wiring);
	listenToForms(app, wiring);
	listenToHome(app, wiring);
	app.error(async (error) => wiring.log.error(errorFacts(error), 'a listener failed'));
}
