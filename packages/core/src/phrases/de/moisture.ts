import type { Phrasebook } from '../phrasebook.js';

export const moisture: Phrasebook = {
	'a heated night (practice)': 'eine beheizte Nacht (Praxis)',
	'outside humidity': 'Außenfeuchte',
	'a cold night is nearly saturated (the safe side)':
		'eine kalte Nacht ist fast gesättigt (die sichere Seite)',
	'water in things hung to dry': 'Wasser in aufgehängten Sachen',
	'nothing hung to dry': 'nichts zum Trocknen aufgehängt',
	'hours of the night': 'Stunden der Nacht',
	'a night of sleep': 'eine Nacht Schlaf',
	'cooking time': 'Kochzeit',
	'a meal of half an hour (practice)': 'eine Mahlzeit von einer halben Stunde (Praxis)',
	'gas stove': 'Gaskocher',
	induction: 'Induktion',
	'no cooking': 'kein Kochen',
	stove: 'Kocher',
	'the safe side: burning gas makes water': 'die sichere Seite: brennendes Gas macht Wasser',
	'flame of the stove': 'Flamme des Kochers',
	'one burner (practice)': 'eine Flamme (Praxis)',
	lining: 'Verkleidung',
	ribs: 'Spanten',
	'surface that is to stay dry': 'Fläche, die trocken bleiben soll',
	'the lining over a rib, the coldest surface besides the glass':
		'die Verkleidung über einem Spant, die kälteste Fläche außer dem Glas',
	'air flow there is': 'vorhandener Luftstrom',
	'air inside': 'Innenluft',
	'a long van with a high roof (practice); it only turns flow into air changes':
		'ein langes Fahrzeug mit Hochdach (Praxis); es rechnet nur Luftstrom in Luftwechsel um',
	'How cold is it outside (or where)?': 'Wie kalt ist es draußen (oder wo)?',
	'Give an outside temperature below the inside one.':
		'Eine Außentemperatur unter der Innentemperatur angeben.',
	'It is {0} outside and {1} inside: no inner surface is colder than the air.':
		'Draußen sind {0}, innen {1}: keine innere Fläche ist kälter als die Luft.',
	'Nobody is aboard, nothing dries and nothing is cooked: no water is given off.':
		'Niemand ist an Bord, nichts trocknet und nichts wird gekocht: es wird kein Wasser frei.',
	'Give the people, the cooking or the wet things.':
		'Die Personen, das Kochen oder die nassen Sachen angeben.',
	'The night gives off {0} of water; this surface is at {1} and wet below that dew point.':
		'Die Nacht gibt {0} Wasser ab; diese Fläche hat {1} und wird nass, sobald der Taupunkt darüber liegt.',
	'{0} keeps the {1} dry overnight; {2} would do': '{0} halten über Nacht trocken: {1}; {2} würden reichen',
	'{0} is too little: the {1} needs {2} overnight': '{0} ist zu wenig: {1} braucht {2} über Nacht',
	'dew point at the surface': 'Taupunkt an der Fläche',
	'{0} of outside air keeps the {1} dry overnight': '{0} Außenluft halten über Nacht trocken: {1}',
	'water given off asleep': 'im Schlaf abgegebenes Wasser',
	'water given off while cooking': 'beim Kochen abgegebenes Wasser',
	'air that carries it away': 'Luft, die es abführt',
	'air that keeps it dry overnight': 'Luft, die es über Nacht trocken hält',
	'heat that air costs': 'Wärme, die diese Luft kostet',
	'air that keeps it dry while cooking': 'Luft, die es beim Kochen trocken hält',
	'water given off an hour, asleep': 'im Schlaf je Stunde abgegebenes Wasser',
	'water given off an hour, cooking': 'beim Kochen je Stunde abgegebenes Wasser',
	'water of the night and its meal': 'Wasser der Nacht und ihrer Mahlzeit',
	'temperature of the {0}': 'Temperatur: {0}',
	'air for the {0}': 'Luft für: {0}',
	'highest inside humidity that keeps it dry': 'höchste Innenfeuchte, bei der es trocken bleibt',
	'inside humidity with this air flow': 'Innenfeuchte bei diesem Luftstrom',
	'dew point inside with this air flow': 'Taupunkt innen bei diesem Luftstrom',
	'double acrylic windows': 'Fenster aus doppeltem Acrylglas',
	'up to {0} people': 'bis {0} Personen',
	'The dew point inside rises to {0}: water forms on the {1}. {2} clears it.':
		'Der Taupunkt innen steigt auf {0}: Wasser bildet sich hier: {1}. {2} helfen ab.',
	'So much cold air takes {0} of heating; insulation on that surface saves more than it costs.':
		'So viel kalte Luft kostet {0} Heizleistung; Dämmung auf dieser Fläche spart mehr, als sie kostet.',
	'The glass is colder and needs {0} to stay dry; below that, wipe it in the morning.':
		'Das Glas ist kälter und braucht {0}, um trocken zu bleiben; darunter morgens abwischen.',
	'Cooking takes {0} while it lasts: run the roof fan with a window open.':
		'Kochen braucht währenddessen {0}: den Dachlüfter bei offenem Fenster laufen lassen.',
	'The surface is below freezing: moisture freezes on it unseen and runs down when it thaws.':
		'Die Fläche liegt unter dem Gefrierpunkt: Feuchte gefriert dort unbemerkt und läuft beim Tauen herab.',
};
