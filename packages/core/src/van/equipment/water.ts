import { choice, flag, quantity } from '../../topic/field.js';
import { circuitFields, consumerFields, draw, howMany, loadWords, placingFields } from './common.js';
import { declareEquipment, words } from './declare.js';

const outside = flag({
	label: 'outside the heated space',
	yes: words(
		'outside|por fuera|por debajo|under the van|under the floor|underneath|underslung|under-slung|slung under|slung underneath|under floor|underfloor|under the chassis|below the floor|exterior|hung under|mounted under|unterflur|unter dem boden|unter dem fahrzeug|unterm boden|außen|bajo el chasis|bajo el piso|debajo del piso|bajo la furgoneta|bajos|en los bajos',
	),
	no: words(
		'inside|inside the van|indoors|under the bed|in the garage|over the wheel well|innen|im innenraum|innenliegend|unter dem bett|dentro|por dentro|interior|en el interior|bajo la cama|debajo de la cama',
	),
});
const heated = flag({
	label: 'kept from freezing',
	yes: words(
		'heated|heated space|in the heated space|winterized|insulated and heated|beheizt|frostsicher|calefactado|calefactada',
	),
	no: words('unheated|not heated|unbeheizt|sin calefactar'),
});
const insulated = flag({
	label: 'insulated',
	yes: words('insulated tank|insulated'),
	no: words('uninsulated|not insulated|bare'),
});

const tankFields = {
	count: howMany,
	volumeL: quantity({ label: 'volume', kind: 'volume', min: 1, max: 1000 }),
	outside,
	heated,
	insulated,
	...placingFields,
};
const tankVolume = (question: string) => ({
	...tankFields,
	volumeL: quantity({ label: 'volume', kind: 'volume', min: 1, max: 1000, required: question }),
});

export const freshTank = declareEquipment({
	kind: 'fresh-tank',
	label: 'fresh tank',
	system: 'water',
	words: words(
		'fresh tank|fresh water tank|freshwater tank|fresh water|freshwater|fresh|water tank|clean water tank|potable water|potable tank|water jugs|water jug|jug for fresh|jerry cans|jerry can|water containers|depósito de agua limpia|depósito de aguas limpias|depósito de agua|depósito limpia|agua limpia|aguas limpias|tanque de agua|tanque de agua limpia|bidones de agua|limpia|limpias|frischwassertank|frischwasser|wassertank|wasserkanister|frischwasserkanister|frisch|water|wasser|agua',
	),
	fields: tankVolume('How large is the fresh tank?'),
	usualKg: ({ volumeL, count: many = 1 }) => (volumeL === undefined ? null : many * (3 + volumeL * 0.06)),
	usualZone: null,
});

export const grayTank = declareEquipment({
	kind: 'gray-tank',
	label: 'gray tank',
	system: 'water',
	words: words(
		'gray tank|grey tank|gray water tank|grey water tank|gray water|grey water|graywater|greywater|gray|grey|waste|waste tank|waste water tank|waste water|sink waste tank|depósito de aguas grises|depósito de grises|aguas grises|grises|tanque de aguas grises|grauwassertank|grauwasser|abwassertank|abwasser|abwasserkanister|grauwasserkanister|grau|gray jug|grey jug|gray bucket|grey bucket|jug for gray|jug for grey',
	),
	fields: tankVolume('How large is the gray tank?'),
	usualKg: ({ volumeL, count: many = 1 }) => (volumeL === undefined ? null : many * (3 + volumeL * 0.06)),
	usualZone: null,
});

