import type { Phrasebook } from '../phrasebook.js';

export const energyWork: Phrasebook = {
	'number of batteries': 'Anzahl der Batterien',
	'voltage of one battery': 'Spannung einer Batterie',
	'number in series': 'Anzahl in Reihe',
	'number of strings': 'Anzahl der Stränge',
	'in parallel': 'parallel',
	'how the batteries are joined': 'wie die Batterien verbunden sind',
	'battery chemistry': 'Zellchemie der Batterie',
	"discharge limit of one battery's own protection": 'Entladegrenze des eigenen Schutzes einer Batterie',
	'batteries of 2, 4, 6 and 8 V are lead-acid': 'Batterien mit 2, 4, 6 und 8 V sind Blei-Säure',
	'what most conversions fit now (practice)': 'was die meisten Ausbauten heute haben (Praxis)',
	'I read {0}, which is neither a bank nor a mains voltage.':
		'Ich lese {0}; das ist weder Batterie- noch Netzspannung.',
	'Banks are 12, 24, 36 or 48 V; mains is 100 to 250 V.':
		'Batteriebänke haben 12, 24, 36 oder 48 V; das Netz hat 100 bis 250 V.',
	'batteries for vans are mostly 12 V': 'Batterien für Reisemobile haben meist 12 V',
	"Batteries of {0} can't be put in series to make {1} V with {2}.":
		'Batterien mit {0} lassen sich nicht in Reihe zu {1} V mit {2} schalten.',
	'Use batteries of {0} V, or of a voltage that divides it.':
		'Batterien mit {0} V verwenden oder mit einer Spannung, die darin aufgeht.',
	"{0} in series and {1} in parallel don't make {2} V of {3} batteries of {4}.":
		'{0} in Reihe und {1} parallel ergeben keine {2} V aus {3} Batterien mit {4}.',
	'For {0} V put {1} of {2} in series; the number of batteries is a multiple of that.':
		'Für {0} V {1} mit {2} in Reihe schalten; die Anzahl der Batterien ist ein Vielfaches davon.',
	"{0} batteries don't make whole strings: {1} V takes {2} of {3} in series.":
		'{0} Batterien ergeben keine ganzen Stränge: {1} V braucht {2} mit {3} in Reihe.',
	'Use {0}, {1} or {2} batteries.': '{0}, {1} oder {2} Batterien verwenden.',
	'several batteries in a higher bank are mostly 12 V':
		'mehrere Batterien in einer höheren Bank haben meist 12 V',
	'one battery': 'eine Batterie',
	'{0} in parallel': '{0} parallel',
	'{0} in series': '{0} in Reihe',
	'{0} strings in parallel, each of {1} in series': '{0} Stränge parallel, jeder aus {1} in Reihe',
	'A bank can weld a spanner and burn you at any state of charge: disconnect, insulate tools, cover the terminals, one pole at a time.':
		'Eine Batteriebank kann bei jedem Ladezustand einen Schlüssel festschweißen und Verbrennungen zufügen: trennen, Werkzeug isolieren, Pole abdecken, immer nur an einem Pol arbeiten.',
	'Join only batteries of the same make, type, capacity and age; bring each to full charge first, and take plus and minus from opposite ends of a parallel row.':
		'Nur Batterien gleicher Marke, Bauart, Kapazität und gleichen Alters verbinden; jede zuvor voll laden, und Plus und Minus an entgegengesetzten Enden einer Parallelreihe abnehmen.',
	'The main fuse sits at the bank itself and must be able to break what the bank can feed into a short: check its breaking capacity at direct current.':
		'Die Hauptsicherung sitzt unmittelbar an der Batteriebank und muss abschalten können, was die Bank in einen Kurzschluss speist: ihr Ausschaltvermögen bei Gleichstrom prüfen.',
	'Lead-acid gives off hydrogen while charging: vent the compartment to the outside, low and high, with no ignition source inside.':
		'Blei-Säure gibt beim Laden Wasserstoff ab: den Batteriekasten unten und oben nach außen belüften, ohne Zündquelle darin.',
	"The maker's limits for charging, discharging and temperature come before every figure here.":
		'Die Grenzen des Herstellers für Laden, Entladen und Temperatur gehen jeder Zahl hier vor.',
	'Neutral and ground are joined at one place only, at the source that is feeding: on shore power outside the van, on the inverter only while it feeds.':
		'Neutralleiter und Erde sind nur an einer Stelle verbunden, an der gerade speisenden Quelle: am Landanschluss außerhalb des Fahrzeugs, am Wechselrichter nur, solange er speist.',
	'Give the inverter the free air round it that its manual asks for, away from bedding and out of a sealed locker; it gives off its losses as heat.':
		'Dem Wechselrichter den freien Luftraum geben, den seine Anleitung verlangt, fern von Bettzeug und nicht in einem dichten Fach; seine Verluste gibt er als Wärme ab.',
	'Never charge lithium cells below 0 °C (32 °F): it damages them for good and can make them unsafe. See that every charger is stopped by the cold.':
		'Lithiumzellen nie unter 0 °C (32 °F) laden: das schädigt sie dauerhaft und kann sie gefährlich machen. Sicherstellen, dass die Kälte jedes Ladegerät abschaltet.',
	'A cable between two batteries is fed from both: fuse the charger input at the starter battery and its output at the bank.':
		'Eine Leitung zwischen zwei Batterien wird von beiden gespeist: den Eingang des Ladegeräts an der Starterbatterie absichern und seinen Ausgang an der Batteriebank.',
	"Charging with {0} is over the bank's limit of {1}: set the chargers lower, together.":
		'Laden mit {0} liegt über der Grenze der Batteriebank von {1}: die Ladegeräte zusammen niedriger einstellen.',
	"Charging with {0} is over the usual {1} for this bank: set the chargers lower, or confirm the maker's limit.":
		'Laden mit {0} liegt über den üblichen {1} dieser Batteriebank: die Ladegeräte niedriger einstellen oder die Grenze des Herstellers bestätigen.',
	"A draw of {0} is over the {1} at which the battery's own protection switches off: everything goes dark under load. Add batteries in parallel, raise the voltage or limit the inverter.":
		'Ein Strom von {0} liegt über den {1}, bei denen der eigene Schutz der Batterie abschaltet: unter Last geht alles aus. Batterien parallel ergänzen, die Spannung erhöhen oder den Wechselrichter begrenzen.',
	"A draw of {0} is over the usual {1} for this bank: its voltage may collapse, or its own protection switch it off. Confirm the maker's limit, or add batteries.":
		'Ein Strom von {0} liegt über den üblichen {1} dieser Batteriebank: ihre Spannung kann zusammenbrechen oder der eigene Schutz abschalten. Die Grenze des Herstellers bestätigen oder Batterien ergänzen.',
	'At {0} a heated lithium battery must be warmed above {1} before any charge reaches it, and the heater is a load of its own.':
		'Bei {0} muss eine beheizte Lithiumbatterie über {1} gewärmt sein, bevor Ladestrom sie erreicht, und die Heizung ist ein eigener Verbraucher.',
	'At {0} this battery must not be charged: below {1} lithium plates in the cells, which ruins them and can start a fire. Stop every charger by a cold cut-off, or heat the battery.':
		'Bei {0} darf diese Batterie nicht geladen werden: unter {1} scheidet sich Lithium in den Zellen ab, was sie zerstört und einen Brand auslösen kann. Jedes Ladegerät durch eine Kälteabschaltung sperren oder die Batterie heizen.',
	'At {0} this battery must not be charged: {1} is the most.':
		'Bei {0} darf diese Batterie nicht geladen werden: {1} ist das Höchste.',
	'At {0} the bank ages fast, and many batteries stop charging at {1}.':
		'Bei {0} altert die Batteriebank schnell, und viele Batterien beenden das Laden bei {1}.',
	'At {0} a discharged lead-acid battery freezes and bursts: keep it charged.':
		'Bei {0} gefriert und platzt eine entladene Blei-Säure-Batterie: geladen halten.',
	'{0} strings in parallel share badly; four are a usual limit. Use larger batteries or a higher voltage, and busbars with equal cables.':
		'{0} parallele Stränge teilen sich den Strom schlecht; vier sind eine übliche Grenze. Größere Batterien oder eine höhere Spannung verwenden, und Sammelschienen mit gleichen Leitungen.',
	'Lithium batteries in series must be of a kind whose maker allows {0} in series, and brought to equal charge first.':
		'Lithiumbatterien in Reihe müssen von einer Bauart sein, deren Hersteller {0} in Reihe erlaubt, und zuvor auf gleichen Ladezustand gebracht werden.',
	'The compartment needs openings of at least 1100 mm² (1.7 in²), one within 50 mm (2 in) of the top and one of the bottom, and none into the living space.':
		'Der Batteriekasten braucht Öffnungen von mindestens 1100 mm² (1.7 in²), eine höchstens 50 mm (2 in) unter der Oberkante und eine ebenso nah am Boden, und keine zum Wohnraum.',
	'A living-area battery has at least 60 Ah at the 20 h rate.':
		'Eine Bordbatterie hat mindestens 60 Ah bei 20-stündiger Entladung.',
	'inverter efficiency': 'Wirkungsgrad des Wechselrichters',
	'not known: {0}': 'nicht bekannt: {0}',
	'usual for an inverter of 2 to 3 kW (practice); the nameplate decides':
		'üblich für einen Wechselrichter mit 2 bis 3 kW (Praxis); das Typenschild entscheidet',
	'power of the load': 'Leistung des Verbrauchers',
	'current of the load': 'Strom des Verbrauchers',
	'energy a day': 'Energie am Tag',
	'hours a day': 'Stunden am Tag',
	'share of the time it runs': 'Anteil der Zeit, die es läuft',
	'on inverter': 'am Wechselrichter',
	dc: 'Gleichstrom',
	'where it is fed from': 'woher es gespeist wird',
	'where the {0} is fed from': 'Speisung für {0}',
	'I read {0} h a day for the {1}; a day has 24.': 'Ich lese {0} h am Tag für {1}; ein Tag hat 24.',
	'Give the hours a day it is on, up to 24.': 'Die Stunden am Tag angeben, die es läuft, höchstens 24.',
	'power of the {0}': 'Leistung für {0}',
	'How much does the {0} draw (watts or amps)?': 'Wie viel zieht das (Watt oder Ampere): {0}?',
	'share of that time the {0} runs': 'Anteil dieser Zeit, die es läuft: {0}',
	'hours a day of the {0}': 'Stunden am Tag: {0}',
	'How many hours a day is the {0} on?': 'Wie viele Stunden am Tag ist das an: {0}?',
	'{0} W and {1} A for the {2} contradict each other: at {3} V that current is {4} W.':
		'{0} W und {1} A für {2} widersprechen sich: bei {3} V sind das {4} W.',
	'{0} Wh a day for the {1} contradicts its power and hours: they make {2} Wh.':
		'{0} Wh am Tag für {1} widersprechen Leistung und Stunden: die ergeben {2} Wh.',
	'Give the energy a day, or the power and the hours.':
		'Die Energie am Tag angeben, oder Leistung und Stunden.',
	'Give the power or the current, whichever you trust.':
		'Leistung oder Strom angeben, was davon sicher stimmt.',
	'load {0}': 'Verbraucher {0}',
	'typical load (practice); the nameplate decides':
		'typischer Verbraucher (Praxis); das Typenschild entscheidet',
	cable: 'Leitung',
	'ground-fault protection (GFCI) of its receptacles, of the whole wiring on a single 15 A or 20 A circuit':
		'Fehlerstromschutz (GFCI) seiner Steckdosen, bei einem einzigen Stromkreis mit 15 A oder 20 A der ganzen Anlage',
	'a residual current device (RCD) of at most 30 mA that opens all live conductors':
		'ein FI-Schutzschalter (RCD) mit höchstens 30 mA, der alle aktiven Leiter trennt',
	'clock hour it begins': 'Uhrzeit, zu der es beginnt',
	'energy used a day': 'Energieverbrauch am Tag',
	'energy of one battery': 'Energie einer Batterie',
	'charge used a day': 'Ladungsverbrauch am Tag',
	period: 'Zeitraum',
	'driving a day': 'Fahrt am Tag',
	'charging current while driving': 'Ladestrom während der Fahrt',
	'hours a day on shore power': 'Stunden am Tag am Landanschluss',
	'charging current on shore power': 'Ladestrom am Landanschluss',
	'full at the start': 'voll zu Beginn',
	'reserve to keep': 'Reserve, die bleiben soll',
	'20 % for lithium, 50 % for lead-acid (practice)': '20 % bei Lithium, 50 % bei Blei-Säure (Praxis)',
	'state of charge at which the loads are switched off':
		'Ladezustand, bei dem die Verbraucher abgeschaltet werden',
	'where low-voltage cut-offs usually stand (practice)':
		'wo Unterspannungsabschaltungen meist liegen (Praxis)',
	'kept inside the living space': 'steht im Wohnraum',
	'Give a cut-off at or below the reserve.': 'Eine Abschaltung bei oder unter der Reserve angeben.',
	'The loads are switched off at {0}, above the reserve of {1}.':
		'Die Verbraucher werden bei {0} abgeschaltet, über der Reserve von {1}.',
	'Give a start at or above the reserve.': 'Einen Beginn bei oder über der Reserve angeben.',
	'A start at {0} is already below the reserve of {1}.':
		'Ein Beginn bei {0} liegt schon unter der Reserve von {1}.',
	'a power with neither name nor hours at a place': 'eine Leistung ohne Namen und Stunden an einem Ort',
	'Where is the van (a town, a park, or a position such as "35.2,-111.7")?':
		'Wo steht das Fahrzeug (ein Ort, ein Park oder eine Position wie "35.2,-111.7")?',
	bank: 'Batteriebank',
	'Which bank is there (Ah), or which array (W)?':
		'Welche Batteriebank gibt es (Ah), oder welches Solarfeld (W)?',
	'Give the temperature of the battery itself, above −17 °C (0 °F).':
		'Die Temperatur der Batterie selbst angeben, über −17 °C (0 °F).',
	'At {0} no table says what is left of this bank.':
		'Bei {0} sagt keine Tabelle, was von dieser Batteriebank bleibt.',
	'Name a larger array, more driving or shore power, or fewer loads.':
		'Ein größeres Solarfeld, mehr Fahrt oder Landanschluss oder weniger Verbraucher angeben.',
	'No bank up to {0} keeps the reserve: over the period less comes in than the loads take.':
		'Keine Batteriebank bis {0} hält die Reserve: im Zeitraum kommt weniger herein, als die Verbraucher nehmen.',
	'Name a larger bank, driving or shore power, fewer loads or another month.':
		'Eine größere Batteriebank, Fahrt oder Landanschluss, weniger Verbraucher oder einen anderen Monat angeben.',
	'No array up to {0} keeps the reserve with this bank in the period.':
		'Kein Solarfeld bis {0} hält mit dieser Batteriebank im Zeitraum die Reserve.',
	'Which loads run (watts and hours a day), or how much is used a day (Wh or Ah)?':
		'Welche Verbraucher laufen (Watt und Stunden am Tag), oder wie viel wird am Tag gebraucht (Wh oder Ah)?',
	'when the energy is used': 'wann die Energie gebraucht wird',
	'evenly over the day': 'gleichmäßig über den Tag',
	'no list of loads was given': 'es wurde keine Liste der Verbraucher gegeben',
	'I read both a list of loads and an amount used a day.':
		'Ich lese sowohl eine Liste von Verbrauchern als auch einen Tagesverbrauch.',
	'Give the list or the amount, not both.': 'Die Liste oder die Menge angeben, nicht beides.',
	'from {0}:00': 'ab {0}:00',
	'usual (practice)': 'üblich (Praxis)',
	'when the {0} runs': 'wann es läuft: {0}',
	'7 days': '7 Tage',
	'no sun in it: every day is the same': 'keine Sonne dabei: jeder Tag ist gleich',
	'a year': 'ein Jahr',
	'neither month nor period was named': 'weder Monat noch Zeitraum wurde genannt',
	'no month was named: the one with the least sun counts':
		'es wurde kein Monat genannt: der mit der wenigsten Sonne zählt',
	'when the van is driven': 'wann gefahren wird',
	'from {0}:00 every day': 'jeden Tag ab {0}:00',
	'when shore power is there': 'wann Landanschluss da ist',
	'a small charger, the safe side (practice)': 'ein kleines Ladegerät, die sichere Seite (Praxis)',
	'day {0}, {1}': 'Tag {0}, {1}',
};
