/**
 * What Slack refuses, and what a careful bot must not send although Slack would take it.
 *
 * Sources: docs.slack.dev/reference/methods/chat.postMessage (text truncated over 40,000 characters;
 * `no_text`, `msg_too_long`, `invalid_blocks`); docs.slack.dev/reference/views (title, submit and close 24,
 * private_metadata 3000, callback_id 255); docs.slack.dev/messaging/formatting-message-text (`<!here>`,
 * `<!channel>`, `<!everyone>` notify all; a top-level text is what notifications and screen readers use);
 * issue 2509 of slackapi/bolt-js (all blocks of a message together about 13,200 characters, measured by the
 * reporter: `msg_blocks_too_long`).
 */

import { type JsonObject, objectOf, stringOf } from '../common/json.js';
import {
	blockProblems,
	blockTextLength,
	broadcasts,
	mrkdwnTexts,
	type Problem,
	suggestionProblems,
} from './blocks.js';

const TEXT_MAX = 40_000;
const BLOCKS_TEXT_MAX = 13_200;

export interface Verdict {
	/** the platform's error code when it would refuse; absent when it would take the payload all the same */
	readonly error?: string;
	readonly problems: readonly Problem[];
}

const MASS_MENTION = /<!(?:channel|here|everyone|subteam\^[A-Z0-9]+)(?:\|[^>]*)?>/;

function massMentions(message: JsonObject): Problem[] {
	const problems: Problem[] = [];
	// With `mrkdwn: false` a text is not formatted, but its mentions are still read: the check stays.
	const texts = [stringOf(message.text), ...mrkdwnTexts(message.blocks), ...mrkdwnTexts(message.attachments)];
	for (const text of texts) {
		const found = MASS_MENTION.exec(text)?.[0];
		if (found) problems.push({ where: 'text', rule: `must not notify a whole channel (${found})` });
	}
	for (const found of broadcasts(message.blocks)) {
		problems.push({ where: 'blocks', rule: `must not notify a whole channel (${found})` });
	}
	const parses = message.parse === 'full' || message.link_names === true || message.link_names === 'true';
	if (parses && texts.some((text) => /(^|[^\w])@(channel|here|everyone)\b/.test(text))) {
		problems.push({ where: 'parse', rule: 'parse or link_names would turn @channel into a notification' });
	}
	return problems;
}

/** Judges the arguments of chat.postMessage and its relatives, or the body sent to a response_url. */
export function judgeMessage(message: JsonObject): Verdict {
	const text = stringOf(message.text);
	const hasBlocks = Array.isArray(message.blocks) && message.blocks.length > 0;
	if (message.blocks !== undefined) {
		const problems = blockProblems(message.blocks, 'message');
		if (problems.length > 0) return { error: 'invalid_blocks', problems };
		if (blockTextLength(message.blocks) > BLOCKS_TEXT_MAX) {
			const rule = `must be at most ${BLOCKS_TEXT_MAX} characters in all blocks together`;
			return { error: 'msg_blocks_too_long', problems: [{ where: 'blocks', rule }] };
		}
	}
	if (text.length > TEXT_MAX) {
		const rule = `must be at most ${TEXT_MAX} characters (got ${text.length})`;
		return { error: 'msg_too_long', problems: [{ where: 'text', rule }] };
	}
	if (text.trim() === '' && !hasBlocks && message.attachments === undefined) {
		return { error: 'no_text', problems: [{ where: 'text', rule: 'is required without blocks' }] };
	}
	const problems = massMentions(message);
	if (hasBlocks && text.trim() === '') {
		problems.push({ where: 'text', rule: 'is needed beside blocks, for notifications and screen readers' });
	}
	return { problems };
}

function plainText(where: string, value: unknown, max: number, required: boolean): Problem[] {
	if (value === undefined) return required ? [{ where, rule: 'is required' }] : [];
	const text = objectOf(value);
	if (text.type !== 'plain_text') return [{ where, rule: 'must be plain_text' }];
	const { length } = stringOf(text.text);
	if (length < 1 || length > max) return [{ where, rule: `must be 1 to ${max} characters (got ${length})` }];
	return [];
}

/** Judges a view for views.open, views.update, views.push or views.publish. */
export function judgeView(view: JsonObject, surface: 'modal' | 'home'): Verdict {
	const problems: Problem[] = [];
	if (view.type !== surface) problems.push({ where: 'type', rule: `must be ${surface}` });
	const hasInput =
		Array.isArray(view.blocks) && view.blocks.some((block) => objectOf(block).type === 'input');
	if (surface === 'modal') {
		problems.push(...plainText('title', view.title, 24, true));
		problems.push(...plainText('submit', view.submit, 24, hasInput));
		problems.push(...plainText('close', view.close, 24, false));
	}
	const { length: metadata } = stringOf(view.private_metadata);
	if (metadata > 3000)
		problems.push({ where: 'private_metadata', rule: `must be at most 3000 (got ${metadata})` });
	const { length: callback } = stringOf(view.callback_id);
	if (callback > 255) problems.push({ where: 'callback_id', rule: `must be at most 255 (got ${callback})` });
	problems.push(...blockProblems(view.blocks, surface));
	return problems.length > 0 ? { error: 'invalid_arguments', problems } : { problems };
}

/** Judges the answer to a `block_suggestion`. */
export function judgeSuggestions(answer: JsonObject): Verdict {
	const groups = Array.isArray(answer.option_groups) ? answer.option_groups : [];
	const problems = groups.flatMap((group) => suggestionProblems(objectOf(group).options));
	if (answer.options !== undefined) problems.push(...suggestionProblems(answer.options));
	if (answer.options === undefined && answer.option_groups === undefined) {
		problems.push({ where: 'options', rule: 'or option_groups is required' });
	}
	if (groups.length > 100) problems.push({ where: 'option_groups', rule: 'must have at most 100 items' });
	return problems.length > 0 ? { error: 'invalid_options', problems } : { problems };
}
