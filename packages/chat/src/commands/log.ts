import { resend } from '../again.js';
import { bookVerbs } from '../book/verbs.js';
import { listed } from '../reply.js';
import { findVerbs } from '../review/find.js';
import { reviewVerbs } from '../review/verbs.js';
import type { Verb } from '../verb.js';

const verify: Verb = {
	usage: 'verify',
	help: 'walks the whole log and says whether it is unbroken',
	pattern: /^verify$/i,
	run: async (turn) => {
		const report = await turn.log.verify(turn.incoming.shop);
		const broken = report.shops.flatMap((shop) => shop.problem ?? [])[0];
		const count = report.shops.reduce((sum, shop) => sum + shop.entries, 0);
		const verdict =
			broken === undefined
				? `The log is unbroken: ${count} entries.`
				: `The log is broken: ${broken.message}.`;
		return listed(verdict, 'channel');
	},
};

export const logVerbs: readonly Verb[] = [...bookVerbs, ...findVerbs, ...reviewVerbs, verify, resend];
export const logExample = '/log show unsigned wire last week';
