import { asks, days, fahrenheit, ft, type Phrasing, read } from './phrasing.js';

/** Wiring and energy as typed with one hand at the end of a day: stories around it, slang, units left out. */
export const oneHandedEnglish: readonly Phrasing[] = [
	read("gonna run 8 puck lights 3w each on 12v 25' chain", 'wire', {
		powerW: 24,
		voltageV: 12,
		lengthM: ft(25),
	}),
	read('2 gauge from alternator to dcdc 18 ft 60 amps ok or nah', 'wire', {
		size: '2 AWG',
		lengthM: ft(18),
		currentA: 60,
	}),
	read('wire for 13.5k btu 12v ac 18ft', 'wire', { powerW: 1500, voltageV: 12, lengthM: ft(18) }),
	read('lenght 14 amps 22 volts 12', 'wire', { lengthM: ft(14), currentA: 22, voltageV: 12 }),
	read('12/2 cable 20a 120v 35 ft ok', 'wire', {
		size: '12 AWG',
		currentA: 20,
		voltageV: 120,
		lengthM: ft(35),
	}),
	read('10/3 cord 30a 25ft', 'wire', {
		size: '10 AWG',
		supply: 'mains',
		isRating: true,
		currentA: 30,
		lengthM: ft(25),
	}),
	asks('fan 3a fridge 5a pump 7a on one 30a fuse', 'fuse', { currentA: 15, ratingA: 30 }),
	read('can i put a 60 on 6 gauge', 'fuse', { ratingA: 60, size: '6 AWG' }),
	read('anl 250 ok on 2/0 for 2000w inv at 12v', 'fuse', {
		ratingA: 250,
		fuseClass: 'strip',
		size: '2/0 AWG',
		powerW: 2000,
		bankV: 12,
	}),
	read('what size fuse between batt and busbar 2/0 cable 400ah lifepo4 12v', 'fuse', {
		isMain: true,
		size: '2/0 AWG',
		unitAh: 400,
		chemistry: 'lifepo4',
		bankV: 12,
	}),
	read('short ckt at the end of 12 ft of 4awg off a 200ah lithium 12v', 'short-circuit', {
		lengthM: ft(12),
		size: '4 AWG',
		unitAh: 200,
		chemistry: 'lifepo4',
		'bankV|unitV': 12,
	}),
	read(
		'volts at the fridge if everythings on? batt 6ft of 2awg to bus, bus 20ft 12awg fridge 6a, bus 8ft 16awg lights 2a',
		'network',
		{
			parts: [
				{ from: 'batt', to: 'bus', size: '2 AWG', lengthM: ft(6) },
				{ from: 'bus', to: 'fridge', size: '12 AWG', lengthM: ft(20), currentA: 6 },
				{ from: 'bus', to: 'lights', size: '16 AWG', lengthM: ft(8), currentA: 2 },
			],
		},
	),
	read('fridge 4a on half the time, lights 2 amps 4hrs how many ah a day', 'budget', {
		loads: [
			{ currentA: 4, duty: 0.5 },
			{ currentA: 2, durationH: 4 },
		],
	}),
	read('how many 100ah batts do i need for 2.4kwh a day n 2 cloudy days', 'battery', {
		unitAh: 100,
		energyPerDayWh: 2400,
		autonomyH: days(2),
	}),
	asks('four 6 volt 225s series parallel for 12', 'battery', { layout: 'series', unitV: 6, unitCount: 4 }),
	read('bank at 40 pct 300ah lfp fridge 4.5 a hours til 10 pct', 'runtime', {
		fromSoc: 0.4,
		toSoc: 0.1,
		unitAh: 300,
		chemistry: 'lifepo4',
		loads: [{ currentA: 4.5 }],
	}),
	read('microwave 1200w 10min 3x a day 200ah li how many days', 'runtime', {
		inDays: true,
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 1200, durationH: 0.5 }],
	}),
	asks('how long to recharge 400ah with 400w solar', 'solar', { fillAh: 400, panelW: 400 }),
	read('recharge 200ah from 400w solar moab april how long', 'solar', {
		fillAh: 200,
		panelW: 400,
		place: '*',
		month: 4,
	}),
	read('30a charger 280ah dead flat to full hrs?', 'charge', {
		chargerA: 30,
		unitAh: 280,
		fromSoc: 0,
		toSoc: 1,
	}),
	read('half full 400ah bank w 6a draw how long till 20%', 'runtime', {
		fromSoc: 0.5,
		toSoc: 0.2,
		unitAh: 400,
		loads: [{ currentA: 6 }],
	}),
	read('coffee maker 900w 8 min twice a day, laptop 60w 3 hrs daily total', 'budget', {
		loads: [
			{ powerW: 900, durationH: 16 / 60 },
			{ powerW: 60, durationH: 3 },
		],
	}),
	asks('how many solar panels to run a fridge and fan', 'solar', { isSizing: true }),
	read('two two hundred watt panels laying flat bozeman in feb', 'solar', {
		panels: 2,
		panelW: 200,
		place: '*',
		month: 2,
	}),
	read('3 panels 22.5 voc in series with a 75/15 down to -15f', 'array', {
		panels: 3,
		vocV: 22.5,
		joined: 'series',
		controllerV: 75,
		controllerA: 15,
		lowC: fahrenheit(-15),
	}),
	read('220 amp alt 50a b2b 3 hrs drive how much goes in my 200ah', 'alternator', {
		alternatorA: 220,
		chargerA: 50,
		'link?': 'converter',
		driveH: 3,
		unitAh: 200,
	}),
	read('plugged to a 15 amp house outlet can i run ac 1100w n charge at 50a', 'shore', {
		outletA: 15,
		chargerA: 50,
		loads: [{ powerW: 1100 }],
		'household?': true,
	}),
	read('1800w hair dryer n 1000w micro on 2k inverter 12v ok?', 'inverter', {
		loads: [{ powerW: 1800 }, { powerW: 1000 }],
		ratedW: 2000,
		bankV: 12,
	}),
];

