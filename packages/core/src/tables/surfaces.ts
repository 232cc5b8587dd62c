import { fromMemory, published, type Source } from '../topic/source.js';

export interface SurfaceResistance {
	readonly resistanceM2KW: number;
	readonly source: Source;
}

/** Thermal resistance of the air film at a surface [m²K/W], by the direction in which heat flows. */
export const surfaceResistances = {
	insideUpward: { resistanceM2KW: 0.1, source: fromMemory('ISO 6946', 'Rsi, heat flow upward') },
	insideHorizontal: { resistanceM2KW: 0.13, source: published('ISO 6946', 'Rsi, horizontal heat flow') },
	insideDownward: { resistanceM2KW: 0.17, source: fromMemory('ISO 6946', 'Rsi, heat flow downward') },
	outside: { resistanceM2KW: 0.04, source: published('ISO 6946', 'Rse') },
	outsideSummer: {
		resistanceM2KW: 0.044,
		source: fromMemory('ASHRAE Handbook of Fundamentals', 'outside film in summer, 3.4 m/s'),
	},
} as const satisfies Record<string, SurfaceResistance>;

/** Share of the sun's heat a painted surface takes up. */
export const solarAbsorptance = {
	white: 0.25,
	lightGrey: 0.4,
	silver: 0.45,
	coloured: 0.7,
	black: 0.95,
} as const;

export const absorptanceSource = fromMemory(
	'ASHRAE Handbook of Fundamentals',
	'solar absorptance of painted surfaces',
);

/** Share of the sun on glazing that becomes heat inside, at normal incidence. */
export const solarHeatGain = {
	clearSingle: 0.86,
	acrylicDouble: 0.7,
	/** multiplies the above where a reflective cover hangs inside */
	reflectiveCover: 0.4,
} as const;
export const solarHeatGainSource = fromMemory(
	'ASHRAE Handbook of Fundamentals',
	'solar heat gain coefficients; interior attenuation',
);
