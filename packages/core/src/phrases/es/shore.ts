import type { Phrasebook } from '../phrasebook.js';

export const shore: Phrasebook = {
	'shore inlet rating': 'corriente nominal de la toma de la furgoneta',
	'outlet rating': 'corriente nominal del enchufe exterior',
	'cord or adapter rating': 'corriente nominal del cable o adaptador',
	'charging current of the charger': 'corriente de carga del cargador',
	'loads on the supply': 'cargas en el suministro',
	'supply voltage': 'tensión de suministro',
	'efficiency of the charger': 'rendimiento del cargador',
	'power factor of the charger': 'factor de potencia del cargador',
	'household outlet': 'enchufe doméstico',
	'ground-fault protection present': 'hay protección diferencial',
	'neutral joined to ground in the van': 'neutro unido a tierra en la furgoneta',
	'What is the supply rated: the outlet, pedestal or inlet, in amps?':
		'¿Qué amperios tiene el suministro: el enchufe, el poste o la toma?',
	'The {0} runs from the bank; on shore it counts through the charger.':
		'{0}: funciona del banco; con corriente exterior cuenta a través del cargador.',
	'cord or adapter made for less than the outlet': 'cable o adaptador hecho para menos que el enchufe',
	'no protection against residual current': 'sin protección contra corriente residual',
	'Mains is 100 to 250 V; banks are 12, 24 or 48 V.':
		'La red es de 100 a 250 V; los bancos son de 12, 24 o 48 V.',
	'I read {0}, which is neither a mains nor a bank voltage.':
		'Leo {0}, que no es tensión de red ni de banco.',
	'mains of the region': 'red de la región',
	'a rating as houses have; 80 % of it is used': 'un valor como en las casas; se usa el 80 %',
	'a supply made for vehicles': 'un suministro hecho para vehículos',
	'charging voltage': 'tensión de carga',
	'upper end for {0}, where the charger draws most': 'extremo alto para {0}, donde más toma el cargador',
	'usual for a charger of this size (practice)': 'habitual en un cargador de este tamaño (práctica)',
	'a corrected charger; one without correction has about 0.7 and draws a quarter more (practice)':
		'un cargador con corrección; uno sin ella tiene cerca de 0.7 y toma un cuarto más (práctica)',
	'charger at {0} A': 'cargador a {0} A',
	'limit of the supply': 'límite del suministro',
	'for hours on end': 'durante horas',
	'charger at full charging current': 'cargador a plena corriente de carga',
	'to use for hours on end': 'utilizable durante horas',
	'power for hours on end': 'potencia durante horas',
	'draw of the charger at full current': 'consumo del cargador a plena corriente',
	'smallest conductors of the supply cord': 'conductores mínimos del cable de suministro',
	'protection of people': 'protección de las personas',
	'An adapter does not make the outlet larger: the {0} inlet gives {1} here, and the breaker in the van will not trip at that.':
		'Un adaptador no agranda el enchufe: la toma de {0} da aquí {1}, y el disyuntor de la furgoneta no saltará con eso.',
	"The cord or adapter is made for {0}, but the breaker before it lets {1} through: it can burn. Use a cord of the outlet's rating.":
		'El cable o adaptador está hecho para {0}, pero el disyuntor anterior deja pasar {1}: puede arder. Usa un cable del valor del enchufe.',
	'The outlet is larger than the inlet: a main breaker of {0} must sit where the cord enters the van.':
		'El enchufe es mayor que la toma: donde entra el cable en la furgoneta debe haber un disyuntor principal de {0}.',
	'A 50 A supply of 120/240 V has two legs of 50 A; the sets here are for one leg. Spread the loads over both.':
		'Un suministro de 50 A a 120/240 V tiene dos fases de 50 A; los conjuntos de aquí son para una. Reparte las cargas entre las dos.',
	'Use one cord, no daisy chain, fully uncoiled; feel the plug after ten minutes: warm is a bad contact, stop.':
		'Usa un solo cable, sin encadenar, del todo desenrollado; toca la clavija a los diez minutos: si está tibia hay mal contacto, para.',
	'Without it a fault can kill whoever touches the van: fit {0} before the supply is used.':
		'Sin ella una falla puede matar a quien toque la furgoneta: monta {0} antes de usar el suministro.',
	'Nothing was said of protection against residual current; the van needs {0}.':
		'No se dijo nada de protección contra corriente residual; la furgoneta necesita {0}.',
	'On shore power the neutral is joined to ground at the source only. A second bond in the van puts load current on the ground and the body: remove it, or switch it so that it is made only while the inverter feeds.':
		'Con corriente exterior el neutro se une a tierra solo en la fuente. Una segunda unión en la furgoneta pone corriente de carga en la tierra y la carrocería: quítala, o conmútala para que solo exista mientras alimenta el inversor.',
	'supply rating': 'valor del suministro',
	'Unsafe as it stands: {0}': 'Así no es seguro: {0}',
	'Once that is put right: {0}. {1}': 'Cuando eso esté arreglado: {0}. {1}',
	'safety of the supply': 'seguridad del suministro',
	'{0} to use on {1}: {2}': '{0} utilizables con {1}: {2}',
	'80 % of the rating for what runs for hours. Name the loads to see what may run together.':
		'80 % del valor para lo que funciona durante horas. Indica las cargas para ver qué puede funcionar a la vez.',
	'all of it at once': 'todo a la vez',
	'The {0} may run: {1} on {2}': 'Puede funcionar: {0} ({1} con {2})',
	'All of it may run together: {0} on {1}': 'Todo puede funcionar a la vez: {0} con {1}',
	'What runs for hours counts 125 %; {0} may be used all the time.':
		'Lo que funciona durante horas cuenta 125 %; {0} se pueden usar todo el tiempo.',
	'{0} leaves {1} for hours on end.': '{0} deja {1} durante horas.',
	'The {0} ({1}) is too much even alone.': 'Incluso solo es demasiado: {0} ({1}).',
	'With {0} on, the charger must be off.': 'Con {0} en marcha, el cargador debe estar apagado.',
	'largest charger setting with nothing else on': 'mayor ajuste del cargador sin nada más encendido',
	'charging current': 'corriente de carga',
	'up to {0} alone': 'hasta {0} solo',
	'Only the {0} fullest of {1} sets are shown; ask again with the loads that matter.':
		'Solo se muestran los {0} conjuntos más llenos de {1}; pregunta otra vez con las cargas que importan.',
	'may run together': 'pueden funcionar a la vez',
	'charger setting with {0}': 'ajuste del cargador con {0}',
	'charger alone': 'cargador solo',
	'set to {0} at most': 'ajustado a {0} como máximo',
	'charger setting with nothing else on': 'ajuste del cargador sin nada más encendido',
	'; charger off': '; cargador apagado',
	'; charger at its full {0}': '; cargador a sus {0} plenos',
	'; charger set to {0} at most': '; cargador ajustado a {0} como máximo',
	'{0}, too much for {1} ({2} for hours)': '{0}, demasiado para {1} ({2} durante horas)',
	'All of it at once is {0} on a supply of {1}: the breaker trips, or a poor outlet or cord overheats.':
		'Todo a la vez son {0} con un suministro de {1}: salta el disyuntor, o se sobrecalienta un enchufe o cable malo.',
	'The {0} draws {1}, too much for this supply even alone: {2} is the most. Run it from the inverter, or at a lower setting if it has one.':
		'{0}: toma {1}, demasiado para este suministro incluso solo: {2} es lo máximo. Hazlo funcionar con el inversor, o en un ajuste menor si lo tiene.',
	'up to {0} it may run alone': 'hasta {0} puede funcionar solo',
	'switch off in this order': 'apagar en este orden',
	'{0} + charger': '{0} + cargador',
	'{0} + charger at {1}': '{0} + cargador a {1}',
	'charger alone at {0}': 'cargador solo a {0}',
	'Nothing of it may run on {0}': 'Nada de eso puede funcionar con {0}',
	'On {0} one at a time: {1}': 'Con {0} de uno en uno: {1}',
	'On {0}: {1}': 'Con {0}: {1}',
	'On {0}: {1} (+{2} more)': 'Con {0}: {1} (+{2} más)',
	'Not all together on {0}: one of {1} sets at a time':
		'No todo junto con {0}: cada vez uno de {1} conjuntos',
};
