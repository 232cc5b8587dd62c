import { type Context, restSchema } from '@lugbook/core';
import type { Given, Previous } from '@lugbook/language';
import type { Entry, Log } from '@lugbook/log';
import { z } from 'zod';
import { answerSchema } from './answer.js';
import { isFromBuild } from './build/borrowed.js';

const given = z.object({
	name: z.string(),
	value: z.union([z.number(), z.string(), z.boolean(), z.array(z.record(z.string(), z.unknown()))]),
	said: z.string(),
});

/** What the chain holds of an exchange: the request as read and the answer; never the text as typed. */
const exchangeBodySchema = z.object({
	version: z.string(),
	request: z
		.object({
			topic: z.string(),
			given: z.array(given),
			asked: z.string().nullable(),
			context: z.object({
				region: z.enum(['us', 'eu']),
				units: z.enum(['us', 'metric']),
				language: z.enum(['en', 'es', 'de']),
			}),
			/** equipment that the question spoke of */
			named: z.array(z.string()).optional(),
		})
		.nullable(),
	/** values of the build that the answer rests on */
	rests: z.array(restSchema).optional(),
	/** for an unchanged question worked out again from its build: the answer under which it was asked */
	askedIn: z.int().min(1).optional(),
	answer: answerSchema,
});
export type ExchangeBody = z.infer<typeof exchangeBodySchema>;

export function exchangeOf(entry: Entry): ExchangeBody | null {
	if (entry.kind !== 'exchange') return null;
	const parsed = exchangeBodySchema.safeParse(entry.body);
	return parsed.success ? parsed.data : null;
}

export interface Remembered extends Previous {
	readonly entry: number;
	readonly context: Context;
	readonly exchange: ExchangeBody;
	/** equipment that the question spoke of */
	readonly named: readonly string[];
}

/** The question a message may go on with: the newest of its thread that had a topic. Read from the log, so it survives a restart. */
export async function lastQuestion(
	log: Log,
	where: {
		readonly shop: string;
		readonly channel: string;
		readonly thread: string | null;
		readonly personId: string;
	},
): Promise<Remembered | null> {
	const { entries } = await log.find(where.shop, {
		channel: where.channel,
		thread: where.thread,
		kinds: ['exchange'],
		// In the channel itself only the asker's own last question can be meant.
		...(where.thread === null ? { personId: where.personId } : {}),
		limit: 10,
	});
	for (const entry of [...entries, ...(await shownAt(log, where))]) {
		const exchange = exchangeOf(entry);
		// "why" and "show the working" are about a question and are not one themselves.
		if (exchange?.request != null && exchange.answer.status !== 'listed') {
			return {
				topic: exchange.request.topic,
				// What came from the build is asked of it anew: it may have changed since.
				given: (exchange.request.given as Given[]).filter((given) => !isFromBuild(given)),
				named: exchange.request.named ?? [],
				asked: exchange.request.asked,
				entry: entry.number,
				context: exchange.request.context,
				exchange,
			};
		}
	}
	return null;
}

/** Where an answer stands on its platform: the message that shows it. */
export interface Shown {
	readonly shop: string;
	readonly channel: string;
	/** the platform's id of the message */
	readonly message: string;
	readonly entry: number;
}

/** Remembers which message shows an answer, so that a thread under it goes on with its question. */
export async function rememberShown(log: Log, { shop, channel, message, entry }: Shown): Promise<void> {
	const places = {
		[`entry shown as ${channel} ${message}`]: String(entry),
		[`message of ${entry}`]: JSON.stringify({ channel, message }),
	};
	// After a power cut the thread stands for itself, and the answer can be asked for by its number.
	await log.setSettings(shop, places, { lasting: false });
}

const placeSchema = z.object({ channel: z.string(), message: z.string() });

/** The message that shows an answer, where its platform told. */
export async function placeOf(
	log: Log,
	shop: string,
	entry: number,
): Promise<{ readonly channel: string; readonly message: string } | null> {
	const kept = await log.getSetting(shop, `message of ${entry}`);
	return kept === null ? null : placeSchema.parse(JSON.parse(kept));
}

/** The answer that the message at the head of a thread shows. */
async function shownAt(
	log: Log,
	where: { readonly shop: string; readonly channel: string; readonly thread: string | null },
): Promise<Entry[]> {
	if (where.thread === null) return [];
	const number = await log.getSetting(where.shop, `entry shown as ${where.channel} ${where.thread}`);
	const entry = number === null ? null : await log.entry(where.shop, Number(number));
	if (entry === null) return [];
	// Under "why" or the working one goes on with the question that it is about.
	const about =
		exchangeOf(entry)?.answer.status === 'listed' && entry.follows !== null
			? await log.entry(where.shop, entry.follows)
			: null;
	return about === null ? [entry] : [about];
}

const boundBody = z.object({ build: z.string() });

/** The build a channel works on, or null. */
export async function buildOf(log: Log, shop: string, channel: string): Promise<string | null> {
	const { entries } = await log.find(shop, { channel, kinds: ['channel-bound'], limit: 1 });
	const body = boundBody.safeParse(entries[0]?.body);
	return body.success ? body.data.build : null;
}