export const toilet = declareEquipment({
	kind: 'toilet',
	label: 'toilet',
	system: 'water',
	words: [
		...loadWords('toilet'),
		...words(
			'black tank|black water tank|blackwater|black water|black|cassette|cassette toilet|composting toilet|compost toilet|dry toilet|separating toilet|portable toilet|wet bath toilet|depósito de aguas negras|aguas negras|wc químico|váter|wc de casete|váter químico|váter seco|inodoro seco|schwarzwassertank|kassettentoilette|kassette|trockentrenntoilette|campingtoilette|chemietoilette|komposttoilette',
		),
	],
	fields: {
		count: howMany,
		volumeL: quantity({ label: 'volume', kind: 'volume', min: 1, max: 300 }),
		type: choice({
			label: 'kind of toilet',
			options: {
				cassette: words(
					'cassette|cassette toilet|portable toilet|campingtoilette|chemietoilette|kassettentoilette|kassette|wc químico|wc de casete|váter químico',
				),
				composting: words(
					'composting|composting toilet|compost toilet|dry toilet|separating toilet|trenntoilette|trockentrenntoilette|komposttoilette|váter seco|inodoro seco|separating',
				),
				blackTank: words(
					'black tank|black water tank|blackwater|black water|black|aguas negras|depósito de aguas negras|schwarzwassertank',
				),
			},
		}),
		...placingFields,
	},
	draws: ({ type }) => (type === 'composting' ? [draw('toilet', {})] : []),
	usualKg: () => 9,
	usualZone: 'middle',
});

export const waterHeater = declareEquipment({
	kind: 'water-heater',
	label: 'water heater',
	system: 'water',
	words: [
		...loadWords('water heater'),
		...words(
			'electric water heater|propane water heater|gas water heater|diesel water heater|instant water heater|tankless water heater|tankless|instantaneous water heater|on-demand water heater|on demand water heater|calorifier|hydronic water heater|combi heater|combi boiler|air and water heater|hot water system|boiler eléctrico|termo eléctrico|calentador de gas|calentador instantáneo|calentador diésel|acs|agua caliente|warmwasserbereiter|warmwasserbereitung|elektroboiler|gasboiler|gas-durchlauferhitzer|durchlauferhitzer|dieselboiler|kombiheizung|kombi-heizung|warmwasser|hot water|heizt auch das wasser|heizt das wasser',
		),
	],
	fields: {
		count: howMany,
		volumeL: quantity({ label: 'volume', kind: 'volume', min: 0.5, max: 200 }),
		powerW: quantity({ label: 'heating power', kind: 'power', min: 20, max: 40_000 }),
		voltageV: quantity({ label: 'voltage', kind: 'voltage', min: 5, max: 260 }),
		fuel: choice({
			label: 'what heats it',
			options: {
				electric: words(
					'electric|elec|electric water heater|eléctrico|boiler eléctrico|termo eléctrico|elektrisch|elektroboiler|element',
				),
				propane: words(
					'propane|propane water heater|gas|gas water heater|lpg|de gas|a gas|calentador de gas|gasboiler|gas-durchlauferhitzer|propan|propano|butano',
				),
				diesel: words(
					'diesel|diesel water heater|hydronic|hydronic water heater|diésel|calentador diésel|dieselboiler',
				),
				engine: words(
					'engine heated|engine coolant|coolant|from the engine|heat exchanger|intercambiador|motorwärme|wärmetauscher|calorifier',
				),
			},
			required: 'What heats the water: electricity, gas, diesel or the engine?',
		}),
		hotC: quantity({
			label: 'set temperature',
			kind: 'temperature',
			min: 20,
			max: 95,
			aliases: words('set to|set at|eingestellt auf|ajustado a'),
		}),
		mixer: flag({
			label: 'thermostatic mixing valve',
			yes: words(
				'mixing valve|mix valve|thermostatic mixing valve|thermostatic mixer|thermostatic valve|tempering valve|anti-scald valve|anti scald valve|thermostatic|válvula termostática|mezclador termostático|válvula mezcladora|thermostatventil|thermostatmischer|mischventil|verbrühschutz|thermostatisches mischventil',
			),
			no: words(
				'no mixing valve|no mix valve|without mixing valve|without a mixing valve|no tempering valve|no mixer|without a tempering valve|sin válvula mezcladora|sin válvula termostática|sin mezclador|ohne mischventil|ohne verbrühschutz|kein mischventil',
			),
		}),
		leftOn: flag({
			label: 'left on',
			yes: words(
				'left on|always on|on all day|no timer|without a timer|stays on|siempre encendido|sin temporizador|immer an|dauernd an|ohne zeitschaltuhr',
			),
			no: words(
				'on a timer|timer|only on shore|only on shore power|shore only|nur am landstrom|solo con toma exterior',
			),
		}),
		onBank: choice({
			label: 'what feeds its element',
			options: {
				inverter: words(
					'on the inverter|off the inverter|from the inverter|through the inverter|via the inverter|via inverter|am wechselrichter|über wechselrichter|über den wechselrichter|por el inversor|del inversor',
				),
				mains: words(
					'only on shore|only on shore power|shore only|on shore power|nur am landstrom|solo con toma exterior',
				),
				dc: words('dc|from the battery'),
			},
		}),
		...circuitFields,
		...placingFields,
	},
	draws: (given) => {
		const { fuel, onBank, volumeL: _v, hotC: _h, mixer: _m, leftOn: _l, ...rest } = given;
		if (fuel !== undefined && fuel !== 'electric') return [];
		const supply = onBank === 'dc' ? ('dc' as const) : undefined;
		return [draw('water heater', { ...rest, ...(supply === undefined ? {} : { supply }) })];
	},
	// The water in it rides along.
	usualKg: ({ volumeL = 0, count: many = 1 }) => many * (8 + 1.3 * volumeL),
	usualZone: 'back',
});

