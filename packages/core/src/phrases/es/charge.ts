import type { Phrasebook } from '../phrasebook.js';

export const charge: Phrasebook = {
	'charging time': 'tiempo de carga',
	'Charging time': 'Tiempo de carga',
	'output of the charger': 'salida del cargador',
	'power of the charger': 'potencia del cargador',
	'current of the charger': 'corriente del cargador',
	'loads while it charges': 'consumos mientras carga',
	'time there is': 'tiempo disponible',
	'a night on the hook-up (practice)': 'una noche conectado a la toma exterior (práctica)',
	'Switch loads off while it charges, or take a larger charger.':
		'Apaga consumos mientras carga, o pon un cargador mayor.',
	'Do not charge it at {0}; warm, it takes {1}': 'No la cargues a {0}; templada, tarda {1}',
	'{0} of {1} bears {2} of charging; chargers begin at {3}.':
		'{0} de {1} admiten {2} de carga; los cargadores empiezan en {3}.',
	'Name a charger that can be set so low, or a larger bank.':
		'Indica un cargador que se pueda ajustar tan bajo, o un banco mayor.',
	'Below a tenth of the capacity ({0}) a lead-acid bank in daily use is hardly ever full, and sulphates.':
		'Por debajo de una décima parte de la capacidad ({0}), un banco de plomo de uso diario casi nunca se llena y se sulfata.',
	'{0}: {1} to {2} of {3} at {4}': '{0}: de {1} a {2} de {3} con {4}',
	'{0} is too much for {1}: {2} at most': '{0} es demasiado para {1}: como máximo {2}',
	'It would take {0}.': 'Tardaría {0}.',
	'In {0} it gets to {1}.': 'En {0} llega a {1}.',
	"The bank bears {0} by its maker's figure.": 'El banco admite {0} según su fabricante.',
	'The bank bears {0}, the usual rate of {1}.': 'El banco admite {0}, lo usual en {1}.',
	'{0} charger at most; {1}': 'Cargador de {0} como máximo; {1}',
	'{0} charger for {1}; {2}': 'Cargador de {0} para {1}; {2}',
	'Not in {0}: {1} charger at most; {2}': 'No en {0}: cargador de {1} como máximo; {2}',
	'charge limit': 'límite de carga',
	time: 'tiempo',
};
