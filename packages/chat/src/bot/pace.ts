/** How fast one person may ask: a bucket of questions that fills again with time. */

export interface Pace {
	/** questions that may come at once */
	readonly burst: number;
	/** questions that come back in a minute */
	readonly perMinute: number;
}

/** Far above what hands type, far below what a script sends. */
export const defaultPace: Pace = { burst: 20, perMinute: 20 };

/** people whose bucket is remembered; a full one needs no remembering */
const REMEMBERED_MAX = 10_000;

interface Bucket {
	left: number;
	atMs: number;
	told: boolean;
}

export class Paces {
	readonly #buckets = new Map<string, Bucket>();

	constructor(
		private readonly pace: Pace,
		private readonly nowMs: () => number,
	) {}

	/** @returns `go`; `tell` when the person is too fast and should hear it; `hush` when they have heard it already */
	take(person: string): 'go' | 'tell' | 'hush' {
		const nowMs = this.nowMs();
		const { burst, perMinute } = this.pace;
		const before = this.#buckets.get(person) ?? { left: burst, atMs: nowMs, told: false };
		const filled = before.left + (Math.max(0, nowMs - before.atMs) / 60_000) * perMinute;
		const left = Math.min(burst, filled);
		const isAllowed = left >= 1;
		this.#buckets.delete(person);
		this.#buckets.set(person, { left: isAllowed ? left - 1 : left, atMs: nowMs, told: !isAllowed });
		if (this.#buckets.size > REMEMBERED_MAX) {
			const [oldest] = this.#buckets.keys();
			if (oldest !== undefined) this.#buckets.delete(oldest);
		}
		return isAllowed ? 'go' : before.told ? 'hush' : 'tell';
	}
}

/** "20/20": at once / a minute. */
export function paceOf(text: string | undefined): Pace {
	const [burst, perMinute] = (text ?? '').split('/').map(Number);
	return burst === undefined || perMinute === undefined ? defaultPace : { burst, perMinute };
}
