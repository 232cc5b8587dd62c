/** "/log root": the log in one hash, posted where others keep it too. */

import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { refuse } from './about.js';
import { rightsOf } from './leads.js';

async function root(turn: Turn): Promise<Reply> {
	const { shop, person } = turn.incoming;
	const { isLead } = await rightsOf(turn.log, shop, person);
	if (!isLead) return await refuse(turn, null, "Posting the log's root is for the leads of this shop.");
	const head = await turn.log.head(shop);
	if (head === null) return listed('The log of this shop has no entries yet.', 'asker');
	const tree = await turn.log.tree(shop, head.number);
	return listed(
		[
			`Root of this shop's log: ${tree.size} entries, ${tree.root}`,
			`Head ${head.number}:${head.hash}`,
			`Whoever keeps this message can show later that none of these ${tree.size} entries was changed or taken away.`,
		].join('\n'),
		'channel',
	);
}

export const rootVerb: Verb = {
	usage: 'root',
	help: null,
	pattern: /^root$/i,
	run: root,
};
