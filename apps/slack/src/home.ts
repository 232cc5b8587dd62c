/** The Home tab: how to begin, the vans and what is unsigned of each, and what can be asked, in the conversation's own words. */

import { atWork, commandNames, type Desk, type Part } from '@lugbook/chat';
import type { types } from '@slack/bolt';

/** vans whose open reviews are shown, those chosen last */
const VANS_MAX = 5;
/** lines of what is open, for each van; the rest is counted by its first line */
const OPEN_LINES_MAX = 5;

const WELCOME =
	'Nothing has been asked here yet. Invite me into the channel of a van with /invite @Lugbook, name the van with "/build use heron", then ask as you would ask somebody: "/ask 40A 12V 15 ft". A mention works as well, and so does a message to me alone.';
const NO_VANS = 'No channel has named its van yet: "/build use heron" does.';

export async function homeView(desk: Pick<Desk, 'lookUp' | 'log'>, shop: string): Promise<types.HomeView> {
	const isNew = (await desk.log.head(shop)) === null;
	const blocks: types.KnownBlock[] = isNew ? [header('Welcome'), lines([plainLine(WELCOME)])] : [];
	if (!isNew) blocks.push(...(await vanBlocks(desk, shop)));
	for (const command of commandNames) {
		const help = await desk.lookUp({ shop: 'home', channel: 'home', command, text: 'help' });
		blocks.push(header(`/${command}`), lines(help.parts.map(helpLine)));
	}
	return { type: 'home', blocks };
}

async function vanBlocks(desk: Pick<Desk, 'lookUp' | 'log'>, shop: string): Promise<types.KnownBlock[]> {
	const vans = await atWork(desk.log, shop);
	if (vans.length === 0) return [header('Vans'), lines([plainLine(NO_VANS)])];
	const blocks: types.KnownBlock[] = [header('Vans')];
	for (const { channel, build } of vans.slice(0, VANS_MAX)) {
		const open = await desk.lookUp({ shop, channel, command: 'log', text: 'review', build });
		blocks.push(
			lines([
				{
					type: 'rich_text_section',
					elements: [
						{ type: 'text', text: build, style: { bold: true } },
						{ type: 'text', text: ' in ' },
						{ type: 'channel', channel_id: channel },
					],
				},
				...open.parts.slice(0, OPEN_LINES_MAX + 1).map((part) => plainLine(part.text)),
			]),
		);
	}
	if (vans.length > VANS_MAX) {
		const others = vans.slice(VANS_MAX).map(({ build }) => build);
		blocks.push(lines([plainLine(`Also: ${[...new Set(others)].join(', ')}`.slice(0, 1000))]));
	}
	return blocks;
}

const header = (text: string): types.HeaderBlock => ({
	type: 'header',
	text: { type: 'plain_text', text, emoji: false },
});

const lines = (elements: types.RichTextBlock['elements']): types.RichTextBlock => ({
	type: 'rich_text',
	elements,
});

const plainLine = (text: string): types.RichTextSection => ({
	type: 'rich_text_section',
	elements: [{ type: 'text', text: `${text.slice(0, 2900)}\n` }],
});

/** Lines of help are set out in columns. */
function helpLine(part: Part): types.RichTextPreformatted | types.RichTextSection {
	const elements = [{ type: 'text' as const, text: part.text }];
	return part.kind === 'headline'
		? { type: 'rich_text_section', elements }
		: { type: 'rich_text_preformatted', elements };
}
