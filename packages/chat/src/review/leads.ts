/**
 * Who signs in a shop. Whoever the bot's own configuration names (people, or a role of the platform) is its
 * administrator: a lead who may also make others leads. The leads they make, and those they take the right from, stand
 * in one setting beside the chain, read anew at every message, so that a removal holds at once in every process; that
 * it was done, by whom and when, is an entry of the chain.
 */

import type { Log, LogPerson } from '@lugbook/log';
import { z } from 'zod';
import type { Person, Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { refuse } from './about.js';
import { personNamed } from './people.js';

const KEY = 'leads';
/** Two administrators at the same moment: the second looks again and then writes. */
const TRIES = 20;

const listSchema = z.record(z.string(), z.object({ name: z.string(), isLead: z.boolean() }));
type LeadList = z.infer<typeof listSchema>;

/** What somebody may do in a shop right now. */
export interface Rights {
	readonly isLead: boolean;
	/** may say who is a lead */
	readonly isAdministrator: boolean;
}

export async function rightsOf(log: Log, shop: string, person: Person): Promise<Rights> {
	return rightsBy(listOf(await log.getSetting(shop, KEY)), person);
}

function rightsBy(list: LeadList, { id, lead }: Person): Rights {
	const said = Object.hasOwn(list, id) ? list[id]?.isLead : undefined;
	return { isLead: said ?? lead, isAdministrator: lead && said !== false };
}

function listOf(kept: string | null): LeadList {
	return kept === null ? {} : listSchema.parse(JSON.parse(kept));
}

/**
 * A person who is forgotten is no lead of the list any more. That the right was taken away stays, under the bare id:
 * else being forgotten would give it back to whom the configuration still names.
 * @returns whether the id stays
 */
export async function forgetLead(log: Log, shop: string, id: string): Promise<boolean> {
	for (let tries = 0; tries < TRIES; tries += 1) {
		const kept = await log.getSetting(shop, KEY);
		const list = listOf(kept);
		if (!Object.hasOwn(list, id)) return false;
		const { [id]: own, ...others } = list;
		const stays = own?.isLead === false;
		const after = stays ? { ...others, [id]: { name: id, isLead: false } } : others;
		if (await log.swapSetting(shop, KEY, kept, JSON.stringify(after))) return stays;
	}
	throw new Error('the list of leads is changed by others all the time');
}

const onlyAdministrators =
	"Only an administrator says who is a lead: whoever the bot's own configuration names as one.";

/** Makes somebody a lead or takes the right away, in the setting first: a removal must hold even when nothing else goes right. */
async function change(turn: Turn, who: string, isLead: boolean): Promise<Reply> {
	const { incoming, log } = turn;
	const { shop, person } = incoming;
	for (let tries = 0; tries < TRIES; tries += 1) {
		const kept = await log.getSetting(shop, KEY);
		const list = listOf(kept);
		if (!rightsBy(list, person).isAdministrator) return await refuse(turn, null, onlyAdministrators);
		const found = await personNamed(log, shop, who, peopleIn(list));
		if (typeof found === 'string') return listed(found, 'asker');
		if (found.id === person.id) {
			return listed(
				isLead
					? 'You are an administrator, and so a lead already.'
					: 'Another administrator has to take your right away, so that one always stays.',
				'asker',
			);
		}
		const shown = found.name === found.id ? found.id : `${found.name} (${found.id})`;
		const before = Object.hasOwn(list, found.id) ? list[found.id]?.isLead : undefined;
		if (before === isLead)
			return listed(isLead ? `${shown} is a lead already.` : `${shown} is no lead already.`, 'asker');
		const after = JSON.stringify({ ...list, [found.id]: { name: found.name, isLead } });
		if (!(await log.swapSetting(shop, KEY, kept, after))) continue;
		try {
			await log.append({
				...turn.entry(null),
				kind: 'settings',
				topic: null,
				follows: null,
				state: null,
				// The chain keeps no id: the pseudonym where there is one; name and id stand in the text as typed.
				body: { leads: isLead ? 'added' : 'removed', personTag: found.tag },
			});
		} catch (error) {
			// Nobody is made a lead without a trace; a removal stands all the same.
			if (isLead) await log.swapSetting(shop, KEY, after, kept ?? JSON.stringify({}));
			throw error;
		}
		return listed(
			isLead
				? `${shown} is now a lead and may sign.`
				: `${shown} is no lead any more, from this moment on. What was signed stays signed.`,
			'channel',
		);
	}
	return listed('Others are changing the list of leads right now. Please say it again.', 'asker');
}

/** People who are known by the list alone. */
function peopleIn(list: LeadList): LogPerson[] {
	return Object.entries(list).map(([id, { name }]) => ({ id, name, tag: null }));
}

async function show(turn: Turn): Promise<Reply> {
	const list = listOf(await turn.log.getSetting(turn.incoming.shop, KEY));
	const line = (id: string, name: string) => (name === id ? id : `${name} (${id})`);
	const lines = Object.entries(list)
		.toSorted(([, a], [, b]) => Number(b.isLead) - Number(a.isLead) || a.name.localeCompare(b.name))
		.map(([id, { name, isLead }]) => `${line(id, name)}: ${isLead ? 'lead' : 'no lead any more'}`);
	return listed(
		[
			lines.length === 0 ? 'No leads were added here.' : 'Leads said here',
			...lines,
			"Administrators, and leads with them, are those whom the bot's own configuration names.",
		].join('\n'),
		'asker',
	);
}

export const leadVerbs: readonly Verb[] = [
	{
		usage: 'leads [add|remove NAME], digest on|off',
		help: 'who may sign; what is unsigned, daily into this channel',
		pattern: /^leads(?:\s+list)?$/i,
		run: show,
	},
	{
		usage: 'leads add|remove NAME',
		help: null,
		pattern: /^leads\s+(add|remove)\s+(\S[\s\S]{0,199})$/i,
		run: (turn, match) =>
			change(turn, (match[2] as string).trim(), (match[1] as string).toLowerCase() === 'add'),
	},
];
