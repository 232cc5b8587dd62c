import {
	ambientFactor,
	ambientFormulaSource,
	ampacityOf,
	bandFactor,
	boatAmpacity,
	boatBundleBands,
	boatBundleSource,
	engineSpaceFactors,
	necAmbientBands,
	necAmbientSource,
	necAmpacity,
	necBundleBands,
	necBundleSource,
} from '../tables/ampacity.js';
import { awgSizes, awgSource, type ConductorSize } from '../tables/conductors.js';
import {
	continuousFactor,
	continuousSource,
	dcRatingsA,
	dcRatingsSource,
	lowVoltageSmallConductorSource,
	lowVoltageSmallConductors,
	necRatingsA,
	necRatingsSource,
	necSmallConductorSource,
	necSmallConductors,
} from '../tables/devices.js';
import { fromMemory, published } from '../topic/source.js';
import type { RuleSet } from './rules.js';

/** Below the area of 1/0 AWG and above that of 1 AWG; 50 mm² is taken as the metric equal. */
const thinnestParallelMm2 = 50;
const parallelSource = fromMemory('NFPA 70 (NEC)', '310.10(G)(1): 1/0 AWG and larger in parallel');

/** A size between two of the list has the limit of the thinner one. */
function smallLimitA(limits: Readonly<Record<string, number>>, size: ConductorSize): number | undefined {
	const thinner = awgSizes.findLast((one) => one.areaMm2 <= size.areaMm2) ?? awgSizes[0];
	return thinner === undefined ? undefined : limits[thinner.name];
}

/** United States: 120 V, American wire sizes, feet. */
export const us: RuleSet = {
	region: 'us',
	mainsVoltageV: 120,
	mainsFrequencyHz: 60,
	sizes: awgSizes,
	resistanceSource: awgSource,
	engineBayC: { value: 50, source: published('33 CFR 183.425', 'engine spaces, 50 °C') },
	supplyRatingsA: [15, 20, 30, 50],
	dc: {
		usualInsulationC: 105,
		ampacity: (size, insulationC) => {
			const value = ampacityOf(boatAmpacity, awgSizes, size, insulationC);
			return value === null ? null : { value, source: boatAmpacity.source };
		},
		ambientFactor: (insulationC, ambientC) => {
			const byPhysics = ambientFactor(insulationC, ambientC);
			const engine = engineSpaceFactors[insulationC];
			// The table's factor is for 50 °C; where it is a shade below the equation it counts, and from there on up.
			if (ambientC >= 50 && engine !== undefined && engine < byPhysics) {
				return { value: engine, source: published('33 CFR 183.425', 'Table 5, Note 1') };
			}
			return { value: byPhysics, source: ambientFormulaSource };
		},
		bundleFactor: (conductors) => ({
			value: bandFactor(boatBundleBands, conductors),
			source: boatBundleSource,
		}),
		terminalCap: (size, terminalC) => {
			const value = ampacityOf(boatAmpacity, awgSizes, size, terminalC);
			return value === null ? null : { value, source: boatAmpacity.source };
		},
		usualTerminalC: () => null,
		deviceRatingsA: dcRatingsA,
		deviceSource: dcRatingsSource,
		smallConductorLimit: (size) => {
			const value = smallLimitA(lowVoltageSmallConductors, size);
			return value === undefined ? null : { value, source: lowVoltageSmallConductorSource };
		},
		minimumAreaMm2: { value: 1.3, source: published('33 CFR 183.425(e)', '16 AWG for a wire run by itself') },
		minimumParallelAreaMm2: null,
		continuous: { value: continuousFactor, source: continuousSource },
		reactanceOhmPerM: 0,
	},
	mains: {
		usualInsulationC: 90,
		ampacity: (size, insulationC) => {
			const value = ampacityOf(necAmpacity, awgSizes, size, insulationC);
			return value === null ? null : { value, source: necAmpacity.source };
		},
		ambientFactor: (insulationC, ambientC) => {
			const column = [60, 75, 90].findLastIndex((classC) => classC <= insulationC);
			const band = necAmbientBands.find((one) => ambientC <= one.toC);
			return { value: band?.factors[column] ?? 0, source: necAmbientSource };
		},
		bundleFactor: (conductors) => ({
			value: bandFactor(necBundleBands, conductors),
			source: necBundleSource,
		}),
		terminalCap: (size, terminalC) => {
			const value = ampacityOf(necAmpacity, awgSizes, size, Math.min(terminalC, 90));
			return value === null
				? null
				: { value, source: published('NFPA 70 (NEC)', '110.14(C)(1) with Table 310.16') };
		},
		// Equipment "marked for 14 through 1 AWG" is held to 60 °C whatever its rating; so is the conductor here.
		usualTerminalC: (deviceA, size) => (deviceA <= 100 || size.areaMm2 < thinnestParallelMm2 ? 60 : 75),
		deviceRatingsA: necRatingsA,
		deviceSource: necRatingsSource,
		smallConductorLimit: (size) => {
			const value = smallLimitA(necSmallConductors, size);
			return value === undefined ? null : { value, source: necSmallConductorSource };
		},
		minimumAreaMm2: {
			value: 2.08,
			source: fromMemory('NFPA 70 (NEC)', '14 AWG, the thinnest for a branch circuit'),
		},
		minimumParallelAreaMm2: { value: thinnestParallelMm2, source: parallelSource },
		continuous: { value: continuousFactor, source: continuousSource },
		// NEC Chapter 9 Table 9, PVC conduit, about 0.045 ohm per 1000 ft (from memory; it only adds to the drop).
		reactanceOhmPerM: 0.00015,
	},
};
