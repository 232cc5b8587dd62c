import { insulationOptions } from '../../tables/materials.js';
import { choice, flag, quantity } from '../../topic/field.js';
import { consumerFields, draw, howMany, loadWords } from './common.js';
import { declareEquipment, words } from './declare.js';

const { powerW: _, ...heaterDraw } = consumerFields;

export const heater = declareEquipment({
	kind: 'heater',
	label: 'air heater',
	system: 'climate',
	words: [
		...loadWords('diesel heater'),
		...loadWords('gas furnace'),
		...loadWords('space heater'),
		...words(
			'diesel air heater|diesel furnace|air heater|propane air heater|gas air heater|catalytic heater|radiant heater|ceramic gas heater|portable propane heater|unvented heater|ventless heater|vent-free heater|blue flame heater|wood stove|wood burner|woodstove|kerosene heater|cabin heater|petrol heater|calefacción diésel|calefacción diesel|calefacción estacionaria|calefacción de gas|calefacción gasolina|estufa|estufa de gas|estufa catalítica|estufa de leña|calefactor diésel|calefactor diesel|calefactor de gas|luftheizung|diesel-standheizung|diesel-luftheizung|benzinheizung|gasofen|gas-luftheizung|katalytofen|holzofen|ofen|petroleumofen|keramikheizer|heizlüfter|elektroheizung|geheizt wird mit gas|wird mit gas geheizt|geheizt wird mit diesel|wird mit diesel geheizt',
		),
	],
	fields: {
		outputW: quantity({
			label: 'heat output',
			kind: 'power',
			min: 300,
			max: 30_000,
			aliases: words('output|heat|heats|heizleistung|potencia'),
		}),
		drawW: quantity({
			label: 'electric draw',
			kind: 'power',
			min: 0.1,
			max: 3000,
			aliases: words('draws|draw|uses|pulls|consumes|consume|electric|verbraucht|zieht|fan draws'),
		}),
		fuel: choice({
			label: 'fuel',
			options: {
				diesel: words(
					'diesel|geheizt wird mit diesel|wird mit diesel geheizt|diesel heater|diesel air heater|diesel furnace|calefacción diésel|calefacción diesel|calefactor diésel|calefactor diesel|diésel|dieselheizung|diesel-standheizung|diesel-luftheizung|parking heater|standheizung|calefacción estacionaria',
				),
				propane: words(
					'propane|propane heater|propane furnace|propane air heater|gas air heater|gas furnace|gas heater|lpg heater|portable propane heater|catalytic heater|ceramic gas heater|blue flame heater|lpg|butane|calefacción de gas|calefactor de gas|estufa de gas|estufa catalítica|gasheizung|gas-luftheizung|gasofen|katalytofen|propan|propano|furnace|geheizt wird mit gas|wird mit gas geheizt',
				),
				gasoline: words(
					'gasoline|gasoline heater|petrol heater|petrol|gasolina|calefacción gasolina|benzin|benzinheizung',
				),
				electric: words(
					'electric|electric heater|space heater|ceramic heater|fan heater|radiator|eléctrico|eléctrica|heizlüfter|elektroheizung|keramikheizer|elektrisch',
				),
				wood: words('wood|wood stove|wood burner|woodstove|estufa de leña|leña|holzofen|holz'),
				kerosene: words('kerosene|kerosene heater|petroleumofen|queroseno'),
			},
			required: 'What does the heater burn: diesel, propane, gasoline, or is it electric?',
		}),
		unvented: flag({
			label: 'without a flue',
			yes: words(
				'unvented|ventless|vent-free|vent free|unvented heater|ventless heater|vent-free heater|no flue|no exhaust|without a flue|without exhaust|not vented|portable propane heater|catalytic heater|blue flame heater|kerosene heater|estufa catalítica|katalytofen|sin salida de humos|sin chimenea|ohne abgasrohr|ohne kamin|ohne abgasführung|petroleumofen',
			),
			no: words(
				'vented|vented outside|exhaust outside|exhaust to outside|exhaust through the floor|sealed combustion|direct vent|flue|salida de humos|escape al exterior|abgasrohr|abgasführung|abgas nach außen',
			),
		}),
		...heaterDraw,
	},
	draws: (given) => {
		const { outputW, drawW: electricW, fuel, ...rest } = given;
		if (fuel === 'wood' || fuel === 'kerosene' || given.unvented === true) return [];
		if (fuel === 'electric')
			return [draw('space heater', { ...rest, ...takenW(electricW ?? outputW) }, { supply: 'mains' })];
		return [draw(fuel === 'propane' ? 'gas furnace' : 'diesel heater', { ...rest, ...takenW(electricW) })];
	},
	usualKg: ({ count: many = 1 }) => 6 * many,
	usualZone: 'front',
});

function takenW(powerW: number | undefined): { readonly powerW?: number } {
	return powerW === undefined ? {} : { powerW };
}

export const airConditioner = declareEquipment({
	kind: 'air-conditioner',
	label: 'air conditioner',
	system: 'climate',
	words: [
		...loadWords('air conditioner'),
		...loadWords('12 V air conditioner'),
		...words(
			'air-conditioner|air conditioning unit|roof air|roof air conditioner|mini split|minisplit|split unit|aire|aire acondicionado de techo|dach-klimaanlage|dachklima|klimagerät',
		),
	],
	fields: {
		...consumerFields,
		coolingW: quantity({ label: 'cooling', kind: 'power', unit: 'Btu/h', min: 500, max: 20_000 }),
	},
	draws: (given) => {
		const { coolingW, ...rest } = given;
		const name =
			rest.supply === 'dc' || (rest.voltageV ?? 120) <= 60 ? '12 V air conditioner' : 'air conditioner';
		// A rooftop unit gives about 2.4 W of cooling for each watt it draws.
		const byCooling = coolingW === undefined ? {} : { powerW: Math.round(coolingW / 2.4) };
		return [draw(name, rest, byCooling)];
	},
	usualKg: ({ count: many = 1 }) => 35 * many,
	usualZone: 'middle',
});

