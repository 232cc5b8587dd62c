import type { Log } from '@lugbook/log';

/** Names of a shop's builds, those worked on last first, each with how many of its entries chose or told it. */
export async function buildsOf(log: Log, shop: string): Promise<{ name: string; told: number }[]> {
	const told = new Map<string, number>();
	const names = await log.fold(
		shop,
		{ kinds: ['channel-bound', 'build-changed'] },
		told,
		(before, { build, kind }) => {
			if (build === null) return before;
			const count = (before.get(build) ?? 0) + (kind === 'build-changed' ? 1 : 0);
			// Put in anew, it comes last.
			before.delete(build);
			before.set(build, count);
			return before;
		},
	);
	return [...names].map(([name, count]) => ({ name, told: count })).reverse();
}
