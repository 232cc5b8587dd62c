import type { Log } from '@lugbook/log';
import { forgetUnshown } from './bot/outbox.js';

/**
 * Forgets a person of a shop: name, id and words as typed in the log, and what waits to be shown to them. The
 * calculations stay, and the chain still verifies.
 * @returns how many entries were erased
 */
export async function forgetPerson(
	log: Log,
	person: { readonly platform: string; readonly shop: string; readonly personId: string },
): Promise<number> {
	await forgetUnshown(log, person);
	return await log.forget(person.shop, person.personId);
}
