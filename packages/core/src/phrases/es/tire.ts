import type { Phrasebook } from '../phrasebook.js';

export const tire: Phrasebook = {
	'axle load': 'carga del eje',
	'load index': 'índice de carga',
	'load index in twins': 'índice de carga en gemelas',
	'marking on the sidewall': 'marca en el flanco',
	'two single tires': 'dos neumáticos simples',
	'twin tires': 'neumáticos gemelos',
	'tires on the axle': 'neumáticos en el eje',
	'one tire a side; say twins where there are two': 'un neumático por lado; di gemelos donde haya dos',
	'speed symbol': 'símbolo de velocidad',
	'top speed': 'velocidad máxima',
	'LT or C tire': 'neumático LT o C',
	'passenger car tire': 'neumático de turismo',
	'kind of tire': 'tipo de neumático',
	'LT or C marking, as vans carry': 'marca LT o C, como llevan las furgonetas',
	'cold pressure': 'presión en frío',
	'pressure at the full load': 'presión a plena carga',
	'pressure on the door label': 'presión de la etiqueta de la puerta',
	'temperature now': 'temperatura ahora',
	'temperature when it was set': 'temperatura cuando se ajustó',
	'a shop at 20 °C': 'un taller a 20 °C',
	'altitude now': 'altitud ahora',
	'altitude where it was set': 'altitud donde se ajustó',
	'sea level': 'nivel del mar',
	'What load index is on the sidewall (as 121/120R), or what is the pressure?':
		'¿Qué índice de carga pone el flanco (como 121/120R), o cuál es la presión?',
	'I read "{0}" as the marking on the sidewall; that is no load index.':
		'Leo "{0}" como marca del flanco; no es un índice de carga.',
	'Give it as printed, such as 121/120R.': 'Dalo como está impreso, por ejemplo 121/120R.',
	'pressure now': 'presión ahora',
	'What load index is on the sidewall and what does the axle carry (or how cold, how high is it now)?':
		'¿Qué índice de carga pone el flanco y qué lleva el eje (o cuánto frío hace y a qué altitud está ahora)?',
	'From {0} nothing would be left.': 'Desde {0} no quedaría nada.',
	'Check the pressure and both temperatures.': 'Comprueba la presión y las dos temperaturas.',
	change: 'cambio',
	'set there, to have as much now': 'ajuste allí para tener lo mismo ahora',
	'{0} becomes {1}: add air in the cold': '{0} pasan a ser {1}: añade aire en frío',
	'{0} becomes {1}': '{0} pasan a ser {1}',
	'The air in the tire keeps its amount: its absolute pressure goes with the absolute temperature, and the gauge reads against the air around.':
		'El aire del neumático conserva su cantidad: su presión absoluta sigue a la temperatura absoluta, y el manómetro mide contra el aire de alrededor.',
	'{0} is below the {1} of the door label: add {2}.':
		'{0} queda por debajo de los {1} de la etiqueta de la puerta: añade {2}.',
	'What stands on the axle, loaded?': '¿Qué carga lleva el eje, cargado?',
	'What is the second load index on the sidewall, for twin tires?':
		'¿Cuál es el segundo índice de carga del flanco, para gemelas?',
	'I read {0} for single tires and {1} for twins; in twins a tire carries less.':
		'Leo {0} para neumáticos simples y {1} para gemelos; en gemelas un neumático lleva menos.',
	'Give the first number on the sidewall for single tires, the second for twins.':
		'Da el primer número del flanco para simples y el segundo para gemelas.',
	'I read {0} as the load index.': 'Leo {0} como índice de carga.',
	'Load indices from {0} to {1} are in my table.': 'Mi tabla tiene índices de carga de {0} a {1}.',
	'the axle’s tires carry': 'llevan los neumáticos del eje',
	reserve: 'reserva',
	'Passenger car tires on a van count for their rating divided by 1.10.':
		'Los neumáticos de turismo en una furgoneta cuentan por su valor dividido entre 1.10.',
	'the tires carry': 'los neumáticos llevan',
	'reserve over the load': 'reserva sobre la carga',
	'smallest load index that carries it': 'índice de carga mínimo que la lleva',
	'Twins share only when both have the same size and pressure; with one flat the other carries all, more than it may.':
		'Los gemelos solo se reparten la carga si tienen igual medida y presión; con uno pinchado el otro lo lleva todo, más de lo que puede.',
	'The tires carry {0}, the axle has {1}: {2} too much. Take that off the axle; no load index in my table carries it.':
		'Los neumáticos llevan {0}, el eje tiene {1}: {2} de más. Quita eso del eje; ningún índice de carga de mi tabla lo lleva.',
	"The tires carry {0}, the axle has {1}: {2} too much. Take that off the axle or fit tires of load index {3} or more, if the axle's rating allows the load.":
		'Los neumáticos llevan {0}, el eje tiene {1}: {2} de más. Quita eso del eje o monta neumáticos de índice de carga {3} o más, si el límite del eje admite la carga.',
	'Too weak: the axle is {0} over what its tires carry':
		'Demasiado débil: el eje supera en {0} lo que llevan sus neumáticos',
	'{0} tires of load index {1} carry {2}; {3} stand on the axle.':
		'{0} neumáticos de índice de carga {1} llevan {2}; sobre el eje hay {3}.',
	'Only {0} in hand. Sides are never loaded alike: weigh each wheel, or take the next load index.':
		'Solo quedan {0}. Los lados nunca van igual de cargados: pesa cada rueda, o toma el índice de carga siguiente.',
	'Enough: the tires carry {0}, {1} more than the axle has':
		'Basta: los neumáticos llevan {0}, {1} más que el eje',
	'{0} tires of load index {1} at {2} kg each; {3} stand on the axle.':
		'{0} neumáticos de índice de carga {1} a {2} kg cada uno; sobre el eje hay {3}.',
	'load index {0}': 'índice de carga {0}',
	'carries {0}': 'lleva {0}',
	'highest speed of the symbol': 'velocidad máxima del símbolo',
	'Symbol {0} ends at {1} km/h; the load index does not hold above it. Drive slower or fit a faster symbol.':
		'El símbolo {0} acaba en {1} km/h; por encima el índice de carga no vale. Conduce más despacio o monta un símbolo más rápido.',
	'{0} is above the {1} printed on the sidewall.': '{0} supera los {1} impresos en el flanco.',
	'pressure for this load': 'presión para esta carga',
	'for comparison, with exponent 0.8': 'para comparar, con exponente 0.8',
	'cold pressure at least': 'presión en frío como mínimo',
	'{0} is too little for this load: set at least {1} cold.':
		'{0} es demasiado poco para esta carga: ajusta al menos {1} en frío.',
	'load on one tire': 'carga de un neumático',
	'size on the sidewall': 'medida en el flanco',
	'load on the axle': 'carga sobre el eje',
};
