import type { Phrasebook } from '../phrasebook.js';

export const wire: Phrasebook = {
	power: 'potencia',
	'How long is the run, one way?': '¿Qué longitud tiene el recorrido, solo la ida?',
	'3 % for what matters, 10 % where the load is said not to be critical (practice)':
		'3 % para lo que importa, 10 % donde se dice que la carga no es crítica (práctica)',
	'critical load': 'carga crítica',
	'kind of supply': 'tipo de suministro',
	efficiency: 'rendimiento',
	'insulation class': 'clase de aislamiento',
	'usual cable for this work; read it from the jacket':
		'cable habitual para este trabajo; léelo en la cubierta',
	'temperature around the cable': 'temperatura alrededor del cable',
	'inside the living space; an engine space is hotter':
		'dentro de la zona habitable; junto al motor hace más calor',
	'in the engine bay': 'en el compartimento del motor',
	'conductors together': 'conductores juntos',
	'the two conductors of this run, not bundled with others':
		'los dos conductores de este recorrido, sin agrupar con otros',
	'free air': 'al aire libre',
	loom: 'en funda',
	'in insulation': 'en aislamiento',
	'laid in': 'tendido',
	'clipped in free air; say so where it runs in a loom, a wall or insulation':
		'grapado al aire libre; dilo si va en funda, pared o aislamiento',
	'on for 3 h or more': 'encendida 3 h o más',
	'the safe side: a load of 3 h or more': 'el lado seguro: una carga de 3 h o más',
	motor: 'motor',
	'nothing said of a motor': 'no se dijo nada de un motor',
	'the current is the rating of the circuit': 'la corriente es la nominal del circuito',
	'a load current unless an inlet or a circuit is named; 16 A and 32 A on 230 V are inlet ratings':
		'corriente de la carga salvo que se indique una toma o un circuito; 16 A y 32 A a 230 V son valores de toma',
	'terminal temperature limit': 'límite de temperatura de los bornes',
	'tinned copper': 'cobre estañado',
	'bare copper; tinned adds 2 to 6 % to the drop': 'cobre desnudo; el estañado añade del 2 al 6 % a la caída',
	copper: 'cobre',
	'conductor metal': 'metal del conductor',
	'stranded copper, as the vehicle rules ask': 'cobre trenzado, como piden las normas de vehículos',
	'size to be checked': 'sección que se comprueba',
	'What current does it carry (or what power)?': '¿Qué corriente lleva (o qué potencia)?',
	'I size copper only: aluminium and copper-clad conductors creep under the lug, corrode in a damp van and carry less.':
		'Solo dimensiono cobre: los conductores de aluminio y de aluminio con capa de cobre ceden bajo el terminal, se corroen en una furgoneta húmeda y llevan menos.',
	'Use stranded copper of the size I give for the same run.':
		'Usa cobre trenzado de la sección que doy para el mismo recorrido.',
	'Name a bank of 12, 24 or 48 V, or a mains voltage of 100 to 250 V.':
		'Indica un banco de 12, 24 o 48 V, o una tensión de red de 100 a 250 V.',
	'I read {0} direct current; low-voltage rules end at 60 V.':
		'Leo {0} de corriente continua; las reglas de baja tensión acaban en 60 V.',
	'Up to 2000 A is sized here; check power and voltage.':
		'Aquí se dimensiona hasta 2000 A; comprueba potencia y tensión.',
	'That power draws {0} at {1}.': 'Esa potencia toma {0} a {1}.',
	'I read "{0}" as the size to be checked; no such size is in my tables.':
		'Leo "{0}" como sección que se comprueba; no hay tal sección en mis tablas.',
	'the power named is what this run delivers': 'la potencia indicada es la que entrega este recorrido',
	'{0} copper, {1} fuse at the source end': '{0} de cobre, fusible de {1} en el extremo de la fuente',
	'{0} copper, {1} breaker': '{0} de cobre, disyuntor de {1}',
	'Drop {0} = {1} (limit {2}).': 'Caída de {0} = {1} (límite {2}).',
	'The drop decides; for heat alone {0} would do.': 'Decide la caída; solo por calor bastaría {0}.',
	'Heat decides; for the drop alone {0} would do.': 'Decide el calor; solo por la caída bastaría {0}.',
	'The device decides: it must carry the load and still protect the conductor.':
		'Decide la protección: debe llevar la carga y proteger el conductor.',
	'This is the thinnest conductor allowed in parallel.': 'Es el conductor más fino admitido en paralelo.',
	'This is the thinnest conductor allowed for a wire run by itself.':
		'Es el conductor más fino admitido para un cable tendido solo.',
	'copper area': 'sección de cobre',
	breaker: 'disyuntor',
	'largest device that still protects it': 'mayor protección que aún lo protege',
	'smallest device rating': 'valor mínimo de la protección',
	'allowable current': 'corriente admisible',
	'voltage at the load': 'tensión en la carga',
	'loss in the run': 'pérdida en el recorrido',
	'conductor temperature': 'temperatura del conductor',
	'allowable current by heat': 'corriente admisible por calor',
	'cap by the terminals': 'tope por los bornes',
	'largest device on this small conductor': 'mayor protección para este conductor fino',
	'protective device': 'dispositivo de protección',
	'resistance, both legs': 'resistencia, ida y vuelta',
	'voltage drop, share': 'caída de tensión, parte',
	'carries only {0}, too little': 'solo lleva {0}, demasiado poco',
	'{0} drop, too much': 'caída de {0}, demasiado',
	'no standard device both carries the load and protects it':
		'ninguna protección normalizada lleva la carga y lo protege a la vez',
	'thinner than allowed for conductors in parallel': 'más fino de lo admitido para conductores en paralelo',
	'thinner than allowed for a wire run by itself': 'más fino de lo admitido para un cable tendido solo',
	'{0} drop': 'caída de {0}',
	'{0} is taken as the rating of the circuit: what runs on it for 3 h or more stays at or below {1} (80 %).':
		'{0} se toma como valor nominal del circuito: lo que funciona en él 3 h o más se queda en {1} o menos (80 %).',
	'A motor draws several times its running current at the start: take a slow fuse or a breaker of motor type.':
		'Un motor toma al arrancar varias veces su corriente de marcha: usa un fusible lento o un disyuntor para motores.',
	'Parallel conductors share only when they are of the same length, size and lugs; if one comes off, the others are overloaded behind this device. One thicker conductor is better.':
		'Los conductores en paralelo solo se reparten si tienen igual longitud, sección y terminales; si uno se suelta, los demás quedan sobrecargados tras esta protección. Es mejor un conductor más grueso.',
	'On mains only 1/0 AWG (50 mm²) and thicker may be run in parallel.':
		'En la red solo se pueden poner en paralelo 1/0 AWG (50 mm²) y más gruesos.',
	'A drop over 10 % leaves many 12 V devices below their working voltage.':
		'Una caída de más del 10 % deja muchos aparatos de 12 V por debajo de su tensión de trabajo.',
	'my tables have no value for {0} insulation': 'mis tablas no tienen valor para aislamiento de {0}',
	'No single conductor in my tables does it: {0} {1}.':
		'Ningún conductor único de mis tablas sirve: {0} {1}.',
	'Shorten the run, raise the voltage (24 or 48 V), split the load, or lay it in a cooler or freer way.':
		'Acorta el recorrido, sube la tensión (24 o 48 V), reparte la carga, o tiéndelo más fresco o más libre.',
	'too thin': 'demasiado fino',
	'smallest size that passes': 'sección mínima que cumple',
	'would do: {0} drop': 'bastaría: caída de {0}',
	'{0} is enough: {1} fuse or breaker at the source end':
		'{0} basta: fusible o disyuntor de {1} en el extremo de la fuente',
	'{0} is too thin, and no single size in my tables is enough':
		'{0} es demasiado fino, y ninguna sección única de mis tablas basta',
	'{0} is too thin: take {1} with a {2} device': '{0} es demasiado fino: toma {1} con protección de {2}',
	'Each parallel conductor: same length, same lugs, landed on the same studs.':
		'Cada conductor en paralelo: misma longitud, mismos terminales, conectado a los mismos bornes.',
	'How far which size may run? Name the conductor, or the length.':
		'¿Hasta dónde puede llegar qué sección? Indica el conductor o la longitud.',
	'asked how far it may run': 'se pregunta hasta dónde puede llegar',
	'longest run, one way': 'tramo más largo, ida',
	'{0} reaches {1} one way with {2} at {3}; {4} device':
		'{0} llega a {1} de ida con {2} a {3}; protección de {4}',
	'There the drop is {0} = {1} (limit {2}).': 'Ahí la caída es de {0} = {1} (límite {2}).',
};
