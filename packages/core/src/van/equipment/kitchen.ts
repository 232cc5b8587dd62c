import { typicalLoad, typicalLoads } from '../../tables/loads.js';
import { choice, count, quantity, text } from '../../topic/field.js';
import { consumerFields, draw, loadWords } from './common.js';
import { declareEquipment, words } from './declare.js';

export const fridge = declareEquipment({
	kind: 'fridge',
	label: 'fridge',
	system: 'energy',
	words: [
		...loadWords('fridge'),
		...loadWords('mains fridge'),
		...words(
			'chest fridge|drawer fridge|fridge freezer|fridge-freezer|fridge/freezer|upright fridge|top loader fridge|compressor refrigerator|nevera de compresor|nevera portátil|frigo|kompressorkühlschrank|kühlschublade',
		),
	],
	fields: {
		...consumerFields,
		volumeL: quantity({ label: 'volume', kind: 'volume', min: 5, max: 400 }),
		works: choice({
			label: 'how it cools',
			options: {
				compressor: words(
					'compressor fridge|compressor refrigerator|compressor|kompressorkühlschrank|kompressor|nevera de compresor',
				),
				absorption: words(
					'absorption|absorption fridge|three-way fridge|three way fridge|gas fridge|propane fridge|absorberkühlschrank|absorber|nevera trivalente|trivalente|nevera de absorción',
				),
			},
		}),
	},
	draws: (given) =>
		given.works === 'absorption'
			? []
			: [draw(given.supply === 'mains' || (given.voltageV ?? 12) > 60 ? 'mains fridge' : 'fridge', given)],
	usualKg: ({ count: many = 1, volumeL = 60 }) => many * (10 + 0.25 * volumeL),
	usualZone: 'middle',
});

export const freezer = declareEquipment({
	kind: 'freezer',
	label: 'freezer',
	system: 'energy',
	words: loadWords('freezer'),
	fields: { ...consumerFields, volumeL: quantity({ label: 'volume', kind: 'volume', min: 5, max: 400 }) },
	draws: (given) => [draw('freezer', given)],
	usualKg: ({ count: many = 1, volumeL = 40 }) => many * (10 + 0.25 * volumeL),
	usualZone: 'middle',
});

export const cooktop = declareEquipment({
	kind: 'cooktop',
	label: 'cooktop',
	system: 'energy',
	words: [
		...loadWords('induction cooktop'),
		...words(
			'cooktop|cook top|hob|stove|burner|burners|cooker|gas cooktop|gas stove|gas hob|gas burner|gas cooker|propane cooktop|propane stove|propane burner|propane cooker|lpg stove|butane stove|alcohol stove|diesel cooktop|diesel stove|two burner|two-burner|two burner stove|two-burner stove|single burner|induction burner|induction plate|induction hob|cocina|cocina de gas|hornillo|hornillo de gas|fogón|fogones|fuegos|placa|vitrocerámica|camp stove|camping stove|gaskartuschenkocher|kartuschenkocher|kochfeld|gaskocher|gasherd|gaskochfeld|kocher|herd|spirituskocher|induktionsplatte|induktionsherd|induktionskocher',
		),
	],
	fields: {
		...consumerFields,
		burners: count({
			label: 'burners',
			min: 1,
			max: 6,
			aliases: words('burner|burners|rings|fuegos|flammen|platten'),
		}),
		fuel: choice({
			label: 'what it burns or draws',
			options: {
				induction: words(
					'induction|induction cooktop|induction hob|induction burner|induction plate|electric|electric cooktop|electric hob|inducción|cocina de inducción|placa de inducción|induktion|induktionskochfeld|induktionsplatte|induktionsherd|induktionskocher|vitrocerámica|kochplatte',
				),
				gas: words(
					'gas cooktop|gas stove|gas hob|gas burner|gas cooker|propane cooktop|propane stove|propane burner|propane cooker|lpg stove|butane stove|gas|propane|lpg|butane|cocina de gas|hornillo|hornillo de gas|fogón|fogones|de gas|camp stove|camping stove|gaskartuschenkocher|kartuschenkocher|gaskocher|gasherd|gaskochfeld',
				),
				diesel: words('diesel cooktop|diesel stove|diesel'),
				alcohol: words('alcohol|alcohol stove|spirit|spirit stove|spirituskocher|spiritus'),
			},
			required: 'Is the cooktop induction, or what does it burn?',
		}),
	},
	draws: (given) =>
		given.fuel === undefined || given.fuel === 'induction' ? [draw('induction cooktop', given)] : [],
	usualKg: ({ count: many = 1 }) => 5 * many,
	usualZone: 'middle',
});

export const microwave = declareEquipment({
	kind: 'microwave',
	label: 'microwave',
	system: 'energy',
	words: loadWords('microwave'),
	fields: consumerFields,
	draws: (given) => [draw('microwave', given)],
	usualKg: ({ count: many = 1 }) => 12 * many,
	usualZone: 'middle',
});

export const kettle = declareEquipment({
	kind: 'kettle',
	label: 'kettle',
	system: 'energy',
	words: loadWords('kettle'),
	fields: consumerFields,
	draws: (given) => [draw('kettle', given)],
	usualKg: ({ count: many = 1 }) => 1.5 * many,
	usualZone: 'middle',
});

export const lights = declareEquipment({
	kind: 'lights',
	label: 'lights',
	system: 'energy',
	words: [
		...loadWords('lights'),
		...words(
			'puck lights|puck light|ceiling lights|reading lights|spots|spotlights|dimmable lights|strip lights|lámparas|focos|tira led|tiras led|deckenlicht|leselampen|led-streifen|led-spots',
		),
	],
	fields: consumerFields,
	draws: (given) => [draw('lights', given)],
	usualKg: () => 1,
	usualZone: 'middle',
});

/** Loads that have a kind of their own. */
const own = new Set([
	'fridge',
	'mains fridge',
	'freezer',
	'roof fan',
	'fan',
	'air conditioner',
	'12 V air conditioner',
	'diesel heater',
	'gas furnace',
	'heating pad',
	'space heater',
	'water heater',
	'induction cooktop',
	'microwave',
	'kettle',
	'toilet',
	'water pump',
	'lights',
	'gas detector',
	'monitoring',
]);
const applianceWords = typicalLoads.filter(({ name }) => !own.has(name)).flatMap((load) => load.words);

/** Every other consumer: known by its name, its figures typical where nobody gave them. */
export const appliance = declareEquipment({
	kind: 'appliance',
	label: 'appliance',
	system: 'energy',
	words: applianceWords,
	fields: { name: text({ label: 'appliance', words: applianceWords }), ...consumerFields },
	// Its name in the table, so that "portátil" and "laptop" are one thing.
	settle: ({ name, ...rest }) =>
		name === undefined ? rest : { name: typicalLoad(name)?.name ?? name, ...rest },
	draws: ({ name = 'appliance', ...rest }) => [draw(name, rest)],
	usualKg: () => 3,
	usualZone: 'middle',
});
