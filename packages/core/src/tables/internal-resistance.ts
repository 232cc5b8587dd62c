import { fromMemory, practice } from '../topic/source.js';
import type { ChemistryName } from './batteries.js';

/** What a short circuit needs to know of a cell. */
export interface CellSource {
	/** open-circuit voltage of a full, rested cell [V] */
	readonly fullV: number;
	/** direct-current resistance times rated capacity of a cell [ohm Ah], at the low end of what is usual */
	readonly ohmAh: number;
}

/** Low resistance and full charge give the highest current, which is the safe side here. */
export const cellSources: Readonly<Record<ChemistryName, CellSource>> = {
	lifepo4: { fullV: 3.4, ohmAh: 0.06 },
	nmc: { fullV: 4.2, ohmAh: 0.05 },
	agm: { fullV: 2.17, ohmAh: 0.05 },
	flooded: { fullV: 2.13, ohmAh: 0.06 },
	gel: { fullV: 2.15, ohmAh: 0.08 },
};
export const cellResistanceSource = practice(
	'internal resistance over capacity by chemistry, low end of what is usual',
);

/** A charged battery is taken at nine tenths of its rated internal resistance for the largest short-circuit current. */
export const chargedResistanceShare = 0.9;
export const chargedResistanceSource = fromMemory(
	'IEC 61660-1',
	'largest short-circuit current of a battery: 0.9 of its resistance, conductors at 20 °C',
);
