import type { Phrasebook } from '../phrasebook.js';

export const drain: Phrasebook = {
	tank: 'depósito',
	'How much water is in the tank?': '¿Cuánta agua hay en el depósito?',
	'depth of water': 'profundidad del agua',
	'a flat tank under the floor (practice)': 'un depósito plano bajo el suelo (práctica)',
	'length of the hose': 'longitud de la manguera',
	'fall from the outlet to the open end': 'caída de la salida al extremo abierto',
	'the safe side: the open end level with the outlet':
		'el lado seguro: el extremo abierto al nivel de la salida',
	'bore of the valve': 'paso de la válvula',
	'bore of the hose': 'paso de la manguera',
	'time wanted': 'tiempo deseado',
	'bore of the vent': 'paso de la ventilación',
	vented: 'ventilado',
	'air can come in as the water leaves': 'puede entrar aire mientras sale el agua',
	'discharge coefficient': 'coeficiente de descarga',
	'a sharp edge; a rounded outlet does better': 'un borde vivo; una salida redondeada lo hace mejor',
	'water temperature': 'temperatura del agua',
	'cold water, which flows hardest': 'agua fría, la que peor fluye',
	'What is the bore of the drain valve?': '¿Qué paso tiene la válvula de vaciado?',
	'Check the volume and the depth of the water.': 'Comprueba el volumen y la profundidad del agua.',
	'{0} only {1} deep would cover {2}.': '{0} con solo {1} de profundidad cubrirían {2}.',
	'How long is the hose?': '¿Qué longitud tiene la manguera?',
	'Allow more time, a wider or shorter hose, or more fall.':
		'Da más tiempo, una manguera más ancha o más corta, o más caída.',
	'No valve up to {0} empties it in {1}{2}.': 'Ninguna válvula hasta {0} lo vacía en {1}{2}.',
	' through that hose': ' por esa manguera',
	'time to empty': 'tiempo hasta vaciarse',
	'flow at the start': 'caudal al inicio',
	'mean flow': 'caudal medio',
	'time until half is out': 'tiempo hasta que sale la mitad',
	'left in the tank': 'queda en el depósito',
	'bore of the vent it needs': 'paso de ventilación que necesita',
	'flow kept by the hose': 'caudal que conserva la manguera',
	'Open the vent before the valve: a thin tank sucked empty without air folds in.':
		'Abre la ventilación antes que la válvula: un depósito fino vaciado sin aire se hunde hacia dentro.',
	'{0} valve: empty in {1}': 'válvula de {0}: vacío en {1}',
	'Empty in {0} through {1}': 'Vacío en {0} por {1}',
	'friction in the hose': 'fricción en la manguera',
	'the valve': 'la válvula',
	'It starts at {0} and slows as the level falls; the vent needs {1}.':
		'Empieza con {0} y frena al bajar el nivel; la ventilación necesita {1}.',
	'surface of the water': 'superficie del agua',
	'empty in {0}': 'vacío en {0}',
	'Without a vent it glugs, stops or folds the tank; it needs a vent of at least {0}.':
		'Sin ventilación gorgotea, se para o hunde el depósito; necesita una de al menos {0}.',
	'The vent ({0}) is too small for this flow; it needs {1}.':
		'La ventilación ({0}) es demasiado pequeña para este caudal; necesita {1}.',
	"It won't be empty in {0} with any valve through that hose; a wider hose or more fall helps.":
		'No se vaciará en {0} con ninguna válvula por esa manguera; ayuda una manguera más ancha o más caída.',
	"It won't be empty in {0}; a valve of {1} does it.": 'No se vaciará en {0}; una válvula de {1} lo logra.',
	'The hose is narrower than the valve and decides; food scraps lodge where it narrows.':
		'La manguera es más estrecha que la válvula y decide; los restos de comida se atascan donde se estrecha.',
};
