import { asks, days, fahrenheit, ft, gal, inch, inchMm, min, type Phrasing, psi, read } from './phrasing.js';

const qt = (quarts: number) => gal(quarts / 4);

/** Tanks, pipes, accumulators, hot water, drains and frost, as typed in English. */
export const water: readonly Phrasing[] = [
	// tank
	read('25 gal fresh 2 ppl 3 min shower how many days', 'tank', {
		freshL: gal(25),
		people: 2,
		showerH: min(3),
	}),
	read('40 gallons fresh & 30 gray family of 4', 'tank', { freshL: gal(40), grayL: gal(30), people: 4 }),
	read('fresh 90l gray 50l 3 people no showers', 'tank', {
		freshL: 90,
		grayL: 50,
		people: 3,
		showers: false,
	}),
	read('how many days of water 36 gal fresh 24 gal gray two people', 'tank', {
		freshL: gal(36),
		grayL: gal(24),
		people: 2,
	}),
	read('fresh tank 20gal, 1 person, no shower', 'tank', { freshL: gal(20), people: 1, showers: false }),
	read('30 gal fresh 30 gal grey 2 adults 2 kids', 'tank', {
		freshL: gal(30),
		grayL: gal(30),
		people: 2,
		kids: 2,
	}),
	read('is 120 L fresh enough for 3 people 5 days', 'tank', { freshL: 120, people: 3, wantedH: days(5) }),
	read('water for 2 people 4 days 100 litre tank 2 minute showers', 'tank', {
		people: 2,
		wantedH: days(4),
		freshL: 100,
		showerH: min(2),
	}),
	read('45 GAL FRESH 35 GRAY 4 OF US', 'tank', { freshL: gal(45), grayL: gal(35), people: 4 }),
	read('2 people, 80l fresh, 60l waste, 1.5 gpm shower head', 'tank', {
		people: 2,
		freshL: 80,
		grayL: 60,
		showerLMin: gal(1.5),
	}),
	read('how long does 21 gal of water last 2 people', 'tank', { freshL: gal(21), people: 2 }),
	asks('how many days of water for 2 people', 'tank', { people: 2 }),
	asks('30 gal fresh 20 gal gray', 'tank', { freshL: gal(30), grayL: gal(20) }),

	// pipe
	read('1.8 gpm thru 15 ft of 1/2" pex, 55 psi pump, 5 elbows', 'pipe', {
		flowLMin: gal(1.8),
		lengthM: ft(15),
		pipe: '*',
		pumpKPa: psi(55),
		elbows: 5,
	}),
	read('pressure drop 3/8 pex 20 ft 2 gpm', 'pipe', { pipe: '*', lengthM: ft(20), flowLMin: gal(2) }),
	read('pipe size for a kitchen sink 12 ft run 4 elbows', 'pipe', {
		fixture: 'kitchen',
		lengthM: ft(12),
		elbows: 4,
	}),
	read('1/2 pex 30 feet 3 gpm 45psi how much pressure at the shower', 'pipe', {
		pipe: '*',
		lengthM: ft(30),
		flowLMin: gal(3),
		pumpKPa: psi(45),
		'fixture?': 'shower',
	}),
	read('pressure loss 16 mm pipe 5 m 7 l/min', 'pipe', { pipe: '*', lengthM: 5, flowLMin: 7 }),
	read('psi left at the shower: 50 psi pump, 25 ft 1/2 pex, 1.5 gpm', 'pipe', {
		pumpKPa: psi(50),
		lengthM: ft(25),
		pipe: '*',
		flowLMin: gal(1.5),
		'fixture?': 'shower',
	}),
	read('water line 18 ft 2.5 gpm, 1/2 in pex, 6 elbows 2 tees', 'pipe', {
		lengthM: ft(18),
		flowLMin: gal(2.5),
		pipe: '*',
		elbows: 6,
		tees: 2,
	}),
	read('plumbing: 10 mm bore hose 4 m 6 l/min 2.8 bar pump', 'pipe', {
		boreMm: 10,
		lengthM: 4,
		flowLMin: 6,
		pumpKPa: 280,
	}),
	asks('what size pex for 2 gpm', 'pipe', { flowLMin: gal(2) }),
	asks('pipe size for the shower', 'pipe', { fixture: 'shower' }),

	// accumulator
	read('accumulator 1 liter precharge 25 psi, pump 30-50 psi', 'accumulator', {
		volumeL: 1,
		prechargeKPa: psi(25),
		cutInKPa: psi(30),
		cutOutKPa: psi(50),
	}),
	read('0.75 l accumulator, cut in 20 psi, cut out 45 psi', 'accumulator', {
		volumeL: 0.75,
		cutInKPa: psi(20),
		cutOutKPa: psi(45),
	}),
	read('pressure tank 2 liters 40/60 psi', 'accumulator', { volumeL: 2, pressureSwitch: '*' }),
	read('1 quart accumulator pump on at 35 psi off at 55 psi', 'accumulator', {
		volumeL: qt(1),
		cutInKPa: psi(35),
		cutOutKPa: psi(55),
	}),
	read('pump short cycling: 0.5 gal accumulator on at 25 psi off at 40 psi draw 1 gpm', 'accumulator', {
		volumeL: gal(0.5),
		cutInKPa: psi(25),
		cutOutKPa: psi(40),
		drawLMin: gal(1),
	}),
	read('what accumulator for a 1 L drawdown, cut in 1.7 bar cut out 2.8 bar', 'accumulator', {
		wantedL: 1,
		cutInKPa: 170,
		cutOutKPa: 280,
	}),
	read('drawdown of a 4 L pressure tank, kicks in 25 psi shuts off 45 psi, precharge 23 psi', 'accumulator', {
		volumeL: 4,
		cutInKPa: psi(25),
		cutOutKPa: psi(45),
		prechargeKPa: psi(23),
	}),
	asks('how big an accumulator', 'accumulator'),

	// hot-water
	read('4 gal water heater 1200w how long till hot from 50F to 130F', 'hot-water', {
		volumeL: gal(4),
		powerW: 1200,
		coldC: fahrenheit(50),
		hotC: fahrenheit(130),
	}),
	read('10 L boiler 800W on the inverter 200Ah 12V', 'hot-water', {
		volumeL: 10,
		powerW: 800,
		supply: 'inverter',
		bankAh: 200,
		bankV: 12,
	}),
	read('hot water 6 gal 60F to 120F 1440W', 'hot-water', {
		volumeL: gal(6),
		coldC: fahrenheit(60),
		hotC: fahrenheit(120),
		powerW: 1440,
	}),
	read('heat 20 l of water from 10C to 55C with 1500 w', 'hot-water', {
		volumeL: 20,
		coldC: 10,
		hotC: 55,
		powerW: 1500,
	}),
	read('water heater 2.5 gallon 1500 watts shore power', 'hot-water', {
		volumeL: gal(2.5),
		powerW: 1500,
		supply: 'mains',
	}),
	read('how many ah to heat 4 gallons from 55 F to 115 F 12v bank 300ah', 'hot-water', {
		volumeL: gal(4),
		coldC: fahrenheit(55),
		hotC: fahrenheit(115),
		bankV: 12,
		bankAh: 300,
	}),
	read('minutes of shower from a 4 gal water heater at 140F, shower 104F 1.2 gpm', 'hot-water', {
		volumeL: gal(4),
		hotC: fahrenheit(140),
		showerC: fahrenheit(104),
		showerLMin: gal(1.2),
	}),
	read('hot water 8 L 500 W left on', 'hot-water', { volumeL: 8, powerW: 500, leftOn: true }),
	asks('what does my water heater take', 'hot-water'),

	// drain
	read('how long to drain 30 gal tank thru 3/4 valve', 'drain', { volumeL: gal(30), valveMm: inchMm(0.75) }),
	read('empty a 25 gallon gray tank 1.5 in valve', 'drain', { volumeL: gal(25), valveMm: inchMm(1.5) }),
	read('drain 80 l 20 cm deep through 25 mm valve', 'drain', { volumeL: 80, depthM: 0.2, valveMm: 25 }),
	read('dump time 40 gal gray 12 in deep 1 1/2" valve 10 ft hose', 'drain', {
		volumeL: gal(40),
		depthM: inch(12),
		valveMm: inchMm(1.5),
		hoseLengthM: ft(10),
	}),
	read('time to empty 100 liters 32mm outlet no vent', 'drain', { volumeL: 100, valveMm: 32, vented: false }),
	read('drain time 21 gal 1 inch valve', 'drain', { volumeL: gal(21), valveMm: inchMm(1) }),
	read('what valve to drain 30 gal in 5 minutes', 'drain', { volumeL: gal(30), wantedH: min(5) }),
	asks('how long to drain my gray tank', 'drain'),
	asks('drain 30 gallons', 'drain', { volumeL: gal(30) }),

	// freeze
	read('will my 20 gal tank under the van freeze at 15F no insulation', 'freeze', {
		volumeL: gal(20),
		outsideC: fahrenheit(15),
		bare: true,
		'what?': 'tank',
		'sheltered?': false,
	}),
	read('how big of a heat pad for 25 gal at 0F 2" foam', 'freeze', {
		volumeL: gal(25),
		outsideC: fahrenheit(0),
		insulationMm: inchMm(2),
	}),
	read('will 15 ft of pex freeze overnight at 22 F', 'freeze', {
		lengthM: ft(15),
		outsideC: fahrenheit(22),
		what: 'pipe',
		'nightH?': 12,
	}),
	read('tank heater for 100 l gray tank at -15C', 'freeze', { volumeL: 100, outsideC: -15, 'what?': 'tank' }),
	read('how long till a 10 gallon tank freezes at -5 F with 1 inch foam', 'freeze', {
		volumeL: gal(10),
		outsideC: fahrenheit(-5),
		insulationMm: inchMm(1),
		'what?': 'tank',
	}),
	read('does 3 m of 15 mm pipe freeze in a night at -8C', 'freeze', {
		lengthM: 3,
		boreMm: 15,
		outsideC: -8,
		what: 'pipe',
	}),
	read('heating pad 80w 30 gal 5F enough?', 'freeze', {
		padW: 80,
		volumeL: gal(30),
		outsideC: fahrenheit(5),
	}),
	read('freeze protection fresh tank 40 gal Fairbanks 1.5 in xps', 'freeze', {
		volumeL: gal(40),
		place: '*',
		insulationMm: inchMm(1.5),
		material: 'xps',
		'what?': 'tank',
	}),
	asks('will my tank freeze', 'freeze', { 'what?': 'tank' }),
	asks('will my water freeze at 10F', 'freeze', { outsideC: fahrenheit(10) }),
];
