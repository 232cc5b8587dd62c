import type { Phrasebook } from '../phrasebook.js';

export const charge: Phrasebook = {
	'charging time': 'Ladezeit',
	'Charging time': 'Ladezeit',
	'output of the charger': 'Ausgang des Ladegeräts',
	'power of the charger': 'Leistung des Ladegeräts',
	'current of the charger': 'Strom des Ladegeräts',
	'loads while it charges': 'Verbraucher während des Ladens',
	'time there is': 'verfügbare Zeit',
	'a night on the hook-up (practice)': 'eine Nacht am Landanschluss (Praxis)',
	'Switch loads off while it charges, or take a larger charger.':
		'Während des Ladens Verbraucher abschalten oder ein größeres Ladegerät nehmen.',
	'Do not charge it at {0}; warm, it takes {1}': 'Bei {0} nicht laden; warm dauert es {1}',
	'{0} of {1} bears {2} of charging; chargers begin at {3}.':
		'{0} {1} vertragen {2} Ladestrom; Ladegeräte beginnen bei {3}.',
	'Name a charger that can be set so low, or a larger bank.':
		'Ein Ladegerät angeben, das sich so niedrig einstellen lässt, oder eine größere Batteriebank.',
	'Below a tenth of the capacity ({0}) a lead-acid bank in daily use is hardly ever full, and sulphates.':
		'Unter einem Zehntel der Kapazität ({0}) wird eine täglich genutzte Bleibank kaum je voll und sulfatiert.',
	'{0}: {1} to {2} of {3} at {4}': '{0}: {1} bis {2} von {3} mit {4}',
	'{0} is too much for {1}: {2} at most': '{0} sind zu viel für {1}: höchstens {2}',
	'It would take {0}.': 'Es würde dauern: {0}.',
	'In {0} it gets to {1}.': 'In {0} kommt sie auf {1}.',
	"The bank bears {0} by its maker's figure.": 'Die Batteriebank verträgt laut Hersteller {0}.',
	'The bank bears {0}, the usual rate of {1}.': 'Die Batteriebank verträgt {0}, den üblichen Strom für {1}.',
	'{0} charger at most; {1}': 'Höchstens {0} Ladegerät; {1}',
	'{0} charger for {1}; {2}': '{0} Ladegerät für {1}; {2}',
	'Not in {0}: {1} charger at most; {2}': 'Nicht in {0}: höchstens {1} Ladegerät; {2}',
	'charge limit': 'Ladegrenze',
	time: 'Zeit',
};
