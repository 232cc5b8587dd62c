import type { Phrasebook } from '../phrasebook.js';

export const moisture: Phrasebook = {
	'a heated night (practice)': 'una noche con calefacción (práctica)',
	'outside humidity': 'humedad exterior',
	'a cold night is nearly saturated (the safe side)': 'una noche fría está casi saturada (el lado seguro)',
	'water in things hung to dry': 'agua en lo tendido a secar',
	'nothing hung to dry': 'nada tendido a secar',
	'hours of the night': 'horas de la noche',
	'a night of sleep': 'una noche de sueño',
	'cooking time': 'tiempo de cocinar',
	'a meal of half an hour (practice)': 'una comida de media hora (práctica)',
	'gas stove': 'cocina de gas',
	induction: 'inducción',
	'no cooking': 'no se cocina',
	stove: 'cocina',
	'the safe side: burning gas makes water': 'el lado seguro: el gas que arde produce agua',
	'flame of the stove': 'llama de la cocina',
	'one burner (practice)': 'un quemador (práctica)',
	lining: 'revestimiento',
	ribs: 'costillas',
	'surface that is to stay dry': 'superficie que debe seguir seca',
	'the lining over a rib, the coldest surface besides the glass':
		'el revestimiento sobre una costilla, la superficie más fría después del vidrio',
	'air flow there is': 'caudal de aire que hay',
	'air inside': 'aire del interior',
	'a long van with a high roof (practice); it only turns flow into air changes':
		'una furgoneta larga de techo alto (práctica); solo convierte caudal en renovaciones de aire',
	'How cold is it outside (or where)?': '¿Cuánto frío hace fuera (o dónde)?',
	'Give an outside temperature below the inside one.': 'Da una temperatura exterior inferior a la interior.',
	'It is {0} outside and {1} inside: no inner surface is colder than the air.':
		'Fuera hay {0} y dentro {1}: ninguna superficie interior está más fría que el aire.',
	'Nobody is aboard, nothing dries and nothing is cooked: no water is given off.':
		'No hay nadie a bordo, nada se seca y no se cocina: no se desprende agua.',
	'Give the people, the cooking or the wet things.': 'Da las personas, la cocina o las cosas mojadas.',
	'The night gives off {0} of water; this surface is at {1} and wet below that dew point.':
		'La noche desprende {0} de agua; esta superficie está a {1} y se moja por debajo de ese punto de rocío.',
	'{0} keeps the {1} dry overnight; {2} would do': '{0} mantienen seco de noche: {1}; bastarían {2}',
	'{0} is too little: the {1} needs {2} overnight': '{0} es demasiado poco: {1} pide {2} de noche',
	'dew point at the surface': 'punto de rocío en la superficie',
	'{0} of outside air keeps the {1} dry overnight': '{0} de aire exterior mantienen seco de noche: {1}',
	'water given off asleep': 'agua desprendida al dormir',
	'water given off while cooking': 'agua desprendida al cocinar',
	'air that carries it away': 'aire que se la lleva',
	'air that keeps it dry overnight': 'aire que lo mantiene seco de noche',
	'heat that air costs': 'calor que cuesta ese aire',
	'air that keeps it dry while cooking': 'aire que lo mantiene seco al cocinar',
	'water given off an hour, asleep': 'agua desprendida por hora al dormir',
	'water given off an hour, cooking': 'agua desprendida por hora al cocinar',
	'water of the night and its meal': 'agua de la noche y su comida',
	'temperature of the {0}': 'temperatura: {0}',
	'air for the {0}': 'aire para: {0}',
	'highest inside humidity that keeps it dry': 'humedad interior máxima que lo mantiene seco',
	'inside humidity with this air flow': 'humedad interior con este caudal de aire',
	'dew point inside with this air flow': 'punto de rocío interior con este caudal de aire',
	'double acrylic windows': 'ventanas de acrílico doble',
	'up to {0} people': 'hasta {0} personas',
	'The dew point inside rises to {0}: water forms on the {1}. {2} clears it.':
		'El punto de rocío interior sube a {0}: se forma agua en: {1}. {2} lo resuelven.',
	'So much cold air takes {0} of heating; insulation on that surface saves more than it costs.':
		'Tanto aire frío pide {0} de calefacción; aislar esa superficie ahorra más de lo que cuesta.',
	'The glass is colder and needs {0} to stay dry; below that, wipe it in the morning.':
		'El vidrio está más frío y pide {0} para seguir seco; por debajo, sécalo por la mañana.',
	'Cooking takes {0} while it lasts: run the roof fan with a window open.':
		'Cocinar pide {0} mientras dura: pon el ventilador de techo con una ventana abierta.',
	'The surface is below freezing: moisture freezes on it unseen and runs down when it thaws.':
		'La superficie está bajo cero: la humedad se hiela en ella sin verse y escurre al deshelarse.',
};
