import type { Phrasebook } from '../phrasebook.js';

export const fuse: Phrasebook = {
	'load current': 'Laststrom',
	'rating of the fuse to be judged': 'Nennstrom der zu prüfenden Sicherung',
	'load power': 'Leistung des Verbrauchers',
	'conductor it protects': 'Leiter, den sie schützt',
	'What size is the thinnest conductor behind it?': 'Welchen Querschnitt hat der dünnste Leiter dahinter?',
	blade: 'Flachsicherung',
	'sub-miniature blade': 'Subminiatur-Flachsicherung',
	cartridge: 'Blocksicherung',
	strip: 'Streifensicherung',
	'single-bolt': 'Einbolzensicherung',
	'class t': 'Klasse T',
	'class j': 'Klasse J',
	household: 'Haushaltssicherung',
	'kind of fuse to be judged': 'Art der zu prüfenden Sicherung',
	'main fuse of the bank': 'Hauptsicherung der Batteriebank',
	'a branch, unless the main fuse of the bank is named':
		'ein Abzweig, außer die Hauptsicherung der Batteriebank ist genannt',
	'prospective short-circuit current at the fuse': 'unbeeinflusster Kurzschlussstrom an der Sicherung',
	'rating of the fuse before it': 'Nennstrom der Sicherung davor',
	'largest rating of the fuses after it': 'größter Nennstrom der Sicherungen dahinter',
	'one-way length of the conductor': 'einfache Länge des Leiters',
	'conductors in parallel in each leg': 'parallele Leiter in jedem Zweig',
	'one conductor in each leg': 'ein Leiter in jedem Zweig',
	'What current does it carry (or which fuse is to be judged)?':
		'Welchen Strom führt er (oder welche Sicherung ist zu prüfen)?',
	'I read "{0}" as the conductor; no such size is in my tables.':
		'Ich lese "{0}" als Leiter; diesen Querschnitt gibt es in meinen Tabellen nicht.',
	'I have no ampacity for {0} at {1} insulation under these rules.':
		'Für {0} mit einer Isolierung für {1} habe ich nach diesen Regeln keine Strombelastbarkeit.',
	"Name a size of this region's range: {0}.": 'Einen Querschnitt aus der Reihe dieser Region angeben: {0}.',
	'What is the bank: capacity and chemistry (or its short-circuit current from the maker)?':
		'Welche Batteriebank ist es: Kapazität und Zellchemie (oder ihr Kurzschlussstrom laut Hersteller)?',
	'as at the terminals of the bank: cable before the fuse only lowers it':
		'wie an den Polen der Batteriebank: Leitung vor der Sicherung senkt ihn nur',
	'{0} may have no fuse above {1} here, and the load needs {2}: no standard rating does both.':
		'{0} darf hier keine Sicherung über {1} haben, und der Verbraucher braucht {2}: kein genormter Wert erfüllt beides.',
	'Split the load over several conductors, each with its own fuse.':
		'Die Last auf mehrere Leiter verteilen, jeder mit eigener Sicherung.',
	'Run at least {0} for this load, or shed load; the wire topic checks the drop too.':
		'Für diese Last mindestens {0} verlegen oder Last wegnehmen; das Thema Leitung prüft auch den Spannungsfall.',
	'smallest rating': 'kleinster Nennstrom',
	'allowable current of the conductor': 'Strombelastbarkeit des Leiters',
	'largest fuse on this small conductor': 'größte Sicherung an diesem dünnen Leiter',
	rating: 'Nennstrom',
	'rating to be judged': 'zu prüfender Nennstrom',
	'{0} does not protect {1}: the conductor can overheat before the fuse opens. At most {2} here.':
		'{0} schützt {1} nicht: der Leiter kann überhitzen, bevor die Sicherung öffnet. Hier höchstens {2}.',
	"The federal boat rule would allow up to 150 % of the table value below 50 V; we don't use that.":
		'Die Bundesvorschrift für Boote würde unter 50 V bis 150 % des Tabellenwerts erlauben; wir nutzen das nicht.',
	'{0} is under the {1} this load needs: it will age and open for nothing.':
		'{0} liegt unter den {1}, die dieser Verbraucher braucht: sie altert und öffnet ohne Anlass.',
	'A device rated for alternating current only may never open on a battery: its arc has no zero crossing to go out at. Its AC interrupting rating, however high, counts for nothing here.':
		'Ein nur für Wechselstrom bemessenes Schutzorgan öffnet an einer Batterie womöglich nie: sein Lichtbogen hat keinen Nulldurchgang, in dem er erlischt. Sein Ausschaltvermögen bei Wechselstrom, wie hoch auch immer, zählt hier nichts.',
	'A {0} is rated for {1} V at most: on {2} V it may burn on instead of opening.':
		'{0}: bemessen für höchstens {1} V; an {2} V kann sie weiterbrennen, statt zu öffnen.',
	'{0} is not made as a {1}: {2} is the largest.': '{0} gibt es nicht als {1}: {2} ist die größte.',
	'A {0} breaks {1}; a short here draws up to {2}. It can burst and burn on.':
		'{0}: schaltet {1} ab; ein Kurzschluss zieht hier bis zu {2}. Sie kann platzen und weiterbrennen.',
	'Never a {0} as the main fuse of a lithium bank of 100 Ah or more: it breaks {1}, the bank can give many times that.':
		'Nie {0} als Hauptsicherung einer Lithiumbank mit 100 Ah oder mehr: sie schaltet {1} ab, die Bank kann ein Vielfaches davon geben.',
	'at least {0}': 'mindestens {0}',
	'The direct-current rating of a {0} is optional: the fuse itself must be marked for {1} V DC or more and an interrupting rating of{2} DC.':
		'Der Gleichstromwert ist bei {0} freigestellt: die Sicherung selbst muss für {1} V DC oder mehr und ein Ausschaltvermögen von{2} bei DC gekennzeichnet sein.',
	' the fault current': ' dem Fehlerstrom',
	'Most fuses of this kind are 32 V parts: on {0} V only those marked 58 V.':
		'Die meisten Sicherungen dieser Art sind Teile für 32 V: an {0} V nur die mit 58 V gekennzeichneten.',
	'This bank is charged at up to {0}, above the {1} V of the fuse: take one of a higher voltage.':
		'Diese Batteriebank wird mit bis zu {0} geladen, mehr als die {1} V der Sicherung: eine für höhere Spannung nehmen.',
	'smallest rating for the load': 'kleinster Nennstrom für die Last',
	'largest rating for the conductor': 'größter Nennstrom für den Leiter',
	'what the federal boat rule would allow (150 %)':
		'was die Bundesvorschrift für Boote erlauben würde (150 %)',
	'kind of fuse': 'Art der Sicherung',
	'none of my tables': 'keine in meinen Tabellen',
	'verdict on the kind': 'Urteil über die Art',
	'prospective short-circuit current': 'unbeeinflusster Kurzschlussstrom',
	'what that kind breaks': 'was diese Art abschaltet',
	'interrupting rating it must be marked with': 'Ausschaltvermögen, mit dem sie gekennzeichnet sein muss',
	'what that kind is rated for': 'wofür diese Art bemessen ist',
	'carries at least 100 h ({0} %)': 'hält mindestens 100 h ({0} %)',
	'at {0} % opens no sooner than': 'öffnet bei {0} % frühestens nach',
	'at {0} % opens no later than': 'öffnet bei {0} % spätestens nach',
	'short at the far end, at its lowest': 'Kurzschluss am fernen Ende, der kleinste',
	'short-circuit current at the far end, at its lowest': 'Kurzschlussstrom am fernen Ende, der kleinste',
	'that short is cut off within': 'dieser Kurzschluss wird abgeschaltet in',
	'A short at the far end draws only {0} times the rating: the fuse opens slowly or not at all while the conductor heats. Take a thicker conductor or a smaller fuse.':
		'Ein Kurzschluss am fernen Ende zieht nur das {0}-Fache des Nennstroms: die Sicherung öffnet langsam oder gar nicht, während der Leiter heiß wird. Einen dickeren Leiter oder eine kleinere Sicherung nehmen.',
	'rating of the fuse before it over this one': 'Sicherung davor durch diese',
	'this rating over the largest after it': 'diese durch die größte dahinter',
	"{0} before {1} is {2} : 1, so the smaller mostly opens first. Indicative only: in a dead short both may open; the makers' curves decide.":
		'{0} vor {1} sind {2} : 1, also öffnet meist die kleinere zuerst. Nur ein Anhalt: bei einem satten Kurzschluss können beide öffnen; die Kennlinien der Hersteller entscheiden.',
	'{0} before {1} is only {2} : 1: both may open, and everything behind the larger goes dark. Aim for {3} : 1 between fuses of one kind (indicative).':
		'{0} vor {1} sind nur {2} : 1: beide können öffnen, und alles hinter der größeren fällt aus. {3} : 1 zwischen Sicherungen einer Art anstreben (Anhalt).',
	'The kind is chosen by voltage and rating alone: name the bank (capacity and chemistry) or the fault current to have the interrupting rating checked.':
		'Die Art ist nur nach Spannung und Nennstrom gewählt: die Batteriebank (Kapazität und Zellchemie) oder den Fehlerstrom angeben, damit das Ausschaltvermögen geprüft wird.',
	'The fault current rests on the usual resistance of the chemistry: ask the maker for the short-circuit current of this battery.':
		'Der Fehlerstrom beruht auf dem üblichen Widerstand der Zellchemie: beim Hersteller den Kurzschlussstrom dieser Batterie erfragen.',
	"Fuses are rated at room temperature: at {0} they carry less and open sooner. Mount the fuse in a cooler place or ask the maker's derating curve; never answer with a rating above the conductor's.":
		'Sicherungen sind bei Raumtemperatur bemessen: bei {0} tragen sie weniger und öffnen früher. Die Sicherung kühler einbauen oder die Minderungskurve des Herstellers erfragen; nie mit einem Nennstrom über dem des Leiters ausgleichen.',
	'A motor draws several times its running current at the start: take a slow fuse.':
		'Ein Motor zieht beim Anlauf ein Mehrfaches seines Betriebsstroms: eine träge Sicherung nehmen.',
	'The load is over 80 % of the rating for hours: the fuse runs hot.':
		'Die Last liegt über Stunden über 80 % des Nennstroms: die Sicherung wird heiß.',
	'The load is {0}. ': 'Die Last ist {0}. ',
	' A short draws up to {0}.': ' Ein Kurzschluss zieht bis zu {0}.',
	'{0}{1} may have at most {2} here.{3}': '{0}{1} darf hier höchstens {2} haben.{3}',
	'at most {0}': 'höchstens {0}',
	'a thicker conductor': 'ein dickerer Leiter',
	'{0} is too large for {1}: {2}': '{0} ist zu groß für {1}: {2}',
	ampacity: 'Strombelastbarkeit',
	'{0} is too small for the load, and {1} takes no larger':
		'{0} ist zu klein für die Last, und {1} verträgt nicht mehr',
	'{0} is too small for the load: take {1}': '{0} ist zu klein für die Last: {1} nehmen',
	'No fuse of my tables': 'Keine Sicherung aus meinen Tabellen',
	'Not that kind of fuse': 'Diese Art Sicherung nicht',
	'{0}: ask the maker for {1} with the DC rating needed':
		'{0}: beim Hersteller {1} mit dem nötigen DC-Wert erfragen',
	'{0}: take a {1} {2}': '{0}: {2} mit {1} nehmen',
	'interrupting rating': 'Ausschaltvermögen',
	' is right on {0}': ' ist richtig an {0}',
	' at the source end of {0}': ' am Quellenende von {0}',
	'{0} Within that the load decides: at least 125 % of what is on for 3 h or more.':
		'{0} Innerhalb davon entscheidet der Verbraucher: mindestens 125 % dessen, was 3 h oder länger an ist.',
	'{0} {1} at most on {2}': 'Höchstens {0} {1} an {2}',
};
