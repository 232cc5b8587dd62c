import type { Phrasebook } from '../phrasebook.js';

export const heat: Phrasebook = {
	'outside temperature': 'temperatura exterior',
	'a comfortable evening (practice)': 'una tarde agradable (práctica)',
	'vents cracked open for two people (practice)': 'ventilaciones entreabiertas para dos personas (práctica)',
	heater: 'calefactor',
	diesel: 'diésel',
	propane: 'propano',
	gasoline: 'gasolina',
	electric: 'eléctrico',
	fuel: 'combustible',
	'the usual fuel of van heaters': 'el combustible habitual de los calefactores de furgoneta',
	'heater without a flue': 'calefactor sin conducto de escape',
	'carbon-monoxide alarm': 'alarma de monóxido de carbono',
	'efficiency of the heater': 'rendimiento del calefactor',
	'burner heaters turn about 80 % of the lower heating value into heat; an inverter passes 85 % (practice)':
		'los calefactores de quemador dan en calor cerca del 80 % del poder calorífico inferior; un inversor deja pasar el 85 % (práctica)',
	'hours heated': 'horas de calefacción',
	'electric draw of the heater': 'consumo eléctrico del calefactor',
	'fan and fuel pump, running (practice)': 'ventilador y bomba de combustible en marcha (práctica)',
	'How cold does it get outside (or where)?': '¿Cuánto frío hace fuera (o dónde)?',
	'I size no heater that burns fuel without a flue for a van people sleep in: it fills the air with carbon monoxide and water and uses up the oxygen.':
		'No dimensiono ningún calefactor que queme combustible sin conducto de escape para una furgoneta en la que duermen personas: llena el aire de monóxido de carbono y agua y consume el oxígeno.',
	'Use a heater with a sealed burner: combustion air from outside, exhaust to outside; and a carbon-monoxide alarm.':
		'Usa un calefactor de quemador estanco: aire de combustión desde fuera, escape al exterior; y una alarma de monóxido de carbono.',
	'Give an outside temperature below the inside one; for the opposite ask the cool topic.':
		'Da una temperatura exterior inferior a la interior; para lo contrario pregunta al tema de refrigeración.',
	'It is {0} outside and {1} is wanted inside: no heat is lost.':
		'Fuera hay {0} y dentro se quieren {1}: no se pierde calor.',
	'The van loses {0} at {1}; most of it through: {2} ({3}).':
		'La furgoneta pierde {0} a {1}; lo que más por: {2} ({3}).',
	'{0} of heat needed: more than one heater, or insulate':
		'Hacen falta {0} de calor: más de un calefactor, o aislar',
	'{0} heater; {1}': 'calefactor de {0}; {1}',
	'{0} will do; {1}': '{0} basta; {1}',
	'{0} a night': '{0} por noche',
	'{0} for {1} nights': '{0} para {1} noches',
	'time to provide for': 'tiempo que debe durar',
	'fuel for the stay': 'combustible para la estancia',
	'battery for the stay': 'batería para la estancia',
	'{0} is too small: {1} needed': '{0} es demasiado poco: hacen falta {1}',
	'heat loss of the shell': 'pérdida de calor de la carrocería',
	'that of {0}': 'la de {0}',
	'sea level, as none was named': 'nivel del mar, al no indicarse',
	'heat lost per kelvin: air': 'calor perdido por kelvin: aire',
	'rated output needed': 'potencia nominal necesaria',
	'fuel a night': 'combustible por noche',
	'battery a night': 'batería por noche',
	'heat loss if heat spreads freely to the ribs':
		'pérdida si el calor se reparte libremente hacia las costillas',
	'heat loss if it does not': 'pérdida si no lo hace',
	'through: {0}': 'por: {0}',
	'through: air': 'por: aire',
	'U of the walls': 'U de las paredes',
	'its output at this altitude': 'su potencia a esta altitud',
	'output kept at this altitude': 'potencia que queda a esta altitud',
	'loses {0}': 'pierde {0}',
	'{0} over the ribs': '{0} sobre las costillas',
	'A fuel-burning heater without a carbon-monoxide alarm can kill people in their sleep. Fit an alarm at sleeping height first.':
		'Un calefactor de combustible sin alarma de monóxido de carbono puede matar a personas mientras duermen. Monta primero una alarma a la altura de quien duerme.',
	'It gives {0} here and the van needs more in reserve; {1}, or better insulation, clears it.':
		'Aquí da {0} y la furgoneta necesita más en reserva; {1}, o mejor aislamiento, lo resuelve.',
	'Even at its lowest (about {0}) it gives more than the van loses: it will cycle and soot up.':
		'Incluso al mínimo (unos {0}) da más de lo que pierde la furgoneta: ciclará y se llenará de hollín.',
	'At {0} the burner keeps about {1} % of its output; it needs a high-altitude setting or it burns rich and soots.':
		'A {0} el quemador conserva cerca del {1} % de su potencia; necesita un ajuste de gran altitud o quema rico y hace hollín.',
	'Fan and pump take {0} a night and the bank gives {1}; a bank of {2} clears it.':
		'Ventilador y bomba toman {0} por noche y el banco da {1}; un banco de {2} lo resuelve.',
	'Heating takes {0} a night and the bank gives {1}; it takes {2} of bank, or a heater that burns fuel.':
		'Calentar toma {0} por noche y el banco da {1}; hacen falta {2} de banco, o un calefactor de combustible.',
	'The ribs cost about {0}; if heat spreads freely to them the loss is {1}. Insulation over the ribs helps more than thicker insulation between them.':
		'Las costillas cuestan unos {0}; si el calor se reparte libremente hacia ellas la pérdida es {1}. Aislar sobre las costillas ayuda más que un aislamiento más grueso entre ellas.',
};
