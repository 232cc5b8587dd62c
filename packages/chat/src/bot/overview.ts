import type { Log } from '@lugbook/log';

/** A channel and the build it works on. */
interface AtWork {
	readonly channel: string;
	readonly build: string;
}

/** Which channels of a shop work on which builds, those chosen last first. */
export async function atWork(log: Log, shop: string): Promise<AtWork[]> {
	const { entries } = await log.find(shop, { kinds: ['channel-bound'], limit: 200 });
	const found = new Map<string, AtWork>();
	for (const { channel, build } of entries) {
		if (build !== null && !found.has(channel)) found.set(channel, { channel, build });
	}
	return [...found.values()];
}
