/**
 * The kinds of quantity the trade speaks of: the unit each is computed in, the units people write it in, and the
 * unit it is shown in. `expression` is what mathjs converts; the words are what a person types.
 */
export type UnitHabit = 'us' | 'metric';

export interface UnitOfKind {
	/** as shown: "ft" */
	readonly symbol: string;
	/** for mathjs: "ft", "gal/min" */
	readonly expression: string;
	/** as typed, lower case; the symbol in lower case is understood too */
	readonly words: readonly string[];
	/** typed exactly so, where case tells two units apart (mW, MW) */
	readonly exact?: readonly string[];
}

export interface Kind {
	/** the unit of the numbers inside */
	readonly base: string;
	readonly units: readonly UnitOfKind[];
	/** symbols in which it is shown; the first whose value is at least 1 (or the last) is taken */
	readonly shown: { readonly us: readonly string[]; readonly metric: readonly string[] };
	/** most decimals shown */
	readonly decimals: number;
}

function u(symbol: string, expression: string, words: string, exact?: string): UnitOfKind {
	const list = words === '' ? [] : words.split('|');
	return exact === undefined
		? { symbol, expression, words: list }
		: { symbol, expression, words: list, exact: exact.split('|') };
}

function both(...symbols: string[]): Kind['shown'] {
	return { us: symbols, metric: symbols };
}

