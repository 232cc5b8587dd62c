/**
 * Texts that try to be more than text on either platform, and what is wrong with a message in which one of them
 * succeeded. The judges know the platforms' published markup and nothing of how the bots write it.
 */

import fc from 'fast-check';
import { isObject, type JsonObject, objectOf, stringOf } from './json.js';

const TRICKS = [
	...['@everyone', '@here', '@channel', '<!channel>', '<!here|here>', '<!everyone>', '<!subteam^S01|leads>'],
	...['<@U01>', '<@U01|bob>', '<#C01|van-one>', '<@100000000000000011>', '<@!100000000000000011>'],
	...['<@&100000000000000021>', '<#100000000000000003>', '</ask:1>', '<:smile:1>', '<a:wave:1>', '<t:0:R>'],
	...['<https://evil.example|click>', '[click](https://evil.example)', '[No. 2](https://evil.example)'],
	...[
		'https://evil.example/x',
		'http://a.example',
		'www.evil.example',
		'<mailto:a@evil.example|mail>',
		'No. 2',
	],
	...[
		'**bold**',
		'*',
		'_',
		'~',
		'~~',
		'`',
		'```',
		'||',
		'> ',
		'>>> ',
		'# ',
		'-# ',
		'- ',
		'1. ',
		'\\',
		'\\\\',
	],
	...['&lt;!channel&gt;', '&amp;', '&', '<', '>', '[', ']', '(', ')', '](', '!', '@', '\n', '\r\n', ' ', ':'],
	...['\u202e', '\u200b', '\u0000', '\ud83d', '😀', ':smile:', '{{'],
] as const;

/** Any text of any signs, with what the platforms read as more than text in it. */
export const nasty: fc.Arbitrary<string> = fc
	.array(
		fc.oneof(
			{ weight: 3, arbitrary: fc.constantFrom(...TRICKS) },
			{ weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
			{ weight: 1, arbitrary: fc.string({ maxLength: 12 }) },
		),
		{ minLength: 1, maxLength: 10 },
	)
	.map((pieces) => pieces.join(''));

/** Elements of Slack's blocks that show their text as it stands; everything else has to be named here to be let through. */
const PLAIN_TYPES = new Set([
	...['rich_text', 'rich_text_section', 'rich_text_preformatted', 'text', 'header', 'context', 'actions'],
	...['plain_text', 'button', 'static_select'],
]);

/**
 * @param message arguments of a method that posts or changes a message, or the body for a response_url
 * @param links addresses that may stand behind words
 */
export function slackFaults(message: JsonObject, links: readonly string[] = []): string[] {
	const faults: string[] = [];
	const text = stringOf(message.text);
	if (/[<>]|&(?!amp;|lt;|gt;)/.test(text)) faults.push(`markup in the text: ${JSON.stringify(text)}`);
	if (message.parse !== 'none') faults.push(`parse is ${String(message.parse)}`);
	if (message.link_names !== false && message.link_names !== 'false') faults.push('link_names is not off');
	if (message.attachments !== undefined) faults.push('there are attachments');
	const look = (value: unknown): void => {
		if (Array.isArray(value)) value.forEach(look);
		if (!isObject(value)) return;
		if (value.type === 'link') {
			if (!links.includes(stringOf(value.url))) faults.push(`a link to ${String(value.url)}`);
		} else if (value.type !== undefined && !PLAIN_TYPES.has(stringOf(value.type))) {
			faults.push(`an element of type ${String(value.type)}`);
		} else if (value.url !== undefined) faults.push(`an address beside a link: ${String(value.url)}`);
		if (value.emoji === true) faults.push('emoji are read');
		Object.values(value).forEach(look);
	};
	look(message.blocks);
	return faults;
}

/** Marks that the bot itself sets: whole lines bold, struck or small. */
const OWN_MARKS: readonly (readonly [RegExp, string])[] = [
	[/^\*\*([\s\S]*)\*\*$/, '$1'],
	[/^~~([\s\S]*)~~$/, '$1'],
	[/^-# /, ''],
];

/**
 * @param body of a request that posts or changes a message
 * @param links addresses that may stand behind words
 */
export function discordFaults(body: JsonObject, links: readonly string[] = []): string[] {
	const faults: string[] = [];
	const { parse, ...others } = objectOf(body.allowed_mentions);
	if (!Array.isArray(parse) || parse.length > 0) faults.push('allowed_mentions lets something through');
	const named = Object.entries(others).filter(([, value]) => value !== false);
	if (named.length > 0) faults.push(`allowed_mentions names ${JSON.stringify(named)}`);
	if (body.embeds !== undefined && JSON.stringify(body.embeds) !== '[]') faults.push('there are embeds');
	let content = stringOf(body.content);
	for (const url of links) content = content.replace(`](${url})`, '').replace(/(?<!\\)\[(?=No\. \d+)/, '');
	for (const line of content.split('\n')) {
		const bare = OWN_MARKS.reduce((rest, [mark, inside]) => rest.replace(mark, inside), line);
		// What a backslash stands before is shown as it is.
		const rest = bare.replace(/\\[!-/:-@[-`{-~]/g, 'x');
		const found =
			/[\\*_~`|<>#[\]@]/.exec(rest) ?? /^\s*(?:[-+] |\d+\. )/.exec(rest) ?? /[a-z]:\/\//i.exec(rest);
		if (found !== null) faults.push(`markup ${JSON.stringify(found[0])} in ${JSON.stringify(line)}`);
	}
	return faults;
}
