import { gravityMS2 } from '../weight/gravity.js';

/** A point beside the hinge [m]. */
interface Point {
	readonly x: number;
	readonly y: number;
}

/**
 * A lid on a hinge with gas springs. The hinge is the origin, x points from it level towards the lid's free edge,
 * y up. The lid's angle is that of its own line over the level: 0 for a lid lying flat, -90 for a hatch hanging shut.
 */
export interface Lid {
	readonly massKg: number;
	/** centre of mass in the lid: x along it from the hinge, y out of its outer face [m] */
	readonly centre: Point;
	readonly closedDeg: number;
	readonly openDeg: number;
	/** how far from the hinge the hand holds it [m] */
	readonly handleM: number;
	/** the spring's end on the lid, in the lid: x along it from the hinge, y out of its outer face [m] */
	readonly lidMount: Point;
	/** the spring's end on the body [m] */
	readonly bodyMount: Point;
	readonly springs: number;
}

/** A gas spring: its force rises as it is pushed in and as it warms. */
export interface GasSpring {
	/** force of one spring extended, at 20 °C [N] */
	readonly extendedN: number;
	/** force pushed in over force extended */
	readonly progression: number;
	/** length with the lid open [m] */
	readonly extendedM: number;
	/** travel from open to closed [m] */
	readonly strokeM: number;
}

/** One place of the swing. */
export interface SwingPoint {
	/** the lid over the level [deg] */
	readonly angleDeg: number;
	/** moment with which the lid's weight closes it [N m] */
	readonly weightMomentNm: number;
	/** eye to eye [m] */
	readonly springLengthM: number;
	/** distance of the hinge from the line of the spring; positive where the spring opens the lid [m] */
	readonly armM: number;
	/** force of one spring [N] */
	readonly springN: number;
	/** moment with which all springs open it [N m] */
	readonly springMomentNm: number;
	/** what a hand must lift at the handle; below 0 what it must press down [N] */
	readonly handN: number;
}

/** Temperature at which springs are rated [°C]. */
const ratedC = 20;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** The gas law at fixed volume: force goes with the absolute temperature. */
export function temperatureFactor(temperatureC: number): number {
	return (temperatureC + 273.15) / (ratedC + 273.15);
}

function turned(point: Point, angleDeg: number): Point {
	const cos = Math.cos(radians(angleDeg));
	const sin = Math.sin(radians(angleDeg));
	return { x: point.x * cos - point.y * sin, y: point.x * sin + point.y * cos };
}

/** Moment of the lid's weight about the hinge, closing positive: m g times the level distance of its centre [N m]. */
export function weightMomentNm(lid: Lid, angleDeg: number): number {
	return lid.massKg * gravityMS2 * turned(lid.centre, angleDeg).x;
}

/** Length eye to eye [m] and lever of the spring's line about the hinge [m]. */
export function springLine(lid: Lid, angleDeg: number): { readonly lengthM: number; readonly armM: number } {
	const end = turned(lid.lidMount, angleDeg);
	const alongX = end.x - lid.bodyMount.x;
	const alongY = end.y - lid.bodyMount.y;
	const lengthM = Math.hypot(alongX, alongY);
	return { lengthM, armM: lengthM === 0 ? 0 : (end.x * alongY - end.y * alongX) / lengthM };
}

/** Force of one spring at a length: F1 (1 + (k - 1) s / stroke), with s the way it is pushed in [N]. */
export function springForceN(spring: GasSpring, lengthM: number, temperatureC: number): number {
	const pushedIn = spring.strokeM === 0 ? 0 : (spring.extendedM - lengthM) / spring.strokeM;
	return spring.extendedN * (1 + (spring.progression - 1) * pushedIn) * temperatureFactor(temperatureC);
}

/** The lid at one angle: statics about the hinge, n F d = m g x - H h. */
export function swingPoint(lid: Lid, spring: GasSpring, angleDeg: number, temperatureC: number): SwingPoint {
	const { lengthM, armM } = springLine(lid, angleDeg);
	const springN = springForceN(spring, lengthM, temperatureC);
	const weight = weightMomentNm(lid, angleDeg);
	const opening = lid.springs * springN * armM;
	return {
		angleDeg,
		weightMomentNm: weight,
		springLengthM: lengthM,
		armM,
		springN,
		springMomentNm: opening,
		handN: (weight - opening) / lid.handleM,
	};
}

/** The whole swing, closed to open, in even steps: the curve of the hand force. */
export function swingCurve(lid: Lid, spring: GasSpring, temperatureC: number, steps = 60): SwingPoint[] {
	return Array.from({ length: steps + 1 }, (_, index) =>
		swingPoint(lid, spring, lid.closedDeg + ((lid.openDeg - lid.closedDeg) * index) / steps, temperatureC),
	);
}

/** Longest and shortest eye-to-eye length over the swing [m]. */
function springTravel(lid: Lid): { readonly longestM: number; readonly shortestM: number } {
	const lengths = Array.from(
		{ length: 361 },
		(_, index) => springLine(lid, lid.closedDeg + ((lid.openDeg - lid.closedDeg) * index) / 360).lengthM,
	);
	return { longestM: Math.max(...lengths), shortestM: Math.min(...lengths) };
}

/**
 * The extended force one spring needs so that the springs alone hold the lid at every angle from `fromDeg` to open at
 * which its weight would close it.
 *
 * @param reserve how much more than the bare balance, 1.1 for a tenth
 * @returns [N], or null where at some angle the spring's line passes the hinge on the wrong side
 */
export function holdingForceN(
	lid: Lid,
	spring: Omit<GasSpring, 'extendedN'>,
	fromDeg: number,
	temperatureC: number,
	reserve: number,
): number | null {
	let needed = 0;
	for (let index = 0; index <= 180; index += 1) {
		const angle = fromDeg + ((lid.openDeg - fromDeg) * index) / 180;
		const weight = weightMomentNm(lid, angle);
		// Upright, what is left of the moment is rounding.
		if (weight <= 1e-9 * lid.massKg) continue;
		const unit = swingPoint(lid, { ...spring, extendedN: 1 }, angle, temperatureC);
		if (unit.springMomentNm <= 1e-12) return null;
		needed = Math.max(needed, (reserve * weight) / unit.springMomentNm);
	}
	return needed;
}

/** A lid as the trade measures it; lengths from the hinge. */
export interface LidValues {
	readonly massKg: number;
	readonly centreM: number;
	readonly lid: 'flat' | 'hatch';
	readonly openingDeg: number;
	readonly handleM: number;
	readonly lidMountM: number;
	readonly lidMountBelowM: number;
	readonly bodyMountOutM: number;
	readonly bodyMountBelowM: number;
	readonly springs: number;
}

/** The lid in the coordinates of this file. */
export function lidFrom(values: LidValues): Lid {
	const closedDeg = values.lid === 'hatch' ? -90 : 0;
	return {
		massKg: values.massKg,
		centre: { x: values.centreM, y: 0 },
		closedDeg,
		openDeg: closedDeg + values.openingDeg,
		handleM: values.handleM,
		lidMount: { x: values.lidMountM, y: -values.lidMountBelowM },
		bodyMount: { x: values.bodyMountOutM, y: -values.bodyMountBelowM },
		springs: values.springs,
	};
}

/** The spring that spans a lid's whole swing, extended with the lid open. */
export function springFor(lid: Lid, extendedN: number, progression: number): GasSpring {
	const { longestM, shortestM } = springTravel(lid);
	return { extendedN, progression, extendedM: longestM, strokeM: longestM - shortestM };
}
