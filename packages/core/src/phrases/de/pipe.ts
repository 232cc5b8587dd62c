import type { Phrasebook } from '../phrasebook.js';

export const pipe: Phrasebook = {
	'pipe size': 'Rohrgröße',
	flow: 'Durchfluss',
	shower: 'Dusche',
	'bathroom tap': 'Hahn im Bad',
	'kitchen tap': 'Küchenhahn',
	fixture: 'Entnahmestelle',
	'How long is the pipe from the pump to the fixture?':
		'Wie lang ist das Rohr von der Pumpe zur Entnahmestelle?',
	bore: 'lichte Weite',
	'pressure at the pump': 'Druck an der Pumpe',
	'the 25 psi at which the usual 12 V pump starts: the least it holds (practice)':
		'die 25 psi, bei denen die übliche 12-V-Pumpe anläuft: das Mindeste, was sie hält (Praxis)',
	'pressure wanted at the fixture': 'gewünschter Druck an der Entnahmestelle',
	'10 psi, enough for a water-saving head (practice)': '10 psi, genug für einen Sparduschkopf (Praxis)',
	'rise from pump to fixture': 'Höhe von der Pumpe zur Entnahmestelle',
	'a shower head above a pump on the floor (practice)': 'ein Duschkopf über einer Pumpe am Boden (Praxis)',
	elbows: 'Bögen',
	'a usual run (practice)': 'eine übliche Leitung (Praxis)',
	'tees taken through the branch': 'T-Stücke, über den Abzweig durchströmt',
	'stop valves': 'Absperrventile',
	crimp: 'Pressverbindung',
	expansion: 'Aufweitverbindung',
	'kind of fittings': 'Art der Verbinder',
	'the safe side: fittings pushed into the pipe, narrower than it':
		'die sichere Seite: Verbinder, die ins Rohr gesteckt und enger sind',
	'pump current': 'Strom der Pumpe',
	'pump power': 'Leistung der Pumpe',
	'pump voltage': 'Spannung der Pumpe',
	'wire from the fuse block to the pump, one way': 'Leitung vom Sicherungsverteiler zur Pumpe, einfach',
	'What flow (or which fixture)?': 'Welcher Durchfluss (oder welche Entnahmestelle)?',
	'Give a rise no larger than the length of the pipe.':
		'Eine Höhe angeben, die nicht größer als die Rohrlänge ist.',
	"A pipe of {0} can't rise {1}.": 'Ein Rohr von {0} kann nicht {1} steigen.',
	'I read "{0}" as the pipe size; no such tubing is in my tables.':
		'Ich lese "{0}" als Rohrgröße; dieses Rohr gibt es in meinen Tabellen nicht.',
	'Name one of: {0}; or the bore of a hose.':
		'Eines davon angeben: {0}; oder die lichte Weite eines Schlauchs.',
	'{0}: {1} lost, {2} left at the fixture': '{0}: {1} verloren, {2} bleiben an der Entnahmestelle',
	'{0} will do: {1} lost, {2} left at the fixture':
		'{0} reicht: {1} verloren, {2} bleiben an der Entnahmestelle',
	'No pipe offered will do: even {0} leaves only {1}':
		'Kein angebotenes Rohr reicht: selbst {0} lässt nur {1}',
	'{0} is too thin: the water runs at {1}': '{0} ist zu dünn: das Wasser läuft mit {1}',
	"{0} won't do: {1} lost, {2} left at the fixture":
		'{0} reicht nicht: {1} verloren, {2} bleiben an der Entnahmestelle',
	'pressure at the fixture': 'Druck an der Entnahmestelle',
	velocity: 'Geschwindigkeit',
	'Pipe {0}, fittings {1}, rise {2}; the water runs at {3}.':
		'Rohr {0}, Verbinder {1}, Höhe {2}; das Wasser läuft mit {3}.',
	'the most such a fixture may pass': 'das Meiste, was eine solche Entnahmestelle durchlassen darf',
	'{0} bore': '{0} lichte Weite',
	'Reynolds number': 'Reynoldszahl',
	'friction factor': 'Rohrreibungszahl',
	'loss in the straight pipe': 'Verlust im geraden Rohr',
	'loss in the fittings': 'Verlust in den Verbindern',
	rise: 'Höhe',
	'pressure left at the fixture': 'Druck, der an der Entnahmestelle bleibt',
	passes: 'genügt',
	fails: 'genügt nicht',
	'bore it was judged by': 'lichte Weite, mit der gerechnet wurde',
	'pressure lost in all': 'insgesamt verlorener Druck',
	'lost in the straight pipe': 'im geraden Rohr verloren',
	'lost in the fittings': 'in den Verbindern verloren',
	'lost in the rise': 'durch die Höhe verloren',
	'straight pipe by Hazen-Williams, for comparison': 'gerades Rohr nach Hazen-Williams, zum Vergleich',
	'fittings as straight pipe': 'Verbinder als gerades Rohr',
	'water standing in the pipe': 'Wasser, das im Rohr steht',
	'time until water from the far end arrives': 'Zeit, bis Wasser vom fernen Ende ankommt',
	'leaves {0}, water at {1}': 'lässt {0}, Wasser mit {1}',
	'Less than {0} is left at the fixture; the pump must hold {1}.':
		'An der Entnahmestelle bleiben weniger als {0}; die Pumpe muss {1} halten.',
	'Less than {0} is left at the fixture; {1} would do, or a pump that holds {2}.':
		'An der Entnahmestelle bleiben weniger als {0}; {1} würde reichen, oder eine Pumpe, die {2} hält.',
	'At {0} (limit {1}) the pipe sings and hammers; take less flow.':
		'Mit {0} (Grenze {1}) pfeift und schlägt das Rohr; weniger Durchfluss nehmen.',
	'At {0} (limit {1}) the pipe sings and hammers; {2} keeps it quiet.':
		'Mit {0} (Grenze {1}) pfeift und schlägt das Rohr; {2} hält es ruhig.',
	'{0} is above what van plumbing is rated for; fit a pressure reducer.':
		'{0} liegt über dem, wofür Wasserleitungen im Fahrzeug bemessen sind; einen Druckminderer einbauen.',
	'At this Reynolds number Hazen-Williams reads too low; Darcy-Weisbach counts.':
		'Bei dieser Reynoldszahl zeigt Hazen-Williams zu wenig; es zählt Darcy-Weisbach.',
	"The pump's wire needs its current or power; read it from the label.":
		'Die Leitung der Pumpe braucht deren Strom oder Leistung; vom Typenschild ablesen.',
	'wire to the pump': 'Leitung zur Pumpe',
	'fuse of the pump': 'Sicherung der Pumpe',
	'The wire to the pump could not be sized from these numbers; ask the wire topic.':
		'Die Leitung zur Pumpe ließ sich mit diesen Zahlen nicht bemessen; das Thema Leitung fragen.',
};
