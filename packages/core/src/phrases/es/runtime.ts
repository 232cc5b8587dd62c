import type { Phrasebook } from '../phrasebook.js';

export const runtime: Phrasebook = {
	'from full, as nothing was said': 'desde lleno, al no decirse nada',
	'state of charge to stop at': 'estado de carga en que se para',
	'capacity left by age': 'capacidad que queda por edad',
	'as new; a bank at the end of its life holds 80 %':
		'como nuevo; un banco al final de su vida guarda el 80 %',
	'What capacity has the bank (Ah or kWh)?': '¿Qué capacidad tiene el banco (Ah o kWh)?',
	'What is on meanwhile, with watts or amps?': '¿Qué está encendido mientras tanto, con vatios o amperios?',
	'Name a state of charge to start at and a lower one to stop at.':
		'Indica un estado de carga de partida y uno más bajo en que parar.',
	'From {0} to {1} there is nothing to draw.': 'De {0} a {1} no hay nada que sacar.',
	'{0} at {1} V on average, from {2} usable.': '{0} a {1} V de media, de {2} utilizables.',
	'{0}: {1} from {2} down to {3}': '{0}: {1} de {2} a {3}',
	'At this current the bank gives less than its rating (Peukert).':
		'Con esta corriente el banco da menos que su valor nominal (Peukert).',
	'{0} h ({1} days)': '{0} h ({1} días)',
	'average current': 'corriente media',
	'capacity as it is': 'capacidad tal como está',
	'capacity at this current': 'capacidad con esta corriente',
	'charge to be had': 'carga disponible (Ah)',
	time: 'tiempo',
	'time it lasts': 'tiempo que dura',
	'average power from the bank': 'potencia media del banco',
	'average current from the bank': 'corriente media del banco',
	'energy to be had': 'energía disponible',
	'{0} running its usual share of the time': '{0}, funcionando su parte habitual del tiempo',
	'{0} of these batteries': '{0} de estas baterías',
	'average power': 'potencia media',
	'up to {0} for a full day': 'hasta {0} para un día entero',
	'time it must last': 'tiempo que debe durar',
	'for a night': 'para una noche',
	'a night from dusk to breakfast (practice)': 'una noche, del anochecer al desayuno (práctica)',
	'energy of the time asked for': 'energía del tiempo pedido',
	'energy needed': 'energía necesaria',
	'state of charge afterwards': 'estado de carga después',
	'It lasts {0} at {1} on average.': 'Dura {0} a {1} de media.',
	'Enough for {0}: {1} of {2} usable': 'Basta para {0}: {1} de {2} aprovechables',
	'{0} is left after {1}.': 'Queda {0} después de {1}.',
	'{0} are needed for {1}; the bank gives {2}.': 'Hacen falta {0} para {1}; el banco de baterías da {2}.',
	'Too small for {0}: {1} needed, {2} usable':
		'Demasiado pequeño para {0}: hacen falta {1}, aprovechables {2}',
	'up to {0} on average for {1}': 'hasta {0} de media durante {1}',
	'I read "{0}" as a load, but it gives current.': 'He leído "{0}" como carga, pero da corriente.',
	'Name what is on, or ask for the charging time: "charge time 200 Ah AGM, charger 40 A".':
		'Indica qué está encendido, o pregunta por el tiempo de carga: «tiempo de carga 200 Ah AGM, cargador 40 A».',
};
