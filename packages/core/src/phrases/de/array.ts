import type { Phrasebook } from '../phrasebook.js';

export const array: Phrasebook = {
	'panels in series': 'Module in Reihe',
	'strings in parallel': 'parallele Stränge',
	'how the panels are joined': 'wie die Module verbunden sind',
	'largest input voltage of the controller': 'größte Eingangsspannung des Reglers',
	'rated output current of the controller': 'Nennausgangsstrom des Reglers',
	'current of greatest power of a panel': 'Strom eines Moduls im Punkt größter Leistung',
	'temperature coefficient of the open-circuit voltage': 'Temperaturkoeffizient der Leerlaufspannung',
	'coldest place it will see': 'kältester Ort, den es sieht',
	'lowest temperature': 'tiefste Temperatur',
	'hottest air': 'heißeste Luft',
	'36 cells': '36 Zellen',
	'60 cells': '60 Zellen',
	'72 cells': '72 Zellen',
	'cells of a panel': 'Zellen eines Moduls',
	'one-way length from the roof to the controller': 'einfache Länge vom Dach zum Regler',
	'3 % between roof and controller (practice)': '3 % zwischen Dach und Regler (Praxis)',
	'What panels (watts of one, or Voc and Isc from the label)?':
		'Welche Module (Watt eines Moduls, oder Voc und Isc vom Typenschild)?',
	'Which is the coldest place it will see, or the lowest temperature?':
		'Welches ist der kälteste Ort, oder die tiefste Temperatur?',
	'How many watts has one panel (or what is its Isc)? The roof run takes its current.':
		'Wie viel Watt hat ein Modul (oder wie groß ist sein Isc)? Die Dachleitung trägt seinen Strom.',
	"mean of each year's lowest hour at {0}": 'Mittel der kältesten Stunde jedes Jahres in {0}',
	'a hot summer day (practice)': 'ein heißer Sommertag (Praxis)',
	'exceeded in 0.4 % of the hours at {0}': 'in 0.4 % der Stunden überschritten in {0}',
	"{0} panels don't make {1} in series by {2} in parallel.":
		'{0} Module ergeben nicht {1} in Reihe mal {2} parallel.',
	any: 'beliebig viele',
	'Series times parallel must be the number of panels.':
		'Reihe mal parallel muss die Anzahl der Module ergeben.',
	'none was named': 'keine genannt',
	'the fewest in series that charge in the heat, with at most two strings where that can be':
		'so wenige in Reihe, wie in der Hitze noch laden, mit höchstens zwei Strängen, wo das geht',
	'factor of the open-circuit voltage in the cold': 'Faktor der Leerlaufspannung in der Kälte',
	'open-circuit voltage of a string in the cold': 'Leerlaufspannung eines Strangs in der Kälte',
	'hottest cell': 'heißeste Zelle',
	'voltage of greatest power of a string in the heat': 'Spannung größter Leistung eines Strangs in der Hitze',
	'short-circuit current to design for': 'Kurzschlussstrom für die Bemessung',
	'current for conductors and protection': 'Strom für Leiter und Schutz',
	'controller output': 'Ausgang des Reglers',
	'open-circuit voltage of a string at the record low':
		'Leerlaufspannung eines Strangs bei der tiefsten Temperatur',
	'lowest temperature reckoned with': 'tiefste gerechnete Temperatur',
	'fewest in series that charge in the heat': 'so wenige in Reihe, wie in der Hitze noch laden',
	'most in series the controller bears in the cold':
		'so viele in Reihe, wie der Regler in der Kälte verträgt',
	'input voltage the controller must bear': 'Eingangsspannung, die der Regler vertragen muss',
	'{0} in the cold': '{0} in der Kälte',
	'temperature around the roof cable': 'Temperatur um die Dachleitung',
	'on a roof in the sun (practice)': 'auf einem Dach in der Sonne (Praxis)',
	'No single conductor fits the run from the roof: shorten it, join more panels in series, or run the strings apart.':
		'Kein einzelner Leiter passt für die Leitung vom Dach: kürzen, mehr Module in Reihe schalten oder die Stränge getrennt führen.',
	'conductor of the roof run': 'Leiter der Dachleitung',
	'fuse or breaker the roof run may have': 'Sicherung oder Leitungsschutzschalter für die Dachleitung',
	'voltage drop of the roof run': 'Spannungsfall der Dachleitung',
	'It is over at any temperature.': 'Sie liegt bei jeder Temperatur darüber.',
	'It would pass only above {0}.': 'Erst über {0} würde es passen.',
	'At most {0} in series.': 'Höchstens {0} in Reihe.',
	'Not even one such panel fits this controller.': 'Nicht einmal ein solches Modul passt zu diesem Regler.',
	'{0} in series reach {1} at {2}; the controller bears {3}: it can fail and burn.':
		'{0} in Reihe erreichen {1} bei {2}; der Regler verträgt {3}: er kann ausfallen und brennen.',
	"{0} in the cold is within 5 % of the controller's {1}: a colder night than the record, or a panel above its label, breaks it.":
		'{0} in der Kälte liegen keine 5 % unter den {1} des Reglers: eine kältere Nacht als die kälteste oder ein Modul über seinem Typenschild zerstört ihn.',
	'In the heat a string gives {0}; charging to the full takes {1}. The last part of the charge fails on hot days: put more in series.':
		'In der Hitze gibt ein Strang {0}; Vollladen braucht {1}. An heißen Tagen bleibt der letzte Teil der Ladung aus: mehr in Reihe schalten.',
	'{0} direct current can give a shock and holds an arc: fuses, disconnect, connectors and cable rated for it, live parts covered, and work on it by someone trained for it.':
		'{0} Gleichspannung können einen Stromschlag geben und halten einen Lichtbogen: Sicherungen, Trennschalter, Stecker und Leitung dafür bemessen, aktive Teile abgedeckt, und Arbeiten daran nur durch dafür Ausgebildete.',
	"A PWM controller pulls the string down to the battery: of {0} only {1} are used. Take an MPPT controller, or panels of the bank's class.":
		'Ein PWM-Regler zieht den Strang auf die Batterie herab: von {0} werden nur {1} genutzt. Einen MPPT-Regler nehmen oder Module der Klasse der Batteriebank.',
	'The array can push {0} into a PWM controller rated {1}: it does not limit the current and overheats.':
		'Das Feld kann {0} in einen PWM-Regler für {1} drücken: er begrenzt den Strom nicht und überhitzt.',
	'The array could make {0}; the controller gives {1} at most and leaves the rest unused at noon.':
		'Das Feld könnte {0} geben; der Regler gibt höchstens {1} und lässt mittags den Rest ungenutzt.',
	"{0} strings in parallel feed a shorted one with {1}: each needs its own fuse, not above the panel's largest series fuse rating, made for {2} direct current.":
		'{0} parallele Stränge speisen einen kurzgeschlossenen mit {1}: jeder braucht seine eigene Sicherung, nicht größer als die größte Strangsicherung laut Modul, ausgelegt für {2} Gleichspannung.',
	'At {0} a string stands at {1} open circuit (by {2}); in the heat it gives {3} where charging takes {4}.':
		'Bei {0} steht ein Strang bei {1} Leerlaufspannung (nach {2}); in der Hitze gibt er {3}, wo Laden {4} braucht.',
	'open-circuit voltage in the cold': 'Leerlaufspannung in der Kälte',
	'{0}: a controller for {1} or more': '{0}: ein Regler für {1} oder mehr',
	'{0}: a controller for {1} or more and {2}': '{0}: ein Regler für {1} oder mehr und {2}',
	"{0}: {1} cold, within the controller's {2}": '{0}: {1} in der Kälte, innerhalb der {2} des Reglers',
	'{0} in series at most': 'höchstens {0} in Reihe',
	'take a controller for more': 'einen Regler für mehr nehmen',
	'Too high: {0} cold on a {1} controller; {2}': 'Zu hoch: {0} in der Kälte an einem Regler für {1}; {2}',
	'One panel': 'Ein Modul',
	'{0} in series, {1} in parallel': '{0} in Reihe, {1} parallel',
	parallel: 'parallel',
};
