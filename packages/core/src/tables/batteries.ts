import { fromMemory, practice, published, type Source } from '../topic/source.js';
import { interpolate } from './interpolate.js';

export const chemistryNames = ['lifepo4', 'agm', 'gel', 'flooded', 'nmc'] as const;
export type ChemistryName = (typeof chemistryNames)[number];

/** What the sizing of a bank needs to know of its chemistry. */
export interface Chemistry {
	readonly name: ChemistryName;
	readonly label: string;
	readonly leadAcid: boolean;
	/** rated voltage of a cell [V] */
	readonly nominalVPerCell: number;
	/** upper end of the usual charging voltage at 25 °C [V] */
	readonly chargeVPerCell: number;
	/** lower end of the usual end-of-discharge voltage [V] */
	readonly cutoffVPerCell: number;
	readonly cutoffSource: Source;
	/** cells in series for a bank of the 12 V class */
	readonly cellsFor12V: number;
	/** cell temperatures between which it may be charged, and discharged [°C] */
	readonly chargeMinC: number;
	readonly chargeMaxC: number;
	readonly dischargeMinC: number;
	readonly dischargeMaxC: number;
	readonly temperatureSource: Source;
	/** published range of the Peukert exponent, and the one that is used: the safe end where the range is narrow */
	readonly peukertMin: number;
	readonly peukertMax: number;
	readonly peukertUsed: number;
	/** hours in which the rated capacity is drawn [h] */
	readonly ratedH: number;
	/** share of the capacity that is used between charges */
	readonly depthOfDischarge: number;
	/** usual largest charge current over capacity [1/h] */
	readonly chargeRatePerH: number;
	/** usual largest steady discharge current over capacity [1/h] */
	readonly dischargeRatePerH: number;
	/** energy given back over energy put in */
	readonly roundTripEfficiency: number;
	/** charge given back over charge put in */
	readonly chargeEfficiency: number;
	/** state of charge lost to the constant-voltage phase, per 1/h of charge rate [h] */
	readonly taperH: number;
	/** current over capacity at which charging is called complete [1/h] */
	readonly tailRatePerH: number;
}

export const peukertSource = published('public reference page on the Peukert law', 'range of the exponent');
export const batteryPracticeSource = practice(
	'depth of discharge, charge and discharge rates and efficiencies by chemistry; the maker decides',
);

const leadAcid = {
	leadAcid: true,
	nominalVPerCell: 2,
	cutoffVPerCell: 1.75,
	cutoffSource: published('UPS battery capacity worksheet', 'end of discharge, 1.75 V per lead-acid cell'),
	cellsFor12V: 6,
	chargeMinC: -20,
	chargeMaxC: 50,
	dischargeMinC: -20,
	dischargeMaxC: 50,
	temperatureSource: fromMemory('battery handbooks', 'lead-acid, −20 to 50 °C'),
	ratedH: 20,
	depthOfDischarge: 0.5,
	chargeRatePerH: 0.2,
	dischargeRatePerH: 0.25,
	roundTripEfficiency: 0.8,
	chargeEfficiency: 0.85,
	taperH: 1,
	tailRatePerH: 0.02,
} as const;

