import { roofOptions, wheelbaseOptions } from '../../tables/interiors.js';
import { choice, count, flag, quantity, text } from '../../topic/field.js';
import { howMany, placingFields } from './common.js';
import { declareEquipment, words } from './declare.js';

/** German bends its adjectives. */
const sizeOptions = {
	...wheelbaseOptions,
	short: [...wheelbaseOptions.short, ...words('kurzem radstand|kurzen radstand|kurzer kastenwagen')],
	medium: [
		...wheelbaseOptions.medium,
		...words('mittlerem radstand|mittleren radstand|mittlerer kastenwagen'),
	],
	long: [...wheelbaseOptions.long, ...words('langem radstand|langen radstand|langer kastenwagen')],
};

const rating = (label: string, aliases: string, max: number) =>
	quantity({ label, kind: 'mass', min: 200, max, aliases: words(aliases) });

export const body = declareEquipment({
	kind: 'van',
	label: 'van',
	system: 'weight',
	single: true,
	words: words(
		'van|panel van|cargo van|gvwr|gvw|gross weight|payload|wheelbase|base vehicle|vehicle|furgón|furgoneta|camper|masa máxima|mma|peso máximo|kastenwagen|transporter|basisfahrzeug|zulässiges gesamtgewicht|zul gesamtgewicht|zgg|gesamtgewicht',
	),
	fields: {
		gvwrKg: quantity({
			label: 'GVWR',
			kind: 'mass',
			min: 1500,
			max: 12_000,
			aliases: words(
				'gvwr|gvw|gross|gross weight|max weight|masa máxima|mma|peso máximo|zulässiges gesamtgewicht|zul gesamtgewicht|zgg|gesamtgewicht',
			),
			required: 'What is the GVWR on the door label?',
		}),
		rearRatingKg: rating(
			'rear axle rating',
			'rear axle|rear gawr|gawr rear|rear axle rating|rear rating|rear|hinterachse|achslast hinten|eje trasero|trasero',
			8000,
		),
		frontRatingKg: rating(
			'front axle rating',
			'front axle|front gawr|gawr front|front axle rating|front rating|front|vorderachse|achslast vorn|eje delantero|delantero',
			6000,
		),
		emptyKg: quantity({
			label: 'empty mass',
			kind: 'mass',
			min: 900,
			max: 8000,
			aliases: words(
				'empty|empty weight|curb weight|kerb weight|unladen|leer|leergewicht|leermasse|tara|en vacío|vacía|peso en vacío',
			),
		}),
		frontEmptyKg: quantity({
			label: 'empty front axle',
			kind: 'mass',
			min: 400,
			max: 5000,
			aliases: words('empty front axle|front axle empty|front empty|vorderachse leer|eje delantero en vacío'),
		}),
		rearEmptyKg: quantity({
			label: 'empty rear axle',
			kind: 'mass',
			min: 300,
			max: 5000,
			aliases: words('empty rear axle|rear axle empty|rear empty|hinterachse leer|eje trasero en vacío'),
		}),
		builtKg: quantity({
			label: 'mass as it stands',
			kind: 'mass',
			min: 900,
			max: 12_000,
			aliases: words(
				'scale weight|scaled|scales|weighed|weighed in at|on the scale|on the scales|as built|current weight|gewogen|auf der waage|pesada|en báscula',
			),
		}),
		wheelbase: choice({ label: 'size of the van', options: sizeOptions }),
		roof: choice({ label: 'roof', options: roofOptions }),
		wheelbaseM: quantity({
			label: 'wheelbase',
			kind: 'length',
			min: 1.8,
			max: 7,
			aliases: words('wheelbase|wb|batalla|radstand|distancia entre ejes'),
		}),
		insideLengthM: quantity({
			label: 'inside length',
			kind: 'length',
			min: 1,
			max: 12,
			aliases: words(
				'inside length|cargo length|load length|interior length|laderaumlänge|innenlänge|longitud interior',
			),
		}),
		trackM: quantity({
			label: 'track',
			kind: 'length',
			min: 1,
			max: 2.3,
			aliases: words('track|spurweite|ancho de vía'),
		}),
		overallM: quantity({
			label: 'overall length',
			kind: 'length',
			min: 3.5,
			max: 9,
			aliases: words('long|overall|overall length|length|lang|länge|de largo|gesamtlänge'),
		}),
	},
});

export const people = declareEquipment({
	kind: 'people',
	label: 'people',
	system: 'weight',
	single: true,
	words: words(
		'people|person|persons|sleeps|sleep|occupants|travelers|travellers|passengers|couple|adults|adult|kids|kid|children|child|family of|solo|solo traveler|seats|personas|persona|adultos|niños|niño|pareja|familia de|plazas|viajeros|personen|leute|erwachsene|erwachsenen|kinder|kind|reisende|schlafplätze|sitzplätze|familie mit|paar|pärchen|ppl|zu zweit|zu dritt|zu viert',
	),
	fields: {
		people: count({
			label: 'people',
			min: 1,
			max: 12,
			aliases: words(
				'people|person|persons|sleeps|occupants|travelers|travellers|passengers|seats|family of|personas|persona|familia de|plazas|viajeros|personen|leute|reisende|schlafplätze|sitzplätze|ppl',
			),
		}),
		adults: count({
			label: 'adults',
			min: 1,
			max: 12,
			aliases: words('adults|adult|adultos|erwachsene|erwachsenen'),
		}),
		children: count({
			label: 'children',
			min: 1,
			max: 10,
			aliases: words('kids|kid|children|child|niños|niño|kinder|kind'),
		}),
		two: flag({ label: 'a couple', yes: words('couple|pareja|paar|pärchen|zu zweit') }),
		one: flag({ label: 'alone', yes: words('solo|solo traveler') }),
	},
	settle: ({ two, one, adults, children, people: counted }) => {
		const pair = two === true && adults === undefined ? 2 : 0;
		const said = (adults ?? 0) + (children ?? 0) + pair + (one === true ? 1 : 0);
		const all = Math.max(counted ?? 0, said);
		return all === 0 ? {} : { people: all };
	},
});

