import type { Phrasebook } from '../phrasebook.js';

export const restraint: Phrasebook = {
	'mass of the item': 'Masse des Stücks',
	'What does the item weigh (with what is in it)?': 'Wie schwer ist das Stück (mit dem, was darin ist)?',
	'centre of mass over its base': 'Schwerpunkt über der Grundfläche',
	'height of the item': 'Höhe des Stücks',
	'bolt spacing along the van': 'Schraubenabstand längs im Fahrzeug',
	'How far apart are the bolts along the van, first to last?':
		'Wie weit liegen die Schrauben längs im Fahrzeug auseinander, von der ersten zur letzten?',
	'bolt spacing across the van': 'Schraubenabstand quer im Fahrzeug',
	'How far apart are the bolts across the van?':
		'Wie weit liegen die Schrauben quer im Fahrzeug auseinander?',
	bolts: 'Schrauben',
	thread: 'Gewinde',
	'property class': 'Festigkeitsklasse',
	'the usual class; read it from the head': 'die übliche Klasse; vom Kopf ablesen',
	crash: 'Aufprall',
	'delivery van': 'Lieferwagen',
	driving: 'Fahrbetrieb',
	'load case': 'Lastfall',
	'people ride in the same room: held in a crash, not only under braking':
		'Menschen fahren im selben Raum mit: gehalten beim Aufprall, nicht nur beim Bremsen',
	'forward load in g': 'Last nach vorn in g',
	'prying factor': 'Abhebelfaktor',
	'an angle bracket with its bolt in mid leg doubles the pull (a stiff foot or a bolt through the base: 1)':
		'ein Winkel mit der Schraube in der Schenkelmitte verdoppelt den Zug (ein steifer Fuß oder eine Schraube durch die Grundfläche: 1)',
	'through-bolted': 'durchgeschraubt',
	'rivet nut': 'Einnietmutter',
	'wood screw': 'Holzschraube',
	'how it is bolted': 'wie es verschraubt ist',
	'through-bolts with nuts and backing plates': 'Durchgangsschrauben mit Muttern und Gegenplatten',
	'pull-out load of the insert': 'Auszugslast des Einsatzes',
	'thickness of what it is bolted to': 'Dicke dessen, woran es verschraubt ist',
	steel: 'Stahl',
	aluminium: 'Aluminium',
	'metal of the sheet': 'Metall des Blechs',
	'steel body': 'Stahlkarosserie',
	'washer or backing plate': 'Scheibe oder Gegenplatte',
	'safety factor on the proof load': 'Sicherheitsfaktor auf die Prüfkraft',
	'two against lasting stretch (practice)': 'zwei gegen bleibende Dehnung (Praxis)',
	'it holds people': 'es hält Menschen',
	'How tall is the item (or how high is its centre of mass over its base)?':
		'Wie hoch ist das Stück (oder wie hoch liegt sein Schwerpunkt über der Grundfläche)?',
	'I do not size seats, belts, child seats or their anchorages: lives hang on tests that no sum replaces.':
		'Ich bemesse keine Sitze, Gurte, Kindersitze oder deren Verankerungen: an Prüfungen, die keine Rechnung ersetzt, hängen Leben.',
	'Use a seat and belt set certified for this van and fit it as its maker says, or have a licensed engineer test the anchorage (49 CFR 571.207, 571.209 and 571.210; UN R14 and R17).':
		'Einen für dieses Fahrzeug zertifizierten Satz aus Sitz und Gurt verwenden und nach Herstellerangabe einbauen, oder die Verankerung von einem zugelassenen Ingenieur prüfen lassen (49 CFR 571.207, 571.209 und 571.210; UN R14 und R17).',
	'Wood screws pull out of a floor in a crash; I do not size them for heavy items.':
		'Holzschrauben reißen beim Aufprall aus dem Boden; für schwere Stücke bemesse ich sie nicht.',
	'Bolt through the floor with nuts and backing plates, or into rated rails.':
		'Durch den Boden mit Muttern und Gegenplatten verschrauben oder in dafür bemessene Schienen.',
	'What pull-out load does the maker give for the rivet nut in this sheet? No general standard has one.':
		'Welche Auszugslast nennt der Hersteller für die Einnietmutter in diesem Blech? Keine allgemeine Norm hat eine.',
	'I read a centre of mass {0} up on an item {1} tall.':
		'Ich lese einen Schwerpunkt in {0} Höhe an einem Stück von {1} Höhe.',
	'The centre of mass lies within the item.': 'Der Schwerpunkt liegt innerhalb des Stücks.',
	'half its height': 'die Hälfte seiner Höhe',
	'I read {0} as the property class; I have proof loads for 8.8 and 10.9 alone.':
		'Ich lese {0} als Festigkeitsklasse; Prüfkräfte habe ich nur für Klasse 8.8 und Klasse 10.9.',
	'Use 8.8 or 10.9, marked on the head. Stainless and plain bolts carry less.':
		'Klasse 8.8 oder Klasse 10.9 verwenden, auf dem Kopf gekennzeichnet. Edelstahl- und einfache Schrauben tragen weniger.',
	'{0} bolts in one line do not keep an item from tipping over them.':
		'{0} Schrauben in einer Linie hindern ein Stück nicht daran, darüber zu kippen.',
	'Use at least four, at the corners of the base.':
		'Mindestens vier verwenden, an den Ecken der Grundfläche.',
	'No fixing in my table holds it: even {0} would be loaded to {1}.':
		'Keine Befestigung in meiner Tabelle hält es: selbst {0} wären zu {1} belastet.',
	'Set the bolts further apart, hold the item at its top as well, lower it, use a thicker plate, or split the load.':
		'Die Schrauben weiter auseinander setzen, das Stück auch oben halten, tiefer setzen, eine dickere Platte verwenden oder die Last teilen.',
	'{0} of what is allowed': '{0} des Zulässigen',
	'{0} hold {1} at {2} g ({3} used)': '{0} halten {1} bei {2} g ({3} genutzt)',
	'{0} × {1} class {2}': '{0} × {1} Klasse {2}',
	'{0} {1} on its centre of mass: each bolt {2} in shear and up to {3} in tension.':
		'{0} {1} am Schwerpunkt: je Schraube {2} auf Abscheren und bis {3} auf Zug.',
	'force {0}': 'Kraft {0}',
	'shear in each bolt': 'Abscheren je Schraube',
	'tension in the most loaded bolt': 'Zug in der höchstbelasteten Schraube',
	'allowed in shear': 'zulässig auf Abscheren',
	'proof load {0} N, safety factor {1}': 'Prüfkraft {0} N, Sicherheitsfaktor {1}',
	'allowed in tension': 'zulässig auf Zug',
	used: 'genutzt',
	'share used': 'genutzter Anteil',
	'deciding direction': 'entscheidende Richtung',
	'This load case covers braking and bends alone. In a crash the item comes loose: where people ride in the same room, ask for the crash case.':
		'Dieser Lastfall deckt nur Bremsen und Kurven. Beim Aufprall löst sich das Stück: wo Menschen im selben Raum mitfahren, nach dem Lastfall Aufprall fragen.',
	'The bolts are checked, what they are bolted to is not: body sheet under 1 mm tears first. Name its thickness, and use backing plates of 3 mm or more over ribs.':
		'Die Schrauben sind geprüft, ihr Untergrund nicht: Karosserieblech unter 1 mm reißt zuerst. Seine Dicke angeben und Gegenplatten von 3 mm oder mehr über Spanten verwenden.',
	'No washer or backing plate was named: the sheet is checked as if the nut pulled on the bare hole. Name its diameter.':
		'Keine Scheibe oder Gegenplatte genannt: das Blech ist geprüft, als zöge die Mutter am bloßen Loch. Ihren Durchmesser angeben.',
	'The odd bolt is not counted: two even lines are taken.':
		'Die ungerade Schraube zählt nicht: gerechnet sind zwei gleiche Reihen.',
	'too weak': 'zu schwach',
	'{0} are enough ({1} used)': '{0} reichen ({1} genutzt)',
	'Set the bolts further apart, hold the item at its top as well, or lower it.':
		'Die Schrauben weiter auseinander setzen, das Stück auch oben halten oder tiefer setzen.',
	'{0} would hold ({1}).': '{0} würden halten ({1}).',
	'{0} are loaded to {1} {2}: the item comes loose. {3}':
		'{0} sind zu {1} belastet {2}: das Stück löst sich. {3}',
	'{0} are too weak ({1})': '{0} sind zu schwach ({1})',
};
