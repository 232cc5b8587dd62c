/** The Home tab: what can be asked, from the conversation's own help. */

import { commandNames, type Desk, type Part } from '@lugbook/chat';
import type { types } from '@slack/bolt';

export async function homeView(desk: Pick<Desk, 'lookUp'>): Promise<types.HomeView> {
	const blocks: types.KnownBlock[] = [];
	for (const command of commandNames) {
		const help = await desk.lookUp({ shop: 'home', channel: 'home', command, text: 'help' });
		blocks.push(
			{ type: 'header', text: { type: 'plain_text', text: `/${command}`, emoji: false } },
			{ type: 'rich_text', elements: help.parts.map(lineOf) },
		);
	}
	return { type: 'home', blocks };
}

function lineOf(part: Part): types.RichTextPreformatted | types.RichTextSection {
	const elements = [{ type: 'text' as const, text: part.text }];
	// Lines of help are set out in columns.
	return part.kind === 'headline'
		? { type: 'rich_text_section', elements }
		: { type: 'rich_text_preformatted', elements };
}
