import type { Phrasebook } from '../phrasebook.js';

export const inverter: Phrasebook = {
	'continuous power of the inverter': 'potencia continua del inversor',
	'surge power of the inverter': 'potencia de pico del inversor',
	'voltage at which it switches off': 'tensión a la que se desconecta',
	'hours a day it is on': 'horas al día que está encendido',
	'beside the bank, as short as can be': 'junto al banco, lo más corto posible',
	'in a closed space': 'en un espacio cerrado',
	'Which inverter (watts), or what must it run?': '¿Qué inversor (vatios), o qué debe alimentar?',
	'Name one; size the other by itself.': 'Indica uno; dimensiona el otro aparte.',
	'I read two inverters: {0} and {1}.': 'Leo dos inversores: {0} y {1}.',
	'Leave out what need not run at the same time, or put it on shore power.':
		'Quita lo que no deba funcionar a la vez, o ponlo en la corriente exterior.',
	"All of it at once is {0} ({1} for a moment), more than a van's inverter gives.":
		'Todo a la vez son {0} ({1} un momento), más de lo que da un inversor de furgoneta.',
	'Name the cut-off at the bank, for instance 10.5 V on 12 V.':
		'Indica el corte en el banco, por ejemplo 10.5 V en 12 V.',
	"It can't switch off at {0} on a bank of {1} V.": 'No puede desconectarse a {0} con un banco de {1} V.',
	'Take a bank of 24 or 48 V, or a smaller inverter.': 'Toma un banco de 24 o 48 V, o un inversor menor.',
	'Take a smaller inverter.': 'Toma un inversor menor.',
	'{0} at {1} V draws {2}: no cable and fuse in my tables do that.':
		'{0} a {1} V toman {2}: ningún cable y fusible de mis tablas sirven.',
	'the safe side: LiFePO4 at 2.5 V a cell is lower than lead-acid at 1.75 V a cell':
		'el lado seguro: LiFePO4 a 2.5 V por celda queda más bajo que plomo-ácido a 1.75 V por celda',
	'end of discharge of {0}': 'fin de la descarga de {0}',
	'running at once': 'en marcha a la vez',
	'for a moment': 'un momento',
	'current from the bank at its lowest voltage': 'corriente del banco a su tensión más baja',
	'for cable and fuse': 'para cable y fusible',
	'current from the bank at low battery': 'corriente del banco con la batería baja',
	'current for cable and fuse': 'corriente para cable y fusible',
	'energy a day with nothing connected': 'energía al día sin nada conectado',
	'heat it gives off at full load': 'calor que desprende a plena carga',
	"All of it at once is {0}, more than the inverter's {1}: it switches off. Run less at a time or take a larger one.":
		'Todo a la vez son {0}, más que los {1} del inversor: se desconecta. Usa menos a la vez o toma uno mayor.',
	'{0} is more than 80 % of {1}: in a warm place it may cut back or switch off.':
		'{0} es más del 80 % de {1}: en un lugar cálido puede reducir o desconectarse.',
	'Starting takes {0} for a moment, more than the {1} it gives.':
		'Arrancar pide {0} un momento, más que los {1} que da.',
	'The bank must give {0} without switching itself off; name its batteries and their protection to have that checked.':
		'El banco debe dar {0} sin desconectarse; indica sus baterías y su protección para comprobarlo.',
	'largest steady discharge current of the bank': 'corriente de descarga continua máxima del banco',
	"For a moment it may draw {0}; see that the battery's protection bears that for some seconds.":
		'Por un momento puede tomar {0}; mira que la protección de la batería lo aguante unos segundos.',
	'Over 300 A at {0} V every joint counts: at double the voltage it is half the current, cable and fuse.':
		'Por encima de 300 A a {0} V cuenta cada unión: al doble de tensión es la mitad de corriente, cable y fusible.',
	'In a closed space it overheats and can start a fire: give it air in and out, and keep bedding and clothes away.':
		'En un espacio cerrado se sobrecalienta y puede provocar un incendio: dale entrada y salida de aire, y aparta ropa de cama y prendas.',
	'too small for {0}': 'demasiado pequeño para {0}',
	'starts {0} only with luck': 'arranca {0} solo con suerte',
	'loaded to {0} %': 'cargado al {0} %',
	'{0} from the bank': '{0} del banco',
	'{0} V bank': 'banco de {0} V',
	'up to {0} on the same fuse': 'hasta {0} con el mismo fusible',
	'At {0} and {1} % it draws {2}; 125 % of that is for cable and fuse.':
		'A {0} y {1} % toma {2}; el 125 % de eso es para cable y fusible.',
	'{0} fuse, {1}': 'fusible de {0}, {1}',
	'{0} is too much for this bank: {1}, it gives {2}': '{0} es demasiado para este banco: {1}, da {2}',
	'{0} For the cable alone: {1}.': '{0} Solo para el cable: {1}.',
	'discharge limit of the bank': 'límite de descarga del banco',
	'{0} at {1} V: {2} ({3} at low battery)': '{0} a {1} V: {2} ({3} con la batería baja)',
	'bank current at the cut-off': 'corriente del banco en el corte',
	'{0} at once, {1} for a moment. {2}': '{0} a la vez, {1} un momento. {2}',
	'{0} is too small for {1} at once': '{0} es poco para {1} a la vez',
	'continuous power': 'potencia continua',
	'{0} inverter for {1}; {2} at {3} V': 'inversor de {0} para {1}; {2} a {3} V',
	'{0} is enough for {1}; {2} at {3} V': '{0} basta para {1}; {2} a {3} V',
	'{0} runs {1} but may not start it: {2} for a moment':
		'{0} alimenta {1}, pero puede no arrancarlo: {2} por un momento',
	'It gives {0} for a moment. {1}': 'Da {0} por un momento. {1}',
	'start-up power': 'potencia de arranque',
};
