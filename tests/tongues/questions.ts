// Questions as people of a shop type them in Spanish and German, at least two of each for each topic.

export const questions: Readonly<
	Record<string, { readonly es: readonly string[]; readonly de: readonly string[] }>
> = {
	accumulator: {
		es: [
			'acumulador de 2 L, precarga 1.4 bar, arranque 1.5 bar y paro 2.8 bar',
			'qué acumulador necesito para la bomba',
		],
		de: [
			'Druckspeicher 2 L Vordruck 1.4 bar ein 1.5 bar aus 2.8 bar',
			'welchen Druckspeicher brauche ich für die Pumpe',
		],
	},
	alternator: {
		es: [
			'alternador 150A, cargador dcdc 40A, cable 5 m',
			'cuántas horas de conducción con cargador de 50A para 200 Ah, de 40% a 90%',
		],
		de: [
			'Ladebooster 45A, 230Ah LiFePO4 von 30% bis 100%, wie lange fahren',
			'Lichtmaschine 90A und Ladebooster 60A, geht das',
		],
	},
	array: {
		es: [
			'regulador para 4 paneles de 200W, voc 22.5V, isc 11.4A, en Madrid',
			'paneles de 400 W en serie con regulador de 30 V, qué tal en invierno',
		],
		de: [
			'Solarregler 2 x 200W in Reihe voc 24V Regler 75V 20A München',
			'welcher Laderegler für 3 Module mit 100W in Berlin',
		],
	},
	battery: {
		es: ['batería para nevera 60W 24h 40%, luces 20W 5h, 2 días', 'qué batería necesito para 100 Ah al día'],
		de: [
			'welche Batterie für 80 Ah am Tag, 2 Tage, 5 °C, AGM',
			'Batterie 2 x 100Ah 12V LiFePO4 bei -5 °C laden',
		],
	},
	beam: {
		es: ['larguero de tubo 40x40x2, luz 1.2 m, 120 kg repartidos', 'qué aguanta una viga de aluminio'],
		de: [
			'Träger Rohr 40x40x2, Stützweite 1.2 m, 120 kg gleichmäßig verteilt',
			'welche Last trägt die Schiene mit 1 m',
		],
	},
	budget: {
		es: [
			'consumo diario nevera 60W 24h 40%, luces 15W 5h, microondas 1000W 15min',
			'cuánto consumo al día con portátil 60W',
		],
		de: [
			'Verbrauch am Tag Kühlschrank 50W 24h 40%, Licht 15W 5h, Laptop 60W 3h',
			'welchen Tagesverbrauch haben die Verbraucher',
		],
	},
	charge: {
		es: [
			'cuánto tarda en cargar 200 Ah AGM con cargador 20A desde 50%',
			'qué cargador para 400 Ah LiFePO4 en una noche',
			'cargador 15A para 400 Ah AGM en 5 h',
		],
		de: [
			'Ladezeit 280 Ah mit 30A Ladegerät von 30% bis 90%',
			'Ladegerät 60A an 200 Ah AGM',
			'Ladegerät 40A 200 Ah LiFePO4 bei -5 °C',
		],
	},
	cool: {
		es: [
			'aire acondicionado para furgoneta larga con 38 C fuera, batería de 400 Ah',
			'qué aire acondicionado necesito con 40 C fuera',
		],
		de: [
			'Klimaanlage langer Radstand 36 C außen 48 V Batterie 100 Ah',
			'welche Klimaanlage brauche ich bei 38 C',
		],
	},
	drain: {
		es: [
			'vaciar 80 L de depósito, 20 cm de profundidad, válvula de 25 mm',
			'cuánto tarda en vaciarse el depósito de 75 L',
		],
		de: ['Tank 80 L entleeren Ventil 25 mm Tiefe 20 cm', 'wie lange dauert es, 75 L abzulassen'],
	},
	freeze: {
		es: [
			'se congela el depósito de 80 L a -12 C, con manta de 60 W',
			'tubería de 3 m a -5 C, cuándo se congela',
		],
		de: ['friert ein 80 L Wassertank bei -12 C ein, 60 W Heizmatte', 'wann gefriert der Tank bei -8 C'],
	},
	fuel: {
		es: [
			'cuánto dura una bombona de butano de 12,5 kg con cocina 1 h y calefacción de 4 kW 8 horas al día a -5 grados',
			'cuánto gasoil para 7 días con calefacción de 2 kW 10 horas',
			'cuánto propano para un fin de semana, calefacción 4 kW 8 h al 50%, cocina 1 h',
			'basta una bombona de 5 kg para 6 días con calefacción de 4 kW 8 h',
			'cuánto propano',
		],
		de: [
			'5 kg Gasflasche, Kocher 1 h am Tag, wie viele Tage',
			'wie viel Diesel für 7 Tage mit Standheizung 2 kW 10 h',
			'wie lange reicht 10 L Diesel mit Heizung 2 kW',
			'reicht eine 11 kg Flasche für 10 Tage, Heizung 4 kW 6 h bei halber Leistung und Kocher 1 h',
			'wie viel Propan',
		],
	},
	fuse: {
		es: ['qué fusible para 20A con cable de 4 mm2 a 12 V', 'fusible de 60A para cable de 6 mm2, vale'],
		de: ['welche Sicherung für 60A mit 16mm2 bei 24V', 'Hauptsicherung 300A für 70 mm2, 12V 300Ah LiFePO4'],
	},
	heat: {
		es: ['calefacción para furgoneta larga a -10 C con 30 mm de aislamiento', 'qué calefactor necesito'],
		de: ['Heizung langer Radstand -15 C 40 mm Dämmung', 'welche Heizung brauche ich bei -10 C'],
	},
	'hot-water': {
		es: [
			'calentador de 10 L con 800 W de 10 C a 60 C',
			'cuánta energía toma el agua caliente de un calentador de 10 L con 500 W y batería de 200 Ah',
		],
		de: ['Boiler 10 L mit 800 W von 10 C auf 60 C', 'wie lange braucht das Warmwasser im Boiler'],
	},
	inflate: {
		es: [
			'inflar neumáticos LT225/75R16 de 25 a 65 psi con compresor de 70 L/min',
			'cuánto tardo en inflar los neumáticos',
		],
		de: [
			'Reifen LT225/75R16 aufpumpen von 25 auf 65 psi mit Kompressor 70 L/min',
			'wie lange pumpt der Kompressor mit 50 L/min',
		],
	},
	inverter: {
		es: [
			'qué cable necesito para un inversor de 2000 W a 12 V',
			'inversor para microondas 1000W y hervidor 1500W a 12 V',
		],
		de: [
			'welches Kabel für Wechselrichter 2000 W bei 24 V',
			'Wechselrichter für Mikrowelle 1000W und Wasserkocher 1500W',
		],
	},
	moisture: {
		es: [
			'cuánta ventilación para 2 personas con -5 C fuera para que siga seco',
			'condensación con 3 personas y 0 C fuera, 30 mm de aislamiento',
		],
		de: [
			'wie viel lüften für 2 Personen bei -5 C damit es trocken bleibt',
			'Kondenswasser bei 0 C außen mit 3 Personen',
		],
	},
	network: {
		es: [
			'distribución 24V: battery-panel 35mm2 1.5 m; panel-bomba 2.5mm2 6 m; bomba 8A',
			'qué tensión llega a la nevera',
		],
		de: [
			'Verteilung 24V: battery-panel 35mm2 1.5 m; panel-pumpe 2.5mm2 6 m; pumpe 8A',
			'welche Spannung kommt am Kühlschrank an',
		],
	},
	payload: {
		es: [
			'peso: furgoneta larga, GVWR 3500 kg, depósito de agua 100 L atrás, 2 personas',
			'cuánta carga me queda',
		],
		de: [
			'Gewicht: langer Radstand, GVWR 3500 kg, Wassertank 100 L hinten, 2 Personen',
			'wie viel Zuladung bleibt mir',
		],
	},
	pipe: {
		es: ['tubería de agua de 1/2 in para la ducha, 5 m desde la bomba', 'qué tubería necesito para el grifo'],
		de: ['Wasserrohr 1/2 in für die Dusche, 5 m von der Pumpe', 'welches Rohr brauche ich für den Hahn'],
	},
	restraint: {
		es: [
			'pernos para sujetar 60 kg de batería, 30 cm de altura, separación 40 cm y 30 cm',
			'cómo sujeto un armario de 40 kg',
		],
		de: [
			'Schrauben für Batterie 60 kg, Höhe 30 cm, Abstand längs 40 cm, quer 30 cm',
			'wie befestige ich einen Schrank mit 40 kg',
		],
	},
	runtime: {
		es: ['cuánto dura la batería de 200 Ah con nevera de 45W', 'cuántas horas con 100 Ah y 10 A'],
		de: [
			'wie lange reicht die Batterie 200 Ah mit Kühlschrank 45W',
			'wie lange reicht die Batterie mit 100 Ah',
		],
	},
	shore: {
		es: [
			'toma de corriente exterior 16A, qué puede funcionar: aire acondicionado 1200W, hervidor 2000W',
			'enchufe de 10A con hervidor de 2200W',
		],
		de: [
			'Landanschluss 16A, was darf laufen: Klimaanlage 1200W, Wasserkocher 2000W',
			'Landstrom 10A mit Wasserkocher 2200W und Ladegerät 30A',
		],
	},
	'short-circuit': {
		es: ['corriente de cortocircuito de la batería de 12 V 300 Ah LiFePO4', 'qué cortocircuito da el banco'],
		de: [
			'Kurzschlussstrom der Batterie 24 V 280 Ah LiFePO4 mit Kabel 35 mm2 2 m',
			'welchen Kurzschlussstrom hat die Batterie',
		],
	},
	simulate: {
		es: [
			'simulación de 200 Ah con 400 W de paneles en Madrid en diciembre, nevera 45W 24h 40%',
			'simular el banco con 300 W de paneles',
		],
		de: [
			'Simulation 200 Ah mit 400 W Solar in München im Dezember, Kühlschrank 45W 24h 40%',
			'Simulation der Batterie über ein Jahr',
		],
	},
	solar: {
		es: [
			'cuánta energía dan 400 W de paneles en Madrid en diciembre',
			'qué paneles necesito para 1 kWh al día en Sevilla',
		],
		de: [
			'wie viel Ertrag bringen 600 W Solar in München im Dezember',
			'wie viel Solar brauche ich für 1 kWh am Tag in Hamburg',
		],
	},
	strut: {
		es: [
			'resorte de gas para tapa de 12 kg y 60 cm, resorte a 20 cm',
			'qué resorte de gas necesito para la tapa',
		],
		de: [
			'Gasfeder für Klappe 12 kg und 60 cm, Feder bei 20 cm',
			'welche Gasfeder brauche ich für die Klappe',
		],
	},
	tank: {
		es: [
			'cuántos días duran 100 L de agua limpia y 60 L de aguas grises con 2 personas',
			'cuánta agua necesito para 2 personas',
		],
		de: [
			'wie viele Tage reichen 100 L Frischwasser und 60 L Abwasser für 2 Personen',
			'wie lange reicht das Wasser für 2 Personen',
		],
	},
	tire: {
		es: [
			'neumáticos de índice de carga 116 con eje trasero de 2240 kg',
			'presión de 4.5 bar a 20 C, cuánto baja con -10 C',
		],
		de: [
			'Reifen Lastindex 116, Achslast hinten 2600 kg',
			'Reifendruck 4.5 bar bei 20 C, wie viel ist es bei -10 C',
		],
	},
	vent: {
		es: [
			'ventilador de techo de 1500 m3/h con entrada de 20x30 cm',
			'qué entrada de aire necesita un ventilador',
		],
		de: ['Dachlüfter 1500 m3/h mit Zuluft 20x30 cm', 'welche Zuluft braucht der Lüfter'],
	},
	wire: {
		es: ['qué cable necesito para nevera 5 A a 12 V, 6 m', 'sección para 40A 12V'],
		de: [
			'welcher Querschnitt für Kühlschrank 5 A bei 12 V und 6 m',
			'Kabel 16 mm2 für 100A 12V 3 m, reicht das',
		],
	},
};
