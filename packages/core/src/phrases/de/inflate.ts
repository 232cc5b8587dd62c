import type { Phrasebook } from '../phrasebook.js';

export const inflate: Phrasebook = {
	'free-air flow of the pump': 'freier Volumenstrom des Kompressors',
	'free-air flow of the pump in cubic feet or metres':
		'freier Volumenstrom des Kompressors in Kubikfuß oder Kubikmeter',
	'flow against a pressure': 'Volumenstrom gegen einen Druck',
	'pressure to start from': 'Anfangsdruck',
	'pressure to reach': 'Zieldruck',
	'both pressures': 'beide Drücke',
	'pressure of the second flow': 'Druck des zweiten Volumenstroms',
	'highest pressure on the sidewall': 'höchster Druck laut Flanke',
	'air in one tire': 'Luft in einem Reifen',
	'tire size': 'Reifengröße',
	tires: 'Reifen',
	'all four tires of a van': 'alle vier Reifen eines Transporters',
	'sea level; thinner air takes longer': 'Meereshöhe; dünnere Luft braucht länger',
	'current of the pump': 'Strom des Kompressors',
	'power of the pump': 'Leistung des Kompressors',
	voltage: 'Spannung',
	'battery bank': 'Batteriebank',
	'longest run of the pump': 'längste Laufzeit des Kompressors',
	'rest after it': 'Pause danach',
	'as long as it ran (practice); the maker says how long':
		'so lange, wie er lief (Praxis); der Hersteller sagt, wie lange',
	'From which pressure?': 'Von welchem Druck?',
	'Up to which pressure?': 'Bis zu welchem Druck?',
	'What free-air flow has the pump (L/min or cfm)?':
		'Welchen freien Volumenstrom hat der Kompressor (L/min oder cfm)?',
	'What size are the tires (as LT225/75R16), or how much air do they hold?':
		'Welche Größe haben die Reifen (wie LT225/75R16), oder wie viel Luft fassen sie?',
	'I read "{0}" as both pressures.': 'Ich lese "{0}" als beide Drücke.',
	'Give them as 25 to 65 psi.': 'Als 25 bis 65 psi angeben.',
	'I read from {0} to {1}: that lets air out.': 'Ich lese von {0} bis {1}: das lässt Luft ab.',
	'Give the lower pressure as the start and the higher one as the end.':
		'Den niedrigeren Druck als Anfang und den höheren als Ende angeben.',
	'{0} is above the {1} on the sidewall: a tire can burst.':
		'{0} liegt über den {1} auf der Flanke: ein Reifen kann platzen.',
	'Stay at or below {0}, and at what the door label asks.':
		'Bei {0} oder darunter bleiben und bei dem, was das Türschild verlangt.',
	"I read {0} and {1} as the pump's flow.": 'Ich lese {0} und {1} als Volumenstrom des Kompressors.',
	'Give one of them.': 'Eines davon angeben.',
	'I read "{0}" as the tire size.': 'Ich lese "{0}" als Reifengröße.',
	'Give it as printed, such as LT225/75R16, or the volume of air.':
		'Wie aufgedruckt angeben, etwa LT225/75R16, oder das Luftvolumen.',
	'The flow against pressure must be below the open flow of {0}, and its pressure be named.':
		'Der Volumenstrom gegen Druck muss unter dem freien von {0} liegen, und sein Druck ist anzugeben.',
	'Give two points of the pump curve, such as 70 L/min open and 40 L/min at 40 psi.':
		'Zwei Punkte der Kennlinie angeben, etwa 70 L/min frei und 40 L/min bei 40 psi.',
	'By its curve this pump stalls before {0}.':
		'Nach seiner Kennlinie bleibt dieser Kompressor vor {0} stehen.',
	'Take a pump made for the pressure, or a lower target.':
		'Einen Kompressor für diesen Druck nehmen oder ein niedrigeres Ziel.',
	'air pressure here': 'Luftdruck hier',
	'standard atmosphere at {0} m': 'Normatmosphäre auf {0} m',
	'free air for one tire': 'freie Luft für einen Reifen',
	'time at the open flow': 'Zeit beim freien Volumenstrom',
	'time along the pump curve': 'Zeit entlang der Kennlinie',
	'from {0} to {1} kPa': 'von {0} bis {1} kPa',
	rests: 'Pausen',
	'It runs for {0} min in all: small pumps may run 10 to 30 min before they must rest. Look it up.':
		'Er läuft insgesamt {0} min: kleine Kompressoren dürfen 10 bis 30 min laufen, bevor sie ruhen müssen. In der Anleitung nachsehen.',
	'The pump must rest {0} times on the way.': 'Der Kompressor muss zwischendurch {0}-mal ruhen.',
	'{0} for the tire': '{0} für den Reifen',
	'{0} for {1} tires, {2} each': '{0} für {1} Reifen, je {2}',
	'{0} min of pumping and {1} rests. {2}': '{0} min Pumpen und {1} Pausen. {2}',
	'{0} L of free air a tire. {1}': '{0} L freie Luft je Reifen. {1}',
	'Thin air at this altitude adds {0} % to the air needed.':
		'Die dünne Luft in dieser Höhe erhöht den Luftbedarf um {0} %.',
	'Flow falls as the pressure rises; that is counted.':
		'Der Volumenstrom sinkt mit steigendem Druck; das ist gerechnet.',
	'air in the ring between rim and tread': 'Luft im Ring zwischen Felge und Lauffläche',
	'nine tenths of it (practice)': 'neun Zehntel davon (Praxis)',
	'dead space of the pump': 'Schadraum des Kompressors',
	'a usual small piston pump (practice)': 'ein üblicher kleiner Kolbenkompressor (Praxis)',
	'charge taken': 'entnommene Ladung',
	current: 'Strom',
	'energy taken': 'entnommene Energie',
	'share of the bank': 'Anteil der Batteriebank',
	'That takes {0} of the bank: run the engine or charge meanwhile.':
		'Das nimmt {0} der Batteriebank: dabei den Motor laufen lassen oder laden.',
};
