import type { Phrasebook } from '../phrasebook.js';

export const payload: Phrasebook = {
	item: 'Stück',
	'volume of a tank': 'Inhalt eines Tanks',
	'what the tank holds': 'was der Tank enthält',
	'place behind the front axle': 'Stelle hinter der Vorderachse',
	'in the cab': 'im Fahrerhaus',
	'behind the cab': 'hinter dem Fahrerhaus',
	'in the middle': 'in der Mitte',
	'over the rear axle': 'über der Hinterachse',
	'in the back': 'hinten',
	'on the rear door': 'an der Hecktür',
	'part of the van': 'Teil des Fahrzeugs',
	'distance from the middle line': 'Abstand von der Mittellinie',
	left: 'links',
	'right side': 'rechte Seite',
	side: 'Seite',
	'height of its centre over the ground': 'Höhe seiner Mitte über der Straße',
	'on the roof': 'auf dem Dach',
	'what if': 'was wäre wenn',
	'items aboard': 'Stücke an Bord',
	GVWR: 'zulässiges Gesamtgewicht (GVWR)',
	'rear axle rating': 'zulässige Hinterachslast',
	'front axle rating': 'zulässige Vorderachslast',
	'empty weight': 'Leergewicht',
	'empty front axle': 'Vorderachse leer',
	'empty rear axle': 'Hinterachse leer',
	'the usual roof of a camper van; the safe side for its height':
		'das übliche Dach eines Campers; für seine Höhe die sichere Seite',
	'centre of gravity of the bare van over the ground': 'Schwerpunkt des leeren Fahrzeugs über der Straße',
	'typical for the roof (practice)': 'typisch für das Dach (Praxis)',
	track: 'Spurweite',
	'usual for panel vans (practice)': 'üblich für Kastenwagen (Praxis)',
	lift: 'Höherlegung',
	'the driver at least': 'mindestens wer fährt',
	'mass of a person': 'Masse einer Person',
	'75 kg as the European rule counts a driver; the US label counts 68 kg (150 lb). Weigh your people':
		'75 kg, wie die europäische Regel für die fahrende Person rechnet; das US-Schild rechnet 68 kg (150 lb). Die eigenen Leute wiegen',
	'second row behind the front axle': 'zweite Sitzreihe hinter der Vorderachse',
	'What is the GVWR (and the axle ratings), on the door label?':
		'Wie hoch sind das zulässige Gesamtgewicht (GVWR) und die zulässigen Achslasten laut Türschild?',
	'Which wheelbase: short, medium, long or extra-long (or in inches or metres)?':
		'Welcher Radstand: kurz, mittel, lang oder extralang (oder in Zoll oder Metern)?',
	'the item without a name': 'das Stück ohne Namen',
	'What does {0} weigh (or how much does its tank hold)?':
		'Wie schwer ist das: {0} (oder wie viel fasst der Tank)?',
	'The empty axles add to {0}, the empty weight is {1}.':
		'Die leeren Achsen ergeben {0}, das Leergewicht ist {1}.',
	'Give the two axle weights alone, from one weighing.':
		'Nur die beiden Achsgewichte angeben, aus einer Wägung.',
	'I read an empty weight of {0} above the GVWR of {1}.':
		'Ich lese ein Leergewicht von {0}, über dem zulässigen Gesamtgewicht von {1}.',
	'Read both from the door label and the scale slip again.':
		'Beides noch einmal vom Türschild und vom Wiegeschein ablesen.',
	'I read an axle rating above the GVWR of {0}.':
		'Ich lese eine zulässige Achslast über dem zulässigen Gesamtgewicht von {0}.',
	'The GVWR is the rating of the whole van; each axle has a smaller one.':
		'Das zulässige Gesamtgewicht gilt für das ganze Fahrzeug; jede Achse hat eine kleinere Grenze.',
	'typical of the size class (practice); weigh or measure yours':
		'typisch für diese Größe (Praxis); das eigene wiegen oder messen',
	'The empty axle weights are typical of the size class, no more: they can be off by 200 kg. Weigh the van.':
		'Die leeren Achsgewichte sind nur typisch für diese Größe: sie können um 200 kg daneben liegen. Das Fahrzeug wiegen.',
	'the middle of the part of the van named (practice)': 'die Mitte des genannten Fahrzeugteils (Praxis)',
	'cab seats behind the front axle': 'Sitze im Fahrerhaus hinter der Vorderachse',
	'The {0} not known: a van within its GVWR can still overload an axle. Read it from the door label.':
		'Nicht bekannt: {0}. Auch innerhalb des zulässigen Gesamtgewichts kann eine Achse überladen sein. Vom Türschild ablesen.',
	'No place was named for: {0}. Each axle is taken with all of it at the worse end; name their places behind the front axle.':
		'Keine Stelle genannt für: {0}. Jede Achse wird mit allem davon am ungünstigeren Ende gerechnet; die Stellen hinter der Vorderachse angeben.',
	'{0} on the rear axle': '{0} auf der Hinterachse',
	total: 'gesamt',
	'{0} kg empty and {1} lines': '{0} kg leer und {1} Zeilen',
	'rear axle': 'Hinterachse',
	'front axle': 'Vorderachse',
	'centre of gravity over the ground': 'Schwerpunkt über der Straße',
	'bare van at {0} m and {1} lines': 'leeres Fahrzeug bei {0} m und {1} Zeilen',
	'centre of gravity behind the front axle': 'Schwerpunkt hinter der Vorderachse',
	'share on the front axle': 'Anteil auf der Vorderachse',
	'static stability factor': 'statischer Stabilitätsfaktor',
	'static stability factor, bare van': 'statischer Stabilitätsfaktor, leeres Fahrzeug',
	'static stability factor, loaded': 'statischer Stabilitätsfaktor, beladen',
	'rollover in single-vehicle crashes of passenger vehicles':
		'Überschläge bei Alleinunfällen von Personenfahrzeugen',
	'Top-heavy: static stability factor {0}, {1} for the bare van. Lower the heavy things and take weight off the roof.':
		'Kopflastig: statischer Stabilitätsfaktor {0}, leeres Fahrzeug {1}. Schweres nach unten setzen und Gewicht vom Dach nehmen.',
	'Static stability factor {0}: up to {1} is the lowest of the five published bands, {2} of single-vehicle crashes rolled over. Tall vans are there; drive so.':
		'Statischer Stabilitätsfaktor {0}: bis {1} ist das unterste der fünf veröffentlichten Bänder, dort überschlugen sich {2} der Alleinunfälle. Hohe Fahrzeuge liegen dort; entsprechend fahren.',
	'The lift is counted: factor {0} bare before it, {1} loaded after it. Ratings stay as they are.':
		'Die Höherlegung ist gerechnet: Faktor {0} leer davor, {1} beladen danach. Die zulässigen Lasten bleiben, wie sie sind.',
	'The {0} side carries {1} more than the other: move about {2} from one wall to the other.':
		'Die Seite {0} trägt {1} mehr als die andere: etwa {2} von einer Wand zur anderen verlegen.',
	"The {0} wheel carries {1}, above half the axle's rating ({2}): check its tire with the tire topic.":
		'Das Rad {0} trägt {1}, mehr als die halbe zulässige Achslast ({2}): seinen Reifen mit dem Thema Reifen prüfen.',
	'Only {0} % stand on the front axle: steering and front brakes suffer. Move weight forward of the rear axle.':
		'Nur {0} % stehen auf der Vorderachse: Lenkung und Vorderbremsen leiden. Gewicht vor die Hinterachse verlegen.',
	'{0} over the GVWR': '{0} über dem zulässigen Gesamtgewicht',
	'Total {0}, GVWR {1}: leave {2} out, wherever it stands. Brakes, frame and insurance end at the rating.':
		'Gesamt {0}, zulässig {1}: {2} weglassen, gleich wo es steht. Bremsen, Rahmen und Versicherung enden an dieser Grenze.',
	'over the rear axle rating': 'über der zulässigen Hinterachslast',
	'leave out of {0}': 'weglassen von: {0}',
	'leave out {0} of {1}': '{0} weglassen von: {1}',
	'move {0}': 'verlegen: {0}',
	'move {0} {1} forward': '{1} nach vorn verlegen: {0}',
	'move {0} {1} back': '{1} nach hinten verlegen: {0}',
	'Cleared by one of: {0}.': 'Eines davon hilft ab: {0}.',
	'No single item clears it: take at least {0} off at that end, over several items.':
		'Kein einzelnes Stück hilft ab: an diesem Ende mindestens {0} wegnehmen, über mehrere Stücke.',
	'The {0} axle has {1} with full tanks, rated {2}: {3} too much. {4}':
		'Achse {0}: {1} mit vollen Tanks, zulässig {2}: {3} zu viel. {4}',
	'{0} axle {1} over its rating': 'Achse {0}: {1} über der zulässigen Last',
	' Within the rear rating.': ' Innerhalb der zulässigen Hinterachslast.',
	' Still over the rear rating.': ' Noch immer über der zulässigen Hinterachslast.',
	'What if {0}: rear axle {1} ({2}), front axle {3}, total {4}.{5}':
		'Was wäre wenn {0}: Hinterachse {1} ({2}), Vorderachse {3}, gesamt {4}.{5}',
	'Front axle {0}, rear axle {1}, tanks full.': 'Vorderachse {0}, Hinterachse {1}, Tanks voll.',
	'Front axle at most {0}, rear axle at most {1}, tanks full.':
		'Vorderachse höchstens {0}, Hinterachse höchstens {1}, Tanks voll.',
	'within the ratings': 'innerhalb der zulässigen Lasten',
	overloaded: 'überladen',
	'Only {0} are left {1}: clothes, food and water bottles of a trip weigh more.':
		'Nur {0} bleiben {1}: Kleidung, Essen und Wasserflaschen einer Reise wiegen mehr.',
	'more load': 'mehr Last',
	'up to {0} more {1}': 'bis {0} mehr {1}',
	'{0} in all: {1} left {2}{3}': '{0} insgesamt: {1} bleiben {2}{3}',
	'on the rear axle': 'auf der Hinterachse',
	'on the front axle': 'auf der Vorderachse',
};
