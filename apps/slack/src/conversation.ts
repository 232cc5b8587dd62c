/** From a delivery to what is shown: one path for commands, mentions, private messages, buttons and forms. */

import type { Audience, Chat, Incoming, Reply } from '@lugbook/chat';
import type { Deliveries } from './deliveries.js';
import { errorFacts, type Logger } from './log.js';
import type { People, UserLookup } from './people.js';
import { bare, type Page, pagesOf } from './render.js';

const PLATFORM = 'slack';

/** A workspace as the log names it. */
export const shopOf = (teamId: string): string => `${PLATFORM}:${teamId}`;

/** Puts one message where the question came from. */
export type Show = (page: Page, audience: Audience) => Promise<void>;

/** A message as it was delivered: the person by id alone. */
export type Asked = Omit<Incoming, 'platform' | 'person'> & { readonly user: string };

const FAILED: Page = {
	text: 'Something failed on my side, and I gave no answer. Please ask again.',
	blocks: [],
};

export class Conversation {
	readonly #running = new Set<Promise<void>>();

	constructor(
		private readonly chat: Pick<Chat, 'handle'>,
		private readonly people: People,
		private readonly deliveries: Deliveries,
		private readonly log: Logger,
	) {}

	/** Answers and shows; never throws, so that a listener has nothing left to go wrong after its acknowledgement. */
	answer(asked: Asked, client: UserLookup, show: Show): Promise<void> {
		return this.attempt(asked, show, () => this.#answer(asked, client, show));
	}

	/** Looks something up without keeping or showing it. */
	async lookUp(asked: Pick<Asked, 'shop' | 'channel' | 'command' | 'text'>): Promise<Reply> {
		const person = { id: PLATFORM, name: PLATFORM, lead: false };
		return this.chat.handle({
			...asked,
			platform: PLATFORM,
			thread: null,
			delivery: null,
			person,
			keep: false,
		});
	}

	/** Does what a person asked for; when it fails, says so to the person and to the program's log. */
	attempt(
		about: Pick<Asked, 'command' | 'delivery' | 'shop'>,
		show: Show,
		work: () => Promise<void>,
	): Promise<void> {
		const { command, delivery, shop } = about;
		const running = work()
			.catch(async (error: unknown) => {
				this.log.error({ command, delivery, shop, ...errorFacts(error) }, 'failed');
				await show(FAILED, 'asker');
			})
			.catch((error: unknown) => {
				this.log.error(
					{ command, delivery, shop, ...errorFacts(error) },
					'could not even say that it failed',
				);
			})
			.finally(() => this.#running.delete(running));
		this.#running.add(running);
		return running;
	}

	/** Resolves when everything taken on has been done. */
	async settled(): Promise<void> {
		await Promise.all(this.#running);
	}

	async #answer({ user, ...asked }: Asked, client: UserLookup, show: Show): Promise<void> {
		const startedMs = performance.now();
		const { command, delivery, shop } = asked;
		const id = `${shop} ${delivery}`;
		const before = this.deliveries.begin(id);
		if (before === 'done') {
			this.log.info({ command, delivery, shop }, 'delivered again, answered already');
			return;
		}
		let isShown = false;
		try {
			const person = await this.people.person(user, client);
			const reply = await this.chat.handle({ ...asked, platform: PLATFORM, person });
			// Kept by this process but never shown: the repetition is the chance to show it.
			isShown = reply.repeated && before !== 'unshown';
			for (const page of isShown ? [] : pagesOf(reply)) {
				await this.#showOne(show, page, reply.audience);
				isShown = true;
			}
			const { status, topic, entry } = reply.answer;
			const ms = Math.round(performance.now() - startedMs);
			this.log.info(
				{ command, delivery, shop, status, topic, entry, repeated: reply.repeated, ms },
				'answered',
			);
		} finally {
			this.deliveries.end(id, isShown);
		}
	}

	/** A message the platform refuses for its blocks is shown as its text: better plain than not at all. */
	async #showOne(show: Show, page: Page, audience: Audience): Promise<void> {
		try {
			await show(page, audience);
		} catch (error) {
			if (!isRefusal(error)) throw error;
			this.log.error(errorFacts(error), 'the platform refused the blocks; shown as plain text');
			await show(bare(page), audience);
		}
	}
}

function isRefusal(error: unknown): boolean {
	const { data, status } = error as { data?: { error?: unknown }; status?: unknown };
	return data?.error === 'invalid_blocks' || data?.error === 'msg_blocks_too_long' || status === 400;
}
