import { choice, flag, quantity } from '../../topic/field.js';
import { circuitFields, howMany, placingFields } from './common.js';
import { declareEquipment, words } from './declare.js';

const isolated = {
	yes: words('isolated|isolating|galvanically isolated|aislado|isoliert'),
	no: words('non-isolated|non isolated|not isolated|sin aislar|nicht isoliert'),
};

export const charger = declareEquipment({
	kind: 'charger',
	label: 'shore charger',
	system: 'energy',
	words: words(
		'shore charger|battery charger|charger|ac charger|ac-dc charger|mains charger|converter|converter charger|converter-charger|power converter|plug-in charger|cargador|cargador de red|cargador de batería|cargador de baterías|ladegerät|batterieladegerät|netzladegerät|landstromladegerät|netzlader',
	),
	fields: {
		count: howMany,
		chargeA: quantity({
			label: 'charging current',
			kind: 'current',
			min: 0.5,
			max: 500,
			aliases: words('charging|charges at|output|set to|lädt mit|carga a'),
			required: 'What current does the shore charger give?',
		}),
		inputW: quantity({ label: 'input power', kind: 'power', min: 5, max: 20_000 }),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 5, max: 260 }),
		efficiency: quantity({ label: 'efficiency', kind: 'fraction', min: 0.4, max: 1, aliases: ['efficient'] }),
		...circuitFields,
		...placingFields,
	},
	usualKg: () => 4,
	usualZone: 'middle',
});

export const dcdc = declareEquipment({
	kind: 'dcdc',
	label: 'DC-DC charger',
	system: 'energy',
	words: words(
		'dc-dc charger|dc-dc|dcdc|dcdc charger|dc to dc|dc to dc charger|dc/dc|dc/dc charger|b2b|b2b charger|b-to-b|battery to battery charger|battery-to-battery charger|alternator charger|charge booster|ladebooster|booster|ladewandler|cargador dc-dc|cargador dc/dc|cargador de alternador|booster de carga',
	),
	fields: {
		count: howMany,
		chargeA: quantity({
			label: 'charging current',
			kind: 'current',
			min: 0.5,
			max: 500,
			aliases: words('charging|output|set to|lädt mit'),
			required: 'What current does the DC-DC charger give?',
		}),
		inputW: quantity({ label: 'power', kind: 'power', min: 5, max: 20_000 }),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 5, max: 60 }),
		isolated: flag({ label: 'isolated', ...isolated }),
		...circuitFields,
		...placingFields,
	},
	usualKg: () => 2,
	usualZone: 'front',
});

export const isolator = declareEquipment({
	kind: 'isolator',
	label: 'split-charge relay',
	system: 'energy',
	words: words(
		'split charge relay|split-charge relay|split charge|split charger|isolator|battery isolator|isolator relay|isolation relay|isolating relay|voltage sensitive relay|voltage-sensitive relay|vsr|battery combiner|combiner|solenoid|charge relay|trennrelais|trennrelay|batterietrennrelais|relé separador|relé de carga|relé de separación|separador de baterías',
	),
	fields: {
		ratingA: quantity({ label: 'rating', kind: 'current', min: 5, max: 1000 }),
		...circuitFields,
	},
});

export const alternator = declareEquipment({
	kind: 'alternator',
	label: 'alternator',
	system: 'energy',
	single: true,
	words: words('alternator|alt|lichtmaschine|lima|generator des motors|alternador'),
	fields: {
		ratingA: quantity({
			label: 'rating',
			kind: 'current',
			min: 20,
			max: 600,
			aliases: words('alternator|alternador|lichtmaschine'),
			required: 'What is the alternator rated (A)?',
		}),
		link: choice({
			label: 'how the bank is joined to it',
			options: {
				direct: words(
					'straight to the battery|straight to the bank|straight to the house battery|straight to the lithium|straight to the house bank|direct to the battery|direct to the bank|directly to the battery|directly to the bank|directly to the house battery|directly to the lithium|direct to the house battery|wired direct|wired directly|direct charging|direct charge|direct connection|directly connected|straight through|no isolator|no isolation|without isolator|without an isolator|without isolation|sin separador|sin relé|directo a la batería|directo a las baterías|directamente a la batería|conectado directo|direkt an die batterie|direkt an der batterie|direkt mit der batterie|direkt angeschlossen|direkt verbunden|ohne trennrelais|ohne trennung|ohne ladebooster',
				),
			},
		}),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 10, max: 32 }),
		...circuitFields,
	},
});

export const generator = declareEquipment({
	kind: 'generator',
	label: 'generator',
	system: 'energy',
	words: words(
		'generator|genset|portable generator|gas generator|inverter generator|petrol generator|gasoline generator|diesel generator|propane generator|generador|grupo electrógeno|stromerzeuger|stromaggregat|notstromaggregat|moppel',
	),
	fields: {
		count: howMany,
		powerW: quantity({
			label: 'power',
			kind: 'power',
			min: 200,
			max: 20_000,
			required: 'What power does the generator give?',
		}),
		fuel: choice({
			label: 'fuel',
			options: {
				gasoline: words('gasoline generator|petrol generator|gas generator|petrol|gasoline|gasolina|benzin'),
				diesel: words('diesel generator|diesel|diésel'),
				propane: words('propane generator|propane|lpg|propano|propan'),
			},
		}),
		neutralBonded: flag({
			label: 'neutral bonded to its frame',
			yes: words('bonded neutral|bonded|neutral bonded|neutral bonded to the frame'),
			no: words('floating neutral|floating|unbonded'),
		}),
		...placingFields,
	},
	usualKg: ({ powerW }) => (powerW === undefined ? 25 : 12 + powerW * 0.01),
	usualZone: 'back',
});