/** The same in Spanish and German. */
export const oneHandedMetric: readonly Phrasing[] = [
	read('kabel vom solarregler zur batterie 30 ampere 2,5m 12v', 'wire', {
		currentA: 30,
		lengthM: 2.5,
		voltageV: 12,
	}),
	read('10er kabel für 50a auf 4 meter ok? 12v', 'wire', {
		size: '10 mm²',
		currentA: 50,
		lengthM: 4,
		voltageV: 12,
	}),
	read('q seccion pa una bomba de 8 amp a 6 mts 12v', 'wire', { currentA: 8, lengthM: 6, voltageV: 12 }),
	read('sicherung fürn 25er kabel', 'fuse', { size: '25 mm²' }),
	read('kurzschlussstrom von 2x 100ah lifepo parallel 12v 1,5m 35er', 'short-circuit', {
		unitAh: 100,
		unitCount: 2,
		chemistry: 'lifepo4',
		'bankV|unitV': 12,
		lengthM: 1.5,
		size: '35 mm²',
	}),
	read('cuanta corriente de corto da una bateria agm de 95ah', 'short-circuit', {
		unitAh: 95,
		chemistry: 'agm',
	}),
	read('verteiler: batterie zu schiene 35mm2 1,5m, schiene zu pumpe 2,5 quadrat 5m 8a alles an', 'network', {
		parts: [
			{ from: 'batterie', to: 'schiene', size: '35 mm²', lengthM: 1.5 },
			{ from: 'schiene', to: 'pumpe', size: '2.5 mm²', lengthM: 5, currentA: 8 },
		],
	}),
	read('verbrauch am tag kühlbox 45w 8 std, heizungsgebläse 15w die ganze nacht', 'budget', {
		loads: [
			{ powerW: 45, durationH: 8 },
			{ powerW: 15, durationH: 12 },
		],
	}),
	read('banco de litio pa 1,5 kw hora al dia y 3 dias', 'battery', {
		energyPerDayWh: 1500,
		autonomyH: days(3),
		'chemistry?': 'lifepo4',
	}),
	read('wie lang hält die 95er agm mit 5 ampere', 'runtime', {
		unitAh: 95,
		chemistry: 'agm',
		loads: [{ currentA: 5 }],
	}),
	read('con 2 baterias de 100 cuantas horas aguanta la nevera de 50w', 'runtime', {
		unitAh: 100,
		unitCount: 2,
		loads: [{ powerW: 50 }],
	}),
	read('was bringen 2 mal 180 watt im märz in freiburg', 'solar', {
		panels: 2,
		panelW: 180,
		place: '*',
		month: 3,
	}),
];
