import type { Phrasebook } from '../phrasebook.js';

export const strut: Phrasebook = {
	'mass of the lid': 'Masse der Klappe',
	'What does the lid weigh?': 'Wie schwer ist die Klappe?',
	'hinge to free edge': 'vom Scharnier zur freien Kante',
	'hinge to centre of mass': 'vom Scharnier zum Schwerpunkt',
	'half way from the hinge to the free edge, an even lid':
		'halbwegs vom Scharnier zur freien Kante, eine gleichmäßige Klappe',
	'lever of the spring': 'Hebelarm der Feder',
	'spring on the lid, from the hinge': 'Feder an der Klappe, vom Scharnier',
	'spring on the body, below the hinge': 'Feder am Korpus, unter dem Scharnier',
	'spring on the body, out from the hinge': 'Feder am Korpus, vom Scharnier nach außen',
	'straight below the hinge': 'gerade unter dem Scharnier',
	'spring on the lid, under its face': 'Feder an der Klappe, unter ihrer Fläche',
	'in the line of hinge and lid': 'in der Linie von Scharnier und Klappe',
	'hinge to handle': 'vom Scharnier zum Griff',
	'at the free edge': 'an der freien Kante',
	springs: 'Federn',
	'one on each side': 'eine auf jeder Seite',
	'force of the spring to be checked': 'Kraft der zu prüfenden Feder',
	flat: 'flach',
	hatch: 'Heckklappe',
	'how it hangs when shut': 'wie sie geschlossen hängt',
	'lying flat when shut, as on a bench': 'geschlossen waagerecht, wie auf einer Sitzbank',
	'opening angle': 'Öffnungswinkel',
	'a quarter turn': 'eine Vierteldrehung',
	'coldest use': 'kälteste Nutzung',
	'winter use; springs weaken in the cold': 'Nutzung im Winter; Federn werden in der Kälte schwächer',
	'hottest use': 'heißeste Nutzung',
	'a closed van in summer; springs stiffen in the heat':
		'ein geschlossenes Fahrzeug im Sommer; Federn werden in der Hitze härter',
	'force pushed in over force extended': 'Kraft eingeschoben durch Kraft ausgefahren',
	'the low end of the usual 1.2 to 1.4, the safe side for holding (practice)':
		'das untere Ende des Üblichen von 1.2 bis 1.4, die sichere Seite für das Halten (Praxis)',
	'How long is the lid from hinge to free edge?': 'Wie lang ist die Klappe vom Scharnier zur freien Kante?',
	'Where does the spring sit on the lid, from the hinge (or what is its lever)?':
		'Wo sitzt die Feder an der Klappe, vom Scharnier (oder wie lang ist ihr Hebelarm)?',
	'I read the centre of mass at {0} on a lid {1} long.':
		'Ich lese den Schwerpunkt bei {0} an einer Klappe von {1} Länge.',
	'Both are measured from the hinge; the centre of mass lies within the lid.':
		'Beide werden vom Scharnier gemessen; der Schwerpunkt liegt innerhalb der Klappe.',
	'moment of the lid, level': 'Moment der Klappe, waagerecht',
	'force to balance it': 'Kraft, um sie auszugleichen',
	'force that balances it': 'Kraft, die sie ausgleicht',
	'This looks at one place of the swing. Name where the spring sits on lid and body to have the whole swing checked.':
		'Das betrachtet nur eine Stelle der Bewegung. Angeben, wo die Feder an Klappe und Korpus sitzt, damit die ganze Bewegung geprüft wird.',
	'with reserve, in the cold': 'mit Reserve, in der Kälte',
	'How far below the hinge does the spring sit on the body?':
		'Wie weit unter dem Scharnier sitzt die Feder am Korpus?',
	'I read the spring {0} from the hinge on a lid {1} long.':
		'Ich lese die Feder {0} vom Scharnier an einer Klappe von {1} Länge.',
	'Both are measured from the hinge.': 'Beide werden vom Scharnier gemessen.',
	'Mounted so, the spring does not lengthen all the way as the lid opens: it would be longest before the lid is open.':
		'So eingebaut wird die Feder beim Öffnen nicht durchgehend länger: sie wäre am längsten, bevor die Klappe offen ist.',
	"Move the body's end lower or further back, or open the lid less.":
		'Das Ende am Korpus tiefer oder weiter zurück setzen oder die Klappe weniger weit öffnen.',
	"Between mid swing and open the spring's line passes the hinge on the wrong side: no force holds the lid so.":
		'Zwischen halb und ganz offen läuft die Linie der Feder auf der falschen Seite am Scharnier vorbei: so hält keine Kraft die Klappe.',
	'Between mid swing and open the weight does not close this lid: no spring is needed to hold it.':
		'Zwischen halb und ganz offen schließt das Gewicht diese Klappe nicht: zum Halten ist keine Feder nötig.',
	"Move the body's end lower or further out, so that the spring pushes the lid open.":
		'Das Ende am Korpus tiefer oder weiter nach außen setzen, damit die Feder die Klappe aufdrückt.',
	'Check the opening angle and how the lid hangs.': 'Den Öffnungswinkel prüfen und wie die Klappe hängt.',
	'moment of the lid at mid swing': 'Moment der Klappe bei halber Bewegung',
	'lever of the spring at mid swing': 'Hebelarm der Feder bei halber Bewegung',
	'hinge to the line of the spring': 'vom Scharnier zur Linie der Feder',
	'force that balances it from mid swing to open': 'Kraft, die sie von halb bis ganz offen ausgleicht',
	'{0} springs, force rising to {1} times as they are pushed in':
		'{0} Federn, Kraft steigt beim Einschieben auf das {1}-Fache',
	'Shut, only {0} mm lie between the mounts; a spring of {1} mm stroke needs about {2} mm. Move a mount.':
		'Geschlossen liegen nur {0} mm zwischen den Befestigungen; eine Feder mit {1} mm Hub braucht etwa {2} mm. Eine Befestigung versetzen.',
	'force needed, each': 'nötige Kraft, je Feder',
	'spring, each': 'Feder, je',
	'{0} just balances the lid in the cold, with less than a tenth in hand: it will sink as the spring ages. {1} each would hold.':
		'{0} gleichen die Klappe in der Kälte gerade aus, mit weniger als einem Zehntel Reserve: sie sinkt, wenn die Feder altert. Je {1} würden halten.',
	'{0} each does not hold the lid from mid swing to open in the cold: it falls on whoever is under it. It takes at least {1} each ({2} as sold).':
		'Je {0} halten die Klappe in der Kälte von halb bis ganz offen nicht: sie fällt auf den, der darunter ist. Nötig sind mindestens je {1} ({2} im Handel).',
	'{0} only just holds: take {1} each': '{0} halten nur knapp: je {1} nehmen',
	'{0} is too weak: the lid falls. Take {1} each': '{0} ist zu schwach: die Klappe fällt. Je {1} nehmen',
	'holding at mid swing': 'Halten bei halber Bewegung',
	'Needed {0} each, a tenth in hand at {1}.': 'Nötig sind je {0}, ein Zehntel Reserve bei {1}.',
	'below the {0} needed': 'unter den nötigen {0}',
	'holds with more in hand, harder to close': 'hält mit mehr Reserve, schwerer zu schließen',
	'{0} × {1} gas spring': '{0} × Gasdruckfeder {1}',
	'{0} × {1} holds the lid': '{0} × {1} halten die Klappe',
	'Balances the level lid at {0} with a tenth in hand; {1} each is needed.':
		'Gleicht die waagerechte Klappe bei {0} mit einem Zehntel Reserve aus; nötig sind je {1}.',
	'Holds from mid swing to open at {0} with a tenth in hand; {1} each is needed.':
		'Hält von halb bis ganz offen bei {0} mit einem Zehntel Reserve; nötig sind je {1}.',
	'holds by itself from an opening of': 'hält von selbst ab einer Öffnung von',
	'Somewhere in the swing a hand must give {0} at the handle, more than the usual {1} N. Move a mount or the handle.':
		'Irgendwo in der Bewegung muss die Hand {0} am Griff aufbringen, mehr als die üblichen {1} N. Eine Befestigung oder den Griff versetzen.',
	'Shut and hot, the springs lift the lid with {0} at the handle: it needs a latch that holds, also in a crash.':
		'Geschlossen und heiß drücken die Federn die Klappe mit {0} am Griff auf: sie braucht einen Verschluss, der hält, auch beim Aufprall.',
};
