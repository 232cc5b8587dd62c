import type { Region } from '../topic/context.js';
import { practice } from '../topic/source.js';

/** A load as vans commonly carry it. No document says so: every value is taken only where the shop gave none. */
export interface TypicalLoad {
	readonly name: string;
	/** how people call it, in English, Spanish and German */
	readonly words: readonly string[];
	/** power it draws while it runs, at its own supply [W] */
	readonly powerW: Readonly<Record<Region, number>>;
	/** hours a day it is switched on [h] */
	readonly hoursPerDay: number;
	/** share of that time it draws its power */
	readonly duty: number;
	/** needs mains: shore power or the inverter */
	readonly mains: boolean;
	/** start-up power over running power */
	readonly surgeFactor: number;
	/** on for 3 h or more at a stretch; NEC 422.13 counts a storage water heater so whatever its hours */
	readonly continuous: boolean;
	/** what a careful person switches off first when the supply is short: 1 first, 9 last */
	readonly shedOrder: number;
}

export const typicalLoadSource = practice('typical loads of a camper van; the nameplate decides');

function both(powerW: number): Readonly<Record<Region, number>> {
	return { us: powerW, eu: powerW };
}

type Given = Partial<Omit<TypicalLoad, 'name' | 'words' | 'powerW'>> & {
	readonly hoursPerDay: number;
	readonly powerW: number | Readonly<Record<Region, number>>;
};

function load(name: string, words: string, given: Given): TypicalLoad {
	const { powerW, ...rest } = given;
	return {
		name,
		words: [name, ...words.split('|')],
		powerW: typeof powerW === 'number' ? both(powerW) : powerW,
		duty: 1,
		mains: false,
		surgeFactor: 1,
		continuous: given.hoursPerDay >= 3,
		shedOrder: 5,
		...rest,
	};
}

