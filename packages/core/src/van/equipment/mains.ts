import { flag, quantity } from '../../topic/field.js';
import { circuitFields, howMany, placingFields } from './common.js';
import { declareEquipment, words } from './declare.js';

export const inverter = declareEquipment({
	kind: 'inverter',
	label: 'inverter',
	system: 'energy',
	words: words(
		'inverter|inv|power inverter|pure sine inverter|pure sine wave inverter|sine wave inverter|inverter charger|inverter-charger|inverter/charger|inverter charger combo|combi inverter|inversor|inversor cargador|inversor-cargador|inversor/cargador|convertidor|ondulador|wechselrichter|sinuswechselrichter|sinus-wechselrichter|wechselrichter-ladegerät|kombigerät|wechselrichter/ladegerät|spannungswandler',
	),
	fields: {
		count: howMany,
		ratedW: quantity({
			label: 'continuous power',
			kind: 'power',
			min: 50,
			max: 20_000,
			aliases: words('continuous|rated|dauerleistung|dauer|continuos|nominal'),
			required: 'What continuous power does the inverter give?',
		}),
		surgeW: quantity({
			label: 'surge power',
			kind: 'power',
			min: 50,
			max: 60_000,
			aliases: words('surge|peak|surges to|peaks at|spitze|spitzenleistung|pico|picos'),
		}),
		idleW: quantity({
			label: 'idle draw',
			kind: 'power',
			min: 0,
			max: 500,
			aliases: words('idle|idle draw|idles at|no load|standby|leerlauf|im leerlauf|en vacío|en reposo'),
		}),
		efficiency: quantity({
			label: 'efficiency',
			kind: 'fraction',
			min: 0.3,
			max: 1,
			aliases: words('efficiency|efficient|wirkungsgrad|eficiencia'),
		}),
		chargerA: quantity({
			label: 'charging current on shore power',
			kind: 'current',
			min: 1,
			max: 500,
			aliases: words(
				'charger|charging|charges at|built-in charger|built in charger|ladestrom|ladegerät|lädt mit|cargador|carga',
			),
		}),
		combi: flag({
			label: 'with a charger built in',
			yes: words(
				'inverter charger|inverter-charger|inverter/charger|inverter charger combo|combi inverter|inversor cargador|inversor-cargador|inversor/cargador|wechselrichter-ladegerät|kombigerät|wechselrichter/ladegerät|built-in charger|built in charger',
			),
		}),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 10, max: 260 }),
		alwaysOn: flag({
			label: 'always on',
			yes: words(
				'always on|left on|on all the time|stays on|runs all day|never switched off|siempre encendido|dauernd an|immer an|dauerbetrieb',
			),
			no: words(
				'switched off|only when needed|remote switch|turned off at night|solo cuando hace falta|nur bei bedarf',
			),
		}),
		enclosed: flag({
			label: 'in a closed space',
			yes: words(
				'sealed cabinet|closed cabinet|enclosed|no airflow|unvented cabinet|geschlossen|armario cerrado',
			),
		}),
		...circuitFields,
		...placingFields,
	},
	settle: ({ combi, chargerA, ...rest }) => ({
		...rest,
		...(chargerA === undefined ? {} : { chargerA }),
		...(combi === true || chargerA !== undefined ? { combi: true } : {}),
	}),
	usualKg: ({ ratedW, combi }) => (ratedW === undefined ? null : ratedW * (combi === true ? 0.008 : 0.004)),
	usualZone: 'middle',
});

export const shoreInlet = declareEquipment({
	kind: 'shore-inlet',
	label: 'shore inlet',
	system: 'energy',
	single: true,
	words: words(
		'shore inlet|shore power inlet|shore power|shore|shoreline|shore line|power inlet|inlet|hookup|hook-up|hookups|ehu|shore hookup|electric hookup|mains hookup|toma exterior|toma|toma de corriente exterior|toma cee|conexión a red|conexión exterior|landstrom|landanschluss|landstromanschluss|cee-anschluss|cee anschluss|cee-steckdose|außensteckdose',
	),
	fields: {
		ratingA: quantity({
			label: 'rating',
			kind: 'current',
			min: 1,
			max: 200,
			required: 'What is the shore inlet rated (A)?',
		}),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 100, max: 260 }),
		outletA: quantity({
			label: 'outlet it is plugged into',
			kind: 'current',
			min: 1,
			max: 200,
			aliases: words(
				'household outlet|house outlet|household adapter|household plug|garage outlet|driveway outlet|wall outlet|outlet|adapter|adaptor|dogbone|dogbone adapter|dog bone adapter|plugged into|pedestal|regular outlet|domestic socket|household socket|haushaltssteckdose|schukosteckdose|schuko|steckdose|enchufe|enchufe de casa|enchufe doméstico|adaptador',
			),
		}),
		household: flag({
			label: 'fed from a household outlet',
			yes: words(
				'household|household outlet|house outlet|household adapter|household plug|garage outlet|driveway outlet|wall outlet|regular outlet|from the house|at home|domestic socket|household socket|dogbone|dogbone adapter|dog bone adapter|haushaltssteckdose|schukosteckdose|schuko|enchufe de casa|enchufe doméstico',
			),
		}),
		cordA: quantity({
			label: 'cord rating',
			kind: 'current',
			min: 1,
			max: 200,
			aliases: words('cord|extension cord|extension|verlängerungskabel|verlängerung|alargador|alargadera'),
		}),
		...circuitFields,
	},
});

