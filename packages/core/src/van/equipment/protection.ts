import { choice, count, flag, quantity } from '../../topic/field.js';
import { fuse as fuseTopic } from '../../topics/fuse.js';
import { circuitFields, howMany } from './common.js';
import { declareEquipment, words } from './declare.js';

const { type: classes } = fuseTopic.fields.fuseClass;
const classWords: Readonly<Record<string, readonly string[]>> =
	classes.sort === 'choice' ? classes.options : {};

/** "class T fuse" names the thing and its kind at once. */
const kindOfFuse = choice({
	label: 'kind of fuse',
	options: {
		...classWords,
		blade: [...(classWords.blade ?? []), ...words('de cuchilla|cuchilla')],
		strip: [
			...(classWords.strip ?? []),
			...words('strip fuse at the battery|streifensicherung an der batterie|fusible de tira|de tira'),
		],
		classT: [
			...(classWords.classT ?? []),
			...words('class t fuse|class-t fuse|t-class fuse|fusible clase t|clase t|klasse t'),
		],
	},
});

export const mainFuse = declareEquipment({
	kind: 'main-fuse',
	label: 'main fuse of the bank',
	system: 'wiring',
	words: words(
		'main fuse|battery fuse|bank fuse|main battery fuse|battery main fuse|main breaker of the bank|class t|class-t|class t fuse|class-t fuse|t-class fuse|fuse at the battery|fuse on the battery|fused at the battery|fuse at the bank|fuse at the positive|terminal fuse|main dc fuse|main dc breaker|battery breaker|fusible principal|fusible general|fusible de batería|fusible de la batería|fusible clase t|hauptsicherung|batteriesicherung|sicherung an der batterie|streifensicherung an der batterie',
	),
	fields: {
		count: howMany,
		ratingA: quantity({ label: 'rating', kind: 'current', min: 1, max: 1000 }),
		fuseClass: kindOfFuse,
		breaksA: quantity({
			label: 'breaking capacity',
			kind: 'current',
			min: 1001,
			max: 200_000,
			aliases: words(
				'aic|breaks|breaking capacity|interrupting|interrupting rating|abschaltvermögen|poder de corte',
			),
		}),
		voltageV: quantity({ label: 'rated voltage', kind: 'voltage', min: 10, max: 1000 }),
	},
});

export const disconnect = declareEquipment({
	kind: 'disconnect',
	label: 'battery disconnect',
	system: 'wiring',
	words: words(
		'battery disconnect|disconnect|disconnect switch|battery disconnect switch|battery switch|main switch|main disconnect|isolator switch|battery isolator switch|isolation switch|battery isolation switch|cut-off switch|cutoff switch|kill switch|master switch|seccionador|desconectador|desconectador de batería|cortacorriente|cortabaterías|interruptor general|interruptor principal|hauptschalter|batteriehauptschalter|batterietrennschalter|trennschalter',
	),
	fields: { ratingA: quantity({ label: 'rating', kind: 'current', min: 1, max: 2000 }) },
});

export const fuseBlock = declareEquipment({
	kind: 'fuse-block',
	label: 'fuse block',
	system: 'wiring',
	words: words(
		'fuse block|fuse panel|fuse box|dc fuse block|dc fuse panel|dc panel|dc distribution panel|dc distribution|blade fuse block|fuse center|fuse holder block|dc breaker panel|caja de fusibles|portafusibles|cuadro de fusibles|sicherungskasten|sicherungshalter|sicherungsblock|sicherungsverteiler|verteilerblock',
	),
	fields: {
		count: howMany,
		circuits: count({
			label: 'circuits',
			min: 1,
			max: 60,
			aliases: words(
				'way|ways|circuit|circuits|positions|fach|fächer|stromkreise|stromkreisen|vías|circuitos',
			),
		}),
		...circuitFields,
	},
});

export const fuse = declareEquipment({
	kind: 'fuse',
	label: 'fuse or breaker',
	system: 'wiring',
	attaches: true,
	words: words(
		'fuse|fuses|fused|breaker|breakers|circuit breaker|sicherung|sicherungen|abgesichert|fusible|fusibles',
	),
	fields: { count: howMany, fuseA: circuitFields.fuseA, fuseClass: kindOfFuse },
});

