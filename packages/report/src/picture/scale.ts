/** A scale's end and the distance of its ticks. */
export interface Scale {
	readonly min: number;
	readonly max: number;
	readonly step: number;
}

/**
 * A scale whose ticks fall on round numbers (1, 2, 2.5 or 5 times a power of ten) and that holds both ends.
 * @param most how many steps there may be
 */
export function roundScale(lowest: number, highest: number, most: number): Scale {
	const low = Math.min(0, lowest);
	// Where everything is zero, or as good as zero, there is still an axis to draw.
	const high = highest > 1e-6 || low < -1e-6 ? Math.max(0, highest) : 1;
	const span = high - low;
	const power = 10 ** Math.floor(Math.log10(span / most));
	const step = ([1, 2, 2.5, 5, 10, 20].find((factor) => steps(factor * power) <= most) as number) * power;
	return { min: down(low, step), max: up(high, step), step };

	function steps(size: number): number {
		return Math.round((up(high, size) - down(low, size)) / size);
	}
}

// A hair of floating point must not add a whole step.
function up(value: number, step: number): number {
	return Math.ceil(value / step - 1e-9) * step;
}

function down(value: number, step: number): number {
	return Math.floor(value / step + 1e-9) * step;
}

/**
 * Places for labels beside wanted heights, so that none covers another: as near to what is wanted as the gap allows,
 * in the same order, within the two ends.
 */
export function spread(
	wanted: readonly number[],
	gap: number,
	ends: { readonly from: number; readonly to: number },
): number[] {
	const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] as number) - (wanted[b] as number));
	const placed = new Array<number>(wanted.length);
	let next = ends.from;
	for (const index of order) {
		placed[index] = Math.max(wanted[index] as number, next);
		next = placed[index] + gap;
	}
	let limit = ends.to;
	for (const index of order.toReversed()) {
		placed[index] = Math.min(placed[index] as number, limit);
		limit = placed[index] - gap;
	}
	return placed;
}
