/** From a delivery to what is shown: one path for commands, mentions, private messages, buttons and forms. */

import type { Chat, Incoming, Reply } from '@lugbook/chat';
import type { Deliveries } from './deliveries.js';
import { errorFacts, type Logger } from './log.js';

const PLATFORM = 'discord';

/** A server as the log names it; people who write in private have a log of their own. */
export const shopOf = (guildId: string | null, userId: string): string =>
	guildId === null ? `${PLATFORM}:user:${userId}` : `${PLATFORM}:${guildId}`;

export type Asked = Omit<Incoming, 'platform' | 'person'> & { readonly user: { id: string; name: string } };

/** Where a reply goes. */
export interface Outlet {
	show(reply: Reply): Promise<void>;
	/** says that something failed */
	fail(text: string): Promise<void>;
}

const FAILED = 'Something failed on my side, and I gave no answer. Please ask again.';

export class Conversation {
	readonly #running = new Set<Promise<void>>();

	constructor(
		private readonly chat: Pick<Chat, 'handle'>,
		private readonly leads: ReadonlySet<string>,
		private readonly deliveries: Deliveries,
		private readonly log: Logger,
	) {}

	/** Answers and shows; never throws. */
	answer(asked: Asked, outlet: Outlet): Promise<void> {
		return this.attempt(asked, outlet, () => this.#answer(asked, outlet));
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
		outlet: Pick<Outlet, 'fail'>,
		work: () => Promise<void>,
	): Promise<void> {
		const { command, delivery, shop } = about;
		const running = work()
			.catch(async (error: unknown) => {
				this.log.error({ command, delivery, shop, ...errorFacts(error) }, 'failed');
				await outlet.fail(FAILED);
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

	async #answer({ user, ...asked }: Asked, outlet: Outlet): Promise<void> {
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
			const person = { ...user, lead: this.leads.has(user.id) };
			const reply = await this.chat.handle({ ...asked, platform: PLATFORM, person });
			// Kept by this process but never shown: the repetition is the chance to show it.
			isShown = reply.repeated && before !== 'unshown';
			if (!isShown) await outlet.show(reply);
			isShown = true;
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
}
