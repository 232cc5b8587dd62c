/**
 * The listeners: acknowledge first, then translate and hand over. Nothing is decided here but where a reply is to be
 * shown: where the question stood, and what is long under a message goes into its thread.
 */

import type { App } from '@slack/bolt';
import type { Conversation } from '../conversation.js';
import { errorFacts, type Logger } from '../log.js';
import { listenToButtons } from './buttons.js';
import { listenToCommands } from './commands.js';
import { Forms, listenToForms } from './forms.js';
import { listenToHome } from './home.js';
import { listenToMessages } from './messages.js';

export function listen(app: App, conversation: Conversation, log: Logger): void {
	const forms = new Forms(log);
	listenToCommands(app, conversation, forms);
	listenToMessages(app, conversation);
	listenToButtons(app, conversation, forms);
	listenToForms(app, conversation, forms);
	listenToHome(app, conversation);
	app.error(async (error) => log.error(errorFacts(error), 'a listener failed'));
}