export const mainsPanel = declareEquipment({
	kind: 'mains-panel',
	label: 'mains breaker panel',
	system: 'wiring',
	words: words(
		'breaker panel|main breaker panel|panel ok|breaker box|ac panel|ac breaker panel|ac distribution panel|load center|load centre|consumer unit|ac breakers|ac distribution|sub panel|subpanel|mains panel|miniature breakers|mcbs|mcb|cuadro eléctrico|cuadro de protección|magnetotérmicos|verteilerkasten|unterverteilung|leitungsschutzschalter|sicherungsautomat|sicherungsautomaten|automaten|ls-automaten',
	),
	fields: {
		count: howMany,
		ratingA: quantity({ label: 'main breaker', kind: 'current', min: 5, max: 200 }),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 100, max: 260 }),
	},
});

export const gfci = declareEquipment({
	kind: 'gfci',
	label: 'GFCI or RCD',
	system: 'wiring',
	words: words(
		'gfci|gfi|gfci outlet|gfci outlets|gfci protection|gfci protected|gfi protected|gfci breaker|ground fault|ground-fault|ground fault protection|ground fault breaker|rcd|rcbo|rcd/rcbo|residual current device|residual-current device|diferencial|interruptor diferencial|fi|fi-schalter|fi schalter|fehlerstromschutz|fehlerstromschutzschalter|rcd-schutz|fi-schutz|fi/ls',
	),
	fields: {
		count: howMany,
		ratingA: quantity({ label: 'rating', kind: 'current', min: 0.005, max: 125 }),
	},
});

export const transferSwitch = declareEquipment({
	kind: 'transfer-switch',
	label: 'transfer switch',
	system: 'wiring',
	words: words(
		'transfer switch|automatic transfer switch|ats|transfer relay|conmutador|conmutador de red|relé de transferencia|netzvorrangschaltung|netzumschaltung|umschalter|prioritätsschalter',
	),
	fields: { ratingA: quantity({ label: 'rating', kind: 'current', min: 5, max: 200 }) },
});

export const neutralBond = declareEquipment({
	kind: 'neutral-bond',
	label: 'neutral-to-ground bond',
	system: 'wiring',
	words: words(
		'neutral bond|neutral-ground bond|neutral ground bond|n-g bond|ng bond|ground-neutral bond|neutral to ground bond|neutral bonded|neutral is bonded|neutral tied to ground|neutral bonded to ground|neutral grounded|neutral and ground bonded|bonding screw|puente neutro|neutro unido a tierra|neutro a tierra|neutro puenteado|nullung|neutralleiterbrücke|n-pe-brücke|n-pe brücke|pen-brücke',
	),
	fields: {
		inInverter: flag({
			label: 'in the inverter',
			yes: words('in the inverter|at the inverter|inside the inverter|im wechselrichter|en el inversor'),
		}),
		inPanel: flag({
			label: 'in the panel',
			yes: words(
				'in the panel|at the panel|in the breaker panel|at the breaker panel|in the breaker box|in the ac panel|in the sub panel|in the subpanel|in the load center|at the load center|in the consumer unit|im verteiler|im verteilerkasten|im sicherungskasten|en el cuadro|en el cuadro eléctrico',
			),
		}),
		atInlet: flag({
			label: 'at the inlet',
			yes: words('at the inlet|at the shore inlet|at the shore power inlet|am landanschluss|en la toma'),
		}),
		switched: flag({
			label: 'made and broken by a relay',
			yes: words(
				'automatic|switched|by relay|relay|only when inverting|automatisch|relais|automático|por relé',
			),
		}),
	},
});
