/** A battery's rating and how it shrinks under load. */
export interface PeukertRating {
	/** rated capacity [Ah] */
	readonly ratedAh: number;
	/** hours in which that capacity is drawn [h] */
	readonly ratedH: number;
	readonly exponent: number;
}

/**
 * Time a full battery carries a steady current: t = H (C / (I H))^k.
 * @param currentA steady current [A], above 0
 * @returns time to empty [h]
 * @source Peukert's law, in the form for a capacity rated over H hours; t = C / I^k holds only for a 1 A rating
 */
export function peukertHours(rating: PeukertRating, currentA: number): number {
	return rating.ratedH * (rating.ratedAh / (currentA * rating.ratedH)) ** rating.exponent;
}

/**
 * Capacity at a steady current [Ah]: C (C / (I H))^(k − 1) above the rated current. Below it the law would give
 * more than the rating; no credit is taken for that.
 */
export function capacityAtAh(rating: PeukertRating, currentA: number): number {
	if (currentA * rating.ratedH <= rating.ratedAh) return rating.ratedAh;
	return currentA * peukertHours(rating, currentA);
}

/**
 * Smallest rated capacity that still gives a charge at a steady current [Ah]: the inverse of `capacityAtAh`.
 * @param chargeAh wanted from the full battery [Ah]
 */
export function ratedForAh(
	chargeAh: number,
	currentA: number,
	rating: Omit<PeukertRating, 'ratedAh'>,
): number {
	if (currentA * rating.ratedH <= chargeAh) return chargeAh;
	// C (C / (I H))^(k − 1) = Q, solved for C.
	return (chargeAh * (currentA * rating.ratedH) ** (rating.exponent - 1)) ** (1 / rating.exponent);
}