export const waterPump = declareEquipment({
	kind: 'water-pump',
	label: 'water pump',
	system: 'water',
	words: [
		...loadWords('water pump'),
		...words(
			'diaphragm pump|on-demand pump|on demand pump|bomba de presión|bomba automática|membranpumpe|tauchpumpe|druckwasserpumpe',
		),
	],
	fields: {
		...consumerFields,
		flowLMin: quantity({ label: 'flow', kind: 'flow', min: 0.2, max: 100 }),
		cutOutKPa: quantity({ label: 'cut-out pressure', kind: 'pressure', min: 10, max: 1000 }),
	},
	draws: ({ flowLMin: _f, cutOutKPa: _c, ...rest }) => [draw('water pump', rest)],
	usualKg: ({ count: many = 1 }) => 2 * many,
	usualZone: 'middle',
});

export const accumulator = declareEquipment({
	kind: 'accumulator',
	label: 'accumulator',
	system: 'water',
	words: words(
		'accumulator|accumulator tank|pressure accumulator|expansion tank|acumulador|vaso de expansión|ausgleichsbehälter|druckspeicher|druckausgleichsgefäß',
	),
	fields: {
		count: howMany,
		volumeL: quantity({ label: 'volume', kind: 'volume', min: 0.05, max: 50 }),
		prechargeKPa: quantity({ label: 'pre-charge', kind: 'pressure', min: 10, max: 900 }),
	},
	usualKg: () => 1,
	usualZone: 'middle',
});

export const heatingPad = declareEquipment({
	kind: 'heating-pad',
	label: 'tank heating pad',
	system: 'water',
	words: [
		...loadWords('heating pad'),
		...words(
			'heating pads|tank heaters|tank heating pads|heat pads|heat tape|heat trace|tank heater pad|manta calefactora|mantas calefactoras|mantas térmicas|heizmatten|tankheizung|heizband|frostschutzheizung',
		),
	],
	fields: consumerFields,
	draws: (given) => [draw('heating pad', given)],
	usualKg: () => 1,
	usualZone: 'middle',
});

export const shower = declareEquipment({
	kind: 'shower',
	label: 'shower',
	system: 'water',
	words: words(
		'shower|indoor shower|outdoor shower|outside shower|wet bath|shower head|ducha|ducha exterior|ducha interior|dusche|innendusche|außendusche|nasszelle',
	),
	fields: {
		count: howMany,
		showerLMin: quantity({ label: 'flow', kind: 'flow', min: 0.5, max: 20 }),
		showerH: quantity({ label: 'running time of a shower', kind: 'duration', min: 1 / 300, max: 1 }),
	},
	usualKg: () => 15,
	usualZone: 'middle',
});

export const sink = declareEquipment({
	kind: 'sink',
	label: 'sink',
	system: 'water',
	words: words('sink|galley sink|kitchen sink|fregadero|lavabo|spüle|waschbecken|spülbecken'),
	fields: { count: howMany },
	usualKg: () => 5,
	usualZone: 'middle',
});
