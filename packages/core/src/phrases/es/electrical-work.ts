import type { Phrasebook } from '../phrasebook.js';

export const electricalWork: Phrasebook = {
	'internal resistance of one battery': 'resistencia interna de una batería',
	'open-circuit voltage of the bank': 'tensión en circuito abierto del banco',
	"maker's short-circuit current of the bank": 'corriente de cortocircuito del banco según el fabricante',
	"{0} can't be the open-circuit voltage of a {1} V bank.":
		'{0} no puede ser la tensión en circuito abierto de un banco de {1} V.',
	'Give the voltage of the full, rested bank, about {0}.':
		'Da la tensión del banco lleno y en reposo, unos {0}.',
	'full and rested, {0} V a cell (practice)': 'llena y en reposo, {0} V por celda (práctica)',
	'low end of what is usual for the chemistry and capacity: the highest current is the safe side (practice)':
		'extremo bajo de lo habitual para la química y la capacidad: la corriente más alta es el lado seguro (práctica)',
	"Fuse at the source end itself; only where that can't be done, within 7 in (180 mm) of wire, or 40 in (1 m) if it is also sheathed all the way (33 CFR 183.455).":
		'El fusible va en el mismo extremo de la fuente; solo donde no sea posible, a no más de 7 in (180 mm) de cable, o 40 in (1 m) si además va enfundado todo el recorrido (33 CFR 183.455).',
	'Disconnect the battery and shore power before you work; a dropped spanner across a bank welds itself on.':
		'Desconecta la batería y la toma de corriente exterior antes de trabajar; una llave caída sobre los bornes del banco se queda soldada.',
	'Crimp lugs with the right die, pull-test them, and use grommets and sleeve where the cable passes metal.':
		'Engasta los terminales con la matriz correcta, pruébalos a tracción y usa pasamuros y funda donde el cable atraviese metal.',
	'Mains work belongs to a licensed electrician and the local code decides: breaker, GFCI or RCD, and one neutral-to-ground bond only, at the source.':
		'La instalación de red es cosa de un electricista autorizado y decide la norma local: disyuntor, diferencial (GFCI o RCD) y una sola unión de neutro y tierra, en la fuente.',
	'segments and loads': 'tramos y cargas',
	'Which conductors are there? For each: from - to, size, one-way length.':
		'¿Qué conductores hay? De cada uno: desde - hasta, sección, longitud de ida.',
	'Which loads are on, and at which node? For each: node and amperes or watts.':
		'¿Qué cargas están encendidas y en qué nodo? De cada una: nodo y amperios o vatios.',
	'I read a segment from {0} to itself.': 'Leo un tramo de {0} a sí mismo.',
	'{0} has a resistance as well as a size or length.':
		'{0} tiene una resistencia además de una sección o longitud.',
	'What size is the conductor of {0}?': '¿Qué sección tiene el conductor de {0}?',
	'I read "{0}" as the size of {1}; no such size is in my tables.':
		'Leo "{0}" como sección de {1}; no hay tal sección en mis tablas.',
	'How long is {0}, one way?': '¿Qué longitud de ida tiene {0}?',
	'I read a load at "{0}", but no segment leads there.':
		'Leo una carga en "{0}", pero ningún tramo llega ahí.',
	'Name a segment that ends there, or put the load at one of: {0}.':
		'Indica un tramo que acabe ahí, o pon la carga en uno de estos: {0}.',
	'efficiency of the inverter': 'rendimiento del inversor',
	"the power named is the inverter's output; 85 % where its efficiency is unknown":
		'la potencia indicada es la salida del inversor; 85 % donde no se conoce su rendimiento',
	'As the battery falls to {0} the inverter draws {1}; the fuse still carries that for a while. The inverter topic sizes for that worst case.':
		'Cuando la batería baja a {0}, el inversor toma {1}; el fusible aún lo soporta un tiempo. El tema del inversor dimensiona para ese peor caso.',
	'As the battery falls to {0} the inverter draws {1}, above the fuse: ask the inverter topic, which sizes for that worst case.':
		'Cuando la batería baja a {0}, el inversor toma {1}, por encima del fusible: pregunta al tema del inversor, que dimensiona para ese peor caso.',
	'{0} and {1} at {2} contradict each other: that power draws {3}.':
		'{0} y {1} a {2} se contradicen: esa potencia toma {3}.',
	'Give the current or the power, whichever you trust.': 'Da la corriente o la potencia, la que sea fiable.',
};