export const fan = declareEquipment({
	kind: 'fan',
	label: 'fan',
	system: 'climate',
	words: [
		...loadWords('roof fan'),
		...loadWords('fan'),
		...words(
			'roof vents|roof vent fans|roof fans|extractor|extractor fan|exhaust fan|circulation fan|claraboya con ventilador|extractor de techo|ventiladores|dachhaube|dachhaube mit ventilator|dachlüfter|dachlüfter mit motor',
		),
	],
	fields: {
		...consumerFields,
		airM3H: quantity({ label: 'air flow', kind: 'airflow', min: 1, max: 5000 }),
		extracts: flag({
			label: 'moves air out of the van',
			yes: [
				...loadWords('roof fan'),
				...words(
					'roof fans|roof vent fans|extractor|extractor fan|exhaust fan|vent fan|extractor de techo|claraboya con ventilador|dachhaube mit ventilator|dachlüfter',
				),
			],
		}),
	},
	draws: ({ airM3H: _, extracts, ...rest }) => [draw(extracts === true ? 'roof fan' : 'fan', rest)],
	usualKg: ({ count: many = 1, extracts }) => many * (extracts === true ? 5 : 1),
	usualZone: 'middle',
});

/** "closed cell foam" names the thing and its material at once. */
const namedMaterials = {
	...insulationOptions,
	closedCellSpray: [
		...insulationOptions.closedCellSpray,
		...words('spray foam|closed cell foam|closed-cell foam'),
	],
	sheepWool: [
		...insulationOptions.sheepWool,
		...words('wool|sheep wool|wool insulation|lana de oveja|schafwolle'),
	],
	cork: [...insulationOptions.cork, ...words('corcho|kork')],
	elastomericFoam: [...insulationOptions.elastomericFoam, ...words('elastomerschaum')],
};

export const insulation = declareEquipment({
	kind: 'insulation',
	label: 'insulation',
	system: 'climate',
	single: true,
	words: words(
		'insulation|insulated|insulated with|insulating|wool|sheep wool|wool insulation|foam|spray foam|foam board|polyiso|xps|closed cell foam|closed-cell foam|aislamiento|aislado|aislada|aislada con|lana de oveja|corcho|espuma|dämmung|isolierung|gedämmt|isoliert|schafwolle|elastomerschaum|kork',
	),
	fields: {
		insulationMm: quantity({
			label: 'thickness in the walls',
			kind: 'thickness',
			min: 0,
			max: 200,
			aliases: words(
				'insulation|insulated|wall insulation|walls|thick|dick|stark|de espesor|dämmung|isolierung|aislamiento',
			),
		}),
		roofInsulationMm: quantity({
			label: 'thickness in the roof',
			kind: 'thickness',
			min: 0,
			max: 200,
			aliases: words('roof insulation|ceiling|in the roof|in the ceiling|dach|decke|techo'),
		}),
		floorInsulationMm: quantity({
			label: 'thickness in the floor',
			kind: 'thickness',
			min: 0,
			max: 200,
			aliases: words('floor|floor insulation|in the floor|boden|suelo'),
		}),
		material: choice({ label: 'insulation material', options: namedMaterials }),
	},
	usualKg: () => 25,
	usualZone: 'middle',
});

/** A window of the living space where nobody measured it [m²] (practice). */
const usualWindowM2 = 0.35;

export const windows = declareEquipment({
	kind: 'windows',
	label: 'windows',
	system: 'climate',
	words: words(
		'window|windows|bunk window|bunk windows|sliding window|side windows|side window|rear windows|skylight|skylights|roof hatch|roof hatches|ventana|ventanas|claraboya|claraboyas|fenster|seitenfenster|dachluke|dachfenster|schiebefenster|ausstellfenster',
	),
	fields: {
		count: howMany,
		windowM2: quantity({ label: 'area', kind: 'area', min: 0.02, max: 15 }),
		windowKind: choice({
			label: 'glazing',
			options: {
				single: words(
					'single|single pane|single glazed|single-glazed|glass|tempered glass|einfachglas|echtglas|vidrio simple|cristal',
				),
				double: words(
					'double|double pane|double glazed|double-glazed|acrylic|double acrylic|dual pane|doppelverglast|doppelt verglast|acrylglas|doble|doble acristalamiento|acrílico|acrílicas',
				),
			},
		}),
		covers: flag({
			label: 'insulated covers',
			yes: words(
				'window covers|insulated covers|covers|blackout covers|insulated shades|thermal covers|thermomatten|isoliermatten|fundas térmicas|cortinas térmicas|oscurecedores',
			),
			no: words('no covers|without covers|no window covers|ohne thermomatten|sin fundas'),
		}),
	},
	settle: (given) => ({ ...given, windowM2: given.windowM2 ?? usualWindowM2 * (given.count ?? 1) }),
	usualKg: ({ count: many = 1 }) => 8 * many,
	usualZone: 'middle',
});