const kinds = {
	current: {
		base: 'A',
		units: [
			u('A', 'A', 'a|amp|amps|ampere|amperes|amperios|amperio|ampère'),
			u('mA', 'mA', 'ma|milliamp|milliamps'),
			u('kA', 'kA', 'ka|kiloamp|kiloamps'),
		],
		shown: both('A', 'mA'),
		decimals: 1,
	},
	voltage: {
		base: 'V',
		units: [
			u('V', 'V', 'v|volt|volts|voltios|voltio|vdc|vac|volt dc|volts dc|volt ac|volts ac|v dc|v ac'),
			u('mV', 'mV', 'mv|millivolt|millivolts'),
			u('kV', 'kV', 'kv'),
		],
		shown: both('V'),
		decimals: 2,
	},
	power: {
		base: 'W',
		units: [
			u('W', 'W', 'w|watt|watts|vatios|vatio|va'),
			u('kW', 'kW', 'kw|kilowatt|kilowatts|kilovatios|kva'),
			u('mW', 'mW', 'milliwatt|milliwatts', 'mW'),
			u('hp', 'hp', 'hp|horsepower'),
			u('Btu/h', 'BTU/hour', 'btu/h|btu/hr|btuh|btu per hour|btu|btus'),
		],
		shown: both('W'),
		decimals: 0,
	},
	energy: {
		base: 'Wh',
		units: [
			u(
				'Wh',
				'W hour',
				'wh|watthour|watthours|watt-hour|watt-hours|watt hours|watt hour|wh/day|wh/d|wh per day|vatios hora|wattstunden',
			),
			u(
				'kWh',
				'kW hour',
				'kwh|kilowatthour|kilowatthours|kilowatt-hour|kilowatt-hours|kilowatt hours|kwh/day|kwh/d|kwh per day|kw h|kw-h|kw hr|kw hrs|kw hour|kw hours|kw hora|kw horas|kilowattstunden|kilovatios hora',
			),
			u('MJ', 'MJ', 'mj|megajoule|megajoules'),
		],
		shown: both('kWh', 'Wh'),
		decimals: 2,
	},
	charge: {
		base: 'Ah',
		units: [
			u(
				'Ah',
				'A hour',
				'ah|amphour|amphours|amp-hour|amp-hours|amp hours|amp hour|ah/day|ah/d|ah per day|a h|amp hr|amp hrs|amp-hr|amps hour|amps hours|amperios hora|amperestunden',
			),
			u('mAh', 'mA hour', 'mah'),
		],
		shown: both('Ah'),
		decimals: 0,
	},
	resistance: {
		base: 'ohm',
		units: [u('ohm', 'ohm', 'ohm|ohms|ω'), u('mohm', 'mohm', 'mohm|mohms|milliohm|milliohms|mω')],
		shown: both('ohm', 'mohm'),
		decimals: 2,
	},
	length: {
		base: 'm',
		units: [
			u('m', 'm', 'm|meter|meters|metern|metre|metres|mtr|mtrs|mts|metro|metros'),
			u('ft', 'ft', "ft|foot|feet|'|′|’|pies|pie|fuß|fuss"),
			u('in', 'in', 'inch|inches|"|″|”|pulgadas|pulgada|zoll', 'in'),
			u(
				'cm',
				'cm',
				'cm|centimeter|centimeters|zentimeter|zentimetern|centímetros|centimetros|centimetre|centimetres',
			),
			u('mm', 'mm', 'mm|millimeter|millimeters|millimetern|milímetros|milimetros|millimetre|millimetres'),
			u('km', 'km', 'km|kilometer|kilometers|kilometre|kilometres'),
			u('mi', 'mi', 'mi|mile|miles'),
			u('yd', 'yd', 'yd|yard|yards'),
		],
		shown: { us: ['ft'], metric: ['m'] },
		decimals: 1,
	},
	thickness: {
		base: 'mm',
		units: [],
		shown: { us: ['in'], metric: ['mm'] },
		decimals: 2,
	},
	area: {
		base: 'm2',
		units: [
			u('m²', 'm^2', 'm2|m²|sqm|sq m|square meter|square meters|square metre|square metres'),
			u('ft²', 'ft^2', 'ft2|ft²|sqft|sq ft|square foot|square feet'),
			u('in²', 'in^2', 'in2|in²|sq in|square inch|square inches'),
			u('cm²', 'cm^2', 'cm2|cm²|sq cm'),
		],
		shown: { us: ['ft²'], metric: ['m²'] },
		decimals: 2,
	},
	volume: {
		base: 'L',
		units: [
			u('L', 'L', 'l|lt|ltr|liter|liters|litern|litre|litres|litro|litros'),
			u('gal', 'gal', 'gal|gals|gallon|gallons|galon|galones'),
			u('qt', 'qt', 'qt|quart|quarts'),
			u('mL', 'mL', 'ml|milliliter|milliliters|millilitre|millilitres'),
			u('m³', 'm^3', 'm3|m³|cubic meter|cubic meters|cubic metre|cubic metres'),
			u('ft³', 'ft^3', 'ft3|ft³|cuft|cu ft|cubic foot|cubic feet'),
		],
		shown: { us: ['gal'], metric: ['L'] },
		decimals: 1,
	},
	flow: {
		base: 'L/min',
		units: [
			u('L/min', 'L/minute', 'l/min|lpm|liters per minute|litres per minute|liter per minute|l per min'),
			u('gpm', 'gal/minute', 'gpm|gal/min|gallons per minute|gallon per minute|gal per min'),
			u('L/h', 'L/hour', 'l/h|lph|liters per hour|litres per hour'),
			u('gph', 'gal/hour', 'gph|gal/h|gallons per hour'),
		],
		shown: { us: ['gpm'], metric: ['L/min'] },
		decimals: 2,
	},
	airflow: {
		base: 'm3/h',
		units: [
			u('m³/h', 'm^3/hour', 'm3/h|m³/h|cubic meters per hour|cubic metres per hour'),
			u('cfm', 'ft^3/minute', 'cfm|cubic feet per minute|ft3/min'),
		],
		shown: { us: ['cfm'], metric: ['m³/h'] },
		decimals: 0,
	},
	pressure: {
		base: 'kPa',
		units: [
			u('kPa', 'kPa', 'kpa'),
			u('psi', 'psi', 'psi|psig|pounds per square inch'),
			u('bar', 'bar', 'bar|bars|barg'),
			u('Pa', 'Pa', 'pa|pascal|pascals'),
			u('mbar', 'mbar', 'mbar|hpa'),
		],
		shown: { us: ['psi'], metric: ['bar'] },
		decimals: 2,
	},
	mass: {
		base: 'kg',
		units: [
			u('kg', 'kg', 'kg|kgs|kilo|kilos|kilogram|kilograms'),
			u('lb', 'lb', 'lb|lbs|pound|pounds|#s|libras'),
			u('g', 'g', 'gram|grams', 'g'),
			u('oz', 'oz', 'oz|ounce|ounces'),
			u('t', 'tonne', 'tonne|tonnes'),
		],
		shown: { us: ['lb'], metric: ['kg'] },
		decimals: 1,
	},
	massFlow: {
		base: 'kg/h',
		units: [
			u('kg/h', 'kg/hour', 'kg/h|kg/hr|kg per hour|kg an hour|kg pro stunde|kg por hora'),
			u('g/h', 'g/hour', 'g/h|g/hr|grams per hour|grams an hour|gramm pro stunde|gramos por hora'),
			u('lb/h', 'lb/hour', 'lb/h|lb/hr|lbs/h|lbs/hr|lb per hour|pounds per hour|pounds an hour'),
		],
		shown: { us: ['lb/h'], metric: ['kg/h'] },
		decimals: 2,
	},
	force: {
		base: 'N',
		units: [
			u('N', 'N', 'newton|newtons', 'N'),
			u('kN', 'kN', 'kn|kilonewton|kilonewtons'),
			u('lbf', 'lbf', 'lbf|pounds force|pounds-force'),
		],
		shown: { us: ['lbf'], metric: ['N'] },
		decimals: 0,
	},
	lineLoad: {
		base: 'N/m',
		units: [
			u('N/m', 'N/m', 'n/m'),
			u('kN/m', 'kN/m', 'kn/m'),
			u('lbf/ft', 'lbf/ft', 'lb/ft|lbs/ft|lbf/ft|plf|pounds per foot'),
			u('kg/m', 'kg m/s^2/m*9.80665', 'kg/m'),
		],
		shown: { us: ['lbf/ft'], metric: ['N/m'] },
		decimals: 0,
	},
	moment: {
		base: 'N m',
		units: [
			u('N m', 'N m', 'nm|n·m|n m|newton meters'),
			u('lbf ft', 'lbf ft', 'ft-lb|ft lb|ft-lbs|lb-ft|lbf ft|ft·lbf'),
		],
		shown: { us: ['lbf ft'], metric: ['N m'] },
		decimals: 1,
	},
	stress: {
		base: 'MPa',
		units: [u('MPa', 'MPa', 'mpa|n/mm2|n/mm²'), u('ksi', '1000 psi', 'ksi')],
		shown: { us: ['ksi'], metric: ['MPa'] },
		decimals: 1,
	},
	modulus: {
		base: 'GPa',
		units: [u('GPa', 'GPa', 'gpa'), u('Msi', '1000000 psi', 'msi')],
		shown: { us: ['Msi'], metric: ['GPa'] },
		decimals: 1,
	},
	secondMoment: {
		base: 'mm4',
		units: [
			u('mm⁴', 'mm^4', 'mm4|mm⁴|mm^4'),
			u('cm⁴', 'cm^4', 'cm4|cm⁴|cm^4'),
			u('in⁴', 'in^4', 'in4|in⁴|in^4'),
		],
		shown: { us: ['in⁴'], metric: ['cm⁴'] },
		decimals: 3,
	},
	temperature: {
		base: 'degC',
		units: [
			u('°C', 'degC', 'c|°c|degc|deg c|celsius|degrees c|degrees celsius|grad c|grados c|grad celsius'),
			u('°F', 'degF', 'f|°f|degf|deg f|fahrenheit|degrees f|degrees fahrenheit'),
		],
		shown: { us: ['°F'], metric: ['°C'] },
		decimals: 0,
	},
	temperatureDifference: {
		base: 'K',
		units: [u('K', 'K', '', 'K')],
		shown: { us: ['K'], metric: ['K'] },
		decimals: 1,
	},
	duration: {
		base: 'h',
		units: [
			u(
				'h',
				'hour',
				'h|hr|hrs|hour|hours|hora|horas|stunde|stunden|std|h/day|h/d|hr/day|hrs/day|hours/day|hours a day|hours per day|h per day',
			),
			u('min', 'minute', 'min|mins|minute|minutes|minuto|minutos|minuten|min/day'),
			u('s', 's', 's|sec|secs|second|seconds|segundos|sekunden'),
			u('d', 'day', 'day|days|dia|días|dias|tag|tage|tagen'),
			u('wk', 'week', 'week|weeks|semana|semanas|woche|wochen'),
		],
		shown: both('h', 'min'),
		decimals: 1,
	},
	fraction: {
		base: '1',
		units: [u('%', '0.01', '%|percent|per cent|pct|prozent|por ciento')],
		shown: both('%'),
		decimals: 1,
	},
	speed: {
		base: 'm/s',
		units: [
			u('m/s', 'm/s', 'm/s'),
			u('km/h', 'km/hour', 'km/h|kmh|kph'),
			u('mph', 'mi/hour', 'mph'),
			u('ft/s', 'ft/s', 'ft/s|fps'),
		],
		shown: { us: ['ft/s'], metric: ['m/s'] },
		decimals: 2,
	},
	angle: {
		base: 'deg',
		units: [u('°', 'deg', '°|deg|degree|degrees|grad|grados')],
		shown: both('°'),
		decimals: 1,
	},
	irradiance: {
		base: 'W/m2',
		units: [u('W/m²', 'W/m^2', 'w/m2|w/m²|watts per square meter')],
		shown: both('W/m²'),
		decimals: 0,
	},
	irradiation: {
		base: 'kWh/m2',
		units: [u('kWh/m²', 'kW hour/m^2', 'kwh/m2|kwh/m²|sun hours|sun-hours|peak sun hours|psh')],
		shown: both('kWh/m²'),
		decimals: 2,
	},
	conductance: {
		base: 'W/m2K',
		units: [u('W/m²K', 'W/(m^2 K)', 'w/m2k|w/m²k|w/(m2k)|w/m2/k')],
		shown: both('W/m²K'),
		decimals: 2,
	},
	heatLoss: {
		base: 'W/K',
		units: [u('W/K', 'W/K', 'w/k')],
		shown: both('W/K'),
		decimals: 1,
	},
	conductivity: {
		base: 'W/mK',
		units: [u('W/mK', 'W/(m K)', 'w/mk|w/(mk)|w/m/k')],
		shown: both('W/mK'),
		decimals: 3,
	},
	density: {
		base: 'kg/m3',
		units: [u('kg/m³', 'kg/m^3', 'kg/m3|kg/m³'), u('lb/ft³', 'lb/ft^3', 'lb/ft3|lb/ft³|pcf')],
		shown: { us: ['lb/ft³'], metric: ['kg/m³'] },
		decimals: 0,
	},
	frequency: {
		base: 'Hz',
		units: [u('Hz', 'Hz', 'hz|hertz')],
		shown: both('Hz'),
		decimals: 0,
	},
	voltagePerDegree: {
		base: '1/K',
		units: [u('%/K', '0.01/K', '%/k|%/c|%/°c|% per c|% per k|%/degc')],
		shown: both('%/K'),
		decimals: 3,
	},
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof kinds;
export const kindNames = Object.keys(kinds) as KindName[];

/** The kind's declaration with the general type, for code that handles any kind. */
export function kindOf(name: KindName): Kind {
	return kinds[name];
}
