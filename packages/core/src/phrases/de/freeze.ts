import type { Phrasebook } from '../phrasebook.js';

export const freeze: Phrasebook = {
	pipe: 'Rohr',
	'pump bay': 'Pumpenfach',
	'what is in the cold': 'was in der Kälte ist',
	'a tank, unless only the length of a pipe is given':
		'ein Tank, außer es ist nur die Länge eines Rohrs angegeben',
	'temperature around it': 'Umgebungstemperatur',
	water: 'Wasser',
	insulation: 'Dämmung',
	'the safe side: bare, as no insulation was named':
		'die sichere Seite: unbedeckt, da keine Dämmung genannt wurde',
	'bore of the pipe': 'lichte Weite des Rohrs',
	'1/2 in tubing (practice)': 'Rohr 1/2 in (Praxis)',
	'length of pipe': 'Länge des Rohrs',
	'closed-cell rubber foam, the usual cover (practice)':
		'geschlossenzelliger Gummischaum, die übliche Hülle (Praxis)',
	'outside area': 'Außenfläche',
	'out of the wind': 'windgeschützt',
	'a bay is sheltered; a tank or pipe is taken as exposed (the safe side)':
		'ein Fach ist geschützt; Tank oder Rohr gelten als frei im Wind (die sichere Seite)',
	'water at the start': 'Wasser zu Beginn',
	'as it comes from the tap in winter': 'wie es im Winter aus dem Hahn kommt',
	'heating pad': 'Heizmatte',
	'temperature it is held at': 'gehaltene Temperatur',
	'the usual thermostat of a pad (practice)': 'der übliche Thermostat einer Heizmatte (Praxis)',
	'hours of cold': 'Stunden Kälte',
	'a long winter night (practice)': 'eine lange Winternacht (Praxis)',
	'How cold does it get (or where)?': 'Wie kalt wird es (oder wo)?',
	'How much water is in it (or how long is the pipe)?':
		'Wie viel Wasser ist darin (oder wie lang ist das Rohr)?',
	'How long is the pipe?': 'Wie lang ist das Rohr?',
	'How much water is in it?': 'Wie viel Wasser ist darin?',
	'Drain pump, filter, taps and low points when the van stands unheated: they freeze before the tank.':
		'Pumpe, Filter, Hähne und Tiefpunkte entleeren, wenn das Fahrzeug ungeheizt steht: sie gefrieren vor dem Tank.',
	'No freezing at {0}': 'Kein Gefrieren bei {0}',
	'Water freezes only below 0 °C (32 °F) around it; wind does not change that.':
		'Wasser gefriert nur bei unter 0 °C (32 °F) um es herum; Wind ändert daran nichts.',
	'Ice after {0} without heat; {1} keeps it open': 'Eis nach {0} ohne Wärme; {1} halten es offen',
	'No ice within {0}; ice after {1} without heat': 'Kein Eis innerhalb von {0}; Eis nach {1} ohne Wärme',
	'heat loss': 'Wärmeverlust',
	'Solid after {0}. Holding it takes {1}, {2} a night.':
		'Durchgefroren nach {0}. Halten braucht {1}, {2} je Nacht.',
	'a usual pump bay (practice)': 'ein übliches Pumpenfach (Praxis)',
	'a flat tank, sides 4 : 2 : 1 (practice)': 'ein flacher Tank, Seiten 4 : 2 : 1 (Praxis)',
	'hours until ice begins': 'Stunden bis zum ersten Eis',
	'hours until solid': 'Stunden bis durchgefroren',
	'heat to hold it': 'Wärme zum Halten',
	'least power of a pad': 'kleinste Leistung einer Heizmatte',
	'pad to fit': 'passende Heizmatte',
	'share of the time the pad is on': 'Anteil der Zeit, die die Heizmatte an ist',
	'current while the pad is on': 'Strom, solange die Heizmatte an ist',
	'energy a night': 'Energie je Nacht',
	'from the bank a night': 'aus der Batteriebank je Nacht',
	'share of the bank a night': 'Anteil der Batteriebank je Nacht',
	'ice after {0}, {1} to hold': 'Eis nach {0}, {1} zum Halten',
	'down to {0} for {1} without heat': 'hinab bis {0} für {1} ohne Wärme',
	'With no heat it freezes within {0}. A pad of at least {1}, or draining it, clears it.':
		'Ohne Wärme gefriert es innerhalb von {0}. Eine Heizmatte mit mindestens {1}, oder Entleeren, hilft ab.',
	'It is solid after {0}: ice takes {1} % more room and splits pipes, pump, filter and valves.':
		'Es ist nach {0} durchgefroren: Eis braucht {1} % mehr Raum und sprengt Rohre, Pumpe, Filter und Ventile.',
	"The pad ({0}) can't hold the thermostat's temperature: it settles at {1}. {2} would hold it.":
		'Die Heizmatte ({0}) kann die Temperatur des Thermostats nicht halten: es bleibt bei {1}. {2} würden sie halten.',
	"The pad ({0}) can't keep it from freezing; it takes at least {1}, or more insulation.":
		'Die Heizmatte ({0}) kann das Gefrieren nicht verhindern; nötig sind mindestens {1} oder mehr Dämmung.',
	'The pad takes {0} a night and the bank gives {1}; a bank of {2}, or more insulation, clears it.':
		'Die Heizmatte zieht {0} je Nacht, und die Batteriebank gibt {1}; eine Bank mit {2} oder mehr Dämmung hilft ab.',
	'The tank is at {0} after {1}, but its pipes, valve and pump hold little water and freeze far sooner.':
		'Der Tank steht nach {1} bei {0}, aber seine Rohre, das Ventil und die Pumpe halten wenig Wasser und gefrieren viel früher.',
};