export const bed = declareEquipment({
	kind: 'bed',
	label: 'bed platform',
	system: 'structure',
	words: words(
		'bed|bed platform|platform bed|fixed bed|bunk|bunks|bunk beds|mattress|murphy bed|lift bed|cama|cama fija|litera|literas|somier|bett|festbett|hubbett|bettgestell|querbett|etagenbett|stockbett',
	),
	fields: { count: howMany, ...placingFields },
	usualKg: ({ count: many = 1 }) => 45 * many,
	usualZone: 'back',
});

export const furniture = declareEquipment({
	kind: 'furniture',
	label: 'cabinets',
	system: 'structure',
	words: words(
		'cabinets|cabinet|cabinetry|furniture|galley|kitchen cabinet|kitchen cabinets|overhead cabinets|cupboards|drawers|paneling|walls and ceiling|woodwork|muebles|mueble de cocina|armarios|mobiliario|möbel|möbelbau|küchenblock|küchenzeile|schränke|hängeschränke',
	),
	fields: placingFields,
	usualKg: () => 120,
	usualZone: 'middle',
});

export const awning = declareEquipment({
	kind: 'awning',
	label: 'awning',
	system: 'weight',
	words: words('awning|awnings|toldo|markise'),
	fields: {
		count: howMany,
		lengthM: quantity({ label: 'length', kind: 'length', min: 1, max: 6 }),
		...placingFields,
	},
	usualKg: ({ count: many = 1, lengthM = 3 }) => many * lengthM * 9,
	usualZone: 'middle',
});

export const roofRack = declareEquipment({
	kind: 'roof-rack',
	label: 'roof rack',
	system: 'weight',
	words: words(
		'roof rack|rack|roof deck|roof platform|crossbars|roof bars|baca|portaequipajes|barras de techo|dachträger|dachgepäckträger|dachterrasse',
	),
	fields: {
		...placingFields,
		limitKg: quantity({
			label: 'allowed roof load',
			kind: 'mass',
			min: 10,
			max: 600,
			aliases: words(
				'rated|rated for|limit|max load|roof load|roof limit|roof load limit|allowed|dachlast|zulässige dachlast|carga máxima|carga de techo',
			),
		}),
	},
	usualKg: () => 35,
	usualZone: 'middle',
});

export const cargo = declareEquipment({
	kind: 'cargo',
	label: 'cargo',
	system: 'weight',
	words: words(
		'bikes|bike|bicycles|bicycle|mountain bikes|ebikes|e-bikes|motorcycle|motorbike|dirt bike|scooter|kayak|kayaks|canoe|surfboard|surfboards|paddle boards|paddle board|skis|ski gear|tools|tool box|gear|climbing gear|luggage|roof box|cargo box|cargo|spare tire|spare wheel|recovery boards|storage box|dog|dogs|bicicletas|bicicleta|bicis|bici|moto|tablas de surf|herramientas|equipaje|cofre de techo|perro|perros|rueda de repuesto|fahrräder|fahrrad|räder|motorrad|roller|surfbretter|ski|werkzeug|gepäck|dachbox|hund|hunde|ersatzrad|ausrüstung',
	),
	fields: {
		name: text({
			label: 'what',
			words: words(
				'bikes|bike|bicycles|motorcycle|motorbike|dirt bike|scooter|kayak|kayaks|canoe|surfboard|surfboards|skis|tools|gear|luggage|roof box|cargo box|spare tire|spare wheel|storage box|dog|dogs|bicicletas|bicis|moto|herramientas|equipaje|cofre de techo|perro|fahrräder|motorrad|roller|surfbretter|werkzeug|gepäck|dachbox|hund|ersatzrad|ausrüstung',
			),
		}),
		count: howMany,
		...placingFields,
	},
	usualKg: ({ name = '', count: many = 1 }) => many * (/moto|roller|scooter/.test(name) ? 130 : 20),
	usualZone: 'back',
});

export const lift = declareEquipment({
	kind: 'lift',
	label: 'lift kit',
	system: 'weight',
	single: true,
	words: words(
		'lift kit|lift|lifted|suspension lift|raised suspension|elevación|suspensión elevada|levantada|kit de elevación|höherlegung|höhergelegt|fahrwerk höher',
	),
	fields: {
		liftM: quantity({ label: 'lift', kind: 'length', min: 0.005, max: 0.5 }),
		checked: flag({
			label: 'stability checked again',
			yes: words(
				'stability checked|stability re-checked|stability rechecked|stability was checked|rollover checked|estabilidad comprobada|standsicherheit geprüft',
			),
		}),
	},
});

export const tires = declareEquipment({
	kind: 'tires',
	label: 'tires',
	system: 'weight',
	single: true,
	words: words('tires|tire|tyres|tyre|all-terrain tires|neumáticos|ruedas|reifen'),
	fields: {
		count: howMany,
		loadIndex: count({
			label: 'load index',
			min: 70,
			max: 130,
			aliases: words('load index|index|tragfähigkeitsindex|lastindex|índice de carga'),
		}),
	},
});
