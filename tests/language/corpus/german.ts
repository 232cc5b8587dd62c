import { asks, days, declined, min, notUnderstood, type Phrasing, read, smallTalk } from './phrasing.js';

/** As typed in German. */
export const german: readonly Phrasing[] = [
	// wiring
	read('welches kabel 25A 12V 4m', 'wire', { currentA: 25, voltageV: 12, lengthM: 4 }),
	read('querschnitt kühlbox 6 A 12 V 5,5 m', 'wire', { currentA: 6, voltageV: 12, lengthM: 5.5 }),
	read('hält 10mm² 60A auf 3m 12V hin und zurück', 'wire', {
		size: '10 mm²',
		currentA: 60,
		lengthM: 1.5,
		voltageV: 12,
	}),
	read('welcher querschnitt für 40 ampere bei 12 volt und 6 metern', 'wire', {
		currentA: 40,
		voltageV: 12,
		lengthM: 6,
	}),
	read('kabel für wasserpumpe 8A 12V 5m einfach', 'wire', {
		currentA: 8,
		voltageV: 12,
		lengthM: 5,
		'motor?': true,
	}),
	read('reichen 6mm2 für 30A 12V 3m', 'wire', { size: '6 mm²', currentA: 30, voltageV: 12, lengthM: 3 }),
	read('moin, kabelquerschnitt für 1000W bei 24V, 2 m', 'wire', { powerW: 1000, voltageV: 24, lengthM: 2 }),
	read('leitung 16A 230V 12m', 'wire', {
		currentA: 16,
		voltageV: 230,
		lengthM: 12,
		'supply?': 'mains',
		'isRating?': true,
	}),
	read('kabel durch den motorraum 50A 12V 4,5m', 'wire', {
		engineBay: true,
		currentA: 50,
		voltageV: 12,
		lengthM: 4.5,
	}),
	asks('welches kabel 25A 12V', 'wire', { currentA: 25, voltageV: 12 }),
	read('welche sicherung für 10mm2 bei 40A', 'fuse', { size: '10 mm²', currentA: 40 }),
	read('sicherung 6 mm2 20A 12V', 'fuse', { size: '6 mm²', 'currentA|ratingA': 20, bankV: 12 }),
	read('hauptsicherung 70mm2 250A 12V 300Ah lithium', 'fuse', {
		isMain: true,
		size: '70 mm²',
		'currentA|ratingA': 250,
		'bankV|unitV': 12,
		unitAh: 300,
		chemistry: 'lifepo4',
	}),
	read('kurzschlussstrom 200Ah lithium 12V 2m 50mm2', 'short-circuit', {
		unitAh: 200,
		chemistry: 'lifepo4',
		'bankV|unitV': 12,
		lengthM: 2,
		size: '50 mm²',
	}),
	read('verteilung 12v: batterie-schiene 35mm2 1,5 m, schiene-pumpe 2.5mm2 5 m 7A', 'network', {
		voltageV: 12,
		parts: [
			{ from: '*', to: '*', size: '35 mm²', lengthM: 1.5 },
			{ from: '*', to: '*', size: '2.5 mm²', lengthM: 5, currentA: 7 },
		],
	}),

	// energy
	read('verbrauch: kühlschrank 45W 24h 40%, licht 10W 5h, laptop 60W 3h', 'budget', {
		loads: [
			{ powerW: 45, durationH: 24, duty: 0.4 },
			{ powerW: 10, durationH: 5 },
			{ powerW: 60, durationH: 3 },
		],
	}),
	read('tagesverbrauch kaffeemaschine 1200w 10 min, router 8w 24h', 'budget', {
		loads: [
			{ powerW: 1200, durationH: min(10) },
			{ powerW: 8, durationH: 24 },
		],
	}),
	read('batterie für 1,2 kWh am tag, 3 tage ohne sonne', 'battery', {
		energyPerDayWh: 1200,
		autonomyH: days(3),
	}),
	read('welche batterie für 100 Ah pro tag 2 tage lifepo4', 'battery', {
		chargePerDayAh: 100,
		autonomyH: days(2),
		chemistry: 'lifepo4',
	}),
	read('2 x 100ah agm batterien parallel', 'battery', {
		unitCount: 2,
		unitAh: 100,
		chemistry: 'agm',
		layout: 'parallel',
	}),
	asks('welche batterie brauche ich', 'battery'),
	read('wie lange reicht 150ah lifepo4 für kühlschrank 40w und router 10w', 'runtime', {
		unitAh: 150,
		chemistry: 'lifepo4',
		loads: [{ powerW: 40 }, { powerW: 10 }],
	}),
	read('reicht 200ah lithium für klimaanlage 500w 6 stunden', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 500, durationH: 6 }],
	}),
	read('läuft der kühlschrank 45w über nacht mit 100ah agm', 'runtime', {
		unitAh: 100,
		chemistry: 'agm',
		loads: [{ powerW: 45 }],
		overnight: true,
	}),
	read('wie lange hält 100Ah agm mit 5A', 'runtime', {
		unitAh: 100,
		chemistry: 'agm',
		loads: [{ currentA: 5 }],
	}),
	read('laufzeit 200Ah lithium fernseher 50W', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 50 }],
	}),
	read('2x 210 W solar in Hamburg im November', 'solar', { panels: 2, panelW: 210, place: '*', month: 11 }),
	read('solarertrag 400W Berlin dezember', 'solar', { 'panelW|arrayW': 400, place: '*', month: 12 }),
	read('wie viel bringen 600W solar in München im Mai', 'solar', {
		'panelW|arrayW': 600,
		place: '*',
		month: 5,
	}),
	read('laderegler für 2 x 200W in reihe voc 24,3V in Berlin', 'array', {
		panels: 2,
		panelW: 200,
		joined: 'series',
		vocV: 24.3,
		place: '*',
	}),
	read('ladezeit 280ah mit 30A ladegerät von 30% bis 90%', 'charge', {
		unitAh: 280,
		chargerA: 30,
		fromSoc: 0.3,
		toSoc: 0.9,
	}),
	read('60A ladegerät an 200ah agm ok?', 'charge', { unitAh: 200, chemistry: 'agm', chargerA: 60 }),
	read('ladebooster 30A wie lange fahren von 20 auf 80% 100ah', 'alternator', {
		'link?': 'converter',
		chargerA: 30,
		fromSoc: 0.2,
		toSoc: 0.8,
		unitAh: 100,
	}),
	read('lichtmaschine 150A ladebooster 40A ok?', 'alternator', {
		'link?': 'converter',
		alternatorA: 150,
		chargerA: 40,
	}),
	read('ladebooster für 180A lichtmaschine 200Ah lifepo4', 'alternator', {
		'link?': 'converter',
		alternatorA: 180,
		unitAh: 200,
		chemistry: 'lifepo4',
	}),
	read('steckdose 16A 230V wasserkocher 2000W heizlüfter 1500W gleichzeitig?', 'shore', {
		outletA: 16,
		supplyV: 230,
		loads: [{ powerW: 2000 }, { powerW: 1500 }],
	}),
	read('campingplatz 6A 230V ladegerät 30A wasserkocher 1000W', 'shore', {
		'outletA|inletA': 6,
		supplyV: 230,
		chargerA: 30,
		loads: [{ powerW: 1000 }],
		'household?': false,
	}),
	read('wechselrichter für kaffeemaschine 1200W und föhn 1500W 12V', 'inverter', {
		loads: [{ powerW: 1200 }, { powerW: 1500 }],
		bankV: 12,
	}),
	read('wechselrichter 2000W 12V kabel 1 m welche sicherung', 'inverter', {
		ratedW: 2000,
		bankV: 12,
		lengthM: 1,
	}),
	read('welcher wechselrichter für mikrowelle 1300W', 'inverter', { loads: [{ powerW: 1300 }] }),
	read('simulieren 200Ah lithium 400W solar München märz 1 kWh pro tag', 'simulate', {
		unitAh: 200,
		chemistry: 'lifepo4',
		'panelW|arrayW': 400,
		place: '*',
		month: 3,
		needWh: 1000,
	}),

	// water
	read('frischwasser 120l grauwasser 90l 3 personen 2 min duschen', 'tank', {
		freshL: 120,
		grayL: 90,
		people: 3,
		showerH: min(2),
	}),
	read('wie viele tage reichen 100 l wasser für 2 personen', 'tank', { freshL: 100, people: 2 }),
	read('wassertank 70 liter abwassertank 50 liter 2 personen ohne dusche', 'tank', {
		freshL: 70,
		grayL: 50,
		people: 2,
		showers: false,
	}),
	asks('wie lange reicht das wasser für 2 personen', 'tank', { people: 2 }),
	read('druckverlust 16 mm rohr 5 m 8 l/min 4 bögen', 'pipe', {
		pipe: '*',
		lengthM: 5,
		flowLMin: 8,
		elbows: 4,
	}),
	read('wasserleitung 12 mm schlauch 4 m 6 l/min pumpe 2 bar', 'pipe', {
		pipe: '*',
		lengthM: 4,
		flowLMin: 6,
		pumpKPa: 200,
	}),
	read('druckspeicher 1 l vordruck 1,2 bar ein 1,4 bar aus 2,5 bar', 'accumulator', {
		volumeL: 1,
		prechargeKPa: 120,
		cutInKPa: 140,
		cutOutKPa: 250,
	}),
	read('boiler 10 l 600W wie lange von 10 auf 60 grad', 'hot-water', {
		volumeL: 10,
		powerW: 600,
		coldC: 10,
		hotC: 60,
	}),
	read('warmwasser 6 liter 800W wechselrichter batterie 200Ah 12V', 'hot-water', {
		volumeL: 6,
		powerW: 800,
		supply: 'inverter',
		bankAh: 200,
		bankV: 12,
	}),
	read('abwassertank 60 l entleeren ventil 40 mm', 'drain', { volumeL: 60, valveMm: 40 }),
	read('friert mein 70 l wassertank bei -10 grad ein', 'freeze', {
		volumeL: 70,
		outsideC: -10,
		'what?': 'tank',
	}),
	read('heizmatte für 100 l tank bei -15 C 30 mm dämmung', 'freeze', {
		volumeL: 100,
		outsideC: -15,
		insulationMm: 30,
		'what?': 'tank',
	}),
	read('einfrieren 4 m leitung -6 C', 'freeze', { lengthM: 4, outsideC: -6, what: 'pipe' }),

	// climate
	read('heizung für mittleren radstand bei -15 grad, 30mm kautschuk', 'heat', {
		wheelbase: 'medium',
		outsideC: -15,
		insulationMm: 30,
		material: 'elastomericFoam',
	}),
	read('standheizung langer radstand hochdach -10 C 20 mm dämmung', 'heat', {
		wheelbase: 'long',
		roof: 'high',
		outsideC: -10,
		insulationMm: 20,
	}),
	read('wärmeverlust kurzer radstand 0 C außen 20 C innen ungedämmt', 'heat', {
		wheelbase: 'short',
		outsideC: 0,
		insideC: 20,
		bare: true,
	}),
	read('reichen 2kW heizung für langen radstand bei -20 C', 'heat', {
		heaterW: 2000,
		wheelbase: 'long',
		outsideC: -20,
	}),
	asks('welche heizung brauche ich', 'heat'),
	read('klimaanlage langer radstand weiß 36 C', 'cool', { wheelbase: 'long', paint: 'white', outsideC: 36 }),
	read('klimaanlage für schwarzen kastenwagen mittlerer radstand 38 grad 2 personen', 'cool', {
		paint: 'black',
		wheelbase: 'medium',
		outsideC: 38,
		people: 2,
	}),
	read('kondenswasser 2 personen -5 C außen', 'moisture', { people: 2, outsideC: -5 }),
	read('feuchtigkeit 2 personen 0 grad 1 stunde kochen mit gas', 'moisture', {
		people: 2,
		outsideC: 0,
		cookingH: 1,
		'stove?': 'gas',
	}),
	read('dachlüfter 500 m3/h langer radstand fenster 600 cm2', 'vent', {
		airM3H: 500,
		wheelbase: 'long',
		intakeM2: 0.06,
	}),

	// weight and structure
	read(
		'zuladung langer radstand zgg 3500 kg, leergewicht 2200 kg, wasser 100 L hinten, 2 personen',
		'payload',
		{
			wheelbase: 'long',
			gvwrKg: 3500,
			emptyKg: 2200,
			items: [{ volumeL: 100, 'fluid?': 'water', zone: 'back' }],
			people: 2,
		},
	),
	read('reifen lastindex 121 hinterachse 2400 kg', 'tire', { loadIndex: 121, axleLoadKg: 2400 }),
	read('reifendruck 4,5 bar bei 20 C eingestellt, jetzt -10 C', 'tire', {
		pressureKpa: 450,
		setTemperatureC: 20,
		temperatureC: -10,
	}),
	asks('schrauben für kühlschrank 40 kg 80 cm hoch', 'restraint', { massKg: 40, heightM: 0.8 }),
	read('batterie 30 kg befestigen, 25 cm hoch, 35 cm längs, 20 cm quer, M8', 'restraint', {
		massKg: 30,
		heightM: 0.25,
		alongM: 0.35,
		acrossM: 0.2,
		boltSize: 'M8',
	}),
	read('träger 40x40x2 aluminium spannweite 1,2 m 100 kg verteilt', 'beam', {
		section: '40x40x2',
		material: '6063-T5',
		spanM: 1.2,
		loads: [{ massKg: 100, spread: true }],
	}),
	read('durchbiegung bett 30x30x2 rohr 1,4 m spannweite 90 kg', 'beam', {
		section: '30x30x2',
		'shape?': 'pipe',
		spanM: 1.4,
		loads: [{ massKg: 90 }],
		moving: false,
	}),
	asks('gasdruckfeder klappe 12 kg 0,9 m', 'strut', { massKg: 12, lidLengthM: 0.9 }),
	read('gasfeder deckel 15 kg 0,8 m lang, am deckel 0,25 m', 'strut', {
		massKg: 15,
		lidLengthM: 0.8,
		lidMountM: 0.25,
	}),
	read('4 reifen aufpumpen von 2 auf 4,5 bar, 60 L, kompressor 70 l/min', 'inflate', {
		tires: 4,
		'pressures?': '*',
		'fromKpa?': 200,
		'toKpa?': 450,
		volumeL: 60,
		pumpFlowLMin: 70,
	}),
	read('wie lange reifen aufpumpen 225/75R16 von 2 bar auf 4 bar mit 50 l/min', 'inflate', {
		tireSize: '*',
		'pressures?': '*',
		'fromKpa?': 200,
		'toKpa?': 400,
		pumpFlowLMin: 50,
	}),

	smallTalk('danke!'),
	smallTalk('moin'),
	declined('kann ich die sicherung überbrücken'),
	notUnderstood('wann gibt es mittag'),
	// fuel
	read('5 kg flasche kocher 1 h am tag wie viele tage', 'fuel', {
		amountKg: 5,
		burners: [{ durationH: 1 }],
		'inCylinder?': true,
	}),
	read('11kg gasflasche heizung 4kw 6h halbe leistung, wie lange', 'fuel', {
		fuel: 'propane',
		amountKg: 11,
		burners: [{ powerW: 4000, durationH: 6, duty: 0.5 }],
		'inCylinder?': true,
	}),
	read('wieviel diesel für 3 nächte standheizung 2kw 10h', 'fuel', {
		fuel: 'diesel',
		wantedH: days(3),
		burners: [{ powerW: 2000, durationH: 10 }],
	}),
	read('kocher 150 g/h 1 h am tag 2 kg flasche', 'fuel', {
		amountKg: 2,
		burners: [{ burnKgH: 0.15, durationH: 1 }],
		'inCylinder?': true,
	}),
];
