import { asks, days, declined, ft, min, notUnderstood, type Phrasing, read, smallTalk } from './phrasing.js';

/** As typed in Spanish, with and without accents. */
export const spanish: readonly Phrasing[] = [
	// wiring
	read('qué cable para 30A 12V a 5 metros', 'wire', { currentA: 30, voltageV: 12, lengthM: 5 }),
	read('que seccion necesito nevera 5a 12v 6m ida y vuelta', 'wire', {
		currentA: 5,
		voltageV: 12,
		lengthM: 3,
	}),
	read('hola, que cable necesito para una bomba de 8 amperios 12v a 4 m', 'wire', {
		currentA: 8,
		voltageV: 12,
		lengthM: 4,
		'motor?': true,
	}),
	read('sección para 60A 24V 3 metros', 'wire', { currentA: 60, voltageV: 24, lengthM: 3 }),
	read('cable 16mm2 vale para 50A 12V 4m?', 'wire', {
		size: '16 mm²',
		currentA: 50,
		voltageV: 12,
		lengthM: 4,
	}),
	read('cable para 800 vatios a 12 voltios 2 metros', 'wire', { powerW: 800, voltageV: 12, lengthM: 2 }),
	read('calibre para 20A 12V 12 pies', 'wire', { currentA: 20, voltageV: 12, lengthM: ft(12) }),
	read('cable motor 40a 12v 3m compartimento del motor', 'wire', {
		currentA: 40,
		voltageV: 12,
		lengthM: 3,
		engineBay: true,
		'motor?': true,
	}),
	asks('qué cable necesito para la nevera', 'wire'),
	read('fusible para cable de 16mm2 con 60A', 'fuse', { size: '16 mm²', currentA: 60 }),
	read('que fusible pongo en cable de 6mm2 para 25 A 12V', 'fuse', {
		size: '6 mm²',
		currentA: 25,
		bankV: 12,
	}),
	read('fusible principal 70mm2 200A 12V 300Ah litio', 'fuse', {
		isMain: true,
		size: '70 mm²',
		currentA: 200,
		'bankV|unitV': 12,
		unitAh: 300,
		chemistry: 'lifepo4',
	}),
	read('cortocircuito 200Ah litio 12V con 2 m de 50mm2', 'short-circuit', {
		unitAh: 200,
		chemistry: 'lifepo4',
		'bankV|unitV': 12,
		lengthM: 2,
		size: '50 mm²',
	}),
	read('distribución 12v: batería-panel 35mm2 2 m, panel-nevera 4mm2 6 m 5A', 'network', {
		voltageV: 12,
		parts: [
			{ from: '*', to: '*', size: '35 mm²', lengthM: 2 },
			{ from: '*', to: '*', size: '4 mm²', lengthM: 6, currentA: 5 },
		],
	}),

	// energy
	read('consumo diario: nevera 50W 24h 40%, luces 20W 4h, portátil 60W 3h', 'budget', {
		loads: [
			{ powerW: 50, durationH: 24, duty: 0.4 },
			{ powerW: 20, durationH: 4 },
			{ powerW: 60, durationH: 3 },
		],
	}),
	read('cuanto consumo al dia con nevera 45w 24h y bomba 60w 20 min', 'budget', {
		loads: [
			{ powerW: 45, durationH: 24 },
			{ powerW: 60, durationH: min(20) },
		],
	}),
	read('bateria para 100 Ah al dia, 2 dias, litio', 'battery', {
		chargePerDayAh: 100,
		autonomyH: days(2),
		chemistry: 'lifepo4',
	}),
	read('batería para 1,5 kWh al día 3 días sin sol', 'battery', { energyPerDayWh: 1500, autonomyH: days(3) }),
	read('banco de baterías 4 x 100ah 12v en serie litio', 'battery', {
		unitCount: 4,
		unitAh: 100,
		'unitV|bankV': 12,
		layout: 'series',
		chemistry: 'lifepo4',
	}),
	asks('qué batería necesito', 'battery'),
	read('cuanto dura 200ah litio con nevera 45w y luces 20w', 'runtime', {
		unitAh: 200,
		chemistry: 'lifepo4',
		loads: [{ powerW: 45 }, { powerW: 20 }],
	}),
	read('aguanta 100ah litio la nevera 45w toda la noche', 'runtime', {
		unitAh: 100,
		chemistry: 'lifepo4',
		loads: [{ powerW: 45 }],
		overnight: true,
	}),
	read('cuánto aguanta una batería de 100ah agm con 5 amperios', 'runtime', {
		unitAh: 100,
		chemistry: 'agm',
		loads: [{ currentA: 5 }],
	}),
	read('cuantas horas dura 100ah litio con ventilador 30w', 'runtime', {
		unitAh: 100,
		chemistry: 'lifepo4',
		loads: [{ powerW: 30 }],
	}),
	read('placas 2 x 200w sevilla en julio', 'solar', { panels: 2, panelW: 200, place: '*', month: 7 }),
	read('producción solar 400W Madrid enero', 'solar', { 'panelW|arrayW': 400, place: '*', month: 1 }),
	read('cuanto dan 3 paneles solares de 150w en Granada en marzo', 'solar', {
		panels: 3,
		panelW: 150,
		place: '*',
		month: 3,
	}),
	read('regulador solar para 2 x 200W en serie voc 24V en Burgos', 'array', {
		panels: 2,
		panelW: 200,
		joined: 'series',
		vocV: 24,
		place: '*',
	}),
	read('cuánto tarda en cargar 200ah agm con cargador 20A', 'charge', {
		unitAh: 200,
		chemistry: 'agm',
		chargerA: 20,
	}),
	read('qué cargador para 300ah litio toda la noche', 'charge', {
		unitAh: 300,
		chemistry: 'lifepo4',
		overnight: true,
	}),
	read('alternador 180A, cargador dcdc 50A, cable 6 m', 'alternator', {
		'link?': 'converter',
		alternatorA: 180,
		chargerA: 50,
		lengthM: 6,
	}),
	read('cuantas horas conduciendo con dcdc 40A de 30% a 90% 200ah', 'alternator', {
		'link?': 'converter',
		chargerA: 40,
		fromSoc: 0.3,
		toSoc: 0.9,
		unitAh: 200,
	}),
	read('enchufe 10A 230V: hervidor 2000W y cargador 30A a la vez?', 'shore', {
		outletA: 10,
		supplyV: 230,
		loads: [{ powerW: 2000 }],
		chargerA: 30,
	}),
	read('camping 16A 230V calefactor 1500W microondas 1200W al mismo tiempo', 'shore', {
		'outletA|inletA': 16,
		supplyV: 230,
		loads: [{ powerW: 1500 }, { powerW: 1200 }],
		'household?': false,
	}),
	read('inversor 2000w 12v cable 1,5 m', 'inverter', { ratedW: 2000, bankV: 12, lengthM: 1.5 }),
	read('qué inversor para microondas 1000W y cafetera 800W 24V', 'inverter', {
		loads: [{ powerW: 1000 }, { powerW: 800 }],
		bankV: 24,
	}),
	read('fusible para inversor de 3000w 24v', 'inverter', { ratedW: 3000, bankV: 24 }),
	read('simular 200Ah 400W placas Sevilla agosto 1 kWh al día', 'simulate', {
		unitAh: 200,
		'panelW|arrayW': 400,
		place: '*',
		month: 8,
		needWh: 1000,
	}),

	// water
	read('deposito limpias 100 l grises 80 l 4 personas', 'tank', { freshL: 100, grayL: 80, people: 4 }),
	read('agua limpia 90 litros, aguas grises 60 litros, 2 personas, ducha 3 minutos', 'tank', {
		freshL: 90,
		grayL: 60,
		people: 2,
		showerH: min(3),
	}),
	read('cuantos dias duran 120 l de agua para 3 personas sin ducha', 'tank', {
		freshL: 120,
		people: 3,
		showers: false,
	}),
	asks('cuanta agua necesitan 2 personas', 'tank', { people: 2 }),
	read('pérdida de presión tubo 16 mm 8 m 6 l/min', 'pipe', { pipe: '*', lengthM: 8, flowLMin: 6 }),
	read('tubería 1/2 6 metros 8 l/min 4 codos bomba 3 bar', 'pipe', {
		pipe: '*',
		lengthM: 6,
		flowLMin: 8,
		elbows: 4,
		pumpKPa: 300,
	}),
	read('acumulador 1 litro precarga 1,4 bar arranque 1,6 bar parada 2,8 bar', 'accumulator', {
		volumeL: 1,
		prechargeKPa: 140,
		cutInKPa: 160,
		cutOutKPa: 280,
	}),
	read('calentador de agua 10 litros 800W de 12 C a 60 C', 'hot-water', {
		volumeL: 10,
		powerW: 800,
		coldC: 12,
		hotC: 60,
	}),
	read('agua caliente 15 l 1000 w inversor batería 200Ah 12V', 'hot-water', {
		volumeL: 15,
		powerW: 1000,
		supply: 'inverter',
		bankAh: 200,
		bankV: 12,
	}),
	read('vaciar 80 l por válvula de 38 mm', 'drain', { volumeL: 80, valveMm: 38 }),
	read('se congela un deposito de 80 l a -8 grados', 'freeze', {
		volumeL: 80,
		outsideC: -8,
		'what?': 'tank',
	}),
	read('se helara el tanque de 60 litros a -12 C con 20 mm de aislamiento', 'freeze', {
		volumeL: 60,
		outsideC: -12,
		insulationMm: 20,
		'what?': 'tank',
	}),
	read('manta térmica para depósito de 100 l a -5 C', 'freeze', {
		volumeL: 100,
		outsideC: -5,
		'what?': 'tank',
	}),

	// climate
	read('calefaccion furgoneta larga -10 C', 'heat', { wheelbase: 'long', outsideC: -10 }),
	read('qué calefacción para furgoneta media -5 C 30 mm de corcho', 'heat', {
		wheelbase: 'medium',
		outsideC: -5,
		insulationMm: 30,
		material: 'cork',
	}),
	read('calefactor diésel furgo corta techo alto -15 grados', 'heat', {
		wheelbase: 'short',
		roof: 'high',
		outsideC: -15,
		'fuel?': 'diesel',
	}),
	read('pérdida de calor furgoneta larga techo alto -10 C fuera 20 C dentro', 'heat', {
		wheelbase: 'long',
		roof: 'high',
		outsideC: -10,
		insideC: 20,
	}),
	asks('qué calefacción necesito', 'heat'),
	read('aire acondicionado furgo larga blanca 40 C', 'cool', {
		wheelbase: 'long',
		paint: 'white',
		outsideC: 40,
	}),
	read('aire acondicionado para furgoneta mediana negra 38 grados 2 personas', 'cool', {
		wheelbase: 'medium',
		paint: 'black',
		outsideC: 38,
		people: 2,
	}),
	read('condensación 2 personas 5 C fuera', 'moisture', { people: 2, outsideC: 5 }),
	read('humedad con 3 personas a -2 C cocinando 1 hora con gas', 'moisture', {
		people: 3,
		outsideC: -2,
		cookingH: 1,
		stove: 'gas',
	}),
	read('ventilación extractor 400 m3/h furgoneta larga', 'vent', { airM3H: 400, wheelbase: 'long' }),

	// weight and structure
	read(
		'carga útil furgoneta larga mma 3500 kg, agua 100 L atrás, batería 50 kg en medio, 2 personas',
		'payload',
		{
			wheelbase: 'long',
			gvwrKg: 3500,
			items: [
				{ volumeL: 100, 'fluid?': 'water', zone: 'back' },
				{ massKg: 50, zone: 'middle' },
			],
			people: 2,
		},
	),
	read('indice de carga 112 eje trasero 2000 kg', 'tire', { loadIndex: 112, axleLoadKg: 2000 }),
	read('neumáticos índice de carga 121, eje trasero 2400 kg', 'tire', { loadIndex: 121, axleLoadKg: 2400 }),
	read('tornillos M8 para nevera de 40 kg, 80 cm de alto, 50 cm a lo largo, 45 cm a lo ancho', 'restraint', {
		boltSize: 'M8',
		massKg: 40,
		heightM: 0.8,
		alongM: 0.5,
		acrossM: 0.45,
	}),
	asks('cuantos tornillos para una batería de 30 kg', 'restraint', { massKg: 30 }),
	read('viga 40x40x3 aluminio luz 1,2 m 100 kg', 'beam', {
		section: '40x40x3',
		material: '6063-T5',
		spanM: 1.2,
		loads: [{ massKg: 100 }],
	}),
	read('amortiguador de gas tapa 14 kg 0,9 m de largo, brazo 0,15 m', 'strut', {
		massKg: 14,
		lidLengthM: 0.9,
		armM: 0.15,
	}),
	read('cuanto tarda inflar 4 ruedas de 1,8 a 4 bar bomba 70 l/min 60 l', 'inflate', {
		tires: 4,
		'pressures?': '*',
		'fromKpa?': 180,
		'toKpa?': 400,
		pumpFlowLMin: 70,
		volumeL: 60,
	}),
	asks('cuanto tarda inflar 4 ruedas de 1,8 a 4 bar bomba 70 l/min', 'inflate', {
		tires: 4,
		'pressures?': '*',
		'fromKpa?': 180,
		'toKpa?': 400,
		pumpFlowLMin: 70,
	}),

	smallTalk('gracias!'),
	smallTalk('hola, buenos días'),
	declined('puedo puentear el fusible'),
	notUnderstood('quién viene mañana'),
	// fuel
	read('cuánto dura una bombona de 11 kg con calefacción de 4 kW 8 horas al día', 'fuel', {
		amountKg: 11,
		burners: [{ powerW: 4000, durationH: 8 }],
		'inCylinder?': true,
	}),
	read('cuanto gasoil para 7 dias con calefacción de 2 kW 10 horas', 'fuel', {
		fuel: 'diesel',
		wantedH: 168,
		burners: [{ powerW: 2000, durationH: 10 }],
	}),
	read('bombona 12.5 kg butano cocina 1 hora', 'fuel', {
		fuel: 'butane',
		amountKg: 12.5,
		burners: [{ durationH: 1 }],
		'inCylinder?': true,
	}),
];
