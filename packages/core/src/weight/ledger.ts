import { fromMemory } from '../topic/source.js';

/** The empty vehicle as its scale slips and its label describe it. */
export interface EmptyVehicle {
	readonly wheelbaseM: number;
	/** what the scale shows under the front axle [kg] */
	readonly frontKg: number;
	readonly rearKg: number;
	/** distance between the middles of the left and right tires [m] */
	readonly trackM: number;
	/** height of its centre of gravity over the ground [m] */
	readonly centreHeightM: number;
}

/** One thing aboard. */
export interface Load {
	readonly name: string;
	readonly massKg: number;
	/** behind the front axle; below 0 ahead of it [m] */
	readonly positionM: number;
	/** to the right of the middle; below 0 to the left [m] */
	readonly sideM: number;
	/** its centre over the ground [m] */
	readonly heightM: number;
}

/** What stands on the wheels. */
export interface AxleLoads {
	readonly totalKg: number;
	readonly frontKg: number;
	readonly rearKg: number;
	readonly leftKg: number;
	readonly rightKg: number;
	/** the four corners [kg] */
	readonly frontLeftKg: number;
	readonly frontRightKg: number;
	readonly rearLeftKg: number;
	readonly rearRightKg: number;
	/** centre of gravity behind the front axle [m] */
	readonly centreBehindFrontM: number;
	/** centre of gravity over the ground [m] */
	readonly centreHeightM: number;
}

/**
 * Axle and side loads by moments about the front axle and the middle line.
 *
 * A load at x behind the front axle puts m x / L on the rear axle and the rest on the front one; a load behind the
 * rear axle so lightens the front. A load beside the middle shifts m y / T from one side to the other, at the two axles
 * in the same shares as its weight (a body that twists with its axles; stiff bodies differ a little).
 */
export function axleLoads(vehicle: EmptyVehicle, loads: readonly Load[]): AxleLoads {
	const { wheelbaseM, trackM } = vehicle;
	let frontKg = vehicle.frontKg;
	let rearKg = vehicle.rearKg;
	let frontShiftKg = 0;
	let rearShiftKg = 0;
	let heightMoment = (frontKg + rearKg) * vehicle.centreHeightM;
	for (const load of loads) {
		const toRear = load.positionM / wheelbaseM;
		const shift = (load.massKg * load.sideM) / trackM;
		frontKg += load.massKg * (1 - toRear);
		rearKg += load.massKg * toRear;
		frontShiftKg += shift * (1 - toRear);
		rearShiftKg += shift * toRear;
		heightMoment += load.massKg * load.heightM;
	}
	const totalKg = frontKg + rearKg;
	const corners = {
		frontLeftKg: frontKg / 2 - frontShiftKg,
		frontRightKg: frontKg / 2 + frontShiftKg,
		rearLeftKg: rearKg / 2 - rearShiftKg,
		rearRightKg: rearKg / 2 + rearShiftKg,
	};
	return {
		totalKg,
		frontKg,
		rearKg,
		leftKg: corners.frontLeftKg + corners.rearLeftKg,
		rightKg: corners.frontRightKg + corners.rearRightKg,
		...corners,
		centreBehindFrontM: (rearKg / totalKg) * wheelbaseM,
		centreHeightM: heightMoment / totalKg,
	};
}

/**
 * Static stability factor T / 2h: the sideways acceleration, in g, at which a rigid vehicle tips.
 * @source National Highway Traffic Safety Administration, rollover resistance rating
 */
export function stabilityFactor(trackM: number, centreHeightM: number): number {
	return trackM / (2 * centreHeightM);
}

/** Published bands of the factor and the rollovers in single-vehicle crashes of passenger vehicles that go with them. */
const rolloverBands: readonly { readonly above: number; readonly risk: string }[] = [
	{ above: 1.44, risk: 'less than 10 %' },
	{ above: 1.24, risk: '10 to 20 %' },
	{ above: 1.12, risk: '20 to 30 %' },
	{ above: 1.03, risk: '30 to 40 %' },
];
export const rolloverSource = fromMemory('66 FR 3388 (12 January 2001)', 'rollover resistance bands');

/**
 * Share of single-vehicle crashes in which vehicles of this factor rolled over.
 * @param factor static stability factor; it is read to two decimals, as the bands are
 */
export function rolloverBand(factor: number): string {
	const read = Math.floor(factor * 100 + 1e-9) / 100;
	return rolloverBands.find((band) => read > band.above)?.risk ?? '40 % or more';
}

export type Axle = 'front' | 'rear';

/** Share of a load that stands on an axle. */
export function shareOn(axle: Axle, positionM: number, wheelbaseM: number): number {
	return axle === 'rear' ? positionM / wheelbaseM : 1 - positionM / wheelbaseM;
}

/** What would bring an axle down by so much. */
export interface Relief {
	readonly name: string;
	/** take so much of it off [kg], or null where all of it is not enough */
	readonly removeKg: number | null;
	/** or move all of it so far towards the other axle [m], or null where the van ends before that */
	readonly moveM: number | null;
}

/**
 * How each load aboard could bring an axle down by `excessKg`: by leaving some of it off or by moving it towards the
 * other axle, not past `nearestM` behind the front axle (or, from the front axle, not past `farthestM`).
 */
export function reliefOf(
	axle: Axle,
	excessKg: number,
	loads: readonly Load[],
	wheelbaseM: number,
	reach: { readonly nearestM: number; readonly farthestM: number },
): Relief[] {
	return loads.map((load) => {
		const share = shareOn(axle, load.positionM, wheelbaseM);
		const removeKg = share > 0 ? excessKg / share : Number.POSITIVE_INFINITY;
		const moveM = (excessKg * wheelbaseM) / load.massKg;
		const room = axle === 'rear' ? load.positionM - reach.nearestM : reach.farthestM - load.positionM;
		return {
			name: load.name,
			removeKg: removeKg <= load.massKg ? removeKg : null,
			moveM: moveM <= room ? moveM : null,
		};
	});
}
