import type { Phrasebook } from '../phrasebook.js';

export const inputs: Phrasebook = {
	'The {0} is missing.': 'Falta el dato: {0}.',
	"I read {0} as the {1}; that can't be.": 'Leo {0} como {1}; no puede ser.',
	"I can't use {0} as the {1}.": 'No puedo usar {0} como {1}.',
	'a list of {0}': 'una lista de {0}',
	'The {0} must be from {1} to {2}.': 'Para {0} vale de {1} a {2}.',
	'The {0} must be a whole number from {1} to {2}.': 'Para {0} vale un número entero de {1} a {2}.',
	'The {0} is one of: {1}.': 'Para {0} vale uno de estos: {1}.',
	'The {0} is yes or no.': 'Para {0} vale sí o no.',
	'The {0} is a size such as 4 AWG, 2/0 AWG or 35 mm².':
		'Para {0} vale una sección como 4 AWG, 2/0 AWG o 35 mm².',
	'The {0} is a name of up to 200 characters.': 'Para {0} vale un nombre de hasta 200 caracteres.',
	'The {0} is the name of a place, such as "Flagstaff".':
		'Para {0} vale el nombre de un lugar, como "Flagstaff".',
	'The {0} is a month, such as "March".': 'Para {0} vale un mes, como "marzo".',
	'The {0} holds 1 to {1} items.': 'Para {0} valen de 1 a {1} elementos.',
	'What is the {0}?': '¿Cuál es el valor de: {0}?',
};
