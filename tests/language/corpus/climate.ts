import {
	asks,
	btuH,
	cfm,
	days,
	fahrenheit,
	ft,
	gal,
	inch,
	inchMm,
	lb,
	type Phrasing,
	read,
} from './phrasing.js';

/** Heating, cooling, moisture and ventilation, as typed in English. */
export const climate: readonly Phrasing[] = [
	// heat
	read('heater size long high roof 144? no 170 wheelbase -20F', 'heat', {
		outsideC: fahrenheit(-20),
		'wheelbase?': 'long',
		'roof?': 'high',
		'wheelbaseM?': inch(170),
	}),
	read('diesel heater for short van, 1.5in foam, 5F', 'heat', {
		wheelbase: 'short',
		insulationMm: inchMm(1.5),
		outsideC: fahrenheit(5),
		'fuel?': 'diesel',
	}),
	read('is 5kw heater too big for medium wheelbase, 20F outside 68 inside', 'heat', {
		heaterW: 5000,
		wheelbase: 'medium',
		outsideC: fahrenheit(20),
		insideC: fahrenheit(68),
	}),
	read('heater for a lwb high roof at -10 F 2 in foam', 'heat', {
		wheelbase: 'long',
		roof: 'high',
		outsideC: fahrenheit(-10),
		insulationMm: inchMm(2),
	}),
	read('how much diesel per night medium van 15F', 'heat', {
		wheelbase: 'medium',
		outsideC: fahrenheit(15),
		'fuel?': 'diesel',
	}),
	read('heat loss extended van -20 C 50 mm wool inside 18 C', 'heat', {
		wheelbase: 'extra-long',
		outsideC: -20,
		insulationMm: 50,
		insideC: 18,
		'material?': 'sheepWool',
	}),
	read('what heater do I need for a short wheelbase low roof 25 F uninsulated', 'heat', {
		wheelbase: 'short',
		roof: 'low',
		outsideC: fahrenheit(25),
		bare: true,
	}),
	read('propane heater 3kw enough? long van 0F at 9000 ft', 'heat', {
		heaterW: 3000,
		wheelbase: 'long',
		outsideC: fahrenheit(0),
		altitudeM: ft(9000),
		fuel: 'propane',
	}),
	read('stay warm at 10F in a mwb high roof with 1 inch xps', 'heat', {
		outsideC: fahrenheit(10),
		wheelbase: 'medium',
		roof: 'high',
		insulationMm: inchMm(1),
		material: 'xps',
	}),
	read('diesel heater kw for swb van down to -15C, 30mm rubber foam', 'heat', {
		wheelbase: 'short',
		outsideC: -15,
		insulationMm: 30,
		material: 'elastomericFoam',
		'fuel?': 'diesel',
	}),
	read('heating a long van in Duluth winter', 'heat', { wheelbase: 'long', place: '*' }),
	read('furnace size: van 14 ft long inside, 6 ft wide, 6.2 ft tall, 20F outside', 'heat', {
		insideLengthM: ft(14),
		insideWidthM: ft(6),
		insideHeightM: ft(6.2),
		outsideC: fahrenheit(20),
	}),
	asks('what size diesel heater', 'heat', { 'fuel?': 'diesel' }),
	asks('heater for my van at 0F', 'heat', { outsideC: fahrenheit(0) }),

	// cool
	read('aircon size for black extended van 95F', 'cool', {
		wheelbase: 'extra-long',
		paint: 'black',
		outsideC: fahrenheit(95),
	}),
	read('what ac do i need long high roof van 102F white', 'cool', {
		wheelbase: 'long',
		roof: 'high',
		outsideC: fahrenheit(102),
		paint: 'white',
	}),
	read('how many btu for a mwb van at 98F 2 people', 'cool', {
		wheelbase: 'medium',
		outsideC: fahrenheit(98),
		people: 2,
	}),
	read('cooling load short van 35 C grey', 'cool', { wheelbase: 'short', outsideC: 35, paint: 'coloured' }),
	read('is 13500 btu enough for extended high roof at 110 F', 'cool', {
		unitW: btuH(13500),
		wheelbase: 'extra-long',
		roof: 'high',
		outsideC: fahrenheit(110),
	}),
	read('air conditioner for lwb, 40C outside 25C inside, 400Ah 12V', 'cool', {
		wheelbase: 'long',
		outsideC: 40,
		insideC: 25,
		bankAh: 400,
		bankV: 12,
	}),
	read('aircon long van phoenix july', 'cool', { wheelbase: 'long', place: '*', month: 7 }),
	read('run the ac overnight: medium van 90F, 600ah 12v bank, 8000 btu unit', 'cool', {
		wheelbase: 'medium',
		outsideC: fahrenheit(90),
		bankAh: 600,
		bankV: 12,
		unitW: btuH(8000),
		overnight: true,
	}),
	read('cool a black swb van to 75F when its 100F outside', 'cool', {
		paint: 'black',
		wheelbase: 'short',
		insideC: fahrenheit(75),
		outsideC: fahrenheit(100),
	}),
	asks('what size air conditioner for my van', 'cool'),
	asks('aircon for 100F', 'cool', { outsideC: fahrenheit(100) }),

	// moisture
	read('condensation 2 people sleeping 40F outside', 'moisture', { people: 2, outsideC: fahrenheit(40) }),
	read('how much vent do i need cooking w gas 1 hour, 30F, 2 people', 'moisture', {
		people: 2,
		outsideC: fahrenheit(30),
		stove: 'gas',
		cookingH: 1,
	}),
	read('condensation at 25 F outside 60 F inside 3 people', 'moisture', {
		outsideC: fahrenheit(25),
		insideC: fahrenheit(60),
		people: 3,
	}),
	read('how much fresh air to stop condensation -10C two people', 'moisture', { outsideC: -10, people: 2 }),
	read('moisture 2 people 35F, 1 in foam, 50 cfm fan', 'moisture', {
		people: 2,
		outsideC: fahrenheit(35),
		insulationMm: inchMm(1),
		airM3H: cfm(50),
	}),
	read('windows sweating at 20F with 1 person', 'moisture', {
		outsideC: fahrenheit(20),
		people: 1,
		surface: 'glass',
	}),
	read('mold worries: 4 people, 0 C outside, electric stove', 'moisture', {
		people: 4,
		outsideC: 0,
		stove: 'electric',
	}),
	read('dew point problem 2 people 10F 20 mm insulation', 'moisture', {
		people: 2,
		outsideC: fahrenheit(10),
		insulationMm: 20,
	}),
	asks('condensation with 2 people', 'moisture', { people: 2 }),

	// vent
	read('14 inch roof fan 900cfm, window open 8x20 in, long van', 'vent', {
		fanMm: inchMm(14),
		airM3H: cfm(900),
		wheelbase: 'long',
		opening: '*',
	}),
	read('air changes 250 cfm fan medium wheelbase', 'vent', { airM3H: cfm(250), wheelbase: 'medium' }),
	read('what fan for 15 air changes in a lwb high roof', 'vent', {
		airChanges: 15,
		wheelbase: 'long',
		roof: 'high',
	}),
	read('intake size for a 600 cfm roof fan extended van', 'vent', {
		airM3H: cfm(600),
		wheelbase: 'extra-long',
	}),
	read('ventilation 400 m3/h short van window 600 cm2', 'vent', {
		airM3H: 400,
		wheelbase: 'short',
		intakeM2: 0.06,
	}),
	read('roof fan 920 cfm intake 100 in2 ok?', 'vent', { airM3H: cfm(920), intakeM2: 100 * 0.0254 * 0.0254 }),
	asks('how much ventilation do I need', ['vent', 'moisture']),
	// fuel
	read('how long does 20 lb of propane last with a 12k btu furnace', 'fuel', {
		fuel: 'propane',
		amountKg: lb(20),
		burners: [{ powerW: btuH(12_000) }],
		'isContent?': true,
	}),
	read('does an 11 lb cylinder do a weekend: cooktop 1 hr a day, heater 8 h at 50 %', 'fuel', {
		amountKg: lb(11),
		stay: 'weekend',
		burners: [{ durationH: 1 }, { durationH: 8, duty: 0.5 }],
		'inCylinder?': true,
	}),
	read('how many days on a 10 l diesel tank with the 5 kw heater at half load', 'fuel', {
		fuel: 'diesel',
		volumeL: 10,
		burners: [{ powerW: 5000, duty: 0.5 }],
	}),
	read('will 2 20 lb tanks get us thru a week, furnace 16k 10 hrs 50%', 'fuel', {
		amountKg: lb(20),
		containers: 2,
		stay: 'week',
		burners: [{ powerW: btuH(16_000), durationH: 10, duty: 0.5 }],
	}),
	read('propane for 4 nights heater 12k btu 8 hours', 'fuel', {
		fuel: 'propane',
		wantedH: days(4),
		burners: [{ powerW: btuH(12_000), durationH: 8 }],
	}),
	read('20# propane half full, 12k btu furnace', 'fuel', {
		fuel: 'propane',
		amountKg: lb(20),
		level: 0.5,
		burners: [{ powerW: btuH(12_000) }],
	}),
	read('24 gal vans tank diesel heater 5kw 10 h, days', 'fuel', {
		mainTank: true,
		fuel: 'diesel',
		volumeL: gal(24),
		burners: [{ powerW: 5000, durationH: 10 }],
	}),
	read('diesel heater burns 0.25 l/h, 10 l can, 8h a night', 'fuel', {
		fuel: 'diesel',
		volumeL: 10,
		burners: [{ burnLMin: 0.25 / 60 }],
		hoursPerDayH: 8,
	}),
	asks('how long does a propane tank last', 'fuel', { fuel: 'propane' }),
	// a furnace's fan on a bank is no question of fuel
	read('how long will 100ah lithium run the propane furnace fan 90w', 'runtime', {
		unitAh: 100,
		chemistry: 'lifepo4',
		loads: [{ powerW: 90 }],
	}),
];
