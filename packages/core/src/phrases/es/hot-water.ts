import type { Phrasebook } from '../phrasebook.js';

export const hotWater: Phrasebook = {
	'water heater': 'calentador de agua',
	'How much water does the heater hold?': '¿Cuánta agua cabe en el calentador?',
	'heating power': 'potencia de calentamiento',
	'voltage of the element': 'tensión de la resistencia',
	'a mains element unless a low-voltage one is named':
		'una resistencia de red, salvo que se indique una de baja tensión',
	mains: 'red',
	'what feeds it': 'qué lo alimenta',
	'hot water': 'agua caliente',
	'the usual thermostat (practice)': 'el termostato habitual (práctica)',
	'cold water': 'agua fría',
	'tank water in the cool season; colder in winter':
		'agua del depósito en época fresca; más fría en invierno',
	'shower temperature': 'temperatura de la ducha',
	'what most people shower at (practice)': 'con lo que se ducha la mayoría (práctica)',
	'flow of the shower': 'caudal de la ducha',
	'the most a water-saving head may pass': 'lo máximo que puede dejar pasar un cabezal de ahorro',
	'full tanks heated a day': 'depósitos llenos calentados al día',
	'one tank of hot water used a day (practice)': 'un depósito de agua caliente usado al día (práctica)',
	'hours a day on the timer': 'horas al día con el temporizador',
	'on for 2 h before it is needed (practice)': 'encendido 2 h antes de necesitarse (práctica)',
	'standby loss': 'pérdida en espera',
	'insulation of the heater': 'aislamiento del calentador',
	'foam about the tank (practice)': 'espuma alrededor del depósito (práctica)',
	'air around the heater': 'aire alrededor del calentador',
	'a cabinet in the living space': 'un armario en la zona habitable',
	'where its efficiency is unknown (practice)': 'donde no se conoce su rendimiento (práctica)',
	'an inverter left on for the heater (practice)': 'un inversor encendido para el calentador (práctica)',
	'left on': 'encendido siempre',
	'thermostatic mixing valve': 'válvula mezcladora termostática',
	'The hot temperature lies above the cold one.': 'La temperatura caliente está por encima de la fría.',
	'Hot water of {0} from cold of {1} needs no heater.':
		'Agua caliente a {0} desde fría a {1} no necesita calentador.',
	'The shower lies between cold and hot.': 'La ducha está entre la fría y la caliente.',
	'A shower of {0} needs no hot water: the cold is {1}.':
		'Una ducha a {0} no necesita agua caliente: la fría está a {1}.',
	'Batteries are 12, 24 or 48 V (up to 60 V); mains is 100 to 250 V.':
		'Las baterías son de 12, 24 o 48 V (hasta 60 V); la red es de 100 a 250 V.',
	'I read {0}, which is neither a battery nor a mains voltage.':
		'Leo {0}, que no es tensión de batería ni de red.',
	'Give more power, more insulation or a lower temperature.':
		'Da más potencia, más aislamiento o una temperatura más baja.',
	'{0} never brings it to {1}: standing loss alone is {2}.':
		'{0} nunca lo llevan a {1}: solo la pérdida en espera es {2}.',
	'{0} a tank; {1} min of shower': '{0} por depósito; {1} min de ducha',
	'{0} and {1} a tank; {2} min of shower': '{0} y {1} por depósito; {2} min de ducha',
	'heat stored in the water': 'calor guardado en el agua',
	'Left on it takes {0} a day, on a timer {1}.': 'Siempre encendido toma {0} al día, con temporizador {1}.',
	'Left on it takes {0} a day ({1} of what the bank gives), on a timer {2}.':
		'Siempre encendido toma {0} al día ({1} de lo que da el banco), con temporizador {2}.',
	'Left on it empties the bank: {0} a day, {1} there':
		'Siempre encendido vacía el banco: {0} al día, hay {1}',
	'Left on it takes {0} a day; the bank gives {1}': 'Siempre encendido toma {0} al día; el banco da {1}',
	'heat for one tank': 'calor para un depósito',
	'standing loss': 'pérdida en espera',
	'time to heat': 'tiempo de calentamiento',
	'hot share of the shower': 'parte caliente de la ducha',
	'minutes of shower': 'minutos de ducha',
	'a day left on': 'un día siempre encendido',
	'a day on the timer': 'un día con temporizador',
	'current of the element': 'corriente de la resistencia',
	'minutes of mixed shower from one tank': 'minutos de ducha mezclada por depósito',
	'mixed water from one tank': 'agua mezclada por depósito',
	'a day left on, from the bank': 'un día siempre encendido, del banco',
	'share of the bank for one tank': 'parte del banco por depósito',
	'share of the bank for a day left on': 'parte del banco por un día siempre encendido',
	'share of the bank for a day on the timer': 'parte del banco por un día con temporizador',
	'{0} a tank, {1} min of shower': '{0} por depósito, {1} min de ducha',
	'up to {0} tanks a day on the timer': 'hasta {0} depósitos al día con temporizador',
	'Water of {0} burns skin badly within {1} s. Fit a thermostatic mixing valve set to {2} or less.':
		'El agua a {0} quema gravemente la piel en {1} s. Monta una válvula mezcladora termostática ajustada a {2} o menos.',
	'Water kept below 60 °C (140 °F) can breed germs: heat it through once a week or drain it when not in use.':
		'El agua guardada por debajo de 60 °C (140 °F) puede criar gérmenes: caliéntala a fondo una vez por semana o vacíala cuando no se use.',
	'The water is cooler than the shower wanted; set it to at least {0}.':
		'El agua está más fría que la ducha deseada; ajústala a {0} como mínimo.',
	'Forgotten for a day it takes {0}; the bank gives {1}. A timer, or a bank of {2} ({3}), clears it.':
		'Olvidado un día toma {0}; el banco da {1}. Un temporizador, o un banco de {2} ({3}), lo resuelve.',
	'{0} tanks a day and the standing loss empty the bank; it needs shore power or fewer tanks.':
		'{0} depósitos al día y la pérdida en espera vacían el banco; hace falta corriente exterior o menos depósitos.',
	'The inverter must carry the element without pause: {0} from the bank; ask the inverter and wire topics for cable and fuse.':
		'El inversor debe llevar la resistencia sin pausa: {0} del banco; pregunta a los temas del inversor y del cable por cable y fusible.',
};
