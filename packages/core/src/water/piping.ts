import { type Fitting, fittingK, plasticRoughnessMm } from '../tables/pipes.js';
import {
	boreAreaM2,
	equivalentLengthM,
	fittingLossPa,
	insertFittingK,
	type PipeFlow,
	pipeFlow,
} from './flow.js';
import { gravityMS2 } from './gravity.js';
import { waterAt } from './properties.js';

/** A run of plastic pipe from the pump to one fixture. */
export interface PipeRun {
	readonly flowLMin: number;
	readonly lengthM: number;
	/** how far the fixture lies above the pump; negative where below [m] */
	readonly riseM: number;
	readonly fittings: Readonly<Record<Fitting, number>>;
	/** fittings pushed or crimped into the pipe, narrower than it */
	readonly insert: boolean;
	readonly waterC: number;
}

/** What a run loses in a pipe of one bore. */
export interface RunLoss {
	readonly flow: PipeFlow;
	readonly straightPa: number;
	readonly fittingsPa: number;
	/** straight pipe that would lose as much as the fittings [m] */
	readonly fittingsAsLengthM: number;
	readonly risePa: number;
	readonly totalPa: number;
	readonly volumeL: number;
}

/** Bore of an insert fitting over the bore of the pipe (common practice). */
const insertBoreRatio = 0.72;

/** Pressure lost on a run: straight pipe by Darcy-Weisbach, fittings by their K, rise by the weight of the water. */
export function runLoss(run: PipeRun, boreMm: number): RunLoss {
	const water = waterAt(run.waterC);
	const flow = pipeFlow(
		run.flowLMin,
		{ boreMm, lengthM: run.lengthM, roughnessMm: plasticRoughnessMm },
		water,
	);
	const k = (fitting: Fitting) => {
		const own = fittingK(fitting, boreMm);
		return run.insert ? insertFittingK(own, insertBoreRatio) : own;
	};
	const kinds = ['elbow', 'tee', 'valve'] as const;
	const totalK = kinds.reduce((sum, fitting) => sum + run.fittings[fitting] * k(fitting), 0);
	const fittingsPa = fittingLossPa(totalK, flow.velocityMS, water.densityKgM3);
	const risePa = water.densityKgM3 * gravityMS2 * run.riseM;
	return {
		flow,
		straightPa: flow.lossPa,
		fittingsPa,
		fittingsAsLengthM: equivalentLengthM(totalK, boreMm, flow.frictionFactor),
		risePa,
		totalPa: flow.lossPa + fittingsPa + risePa,
		volumeL: boreAreaM2(boreMm) * run.lengthM * 1000,
	};
}
