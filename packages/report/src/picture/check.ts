/**
 * Refuses a picture's record with what was read and what would be right.
 * @throws RangeError where the condition does not hold
 */
export function must(holds: boolean, read: string, right: string): void {
	if (!holds) throw new RangeError(`read ${read}; ${right}`);
}

/** @throws RangeError where a number is none, or is below the least */
export function mustBeNumber(value: number, what: string, least = Number.NEGATIVE_INFINITY): void {
	const right = least === Number.NEGATIVE_INFINITY ? 'a number' : `a number of at least ${least}`;
	must(Number.isFinite(value) && value >= least, `${value} as ${what}`, `it must be ${right}`);
}
