/**
 * Limits of a message, from discord-api-docs `resources/message.mdx`: content 2000; 10 embeds; embed title 256,
 * description 4096, 25 fields of 256 and 1024, footer 2048, author 256, together 6000 over all embeds; nonce 25;
 * file description 1024; and the rules of allowed_mentions: without it a normal message notifies everyone it
 * names, an answer to an interaction the users it names; an edit without it is read by the defaults again.
 */

import { type JsonObject, objectOf, stringOf } from '../common/json.js';
import { checkMessageComponents, textDisplays } from './component-limits.js';
import { FormErrors } from './form-errors.js';

export const Flag = {
	suppressEmbeds: 4,
	ephemeral: 64,
	loading: 128,
	silent: 4096,
	componentsV2: 32_768,
} as const;

export type Origin = 'channel' | 'interaction';

export interface Pings {
	readonly everyone: boolean;
	readonly users: readonly string[];
	readonly roles: readonly string[];
}

function checkEmbeds(errors: FormErrors, embeds: unknown): void {
	let sum = 0;
	const text = (where: string, value: unknown, max: number, min = 0) => {
		errors.length(where, value, max, min);
		sum += stringOf(value).length;
	};
	errors.list('embeds', embeds, 10).forEach((embed, at) => {
		const path = `embeds.${at}`;
		text(`${path}.title`, embed.title, 256);
		text(`${path}.description`, embed.description, 4096);
		errors.list(`${path}.fields`, embed.fields, 25).forEach((field, index) => {
			text(`${path}.fields.${index}.name`, field.name, 256, 1);
			text(`${path}.fields.${index}.value`, field.value, 1024, 1);
		});
		if (embed.footer !== undefined) text(`${path}.footer.text`, objectOf(embed.footer).text, 2048, 1);
		if (embed.author !== undefined) text(`${path}.author.name`, objectOf(embed.author).name, 256, 1);
		const { color } = embed;
		if (color !== undefined && (typeof color !== 'number' || color < 0 || color > 0xffffff)) {
			errors.add(`${path}.color`, 'Must be 0 to 16777215');
		}
	});
	if (sum > 6000) errors.add('embeds', `Embed size exceeds maximum size of 6000 (got ${sum})`);
}

function checkAllowedMentions(errors: FormErrors, value: unknown): void {
	if (value === undefined || value === null) return;
	const allowed = objectOf(value);
	const parse = Array.isArray(allowed.parse) ? allowed.parse : [];
	for (const kind of ['users', 'roles'] as const) {
		const listed = errors.list(`allowed_mentions.${kind}`, allowed[kind], 100).length;
		if (listed > 0 && parse.includes(kind)) {
			errors.add('allowed_mentions', `parse:["${kind}"] and ${kind}: [ids...] are mutually exclusive.`);
		}
	}
}

/** Whom the platform would notify. */
export function pingsOf(message: JsonObject, origin: Origin): Pings {
	const texts = [stringOf(message.content), ...textDisplays(message.components)].join('\n');
	const ids = (pattern: RegExp) => [
		...new Set([...texts.matchAll(pattern)].map((match) => match[1] as string)),
	];
	const named = {
		everyone: /@(everyone|here)\b/.test(texts),
		users: ids(/<@!?(\d+)>/g),
		roles: ids(/<@&(\d+)>/g),
	};
	if (message.allowed_mentions === undefined || message.allowed_mentions === null) {
		return origin === 'channel' ? named : { everyone: false, users: named.users, roles: [] };
	}
	const allowed = objectOf(message.allowed_mentions);
	const parse = Array.isArray(allowed.parse) ? allowed.parse : [];
	const among = (kind: 'users' | 'roles') => {
		const listed = Array.isArray(allowed[kind]) ? (allowed[kind] as unknown[]) : [];
		return parse.includes(kind) ? named[kind] : named[kind].filter((id) => listed.includes(id));
	};
	return {
		everyone: named.everyone && parse.includes('everyone'),
		users: among('users'),
		roles: among('roles'),
	};
}

/** What a bot that repeats other people's words must not send, though the platform would take it. */
export function mentionRules(message: JsonObject, origin: Origin): { where: string; rule: string }[] {
	const pings = pingsOf(message, origin);
	const pinged = [...(pings.everyone ? ['everyone'] : []), ...pings.users, ...pings.roles];
	if (pinged.length > 0) {
		return [
			{ where: 'allowed_mentions', rule: `must not notify anyone (would notify ${pinged.join(', ')})` },
		];
	}
	const said = [stringOf(message.content), ...textDisplays(message.components)].join('\n');
	if (message.allowed_mentions === undefined && /@(everyone|here)\b|<@[!&]?\d+>/.test(said)) {
		return [
			{ where: 'allowed_mentions', rule: 'must be given with a text that names someone, on edits too' },
		];
	}
	return [];
}

/**
 * @param fileCount files that come with the body
 * @param before the message before an edit; absent for a new one
 */
export function checkMessage(message: JsonObject, fileCount: number, before?: JsonObject): FormErrors {
	const errors = new FormErrors();
	const whole: JsonObject = { ...before, ...message };
	const isV2 = (Number(whole.flags ?? 0) & Flag.componentsV2) !== 0;
	errors.length('content', message.content, 2000);
	checkEmbeds(errors, message.embeds);
	if (message.components !== undefined || isV2) checkMessageComponents(errors, whole.components, isV2);
	checkAllowedMentions(errors, message.allowed_mentions);
	errors.list('attachments', message.attachments, 10).forEach((file, at) => {
		errors.length(`attachments.${at}.description`, file.description, 1024);
	});
	if (fileCount > 10) errors.add('attachments', `Must be at most 10 files (got ${fileCount})`);
	if (message.nonce !== undefined && message.nonce !== null)
		errors.length('nonce', String(message.nonce), 25);
	if (isV2) {
		if (stringOf(whole.content) !== '') errors.add('content', "Can't be used with the components-v2 flag");
		if (Array.isArray(whole.embeds) && whole.embeds.length > 0) {
			errors.add('embeds', "Can't be used with the components-v2 flag");
		}
	}
	return errors;
}

/** True when there is nothing in it for anyone to see (error 50006). */
export function isEmptyMessage(message: JsonObject, fileCount: number): boolean {
	const filled = (value: unknown) => Array.isArray(value) && value.length > 0;
	const bare = stringOf(message.content).trim() === '' && fileCount === 0;
	return (
		bare &&
		!filled(message.embeds) &&
		!filled(message.components) &&
		!filled(message.attachments) &&
		message.poll === undefined
	);
}
