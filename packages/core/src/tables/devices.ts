import { fromMemory, practice, published } from '../topic/source.js';

/** Standard ratings of fuses and inverse-time breakers on mains [A]: NEC 240.6(A). */
export const necRatingsA: readonly number[] = [
	15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450,
	500, 600,
];
export const necRatingsSource = published('NFPA 70 (NEC)', '240.6(A)');

/** Breaker ratings on a metric mains supply [A]. */
export const iecRatingsA: readonly number[] = [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];
export const iecRatingsSource = fromMemory('IEC 60898-1', 'preferred rated currents');

/**
 * Ratings for direct current [A]: blade fuses (ISO 8820-3 types C and E) to 80 A, above that the ratings in which
 * bolted fuses for battery circuits are sold.
 */
export const dcRatingsA: readonly number[] = [
	1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350,
	400, 500,
];
export const dcRatingsSource = published('ISO 8820-3', 'blade types C and E; NEC 240.6(A) above');

/** Largest device on small mains conductors: NEC 240.4(D). The 18 and 16 AWG values are from memory. */
export const necSmallConductors: Readonly<Record<string, number>> = {
	'18 AWG': 7,
	'16 AWG': 10,
	'14 AWG': 15,
	'12 AWG': 20,
	'10 AWG': 30,
};
export const necSmallConductorSource = published('NFPA 70 (NEC)', '240.4(D)');

/** Largest device on small conductors of a vehicle's low-voltage circuits. The numbers are from memory. */
export const lowVoltageSmallConductors: Readonly<Record<string, number>> = {
	'18 AWG': 6,
	'16 AWG': 8,
	'14 AWG': 15,
	'12 AWG': 20,
	'10 AWG': 30,
};
export const lowVoltageSmallConductorSource = fromMemory(
	'NFPA 70 (NEC)',
	'552.10(E)(1), low-voltage small conductors',
);

export const continuousFactor = 1.25;
export const continuousSource = published(
	'NFPA 70 (NEC)',
	'210.19(A)(1) and 210.20(A): 125 % of a load of 3 h or more',
);
export const metricContinuousSource = practice(
	'125 % of a load of 3 h or more, kept for metric circuits too',
);