export const typicalLoads: readonly TypicalLoad[] = [
	// Cold and air
	load(
		'fridge',
		'refrigerator|12 v fridge|compressor fridge|cooler|cool box|nevera|frigorífico|kühlschrank|kühlbox',
		{
			powerW: 60,
			hoursPerDay: 24,
			duty: 0.4,
			surgeFactor: 3,
			shedOrder: 9,
		},
	),
	load('freezer', 'deep freezer|frzr|congelador|gefrierfach|gefrierbox', {
		powerW: 60,
		hoursPerDay: 24,
		duty: 0.5,
		surgeFactor: 3,
		shedOrder: 9,
	}),
	load('mains fridge', 'residential fridge|household fridge|ac fridge', {
		powerW: 120,
		hoursPerDay: 24,
		duty: 0.4,
		mains: true,
		surgeFactor: 5,
		shedOrder: 9,
	}),
	load(
		'roof fan',
		'roof vent fan|roof vent|vent fan|ventilation fan|ventilador de techo|dachlüfter|dachventilator',
		{
			powerW: 30,
			hoursPerDay: 10,
		},
	),
	load('fan', 'fans|ventilador|ventilator|lüfter', { powerW: 20, hoursPerDay: 8 }),
	load(
		'air conditioner',
		'ac|a/c|ac unit|a/c unit|aircon|air con|air conditioning|rooftop unit|rooftop ac|roof ac|rooftop air conditioner|120 v air conditioner|aire acondicionado|aire|klimaanlage|klima|dachklimaanlage',
		{
			powerW: { us: 1500, eu: 1000 },
			hoursPerDay: 8,
			duty: 0.6,
			mains: true,
			surgeFactor: 3,
			shedOrder: 4,
		},
	),
	load(
		'12 V air conditioner',
		'12v air conditioner|12v ac|12v aircon|12v rooftop air conditioner|dc air conditioner|dc ac|24v air conditioner|standklimaanlage',
		{
			powerW: 600,
			hoursPerDay: 8,
			duty: 0.6,
			surgeFactor: 1.2,
			shedOrder: 4,
		},
	),
	load('dehumidifier', 'deshumidificador|luftentfeuchter', {
		powerW: 250,
		hoursPerDay: 6,
		mains: true,
		surgeFactor: 3,
		shedOrder: 3,
	}),
	// Heat
	load(
		'diesel heater',
		'heater|air heater|parking heater|gasoline heater|fuel heater|night heater|calefacción|calefactor diésel|standheizung|dieselheizung|heizung',
		{
			powerW: 30,
			hoursPerDay: 10,
			surgeFactor: 5,
			shedOrder: 8,
		},
	),
	load('gas furnace', 'furnace|propane furnace|propane heater|gas heater|gasheizung', {
		powerW: 90,
		hoursPerDay: 8,
		duty: 0.5,
		surgeFactor: 2,
		shedOrder: 8,
	}),
	load('heating pad', 'tank heater|tank pad|tank heating pad|heat pad|heat mat|heizmatte|manta térmica', {
		powerW: 40,
		hoursPerDay: 12,
		duty: 0.5,
		shedOrder: 7,
	}),
	load('electric blanket', 'heated blanket|manta eléctrica|heizdecke', { powerW: 60, hoursPerDay: 8 }),
	load(
		'space heater',
		'electric heater|fan heater|radiator|ceramic heater|calefactor|heizlüfter|elektroheizung',
		{
			powerW: { us: 1500, eu: 2000 },
			hoursPerDay: 6,
			duty: 0.6,
			mains: true,
			shedOrder: 3,
		},
	),
	load('floor heating', 'underfloor heating|heated floor|suelo radiante|fußbodenheizung', {
		powerW: 300,
		hoursPerDay: 6,
		duty: 0.5,
		mains: true,
		shedOrder: 3,
	}),
	load(
		'water heater',
		'hot water heater|hot water|boiler|hot water tank|calentador|calentador de agua|termo|warmwasserboiler|warmwasser',
		{
			powerW: 1440,
			hoursPerDay: 1,
			mains: true,
			continuous: true,
			shedOrder: 2,
		},
	),
	// Kitchen
	load(
		'induction cooktop',
		'cooktop|induction|induction hob|hob|stove|hot plate|hotplate|cocina de inducción|placa de inducción|inducción|induktionskochfeld|induktion|kochfeld|kochplatte',
		{
			powerW: { us: 1800, eu: 2000 },
			hoursPerDay: 0.75,
			mains: true,
			shedOrder: 6,
		},
	),
	load('microwave', 'microwave oven|micro|microondas|mikrowelle', {
		powerW: 1500,
		hoursPerDay: 0.25,
		mains: true,
		surgeFactor: 1.5,
		shedOrder: 6,
	}),
	load('kettle', 'electric kettle|water kettle|hervidor|wasserkocher', {
		powerW: { us: 1500, eu: 2200 },
		hoursPerDay: 0.2,
		mains: true,
		shedOrder: 6,
	}),
	load(
		'coffee maker',
		'coffee machine|espresso machine|espresso|coffee|cafetera|kaffeemaschine|espressomaschine',
		{
			powerW: 1200,
			hoursPerDay: 0.25,
			mains: true,
			surgeFactor: 1.2,
			shedOrder: 6,
		},
	),
	load('toaster', 'toaster oven|tostadora', { powerW: 1000, hoursPerDay: 0.15, mains: true, shedOrder: 6 }),
	load('pressure cooker', 'electric pressure cooker|rice cooker|slow cooker|olla eléctrica|reiskocher', {
		powerW: 1000,
		hoursPerDay: 0.75,
		duty: 0.6,
		mains: true,
		shedOrder: 6,
	}),
	load('air fryer', 'airfryer|freidora de aire|heißluftfritteuse|oven|horno|backofen', {
		powerW: 1500,
		hoursPerDay: 0.5,
		mains: true,
		shedOrder: 6,
	}),
	load('blender', 'mixer|batidora|standmixer', {
		powerW: 600,
		hoursPerDay: 0.05,
		mains: true,
		surgeFactor: 2,
		shedOrder: 6,
	}),
	load('dishwasher', 'lavavajillas|spülmaschine', {
		powerW: 1200,
		hoursPerDay: 1,
		duty: 0.6,
		mains: true,
		surgeFactor: 1.5,
		shedOrder: 3,
	}),
	// Bath and household
	load('hair dryer', 'hairdryer|blow dryer|secador|secador de pelo|föhn|haartrockner', {
		powerW: 1500,
		hoursPerDay: 0.1,
		mains: true,
		surgeFactor: 1.2,
		shedOrder: 3,
	}),
	load('washing machine', 'washer|lavadora|waschmaschine', {
		powerW: 500,
		hoursPerDay: 0.5,
		mains: true,
		surgeFactor: 3,
		shedOrder: 3,
	}),
	load('vacuum cleaner', 'vacuum|aspiradora|staubsauger', {
		powerW: 800,
		hoursPerDay: 0.1,
		mains: true,
		surgeFactor: 2,
		shedOrder: 3,
	}),
	load('toilet', 'toilet fan|composting toilet|cassette toilet|inodoro|wc|toilette|trenntoilette', {
		powerW: 3,
		hoursPerDay: 24,
	}),
	// Water
	load('water pump', 'pump|pressure pump|fresh pump|bomba|bomba de agua|wasserpumpe|pumpe|druckpumpe', {
		powerW: 90,
		hoursPerDay: 0.25,
		surgeFactor: 3,
		shedOrder: 9,
	}),
	load('shower drain pump', 'drain pump|sump pump|gray pump|grey pump|macerator|macerator pump', {
		powerW: 60,
		hoursPerDay: 0.2,
		surgeFactor: 3,
	}),
	// Light and electronics
	load(
		'lights',
		'light|led lights|led light|leds|led|led strip|lighting|luces|luz|iluminación|licht|beleuchtung|lampen|deckenlampen|deckenlampe|leseleuchten|puck lights',
		{
			powerW: 20,
			hoursPerDay: 5,
			shedOrder: 8,
		},
	),
	load('laptop', 'laptops|laptop charger|notebook|computer|portátil|ordenador', {
		powerW: 60,
		hoursPerDay: 5,
	}),
	load('desktop computer', 'desktop|pc|gaming pc', {
		powerW: 250,
		hoursPerDay: 4,
		mains: true,
		surgeFactor: 1.5,
	}),
	load('monitor', 'screen|display|pantalla|bildschirm', { powerW: 30, hoursPerDay: 5 }),
	load('tablet', 'tablets|tableta', { powerW: 15, hoursPerDay: 2 }),
	load(
		'phone',
		'phones|phone charger|cell phone|smartphone|mobile|usb|usb charger|usb outlet|usb sockets|toma usb|tomas usb|enchufe usb|usb-steckdose|móvil|teléfono|handy|telefon',
		{
			powerW: 12,
			hoursPerDay: 3,
		},
	),
	load('router', 'wifi|wi-fi|modem|cell router|wlan|wifi router|enrutador|lte router', {
		powerW: 12,
		hoursPerDay: 24,
	}),
	load('satellite internet', 'satellite dish|satellite terminal|dish|internet satelital|satelliteninternet', {
		powerW: 75,
		hoursPerDay: 8,
		surgeFactor: 1.5,
	}),
	load('television', 'tv|tele|televisión|fernseher', { powerW: 50, hoursPerDay: 3 }),
	load('stereo', 'radio|speaker|speakers|amplifier|música|musik', { powerW: 20, hoursPerDay: 3 }),
	load('camera', 'cameras|dash cam|dashcam|security camera|cámara|kamera', { powerW: 6, hoursPerDay: 24 }),
	load('gas detector', 'propane detector|co alarm|co detector|carbon monoxide alarm|gaswarner', {
		powerW: 2,
		hoursPerDay: 24,
		shedOrder: 9,
	}),
	load('monitoring', 'battery monitor|controller|control panel|parasitic|standby loads|touch screen', {
		powerW: 8,
		hoursPerDay: 24,
		shedOrder: 9,
	}),
	load('sleep apnea machine', 'cpap|apnea machine|schlafapnoegerät', {
		powerW: 50,
		hoursPerDay: 8,
		shedOrder: 9,
	}),
	// Outside
	load('air compressor', 'tire compressor|tyre compressor|compresor|kompressor', {
		powerW: 350,
		hoursPerDay: 0.1,
		surgeFactor: 2,
	}),
	load(
		'electric bicycle charger',
		'ebike|e-bike|ebike charger|e-bike charger|bike charger|bicicleta eléctrica|e-bike ladegerät',
		{
			powerW: 180,
			hoursPerDay: 4,
			mains: true,
			surgeFactor: 1.5,
			shedOrder: 3,
		},
	),
	load('tool charger', 'power tool charger|drill charger|tool batteries|werkzeugladegerät', {
		powerW: 120,
		hoursPerDay: 1,
		mains: true,
		surgeFactor: 1.5,
		shedOrder: 3,
	}),
];

function plain(text: string): string {
	return text
		.toLowerCase()
		.normalize('NFD')
		.replace(/\p{M}/gu, '')
		.replace(/ß/g, 'ss')
		.replace(/[^a-z0-9]+/g, ' ')
		.trim();
}

const spoken = typicalLoads
	.flatMap((one) => one.words.map((word) => ({ load: one, word: plain(word) })))
	// The longest name that fits is meant: "water heater" before "heater".
	.sort((a, b) => b.word.length - a.word.length);

/** Every word by which a typical load is called, for the reading of lists. */
export const typicalLoadWords: readonly string[] = [...new Set(typicalLoads.flatMap((one) => one.words))];

/** The typical load somebody means by these words, or null where none is known. */
export function typicalLoad(words: string): TypicalLoad | null {
	const text = ` ${plain(words)} `;
	const found = spoken.find(({ word }) =>
		[word, `${word}s`, `${word}es`].some((form) => text.includes(` ${form} `)),
	);
	return found?.load ?? null;
}

/** The typical load of exactly this name. */
export function typicalLoadNamed(name: string): TypicalLoad {
	const found = typicalLoads.find((one) => one.name === name);
	if (found === undefined) throw new Error(`no typical load is called "${name}"`);
	return found;
}
