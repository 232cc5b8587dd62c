import type { Phrasebook } from '../phrasebook.js';

export const network: Phrasebook = {
	'source voltage': 'tensión de la fuente',
	'Which conductors and loads are there? "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"':
		'¿Qué conductores y cargas hay? "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
	'node it starts at, or the node of a load': 'nodo en que empieza, o nodo de una carga',
	'Between which nodes?': '¿Entre qué nodos?',
	'node it ends at': 'nodo en que acaba',
	'resistance of the segment': 'resistencia del tramo',
	'both legs': 'ida y vuelta',
	positive: 'positivo',
	return: 'retorno',
	leg: 'rama',
	'node that the source feeds': 'nodo que alimenta la fuente',
	'internal resistance of the bank': 'resistencia interna del banco',
	'I read "{0}" as the node that the source feeds, but no segment begins there.':
		'Leo "{0}" como nodo que alimenta la fuente, pero ningún tramo empieza ahí.',
	'named for it, or the first named': 'el que lleva su nombre, o el primero indicado',
	'segments without a leg named': 'tramos sin rama indicada',
	'return segments are named, so the others are taken for the positive leg alone':
		'hay tramos de retorno indicados, así que los demás se toman solo por el positivo',
	'Name another size or insulation class.': 'Indica otra sección u otra clase de aislamiento.',
	'I have no ampacity for the conductor of {0} at {1} insulation.':
		'No tengo corriente admisible para el conductor de {0} con aislamiento de {1}.',
	'No segment leads from the source to: {0}.': 'Ningún tramo lleva de la fuente a: {0}.',
	'Name the conductor that feeds it, "bus-{0} 10 awg 12 ft".':
		'Indica el conductor que lo alimenta, "bus-{0} 10 awg 12 ft".',
	'No return leads back to the source from: {0}.': 'Ningún retorno lleva a la fuente desde: {0}.',
	'Name the return, "{0}-battery return 10 awg 12 ft", or leave out the legs to have both counted.':
		'Indica el retorno, "{0}-battery return 10 awg 12 ft", o quita las ramas para que se cuenten las dos.',
	'These loads want more power than the conductors can carry to them: the voltage collapses.':
		'Estas cargas piden más potencia de la que los conductores les pueden llevar: la tensión se hunde.',
	'Thicken or shorten the segments, raise the voltage, or check the powers.':
		'Engrosa o acorta los tramos, sube la tensión o comprueba las potencias.',
	'load with the lowest voltage': 'carga con la tensión más baja',
	'its voltage': 'su tensión',
	'its drop': 'su caída',
	'current from the source': 'corriente de la fuente',
	'power that reaches the loads': 'potencia que llega a las cargas',
	'power lost on the way': 'potencia perdida por el camino',
	'voltage at the source node': 'tensión en el nodo de la fuente',
	'segment to thicken first': 'tramo que hay que engrosar primero',
	to: 'a',
	'drop of the worst load then': 'caída de la peor carga entonces',
	'voltage at {0}': 'tensión en {0}',
	'drop at {0}': 'caída en {0}',
	'current in {0}': 'corriente en {0}',
	'resistance of {0}': 'resistencia de {0}',
	'node voltages': 'tensiones de los nodos',
	'balance of power': 'balance de potencia',
	'{0} carries {1} on {2}, which may carry {3}: it overheats.':
		'{0} lleva {1} por {2}, que admite {3}: se sobrecalienta.',
	'{0} carries {1} on {2}: no standard fuse both carries that for hours (125 %) and protects it (at most {3}).':
		'{0} lleva {1} por {2}: ningún fusible normalizado aguanta eso durante horas (125 %) y a la vez lo protege (como máximo {3}).',
	'{0}: {1}, {2} lost on the way (limit {3}).': '{0}: {1}, {2} perdidos por el camino (límite {3}).',
	'Some segments close a ring: a short on it is fed from both sides, so it needs a fuse at both ends, and each must carry the whole when the other opens.':
		'Algunos tramos cierran un anillo: un cortocircuito en él se alimenta por los dos lados, así que necesita un fusible en cada extremo, y cada uno debe llevarlo todo cuando el otro abre.',
	'A return through chassis or busbar is only as good as its joints: measure its resistance under load, and use no chassis return near gas or for mains.':
		'Un retorno por chasis o barra es tan bueno como sus uniones: mide su resistencia con carga, y no uses el chasis como retorno cerca de gas ni para la red.',
	'{0} in {1}': '{0} en {1}',
	'worst load then {0}': 'peor carga entonces {0}',
	'{0} in {1} would bring it to {2}.': '{0} en {1} lo llevaría a {2}.',
	'{0} flow with everything on, {1} stay in the copper; the worst load is {2} with {3} ({4}).':
		'Con todo encendido circulan {0}, {1} quedan en el cobre; la peor carga es {2} con {3} ({4}).',
	'{0} is overloaded: {1} on {2} ({3})': '{0} está sobrecargado: {1} por {2} ({3})',
	'{0} gets only {1} ({2} lost)': '{0} solo recibe {1} ({2} perdidos)',
	'{0} gets only {1} ({2} lost): thicken {3} first':
		'{0} solo recibe {1} ({2} perdidos): engrosa primero {3}',
	'voltage drop': 'caída de tensión',
	'All loads within {0}: the worst is {1}, {2} ({3})':
		'Todas las cargas dentro de {0}: la peor es {1}, {2} ({3})',
};
