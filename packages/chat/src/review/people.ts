/** Finds a person of a shop by what others call them. */

import type { Log, LogPerson } from '@lugbook/log';

/** Stands for whoever was forgotten in the entry that says so. */
export const NOBODY = 'nobody';

/** How the platforms write people: a member id, or a number. Whoever never asked anything is known by that alone. */
const PLATFORM_ID = /^(?:[UW][A-Z0-9]{5,20}|\d{15,20})$/;

/**
 * @param said a mention, an id or a name as it is shown
 * @param more people who are known from elsewhere than their own entries
 * @returns the person, or why there is none
 */
export async function personNamed(
	log: Log,
	shop: string,
	said: string,
	more: readonly LogPerson[] = [],
): Promise<LogPerson | string> {
	const name = said
		.trim()
		.replace(/^<@!?([^<>|]+)(?:\|[^<>]*)?>$/, '$1')
		.replace(/^@/, '')
		.trim();
	const own = (await log.people(shop)).filter(({ id }) => id !== NOBODY);
	const known = [...own, ...more.filter(({ id }) => !own.some((one) => one.id === id))];
	const byId = known.find(({ id }) => id === name);
	if (byId !== undefined) return byId;
	const alike = (one: string) => one.normalize('NFKC').trim().toLowerCase();
	const byName = known.filter((one) => alike(one.name) === alike(name));
	const [first] = byName;
	if (byName.length > 1) {
		const ids = byName.map(({ id }) => id).join(', ');
		return `There are ${byName.length} people called "${name.slice(0, 60)}" here: say which by the id, ${ids}.`;
	}
	if (first !== undefined) return first;
	if (PLATFORM_ID.test(name)) return { id: name, name, tag: null };
	return `I know nobody called "${name.slice(0, 60)}" here. Mention them, or let them ask me something first.`;
}
