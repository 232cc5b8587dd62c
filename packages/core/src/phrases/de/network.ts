import type { Phrasebook } from '../phrasebook.js';

export const network: Phrasebook = {
	'source voltage': 'Spannung der Quelle',
	'Which conductors and loads are there? "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"':
		'Welche Leiter und Verbraucher gibt es? "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
	'node it starts at, or the node of a load': 'Knoten, an dem er beginnt, oder Knoten eines Verbrauchers',
	'Between which nodes?': 'Zwischen welchen Knoten?',
	'node it ends at': 'Knoten, an dem er endet',
	'resistance of the segment': 'Widerstand des Abschnitts',
	'both legs': 'beide Zweige',
	positive: 'Plus',
	return: 'Rückleiter',
	leg: 'Zweig',
	'node that the source feeds': 'Knoten, den die Quelle speist',
	'internal resistance of the bank': 'Innenwiderstand der Batteriebank',
	'I read "{0}" as the node that the source feeds, but no segment begins there.':
		'Ich lese "{0}" als Knoten, den die Quelle speist, aber kein Abschnitt beginnt dort.',
	'named for it, or the first named': 'der danach benannte oder der zuerst genannte',
	'segments without a leg named': 'Abschnitte ohne genannten Zweig',
	'return segments are named, so the others are taken for the positive leg alone':
		'Rückleiter sind genannt, also gelten die übrigen nur als Plus',
	'Name another size or insulation class.':
		'Einen anderen Querschnitt oder eine andere Isolierklasse angeben.',
	'I have no ampacity for the conductor of {0} at {1} insulation.':
		'Für den Leiter von {0} mit einer Isolierung für {1} habe ich keine Strombelastbarkeit.',
	'No segment leads from the source to: {0}.': 'Kein Abschnitt führt von der Quelle zu: {0}.',
	'Name the conductor that feeds it, "bus-{0} 10 awg 12 ft".':
		'Den Leiter angeben, der ihn speist, "bus-{0} 10 awg 12 ft".',
	'No return leads back to the source from: {0}.': 'Kein Rückleiter führt zur Quelle zurück von: {0}.',
	'Name the return, "{0}-battery return 10 awg 12 ft", or leave out the legs to have both counted.':
		'Den Rückleiter angeben, "{0}-battery return 10 awg 12 ft", oder die Zweige weglassen, dann werden beide gezählt.',
	'These loads want more power than the conductors can carry to them: the voltage collapses.':
		'Diese Verbraucher wollen mehr Leistung, als die Leiter zu ihnen bringen können: die Spannung bricht zusammen.',
	'Thicken or shorten the segments, raise the voltage, or check the powers.':
		'Die Abschnitte dicker oder kürzer machen, die Spannung erhöhen oder die Leistungen prüfen.',
	'load with the lowest voltage': 'Verbraucher mit der niedrigsten Spannung',
	'its voltage': 'seine Spannung',
	'its drop': 'sein Spannungsfall',
	'current from the source': 'Strom aus der Quelle',
	'power that reaches the loads': 'Leistung, die bei den Verbrauchern ankommt',
	'power lost on the way': 'unterwegs verlorene Leistung',
	'voltage at the source node': 'Spannung am Knoten der Quelle',
	'segment to thicken first': 'Abschnitt, der zuerst dicker werden soll',
	to: 'auf',
	'drop of the worst load then': 'Spannungsfall des ungünstigsten Verbrauchers dann',
	'voltage at {0}': 'Spannung an {0}',
	'drop at {0}': 'Spannungsfall an {0}',
	'current in {0}': 'Strom in {0}',
	'resistance of {0}': 'Widerstand von {0}',
	'node voltages': 'Knotenspannungen',
	'balance of power': 'Leistungsbilanz',
	'{0} carries {1} on {2}, which may carry {3}: it overheats.':
		'{0} führt {1} auf {2}, zulässig sind {3}: er überhitzt.',
	'{0} carries {1} on {2}: no standard fuse both carries that for hours (125 %) and protects it (at most {3}).':
		'{0} führt {1} auf {2}: keine genormte Sicherung trägt das stundenlang (125 %) und schützt ihn zugleich (höchstens {3}).',
	'{0}: {1}, {2} lost on the way (limit {3}).': '{0}: {1}, {2} unterwegs verloren (Grenze {3}).',
	'Some segments close a ring: a short on it is fed from both sides, so it needs a fuse at both ends, and each must carry the whole when the other opens.':
		'Einige Abschnitte schließen einen Ring: ein Kurzschluss darauf wird von beiden Seiten gespeist, also braucht er an beiden Enden eine Sicherung, und jede muss alles tragen, wenn die andere öffnet.',
	'A return through chassis or busbar is only as good as its joints: measure its resistance under load, and use no chassis return near gas or for mains.':
		'Ein Rückleiter über Fahrgestell oder Sammelschiene ist nur so gut wie seine Verbindungen: seinen Widerstand unter Last messen und das Fahrgestell nie in der Nähe von Gas oder für Netzspannung als Rückleiter benutzen.',
	'{0} in {1}': '{0} in {1}',
	'worst load then {0}': 'ungünstigster Verbraucher dann {0}',
	'{0} in {1} would bring it to {2}.': '{0} in {1} brächte es auf {2}.',
	'{0} flow with everything on, {1} stay in the copper; the worst load is {2} with {3} ({4}).':
		'Mit allem an fließen {0}, {1} bleiben im Kupfer; am schlechtesten steht {2} mit {3} ({4}).',
	'{0} is overloaded: {1} on {2} ({3})': '{0} ist überlastet: {1} auf {2} ({3})',
	'{0} gets only {1} ({2} lost)': '{0} bekommt nur {1} ({2} verloren)',
	'{0} gets only {1} ({2} lost): thicken {3} first':
		'{0} bekommt nur {1} ({2} verloren): zuerst {3} dicker machen',
	'voltage drop': 'Spannungsfall',
	'All loads within {0}: the worst is {1}, {2} ({3})':
		'Alle Verbraucher innerhalb von {0}: am schlechtesten steht {1}, {2} ({3})',
};
