import { bankClassV, nominalVoltageV } from '../../energy/bank.js';
import { chemistryWords } from '../../energy/bank-fields.js';
import { chemistries } from '../../tables/batteries.js';
import { choice, count, flag, quantity } from '../../topic/field.js';
import { circuitFields, draw, howMany, placingFields } from './common.js';
import { declareEquipment, ofOne, words } from './declare.js';

/** Mass over energy of a battery [kg/Wh] (practice). */
const kgPerWh = { lithium: 0.01, leadAcid: 0.027 };

/** Which of the voltages named is the bank's: units in series can only add up, and no bank has less than 10 V. */
function voltagesSaid(bankV: number | undefined, unitV: number | undefined, isSeries: boolean) {
	const named = [bankV, unitV].filter((value) => value !== undefined);
	const [first] = named;
	if (first === undefined) return {};
	if (named.length > 1) return { bankV: Math.max(...named), unitV: Math.min(...named) };
	if (first < 10 || (isSeries && unitV !== undefined)) return { unitV: first };
	return { bankV: first };
}

/** "lithium batteries" names the thing and its chemistry at once. */
const namedChemistries = {
	...chemistryWords,
	lifepo4: [
		...chemistryWords.lifepo4,
		...words(
			'lithium battery|lithium batteries|lithium bank|lifepo4 battery|lifepo4 batteries|batería de litio|baterías de litio|lithium-batterie|lithiumbatterie|lithiumbatterien|lithium-akku',
		),
	],
	agm: [
		...chemistryWords.agm,
		...words('agm battery|agm batteries|agms|agm-batterie|agm-batterien|batería agm|baterías agm'),
	],
	gel: [...chemistryWords.gel, ...words('gel battery|gel batteries|gelbatterie|gelbatterien')],
	flooded: [
		...chemistryWords.flooded,
		...words(
			'lead acid battery|golf cart batteries|bleibatterie|bleibatterien|blei-batterie|blei-batterien|batería de plomo|baterías de plomo',
		),
	],
};

