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
};
