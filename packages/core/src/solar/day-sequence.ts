import { fromMemory } from '../topic/source.js';

export const daySequenceSource = fromMemory(
	'Bendt, Collares-Pereira and Rabl 1981; Knight, Klein and Duffie 1991',
	'distribution and order of the daily clearness in a month',
);

/**
 * In which order the clear and the dull days of a month follow one another: the number of each day when they are
 * ranked by clearness, 1 the dullest (Knight, Klein and Duffie 1991, the order for cloudy months). It holds runs of
 * three and four dull days together.
 */
export const dayOrder: readonly number[] = [
	24, 28, 11, 19, 18, 3, 2, 4, 9, 20, 14, 23, 8, 16, 21, 26, 15, 10, 22, 17, 5, 1, 6, 29, 12, 7, 31, 30, 27,
	13, 25,
];

const dullest = 0.05;

/**
 * The steepness of the distribution of daily clearness whose mean is `mean`: found by bisection of
 * mean = [(a - 1/g) e^(g a) - (b - 1/g) e^(g b)] / (e^(g a) - e^(g b)), a and b the extremes.
 */
function steepness(mean: number, brightest: number): number {
	let low = -80;
	let high = 80;
	for (let step = 0; step < 100; step += 1) {
		const middle = (low + high) / 2;
		if (meanFor(middle, brightest) < mean) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

function meanFor(g: number, brightest: number): number {
	const width = brightest - dullest;
	// Around 0 the distribution is even, and the formula divides nothing by nothing.
	if (Math.abs(g) * width < 1e-6) return dullest + width / 2;
	const decay = Math.exp(-g * width);
	return (brightest - 1 / g - (dullest - 1 / g) * decay) / (1 - decay);
}

/**
 * Each day's irradiation over the month's mean, for a month of so many days: the daily clearness follows the
 * generalized distribution of Bendt, Collares-Pereira and Rabl with the brightest day of Hollands and Huget, in the
 * fixed order above. Their mean is exactly 1, and the same month always gives the same days.
 *
 * @param clearness mean irradiation of the month over that outside the air
 */
export function dailyFactors(clearness: number, days: number): number[] {
	const mean = Math.min(0.8, Math.max(0.1, clearness));
	const brightest = Math.max(mean + 0.02, 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8);
	const g = steepness(mean, brightest);
	const ranks = dayOrder.filter((rank) => rank <= days);
	const values = ranks.map((rank) => quantile((rank - 0.5) / days, g, brightest));
	const average = values.reduce((sum, value) => sum + value, 0) / values.length;
	return values.map((value) => value / average);
}

/** The daily clearness that a share of the days does not reach. */
function quantile(share: number, g: number, brightest: number): number {
	const width = brightest - dullest;
	if (Math.abs(g) * width < 1e-6) return dullest + width * share;
	// ln(e^(g a) + share (e^(g b) - e^(g a))) / g, with e^(g b) taken out so that it can't overflow.
	const decay = Math.exp(-g * width);
	return brightest + Math.log(decay + share * (1 - decay)) / g;
}
