import type { Phrasebook } from '../phrasebook.js';

export const tank: Phrasebook = {
	'fresh tank': 'depósito de agua limpia',
	'How big is the fresh tank, or how many days should the water last?':
		'¿Qué tamaño tiene el depósito de agua limpia, o cuántos días debe durar el agua?',
	'{0} fresh and {1} gray': '{0} de agua limpia y {1} de aguas grises',
	'The gray tank ({0}) is full before: it must hold {1}.':
		'El depósito de aguas grises ({0}) se llena antes: debe tener {1}.',
	'The fresh water alone weighs {0}.': 'Solo el agua limpia pesa {0}.',
	'{0} for {1}': '{0} para {1}',
	'gray tank': 'depósito de aguas grises',
	'How many people live aboard?': '¿Cuántas personas viven a bordo?',
	children: 'niños',
	'none named besides the people': 'ninguno indicado además de las personas',
	'days wanted': 'días deseados',
	'showers aboard': 'duchas a bordo',
	'the safe side: people shower aboard': 'el lado seguro: se duchan a bordo',
	'running time of a shower': 'tiempo de agua corriendo en una ducha',
	'water running 3 min, turned off to soap (practice)':
		'agua corriendo 3 min, cerrada al enjabonarse (práctica)',
	'showers a person a day': 'duchas por persona al día',
	'one a day each; many vans shower less (practice)':
		'una al día cada uno; en muchas furgonetas menos (práctica)',
	'flow of the shower head': 'caudal de la alcachofa',
	'dishes, all together a day': 'platos, todos juntos al día',
	'3 L a person a day in a basin (practice)': '3 L por persona al día en un barreño (práctica)',
	'hands and teeth, a person a day': 'manos y dientes, por persona al día',
	'hands, face and teeth (practice)': 'manos, cara y dientes (práctica)',
	'drinking and cooking, a person a day': 'beber y cocinar, por persona al día',
	'drinking and cooking (practice); more in the heat': 'beber y cocinar (práctica); más con calor',
	'drinking water in bottles': 'agua de beber en botellas',
	'drinking water comes from the tank': 'el agua de beber sale del depósito',
	'flushing, a person a day': 'descarga del inodoro, por persona al día',
	'nothing said of a toilet that flushes from this tank':
		'no se dijo nada de un inodoro que descargue de este depósito',
	'usable share of the fresh tank': 'parte utilizable del depósito de agua limpia',
	'the pick-up leaves about 5 % (practice)': 'la toma deja cerca del 5 % (práctica)',
	'By these habits hardly any water is used at all.': 'Con estas costumbres casi no se usa agua.',
	'Give at least one use of water: drinking, dishes, washing or showers.':
		'Da al menos un uso del agua: beber, platos, lavarse o duchas.',
	'{0}: the gray tank is full first; fresh lasts {1}':
		'{0}: el de aguas grises se llena primero; el agua limpia dura {1}',
	'{0} until the fresh tank is empty': '{0} hasta vaciar el depósito de agua limpia',
	'{0}: the fresh tank is empty first; gray lasts {1}':
		'{0}: el de agua limpia se vacía primero; el de aguas grises dura {1}',
	'The crew uses {0} a day; {1} of it runs to the gray tank.':
		'A bordo se usan {0} al día; {1} de ello va al depósito de aguas grises.',
	'showers a day': 'duchas al día',
	'water to the gray tank a day': 'agua al depósito de aguas grises al día',
	'fresh water a day': 'agua limpia al día',
	'days of fresh water': 'días de agua limpia',
	'days until the gray tank is full': 'días hasta llenar el depósito de aguas grises',
	'days until the first tank stops you': 'días hasta que el primer depósito te detiene',
	'days until fresh is empty': 'días hasta vaciar el agua limpia',
	'days until gray is full': 'días hasta llenar las aguas grises',
	'gray water a day': 'aguas grises al día',
	'gray tank that takes all of the fresh': 'depósito de aguas grises que recoge toda el agua limpia',
	'weight of the water in a full fresh tank': 'peso del agua en un depósito de agua limpia lleno',
	'weight of the water in a full gray tank': 'peso del agua en un depósito de aguas grises lleno',
	'fresh tank for the days wanted': 'depósito de agua limpia para los días deseados',
	'gray tank for the days wanted': 'depósito de aguas grises para los días deseados',
	'1 person': '1 persona',
	'{0} people': '{0} personas',
	'up to {0} a shower': 'hasta {0} por ducha',
	'down to {0} a shower, below which the fresh tank is the first':
		'hasta {0} por ducha; por debajo, el agua limpia es la primera',
	'up to {0} a shower, above which the gray tank is the first':
		'hasta {0} por ducha; por encima, las aguas grises son las primeras',
	'No gray tank was named; to take all of this fresh water it must hold {0}.':
		'No se indicó depósito de aguas grises; para recoger toda esta agua limpia debe tener {0}.',
	'The gray tank ({0}) is full while {1} of fresh water is left. A gray tank of {2} takes it all.':
		'El depósito de aguas grises ({0}) está lleno cuando aún quedan {1} de agua limpia. Uno de {2} lo recoge todo.',
	'For {0} it takes {1} fresh and {2} gray, or shorter showers.':
		'Para {0} hacen falta {1} de agua limpia y {2} de aguas grises, o duchas más cortas.',
};
