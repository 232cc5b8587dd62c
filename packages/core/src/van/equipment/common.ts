import type { LoadItem } from '../../energy/loads.js';
import { typicalLoadNamed } from '../../tables/loads.js';
import { choice, conductor, count, flag, quantity } from '../../topic/field.js';
import { words } from './declare.js';

/** How many of them; a count typed before the thing or its figure. */
export const howMany = count({
	label: 'how many',
	min: 1,
	max: 100,
	aliases: ['pieces', 'of them', 'stück', 'unidades'],
});

/** The circuit that feeds a thing or leads away from it. */
export const circuitFields = {
	fuseA: quantity({
		label: 'fuse or breaker',
		kind: 'current',
		min: 0.5,
		max: 1000,
		aliases: words(
			'fuse|fuses|fused|fused at|fused with|breaker|breakers|breaker at|circuit breaker|protected by|sicherung|abgesichert|abgesichert mit|fusible|disyuntor|magnetotérmico',
		),
	}),
	wireSize: conductor({
		label: 'wire',
		aliases: words('wire|wired with|cable|cables|cabling|kabel|leitung|cable de'),
	}),
	runM: quantity({
		label: 'run, one way',
		kind: 'length',
		min: 0.05,
		max: 60,
		aliases: words('run|cable run|one way|away|long|lead|leads|lang|entfernt|de largo|de cable'),
	}),
};

/** Where it stands and what it weighs. */
export const placingFields = {
	massKg: quantity({
		label: 'mass',
		kind: 'mass',
		min: 0.05,
		max: 3000,
		aliases: words('weighs|weight|weighing|mass|heavy|pesa|peso|wiegt|gewicht|schwer'),
	}),
	zone: choice({
		label: 'place in the van',
		options: {
			cab: words('in the cab|in the cabin|under the passenger seat|under the driver seat|im fahrerhaus'),
			front: words(
				'behind the cab|behind the seats|behind the driver|behind the driver seat|behind the passenger seat|at the front|hinter dem fahrersitz|detrás del conductor',
			),
			middle: words(
				'in the middle|midship|amidships|between the axles|by the sliding door|by the slider|in der mitte|en medio',
			),
			axle: words(
				'over the rear axle|above the rear axle|over the axle|over the wheel well|wheel well|wheel wells|over the wheel arch|über der hinterachse|sobre el eje',
			),
			back: words(
				'in the back|at the back|in the rear|at the rear|garage|in the garage|behind the rear axle|behind the axle|under the bed|rear overhang|hinten|im heck|heckgarage|unter dem bett|atrás|bajo la cama|debajo de la cama',
			),
			door: words(
				'on the rear door|on the back door|on the rear doors|rear carrier|on a rear carrier|hitch|on the hitch|hitch rack|hecktür|an der hecktür|heckträger|portón|en el portón',
			),
		},
	}),
	onRoof: flag({
		label: 'on the roof',
		yes: words(
			'on the roof|on roof|on top|roof mounted|roof-mounted|auf dem dach|sobre el techo|en el techo',
		),
	}),
};

const voltageV = quantity({ label: 'voltage', kind: 'voltage', min: 5, max: 260 });

/** What a consumer of electricity is known by. */
export const consumerFields = {
	count: howMany,
	powerW: quantity({
		label: 'power',
		kind: 'power',
		min: 0.1,
		max: 30_000,
		aliases: words('draws|draw|uses|pulls|consumes|consume|verbraucht|zieht|leistung'),
	}),
	currentA: quantity({
		label: 'current',
		kind: 'current',
		min: 0.005,
		max: 500,
		aliases: words('draws|draw|pulls|strom|corriente'),
	}),
	voltageV,
	energyWh: quantity({ label: 'energy a day', kind: 'energy', min: 0.1, max: 100_000 }),
	chargeAh: quantity({ label: 'charge a day', kind: 'charge', min: 0.01, max: 5000 }),
	durationH: quantity({ label: 'hours a day', kind: 'duration', min: 0.001, max: 24 }),
	duty: quantity({
		label: 'share of the time it runs',
		kind: 'fraction',
		min: 0.001,
		max: 1,
		aliases: words('duty|duty cycle|of the time|der zeit|del tiempo'),
	}),
	supply: choice({
		label: 'where it is fed from',
		options: {
			mains: words(
				'on inverter|on the inverter|off the inverter|via inverter|through the inverter|from the inverter|over the inverter|runs off the inverter|mains|household|residential|plugged in|ac powered|ac|am wechselrichter|über wechselrichter|über den wechselrichter|netz|por el inversor|del inversor|a red',
			),
			dc: words('dc|low voltage|from the battery|direct from the battery|gleichstrom|a batería'),
		},
	}),
	...circuitFields,
	...placingFields,
};

/** The load of a consumer as topics read it; what was not said is typical of the name. */
export function draw(
	name: string,
	given: {
		readonly count?: number;
		readonly powerW?: number;
		readonly currentA?: number;
		readonly voltageV?: number;
		readonly energyWh?: number;
		readonly chargeAh?: number;
		readonly durationH?: number;
		readonly duty?: number;
		readonly supply?: 'mains' | 'dc';
	},
	unsaid: LoadItem = {},
): LoadItem {
	const { count: many, powerW, currentA, energyWh, chargeAh, durationH, duty } = given;
	return {
		...unsaid,
		name,
		supply: given.supply ?? supplyAt(given.voltageV) ?? unsaid.supply,
		count: many,
		powerW: powerW ?? (currentA === undefined ? unsaid.powerW : undefined),
		currentA,
		energyWh,
		chargeAh,
		durationH: durationH ?? unsaid.durationH,
		duty: duty ?? unsaid.duty,
	};
}

/** Above this a voltage is the mains [V]. */
const highestBankV = 60;

function supplyAt(voltage: number | undefined): 'mains' | 'dc' | undefined {
	if (voltage === undefined) return undefined;
	return voltage > highestBankV ? 'mains' : 'dc';
}

/** The words of the table of typical loads for one of them, to which a kind adds its own. */
export function loadWords(name: string): readonly string[] {
	return typicalLoadNamed(name).words;
}
