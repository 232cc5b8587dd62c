/** Who asks: the name for the record, and whether the shop's settings call this person a lead. */

import type { Person } from '@lugbook/chat';
import { errorFacts, type Logger } from './log.js';

const REMEMBERED_MS = 24 * 60 * 60 * 1000;

/** The part of the platform's client that is used here. */
export interface UserLookup {
	readonly users: {
		info(question: { user: string }): Promise<{
			user?: { name?: string; real_name?: string; profile?: { display_name?: string } };
		}>;
	};
}

export class People {
	readonly #names = new Map<string, { name: string; untilMs: number }>();

	constructor(
		private readonly leads: ReadonlySet<string>,
		private readonly log: Logger,
		private readonly nowMs: () => number,
	) {}

	async person(id: string, client: UserLookup): Promise<Person> {
		return { id, name: await this.#nameOf(id, client), lead: this.leads.has(id) };
	}

	async #nameOf(id: string, client: UserLookup): Promise<string> {
		const known = this.#names.get(id);
		if (known && known.untilMs > this.nowMs()) return known.name;
		try {
			const { user } = await client.users.info({ user: id });
			const name = user?.profile?.display_name || user?.real_name || user?.name || id;
			this.#names.set(id, { name, untilMs: this.nowMs() + REMEMBERED_MS });
			return name;
		} catch (error) {
			// A question is answered under the bare id rather than not at all.
			this.log.warn(errorFacts(error), 'could not look up a name');
			return id;
		}
	}
}
