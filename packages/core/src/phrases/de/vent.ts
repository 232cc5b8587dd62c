import type { Phrasebook } from '../phrasebook.js';

export const vent: Phrasebook = {
	'flow of the fan': 'Luftstrom des Lüfters',
	'air changes wanted an hour': 'gewünschte Luftwechsel je Stunde',
	'intake opening': 'Zuluftöffnung',
	'intake, width by height': 'Zuluft, Breite mal Höhe',
	'diameter of the fan': 'Durchmesser des Lüfters',
	'free share of the opening': 'freier Anteil der Öffnung',
	'behind an insect screen (practice)': 'hinter einem Insektengitter (Praxis)',
	'pressure of the fan at no flow': 'Druck des Lüfters ohne Luftstrom',
	'40 Pa, a low-voltage axial roof fan (practice)':
		'40 Pa, ein axialer Dachlüfter für Kleinspannung (Praxis)',
	'air temperature': 'Lufttemperatur',
	'a summer evening': 'ein Sommerabend',
	'heat to be carried off': 'abzuführende Wärme',
	'something burns inside': 'innen brennt etwas',
	'What flow has the fan (or how many air changes are wanted)?':
		'Welchen Luftstrom hat der Lüfter (oder wie viele Luftwechsel sind gewünscht)?',
	'Name the opening as width by height, such as 6x10 in or 20x30 cm, or its area.':
		'Die Öffnung als Breite mal Höhe angeben, etwa 6x10 in oder 20x30 cm, oder ihre Fläche.',
	"I read an intake of {0}; that can't be.": 'Ich lese eine Zuluftöffnung von {0}; das kann nicht sein.',
	'Name a larger opening, fewer air changes or a fan with more pressure.':
		'Eine größere Öffnung, weniger Luftwechsel oder einen Lüfter mit mehr Druck angeben.',
	'No such fan draws that much air through an opening of {0}.':
		'Kein solcher Lüfter zieht so viel Luft durch eine Öffnung von {0}.',
	'{0} fan for {1} air changes an hour; intake {2}':
		'Lüfter mit {0} für {1} Luftwechsel je Stunde; Zuluft {2}',
	'Intake of {0} for a {1} fan': 'Zuluft von {0} für einen Lüfter mit {1}',
	'The fan moves {0} through this intake': 'Der Lüfter fördert {0} durch diese Zuluftöffnung',
	'{0} air changes an hour; intake of {1}': '{0} Luftwechsel je Stunde; Zuluft von {1}',
	'{0} air changes an hour through this intake': '{0} Luftwechsel je Stunde durch diese Zuluftöffnung',
	'Through that intake the air stays below {0}.': 'Durch diese Zuluft bleibt die Luft unter {0}.',
	'The fan moves {0} of its {1}; the air enters at {2}.':
		'Der Lüfter fördert {0} von seinen {1}; die Luft tritt mit {2} ein.',
	fan: 'Lüfter',
	intake: 'Zuluft',
	'density of the air': 'Dichte der Luft',
	'flow against the intake': 'Luftstrom gegen die Zuluft',
	'intake for quiet flow': 'Zuluft für ruhigen Luftstrom',
	'time for one air change': 'Zeit für einen Luftwechsel',
	'free flow of the fan': 'freier Luftstrom des Lüfters',
	'velocity through the fan': 'Geschwindigkeit im Lüfter',
	'intake opening for quiet flow': 'Zuluftöffnung für ruhigen Luftstrom',
	'flow through this intake': 'Luftstrom durch diese Zuluft',
	'velocity in the intake': 'Geschwindigkeit in der Zuluft',
	'pressure lost in the intake': 'in der Zuluft verlorener Druck',
	'noise of the intake': 'Geräusch der Zuluft',
	'heat carried off per kelvin': 'abgeführte Wärme je Kelvin',
	'density of the air against sea level': 'Dichte der Luft gegen Meereshöhe',
	'how much warmer than outside it stays': 'wie viel wärmer als draußen es bleibt',
	'intake of {0}': 'Zuluft von {0}',
	'{0} air changes an hour': '{0} Luftwechsel je Stunde',
	'down to {0} of intake, below which the fan loses more than a tenth':
		'hinab bis {0} Zuluft, darunter verliert der Lüfter mehr als ein Zehntel',
	'The fan can draw fumes back out of a flame or flue inside the van. Open a window of at least {0} first, and have a carbon-monoxide alarm.':
		'Der Lüfter kann Abgase aus Abgasrohr oder Flamme ins Fahrzeug zurückziehen. Zuerst ein Fenster von mindestens {0} öffnen, und einen Kohlenmonoxid-Warner haben.',
	'The air rushes in at {0} (about {1} dB(A)) and the fan loses flow; an opening of {2} clears it.':
		'Die Luft rauscht mit {0} herein (etwa {1} dB(A)), und der Lüfter verliert Luftstrom; eine Öffnung von {2} hilft ab.',
	'{0} air changes are wanted: that takes {1} through a large enough intake.':
		'{0} Luftwechsel sind gewünscht: das braucht {1} durch eine genügend große Zuluft.',
	'At {0} the same air changes carry off only {1} % of the heat.':
		'Auf {0} führen dieselben Luftwechsel nur {1} % der Wärme ab.',
};