export const run = declareEquipment({
	kind: 'run',
	label: 'cable',
	system: 'wiring',
	attaches: true,
	words: words('cable|cables|wire|wires|wiring|cabling|kabel|leitung|leitungen|cableado'),
	fields: { wireSize: circuitFields.wireSize, runM: circuitFields.runM, fuseA: circuitFields.fuseA },
});

export const busbar = declareEquipment({
	kind: 'busbar',
	label: 'busbar',
	system: 'wiring',
	words: words(
		'busbar|busbars|bus bar|bus bars|barra colectora|barras colectoras|sammelschiene|sammelschienen',
	),
	fields: { count: howMany, ratingA: quantity({ label: 'rating', kind: 'current', min: 10, max: 2000 }) },
});

/** One device for both gases counts as both. */
const combinedWords = words(
	'co/lp alarm|co/lpg alarm|lp/co alarm|co and gas alarm|gas and co alarm|combined co and gas alarm|combined gas and co alarm|combination alarm|propane and co alarm|co and propane alarm|co/propane alarm|propane/co alarm|co/lp detector|lp/co detector|co-gas-melder|kombimelder|co- und gasmelder|co und gasmelder|gas- und co-melder|detector de gas y co|detector de co y gas|alarma de gas y co',
);

const fitted = {
	count: howMany,
	powerW: quantity({ label: 'power', kind: 'power', min: 0.1, max: 50 }),
	combined: flag({
		label: 'one device for gas and carbon monoxide',
		yes: combinedWords,
	}),
};

export const coAlarm = declareEquipment({
	kind: 'co-alarm',
	label: 'carbon-monoxide alarm',
	system: 'climate',
	words: [
		...words(
			'co alarm|co alarms|co detector|co detectors|co sensor|co monitor|carbon monoxide alarm|carbon monoxide detector|carbon-monoxide alarm|carbon-monoxide detector|monoxide alarm|monoxide detector|smoke and co alarm|smoke/co alarm|smoke and co detector|co and smoke alarm|co/smoke alarm|detector de co|detectores de co|detector de monóxido|detector de monóxido de carbono|alarma de co|alarma de monóxido|co-melder|co melder|co-warner|co warner|kohlenmonoxidmelder|kohlenmonoxid-melder|de monóxido|monóxido|kohlenmonoxidwarner',
		),
		...combinedWords,
	],
	fields: {
		...fitted,
		smoke: flag({
			label: 'smoke too',
			yes: words('smoke and co alarm|smoke/co alarm|smoke and co detector|co and smoke alarm|co/smoke alarm'),
		}),
	},
});

export const smokeAlarm = declareEquipment({
	kind: 'smoke-alarm',
	label: 'smoke alarm',
	system: 'climate',
	words: words(
		'smoke alarm|smoke alarms|smoke detector|smoke detectors|fire alarm|smoke|detector de humo|detectores de humo|alarma de humo|rauchmelder|rauchwarnmelder',
	),
	fields: { count: howMany },
});

export const gasAlarm = declareEquipment({
	kind: 'gas-alarm',
	label: 'gas alarm',
	system: 'climate',
	words: words(
		'gas alarm|gas detector|propane alarm|propane detector|lp alarm|lp detector|lp gas detector|lpg alarm|lpg detector|gas leak detector|gas sniffer|detector de gas|detector de propano|alarma de gas|gaswarner|gasmelder|gaswarngerät|gasdetektor',
	),
	fields: { count: howMany, powerW: fitted.powerW },
});

export const extinguisher = declareEquipment({
	kind: 'extinguisher',
	label: 'fire extinguisher',
	system: 'climate',
	words: words('fire extinguisher|extinguisher|extinguishers|extintor|feuerlöscher'),
	fields: { count: howMany, massKg: quantity({ label: 'mass', kind: 'mass', min: 0.2, max: 20 }) },
	usualKg: ({ count: many = 1 }) => 2 * many,
	usualZone: 'middle',
});
