import type { Phrasebook } from '../phrasebook.js';

export const wire: Phrasebook = {
	power: 'Leistung',
	'How long is the run, one way?': 'Wie lang ist die Leitung, einfach gemessen?',
	'3 % for what matters, 10 % where the load is said not to be critical (practice)':
		'3 % für Wichtiges, 10 %, wo der Verbraucher als unkritisch bezeichnet ist (Praxis)',
	'critical load': 'kritischer Verbraucher',
	'kind of supply': 'Art der Speisung',
	efficiency: 'Wirkungsgrad',
	'insulation class': 'Temperaturklasse der Isolierung',
	'usual cable for this work; read it from the jacket':
		'übliche Leitung für diese Arbeit; vom Mantel ablesen',
	'temperature around the cable': 'Temperatur um die Leitung',
	'inside the living space; an engine space is hotter': 'im Wohnraum; im Motorraum ist es heißer',
	'in the engine bay': 'im Motorraum',
	'conductors together': 'Leiter beieinander',
	'the two conductors of this run, not bundled with others':
		'die zwei Leiter dieser Leitung, nicht mit anderen gebündelt',
	'free air': 'frei in Luft',
	loom: 'Schutzschlauch',
	'in insulation': 'in Dämmung',
	'laid in': 'Verlegung',
	'clipped in free air; say so where it runs in a loom, a wall or insulation':
		'frei in Luft befestigt; angeben, wo sie in Schlauch, Wand oder Dämmung liegt',
	'on for 3 h or more': '3 h oder länger an',
	'the safe side: a load of 3 h or more': 'die sichere Seite: ein Verbraucher von 3 h oder länger',
	motor: 'Motor',
	'nothing said of a motor': 'von einem Motor wurde nichts gesagt',
	'the current is the rating of the circuit': 'der Strom ist der Nennstrom des Stromkreises',
	'a load current unless an inlet or a circuit is named; 16 A and 32 A on 230 V are inlet ratings':
		'ein Laststrom, außer Einspeisung oder Stromkreis sind genannt; 16 A und 32 A an 230 V sind Nennströme von Einspeisungen',
	'terminal temperature limit': 'Temperaturgrenze der Klemmen',
	'tinned copper': 'verzinntes Kupfer',
	'bare copper; tinned adds 2 to 6 % to the drop':
		'blankes Kupfer; verzinntes erhöht den Spannungsfall um 2 bis 6 %',
	copper: 'Kupfer',
	'conductor metal': 'Metall des Leiters',
	'stranded copper, as the vehicle rules ask': 'Kupferlitze, wie die Fahrzeugregeln verlangen',
	'size to be checked': 'zu prüfender Querschnitt',
	'What current does it carry (or what power)?': 'Welchen Strom führt sie (oder welche Leistung)?',
	'I size copper only: aluminium and copper-clad conductors creep under the lug, corrode in a damp van and carry less.':
		'Ich bemesse nur Kupfer: Aluminium und kupferplattierte Leiter fließen unter dem Kabelschuh, korrodieren im feuchten Fahrzeug und tragen weniger.',
	'Use stranded copper of the size I give for the same run.':
		'Kupferlitze mit dem Querschnitt verwenden, den ich für dieselbe Leitung nenne.',
	'Name a bank of 12, 24 or 48 V, or a mains voltage of 100 to 250 V.':
		'Eine Batteriebank mit 12, 24 oder 48 V oder eine Netzspannung von 100 bis 250 V angeben.',
	'I read {0} direct current; low-voltage rules end at 60 V.':
		'Ich lese {0} Gleichspannung; die Regeln für Kleinspannung enden bei 60 V.',
	'Up to 2000 A is sized here; check power and voltage.':
		'Hier wird bis 2000 A bemessen; Leistung und Spannung prüfen.',
	'That power draws {0} at {1}.': 'Diese Leistung zieht {0} bei {1}.',
	'I read "{0}" as the size to be checked; no such size is in my tables.':
		'Ich lese "{0}" als zu prüfenden Querschnitt; in meinen Tabellen gibt es ihn nicht.',
	'the power named is what this run delivers': 'die genannte Leistung ist die, die diese Leitung liefert',
	'{0} copper, {1} fuse at the source end': '{0} Kupfer, Sicherung {1} am Quellenende',
	'{0} copper, {1} breaker': '{0} Kupfer, Leitungsschutzschalter {1}',
	'Drop {0} = {1} (limit {2}).': 'Spannungsfall {0} = {1} (Grenze {2}).',
	'The drop decides; for heat alone {0} would do.':
		'Der Spannungsfall entscheidet; für die Erwärmung allein würde {0} reichen.',
	'Heat decides; for the drop alone {0} would do.':
		'Die Erwärmung entscheidet; für den Spannungsfall allein würde {0} reichen.',
	'The device decides: it must carry the load and still protect the conductor.':
		'Das Schutzorgan entscheidet: es muss die Last tragen und den Leiter dennoch schützen.',
	'This is the thinnest conductor allowed in parallel.': 'Das ist der dünnste parallel zulässige Leiter.',
	'This is the thinnest conductor allowed for a wire run by itself.':
		'Das ist der dünnste zulässige Leiter für eine einzeln verlegte Leitung.',
	'copper area': 'Kupferquerschnitt',
	breaker: 'Leitungsschutzschalter',
	'largest device that still protects it': 'größtes Schutzorgan, das ihn noch schützt',
	'smallest device rating': 'kleinster Nennstrom des Schutzorgans',
	'allowable current': 'zulässiger Strom',
	'voltage at the load': 'Spannung am Verbraucher',
	'loss in the run': 'Verlust in der Leitung',
	'conductor temperature': 'Leitertemperatur',
	'allowable current by heat': 'zulässiger Strom nach Erwärmung',
	'cap by the terminals': 'Obergrenze durch die Klemmen',
	'largest device on this small conductor': 'größtes Schutzorgan an diesem dünnen Leiter',
	'protective device': 'Schutzorgan',
	'resistance, both legs': 'Widerstand, hin und zurück',
	'voltage drop, share': 'Spannungsfall, Anteil',
	'carries only {0}, too little': 'trägt nur {0}, zu wenig',
	'{0} drop, too much': 'Spannungsfall {0}, zu viel',
	'no standard device both carries the load and protects it':
		'kein genormtes Schutzorgan trägt die Last und schützt ihn zugleich',
	'thinner than allowed for conductors in parallel': 'dünner als für parallele Leiter zulässig',
	'thinner than allowed for a wire run by itself': 'dünner als für eine einzeln verlegte Leitung zulässig',
	'{0} drop': 'Spannungsfall {0}',
	'{0} is taken as the rating of the circuit: what runs on it for 3 h or more stays at or below {1} (80 %).':
		'{0} gilt als Nennstrom des Stromkreises: was daran 3 h oder länger läuft, bleibt bei oder unter {1} (80 %).',
	'A motor draws several times its running current at the start: take a slow fuse or a breaker of motor type.':
		'Ein Motor zieht beim Anlauf ein Mehrfaches seines Betriebsstroms: eine träge Sicherung oder einen Schutzschalter mit Motorkennlinie nehmen.',
	'Parallel conductors share only when they are of the same length, size and lugs; if one comes off, the others are overloaded behind this device. One thicker conductor is better.':
		'Parallele Leiter teilen sich den Strom nur bei gleicher Länge, gleichem Querschnitt und gleichen Kabelschuhen; löst sich einer, sind die anderen hinter diesem Schutzorgan überlastet. Ein dickerer Leiter ist besser.',
	'On mains only 1/0 AWG (50 mm²) and thicker may be run in parallel.':
		'Am Netz dürfen nur 1/0 AWG (50 mm²) und dickere Leiter parallel verlegt werden.',
	'A drop over 10 % leaves many 12 V devices below their working voltage.':
		'Ein Spannungsfall über 10 % lässt viele 12-V-Geräte unter ihre Arbeitsspannung fallen.',
	'my tables have no value for {0} insulation':
		'meine Tabellen haben keinen Wert für eine Isolierung für {0}',
	'No single conductor in my tables does it: {0} {1}.':
		'Kein einzelner Leiter in meinen Tabellen reicht: {0} {1}.',
	'Shorten the run, raise the voltage (24 or 48 V), split the load, or lay it in a cooler or freer way.':
		'Die Leitung kürzen, die Spannung erhöhen (24 oder 48 V), die Last aufteilen oder kühler oder freier verlegen.',
	'too thin': 'zu dünn',
	'smallest size that passes': 'kleinster Querschnitt, der genügt',
	'would do: {0} drop': 'würde reichen: Spannungsfall {0}',
	'{0} is enough: {1} fuse or breaker at the source end':
		'{0} reicht: Sicherung oder Leitungsschutzschalter {1} am Quellenende',
	'{0} is too thin, and no single size in my tables is enough':
		'{0} ist zu dünn, und kein einzelner Querschnitt meiner Tabellen reicht',
	'{0} is too thin: take {1} with a {2} device': '{0} ist zu dünn: {1} mit Schutzorgan {2} nehmen',
	'Each parallel conductor: same length, same lugs, landed on the same studs.':
		'Jeder parallele Leiter: gleiche Länge, gleiche Kabelschuhe, an denselben Bolzen angeschlossen.',
	'How far which size may run? Name the conductor, or the length.':
		'Wie weit darf welcher Querschnitt reichen? Leiter oder Länge angeben.',
	'asked how far it may run': 'gefragt, wie weit er reichen darf',
	'longest run, one way': 'längste Leitung, einfach',
	'{0} reaches {1} one way with {2} at {3}; {4} device':
		'{0} reicht {1} einfach mit {2} bei {3}; Sicherung {4}',
	'There the drop is {0} = {1} (limit {2}).': 'Dort beträgt der Spannungsfall {0} = {1} (Grenze {2}).',
};
