import type { Phrasebook } from '../phrasebook.js';

export const payload: Phrasebook = {
	item: 'pieza',
	'volume of a tank': 'volumen de un depósito',
	'what the tank holds': 'lo que lleva el depósito',
	'place behind the front axle': 'lugar detrás del eje delantero',
	'in the cab': 'en la cabina',
	'behind the cab': 'detrás de la cabina',
	'in the middle': 'en el medio',
	'over the rear axle': 'sobre el eje trasero',
	'in the back': 'atrás',
	'on the rear door': 'en la puerta trasera',
	'part of the van': 'parte de la furgoneta',
	'distance from the middle line': 'distancia a la línea media',
	left: 'izquierdo',
	'right side': 'lado derecho',
	side: 'lado',
	'height of its centre over the ground': 'altura de su centro sobre el suelo',
	'on the roof': 'en el techo',
	'what if': 'y si',
	'items aboard': 'piezas a bordo',
	GVWR: 'MMA (GVWR)',
	'rear axle rating': 'límite del eje trasero',
	'front axle rating': 'límite del eje delantero',
	'empty weight': 'peso en vacío',
	'empty front axle': 'eje delantero en vacío',
	'empty rear axle': 'eje trasero en vacío',
	'the usual roof of a camper van; the safe side for its height':
		'el techo habitual de una camper; el lado seguro para su altura',
	'centre of gravity of the bare van over the ground':
		'centro de gravedad de la furgoneta vacía sobre el suelo',
	'typical for the roof (practice)': 'típico para el techo (práctica)',
	track: 'vía',
	'usual for panel vans (practice)': 'habitual en furgones (práctica)',
	lift: 'elevación',
	'the driver at least': 'al menos quien conduce',
	'mass of a person': 'masa de una persona',
	'75 kg as the European rule counts a driver; the US label counts 68 kg (150 lb). Weigh your people':
		'75 kg, como cuenta la norma europea a quien conduce; la etiqueta de EE. UU. cuenta 68 kg (150 lb). Pesa a tu gente',
	'second row behind the front axle': 'segunda fila detrás del eje delantero',
	'What is the GVWR (and the axle ratings), on the door label?':
		'¿Cuál es la MMA (GVWR) y los límites de los ejes, en la etiqueta de la puerta?',
	'Which wheelbase: short, medium, long or extra-long (or in inches or metres)?':
		'¿Qué batalla: corta, media, larga o extralarga (o en pulgadas o metros)?',
	'the item without a name': 'la pieza sin nombre',
	'What does {0} weigh (or how much does its tank hold)?':
		'¿Cuánto pesa: {0} (o cuánto cabe en su depósito)?',
	'The empty axles add to {0}, the empty weight is {1}.':
		'Los ejes en vacío suman {0}, el peso en vacío es {1}.',
	'Give the two axle weights alone, from one weighing.':
		'Da solo los dos pesos por eje, de una misma pesada.',
	'I read an empty weight of {0} above the GVWR of {1}.':
		'Leo un peso en vacío de {0}, por encima de la MMA de {1}.',
	'Read both from the door label and the scale slip again.':
		'Lee los dos de nuevo en la etiqueta de la puerta y en el ticket de la báscula.',
	'I read an axle rating above the GVWR of {0}.': 'Leo un límite de eje por encima de la MMA de {0}.',
	'The GVWR is the rating of the whole van; each axle has a smaller one.':
		'La MMA es el límite de toda la furgoneta; cada eje tiene uno menor.',
	'typical of the size class (practice); weigh or measure yours':
		'típico de la clase de tamaño (práctica); pesa o mide la tuya',
	'The empty axle weights are typical of the size class, no more: they can be off by 200 kg. Weigh the van.':
		'Los pesos por eje en vacío son solo típicos de la clase de tamaño: pueden errar 200 kg. Pesa la furgoneta.',
	'the middle of the part of the van named (practice)':
		'el centro de la parte indicada de la furgoneta (práctica)',
	'cab seats behind the front axle': 'asientos de la cabina detrás del eje delantero',
	'The {0} not known: a van within its GVWR can still overload an axle. Read it from the door label.':
		'No se conoce: {0}. Una furgoneta dentro de su MMA aún puede sobrecargar un eje. Léelo en la etiqueta de la puerta.',
	'No place was named for: {0}. Each axle is taken with all of it at the worse end; name their places behind the front axle.':
		'No se indicó lugar para: {0}. Cada eje se toma con todo ello en el peor extremo; indica sus lugares detrás del eje delantero.',
	'{0} on the rear axle': '{0} en el eje trasero',
	total: 'total',
	'{0} kg empty and {1} lines': '{0} kg en vacío y {1} líneas',
	'rear axle': 'eje trasero',
	'front axle': 'eje delantero',
	'centre of gravity over the ground': 'centro de gravedad sobre el suelo',
	'bare van at {0} m and {1} lines': 'furgoneta vacía a {0} m y {1} líneas',
	'centre of gravity behind the front axle': 'centro de gravedad detrás del eje delantero',
	'share on the front axle': 'parte sobre el eje delantero',
	'static stability factor': 'factor de estabilidad estática',
	'static stability factor, bare van': 'factor de estabilidad estática, furgoneta vacía',
	'static stability factor, loaded': 'factor de estabilidad estática, cargada',
	'rollover in single-vehicle crashes of passenger vehicles':
		'vuelco en accidentes de un solo vehículo, turismos',
	'Top-heavy: static stability factor {0}, {1} for the bare van. Lower the heavy things and take weight off the roof.':
		'Pesada arriba: factor de estabilidad estática {0}, {1} la furgoneta vacía. Baja lo pesado y quita peso del techo.',
	'Static stability factor {0}: up to {1} is the lowest of the five published bands, {2} of single-vehicle crashes rolled over. Tall vans are there; drive so.':
		'Factor de estabilidad estática {0}: hasta {1} es la más baja de las cinco bandas publicadas, volcó el {2} de los accidentes de un solo vehículo. Las furgonetas altas están ahí; conduce en consecuencia.',
	'The lift is counted: factor {0} bare before it, {1} loaded after it. Ratings stay as they are.':
		'La elevación está contada: factor {0} vacía antes de ella, {1} cargada después. Los límites siguen como están.',
	'The {0} side carries {1} more than the other: move about {2} from one wall to the other.':
		'El lado {0} lleva {1} más que el otro: pasa unos {2} de una pared a la otra.',
	"The {0} wheel carries {1}, above half the axle's rating ({2}): check its tire with the tire topic.":
		'La rueda: {0}, lleva {1}, más de la mitad del límite del eje ({2}): comprueba su neumático con el tema de neumáticos.',
	'Only {0} % stand on the front axle: steering and front brakes suffer. Move weight forward of the rear axle.':
		'Solo el {0} % está sobre el eje delantero: sufren la dirección y los frenos delanteros. Pasa peso por delante del eje trasero.',
	'{0} over the GVWR': '{0} por encima de la MMA',
	'Total {0}, GVWR {1}: leave {2} out, wherever it stands. Brakes, frame and insurance end at the rating.':
		'Total {0}, MMA {1}: deja fuera {2}, esté donde esté. Frenos, bastidor y seguro acaban en el límite.',
	'over the rear axle rating': 'por encima del límite del eje trasero',
	'leave out of {0}': 'dejar fuera de: {0}',
	'leave out {0} of {1}': 'dejar fuera {0} de: {1}',
	'move {0}': 'mover: {0}',
	'move {0} {1} forward': 'mover {1} hacia delante: {0}',
	'move {0} {1} back': 'mover {1} hacia atrás: {0}',
	'Cleared by one of: {0}.': 'Se resuelve con una de estas: {0}.',
	'No single item clears it: take at least {0} off at that end, over several items.':
		'Ninguna pieza sola lo resuelve: quita al menos {0} en ese extremo, entre varias piezas.',
	'The {0} axle has {1} with full tanks, rated {2}: {3} too much. {4}':
		'Eje {0}: lleva {1} con los depósitos llenos, límite {2}: {3} de más. {4}',
	'{0} axle {1} over its rating': 'Eje {0}: {1} por encima de su límite',
	' Within the rear rating.': ' Dentro del límite trasero.',
	' Still over the rear rating.': ' Aún por encima del límite trasero.',
	'What if {0}: rear axle {1} ({2}), front axle {3}, total {4}.{5}':
		'Y si {0}: eje trasero {1} ({2}), eje delantero {3}, total {4}.{5}',
	'Front axle {0}, rear axle {1}, tanks full.': 'Eje delantero {0}, eje trasero {1}, depósitos llenos.',
	'Front axle at most {0}, rear axle at most {1}, tanks full.':
		'Eje delantero como máximo {0}, eje trasero como máximo {1}, depósitos llenos.',
	'within the ratings': 'dentro de los límites',
	overloaded: 'sobrecargada',
	'Only {0} are left {1}: clothes, food and water bottles of a trip weigh more.':
		'Solo quedan {0} {1}: la ropa, la comida y el agua embotellada de un viaje pesan más.',
	'more load': 'más carga',
	'up to {0} more {1}': 'hasta {0} más {1}',
	'{0} in all: {1} left {2}{3}': '{0} en total: quedan {1} {2}{3}',
	'on the rear axle': 'en el eje trasero',
	'on the front axle': 'en el eje delantero',
};
