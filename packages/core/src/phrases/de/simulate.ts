import type { Phrasebook } from '../phrasebook.js';

export const simulate: Phrasebook = {
	'{0} days from {1} 1': '{0} Tage ab 1. {1}',
	'energy of the bank at its temperature': 'Energie der Batteriebank bei ihrer Temperatur',
	'loads a day, at the bank': 'Verbraucher am Tag, an der Batteriebank',
	'from the sun, as much a day': 'von der Sonne, ebenso am Tag',
	'every hour': 'jede Stunde',
	'check: in less served, stored, lost, spilled, unused':
		'Probe: Zufuhr minus geliefert, gespeichert, verloren, überschüssig, ungenutzt',
	'lowest state of charge': 'tiefster Ladezustand',
	'when it is lowest': 'wann er am tiefsten ist',
	'state of charge at the end': 'Ladezustand am Ende',
	'days below the reserve': 'Tage unter der Reserve',
	'hours with a load not served': 'Stunden mit nicht versorgtem Verbraucher',
	'days run': 'gerechnete Tage',
	'bank simulated': 'gerechnete Batteriebank',
	'smallest bank that keeps the reserve': 'kleinste Batteriebank, die die Reserve hält',
	'smallest array that keeps the reserve': 'kleinstes Solarfeld, das die Reserve hält',
	'twice the bank': 'die doppelte Batteriebank',
	'half the bank': 'die halbe Batteriebank',
	'lowest {0}': 'tiefster Stand {0}',
	'The bank runs empty: {0} in {1} hours are not given.':
		'Die Batteriebank läuft leer: {0} in {1} Stunden werden nicht geliefert.',
	'On {0} of {1} days the bank falls below the reserve of {2}; the lowest is {3}.':
		'An {0} von {1} Tagen fällt die Batteriebank unter die Reserve von {2}; der tiefste Stand ist {3}.',
	'The bank ends at {0} where it began at {1}: over a longer time it would not hold.':
		'Die Batteriebank endet bei {0}, begonnen hat sie bei {1}: über längere Zeit würde es nicht reichen.',
	'{0} of the sun finds the bank full or its charge limit reached: there is room for more loads, or the array could be smaller.':
		'{0} der Sonne treffen die Batteriebank voll oder an ihrer Ladegrenze: es ist Raum für mehr Verbraucher, oder das Feld könnte kleiner sein.',
	'The bank is not full for two weeks and more: lead-acid that stays half charged sulphates and loses its capacity.':
		'Die Batteriebank ist zwei Wochen und länger nicht voll: halb geladene Blei-Säure-Batterien sulfatieren und verlieren ihre Kapazität.',
	'The sun is that of a mean year with dull and clear days in a fixed order: a real run of bad weather can be longer, and snow or shade are not in it.':
		'Die Sonne ist die eines mittleren Jahres mit trüben und klaren Tagen in fester Folge: eine wirkliche Schlechtwetterzeit kann länger sein, und Schnee oder Schatten sind nicht darin.',
	'{0} is more than most vans carry: add sun, driving or shore power instead.':
		'{0} sind mehr, als die meisten Fahrzeuge mitführen: stattdessen Sonne, Fahrt oder Landanschluss ergänzen.',
	'{0} at {1} V keep {2} through {3}': '{0} bei {1} V halten {2} über: {3}',
	'{0} of panels keep {1} in the bank through {2}': '{0} Module halten {1} in der Batteriebank über: {2}',
	' without solar': ' ohne Solar',
	'It holds{0}: never below {1} through {2}': 'Es reicht{0}: nie unter {1} über: {2}',
	'{0} of bank': '{0} Batteriebank',
	'{0} of panels': '{0} Module',
	'no bank or array alone cures it': 'weder Batteriebank noch Solarfeld allein behebt es',
	'it takes {0}': 'nötig sind {0}',
	'It runs empty': 'Es läuft leer',
	'It falls to {0}': 'Es fällt auf {0}',
	'{0} in {1}: {2}': '{0} über {1}: {2}',
	'the sun brings {0}': 'die Sonne bringt {0}',
	'driving could bring {0}': 'Fahren könnte {0} bringen',
	'shore power could bring {0}': 'der Landanschluss könnte {0} bringen',
	'nothing charges the bank': 'nichts lädt die Batteriebank',
	'Lowest {0}.': 'Tiefster Stand {0}.',
	'{0} a day asked for; {1}.': 'Am Tag werden {0} verlangt; {1}.',
};
