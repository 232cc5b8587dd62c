import type { Phrasebook } from '../phrasebook.js';

export const alternator: Phrasebook = {
	'driving time': 'tiempo de conducción',
	'What is the capacity of the bank, in ampere-hours?': '¿Qué capacidad tiene el banco, en amperios-hora?',
	'{0} is not enough; {1}': '{0} no basta; {1}',
	'{0} is enough; {1}': '{0} basta; {1}',
	'output of the DC-DC charger': 'salida del cargador CC-CC',
	'alternator rating': 'corriente nominal del alternador',
	'load of the vehicle itself': 'consumo propio del vehículo',
	'house loads while driving': 'cargas de la vivienda en marcha',
	'state of charge to reach': 'estado de carga que se quiere alcanzar',
	'hot output at idle': 'salida en caliente al ralentí',
	'about half the rating, hot and at idle (practice)':
		'cerca de la mitad de la nominal, en caliente y al ralentí (práctica)',
	'voltage of the vehicle': 'tensión del vehículo',
	'a van; heavy trucks have 24 V': 'una furgoneta; los camiones pesados tienen 24 V',
	'efficiency of the DC-DC charger': 'rendimiento del cargador CC-CC',
	'usual for DC-DC chargers (practice)': 'habitual en cargadores CC-CC (práctica)',
	'battery heated': 'batería calefactada',
	'DC-DC charger': 'cargador CC-CC',
	isolator: 'relé separador',
	'how the bank is joined to the alternator': 'cómo se une el banco al alternador',
	'Which DC-DC charger (amps), or which alternator rating?':
		'¿Qué cargador CC-CC (amperios), o qué corriente nominal de alternador?',
	'largest charge current of the bank': 'corriente de carga máxima del banco',
	'Shorten the run or take a smaller charger.': 'Acorta el recorrido o toma un cargador menor.',
	'No cable in my tables carries {0} that far.': 'Ningún cable de mis tablas lleva {0} tan lejos.',
	'Take a larger bank, or a charger that can be set so low, and name it.':
		'Toma un banco mayor, o un cargador que se pueda ajustar tan bajo, e indícalo.',
	'The bank bears {0} of charging; DC-DC chargers begin at {1}.':
		'El banco admite {0} de carga; los cargadores CC-CC empiezan en {1}.',
	'Fit a larger alternator, or charge by sun and shore power.':
		'Monta un alternador mayor, o carga con sol y corriente exterior.',
	"An alternator of {0} spares too little for charging beside the vehicle's own loads; DC-DC chargers begin at {1}.":
		'Un alternador de {0} deja muy poco para cargar además de las cargas propias del vehículo; los cargadores CC-CC empiezan en {1}.',
	'engine, lights and blower of a van (practice)': 'motor, luces y ventilador de una furgoneta (práctica)',
	'to spare while driving': 'disponible en marcha',
	'to spare hot, at idle': 'disponible en caliente, al ralentí',
	'alternator current to spare while driving': 'corriente del alternador disponible en marcha',
	'alternator current to spare at idle': 'corriente del alternador disponible al ralentí',
	'charging current at idle': 'corriente de carga al ralentí',
	'largest DC-DC charger': 'mayor cargador CC-CC',
	'lowest voltage at the charger input': 'tensión más baja a la entrada del cargador',
	'with the engine on and the drop of the cable (practice)':
		'con el motor en marcha y la caída del cable (práctica)',
	'input of the charger': 'entrada del cargador',
	'current the charger takes': 'corriente que toma el cargador',
	'A lithium bank joined to the alternator by a relay or directly draws all the alternator gives: it overheats and can burn. Put a DC-DC charger between.':
		'Un banco de litio unido al alternador por un relé o directamente toma todo lo que da el alternador: se sobrecalienta y puede arder. Pon un cargador CC-CC en medio.',
	'The charger takes {0}; beside the vehicle the alternator can spare {1} for hours on end. It would run too hot.':
		'El cargador toma {0}; además del vehículo el alternador puede dar {1} durante horas. Se calentaría demasiado.',
	'Hot and at idle the alternator spares only {0}; the charger takes {1}. Do not charge for long at idle, or set the charger lower: the alternator overheats and the starter battery drains.':
		'En caliente y al ralentí el alternador solo deja {0}; el cargador toma {1}. No cargues mucho rato al ralentí, o ajusta más bajo el cargador: el alternador se sobrecalienta y la batería de arranque se descarga.',
	'Name a state of charge to start at and a higher one to reach.':
		'Indica un estado de carga de partida y uno más alto que alcanzar.',
	'From {0} to {1} there is nothing to charge.': 'De {0} a {1} no hay nada que cargar.',
	'Switch loads off while driving, or take a larger charger.':
		'Apaga cargas en marcha, o toma un cargador mayor.',
	'Nothing is left to charge with: {0} from the charger, {1} for the loads.':
		'No queda nada con que cargar: {0} del cargador, {1} para las cargas.',
	'drawn down as far as is usual (practice)': 'descargado hasta donde es habitual (práctica)',
	full: 'lleno',
	'into the bank': 'al banco',
	'state of charge where the current begins to fall': 'estado de carga donde la corriente empieza a bajar',
	'at constant current': 'a corriente constante',
	'at constant voltage': 'a tensión constante',
	'hours of driving': 'horas de conducción',
	'current into the bank': 'corriente hacia el banco',
	'up to {0} at full current': 'hasta {0} a corriente plena',
	'from the starter battery under the bonnet to a bank behind the seats, along the cable':
		'de la batería de arranque bajo el capó a un banco tras los asientos, a lo largo del cable',
	'takes {0}': 'toma {0}',
	', more than the alternator can spare': ', más de lo que el alternador puede dar',
	', more than the bank may be charged with': ', más de lo que admite el banco al cargar',
	'{0} at {1} up to {2}, then {3} with a falling current.':
		'{0} a {1} hasta {2}, después {3} con corriente decreciente.',
	'At {0} all the way; the current begins to fall only at {1}.':
		'A {0} todo el tiempo; la corriente solo empieza a bajar a {1}.',
	'Do not charge it at {0}; warm, it takes {1} of driving':
		'No la cargues a {0}; caliente, pide {1} de conducción',
	temperature: 'temperatura',
	'{0} of driving: {1} to {2} of {3} at {4}': '{0} de conducción: de {1} a {2} de {3} con {4}',
	', {0}, {1} A fuse': ', {0}, fusible de {1} A',
	'{0} DC-DC charger takes {1}{2}': 'un cargador CC-CC de {0} toma {1}{2}',
	"Name the alternator's rating to see whether it bears that.":
		'Indica la corriente nominal del alternador para ver si lo aguanta.',
	'It takes {0}; the alternator spares {1} while driving and {2} hot at idle.':
		'Toma {0}; el alternador deja {1} en marcha y {2} en caliente al ralentí.',
	'{0} DC-DC charger at most on {1}{2}': 'cargador CC-CC de {0} como máximo con {1}{2}',
	'Not directly: {0}': 'Directamente no: {0}',
	alternator: 'alternador',
	'{0} suits a {1} alternator{2}': '{0} va bien con un alternador de {1}{2}',
	'{0} is too much for a {1} alternator': '{0} es demasiado para un alternador de {1}',
};
