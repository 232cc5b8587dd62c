/**
 * How many slips of the thumb lie between two words: letters left out, put in, changed, or two neighbours swapped
 * (the restricted Damerau-Levenshtein distance).
 *
 * @returns the distance, or `most + 1` as soon as it is known to be larger than `most`
 */
export function editDistance(a: string, b: string, most: number): number {
	if (Math.abs(a.length - b.length) > most) return most + 1;
	let [beforeLast, last, current] = rows;
	for (let column = 0; column <= b.length; column += 1) last[column] = column;
	for (let row = 1; row <= a.length; row += 1) {
		const letter = a.charCodeAt(row - 1);
		current[0] = row;
		let smallest = row;
		for (let column = 1; column <= b.length; column += 1) {
			const same = letter === b.charCodeAt(column - 1);
			let cost = Math.min(
				(last[column] as number) + 1,
				(current[column - 1] as number) + 1,
				(last[column - 1] as number) + (same ? 0 : 1),
			);
			const swapped =
				row > 1 &&
				column > 1 &&
				letter === b.charCodeAt(column - 2) &&
				a.charCodeAt(row - 2) === b.charCodeAt(column - 1);
			if (swapped) cost = Math.min(cost, (beforeLast[column - 2] as number) + 1);
			current[column] = cost;
			smallest = Math.min(smallest, cost);
		}
		if (smallest > most) return most + 1;
		[beforeLast, last, current] = [last, current, beforeLast];
	}
	return last[b.length] as number;
}

/** Written over by each comparison: a message makes thousands of them, and new ones each time cost more than the rest. */
const rows: [number[], number[], number[]] = [[], [], []];
