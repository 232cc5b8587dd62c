/** The Home tab: how to begin, the vans and what is unsigned of each, and what can be asked, in the conversation's own words. */

import { atWork, commandNames, type Desk, type Language, type Part, pageWords } from '@lugbook/chat';
import type { types } from '@slack/bolt';

/** vans whose open reviews are shown, those chosen last */
const VANS_MAX = 5;
/** lines of what is open, for each van; the rest is counted by its first line */
const OPEN_LINES_MAX = 5;

type Seen = Pick<Desk, 'lookUp' | 'languageFor' | 'log'>;

/** In the language of the channel whose van was chosen last; what is said of each van in that of its own channel. */
export async function homeView(desk: Seen, shop: string): Promise<types.HomeView> {
	const isNew = (await desk.log.head(shop)) === null;
	const vans = isNew ? [] : await atWork(desk.log, shop);
	const language = vans[0] === undefined ? 'en' : await languageIn(desk, shop, vans[0].channel);
	const words = pageWords(language);
	const blocks: types.KnownBlock[] = isNew
		? [header(words.welcome), lines([plainLine(words.howToBegin)])]
		: [header(words.vans), ...(await vanBlocks(desk, shop, vans, words))];
	for (const command of commandNames) {
		const help = await desk.lookUp({ shop: 'home', channel: 'home', command, text: 'help', language });
		blocks.push(header(`/${command}`), lines(help.parts.map(helpLine)));
	}
	return { type: 'home', blocks };
}

function languageIn(desk: Seen, shop: string, channel: string): Promise<Language> {
	return desk.languageFor({ shop, channel, thread: null, command: 'log' });
}

async function vanBlocks(
	desk: Seen,
	shop: string,
	vans: Awaited<ReturnType<typeof atWork>>,
	words: ReturnType<typeof pageWords>,
): Promise<types.KnownBlock[]> {
	if (vans.length === 0) return [lines([plainLine(words.noVans)])];
	const blocks: types.KnownBlock[] = [];
	for (const { channel, build } of vans.slice(0, VANS_MAX)) {
		const language = await languageIn(desk, shop, channel);
		const open = await desk.lookUp({ shop, channel, command: 'log', text: 'review', build, language });
		blocks.push(
			lines([
				{
					type: 'rich_text_section',
					elements: [
						{ type: 'text', text: build, style: { bold: true } },
						{ type: 'text', text: words.inChannel },
						{ type: 'channel', channel_id: channel },
					],
				},
				...open.parts.slice(0, OPEN_LINES_MAX + 1).map((part) => plainLine(part.text)),
			]),
		);
	}
	if (vans.length > VANS_MAX) {
		const others = vans.slice(VANS_MAX).map(({ build }) => build);
		blocks.push(lines([plainLine(words.also([...new Set(others)].join(', ')).slice(0, 1000))]));
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
