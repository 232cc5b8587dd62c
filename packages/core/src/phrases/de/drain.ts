import type { Phrasebook } from '../phrasebook.js';

export const drain: Phrasebook = {
	tank: 'Tank',
	'How much water is in the tank?': 'Wie viel Wasser ist im Tank?',
	'depth of water': 'Wassertiefe',
	'a flat tank under the floor (practice)': 'ein flacher Tank unter dem Boden (Praxis)',
	'length of the hose': 'Länge des Schlauchs',
	'fall from the outlet to the open end': 'Gefälle vom Auslass zum offenen Ende',
	'the safe side: the open end level with the outlet':
		'die sichere Seite: das offene Ende auf Höhe des Auslasses',
	'bore of the valve': 'lichte Weite des Ventils',
	'bore of the hose': 'lichte Weite des Schlauchs',
	'time wanted': 'gewünschte Zeit',
	'bore of the vent': 'lichte Weite der Entlüftung',
	vented: 'entlüftet',
	'air can come in as the water leaves': 'Luft kann nachströmen, während das Wasser abläuft',
	'discharge coefficient': 'Ausflusszahl',
	'a sharp edge; a rounded outlet does better': 'eine scharfe Kante; ein gerundeter Auslass ist besser',
	'water temperature': 'Wassertemperatur',
	'cold water, which flows hardest': 'kaltes Wasser, das am schlechtesten fließt',
	'What is the bore of the drain valve?': 'Welche lichte Weite hat das Ablassventil?',
	'Check the volume and the depth of the water.': 'Menge und Tiefe des Wassers prüfen.',
	'{0} only {1} deep would cover {2}.': '{0} mit nur {1} Tiefe würden {2} bedecken.',
	'How long is the hose?': 'Wie lang ist der Schlauch?',
	'Allow more time, a wider or shorter hose, or more fall.':
		'Mehr Zeit, einen weiteren oder kürzeren Schlauch oder mehr Gefälle geben.',
	'No valve up to {0} empties it in {1}{2}.': 'Kein Ventil bis {0} leert ihn in {1}{2}.',
	' through that hose': ' durch diesen Schlauch',
	'time to empty': 'Zeit bis leer',
	'flow at the start': 'Durchfluss zu Beginn',
	'mean flow': 'mittlerer Durchfluss',
	'time until half is out': 'Zeit, bis die Hälfte heraus ist',
	'left in the tank': 'bleibt im Tank',
	'bore of the vent it needs': 'lichte Weite der nötigen Entlüftung',
	'flow kept by the hose': 'Durchfluss, den der Schlauch lässt',
	'Open the vent before the valve: a thin tank sucked empty without air folds in.':
		'Die Entlüftung vor dem Ventil öffnen: ein dünner Tank, der ohne Luft leergesaugt wird, fällt ein.',
	'{0} valve: empty in {1}': 'Ventil {0}: leer in {1}',
	'Empty in {0} through {1}': 'Leer in {0} durch {1}',
	'friction in the hose': 'Reibung im Schlauch',
	'the valve': 'das Ventil',
	'It starts at {0} and slows as the level falls; the vent needs {1}.':
		'Es beginnt mit {0} und wird mit sinkendem Stand langsamer; die Entlüftung braucht {1}.',
	'surface of the water': 'Wasseroberfläche',
	'empty in {0}': 'leer in {0}',
	'Without a vent it glugs, stops or folds the tank; it needs a vent of at least {0}.':
		'Ohne Entlüftung gluckert es, stockt oder der Tank fällt ein; nötig ist eine von mindestens {0}.',
	'The vent ({0}) is too small for this flow; it needs {1}.':
		'Die Entlüftung ({0}) ist für diesen Durchfluss zu klein; nötig sind {1}.',
	"It won't be empty in {0} with any valve through that hose; a wider hose or more fall helps.":
		'In {0} wird er mit keinem Ventil durch diesen Schlauch leer; ein weiterer Schlauch oder mehr Gefälle hilft.',
	"It won't be empty in {0}; a valve of {1} does it.":
		'In {0} wird er nicht leer; ein Ventil mit {1} schafft es.',
	'The hose is narrower than the valve and decides; food scraps lodge where it narrows.':
		'Der Schlauch ist enger als das Ventil und entscheidet; Speisereste setzen sich fest, wo er sich verengt.',
};
