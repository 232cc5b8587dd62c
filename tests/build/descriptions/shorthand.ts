import { btu, type DescriptionCase, f, ft, gal, inch, lb } from './case.js';

/** Lists, abbreviations, spec sheets. */
export const shorthand: readonly DescriptionCase[] = [
	{
		name: 'spec sheet by lines',
		region: 'us',
		text: `Build sheet
- Battery: 4 x 100Ah LiFePO4 12V, BMS 100A, wired 24V
- Main fuse: 200A class T
- Inverter: 3000W
- Shore: 30A inlet, GFCI, breaker panel
- Charger: 40A
- DC-DC: 25A
- Alternator: 220A
- Solar: 4 x 190W, 2 in series, Voc 23.1V
- Controller: MPPT 100/50
- Fridge: 60W
- Cooktop: induction 1800W
- Air conditioner: 13,500 BTU, 1500W
- Water heater: electric 6 gal, 1440W
- Heater: diesel 4kW
- Fresh: 30 gal
- Gray: 15 gal
- Toilet: cassette
- Fan: roof fan
- CO alarm: none
- Smoke alarm: yes
- Extinguisher: yes
- Van: extended high roof, GVWR 11,030 lb
- People: 2`,
		expected: [
			[
				'battery',
				{ unitAh: 100, unitCount: 4, bankV: 24, unitV: 12, protectionA: 100, chemistry: 'lifepo4' },
			],
			['main-fuse', { ratingA: 200, fuseClass: 'classT' }],
			['inverter', { ratedW: 3000 }],
			['shore-inlet', { ratingA: 30 }],
			['gfci'],
			['mains-panel'],
			['charger', { chargeA: 40 }],
			['dcdc', { chargeA: 25 }],
			['alternator', { ratingA: 220 }],
			['solar', { panelW: 190, count: 4, series: 2, vocV: 23.1 }],
			['solar-controller', { controllerV: 100, controllerA: 50, type: 'mppt' }],
			['fridge', { powerW: 60 }],
			['cooktop', { fuel: 'induction', powerW: 1800 }],
			['air-conditioner', { coolingW: btu(13500), powerW: 1500 }],
			['water-heater', { fuel: 'electric', volumeL: gal(6), powerW: 1440 }],
			['heater', { fuel: 'diesel', outputW: 4000 }],
			['fresh-tank', { volumeL: gal(30) }],
			['gray-tank', { volumeL: gal(15) }],
			['toilet', { type: 'cassette' }],
			['fan', { extracts: true }],
			['smoke-alarm'],
			['extinguisher'],
			['van', { wheelbase: 'extra-long', roof: 'high', gvwrKg: lb(11030) }],
			['people', { people: 2 }],
		],
		absent: ['co-alarm'],
		dangers: ['carbon-monoxide-alarm-missing'],
		faults: ['gray-smaller-than-fresh', 'loads-over-inverter-together', 'shore-loads-over-supply'],
	},
	{
		name: 'comma list',
		region: 'us',
		text: `200ah lfp 12v 100a bms, 2000w inverter, 250a class t, 20a charger, 30a inlet, rcd no, 30a dcdc, 200a alternator direct no, 2x200w panels series voc 27, pwm 30a controller 50 v max, 12v fridge 4a, 2 fans 3a, lights 2a, pump 7a, heater diesel 2kw, 2 burner propane cooktop, propane 20 lb inside the van strapped, lp detector, co detector, fresh 20 gal, gray 20 gal, long wb high roof, solar on the roof, flagstaff, couple, 1 in polyiso, 3 acrylic windows with covers`,
		expected: [
			['battery', { unitAh: 200, bankV: 12, protectionA: 100, chemistry: 'lifepo4' }],
			['inverter', { ratedW: 2000 }],
			['main-fuse', { ratingA: 250, fuseClass: 'classT' }],
			['charger', { chargeA: 20 }],
			['shore-inlet', { ratingA: 30 }],
			['dcdc', { chargeA: 30 }],
			['alternator', { ratingA: 200 }],
			['solar', { panelW: 200, count: 2, wiring: 'series', vocV: 27 }],
			['solar-controller', { type: 'pwm', controllerA: 30, controllerV: 50 }],
			['fridge', { currentA: 4 }],
			['fan', { count: 2, currentA: 3 }],
			['lights', { currentA: 2 }],
			['water-pump', { currentA: 7 }],
			['heater', { fuel: 'diesel', outputW: 2000 }],
			['cooktop', { fuel: 'gas' }],
			['propane', { contentKg: lb(20), place: 'inside' }],
			['gas-alarm'],
			['co-alarm'],
			['fresh-tank', { volumeL: gal(20) }],
			['gray-tank', { volumeL: gal(20) }],
			['van', { roof: 'high' }],
			['place', { place: 'Flagstaff, AZ' }],
			['people', { people: 2 }],
			['insulation', { insulationMm: inch(1), material: 'polyiso' }],
			['windows', { count: 3, windowKind: 'double', covers: true }],
		],
		absent: ['gfci'],
		dangers: [
			'mains-without-residual-current',
			'string-over-controller',
			'gas-bottle-inside',
			'inverter-over-protection',
		],
		faults: ['pwm-wastes'],
	},
	{
		name: 'headed paragraphs',
		region: 'us',
		text: `ELECTRICAL: 12V, 2x 280Ah LFP in parallel, BMS 200A each, charge limit 140A each. Class T 400A. Inverter 3000W, fuse 400A, 4/0 cable, 4 ft. Shore 30A inlet, GFCI, panel. Charger 80A. DC-DC 2x 30A, 250A alternator. Solar 3x 200W parallel, MPPT 100/50, fuse 60A.
LOADS: fridge 60W, freezer 50W, lights 25W, 2x roof fan 30W, laptop 60W 6h, TV 50W 3h, all on the fuse block.
KITCHEN: induction 1800W, microwave 1100W.
WATER: 42 gal fresh inside, 28 gal gray, 6 gal water heater (diesel), mixing valve yes, pump 8A, accumulator 0.2 gal.
CLIMATE: diesel heater 4kW, insulation 2 in wool, CO alarm yes, smoke alarm yes.
WEIGHT: long high roof, GVWR 9050 lb, empty 5200 lb.
OTHER: 3 people, 4 days off grid, driving 2 h a day.`,
		expected: [
			[
				'battery',
				{ unitAh: 280, unitCount: 2, bankV: 12, protectionA: 200, chargeLimitA: 140, chemistry: 'lifepo4' },
			],
			['main-fuse', { ratingA: 400, fuseClass: 'classT' }],
			['inverter', { ratedW: 3000, fuseA: 400, wireSize: '4/0 AWG', runM: ft(4) }],
			['shore-inlet', { ratingA: 30 }],
			['gfci'],
			['charger', { chargeA: 80 }],
			['dcdc', { chargeA: 30, count: 2 }],
			['alternator', { ratingA: 250 }],
			['solar', { panelW: 200, count: 3, wiring: 'parallel' }],
			['solar-controller', { controllerV: 100, controllerA: 50, type: 'mppt', fuseA: 60 }],
			['fridge', { powerW: 60 }],
			['freezer', { powerW: 50 }],
			['lights', { powerW: 25 }],
			['fan', { count: 2, powerW: 30, extracts: true }],
			['appliance', { name: 'laptop', powerW: 60, durationH: 6 }],
			['appliance', { name: 'television', powerW: 50, durationH: 3 }],
			['fuse-block'],
			['cooktop', { fuel: 'induction', powerW: 1800 }],
			['microwave', { powerW: 1100 }],
			['fresh-tank', { volumeL: gal(42), outside: false }],
			['gray-tank', { volumeL: gal(28) }],
			['water-heater', { volumeL: gal(6), fuel: 'diesel', mixer: true }],
			['water-pump', { currentA: 8 }],
			['accumulator', { volumeL: gal(0.2) }],
			['heater', { fuel: 'diesel', outputW: 4000 }],
			['insulation', { insulationMm: inch(2) }],
			['co-alarm'],
			['smoke-alarm'],
			['van', { wheelbase: 'long', roof: 'high', gvwrKg: lb(9050), emptyKg: lb(5200) }],
			['people', { people: 3 }],
			['trip', { offGridH: 96, driveH: 2 }],
		],
		dangers: [],
		faults: ['gray-smaller-than-fresh', 'shore-loads-over-supply'],
	},
	{
		name: 'fuse list',
		region: 'us',
		text: `Wren, as wired today.
Bank: 300Ah lithium 12V (3x100), bms 100A each
Main: 300A class T + disconnect
Inverter 2000W, 2/0, 6 ft, fuse 250A
DC-DC 40A, 6 AWG, 18 ft, fuse 60A
Alternator 180A
Solar 2x 200W in parallel, MPPT 100/30, 8 AWG, 6 ft, fuse 40A
Fuse block, 12 way
Fuses: fridge 10A, lights 5A, pump 10A, heater 20A, roof fan 5A, usb 10A
Fridge 60W on 14 AWG, 12 ft
Lights 24W on 16 AWG, 20 ft
Water pump 90W on 14 AWG, 10 ft
Diesel heater 2kW on 14 AWG, 8 ft
CO alarm, smoke alarm, extinguisher
Fresh 22 gal inside, gray 22 gal inside
No shore power, no gas
2 people, San Diego`,
		expected: [
			['appliance', { name: 'phone', fuseA: 10 }],
			['battery', { unitAh: 100, unitCount: 3, bankV: 12, protectionA: 100, chemistry: 'lifepo4' }],
			['main-fuse', { ratingA: 300, fuseClass: 'classT' }],
			['disconnect'],
			['inverter', { ratedW: 2000, wireSize: '2/0 AWG', runM: ft(6), fuseA: 250 }],
			['dcdc', { chargeA: 40, wireSize: '6 AWG', runM: ft(18), fuseA: 60 }],
			['alternator', { ratingA: 180 }],
			['solar', { panelW: 200, count: 2, wiring: 'parallel' }],
			['solar-controller', { controllerV: 100, controllerA: 30, wireSize: '8 AWG', runM: ft(6), fuseA: 40 }],
			['fuse-block', { circuits: 12 }],
			['fridge', { powerW: 60, fuseA: 10, wireSize: '14 AWG', runM: ft(12) }],
			['lights', { powerW: 24, fuseA: 5, wireSize: '16 AWG', runM: ft(20) }],
			['water-pump', { powerW: 90, fuseA: 10, wireSize: '14 AWG', runM: ft(10) }],
			['heater', { fuel: 'diesel', outputW: 2000, fuseA: 20, wireSize: '14 AWG', runM: ft(8) }],
			['fan', { fuseA: 5 }],
			['co-alarm'],
			['smoke-alarm'],
			['extinguisher'],
			['fresh-tank', { volumeL: gal(22), outside: false }],
			['gray-tank', { volumeL: gal(22), outside: false }],
			['people', { people: 2 }],
			['place', { place: 'San Diego, CA' }],
		],
		absent: ['shore-inlet'],
		// 20 A on 14 AWG: the small conductor's limit is 15 A.
		dangers: ['fuse-over-conductor'],
	},
	{
		name: 'weights only',
		region: 'us',
		text: `Heron weights. Extended high roof, GVWR 9,350 lb, FAWR... front axle 4,410 lb, rear axle 5,730 lb, empty 6,150 lb. Water 45 gal fresh over the rear axle, 30 gal gray at the rear. Bank 4x 100Ah lithium, 27 lb each. Fridge 60 lb, cooktop induction 20 lb, microwave 30 lb, AC 75 lb on the roof, 4 panels 200W 24 lb each on the roof, roof rack 95 lb rated for 250 lb, roof box 80 lb on the roof, awning 60 lb. Bed 120 lb in the back, cabinets 480 lb. Motorcycle 350 lb on the hitch. Two people. Load index 112 tires.`,
		expected: [
			[
				'van',
				{
					wheelbase: 'extra-long',
					roof: 'high',
					gvwrKg: lb(9350),
					frontRatingKg: lb(4410),
					rearRatingKg: lb(5730),
					emptyKg: lb(6150),
				},
			],
			['fresh-tank', { volumeL: gal(45), zone: 'axle' }],
			['gray-tank', { volumeL: gal(30), zone: 'back' }],
			['battery', { unitAh: 100, unitCount: 4, massKg: lb(27), chemistry: 'lifepo4' }],
			['fridge', { massKg: lb(60) }],
			['cooktop', { massKg: lb(20), fuel: 'induction' }],
			['microwave', { massKg: lb(30) }],
			['air-conditioner', { massKg: lb(75), onRoof: true }],
			['solar', { panelW: 200, count: 4, massKg: lb(24) }],
			['roof-rack', { massKg: lb(95), limitKg: lb(250) }],
			['cargo', { massKg: lb(80), onRoof: true }],
			['awning', { massKg: lb(60) }],
			['bed', { massKg: lb(120), zone: 'back' }],
			['furniture', { massKg: lb(480) }],
			['cargo', { massKg: lb(350), zone: 'door' }],
			['people', { people: 2 }],
			['tires', { loadIndex: 112 }],
		],
		dangers: ['roof-overloaded', 'tires-overloaded'],
	},
	{
		name: 'winter list',
		region: 'us',
		text: `winter build / missoula. 12v 200ah lithium outside the van in a box under the floor, bms 200a, no low temp cutoff, not heated / 2000w inverter, 250a strip fuse main / 40a dcdc, 180a alternator / 300w solar, mppt 75/15 / small diesel heater 2 kw / tank heating pads 2 x 75w / fresh 30 gal under floor, gray 25 gal under floor / 1 in xps walls / medium wheelbase high roof / 2 ppl so two people / propane stove, bottle 5 lb in a sealed locker / co alarm + gas alarm in / nights of -10 F / 5 days off grid`,
		expected: [
			['place', { place: 'Missoula, MT', lowC: f(-10) }],
			[
				'battery',
				{ unitAh: 200, bankV: 12, outside: true, protectionA: 200, coldCutOff: false, heated: false },
			],
			['inverter', { ratedW: 2000 }],
			['main-fuse', { ratingA: 250, fuseClass: 'strip' }],
			['dcdc', { chargeA: 40 }],
			['alternator', { ratingA: 180 }],
			['solar', { panelW: 300 }],
			['solar-controller', { controllerV: 75, controllerA: 15, type: 'mppt' }],
			['heater', { fuel: 'diesel', outputW: 2000 }],
			['heating-pad', { powerW: 75, count: 2 }],
			['fresh-tank', { volumeL: gal(30), outside: true }],
			['gray-tank', { volumeL: gal(25), outside: true }],
			['insulation', { insulationMm: inch(1), material: 'xps' }],
			['van', { wheelbase: 'medium', roof: 'high' }],
			['people', { people: 2 }],
			['cooktop', { fuel: 'gas' }],
			['propane', { contentKg: lb(5), place: 'locker' }],
			['co-alarm'],
			['gas-alarm'],
			['trip', { offGridH: 120 }],
		],
		dangers: ['lithium-charge-below-freezing', 'main-fuse-cannot-break'],
		faults: ['winter-night-drains-bank'],
	},
];
