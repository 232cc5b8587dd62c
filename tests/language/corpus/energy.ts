import { asks, days, fahrenheit, ft, min, type Phrasing, read } from './phrasing.js';

/** Budget, battery, runtime, solar, strings, alternator, shore, inverter and simulation, as typed in English. */
export const energy: readonly Phrasing[] = [
	// budget
	read('daily usage: fridge 50w 24h 50%, sat dish 75w 6h, 2 laptops 65w 3h, lights 15w 4h', 'budget', {
		loads: [
			{ powerW: 50, durationH: 24, duty: 0.5 },
			{ powerW: 75, durationH: 6 },
			{ powerW: 65, durationH: 3, count: 2 },
			{ powerW: 15, durationH: 4 },
		],
	}),
	read('how many ah a day: fan 2.5A 9h, pump 7A for 20 min', 'budget', {
		loads: [
			{ currentA: 2.5, durationH: 9 },
			{ currentA: 7, durationH: min(20) },
		],
	}),
	read('energy budget fridge 45w 24h 40 percent, laptop 60w 4 hours, lights 12w 5 hours', 'budget', {
		loads: [
			{ powerW: 45, durationH: 24, duty: 0.4 },
			{ powerW: 60, durationH: 4 },
			{ powerW: 12, durationH: 5 },
		],
	}),
	read('power budget 24v: router 10w 24h, fan 30w 8h', 'budget', {
		bankV: 24,
		loads: [
			{ powerW: 10, durationH: 24 },
			{ powerW: 30, durationH: 8 },
		],
	}),
	read('how much power per day for a 1000w microwave 10 min and a 1500w kettle 6 min', 'budget', {
		loads: [
			{ powerW: 1000, durationH: min(10) },
			{ powerW: 1500, durationH: min(6) },
		],
	}),
	read('load list: 3 lights 5w 4h, fridge 4a 10h, tv 40w 2h', 'budget', {
		loads: [
			{ powerW: 5, durationH: 4, count: 3 },
			{ currentA: 4, durationH: 10 },
			{ powerW: 40, durationH: 2 },
		],
	}),
	read('daily consumption of a 12v cooler 50w at 50% plus fan 20w 10h', 'budget', {
		bankV: 12,
		loads: [
			{ powerW: 50, duty: 0.5 },
			{ powerW: 20, durationH: 10 },
		],
	}),
	read('budget\nfridge 60W 24h 35%\nwater pump 84W 15 min\ndiesel heater 25W 10h', 'budget', {
		loads: [
			{ powerW: 60, durationH: 24, duty: 0.35 },
			{ powerW: 84, durationH: min(15) },
			{ powerW: 25, durationH: 10 },
		],
	}),
	asks('energy budget', 'budget'),

	// battery
	read('what bank for 90ah per day and 2 days no sun, lithium', 'battery', {
		chargePerDayAh: 90,
		autonomyH: days(2),
		chemistry: 'lifepo4',
	}),
	read('three 100ah lifepo4 12v batteries in parallel, 120A charge ok?', 'charge', {
		unitCount: 3,
		unitAh: 100,
		chargerA: 120,
		layout: 'parallel',
		chemistry: 'lifepo4',
		'unitV|bankV': 12,
	}),
	read('battery for 2kwh/day', 'battery', { energyPerDayWh: 2000 }),
	read('battery for 100 Ah a day, 2 days, lithium', 'battery', {
		chargePerDayAh: 100,
		autonomyH: days(2),
		chemistry: 'lifepo4',
	}),
	read('how big a battery for 150 amp hours a day, 3 days off grid', 'battery', {
		chargePerDayAh: 150,
		autonomyH: days(3),
	}),
	read('battery bank size 1.8 kwh a day 48 h autonomy agm', 'battery', {
		energyPerDayWh: 1800,
		autonomyH: 48,
		chemistry: 'agm',
	}),
	read('24v bank for 3 kWh per day two days', 'battery', {
		bankV: 24,
		energyPerDayWh: 3000,
		autonomyH: days(2),
	}),
	read('2x 12v 200ah agm batteries in series', 'battery', {
		unitCount: 2,
		unitV: 12,
		unitAh: 200,
		chemistry: 'agm',
		layout: 'series',
	}),
	read('4 x 6v 220ah golf cart batteries for 12v', 'battery', {
		unitCount: 4,
		unitV: 6,
		unitAh: 220,
		chemistry: 'flooded',
		bankV: 12,
	}),
	read('battery 80ah/day at 20F 50% dod lead acid', 'battery', {
		chargePerDayAh: 80,
		temperatureC: fahrenheit(20),
		depthOfDischarge: 0.5,
		chemistry: 'flooded',
	}),
	read('battery size for fridge 50w 24h 40% and laptop 60w 5h, 2 days', 'battery', {
		loads: [
			{ powerW: 50, durationH: 24, duty: 0.4 },
			{ powerW: 60, durationH: 5 },
		],
		autonomyH: days(2),
	}),
	read('batery for 70 ah per day 4 days lithuim', 'battery', {
		chargePerDayAh: 70,
		autonomyH: days(4),
		chemistry: 'lifepo4',
	}),
	read('battery for a 45w fridge for 3 days', 'battery', { loads: [{ powerW: 45, durationH: days(3) }] }),
	asks('what size battery', 'battery'),
	asks('battery bank for 2 days', 'battery', { autonomyH: days(2) }),

	// runtime
	read('how long can i run a 45w fridge off 100ah lithium', 'runtime', {
		loads: [{ powerW: 45 }],
		unitAh: 100,
		chemistry: 'lifepo4',
	}),
	read('will 2x100ah lifepo4 run a 500w ac for 8 hours', 'runtime', {
		unitCount: 2,
		unitAh: 100,
		chemistry: 'lifepo4',
		loads: [{ powerW: 500, 'durationH?': 8 }],
	}),
	read('200ah agm how long 8 amp draw to 50%', 'runtime', {
		unitAh: 200,
		chemistry: 'agm',
		loads: [{ currentA: 8 }],
		toSoc: 0.5,
	}),
	read('fridge half the night on 100ah 50w', 'runtime', {
		unitAh: 100,
		loads: [{ powerW: 50, durationH: 6 }],
	}),
	read('how many hours will a 1500w heater run on 400ah lithium', 'runtime', {
		loads: [{ powerW: 1500 }],
		unitAh: 400,
		chemistry: 'lifepo4',
	}),
	read('runtime 300ah lifepo4 24v, fan 30w and router 12w', 'runtime', {
		unitAh: 300,
		chemistry: 'lifepo4',
		'bankV|unitV': 24,
		loads: [{ powerW: 30 }, { powerW: 12 }],
	}),
	read('2 x 200ah lithium how long fridge 5a lights 2a', 'runtime', {
		unitCount: 2,
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ currentA: 5 }, { currentA: 2 }],
	}),
	read('how long will my 100ah battery last with a 60w tv', 'runtime', {
		unitAh: 100,
		loads: [{ powerW: 60 }],
	}),
	read('how long does 5.1 kwh last at 400w', 'runtime', { unitWh: 5100, loads: [{ powerW: 400 }] }),
	read('run time of 280ah lfp from 90% to 20% with 25A', 'runtime', {
		unitAh: 280,
		chemistry: 'lifepo4',
		fromSoc: 0.9,
		toSoc: 0.2,
		loads: [{ currentA: 25 }],
	}),
	read('howlong will 200 ah lithium run a 700w microwave', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 700 }],
	}),
	read('230Ah AGM, 10A draw, how long at 30F', 'runtime', {
		unitAh: 230,
		chemistry: 'agm',
		loads: [{ currentA: 10 }],
		temperatureC: fahrenheit(30),
	}),
	read('can 200ah lithium run a 50w heater fan all night', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 50 }],
		overnight: true,
	}),
	read('will 200ah run the fridge and lights overnight', 'runtime', {
		unitAh: 200,
		loads: [{ name: 'fridge' }, { name: 'lights' }],
		overnight: true,
	}),
	read('does a 300ah bank carry 12v rooftop ac all night', 'runtime', {
		unitAh: 300,
		bankV: 12,
		loads: [{ name: '12v air conditioner' }],
		overnight: true,
	}),
	read('will 200ah lifepo4 carry a 1800w induction cooktop for 20 min and the ac overnight', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 1800, durationH: 1 / 3 }, { name: 'ac' }],
		overnight: true,
	}),
	read('can 2x100ah run a 45w fridge for 3 days', 'runtime', {
		unitCount: 2,
		unitAh: 100,
		loads: [{ powerW: 45, durationH: days(3) }],
	}),
	read('cooktop 1800w 20 min and ac 600w overnight on 400ah', 'runtime', {
		unitAh: 400,
		loads: [{ powerW: 1800, durationH: 1 / 3 }, { powerW: 600 }],
		overnight: true,
	}),
	read('200ah agm run a cpap 40w 8h for 3 days', 'runtime', {
		unitAh: 200,
		chemistry: 'agm',
		loads: [{ powerW: 40, durationH: 8 }],
		wantedH: days(3),
	}),
	asks('how long will my battery last', 'runtime'),
	asks('how long will 100ah last', 'runtime', { unitAh: 100 }),

	// solar
	read('600w on the roof in Moab in april', 'solar', { 'panelW|arrayW': 600, place: '*', month: 4 }),
	read('3 x 200w panels flat denver december how much', 'solar', {
		panels: 3,
		panelW: 200,
		place: '*',
		month: 12,
		'tiltDeg?': 0,
	}),
	read('solar 400w phoenix june', 'solar', { 'panelW|arrayW': 400, place: '*', month: 6 }),
	read('how much solar power from 2x190w in Seattle in november', 'solar', {
		panels: 2,
		panelW: 190,
		place: '*',
		month: 11,
	}),
	read('sun hours in Salt Lake City february', 'solar', { place: '*', month: 2 }),
	read('3 x 200w panels moab in april', 'solar', { panels: 3, panelW: 200, place: '*', month: 4 }),
	read('400W solar Portland Oregon march tilted 30 degrees south', 'solar', {
		'panelW|arrayW': 400,
		place: '*',
		month: 3,
		tiltDeg: 30,
		facing: 'south',
	}),
	read('what will 800 watts of solar make in Tucson', 'solar', { 'panelW|arrayW': 800, place: '*' }),
	read('how much solar for 1.2kwh a day in Flagstaff in january', 'solar', {
		needWh: 1200,
		place: '*',
		month: 1,
	}),
	read('solar yield 500w flexible panels Las Vegas july', 'solar', {
		'panelW|arrayW': 500,
		glued: true,
		place: '*',
		month: 7,
	}),
	read('300w pv bend oregon october 20% shade', 'solar', {
		'panelW|arrayW': 300,
		place: '*',
		month: 10,
		shading: 0.2,
	}),
	asks('how much solar from 400w in july', 'solar', { 'panelW|arrayW': 400, month: 7 }),

	// array
	read('2s2p 200w panels voc 24.3 isc 10.2 on 100/30 mppt', 'array', {
		panelW: 200,
		vocV: 24.3,
		iscA: 10.2,
		controllerV: 100,
		controllerA: 30,
		series: 2,
		parallel: 2,
		controller: 'mppt',
	}),
	read('what charge controller for 4x 100w in series boise', 'array', {
		panels: 4,
		panelW: 100,
		joined: 'series',
		place: '*',
	}),
	read('string voltage of 3 panels in series voc 40.5V low -20F', 'array', {
		'panels?': 3,
		'series?': 3,
		'joined?': 'series',
		vocV: 40.5,
		lowC: fahrenheit(-20),
	}),
	read('mppt 100V 50A ok for 2 x 410w in series voc 37.2 in Denver', 'array', {
		controllerV: 100,
		controllerA: 50,
		controller: 'mppt',
		panels: 2,
		panelW: 410,
		joined: 'series',
		vocV: 37.2,
		place: '*',
	}),
	read('6 x 100w panels 3s2p on a 150/45 controller in Duluth', 'array', {
		panels: 6,
		panelW: 100,
		series: 3,
		parallel: 2,
		controllerV: 150,
		controllerA: 45,
		place: '*',
	}),
	read('charge controller size for 600w of panels 24v bank Albuquerque', 'array', {
		panelW: 600,
		bankV: 24,
		place: '*',
	}),
	read('solar strings 2 panels 370w voc 41V isc 11.3A parallel, coldest -10 F', 'array', {
		panels: 2,
		panelW: 370,
		vocV: 41,
		iscA: 11.3,
		joined: 'parallel',
		lowC: fahrenheit(-10),
	}),
	read('is 150V controller fine for 3 in series voc 45 at -25 C', 'array', {
		controllerV: 150,
		'series|panels': 3,
		'joined?': 'series',
		vocV: 45,
		lowC: -25,
	}),
	read('pwm controller for two 100w panels in parallel Phoenix', 'array', {
		controller: 'pwm',
		panels: 2,
		panelW: 100,
		joined: 'parallel',
		place: '*',
	}),
	asks('what charge controller for 2 x 200w panels', 'array', { panels: 2, panelW: 200 }),

	// charge
	read('is a 60A charger ok for a 100ah lifepo4 battery', 'charge', {
		chargerA: 60,
		unitAh: 100,
		chemistry: 'lifepo4',
	}),
	read('time to charge 200ah lithium from 20% with 40a charger', 'charge', {
		chargerA: 40,
		unitAh: 200,
		chemistry: 'lifepo4',
		fromSoc: 0.2,
	}),
	read('charge time 300Ah 50A', 'charge', { chargerA: 50, unitAh: 300 }),
	read('how long to charge 2x100ah with 30a', 'charge', { chargerA: 30, unitAh: 100, unitCount: 2 }),
	read('what charger for 400ah lifepo4 to fill it overnight', 'charge', {
		unitAh: 400,
		chemistry: 'lifepo4',
		overnight: true,
	}),
	read('5 hours plugged in, 40A charger, 200Ah, from 30%, full?', 'charge', {
		wantedH: 5,
		chargerA: 40,
		unitAh: 200,
		fromSoc: 0.3,
	}),
	read('can i charge 200ah lithium at 10 amps overnight', 'charge', {
		chargerA: 10,
		unitAh: 200,
		chemistry: 'lifepo4',
		overnight: true,
	}),
	read('600w charger on 300 ah lithium how long from 10 to 90%', 'charge', {
		chargerW: 600,
		unitAh: 300,
		chemistry: 'lifepo4',
		fromSoc: 0.1,
		toSoc: 0.9,
	}),
	asks('what size battery charger', 'charge', {}),

	// alternator
	read('dcdc size for 220a alternator 300ah lifepo4 24 ft of cable', 'alternator', {
		'link?': 'converter',
		alternatorA: 220,
		unitAh: 300,
		chemistry: 'lifepo4',
		lengthM: ft(24),
	}),
	read('40a dc-dc how long driving 20 to 80% 200ah', 'alternator', {
		'link?': 'converter',
		chargerA: 40,
		fromSoc: 0.2,
		toSoc: 0.8,
		unitAh: 200,
	}),
	read('how many hours driving to fill 300ah from 30% with a 60a dcdc', 'alternator', {
		'link?': 'converter',
		unitAh: 300,
		fromSoc: 0.3,
		chargerA: 60,
	}),
	read('will a 150A alternator handle a 50A dc-dc charger', 'alternator', {
		'link?': 'converter',
		alternatorA: 150,
		chargerA: 50,
	}),
	read('dc to dc charger for 180 amp alternator', 'alternator', { 'link?': 'converter', alternatorA: 180 }),
	read('30 amp dcdc 100ah lithium 20% to 100% drive time?', 'alternator', {
		'link?': 'converter',
		chargerA: 30,
		unitAh: 100,
		chemistry: 'lifepo4',
		fromSoc: 0.2,
		toSoc: 1,
	}),
	read('alternator 200A, dcdc 60A, 20 ft, house loads 10A while driving', 'alternator', {
		'link?': 'converter',
		alternatorA: 200,
		chargerA: 60,
		lengthM: ft(20),
		houseLoadA: 10,
	}),
	read('2x100ah lifepo4 40A booster how long to drive from 50 to 100%', 'alternator', {
		'link?': 'converter',
		unitCount: 2,
		unitAh: 100,
		chemistry: 'lifepo4',
		chargerA: 40,
		fromSoc: 0.5,
		toSoc: 1,
	}),
	asks('what dcdc charger for 200ah lithium', 'alternator', {
		'link?': 'converter',
		unitAh: 200,
		chemistry: 'lifepo4',
	}),

	// shore
	read('plugged in at a house 15a outlet with 30a inlet, ac 1200w and 60a charger', 'shore', {
		outletA: 15,
		inletA: 30,
		chargerA: 60,
		loads: [{ powerW: 1200 }],
		'household?': true,
	}),
	read('plugged in at a house 15a outlet with 30a inlet, ac 1200w, 60a charger', 'shore', {
		outletA: 15,
		inletA: 30,
		chargerA: 60,
		loads: [{ powerW: 1200 }],
		'household?': true,
	}),
	read('50a pedestal microwave 1500w kettle 1500w charger 100a', 'shore', {
		'outletA|inletA': 50,
		loads: [{ powerW: 1500 }, { powerW: 1500 }],
		chargerA: 100,
		'household?': false,
	}),
	read('30a hookup: what can run together, ac 1400w, water heater 1440w, microwave 1300w', 'shore', {
		'outletA|inletA': 30,
		loads: [{ powerW: 1400 }, { powerW: 1440 }, { powerW: 1300 }],
		'household?': false,
	}),
	read('can i run a 1500w heater and 1000w microwave on a 15 amp household outlet', 'shore', {
		loads: [{ powerW: 1500 }, { powerW: 1000 }],
		outletA: 15,
		'household?': true,
	}),
	read('20A garage outlet, 50A charger, fridge 120w', 'shore', {
		outletA: 20,
		chargerA: 50,
		loads: [{ powerW: 120 }],
		'household?': true,
	}),
	read('shore 16A 230V kettle 2000w induction 1800w together?', 'shore', {
		'inletA|outletA': 16,
		supplyV: 230,
		loads: [{ powerW: 2000 }, { powerW: 1800 }],
	}),
	read('what charger limit on 15a outlet with ac 1300w', 'shore', { outletA: 15, loads: [{ powerW: 1300 }] }),
	read('30a inlet on a 20a outlet, charger 80a 12v', 'shore', {
		inletA: 30,
		outletA: 20,
		chargerA: 80,
		bankV: 12,
	}),
	asks('what can run together on shore power', 'shore'),

	// inverter
	read('inverter for a 1500w induction and 800w blender 12v', 'inverter', {
		loads: [{ powerW: 1500 }, { powerW: 800 }],
		bankV: 12,
	}),
	read('3000w inverter 24v 200ah lifepo4 bms 150a', 'inverter', {
		ratedW: 3000,
		'bankV|unitV': 24,
		unitAh: 200,
		protectionA: 150,
		chemistry: 'lifepo4',
	}),
	read('2000W INVERTER 12V 5FT CABLE AND FUSE?', 'inverter', { ratedW: 2000, bankV: 12, lengthM: ft(5) }),
	read('what size inverter for a 1200w coffee maker', 'inverter', { loads: [{ powerW: 1200 }] }),
	read('inverter for microwave 1000w, laptop 65w, 12v bank', 'inverter', {
		loads: [{ powerW: 1000 }, { powerW: 65 }],
		bankV: 12,
	}),
	read('fuse and cable for 1000 watt inverter 12v 3 feet', 'inverter', {
		ratedW: 1000,
		bankV: 12,
		lengthM: ft(3),
	}),
	read('3kw inverter 12v what cable 4 ft each way', 'inverter', { ratedW: 3000, bankV: 12, lengthM: ft(4) }),
	read('will a 2000w inverter run off 2x100ah lifepo4 with 100a bms', 'inverter', {
		ratedW: 2000,
		unitCount: 2,
		unitAh: 100,
		chemistry: 'lifepo4',
		protectionA: 100,
	}),
	read('inverter surge for a 800w blender and 1500w hair dryer 24v', 'inverter', {
		loads: [{ powerW: 800 }, { powerW: 1500 }],
		bankV: 24,
	}),
	read('2000W inverter 4000W surge 24V 6ft', 'inverter', {
		ratedW: 2000,
		surgeW: 4000,
		bankV: 24,
		lengthM: ft(6),
	}),
	asks('what size inverter do i need', 'inverter'),

	// simulate
	read('simulate 300ah lifepo4, 500w solar, bend oregon october, 1.2kwh a day', 'simulate', {
		unitAh: 300,
		chemistry: 'lifepo4',
		'panelW|arrayW': 500,
		place: '*',
		month: 10,
		needWh: 1200,
	}),
	read('simulate a year 200ah 400w solar Denver 1 kwh a day', 'simulate', {
		unitAh: 200,
		'panelW|arrayW': 400,
		place: '*',
		needWh: 1000,
		'periodH?': 8760,
	}),
	read(
		'will 200ah lithium and 300w solar keep up in Seattle in december with fridge 45w 24h 40%',
		'simulate',
		{
			unitAh: 200,
			chemistry: 'lifepo4',
			'panelW|arrayW': 300,
			place: '*',
			month: 12,
			loads: [{ powerW: 45, durationH: 24, duty: 0.4 }],
		},
	),
	read(
		'400w solar and 40a dcdc 2h driving a day, 100ah a day used, 200ah bank, denver december',
		'simulate',
		{
			'loads|arrayW': [{ powerW: 400 }],
			alternatorA: 40,
			driveH: 2,
			needAh: 100,
			unitAh: 200,
			place: '*',
			month: 12,
		},
	),
	read(
		'will sun and alternator keep up with 90ah a day in moab in january, 200ah, 300w, 1h driving 30a',
		'simulate',
		{
			'loads|arrayW': [{ powerW: 300 }],
			alternatorA: 30,
			driveH: 1,
			needAh: 90,
			unitAh: 200,
			place: '*',
			month: 1,
		},
	),
	read('do i have enough solar for 1kwh a day in denver june 200w', 'simulate', {
		'loads|arrayW': [{ powerW: 200 }],
		needWh: 1000,
		place: '*',
		month: 6,
	}),
	asks('does sun and 40a dcdc 2h driving refill 200ah in december in denver', 'simulate', {
		alternatorA: 40,
		driveH: 2,
		unitAh: 200,
		place: '*',
		month: 12,
	}),
	read('hour by hour 400ah 600w solar Tucson july 2 kwh a day', 'simulate', {
		unitAh: 400,
		'panelW|arrayW': 600,
		place: '*',
		month: 7,
		needWh: 2000,
	}),
	read('simulation 100Ah agm 200W solar Flagstaff may 60 Ah a day', 'simulate', {
		unitAh: 100,
		chemistry: 'agm',
		'panelW|arrayW': 200,
		place: '*',
		month: 5,
		needAh: 60,
	}),
	read('simulate 10 days 200ah 800wh a day 1h driving with 30A dcdc', 'simulate', {
		periodH: days(10),
		unitAh: 200,
		needWh: 800,
		driveH: 1,
		alternatorA: 30,
	}),
	read('energy balance 300ah lifepo4 400w solar moab march 1.5kwh per day', 'simulate', {
		unitAh: 300,
		chemistry: 'lifepo4',
		'panelW|arrayW': 400,
		place: '*',
		month: 3,
		needWh: 1500,
	}),
];
