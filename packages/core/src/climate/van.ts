import {
	interiorSource,
	type Roof,
	roofOptions,
	roofs,
	type Wheelbase,
	wheelbaseClass,
	wheelbaseOptions,
	wheelbases,
	widthM,
} from '../tables/interiors.js';
import { insulationOptions, materials } from '../tables/materials.js';
import { choice, flag, type InputOf, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { practice } from '../topic/source.js';
import type { Box, Fitout } from './shell.js';

function insulationOf(given: Readonly<Record<string, unknown>>): number {
	if (typeof given.insulationMm === 'number') return given.insulationMm;
	return given.bare === true ? 0 : 25;
}

/** The size of the van. */
export const sizeFields = {
	wheelbase: choice({ label: 'size of the van', options: wheelbaseOptions }),
	wheelbaseM: quantity({
		label: 'wheelbase',
		kind: 'length',
		min: 2.2,
		max: 5.5,
		unit: 'in',
		aliases: ['wheelbase', 'wb', 'radstand', 'batalla'],
	}),
	roof: choice({
		label: 'roof',
		options: roofOptions,
		fallback: { value: 'high', why: 'the usual roof of a camper van; the safe side', confirm: true },
	}),
	insideLengthM: quantity({
		label: 'inside length',
		kind: 'length',
		min: 1,
		max: 12,
		aliases: [
			'inside length',
			'living length',
			'floor length',
			'interior length',
			'box length',
			'longitud interior',
			'innenlänge',
			'long inside',
			'inside',
			'long',
			'lang',
			'largo',
			'interior',
		],
		help: 'Of the living space, behind the seats.',
	}),
	insideWidthM: quantity({
		label: 'inside width',
		kind: 'length',
		min: 1,
		max: 2.6,
		aliases: ['inside width', 'interior width', 'wide', 'width', 'ancho', 'innenbreite', 'breit'],
	}),
	insideHeightM: quantity({
		label: 'inside height',
		kind: 'length',
		min: 0.8,
		max: 2.8,
		aliases: [
			'inside height',
			'interior height',
			'headroom',
			'tall',
			'standing height',
			'altura interior',
			'innenhöhe',
			'stehhöhe',
		],
	}),
};

/** How the shell is insulated and closed. */
export const shellFields = {
	bare: flag({
		label: 'no insulation',
		yes: [
			'uninsulated',
			'no insulation',
			'not insulated',
			'bare van',
			'empty van',
			'sin aislamiento',
			'ungedämmt',
			'ohne dämmung',
		],
	}),
	insulationMm: quantity({
		label: 'insulation of the walls',
		kind: 'thickness',
		min: 0,
		max: 200,
		aliases: [
			'insulation',
			'insulated',
			'wall insulation',
			'walls',
			'foam',
			'wool',
			'thick',
			'aislamiento',
			'dämmung',
			'isolierung',
		],
		fallback: {
			value: (given) => (given.bare === true ? 0 : 25),
			why: 'what most fitted vans get, or none where it is said so (practice); name yours',
			confirm: true,
		},
	}),
	roofInsulationMm: quantity({
		label: 'insulation of the roof',
		kind: 'thickness',
		min: 0,
		max: 200,
		aliases: [
			'roof insulation',
			'ceiling',
			'ceiling insulation',
			'in the roof',
			'techo',
			'dachdämmung',
			'decke',
		],
		fallback: {
			value: (given) => insulationOf(given),
			why: 'as the walls',
		},
	}),
	floorInsulationMm: quantity({
		label: 'insulation of the floor',
		kind: 'thickness',
		min: 0,
		max: 200,
		aliases: ['floor insulation', 'floor', 'under the floor', 'suelo', 'boden', 'bodendämmung'],
		fallback: {
			value: (given) => Math.min(insulationOf(given), 15),
			why: 'a thin board under the floor, never more than the walls (practice)',
			confirm: true,
		},
	}),
	material: choice({
		label: 'insulation material',
		options: insulationOptions,
		fallback: {
			value: 'glassWool',
			why: 'the safe side: the poorest of the usual materials, 0.045 W/mK; name yours',
			confirm: true,
		},
	}),
	ribCoverMm: quantity({
		label: 'insulation over the ribs',
		kind: 'thickness',
		min: 0,
		max: 100,
		aliases: [
			'over the ribs',
			'ribs covered',
			'rib cover',
			'thermal break',
			'über den rippen',
			'sobre los nervios',
		],
		fallback: { value: 0, why: 'the safe side: nothing said of covered ribs' },
	}),
	ribShare: quantity({
		label: 'share of the shell over ribs',
		kind: 'fraction',
		min: 0,
		max: 0.6,
		aliases: ['ribs', 'bridged', 'rib share', 'ribs share', 'nervios', 'rippen'],
		fallback: { value: 0.1, why: 'ribs and frames of a panel van (practice)' },
	}),
	windowM2: quantity({
		label: 'windows of the living space',
		kind: 'area',
		min: 0,
		max: 15,
		aliases: ['window', 'windows', 'glazing', 'glass', 'ventanas', 'fenster'],
		fallback: { value: 0.8, why: 'two side windows and a roof hatch (practice)', confirm: true },
	}),
	windowKind: choice({
		label: 'kind of windows',
		options: {
			single: [
				'single glass',
				'single pane',
				'single glazed',
				'glass windows',
				'vidrio simple',
				'einfachglas',
			],
			double: [
				'double acrylic',
				'acrylic windows',
				'double glazed',
				'double pane',
				'acrílico',
				'doppelverglast',
				'acrylglas',
			],
		},
		fallback: { value: 'single', why: 'the safe side: one pane of glass' },
	}),
	covers: flag({
		label: 'insulated window covers',
		yes: [
			'window covers',
			'insulated covers',
			'covers on',
			'with covers',
			'window shades',
			'cortinas aislantes',
			'thermomatten',
		],
		no: ['no covers', 'without covers', 'ohne thermomatten'],
		fallback: { value: false, why: 'the safe side: bare glass' },
	}),
	cabClosed: flag({
		label: 'cab closed off',
		yes: ['cab closed', 'cab curtain', 'closed cab', 'bulkhead', 'partition', 'cabina cerrada', 'trennwand'],
		no: ['open cab', 'cab open'],
		fallback: { value: false, why: 'the safe side: the cab is open to the living space' },
	}),
};

const allFields = { ...sizeFields, ...shellFields };
type SizeInput = InputOf<typeof sizeFields>;
type ShellInput = InputOf<typeof allFields>;

/** The question where nothing tells the size of the van. */
export const sizeNeed = {
	anyOf: ['wheelbase', 'wheelbaseM', 'insideLengthM'],
	question: 'How big is the van: short, medium, long or extra-long wheelbase (or its inside length)?',
} as const;

/** Inside of the living space: the dimensions named, the rest typical of the size class. */
export function boxOf(input: SizeInput, sheet: Sheet): Box {
	const wheelbase: Wheelbase | null =
		input.wheelbase ?? (input.wheelbaseM === undefined ? null : wheelbaseClass(input.wheelbaseM));
	const roof: Roof = input.roof;
	const lengthM = input.insideLengthM ?? wheelbases[wheelbase ?? 'medium'].lengthM;
	const box = {
		lengthM,
		widthM: input.insideWidthM ?? widthM,
		heightM: input.insideHeightM ?? roofs[roof].heightM,
	};
	const typical = (name: string, label: string, value: number) =>
		sheet.assume(name, label, value, 'typical of the size class (practice); measure yours', {
			kind: 'length',
			confirm: true,
		});
	if (input.insideLengthM === undefined) typical('insideLengthM', 'inside length', box.lengthM);
	if (input.insideWidthM === undefined) typical('insideWidthM', 'inside width', box.widthM);
	if (input.insideHeightM === undefined) typical('insideHeightM', 'inside height', box.heightM);
	sheet.source(interiorSource);
	return box;
}

/** How the shell is built, from the fields. */
export function fitoutOf(input: ShellInput, sheet: Sheet): Fitout {
	const insulation = materials[input.material];
	sheet.source(insulation.source, practice('steel ribs with two webs of 1 mm in 60 mm'));
	return {
		insulation,
		wallMm: input.insulationMm,
		roofMm: input.roofInsulationMm,
		floorMm: input.floorInsulationMm,
		ribCoverMm: input.ribCoverMm,
		ribShare: input.ribShare,
		windowM2: input.windowM2,
		window: input.windowKind,
		covers: input.covers,
		cabClosed: input.cabClosed,
	};
}
