import type { Phrasebook } from '@lugbook/core';

/** What forms show of the topics, in German: titles, purposes and helps of their declarations, and the words around them. */
export const german: Phrasebook = {
	'Size it': 'Bemessen',
	Send: 'Senden',
	Cancel: 'Abbrechen',
	Next: 'Weiter',
	'Size a part': 'Bemessen',
	'What is to be sized?': 'Was ist zu bemessen?',
	'Choose one of the list.': 'Eines aus der Liste wählen.',
	'Left empty: {0}': 'Leer gelassen: {0}',
	'a number with its unit': 'eine Zahl mit ihrer Einheit',
	'a whole number': 'eine ganze Zahl',
	'a number': 'eine Zahl',
	'the name of a town': 'der Name eines Ortes',
	'in words': 'in Worten',
	'Reject No. {0}': 'Nr. {0} ablehnen',
	'Why is it rejected?': 'Warum wird sie abgelehnt?',
	'A word on No. {0}': 'Anmerkung zu Nr. {0}',
	'What is to be said?': 'Was ist zu sagen?',
	'No. {0} to a build': 'Nr. {0} zum Ausbau',
	'Name of the build': 'Name des Ausbaus',
	Welcome: 'Willkommen',
	'Nothing has been asked here yet. Invite me into the channel of a van with /invite @Lugbook, name the van with "/build use heron", then ask as you would ask somebody: "/ask 40A 12V 15 ft". A mention works as well, and so does a message to me alone.':
		'Hier wurde noch nichts gefragt. Lade mich mit /invite @Lugbook in den Kanal eines Fahrzeugs ein, gib ihm mit "/build use heron" einen Namen und frag dann wie jemanden in der Werkstatt: "/ask 40A 12V 15 ft". Eine Erwähnung geht auch, ebenso eine Nachricht an mich allein.',
	Vans: 'Fahrzeuge',
	'No channel has named its van yet: "/build use heron" does.':
		'Noch hat kein Kanal seinem Fahrzeug einen Namen gegeben: das geht mit "/build use heron".',
	' in ': ' in ',
	'Also: {0}': 'Außerdem: {0}',
	'Water an accumulator gives between pump starts': 'Wasser aus dem Druckspeicher zwischen Pumpenstarts',
	'Charging from the alternator': 'Laden über die Lichtmaschine',
	'Solar strings and charge controller': 'Solarstränge und Laderegler',
	'Battery bank': 'Batteriebank',
	'Rail, crossbeam or shelf in bending': 'Schiene, Querträger oder Regal auf Biegung',
	'Daily energy budget': 'Täglicher Energiebedarf',
	'Time to charge a bank': 'Zeit zum Laden einer Bank',
	'Heat that comes in and the air conditioner it takes': 'Wärmeeintrag und die nötige Klimaanlage',
	'Time to empty a tank by gravity': 'Zeit, einen Tank durch Gefälle zu leeren',
	'A tank, pipe or pump bay in the cold': 'Tank, Rohr oder Pumpenfach in der Kälte',
	'Fuse for a conductor and a load': 'Sicherung für Leiter und Verbraucher',
	'Heat loss of the van and the heater it needs': 'Wärmeverlust und das nötige Heizgerät',
	'Energy of hot water and what it takes from the bank': 'Energie für Warmwasser und was sie der Bank nimmt',
	'Time to inflate tires': 'Zeit zum Aufpumpen von Reifen',
	'Inverter, its cable and fuse': 'Wechselrichter, Leitung und Sicherung',
	'Air that keeps the inside dry': 'Luft, die innen trocken hält',
	'Voltages in the whole distribution': 'Spannungen in der ganzen Verteilung',
	'Weight ledger, axle loads and stability': 'Gewichtsliste, Achslasten und Stabilität',
	'Pressure lost in a water pipe': 'Druckverlust in einem Wasserrohr',
	'Bolts that hold an item aboard': 'Schrauben, die ein Stück an Bord halten',
	'How long a bank lasts': 'Wie lange eine Bank reicht',
	'What may run on shore power': 'Was am Landanschluss laufen darf',
	'Prospective short-circuit current': 'Unbeeinflusster Kurzschlussstrom',
	'Energy hour by hour': 'Energie Stunde für Stunde',
	'Solar yield': 'Solarertrag',
	'Gas spring for a lid or door': 'Gasdruckfeder für Klappe oder Tür',
	'Days of fresh and gray water': 'Tage mit Frisch- und Abwasser',
	'Tires against the axle load and the cold': 'Reifen gegen Achslast und Kälte',
	'Fan, air changes and the intake they need': 'Lüfter, Luftwechsel und nötige Zuluft',
	'Conductor size and protection for one run': 'Querschnitt und Schutz einer Leitung',
	'How much water comes without the pump, and how often the pump starts.':
		'Wie viel Wasser ohne Pumpe kommt und wie oft sie anläuft.',
	'Which DC-DC charger an alternator bears, its cable, and how many hours of driving bring a bank to a state of charge.':
		'Welchen Ladebooster eine Lichtmaschine verträgt, seine Leitung und wie viele Fahrstunden eine Bank auf einen Ladezustand bringen.',
	'How the panels are joined, and which controller, conductor and protection they take, in the cold and the heat.':
		'Wie die Module verbunden werden und welchen Regler, Leiter und Schutz sie brauchen, bei Kälte und Hitze.',
	'Which bank carries the daily use for so long, how its units are joined, and what currents it bears.':
		'Welche Bank den Tagesbedarf so lange trägt, wie ihre Batterien verbunden sind und welche Ströme sie verträgt.',
	'Whether a rail, crossbeam or shelf is stiff and strong enough, and the span or section that is.':
		'Ob Schiene, Querträger oder Regal steif und stark genug ist, und welche Spannweite oder welches Profil es wäre.',
	'How much the loads of a van take from the bank in a day, and the most they draw at once.':
		'Wie viel die Verbraucher eines Fahrzeugs der Bank am Tag nehmen und wie viel höchstens auf einmal.',
	'How long a charger takes to fill a bank from one state of charge to another, whether the bank bears it, and which charger does it in the time there is.':
		'Wie lange ein Ladegerät eine Bank von einem Ladezustand zum anderen lädt, ob sie es verträgt und welches Ladegerät es in der verfügbaren Zeit schafft.',
	'How much heat a parked van takes in on a clear hot day, which unit keeps up, and how long the bank runs it.':
		'Wie viel Wärme ein stehendes Fahrzeug an einem klaren, heißen Tag aufnimmt, welches Gerät mithält und wie lange die Bank es betreibt.',
	'How long a tank takes to empty through its valve and hose, and what vent it needs.':
		'Wie lange ein Tank durch Ventil und Schlauch leerläuft und welche Entlüftung er braucht.',
	'Whether it freezes overnight, how long until it does, and what a heating pad needs.':
		'Ob es über Nacht friert, wie lange das dauert und was eine Heizmatte braucht.',
	'Which rating and which kind of fuse protects a known conductor on a battery circuit, and how it behaves.':
		'Welcher Nennstrom und welche Art Sicherung einen bekannten Leiter am Batteriekreis schützt und wie sie sich verhält.',
	'How much heat the van loses on a cold night, which heater covers it, and what fuel and battery a night costs.':
		'Wie viel Wärme das Fahrzeug in einer kalten Nacht verliert, welches Heizgerät sie deckt und was eine Nacht an Brennstoff und Batterie kostet.',
	'What a tank of hot water costs in energy, time and amps, how long a shower it gives, and what leaving it on does to the bank.':
		'Was ein Tank Warmwasser an Energie, Zeit und Ampere kostet, wie lange damit geduscht wird und was es die Bank kostet, ihn an zu lassen.',
	'How long a pump takes to fill the tires, with its rests, and what that costs the battery.':
		'Wie lange ein Kompressor die Reifen füllt, mit seinen Pausen, und was das die Batterie kostet.',
	'Which inverter the loads need, the current it draws, its cable and fuse, and whether the bank bears it.':
		'Welchen Wechselrichter die Verbraucher brauchen, seinen Strom, seine Leitung und Sicherung, und ob die Bank ihn verträgt.',
	'How much water people, cooking and drying give off, and the air flow that keeps the cold surfaces above the dew point.':
		'Wie viel Wasser Menschen, Kochen und Trocknen abgeben und welcher Luftstrom die kalten Flächen über dem Taupunkt hält.',
	'The true voltage at every load with all loads on, the current in every segment, and which segment to thicken first.':
		'Die wahre Spannung an jedem Verbraucher, wenn alle laufen, der Strom in jedem Abschnitt und welcher zuerst dicker werden sollte.',
	'Whether the van with everything aboard stays within its GVWR and axle ratings, how it stands side to side, and what would clear an overload.':
		'Ob das Fahrzeug mit allem an Bord unter Gesamtmasse und Achslasten bleibt, wie es links und rechts steht und was eine Überladung behebt.',
	'Which pipe a fixture needs, or whether a named one will do, and what pressure is left at the tap.':
		'Welches Rohr eine Zapfstelle braucht, oder ob ein genanntes reicht, und welcher Druck am Hahn bleibt.',
	'How many bolts of which size hold a heavy item under braking, in bends and in a crash.':
		'Wie viele Schrauben welcher Größe ein schweres Stück beim Bremsen, in Kurven und bei einem Aufprall halten.',
	'How many hours a bank carries a load or a mix of loads, from one state of charge to another, and whether that is enough for a night, some days or the hours that each load is to run.':
		'Wie viele Stunden eine Bank einen oder mehrere Verbraucher trägt, von einem Ladezustand zum anderen, und ob das für eine Nacht, einige Tage oder die Stunden jedes Verbrauchers reicht.',
	'What of the mains loads may run together on a supply, and which charger limit to set with each set.':
		'Welche Netzverbraucher zusammen an einem Anschluss laufen dürfen und welche Grenze dabei am Ladegerät einzustellen ist.',
	'The current a dead short draws at a point of the battery circuit, and which fuses can break it.':
		'Der Strom eines satten Kurzschlusses an einer Stelle des Batteriekreises und welche Sicherungen ihn abschalten.',
	'Whether bank, array, driving and shore power carry the loads through days or a year, and the smallest that do.':
		'Ob Bank, Solar, Fahrt und Landstrom die Verbraucher über Tage oder ein Jahr tragen, und die kleinsten, die es tun.',
	'What an array on the roof puts into the battery at a place in a month, or how large an array a daily need takes.':
		'Was Solar auf dem Dach an einem Ort in einem Monat in die Batterie bringt, oder wie groß es für einen Tagesbedarf sein soll.',
	'Which gas spring holds a lid or door open, with its stroke and the force a hand needs over the swing.':
		'Welche Gasdruckfeder eine Klappe oder Tür offen hält, mit Hub und Handkraft über den Weg.',
	'How long the fresh tank lasts, when the gray tank is full, and which comes first; or the tanks that so many days take.':
		'Wie lange der Frischwassertank reicht, wann der Abwassertank voll ist und was zuerst kommt; oder die Tanks für so viele Tage.',
	'Whether the tires carry what stands on their axle, at which pressure, and what cold and height make of the pressure.':
		'Ob die Reifen tragen, was auf ihrer Achse steht, bei welchem Druck, und was Kälte und Höhe daraus machen.',
	'How often a fan renews the air, how large the intake must be, and what a small one does.':
		'Wie oft ein Lüfter die Luft erneuert, wie groß die Zuluft sein muss und was eine kleine bewirkt.',
	'Which conductor one run needs, and which fuse or breaker protects it.':
		'Welchen Leiter eine Leitung braucht und welche Sicherung oder welcher Automat sie schützt.',
	'The whole inside, gas and water together.': 'Der ganze Innenraum, Gas und Wasser zusammen.',
	'Cut-in and cut-out in psi as stamped on it: 30/50.':
		'Ein- und Ausschaltdruck in psi, wie aufgeprägt: 30/50.',
	'To see whether so much driving is enough.': 'Um zu sehen, ob so viel Fahrt reicht.',
	'All of them one way; name the numbers where they are joined both ways.':
		'Alle gleich verbunden; die Zahlen nennen, wo beides vorkommt.',
	'From the maker: the current at which the battery management system switches the battery off.':
		'Vom Hersteller: der Strom, bei dem das Batteriemanagement die Batterie abschaltet.',
	'From the starter battery to the charger, along the cable.':
		'Von der Starterbatterie zum Ladegerät, am Kabel entlang.',
	'Where only the number of panels is named: all of them in one string, or each its own.':
		'Wo nur die Zahl der Module genannt ist: alle in einem Strang, oder jedes für sich.',
	'Its record low decides how high the voltage climbs.':
		'Sein Tiefstwert entscheidet, wie hoch die Spannung steigt.',
	'In place of a daily figure: each load with watts or amps and hours a day.':
		'Statt eines Tageswerts: jeder Verbraucher mit Watt oder Ampere und Stunden am Tag.',
	'How long the bank must last without being charged.': 'Wie lange die Bank ohne Laden reichen muss.',
	'On top of everything else, 1 for none; IEEE 485 suggests 1.1 to 1.15 where loads may grow.':
		'Zu allem anderen hinzu, 1 für keinen; IEEE 485 schlägt 1.1 bis 1.15 vor, wo Verbraucher dazukommen können.',
	'All chargers that may run at once, added up.':
		'Alle Ladegeräte, die zugleich laufen können, zusammengezählt.',
	'From the maker.': 'Vom Hersteller.',
	'Between the supports; for a cantilever from the wall to the tip.':
		'Zwischen den Stützen; beim Kragträger von der Wand bis zur Spitze.',
	'Each with a mass, a force or a line load, and its place where it has one.':
		'Jede mit Masse, Kraft oder Streckenlast, und ihrem Ort, wo sie einen hat.',
	'Width × height × wall, "40x40x2"; two figures are a solid bar.':
		'Breite × Höhe × Wand, "40x40x2"; zwei Zahlen sind ein Vollstab.',
	'For a section of two unlike sides given as one marking; without a word it is taken as lying flat.':
		'Für ein Profil mit zwei ungleichen Seiten in einer Angabe; ohne ein Wort gilt es als flach liegend.',
	'A fraction of an inch before the word plywood or board, "3/4 plywood".':
		'Ein Bruchteil eines Zolls vor dem Wort plywood oder board, "3/4 plywood".',
	'From the maker for a slotted profile; it is much less than that of its outline.':
		'Vom Hersteller bei einem Nutprofil; es ist viel kleiner als das des Umrisses.',
	'As 6061-T6; it stands before the material.': 'Wie 6061-T6; sie gilt vor dem Werkstoff.',
	'The 240 of L/240.': 'Die 240 aus L/240.',
	'People leave a bed while driving.': 'Während der Fahrt liegt niemand im Bett.',
	'Each with watts or amps and hours a day: "fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h".':
		'Jeder mit Watt oder Ampere und Stunden am Tag: "fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h".',
	'What it gives to the bank, where no amps are on its plate.':
		'Was es der Bank gibt, wo keine Ampere auf dem Schild stehen.',
	'Then the answer says whether it is enough.': 'Dann sagt die Antwort, ob es reicht.',
	'Its sun, altitude and design high are taken where they are not named.':
		'Seine Sonne, Höhe und Auslegungshitze gelten, wo sie nicht genannt sind.',
	'Name its rating to have it judged.': 'Den Nennwert nennen, um ihn prüfen zu lassen.',
	'Of the living space, behind the seats.': 'Des Wohnraums, hinter den Sitzen.',
	'Where it is not named: 80 %, lithium iron phosphate down to 20 %.':
		'Wo er nicht genannt ist: 80 %, bei Lithium-Eisenphosphat bis 20 %.',
	'From the outlet up to the water.': 'Vom Auslauf bis zum Wasserspiegel.',
	'Its design low is taken where no temperature is named.':
		'Seine Auslegungskälte gilt, wo keine Temperatur genannt ist.',
	'Name a rating to have it judged.': 'Einen Nennstrom nennen, um ihn prüfen zu lassen.',
	'Between the power named and the power drawn from this run, as for an inverter.':
		'Zwischen der genannten Leistung und der aus dieser Leitung, wie bei einem Wechselrichter.',
	'To see whether a short at the far end still opens the fuse at once.':
		'Um zu sehen, ob ein Kurzschluss am fernen Ende die Sicherung noch sofort öffnet.',
	'Its design low and its altitude are taken where they are not named.':
		'Seine Auslegungskälte und Höhe gelten, wo sie nicht genannt sind.',
	'Days or nights for which the fuel has to last.': 'Tage oder Nächte, für die der Brennstoff reichen muss.',
	'As rated, against no pressure.': 'Nach Angabe, ohne Gegendruck.',
	'A second point of the pump curve, with its pressure.':
		'Ein zweiter Punkt der Pumpenkennlinie, mit seinem Druck.',
	'From and to with one unit, "25 to 65 psi".': 'Von und bis mit einer Einheit, "25 to 65 psi".',
	'As printed, "LT225/75R16"; the volume follows from it.':
		'Wie aufgedruckt, "LT225/75R16"; daraus folgt das Volumen.',
	'How long it may run before it must rest.': 'Wie lange er laufen darf, bevor er ruhen muss.',
	'The inverter itself ("2000W inverter"), or what it must run: "microwave 1500W, laptop 60W".':
		'Der Wechselrichter selbst ("2000W inverter"), oder was er betreiben muss: "microwave 1500W, laptop 60W".',
	'From the bank to the inverter, along the cable.': 'Von der Bank zum Wechselrichter, am Kabel entlang.',
	'Segments: from - to, size, one-way length. Loads: node, amperes or watts. "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"':
		'Abschnitte: von - nach, Querschnitt, einfache Länge. Verbraucher: Knoten, Ampere oder Watt. "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
	'Only where its name does not say so.': 'Nur wo sein Name es nicht sagt.',
	'Each with its mass (or the volume of its tank) and its place.':
		'Jedes mit seiner Masse (oder dem Volumen seines Tanks) und seinem Ort.',
	'The greatest mass of the loaded van, on the door label.':
		'Die größte Masse des beladenen Fahrzeugs, auf dem Schild an der Tür.',
	'With fuel, without people and load.': 'Mit Kraftstoff, ohne Menschen und Ladung.',
	'What springs and tires raise the body; item heights are taken as before it.':
		'Was Federn und Reifen den Aufbau anheben; die Höhen der Stücke gelten ohne das.',
	'Where the third person and more sit.': 'Wo die dritte Person und weitere sitzen.',
	'A size of PEX (3/8, 1/2, 3/4 in; 12, 16, 20 mm) to have it judged; leave it out to have one chosen.':
		'Eine Größe von PEX (3/8, 1/2, 3/4 in; 12, 16, 20 mm), um sie prüfen zu lassen; ohne sie wird eine gewählt.',
	'For hose and pipe that is not in the table.': 'Für Schlauch und Rohr, die nicht in der Tabelle stehen.',
	'Leave it out to have it chosen.': 'Ohne Angabe wird gewählt.',
	'Replaces the forward figure of the load case where it is higher.':
		'Ersetzt den Wert nach vorn im Lastfall, wo sie höher ist.',
	'From its maker, for this sheet.': 'Von ihrem Hersteller, für dieses Blech.',
	'Its diameter, under each nut.': 'Ihr Durchmesser, unter jeder Mutter.',
	'What is on meanwhile, with watts or amps; hours a day or a share where it is not on all the time.':
		'Was währenddessen läuft, mit Watt oder Ampere; Stunden am Tag oder ein Anteil, wo es nicht immer läuft.',
	'Then the answer says whether the bank carries it.': 'Dann sagt die Antwort, ob die Bank es trägt.',
	'The inlet on the van, or the whole supply where nothing else is named.':
		'Der Anschluss am Fahrzeug, oder die ganze Versorgung, wo sonst nichts genannt ist.',
	'The household outlet, pedestal or generator it is plugged into.':
		'Die Steckdose, Säule oder der Generator, woran es angeschlossen ist.',
	"The charger's output into the bank.": 'Was das Ladegerät in die Bank gibt.',
	'What is to run on the supply: "water heater 1440W, cooktop 1800W, microwave 12A".':
		'Was am Anschluss laufen soll: "water heater 1440W, cooktop 1800W, microwave 12A".',
	'Each with watts or amps, hours a day and, as a second time, the clock hour it begins: "lights 20W 5h from 18h".':
		'Jeder mit Watt oder Ampere, Stunden am Tag und, als zweite Zeit, der Uhrzeit, zu der er beginnt: "lights 20W 5h from 18h".',
	'In place of a list: taken evenly over the day.': 'Statt einer Liste: gleichmäßig über den Tag.',
	'A town, a park or a position; needed where there is solar.':
		'Ein Ort, ein Park oder eine Position; nötig, wo es Solar gibt.',
	'The first month of the run; without it and without a period a whole year is run.':
		'Der erste Monat der Rechnung; ohne ihn und ohne Zeitraum wird ein ganzes Jahr gerechnet.',
	'A town with its state or country, a park, or a position such as "35.2,-111.7".':
		'Ein Ort mit Bundesstaat oder Land, ein Park oder eine Position wie "35.2,-111.7".',
	'Without it the worst month counts.': 'Ohne ihn zählt der schlechteste Monat.',
	'Under standard test conditions, from the label; the whole array where no number of panels is named.':
		'Unter Standardtestbedingungen, vom Etikett; die ganze Anlage, wo keine Zahl der Module genannt ist.',
	'Distance of the hinge from the line of the spring, where only one place is looked at.':
		'Abstand des Scharniers von der Linie der Feder, wo nur eine Stelle betrachtet wird.',
	'Along the lid.': 'An der Klappe entlang.',
	'Level, towards the free edge of the lid.': 'Waagerecht, zum freien Rand der Klappe hin.',
	'Extended, as printed on it; leave it out to have it chosen.':
		'Ausgefahren, wie aufgedruckt; ohne Angabe wird sie gewählt.',
	'Only while the water runs.': 'Nur solange das Wasser läuft.',
	'What stands on this axle with tanks full and people aboard.':
		'Was auf dieser Achse steht, mit vollen Tanks und Menschen an Bord.',
	'Where one tire was weighed and not the axle; of two that differ the heavier.':
		'Wo ein Reifen gewogen wurde und nicht die Achse; von zwei ungleichen der schwerere.',
	'The number before the speed letter on the sidewall; of two numbers the first, for single tires.':
		'Die Zahl vor dem Geschwindigkeitsbuchstaben auf der Flanke; von zweien die erste, für Einzelreifen.',
	'The second of two numbers on the sidewall.': 'Die zweite von zwei Zahlen auf der Flanke.',
	'Load index and speed symbol as printed, "121/120R".':
		'Lastindex und Geschwindigkeitssymbol wie aufgedruckt, "121/120R".',
	'Read so that it is not lost; what a tire carries stands in its load index, "LT245/75R16 120/116R".':
		'Wird gelesen, damit es nicht verloren geht; was ein Reifen trägt, steht in seinem Lastindex, "LT245/75R16 120/116R".',
	'The pressure printed beside the largest load on the sidewall.':
		'Der Druck, der neben der größten Last auf der Flanke steht.',
	'At free flow, as the maker rates it.': 'Bei freiem Strom, nach Angabe des Herstellers.',
	'Such as 6x10 in or 20x30 cm.': 'Wie 6x10 in oder 20x30 cm.',
	'From the source to the load, along the cable; both legs are counted by the calculation.':
		'Von der Quelle zum Verbraucher, am Kabel entlang; die Rechnung zählt Hin- und Rückleiter.',
	'The current named is the rating of an inlet or circuit, so its device has that rating.':
		'Der genannte Strom ist der Nennstrom eines Anschlusses oder Stromkreises, also hat sein Schutz diesen Nennstrom.',
	'Name a size to have it judged.': 'Einen Querschnitt nennen, um ihn prüfen zu lassen.',
	'The longest run of the named size that keeps the drop.':
		'Die längste Leitung des genannten Querschnitts, die den Spannungsfall einhält.',
	'How many hours or days a store of propane, butane, diesel or gasoline feeds the burners aboard, whether it does for a trip, or which cylinder or tank the trip takes.':
		'Wie viele Stunden oder Tage ein Vorrat an Propan, Butan, Diesel oder Benzin die Brenner an Bord versorgt, ob er für eine Reise reicht oder welche Flasche oder welchen Tank die Reise braucht.',
	'What a cylinder holds when full, without its own weight.':
		'Was eine volle Flasche enthält, ohne ihr eigenes Gewicht.',
	'Of a propane container its whole volume: 80 % of it counts.':
		'Bei einem Propanbehälter das ganze Volumen: davon zählen 80 %.',
	'Each with its power and hours a day: "furnace 16000 Btu/h 8 h 50 %, cooktop 7000 Btu/h 1 h".':
		'Jeder mit Leistung und Stunden am Tag: "Heizung 16000 Btu/h 8 h 50 %, Kocher 7000 Btu/h 1 h".',
	'Days for which the fuel has to last.': 'Tage, für die der Brennstoff reichen muss.',
	'Of what is rated by its output, by the lower heating value.':
		'Für das, was nach der abgegebenen Leistung bemessen ist, bezogen auf den Heizwert.',
};
