/**
 * Straight between the rows of a table with a rising first column.
 * @returns null outside the table: values are never carried past its ends
 */
export function interpolate(
	rows: readonly (readonly [at: number, value: number])[],
	at: number,
): number | null {
	// A temperature turned from one scale to the other must not fall off the end by a hair.
	const slack = 1e-9 * Math.max(1, Math.abs(at));
	for (let index = 1; index < rows.length; index += 1) {
		const [fromAt, fromValue] = rows[index - 1] as readonly [number, number];
		const [toAt, toValue] = rows[index] as readonly [number, number];
		if (at >= fromAt - slack && at <= toAt + slack) {
			const share = Math.min(1, Math.max(0, (at - fromAt) / (toAt - fromAt)));
			return fromValue + share * (toValue - fromValue);
		}
	}
	return null;
}
