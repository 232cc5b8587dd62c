import {
	ambientFactor,
	ambientFormulaSource,
	ampacityOf,
	bandFactor,
	boatAmpacity,
	boatBundleBands,
	boatBundleSource,
	iecAmpacity,
	interpolatedA,
	isoAmpacity,
	necAmpacity,
	necBundleBands,
	necBundleSource,
} from '../tables/ampacity.js';
import { awgSizes, type ConductorSize, metricSizes, metricSource } from '../tables/conductors.js';
import {
	continuousFactor,
	dcRatingsA,
	dcRatingsSource,
	iecRatingsA,
	iecRatingsSource,
	metricContinuousSource,
} from '../tables/devices.js';
import { fromMemory, published } from '../topic/source.js';
import type { RuleSet, Sourced } from './rules.js';

/**
 * The metric table is from memory, and a value from memory never loosens a limit: the lower of it and the boat
 * table, read at the same area, counts.
 */
function dcAmpacity(size: ConductorSize, insulationC: number): Sourced | null {
	const iso = ampacityOf(isoAmpacity, metricSizes, size, insulationC);
	const boat = ampacityOf(boatAmpacity, awgSizes, size, insulationC);
	if (iso === null || boat === null) return null;
	return iso <= boat
		? { value: iso, source: isoAmpacity.source }
		: { value: boat, source: boatAmpacity.source };
}

/** As for direct current, with the cap taken from the verified table for cable, brought to 70 °C. */
function mainsAmpacity(size: ConductorSize, insulationC: number): Sourced | null {
	const iec = ampacityOf(iecAmpacity, metricSizes, size, insulationC);
	const at75 = interpolatedA(necAmpacity, awgSizes, size.areaMm2, 75);
	if (iec === null || at75 === null) return null;
	const cap = at75 * Math.sqrt((70 - 30) / (75 - 30));
	return iec <= cap ? { value: iec, source: iecAmpacity.source } : { value: cap, source: necAmpacity.source };
}

/** Europe: 230 V, square millimetres, metres. */
export const eu: RuleSet = {
	region: 'eu',
	mainsVoltageV: 230,
	mainsFrequencyHz: 50,
	sizes: metricSizes,
	resistanceSource: metricSource,
	engineBayC: { value: 60, source: fromMemory('ISO 10133', 'engine spaces, 60 °C') },
	supplyRatingsA: [6, 10, 16, 32],
	dc: {
		usualInsulationC: 105,
		ampacity: dcAmpacity,
		ambientFactor: (insulationC, ambientC) => ({
			value: ambientFactor(insulationC, ambientC),
			source: ambientFormulaSource,
		}),
		bundleFactor: (conductors) => ({
			value: bandFactor(boatBundleBands, conductors),
			source: boatBundleSource,
		}),
		terminalCap: dcAmpacity,
		usualTerminalC: () => null,
		deviceRatingsA: dcRatingsA,
		deviceSource: dcRatingsSource,
		smallConductorLimit: () => null,
		minimumAreaMm2: {
			value: 1,
			source: published('ISO 10133:2012', '7.7, 1 mm² for a conductor run by itself'),
		},
		minimumParallelAreaMm2: null,
		continuous: { value: continuousFactor, source: metricContinuousSource },
		reactanceOhmPerM: 0,
	},
	mains: {
		usualInsulationC: 70,
		ampacity: mainsAmpacity,
		ambientFactor: (insulationC, ambientC) => ({
			value: ambientFactor(Math.min(insulationC, 70), ambientC),
			source: ambientFormulaSource,
		}),
		bundleFactor: (conductors) => ({
			value: bandFactor(necBundleBands, conductors),
			source: necBundleSource,
		}),
		terminalCap: mainsAmpacity,
		usualTerminalC: () => null,
		deviceRatingsA: iecRatingsA,
		deviceSource: iecRatingsSource,
		smallConductorLimit: () => null,
		minimumAreaMm2: { value: 1.5, source: fromMemory('IEC 60364-7-721', '721.524, 1.5 mm²') },
		minimumParallelAreaMm2: {
			value: 50,
			source: fromMemory('NFPA 70 (NEC)', '310.10(G)(1), kept for metric mains too'),
		},
		continuous: { value: continuousFactor, source: metricContinuousSource },
		// 0.08 mohm/m is the usual figure of IEC 60364-5-52 Annex G (from memory); the larger one is kept.
		reactanceOhmPerM: 0.00015,
	},
};