export const battery = declareEquipment({
	kind: 'battery',
	label: 'battery bank',
	system: 'energy',
	single: true,
	words: words(
		'battery bank|battery|batteries|batts|batt|bank|house bank|house battery|house batteries|leisure battery|leisure batteries|lithium battery|lithium batteries|lifepo4 battery|lifepo4 batteries|lithium bank|lifepo4|lfp|lithium|lithium iron phosphate|agm|agm battery|agm batteries|agms|gel battery|gel batteries|lead acid|lead-acid|lead acid battery|golf cart batteries|batería|baterías|batería auxiliar|baterías auxiliares|banco de baterías|litio|batería de litio|baterías de litio|batterie|batterien|batteriebank|aufbaubatterie|aufbaubatterien|bordbatterie|bordbatterien|wohnraumbatterie|versorgerbatterie|bleibatterie|bleibatterien|blei-batterie|blei-batterien|gelbatterie|gelbatterien|batería de plomo|baterías de plomo|baterías agm|batería agm|akku|akkus|lithium-batterie|lithiumbatterie|lithiumbatterien|lithium-akku|agm-batterie|agm-batterien',
	),
	fields: {
		unitCount: count({
			label: 'number of batteries',
			min: 1,
			max: 64,
			aliases: words('batteries|units|baterías|batterien|stück'),
		}),
		unitAh: quantity({
			label: 'capacity of one battery',
			kind: 'charge',
			min: 1,
			max: 5000,
			aliases: words('capacity|each|apiece|capacidad|cada una|kapazität|je'),
			required: 'What capacity has the battery bank (Ah, and how many batteries)?',
		}),
		unitWh: quantity({ label: 'energy of one battery', kind: 'energy', min: 50, max: 100_000 }),
		totalAh: quantity({
			label: 'capacity of the whole bank',
			kind: 'charge',
			min: 5,
			max: 20_000,
			aliases: words('total|in total|altogether|combined|total capacity|insgesamt|gesamt|zusammen|en total'),
		}),
		totalWh: quantity({
			label: 'energy of the whole bank',
			kind: 'energy',
			min: 50,
			max: 500_000,
			aliases: words('total|in total|altogether|combined|insgesamt|gesamt|zusammen|en total'),
		}),
		bankV: quantity({
			label: 'bank voltage',
			kind: 'voltage',
			min: 2,
			max: 60,
			aliases: words(
				'bank|system|wired for|wired as|wired to|in series for|house voltage|system voltage|at|bordnetz|sistema|als',
			),
			fallback: { value: 12, why: 'the usual house voltage', confirm: true },
		}),
		unitV: quantity({
			label: 'voltage of one battery',
			kind: 'voltage',
			min: 2,
			max: 60,
			aliases: words('each|apiece|per battery|cada una|je'),
		}),
		chemistry: choice({
			label: 'battery chemistry',
			options: namedChemistries,
			fallback: { value: 'lifepo4', why: 'what most conversions fit now (practice)', confirm: true },
		}),
		layout: choice({
			label: 'how they are joined',
			options: {
				series: words('in series|series|wired in series|en serie|in reihe|reihenschaltung'),
				parallel: words('in parallel|parallel|wired in parallel|paralleled|en paralelo|parallel geschaltet'),
			},
		}),
		protectionA: quantity({
			label: "discharge limit of one battery's own protection",
			kind: 'current',
			min: 1,
			max: 2000,
			aliases: words(
				'bms|bms limit|protection|own protection|battery protection|discharge limit|max discharge|maximum discharge|continuous discharge|discharge|protección|límite de descarga|descarga máxima|entladestrom|max entladestrom|schutzschaltung',
			),
			required: "At what current does each battery's own protection (BMS) switch off?",
		}),
		chargeLimitA: quantity({
			label: 'charge limit of one battery',
			kind: 'current',
			min: 0.1,
			max: 2000,
			aliases: words(
				'charge limit|max charge|maximum charge|max charging|charge current|recommended charge|límite de carga|carga máxima|ladestrom|max ladestrom|maximaler ladestrom',
			),
			required: 'What charge current does the maker allow for each battery?',
		}),
		coldCutOff: flag({
			label: 'stops charging in the cold',
			yes: words(
				'low temperature cut-off|low temperature cutoff|low-temp cutoff|low temp cutoff|low temp cut off|low temp protection|low-temperature protection|low temperature protection|cold cut-off|cold cutoff|cold protection|cold charge protection|low temp charge protection|low temp disconnect|kälteschutz|tieftemperaturschutz|ladeschutz bei kälte|unterkühlungsschutz|protección de baja temperatura|corte por frío|protección por frío',
			),
			no: words(
				'no low temp cutoff|no low-temp cutoff|no low temp protection|no low temperature cut-off|no low temperature protection|no cold cut-off|no cold protection|without low temp cutoff|without cold cut-off|without low temperature protection|ohne kälteschutz|ohne tieftemperaturschutz|kein tieftemperaturschutz|kein kälteschutz|sin protección de baja temperatura|sin corte por frío',
			),
		}),
		heated: flag({
			label: 'battery heated',
			yes: words(
				'heated|self-heated|self heated|self heating|self-heating|battery heater|battery heating pad|beheizt|selbstheizend|calefactada|calefactadas|autocalentable',
			),
			no: words('unheated|not heated|unbeheizt|sin calefactar'),
		}),
		outside: flag({
			label: 'outside the heated space',
			yes: words(
				'outside the van|under the floor|under the van|underfloor|under floor|underslung|under the chassis|slung under|on the chassis|unterflur|unter dem boden|unter dem fahrzeug|bajo el piso|debajo del piso|bajo el chasis',
			),
			no: words('inside|inside the van|indoors|im innenraum|innen|dentro|en el interior'),
		}),
		vented: flag({
			label: 'compartment vented to the outside',
			yes: words(
				'vented box|vented compartment|vented to outside|vented outside|vented|ventilated box|ventilated compartment|belüftet|ventilado|ventilada',
			),
			no: words(
				'unvented|no vent|not vented|without a vent|no ventilation|sealed box|unbelüftet|ohne belüftung|sin ventilación|sin ventilar',
			),
		}),
		...circuitFields,
		massKg: placingFields.massKg,
		zone: placingFields.zone,
	},
	settle: ({ totalAh, totalWh, unitAh, unitWh, bankV, unitV, ...rest }) => {
		const many = rest.unitCount ?? 1;
		const ah = ofOne(unitAh, totalAh, many);
		const wh = ofOne(unitWh, totalWh, many);
		const volts = voltagesSaid(bankV, unitV, rest.layout === 'series');
		return {
			...rest,
			...(ah === undefined ? {} : { unitAh: ah }),
			...(wh === undefined || ah !== undefined ? {} : { unitWh: wh }),
			...volts,
		};
	},
	usualKg: (given) => {
		const chemistry = chemistries[given.chemistry ?? 'lifepo4'];
		const classV = bankClassV(given.unitV ?? given.bankV ?? 12) ?? 12;
		const unitWh =
			given.unitWh ?? (given.unitAh === undefined ? null : given.unitAh * nominalVoltageV(chemistry, classV));
		return unitWh === null
			? null
			: unitWh * (given.unitCount ?? 1) * (chemistry.leadAcid ? kgPerWh.leadAcid : kgPerWh.lithium);
	},
	usualZone: null,
});

export const starterBattery = declareEquipment({
	kind: 'starter-battery',
	label: 'starter battery',
	system: 'energy',
	single: true,
	words: words(
		'starter battery|start battery|starting battery|chassis battery|vehicle battery|engine battery|cranking battery|starterbatterie|batería de arranque|batería del motor',
	),
	fields: {
		unitAh: quantity({ label: 'capacity', kind: 'charge', min: 1, max: 500 }),
		bankV: quantity({ label: 'voltage', kind: 'voltage', min: 5, max: 60 }),
		...circuitFields,
	},
});

export const batteryMonitor = declareEquipment({
	kind: 'battery-monitor',
	label: 'battery monitor',
	system: 'energy',
	words: words(
		'battery monitor|shunt|smart shunt|monitor de batería|batteriemonitor|batteriecomputer|battery gauge|control panel|monitoring panel|panel de control',
	),
	fields: {
		count: howMany,
		currentA: quantity({ label: 'rating', kind: 'current', min: 1, max: 2000 }),
		...circuitFields,
	},
	draws: () => [draw('monitoring', {})],
});
