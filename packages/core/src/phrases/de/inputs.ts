import type { Phrasebook } from '../phrasebook.js';

export const inputs: Phrasebook = {
	'The {0} is missing.': 'Die Angabe fehlt: {0}.',
	"I read {0} as the {1}; that can't be.": 'Ich lese {0} als Angabe "{1}"; das kann nicht sein.',
	"I can't use {0} as the {1}.": 'Ich kann {0} nicht als Angabe "{1}" verwenden.',
	'a list of {0}': 'eine Liste mit {0} Einträgen',
	'The {0} must be from {1} to {2}.': 'Zulässig für die Angabe "{0}": {1} bis {2}.',
	'The {0} must be a whole number from {1} to {2}.':
		'Zulässig für die Angabe "{0}": eine ganze Zahl von {1} bis {2}.',
	'The {0} is one of: {1}.': 'Zulässig für die Angabe "{0}": {1}.',
	'The {0} is yes or no.': 'Zulässig für die Angabe "{0}": ja oder nein.',
	'The {0} is a size such as 4 AWG, 2/0 AWG or 35 mm².':
		'Zulässig für die Angabe "{0}": ein Querschnitt wie 4 AWG, 2/0 AWG oder 35 mm².',
	'The {0} is a name of up to 200 characters.':
		'Zulässig für die Angabe "{0}": ein Name mit bis zu 200 Zeichen.',
	'The {0} is the name of a place, such as "Flagstaff".':
		'Zulässig für die Angabe "{0}": der Name eines Ortes, wie "Flagstaff".',
	'The {0} is a month, such as "March".': 'Zulässig für die Angabe "{0}": ein Monat, wie "März".',
	'The {0} holds 1 to {1} items.': 'Zulässig für die Angabe "{0}": 1 bis {1} Einträge.',
	'What is the {0}?': 'Welcher Wert gilt für: {0}?',
};
