import { cab } from '../tables/interiors.js';
import type { Material } from '../tables/materials.js';
import { materials } from '../tables/materials.js';
import { surfaceResistances } from '../tables/surfaces.js';
import { type Element, layer, type Resistance, resistanceOf } from './wall.js';

/** Inside of the living space. */
export interface Box {
	readonly lengthM: number;
	readonly widthM: number;
	readonly heightM: number;
}

/** How the shell is built. */
export interface Fitout {
	readonly insulation: Material;
	readonly wallMm: number;
	readonly roofMm: number;
	readonly floorMm: number;
	/** insulation laid over the ribs as well, without a break */
	readonly ribCoverMm: number;
	/** share of wall and roof that lies over a rib */
	readonly ribShare: number;
	readonly windowM2: number;
	readonly window: 'single' | 'double';
	/** insulated covers on the windows and in the cab */
	readonly covers: boolean;
	/** a curtain or wall between cab and living space */
	readonly cabClosed: boolean;
}

type PartName = 'walls' | 'roof' | 'floor' | 'windows' | 'cab glass' | 'cab metal' | 'cab curtain';

/** One part of the shell. */
export interface Part {
	readonly name: PartName;
	readonly areaM2: number;
	readonly resistance: Resistance;
	/** heat lost per kelvin [W/K] */
	readonly lossWK: number;
}

/** A hollow steel rib 60 mm wide carries heat by its two webs of 1 mm; what fills it hardly counts (common practice). */
const ribConductivityWmK = (materials.steel.conductivityWmK * 2 * 1) / 60;

/** Resistance that insulated window covers add [m²K/W] (common practice: 8 mm of foam and a little still air). */
const coverM2KW = 0.3;
/** Resistance of a heavy curtain and the film on its far side [m²K/W] (common practice). */
const curtainM2KW = 0.2;
/** A still air gap of about 15 mm between two panes [m²K/W] (ISO 6946, unventilated air layers, from memory). */
const paneGapM2KW = 0.17;
/** Headlining and trim of the cab [m²K/W] (common practice). */
const cabTrimM2KW = 0.16;

const films: Readonly<Record<'wall' | 'roof' | 'floor' | 'outside', number>> = {
	wall: surfaceResistances.insideHorizontal.resistanceM2KW,
	roof: surfaceResistances.insideUpward.resistanceM2KW,
	floor: surfaceResistances.insideDownward.resistanceM2KW,
	outside: surfaceResistances.outside.resistanceM2KW,
};

/** Wall or roof: lining, cover over the ribs, insulation between the ribs, sheet steel. */
export function liningElement(
	fitout: Pick<Fitout, 'insulation' | 'ribCoverMm' | 'ribShare'>,
	thicknessMm: number,
	insideM2KW: number,
	outsideM2KW = films.outside,
): Element {
	const { conductivityWmK } = fitout.insulation;
	return {
		layers: [
			layer('plywood lining', 5, materials.plywood.conductivityWmK),
			layer('insulation over the ribs', fitout.ribCoverMm, conductivityWmK),
			layer('insulation', thicknessMm, conductivityWmK, ribConductivityWmK),
			layer('sheet steel', 1, materials.steel.conductivityWmK),
		],
		bridgeShare: thicknessMm > 0 ? fitout.ribShare : 0,
		insideM2KW,
		outsideM2KW,
	};
}

/** Floor: covering, plywood, insulation without ribs through it, sheet steel. */
export function floorElement(insulation: Material, thicknessMm: number): Element {
	return {
		layers: [
			layer('vinyl floor', 2, materials.vinylFloor.conductivityWmK),
			layer('plywood floor', 12, materials.plywood.conductivityWmK),
			layer('insulation', thicknessMm, insulation.conductivityWmK),
			layer('sheet steel', 1, materials.steel.conductivityWmK),
		],
		bridgeShare: 0,
		insideM2KW: films.floor,
		outsideM2KW: films.outside,
	};
}

/** A window of one pane of glass, or two of acrylic with a gap. */
export function windowElement(kind: Fitout['window'], covers: boolean, insideM2KW = films.wall): Element {
	const still = (name: string, resistanceM2KW: number) => layer(name, resistanceM2KW * 1000, 1);
	const panes =
		kind === 'single'
			? [layer('glass', 4, materials.glass.conductivityWmK)]
			: [
					layer('acrylic', 3, materials.acrylic.conductivityWmK),
					still('air gap', paneGapM2KW),
					layer('acrylic', 3, materials.acrylic.conductivityWmK),
				];
	return {
		layers: covers ? [still('insulated cover', coverM2KW), ...panes] : panes,
		bridgeShare: 0,
		insideM2KW,
		outsideM2KW: films.outside,
	};
}

/** Every part of the shell that loses heat, largest first. */
export function shellParts(box: Box, fitout: Fitout): Part[] {
	const plan = box.lengthM * box.widthM;
	const upright = (2 * box.lengthM + box.widthM) * box.heightM;
	const windowM2 = Math.min(fitout.windowM2, upright);
	const part = (name: PartName, areaM2: number, element: Element): Part => {
		const resistance = resistanceOf(element);
		return { name, areaM2, resistance, lossWK: areaM2 / resistance.totalM2KW };
	};
	const still = (resistanceM2KW: number): Element => ({
		layers: [layer('', resistanceM2KW * 1000, 1)],
		bridgeShare: 0,
		insideM2KW: films.wall,
		outsideM2KW: films.outside,
	});
	const front = fitout.cabClosed
		? [part('cab curtain', box.widthM * box.heightM, { ...still(curtainM2KW), outsideM2KW: films.wall })]
		: [
				part('cab glass', cab.glassM2, windowElement('single', fitout.covers)),
				part('cab metal', cab.metalM2, still(cabTrimM2KW)),
			];
	return [
		part('walls', upright - windowM2, liningElement(fitout, fitout.wallMm, films.wall)),
		part('roof', plan, liningElement(fitout, fitout.roofMm, films.roof)),
		part('floor', plan, floorElement(fitout.insulation, fitout.floorMm)),
		part('windows', windowM2, windowElement(fitout.window, fitout.covers)),
		...front,
	]
		.filter((one) => one.areaM2 > 0)
		.toSorted((a, b) => b.lossWK - a.lossWK);
}

/** Air inside [m³], with the cab where it is open to the living space. */
export function airVolumeM3(box: Box, cabClosed: boolean): number {
	const length = box.lengthM + (cabClosed ? 0 : cab.lengthM);
	return length * box.widthM * box.heightM;
}
