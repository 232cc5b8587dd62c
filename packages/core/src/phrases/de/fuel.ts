import type { Phrasebook } from '../phrasebook.js';

export const fuel: Phrasebook = {
	'How long fuel lasts, and how much a trip takes':
		'Reichweite eines Brennstoffvorrats und Bedarf für eine Reise',
	'how long fuel lasts, and how much a trip takes':
		'wie lange Brennstoff reicht und wie viel eine Reise braucht',
	'Gas cylinders stand upright and strapped, outside the living space or in a locker sealed from it and vented low to the outside; test every connection for leaks after each change, never with a flame, and close the valve when it is not in use.':
		'Gasflaschen stehen aufrecht und festgezurrt, außerhalb des Wohnraums oder in einem zu ihm hin dichten Gaskasten, der unten nach außen belüftet ist; nach jedem Wechsel jede Verbindung auf Dichtheit prüfen, nie mit einer Flamme, und das Ventil schließen, wenn kein Gas gebraucht wird.',
	'Fit a gas detector near the floor: propane and butane are heavier than air and gather low. At a smell of gas: valve shut, no flame, no switch, everybody out.':
		'Einen Gaswarner nahe am Boden einbauen: Propan und Butan sind schwerer als Luft und sammeln sich unten. Bei Gasgeruch: Ventil zu, keine Flamme, kein Schalter, alle hinaus.',
	'A licensed gas fitter and the local code decide what may be connected, where it stands and how it is vented.':
		'Ein zugelassener Gasfachbetrieb und die örtlichen Vorschriften entscheiden, was angeschlossen werden darf, wo es steht und wie es belüftet wird.',
	'Fill diesel and gasoline outside with every burner off and cold; keep them in tanks and cans made for them, outside the living space.':
		'Diesel und Benzin im Freien einfüllen, alle Brenner aus und kalt; nur in dafür gemachten Tanks und Kanistern außerhalb des Wohnraums aufbewahren.',
	burner: 'Brenner',
	burners: 'Brenner',
	'power of the burner': 'Leistung des Brenners',
	'gas burned': 'Gasverbrauch',
	'fuel burned': 'Brennstoffverbrauch',
	'share of full burn': 'Anteil der vollen Leistung',
	'on low': 'kleine Stufe',
	'at half': 'halbe Stufe',
	'full power': 'volle Leistung',
	setting: 'Stufe',
	'what its plate rates': 'was sein Typenschild angibt',
	input: 'Brennstoffaufnahme',
	output: 'abgegebene Leistung',
	butane: 'Butan',
	'filling of one container': 'Füllung eines Behälters',
	'volume of one container': 'Volumen eines Behälters',
	containers: 'Behälter',
	'one, as no more were named': 'einer, da keine weiteren genannt wurden',
	'the volume is liquid, not container': 'das Volumen meint Flüssigkeit, nicht den Behälter',
	'how full it is': 'Füllstand',
	'full, as nothing was said': 'voll, da nichts gesagt wurde',
	"from the vehicle's own tank": 'aus dem Tank des Fahrzeugs',
	'What burns it, with its power (Btu/h or kW) and hours a day?':
		'Was verbrennt ihn, mit welcher Leistung (Btu/h oder kW) und wie vielen Stunden am Tag?',
	'gas from a cylinder': 'Gas aus einer Flasche',
	'hours a day of what has none named': 'Stunden am Tag für das, wozu keine genannt sind',
	overnight: 'über Nacht',
	weekend: 'Wochenende',
	'a week': 'eine Woche',
	stay: 'Aufenthalt',
	'efficiency of the burner': 'Wirkungsgrad des Brenners',
	'by input': 'nach Brennstoffaufnahme',
	'by output': 'nach abgegebener Leistung',
	'what every plate rates': 'was alle Typenschilder angeben',
	'lower heating value': 'Heizwert',
	'higher heating value': 'Brennwert',
	'heating value of the plates': 'Bezug der Typenschilder',
	'the safe side: a plate by the higher value burns less':
		'die sichere Seite: ein Typenschild nach dem Brennwert verbraucht weniger',
	'usable share of the tank': 'nutzbarer Anteil des Tanks',
	'temperature of the container': 'Temperatur des Behälters',
	'How much fuel is there (lb, kg, gal, L), or how many days should it last?':
		'Wie viel Brennstoff ist da (lb, kg, gal, L), oder wie viele Tage soll er reichen?',
	'Which fuel: propane, butane, diesel or gasoline?':
		'Welcher Brennstoff: Propan, Butan, Diesel oder Benzin?',
	'a weekend of two days and nights': 'ein Wochenende von zwei Tagen und Nächten',
	'the usual gas of cylinders; butane gives a little less':
		'das übliche Flaschengas; Butan gibt etwas weniger',
	'energy of the fuel': 'Energie des Brennstoffs',
	'Butane is sold by its mass: how many kg (or lb) does the container hold?':
		'Butan wird nach Masse verkauft: Wie viele kg (oder lb) fasst der Behälter?',
	'liquid gas may fill 80 % of its container; say "of propane" for liquid':
		'Flüssiggas darf 80 % des Behälters füllen; für Flüssigkeit "flüssig" schreiben',
	'the pick-up of a heater ends about a quarter above the floor, so that the engine starts (practice)':
		'die Entnahme eines Heizgeräts endet etwa ein Viertel über dem Tankboden, damit der Motor noch startet (Praxis)',
	'burner {0}': 'Brenner {0}',
	'How much does the {0} burn or give (Btu/h or kW)?':
		'Wie viel verbraucht oder gibt es (Btu/h oder kW): {0}?',
	'typical burner (practice); the plate decides': 'typischer Brenner (Praxis); das Typenschild entscheidet',
	'what the plate of the {0} rates': 'was das Typenschild angibt: {0}',
	'efficiency of the {0}': 'Wirkungsgrad: {0}',
	'share of full burn of the {0}': 'Anteil der vollen Leistung: {0}',
	'fuel of the {0} at full burn': 'Brennstoff bei voller Leistung: {0}',
	'energy a day: {0}': 'Energie am Tag: {0}',
	'fuel at full burn, by lower heating value': 'Brennstoff bei voller Leistung, nach Heizwert',
	'fuel a day': 'Brennstoff am Tag',
	'fuel that can be burned': 'nutzbarer Brennstoff',
	'its energy, by lower heating value': 'seine Energie, nach Heizwert',
	'hours at full burn': 'Stunden bei voller Leistung',
	'hours at full burn, all on': 'Stunden bei voller Leistung, alle an',
	'hours it burns': 'Brenndauer',
	'on {0} h a day': '{0} h am Tag an',
	'at half of full burn': 'bei halber Leistung',
	'{0} of burning': '{0} Brenndauer',
	'{0} of {1}': '{0} von {1}',
	'{0} of burning: {1} of {2} at {3}': '{0} Brenndauer: {1} {2} mit {3}',
	'At 8 h a day that is {0}; without a stop, {1}.': 'Bei 8 h am Tag sind das {0}; ohne Pause {1}.',
	'plates by the higher heating value': 'Typenschilder nach dem Brennwert',
	'{0} such containers': '{0} solche Behälter',
	'All at full burn it lasts {0}.': 'Alles bei voller Leistung: {0}.',
	'{0}: {1} of {2}, {3} a day': '{0}: {1} {2}, {3} am Tag',
	'It lasts {0} at {1} a day.': 'Es reicht {0} bei {1} am Tag.',
	'Enough for {0}: {1} of {2} of {3}': 'Reicht für {0}: {1} von {2} {3}',
	'{0} of {1} are needed for {2} and {3} can be burned: {4} more, or fewer hours.':
		'Für {2} sind {0} {1} nötig, nutzbar sind {3}: {4} mehr oder weniger Stunden.',
	'Not enough for {0}: {1} of {2} last {3}': 'Reicht nicht für {0}: {1} {2} reichen {3}',
	'{0} needed at {1} a day.': '{0} nötig bei {1} am Tag.',
	'Most of it: {0}, {1} a day.': 'Das meiste davon: {0}, {1} am Tag.',
	'fuel for the days wanted': 'Brennstoff für die gewünschten Tage',
	'{0} at half of full burn': '{0} bei halber Leistung',
	'{0} up to {1} a day': '{0} bis {1} am Tag',
	'It takes {0} a day.': 'Verbrauch: {0} am Tag.',
	'filling of one cylinder': 'Füllung einer Flasche',
	cylinders: 'Flaschen',
	'a {0} cylinder': 'eine Flasche mit {0}',
	'{0} cylinders of {1}': '{0} Flaschen mit {1}',
	'{0} of {1} for {2}: {3}': '{0} {1} für {2}: {3}',
	'tank for it': 'Tank dafür',
	'{0} of {1} for {2}: a tank of {3}': '{0} {1} für {2}: ein Tank mit {3}',
	'A heater without a flue fills the van with carbon monoxide and water and takes the oxygen: never sleep with it on. Use a heater with a sealed burner, air and exhaust outside.':
		'Ein Heizgerät ohne Abgasrohr füllt das Fahrzeug mit Kohlenmonoxid und Wasser und nimmt den Sauerstoff: nie schlafen, wenn es an ist. Ein Heizgerät mit geschlossenem Brenner nehmen, Luft und Abgas außen.',
	'Fuel burned aboard without a carbon-monoxide alarm can kill people in their sleep. Fit an alarm at sleeping height first.':
		'Wird an Bord ohne Kohlenmonoxid-Warner Brennstoff verbrannt, kann das Menschen im Schlaf töten. Zuerst einen Warner in Schlafhöhe einbauen.',
	'The exhaust of a generator kills: run it outside only, far from the van, its windows and its neighbours, never in a locker or under an awning.':
		'Das Abgas eines Stromerzeugers tötet: nur im Freien betreiben, weit weg vom Fahrzeug, seinen Fenstern und Nachbarn, nie in einem Staufach oder unter einer Markise.',
	'Butane gives no gas at {0} and below, and little just above: take propane for the cold.':
		'Butan gibt bei {0} und darunter kein Gas und knapp darüber wenig: für die Kälte Propan nehmen.',
	'In the cold, and towards its end, a small cylinder gives gas more slowly than a large heater burns it: a larger one, or two together, keeps up.':
		'In der Kälte und gegen Ende gibt eine kleine Flasche langsamer Gas ab, als ein großes Heizgerät es verbrennt: eine größere oder zwei zusammen halten mit.',
	'The {0} is counted at full burn for all its hours. If a thermostat turns it down, name its share ("50 %").':
		'Mit voller Leistung für alle Stunden gerechnet: {0}. Regelt ein Thermostat herunter, den Anteil angeben ("50 %").',
};
