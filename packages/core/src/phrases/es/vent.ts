import type { Phrasebook } from '../phrasebook.js';

export const vent: Phrasebook = {
	'flow of the fan': 'caudal del ventilador',
	'air changes wanted an hour': 'renovaciones de aire deseadas por hora',
	'intake opening': 'abertura de entrada',
	'intake, width by height': 'entrada, anchura por altura',
	'diameter of the fan': 'diámetro del ventilador',
	'free share of the opening': 'parte libre de la abertura',
	'behind an insect screen (practice)': 'tras un mosquitero (práctica)',
	'pressure of the fan at no flow': 'presión del ventilador sin caudal',
	'40 Pa, a low-voltage axial roof fan (practice)':
		'40 Pa, un ventilador de techo axial de baja tensión (práctica)',
	'air temperature': 'temperatura del aire',
	'a summer evening': 'una tarde de verano',
	'heat to be carried off': 'calor que hay que evacuar',
	'something burns inside': 'algo arde dentro',
	'What flow has the fan (or how many air changes are wanted)?':
		'¿Qué caudal tiene el ventilador (o cuántas renovaciones de aire se quieren)?',
	'Name the opening as width by height, such as 6x10 in or 20x30 cm, or its area.':
		'Indica la abertura como anchura por altura, por ejemplo 6x10 in o 20x30 cm, o su área.',
	"I read an intake of {0}; that can't be.": 'Leo una entrada de {0}; no puede ser.',
	'Name a larger opening, fewer air changes or a fan with more pressure.':
		'Indica una abertura mayor, menos renovaciones de aire o un ventilador con más presión.',
	'No such fan draws that much air through an opening of {0}.':
		'Ningún ventilador así mueve tanto aire por una abertura de {0}.',
	'{0} fan for {1} air changes an hour; intake {2}':
		'ventilador de {0} para {1} renovaciones de aire por hora; entrada {2}',
	'Intake of {0} for a {1} fan': 'Entrada de {0} para un ventilador de {1}',
	'The fan moves {0} through this intake': 'El ventilador mueve {0} por esta entrada',
	'{0} air changes an hour; intake of {1}': '{0} renovaciones de aire por hora; entrada de {1}',
	'{0} air changes an hour through this intake': '{0} renovaciones de aire por hora por esta entrada',
	'Through that intake the air stays below {0}.': 'Por esa entrada el aire va a menos de {0}.',
	'The fan moves {0} of its {1}; the air enters at {2}.':
		'El ventilador mueve {0} de sus {1}; el aire entra a {2}.',
	fan: 'ventilador',
	intake: 'entrada',
	'density of the air': 'densidad del aire',
	'flow against the intake': 'caudal contra la entrada',
	'intake for quiet flow': 'entrada para caudal silencioso',
	'time for one air change': 'tiempo de una renovación de aire',
	'free flow of the fan': 'caudal libre del ventilador',
	'velocity through the fan': 'velocidad por el ventilador',
	'intake opening for quiet flow': 'abertura de entrada para caudal silencioso',
	'flow through this intake': 'caudal por esta entrada',
	'velocity in the intake': 'velocidad en la entrada',
	'pressure lost in the intake': 'presión perdida en la entrada',
	'noise of the intake': 'ruido de la entrada',
	'heat carried off per kelvin': 'calor evacuado por kelvin',
	'density of the air against sea level': 'densidad del aire frente al nivel del mar',
	'how much warmer than outside it stays': 'cuánto más caliente que fuera se queda',
	'intake of {0}': 'entrada de {0}',
	'{0} air changes an hour': '{0} renovaciones de aire por hora',
	'down to {0} of intake, below which the fan loses more than a tenth':
		'hasta {0} de entrada; por debajo el ventilador pierde más de una décima parte',
	'The fan can draw fumes back out of a flame or flue inside the van. Open a window of at least {0} first, and have a carbon-monoxide alarm.':
		'El ventilador puede hacer volver los gases de un conducto o una llama dentro de la furgoneta. Abre antes una ventana de al menos {0}, y ten una alarma de monóxido de carbono.',
	'The air rushes in at {0} (about {1} dB(A)) and the fan loses flow; an opening of {2} clears it.':
		'El aire entra a {0} (unos {1} dB(A)) y el ventilador pierde caudal; una abertura de {2} lo resuelve.',
	'{0} air changes are wanted: that takes {1} through a large enough intake.':
		'Se quieren {0} renovaciones de aire: eso pide {1} por una entrada bastante grande.',
	'At {0} the same air changes carry off only {1} % of the heat.':
		'A {0} las mismas renovaciones evacuan solo el {1} % del calor.',
};
