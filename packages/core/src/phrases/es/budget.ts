import type { Phrasebook } from '../phrasebook.js';

export const budget: Phrasebook = {
	'Which loads, with watts or amps and hours a day?': '¿Qué cargas, con vatios o amperios y horas al día?',
	'mains voltage': 'tensión de red',
	'hours a day the inverter is on': 'horas al día que el inversor está encendido',
	'inverter switched off between uses': 'inversor apagado entre usos',
	'{0} a day = {1}, as far as it can be off': '{0} al día = {1}, hasta donde puede estar apagado',
	'{0} a day = {1} at {2} V': '{0} al día = {1} a {2} V',
	'left on all day: the safe side': 'encendido todo el día: el lado seguro',
	'lost in the inverter under load': 'perdida en el inversor con carga',
	'charge a day from the bank': 'carga en Ah al día del banco',
	'largest current from the bank, all on': 'corriente máxima del banco, todo encendido',
	'mains loads all at once': 'cargas de red todas a la vez',
	'largest mains load': 'mayor carga de red',
	'The {0} is counted at full power for all its hours. If it switches on and off by itself, name its share ("40%").':
		'Se cuenta a plena potencia todas sus horas: {0}. Si se enciende y apaga solo, indica su parte ("40%").',
	'The inverter alone takes {0} a day doing nothing; switch it off between uses or use its search mode.':
		'El inversor solo toma {0} al día sin hacer nada; apágalo entre usos o usa su modo de espera.',
	"All on at once draws {0} at 12 V: cables, fuses and the battery's own protection must bear it. A 24 or 48 V bank halves or quarters it.":
		'Todo a la vez toma {0} a 12 V: cables, fusibles y la protección propia de la batería deben aguantarlo. Un banco de 24 o 48 V lo deja en la mitad o la cuarta parte.',
	'Direct-current loads {0}': 'Cargas de corriente continua {0}',
	'mains loads {0}': 'cargas de red {0}',
	'inverter losses and idle {0}': 'pérdidas y consumo en vacío del inversor {0}',
	'Most of it: {0}, {1}.': 'Lo que más: {0}, {1}.',
};
