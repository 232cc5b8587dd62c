import { asks, cfm, days, fahrenheit, ft, gal, inchMm, type Phrasing, psi, read } from './phrasing.js';

/** Phrasings that were once read wrongly, or not at all, in English. */
export const mendedEnglish: readonly Phrasing[] = [
	read('cable gauge 90 amps 12V 7ft 6in thru the engine compartment', 'wire', {
		currentA: 90,
		voltageV: 12,
		lengthM: ft(7, 6),
		engineBay: true,
	}),
	read('air up 4 LT265/70R17 from 22 psi to 60 psi with a 4 cfm compressor', 'inflate', {
		tires: 4,
		tireSize: '*',
		'pressures?': '*',
		'fromKpa?': psi(22),
		'toKpa?': psi(60),
		pumpFlowM3H: cfm(4),
	}),
	read('air up 2 LT285/75R16 from 20 psi to 40 psi 3 cfm', 'inflate', {
		tires: 2,
		tireSize: 'LT285/75R16',
		fromKpa: psi(20),
		toKpa: psi(40),
		pumpFlowM3H: cfm(3),
	}),
	read('inflate 6 LT33x12.50R15 from 15 psi to 35 psi 5 cfm', 'inflate', {
		tires: 6,
		tireSize: 'LT33x12.50R15',
		fromKpa: psi(15),
		toKpa: psi(35),
		pumpFlowM3H: cfm(5),
	}),
	read('pump up 37x1250-17 from 15 psi to 35 psi with 5 cfm', 'inflate', {
		tireSize: '37x1250-17',
		fromKpa: psi(15),
		toKpa: psi(35),
		pumpFlowM3H: cfm(5),
	}),
	read('four 265 70 R17 tires from 22 psi to 60 psi 4 cfm', 'inflate', {
		tires: 4,
		tireSize: '265 70 R17',
		fromKpa: psi(22),
		toKpa: psi(60),
		pumpFlowM3H: cfm(4),
	}),
	asks('will the alternator charge the bank in 2 hours of driving', 'alternator', { driveH: 2 }),
	read('will a 180A alternator charge the 200ah lithium bank in 2 hours of driving', 'alternator', {
		alternatorA: 180,
		unitAh: 200,
		chemistry: 'lifepo4',
		driveH: 2,
	}),
	read('can a 30A dcdc fill 200ah lithium in 3 hours driving', 'alternator', {
		chargerA: 30,
		unitAh: 200,
		chemistry: 'lifepo4',
		driveH: 3,
		'link?': 'converter',
	}),
	read('heater propane for 3 nights long van 10F', 'heat', {
		fuel: 'propane',
		wheelbase: 'long',
		outsideC: fahrenheit(10),
		stayH: days(3),
	}),
	read('diesel for 4 nights heater medium van 20F', 'heat', {
		fuel: 'diesel',
		wheelbase: 'medium',
		outsideC: fahrenheit(20),
		stayH: days(4),
	}),
	read('30 gal fresh 3 people 2 nights', 'tank', { freshL: gal(30), people: 3, wantedH: days(2) }),
	read('heat loss long van -5 to -15 C', 'heat', { wheelbase: 'long', outsideC: -15 }),
	read('heat long van 20 to 10 F', 'heat', { wheelbase: 'long', outsideC: fahrenheit(10) }),
	read('heater size swb between -5 and 15 F', 'heat', { wheelbase: 'short', outsideC: fahrenheit(-5) }),
	read('aircon mwb white 85-95F', 'cool', {
		wheelbase: 'medium',
		outsideC: fahrenheit(95),
		paint: 'white',
	}),
	read('wire 40A 12v 15 ft ambient 30-50C', 'wire', {
		currentA: 40,
		voltageV: 12,
		lengthM: ft(15),
		ambientC: 50,
	}),
	asks('how long does 200ah lithium run a 60w fridge at -10 to 10C', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 60 }],
	}),
	read('freeze 12 gal tank 15 to 5F 1 in foam', 'freeze', {
		volumeL: gal(12),
		outsideC: fahrenheit(5),
		insulationMm: inchMm(1),
		'what?': 'tank',
	}),
	asks('2 x 40A chargers 12V 15 ft wire', 'wire', { currentA: 40, voltageV: 12, lengthM: ft(15) }),
	asks('gauge 90 amps', 'wire', { currentA: 90 }),
	read('gauge 4A 12v 20 ft', 'wire', { currentA: 4, voltageV: 12, lengthM: ft(20) }),
	read('fuse for 90 amps gauge 4 12v', 'fuse', { currentA: 90, size: '4 AWG', bankV: 12 }),
	read('how many nights 200ah lithium with a 40w fridge', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 40 }],
	}),
];

/** The same in Spanish and German. */
export const mendedMetric: readonly Phrasing[] = [
	asks('kabel für wasserpumpe und wechselrichter 12V 100A 3 m'),
	read('querschnitt wasserpumpe 8A 12V 5m', 'wire', { currentA: 8, voltageV: 12, lengthM: 5 }),
	read('heizung langer radstand zwischen -5 und -15 grad', 'heat', { wheelbase: 'long', outsideC: -15 }),
	read('calefacción furgoneta larga de diésel para 3 noches a -5 grados', 'heat', {
		wheelbase: 'long',
		fuel: 'diesel',
		stayH: days(3),
		outsideC: -5,
	}),
	read('tank 100 liter 2 personen 3 nächte', 'tank', { freshL: 100, people: 2, wantedH: days(3) }),
];
