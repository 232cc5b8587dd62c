import type { Phrasebook } from '../phrasebook.js';

export const shortCircuit: Phrasebook = {
	'point of the fault': 'Fehlerstelle',
	'cable from the bank to the point': 'Leitung von der Batteriebank zur Stelle',
	'one-way length of that cable': 'einfache Länge dieser Leitung',
	'cables in parallel in each leg': 'parallele Leitungen in jedem Zweig',
	'one cable in each leg': 'eine Leitung in jedem Zweig',
	'cold-cranking amperes of the bank': 'Kaltstartstrom der Batteriebank',
	'I read "{0}" as the cable; no such size is in my tables.':
		'Ich lese "{0}" als Leitung; diesen Querschnitt gibt es in meinen Tabellen nicht.',
	'What size is that cable?': 'Welchen Querschnitt hat diese Leitung?',
	'How long is that cable, one way?': 'Wie lang ist diese Leitung, einfach gemessen?',
	'the same at the terminals of the bank': 'derselbe an den Polen der Batteriebank',
	'open-circuit voltage': 'Leerlaufspannung',
	'cable loop at 20 °C': 'Leitungsschleife bei 20 °C',
	'interrupting rating a device here needs, at direct current':
		'Ausschaltvermögen, das ein Schutzorgan hier braucht, bei Gleichstrom',
	'fuses that can break it': 'Sicherungen, die ihn abschalten können',
	'none of mine': 'keine von meinen',
	'fuses that can not': 'Sicherungen, die es nicht können',
	none: 'keine',
	'About {0}: no fuse in my tables breaks that, ask the battery maker':
		'Etwa {0}: keine Sicherung in meinen Tabellen schaltet das ab, beim Hersteller der Batterie fragen',
	'About {0}: needs a {1} marked {2} DC or more':
		'Etwa {0}: nötig ist {1} mit Kennzeichnung {2} DC oder mehr',
	'About {0}: a {1} breaks that on {2}': 'Etwa {0}: {1} schaltet das an {2} ab',
	'{0} behind {1} inside the bank, right at its terminals; every metre of cable lowers it.':
		'{0} hinter {1} in der Batteriebank, direkt an ihren Polen; jeder Meter Leitung senkt ihn.',
	'{0} behind {1} inside the bank and {2} of cold cable.':
		'{0} hinter {1} in der Batteriebank und {2} kalter Leitung.',
	'resistance of the bank': 'Widerstand der Batteriebank',
	'cable loop, both legs at 20 °C': 'Leitungsschleife, hin und zurück, bei 20 °C',
	'prospective current': 'unbeeinflusster Strom',
	'least interrupting capacity of the main breaker on a boat':
		'kleinstes Ausschaltvermögen des Hauptschalters auf einem Boot',
	'the same of branch breakers': 'dasselbe für Schalter der Abzweige',
	"A bank this large needs the battery maker's own short-circuit current; where that is over 10 kA the boat rule takes a device of {0}.":
		'Eine so große Batteriebank braucht den Kurzschlussstrom vom Hersteller der Batterie selbst; wo er über 10 kA liegt, nimmt die Bootsvorschrift ein Schutzorgan mit {0}.',
	'The internal resistance is the usual one of the chemistry: ask the maker for the short-circuit current of this battery before the main fuse is bought.':
		'Der Innenwiderstand ist der übliche der Zellchemie: vor dem Kauf der Hauptsicherung beim Hersteller den Kurzschlussstrom dieser Batterie erfragen.',
	'{0} is more than blade, strip and bolt-down vehicle fuses break (1000 to 2000 A): such a fuse can burst and burn on here. Fit one whose own marking gives the direct-current interrupting rating.':
		'{0} sind mehr, als Flach-, Streifen- und verschraubte Fahrzeugsicherungen abschalten (1000 bis 2000 A): eine solche Sicherung kann hier platzen und weiterbrennen. Eine einbauen, deren eigene Kennzeichnung das Ausschaltvermögen bei Gleichstrom nennt.',
	'{0} is more than a blade fuse breaks (1000 A): a strip or single-bolt fuse is the least here.':
		'{0} sind mehr, als eine Flachsicherung abschaltet (1000 A): hier ist eine Streifen- oder Einbolzensicherung das Mindeste.',
	'Strip fuses are 32 V parts: never on a {0} V bank, whatever the current.':
		'Streifensicherungen sind Teile für 32 V: nie an einer Batteriebank mit {0} V, gleich bei welchem Strom.',
	'An interrupting rating for alternating current says nothing here: a direct-current arc has no zero crossing to go out at.':
		'Ein Ausschaltvermögen bei Wechselstrom sagt hier nichts: ein Gleichstromlichtbogen hat keinen Nulldurchgang, in dem er erlischt.',
	"The battery's own electronics may switch off sooner, or weld shut; the fuse is sized as if they were not there.":
		'Die eigene Elektronik der Batterie kann früher abschalten oder verschweißen; die Sicherung ist bemessen, als wäre sie nicht da.',
	'below {0} A from {1} on': 'unter {0} A ab {1}',
};
