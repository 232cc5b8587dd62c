import type { Region } from '../topic/context.js';
import { practice } from '../topic/source.js';
import type { BurnerFuel } from './fuels.js';

/** What the figure on a burner's plate tells: the fuel it burns, or what it gives. */
export type Rating = 'input' | 'output';

/** A burner as vans commonly carry it. No document says so: every value is taken only where the shop gave none. */
export interface TypicalBurner {
	readonly name: string;
	/** how people call it, in English, Spanish and German */
	readonly words: readonly string[];
	/** power on its plate [W] */
	readonly powerW: Readonly<Record<Region, number>>;
	/** hours a day it is switched on [h] */
	readonly hoursPerDay: number;
	/** share of that time it burns at full power */
	readonly duty: number;
	/** what its plate rates where it burns gas, by region; a plate of diesel or gasoline rates the output */
	readonly gasRating: Readonly<Record<Region, Rating>>;
	/** share of the lower heating value it turns into its output */
	readonly efficiency: number;
	/** switches itself off and on by a thermostat */
	readonly cycles: boolean;
	/** how long it runs a day is up to the weather or the work: nobody's habit */
	readonly hoursVary: boolean;
}

export const typicalBurnerSource = practice('typical burners of a camper van; the plate decides');

/** Share of the lower heating value that a burner turns into its output where nobody said (common practice). */
const usualEfficiency = 0.8;
const input = { us: 'input', eu: 'input' } as const;
/** Plates of gas heaters give the input in North America and the output in Europe. */
const byRegion = { us: 'input', eu: 'output' } as const;
const wattsPerBtuH = 0.29307107;

function both(powerW: number): Readonly<Record<Region, number>> {
	return { us: powerW, eu: powerW };
}

function burner(
	name: string,
	words: string,
	given: Pick<TypicalBurner, 'powerW' | 'hoursPerDay'> & Partial<TypicalBurner>,
): TypicalBurner {
	return {
		name,
		words: [name, ...words.split('|')],
		duty: 1,
		gasRating: input,
		efficiency: usualEfficiency,
		cycles: false,
		hoursVary: false,
		...given,
	};
}

const heating = { duty: 0.5, cycles: true, hoursVary: true, gasRating: byRegion } as const;

export const typicalBurners: readonly TypicalBurner[] = [
	burner(
		'furnace',
		'gas furnace|propane furnace|propane heater|gas heater|lpg heater|butane heater|catalytic heater|radiant heater|estufa|estufa de gas|calefacción de gas|calefactor de gas|gasheizung|gasofen|gas-heizung',
		{ ...heating, powerW: { us: 16_000 * wattsPerBtuH, eu: 4000 }, hoursPerDay: 10 },
	),
	burner(
		'heater',
		'air heater|night heater|parking heater|diesel heater|diesel air heater|diesel furnace|gasoline heater|petrol heater|heating|calefacción|calefacción estacionaria|calefacción diésel|calefactor|calefactor diésel|calefa|heizung|dieselheizung|benzinheizung|standheizung|luftheizung|heizgerät',
		{ ...heating, powerW: both(2000), hoursPerDay: 10 },
	),
	burner(
		'cooktop',
		'cook top|stove|hob|burner|burners|cooker|range|cooking|cook|gas stove|gas cooktop|gas hob|gas burner|propane stove|propane cooktop|propane burner|camp stove|camping stove|diesel stove|diesel cooktop|ring|kocher|gaskocher|campingkocher|herd|gasherd|kochfeld|gaskochfeld|kochstelle|kochen|flamme|flammen|cocina|cocina de gas|cocinar|hornillo|fogón|fogones|fuego|fuegos',
		{ powerW: both(2000), hoursPerDay: 1 },
	),
	burner('oven', 'gas oven|propane oven|horno|backofen', { powerW: both(2100), hoursPerDay: 0.5 }),
	burner('grill', 'barbecue|bbq|gas grill|propane grill|parrilla|barbacoa|gasgrill', {
		powerW: both(3000),
		hoursPerDay: 0.5,
	}),
	burner(
		'water heater',
		'hot water|wtr heater|gas water heater|propane water heater|diesel water heater|tankless|tankless water heater|shower|showers|boiler|calentador|calentador de agua|calentador de gas|agua caliente|ducha|duchas|warmwasser|gasboiler|durchlauferhitzer|warmwasserbereiter|dusche|duschen',
		{ powerW: both(12_000 * wattsPerBtuH), hoursPerDay: 0.5, gasRating: byRegion },
	),
	burner(
		'absorption fridge',
		'fridge|refrigerator|gas fridge|propane fridge|three-way fridge|3-way fridge|nevera|nevera de gas|nevera trivalente|frigorífico|kühlschrank|gaskühlschrank|absorber|absorberkühlschrank',
		{ powerW: both(250), hoursPerDay: 24 },
	),
	burner('fire pit', 'firepit|fire table|campfire|feuerschale|brasero', {
		powerW: both(50_000 * wattsPerBtuH),
		hoursPerDay: 2,
		hoursVary: true,
	}),
	burner('lantern', 'gas lantern|gas lamp|propane lantern|farol|gaslampe|laterne', {
		powerW: both(500),
		hoursPerDay: 3,
	}),
	// A small set gives as electricity about a seventh of what it burns, at half load less than that.
	burner('generator', 'genset|propane generator|gas generator|generador|generator|stromerzeuger|notstromer', {
		powerW: both(1000),
		hoursPerDay: 3,
		gasRating: { us: 'output', eu: 'output' },
		efficiency: 0.15,
		hoursVary: true,
	}),
];

const byWord = new Map(
	typicalBurners.flatMap((one) => one.words.map((word) => [word.toLowerCase(), one] as const)),
);

/** Words that name a burner in a message. */
export const typicalBurnerWords: readonly string[] = [...byWord.keys()];

/** The burner a name stands for, by its longest known part: "old two burner stove" is a cooktop; null where none is. */
export function typicalBurner(name: string): TypicalBurner | null {
	const words = name.toLowerCase().split(/[\s-]+/);
	for (let length = words.length; length > 0; length -= 1) {
		for (let from = 0; from + length <= words.length; from += 1) {
			const found = byWord.get(words.slice(from, from + length).join(' '));
			if (found !== undefined) return found;
		}
	}
	return null;
}

/** What the figure of a burner's plate means: fuel burned, or what it gives. */
export function plateRating(one: TypicalBurner | null, fuel: BurnerFuel, region: Region): Rating {
	const isGas = fuel === 'propane' || fuel === 'butane';
	if (one === null) return isGas ? 'input' : 'output';
	// A flame that is cooked on is rated by what it burns, whatever that is.
	if (one.name === 'cooktop') return 'input';
	return isGas ? one.gasRating[region] : 'output';
}
