import type { Phrasebook } from '../phrasebook.js';

export const battery: Phrasebook = {
	'time between charges': 'tiempo entre cargas',
	'depth of discharge': 'profundidad de descarga',
	'lowest temperature of the battery': 'temperatura más baja de la batería',
	'ageing factor': 'factor de envejecimiento',
	'design margin': 'margen de diseño',
	'Peukert exponent': 'exponente de Peukert',
	'charge current': 'corriente de carga',
	'steady discharge current': 'corriente de descarga continua',
	'inverter power': 'potencia del inversor',
	'How much is used a day (Ah or Wh), or which loads?': '¿Cuánto se usa al día (Ah o Wh), o qué cargas?',
	'What capacity has one battery (Ah)?': '¿Qué capacidad tiene una batería (Ah)?',
	'Keep the battery inside or heat it, and name the temperature it then has.':
		'Guarda la batería dentro o caliéntala, e indica la temperatura que tiene entonces.',
	'At {0} my tables for {1} end: hardly any capacity is left and it may freeze.':
		'A {0} se acaban mis tablas para {1}: casi no queda capacidad y puede congelarse.',
	'capacity needed': 'capacidad necesaria',
	'temperature factor': 'factor de temperatura',
	'days it lasts': 'días que dura',
	'inside the heated living space, where the capacity is rated':
		'dentro de la zona habitable calefactada, donde se mide la capacidad',
	'usual for {0} that shall last (practice)': 'habitual en {0} que deba durar (práctica)',
	'so that it still serves at 80 % of its capacity, the end of its life':
		'para que aún sirva al 80 % de su capacidad, el final de su vida',
	'Give one of them, whichever you trust.': 'Da uno de los dos, el que sea fiable.',
	'{0} and {1} a day contradict each other at {2} V.': '{0} y {1} al día se contradicen a {2} V.',
	'I read both a daily figure and a list of loads.': 'Leo a la vez una cifra diaria y una lista de cargas.',
	'Give one of them: the daily figure, or all loads.':
		'Da una de las dos: la cifra diaria, o todas las cargas.',
	'charged every day; name the days it must last without':
		'se carga cada día; indica los días que debe durar sin carga',
	'1 day': '1 día',
	'{0}: {1} at {2} V, {3}': '{0}: {1} a {2} V, {3}',
	'Do not charge it at {0}': 'No la cargues a {0}',
	'It must be warmer than freezing before any charge.':
		'Antes de cualquier carga debe estar por encima de la congelación.',
	'Joined as {0}. Name what is used a day to see how long it lasts.':
		'Unido así: {0}. Indica cuánto se usa al día para ver cuánto dura.',
	'too small': 'demasiado pequeño',
	'{0} of {1} need {2} at {3} V; it has {4}, which lasts {5}.':
		'{0} de {1} piden {2} a {3} V; tiene {4}, que dura {5}.',
	'The bank has {0}; {1} are needed.': 'El banco tiene {0}; se necesitan {1}.',
	'{0} is enough: {1} of {2}': '{0} es suficiente: {1} de {2}',
	'{0} is too small: {1} of {2}': '{0} es demasiado pequeño: {1} de {2}',
	capacity: 'capacidad',
	'{0} of {1}, with depth of discharge, cold and ageing counted. {2} gives {3}, joined as {4}.':
		'{0} de {1}, con profundidad de descarga, frío y envejecimiento contados. {2} da {3}, unido así: {4}.',
	'{0} at {1} V for {2} of {3} ({4} needed)': '{0} a {1} V para {2} de {3} (se necesitan {4})',
	'{0} of {1} at {2} V for {3} of {4}': '{0} de {1} a {2} V para {3} de {4}',
	'charge between two full charges': 'carga entre dos cargas completas',
	'capacity at the rated current': 'capacidad a la corriente nominal',
	'capacity at the current drawn': 'capacidad a la corriente tomada',
	'capacity of the bank': 'capacidad del banco',
	'energy of the bank': 'energía del banco',
	'rated voltage': 'tensión nominal',
	batteries: 'baterías',
	'largest charge current': 'corriente de carga máxima',
	'largest steady discharge current': 'corriente de descarga continua máxima',
	'Charge it with {0} at most; {1} is too much': 'Cárgalo con {0} como máximo; {1} es demasiado',
	'It gives {0} at most; {1} is too much': 'Da {0} como máximo; {1} es demasiado',
	'current of the inverter at the end of discharge': 'corriente del inversor al final de la descarga',
	'current of the inverter at low battery': 'corriente del inversor con la batería baja',
	'energy to put back for each day': 'energía que hay que reponer por cada día',
	'up to {0} a day': 'hasta {0} al día',
	'about {0}': 'unos {0}',
	'about {0}, too little for {1}': 'unos {0}, demasiado poco para {1}',
};
