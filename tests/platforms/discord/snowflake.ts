/**
 * Ids as the platform makes them: milliseconds since 2015 shifted by 22 bits (discord-api-docs, reference:
 * "Snowflakes"). Strictly rising, whatever the clock does.
 */
const EPOCH_MS = 1_420_070_400_000;

export class Snowflakes {
	private last = 0n;

	constructor(private readonly nowMs: () => number) {}

	next(): string {
		const fromClock = BigInt(Math.max(0, Math.floor(this.nowMs()) - EPOCH_MS)) << 22n;
		this.last = fromClock > this.last ? fromClock : this.last + 1n;
		return String(this.last);
	}
}
