/** Who asks: the name for the record, and the groups of the workspace that the shop's settings call leads. */

import { errorFacts, type Leads, type ProgramLog } from '@lugbook/chat';
import { repeatedly } from './calls.js';

const NAME_KEPT_MS = 24 * 60 * 60 * 1000;
/** Who is a lead is looked up at each message; this only spares the same question within one burst. */
const GROUP_KEPT_MS = 10_000;
const NAMES_MAX = 10_000;

/** The part of the platform's client that is used here. */
export interface UserLookup {
	readonly users: {
		info(question: { user: string }): Promise<{
			user?: { name?: string; real_name?: string; profile?: { display_name?: string } };
		}>;
	};
	readonly usergroups: {
		readonly users: { list(question: { usergroup: string }): Promise<{ users?: string[] }> };
	};
}

export class People {
	readonly #names = new Map<string, { name: string; untilMs: number }>();
	readonly #groups = new Map<string, { members: ReadonlySet<string>; untilMs: number }>();

	constructor(
		readonly leads: Leads,
		private readonly log: ProgramLog,
		private readonly nowMs: () => number,
	) {}

	async nameOf(id: string, shop: string, client: UserLookup): Promise<string> {
		const key = `${shop} ${id}`;
		const known = this.#names.get(key);
		if (known && known.untilMs > this.nowMs()) return known.name;
		try {
			const { user } = await repeatedly(() => client.users.info({ user: id }));
			const name = user?.profile?.display_name || user?.real_name || user?.name || id;
			if (this.#names.size >= NAMES_MAX) this.#names.clear();
			this.#names.set(key, { name, untilMs: this.nowMs() + NAME_KEPT_MS });
			return name;
		} catch (error) {
			// A question is answered under the bare id rather than not at all.
			this.log.warn(errorFacts(error), 'could not look up a name');
			return id;
		}
	}

	/** The leads' groups that a person is in. A group that can't be looked up makes nobody a lead. */
	async groupsOf(id: string, shop: string, client: UserLookup): Promise<string[]> {
		const found: string[] = [];
		for (const group of this.leads.roles) {
			const key = `${shop} ${group}`;
			let known = this.#groups.get(key);
			if (known === undefined || known.untilMs <= this.nowMs()) {
				try {
					const { users = [] } = await repeatedly(() => client.usergroups.users.list({ usergroup: group }));
					known = { members: new Set(users), untilMs: this.nowMs() + GROUP_KEPT_MS };
					this.#groups.set(key, known);
				} catch (error) {
					this.log.warn({ group, ...errorFacts(error) }, 'could not look up a group of leads');
					continue;
				}
			}
			if (known.members.has(id)) found.push(group);
		}
		return found;
	}
}
