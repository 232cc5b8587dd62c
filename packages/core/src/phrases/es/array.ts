import type { Phrasebook } from '../phrasebook.js';

export const array: Phrasebook = {
	'panels in series': 'paneles en serie',
	'strings in parallel': 'ramas en paralelo',
	'how the panels are joined': 'cómo se unen los paneles',
	'largest input voltage of the controller': 'tensión de entrada máxima del regulador',
	'rated output current of the controller': 'corriente nominal de salida del regulador',
	'current of greatest power of a panel': 'corriente de máxima potencia de un panel',
	'temperature coefficient of the open-circuit voltage':
		'coeficiente de temperatura de la tensión en circuito abierto',
	'coldest place it will see': 'el lugar más frío que verá',
	'lowest temperature': 'temperatura más baja',
	'hottest air': 'aire más caliente',
	'36 cells': '36 celdas',
	'60 cells': '60 celdas',
	'72 cells': '72 celdas',
	'cells of a panel': 'celdas de un panel',
	'one-way length from the roof to the controller': 'longitud de ida del techo al regulador',
	'3 % between roof and controller (practice)': '3 % entre techo y regulador (práctica)',
	'What panels (watts of one, or Voc and Isc from the label)?':
		'¿Qué paneles (vatios de uno, o Voc e Isc de la etiqueta)?',
	'Which is the coldest place it will see, or the lowest temperature?':
		'¿Cuál es el lugar más frío que verá, o la temperatura más baja?',
	'How many watts has one panel (or what is its Isc)? The roof run takes its current.':
		'¿Cuántos vatios tiene un panel (o cuál es su Isc)? El recorrido del techo lleva su corriente.',
	"mean of each year's lowest hour at {0}": 'media de la hora más fría de cada año en {0}',
	'a hot summer day (practice)': 'un día caluroso de verano (práctica)',
	'exceeded in 0.4 % of the hours at {0}': 'superada en el 0.4 % de las horas en {0}',
	"{0} panels don't make {1} in series by {2} in parallel.":
		'{0} paneles no hacen {1} en serie por {2} en paralelo.',
	any: 'cualquiera',
	'Series times parallel must be the number of panels.': 'Serie por paralelo debe dar el número de paneles.',
	'none was named': 'no se indicó ninguna',
	'the fewest in series that charge in the heat, with at most two strings where that can be':
		'los menos en serie que cargan con calor, con dos ramas como máximo donde se pueda',
	'factor of the open-circuit voltage in the cold': 'factor de la tensión en circuito abierto con frío',
	'open-circuit voltage of a string in the cold': 'tensión en circuito abierto de una rama con frío',
	'hottest cell': 'celda más caliente',
	'voltage of greatest power of a string in the heat': 'tensión de máxima potencia de una rama con calor',
	'short-circuit current to design for': 'corriente de cortocircuito de diseño',
	'current for conductors and protection': 'corriente para conductores y protección',
	'controller output': 'salida del regulador',
	'open-circuit voltage of a string at the record low':
		'tensión en circuito abierto de una rama con la mínima absoluta',
	'lowest temperature reckoned with': 'temperatura más baja considerada',
	'fewest in series that charge in the heat': 'los menos en serie que cargan con calor',
	'most in series the controller bears in the cold': 'los más en serie que aguanta el regulador con frío',
	'input voltage the controller must bear': 'tensión de entrada que debe aguantar el regulador',
	'{0} in the cold': '{0} con frío',
	'temperature around the roof cable': 'temperatura alrededor del cable del techo',
	'on a roof in the sun (practice)': 'sobre un techo al sol (práctica)',
	'No single conductor fits the run from the roof: shorten it, join more panels in series, or run the strings apart.':
		'Ningún conductor único sirve para el recorrido desde el techo: acórtalo, une más paneles en serie o lleva las ramas por separado.',
	'conductor of the roof run': 'conductor del recorrido del techo',
	'fuse or breaker the roof run may have': 'fusible o disyuntor que admite el recorrido del techo',
	'voltage drop of the roof run': 'caída de tensión del recorrido del techo',
	'It is over at any temperature.': 'Lo supera a cualquier temperatura.',
	'It would pass only above {0}.': 'Solo pasaría por encima de {0}.',
	'At most {0} in series.': 'Como máximo {0} en serie.',
	'Not even one such panel fits this controller.': 'Ni siquiera un panel de esos va con este regulador.',
	'{0} in series reach {1} at {2}; the controller bears {3}: it can fail and burn.':
		'{0} en serie llegan a {1} con {2}; el regulador aguanta {3}: puede fallar y arder.',
	"{0} in the cold is within 5 % of the controller's {1}: a colder night than the record, or a panel above its label, breaks it.":
		'{0} con frío quedan a menos del 5 % de los {1} del regulador: una noche más fría que la mínima, o un panel por encima de su etiqueta, lo rompe.',
	'In the heat a string gives {0}; charging to the full takes {1}. The last part of the charge fails on hot days: put more in series.':
		'Con calor una rama da {0}; cargar a tope pide {1}. La última parte de la carga falla en días calurosos: pon más en serie.',
	'{0} direct current can give a shock and holds an arc: fuses, disconnect, connectors and cable rated for it, live parts covered, and work on it by someone trained for it.':
		'{0} de corriente continua pueden dar una descarga y sostienen un arco: fusibles, seccionador, conectores y cable aptos para ello, partes activas cubiertas, y que trabaje en ello alguien formado.',
	"A PWM controller pulls the string down to the battery: of {0} only {1} are used. Take an MPPT controller, or panels of the bank's class.":
		'Un regulador PWM baja la rama a la batería: de {0} solo se usan {1}. Toma un regulador MPPT, o paneles de la clase del banco.',
	'The array can push {0} into a PWM controller rated {1}: it does not limit the current and overheats.':
		'El campo puede meter {0} en un regulador PWM de {1}: no limita la corriente y se sobrecalienta.',
	'The array could make {0}; the controller gives {1} at most and leaves the rest unused at noon.':
		'El campo podría dar {0}; el regulador da {1} como máximo y a mediodía deja el resto sin usar.',
	"{0} strings in parallel feed a shorted one with {1}: each needs its own fuse, not above the panel's largest series fuse rating, made for {2} direct current.":
		'{0} ramas en paralelo alimentan una en cortocircuito con {1}: cada una necesita su propio fusible, no mayor que el fusible serie máximo del panel, hecho para {2} de corriente continua.',
	'At {0} a string stands at {1} open circuit (by {2}); in the heat it gives {3} where charging takes {4}.':
		'A {0} una rama está a {1} en circuito abierto (según {2}); con calor da {3} donde cargar pide {4}.',
	'open-circuit voltage in the cold': 'tensión en circuito abierto con frío',
	'{0}: a controller for {1} or more': '{0}: un regulador para {1} o más',
	'{0}: a controller for {1} or more and {2}': '{0}: un regulador para {1} o más y {2}',
	"{0}: {1} cold, within the controller's {2}": '{0}: {1} con frío, dentro de los {2} del regulador',
	'{0} in series at most': '{0} en serie como máximo',
	'take a controller for more': 'toma un regulador para más',
	'Too high: {0} cold on a {1} controller; {2}': 'Demasiado alta: {0} con frío en un regulador de {1}; {2}',
	'One panel': 'Un panel',
	'{0} in series, {1} in parallel': '{0} en serie, {1} en paralelo',
	parallel: 'en paralelo',
};
