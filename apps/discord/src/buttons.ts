/** What a button under a reply asks for, as a message to the conversation. */

import type { Button, CommandName } from '@lugbook/chat';

export type Pressed = { readonly command: CommandName; readonly text: string } | { readonly change: string };

export function pressed(action: Button['action'], value: string): Pressed {
	switch (action) {
		case 'working':
			return { command: 'log', text: `show ${value}` };
		case 'answer':
			return { command: 'ask', text: value };
		case 'change':
			return { change: value };
		default:
			return { command: 'log', text: `${action} ${value}` };
	}
}