export const chemistries: Readonly<Record<ChemistryName, Chemistry>> = {
	lifepo4: {
		name: 'lifepo4',
		label: 'LiFePO4',
		leadAcid: false,
		nominalVPerCell: 3.2,
		chargeVPerCell: 3.65,
		cutoffVPerCell: 2.5,
		cutoffSource: fromMemory('LiFePO4 cell specifications', 'end of discharge, 2.5 V per cell'),
		cellsFor12V: 4,
		chargeMinC: 0,
		chargeMaxC: 60,
		dischargeMinC: -30,
		dischargeMaxC: 60,
		temperatureSource: published('LiFePO4 cell specification', 'charge 0 to 60 °C, discharge −30 to 60 °C'),
		peukertMin: 1,
		peukertMax: 1.05,
		peukertUsed: 1.05,
		ratedH: 5,
		depthOfDischarge: 0.8,
		chargeRatePerH: 0.5,
		dischargeRatePerH: 1,
		roundTripEfficiency: 0.92,
		chargeEfficiency: 0.99,
		taperH: 0.2,
		tailRatePerH: 0.05,
	},
	agm: {
		...leadAcid,
		name: 'agm',
		label: 'AGM lead-acid',
		chargeVPerCell: 2.45,
		peukertMin: 1.05,
		peukertMax: 1.15,
		peukertUsed: 1.15,
	},
	gel: {
		...leadAcid,
		name: 'gel',
		label: 'gel lead-acid',
		chargeVPerCell: 2.4,
		peukertMin: 1.1,
		peukertMax: 1.25,
		peukertUsed: 1.25,
	},
	flooded: {
		...leadAcid,
		name: 'flooded',
		label: 'flooded lead-acid',
		chargeVPerCell: 2.5,
		peukertMin: 1.2,
		peukertMax: 1.6,
		// 1.6 is a worn starter battery; 1.3 is the upper end for deep-cycle lead-acid in general.
		peukertUsed: 1.3,
	},
	nmc: {
		name: 'nmc',
		label: 'lithium-ion (NMC or NCA)',
		leadAcid: false,
		nominalVPerCell: 3.6,
		chargeVPerCell: 4.2,
		cutoffVPerCell: 2.5,
		cutoffSource: fromMemory('lithium-ion cell specifications', 'end of discharge, 2.5 to 3.0 V per cell'),
		// Sold with 3 or 4 cells for 12 V; the lower voltage is the safe one for currents.
		cellsFor12V: 3,
		chargeMinC: 0,
		chargeMaxC: 45,
		dischargeMinC: -20,
		dischargeMaxC: 60,
		temperatureSource: fromMemory('lithium-ion cell specifications', 'charge 0 to 45 °C'),
		peukertMin: 1,
		peukertMax: 1.05,
		peukertUsed: 1.05,
		ratedH: 5,
		depthOfDischarge: 0.8,
		chargeRatePerH: 0.5,
		dischargeRatePerH: 1,
		roundTripEfficiency: 0.92,
		chargeEfficiency: 0.99,
		taperH: 0.2,
		tailRatePerH: 0.05,
	},
};

/** IEEE 485 Table 1: electrolyte temperature [°F] and the factor by which the capacity at 25 °C must be raised. */
export const ieee485Factors: readonly (readonly [temperatureF: number, factor: number])[] = [
	[25, 1.52],
	[30, 1.43],
	[35, 1.35],
	[40, 1.3],
	[45, 1.25],
	[50, 1.19],
	[55, 1.15],
	[60, 1.11],
	[65, 1.08],
	[70, 1.04],
	[77, 1],
	[80, 0.98],
	[85, 0.96],
	[90, 0.94],
	[95, 0.93],
	[100, 0.91],
	[105, 0.89],
	[110, 0.88],
	[115, 0.87],
	[120, 0.86],
	[125, 0.85],
];
export const ieee485Source = published('IEEE 485', 'Table 1, temperature factor of lead-acid cells');
/** The rows below 40 °F; a public article prints 1.40 at 30 °F, the higher factor is kept. */
export const ieee485FromMemorySource = fromMemory('IEEE 485', 'Table 1, rows below 40 °F');
export const warmSource = published('UPS battery capacity worksheet', 'no credit above 25 °C: factor 1.0');

/** Factor at the cold end of the table, −3.9 °C. */
export const ieee485LargestFactor = 1.52;

/** Capacity of a lead-acid vehicle battery left in the cold [°C, share]. */
export const armyColdCapacity: readonly (readonly [temperatureC: number, share: number])[] = [
	[-17.8, 0.4],
	[0, 0.75],
];
export const armyColdSource = published('TM 10-6140-200-14', 'paragraph 1-9: 75 % at 32 °F, 40 % at 0 °F');

/** Capacity of lithium cells in the cold [°C, share]; only ever lowers what is promised. */
export const lithiumColdCapacity: readonly (readonly [temperatureC: number, share: number])[] = [
	[-20, 0.7],
	[-10, 0.8],
	[0, 0.9],
	[25, 1],
];
export const lithiumColdSource = practice('lithium gives about 90 % at 0 °C and 70 % at −20 °C');

/** Capacity that must be installed for each unit wanted when new and to spec: UFC 3-520-01 Appendix E, IEEE 485. */
export const ageingFactor = 1.25;
export const ageingSource = published(
	'UFC 3-520-01',
	'Appendix E; IEEE 485: 1.25, end of life at 80 % of capacity',
);

export const unknownInverterEfficiency = 0.85;
export const unknownInverterSource = published(
	'UPS battery capacity worksheet',
	'inverter efficiency 0.85 where it is unknown',
);

/**
 * IEEE 485 factor at an electrolyte temperature, straight between the rows; no credit above 25 °C.
 * @returns the factor (1 or more), or null below −3.9 °C, where the table ends
 */
export function ieee485Factor(temperatureC: number): number | null {
	if (temperatureC >= 25) return 1;
	return interpolate(ieee485Factors, temperatureC * 1.8 + 32);
}
