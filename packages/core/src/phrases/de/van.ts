import type { Phrasebook } from '../phrasebook.js';

/** What the cross-checks of a whole van find and ask. */
export const van: Phrasebook = {
	'the {0} it may be charged with': 'die {0}, mit denen sie geladen werden darf',
	'the usual {0} for this bank': 'die üblichen {0} für diese Batteriebank',
	'The chargers together give {0} ({1}), over {2}: set them to {3} together, or add batteries.':
		'Die Ladegeräte geben zusammen {0} ({1}), mehr als {2}: zusammen auf {3} einstellen oder Batterien ergänzen.',
	'What current does the charger in the inverter give?':
		'Welchen Strom gibt das Ladegerät im Wechselrichter?',
	'Which chemistry has the bank: lithium iron phosphate, AGM, gel, flooded lead-acid?':
		'Welche Zellchemie hat die Batteriebank: Lithium-Eisenphosphat, AGM, Gel, Blei-Säure (nass)?',
	'outside the heated space ': 'außerhalb des beheizten Raums ',
	'The lithium bank {0}may see {1} and nothing stops its charging below {2}: lithium plates in the cells, which ruins them and can start a fire. Take batteries with a low-temperature cut-off or a heater, or stop every charger by a cold switch.':
		'Die Lithiumbank {0}kann {1} erreichen, und nichts verhindert ihr Laden unter {2}: in den Zellen scheidet sich Lithium ab, das zerstört sie und kann einen Brand auslösen. Batterien mit Abschaltung bei Kälte oder mit Heizung nehmen, oder jedes Ladegerät über einen Kälteschalter sperren.',
	'Does the battery stop charging below freezing by itself, or is it heated?':
		'Hört die Batterie unter dem Gefrierpunkt von selbst auf zu laden, oder ist sie beheizt?',
	'The bank is tied straight to the alternator: the house loads drain the starter battery. Put a relay or a DC-DC charger between them, fused at both ends.':
		'Die Batteriebank hängt direkt an der Lichtmaschine: die Bordverbraucher entladen die Starterbatterie. Ein Relais oder einen Ladewandler (DC-DC) dazwischen setzen, an beiden Enden abgesichert.',
	'A lithium bank tied straight to the alternator takes all it can give: the alternator overheats and can burn, and the starter battery is drained with it. Put a DC-DC charger between them, fused at both ends.':
		'Eine Lithiumbank direkt an der Lichtmaschine nimmt alles, was diese gibt: die Lichtmaschine überhitzt und kann brennen, und die Starterbatterie wird mit entladen. Einen Ladewandler (DC-DC) dazwischen setzen, an beiden Enden abgesichert.',
	'A relay between alternator and a lithium bank sets no limit to the current: the alternator overheats and can burn. Charge through a DC-DC charger sized to the alternator.':
		'Ein Relais zwischen Lichtmaschine und Lithiumbank begrenzt den Strom nicht: die Lichtmaschine überhitzt und kann brennen. Über einen Ladewandler (DC-DC) laden, der zur Lichtmaschine passt.',
	'The DC-DC charging of {0} takes {1} from the {2} alternator; the vehicle itself takes some {3}':
		'Das Laden über den Wandler mit {0} nimmt {1} aus der Lichtmaschine mit {2}; das Fahrzeug selbst nimmt etwa {3}',
	'{0}: more than it is rated for. It overheats; charge with at most {1}.':
		'{0}: mehr, als sie nach Nennwert verträgt. Sie überhitzt; mit höchstens {1} laden.',
	'{0}: over {1} % of its rating for long. Charge with at most {2}.':
		'{0}: lange über {1} % ihres Nennstroms. Mit höchstens {2} laden.',
	'{0}: at hot idle it gives about half its rating and can spare {1} of charging. Stop charging at idle, or set the charger to that.':
		'{0}: heiß im Leerlauf gibt sie etwa die Hälfte ihres Nennstroms und kann {1} zum Laden abgeben. Im Leerlauf nicht laden oder das Ladegerät darauf einstellen.',
	'Is the battery compartment vented to the outside, low and high?':
		'Ist das Batteriefach nach außen belüftet, unten und oben?',
	'The {0} bank gives off hydrogen while charging and its compartment is not vented: a spark can set it off. Vent it to the outside with openings of at least {1}, one low and one high.':
		'Die Batteriebank ({0}) gibt beim Laden Wasserstoff ab, und ihr Fach ist nicht belüftet: ein Funke kann ihn zünden. Nach außen belüften, mit Öffnungen von mindestens {1}, eine unten und eine oben.',
	'Nothing charges the bank: add shore, alternator or solar charging.':
		'Nichts lädt die Batteriebank: Ladung über Landanschluss, Lichtmaschine oder Sonne ergänzen.',
	'What charges the bank: shore power, the alternator, solar?':
		'Was lädt die Batteriebank: Landanschluss, Lichtmaschine, Sonne?',
	'What charges the bank besides the sun: the alternator, shore power?':
		'Was lädt die Batteriebank außer der Sonne: Lichtmaschine, Landanschluss?',
	'In winter the sun alone charges the bank: a flat array gives a tenth to a third of its summer yield. Add alternator or shore charging.':
		'Im Winter lädt nur die Sonne: flach liegende Module bringen ein Zehntel bis ein Drittel des Sommerertrags. Ladung über Lichtmaschine oder Landanschluss ergänzen.',
	'How big is the van: short, medium, long or extra-long wheelbase, and which roof?':
		'Wie groß ist das Fahrzeug: kurzer, mittlerer, langer oder extralanger Radstand, und welches Dach?',
	'What insulation has the van, and how thick is it?':
		'Welche Dämmung hat das Fahrzeug, und wie dick ist sie?',
	'What heat output has the heater (kW)?': 'Welche Heizleistung hat die Heizung (kW)?',
	'What heats the van in winter?': 'Was heizt das Fahrzeug im Winter?',
	'The van is for winter and has no heater: water freezes and nobody stays. Ask me for the heat loss to size one.':
		'Das Fahrzeug ist für den Winter und hat keine Heizung: Wasser gefriert, und niemand bleibt. Frag mich nach dem Wärmeverlust, um eine zu bemessen.',
	'The van is for winter and not insulated: bare metal runs with water and loses some five times the heat. 25 mm over walls, roof and doors is what most vans get.':
		'Das Fahrzeug ist für den Winter und nicht gedämmt: an blankem Blech läuft Wasser, und es verliert etwa fünfmal so viel Wärme. Die meisten bekommen 25 mm an Wänden, Dach und Türen.',
	'On a cold night the fan must move at least {0} to keep the shell dry; run it low with an opening for the air to come in.':
		'In einer kalten Nacht muss der Lüfter mindestens {0} fördern, damit die Hülle trocken bleibt; auf kleiner Stufe laufen lassen, mit einer Öffnung für die Zuluft.',
	'Is there a roof fan?': 'Gibt es einen Dachlüfter?',
	'On a cold night it takes {0} of air to keep the shell dry and there is no fan: water runs down behind the panels. Fit a roof fan.':
		'In einer kalten Nacht braucht es {0} Luft, damit die Hülle trocken bleibt, und es gibt keinen Lüfter: hinter der Verkleidung läuft Wasser. Einen Dachlüfter einbauen.',
	'What cooling has the air conditioner (Btu/h)?': 'Welche Kühlleistung hat die Klimaanlage (Btu/h)?',
	'Single glass is the coldest part of a winter van and runs with water: insulated covers cut its loss to about a third.':
		'Einfachglas ist im Winter das Kälteste am Fahrzeug, und an ihm läuft Wasser: gedämmte Abdeckungen senken seinen Verlust auf etwa ein Drittel.',
	'A day takes {0} and the bank gives {1} from full: {2} at {3} V would carry it.':
		'Ein Tag braucht {0}, und die volle Batteriebank gibt {1}: {2} bei {3} V würden reichen.',
	'The bank lasts {0} days of the {1} wanted off grid: a day takes {2} and gains {3}. {4} at {5} V would do.':
		'Die Batteriebank reicht {0} von {1} gewünschten Tagen ohne Anschluss: ein Tag braucht {2} und bringt {3}. {4} bei {5} V würden reichen.',
	'On a winter night of {0} h {1} take {2} of the {3} a cold bank gives: when it is empty the heat goes off and water freezes. {4} would leave half.':
		'In einer Winternacht von {0} h brauchen {1} {2} von den {3}, die eine kalte Batteriebank gibt: ist sie leer, geht die Heizung aus, und Wasser gefriert. {4} ließen die Hälfte übrig.',
	'The {0} water heater left on for a day takes {1} % of what the bank gives. Put it on a timer of two hours, or run it on shore power only.':
		'Der Boiler mit {0} braucht, einen Tag lang eingeschaltet, {1} % dessen, was die Batteriebank gibt. Mit einer Zeitschaltuhr auf zwei Stunden begrenzen oder nur am Landanschluss betreiben.',
	'The {0} at {1} runs {2} h from a full bank with nothing else on. For {3} h it takes {4} at {5} V, or shore power.':
		'{0} mit {1} läuft {2} h an der vollen Batteriebank, wenn sonst nichts läuft. Für {3} h braucht es {4} bei {5} V, oder Landanschluss.',
	'The {0} of {1} empties the bank in {2} h: keep electric heat for shore power and heat with fuel on the road.':
		'{0} mit {1} leert die Batteriebank in {2} h: elektrisch nur am Landanschluss heizen, unterwegs mit Brennstoff.',
	"The inverter at full power and all 12 V loads together draw {0}; the batteries' own protection allows {1}. Leave the inverter at {2} or less.":
		'Der Wechselrichter bei voller Leistung und alle 12-V-Verbraucher ziehen zusammen {0}; die eigene Schutzschaltung der Batterien erlaubt {1}. Den Wechselrichter bei höchstens {2} lassen.',
	'Is a carbon-monoxide alarm fitted where people sleep?':
		'Ist ein Kohlenmonoxidmelder eingebaut, wo geschlafen wird?',
	'Fuel burns aboard ({0}) and there is no carbon-monoxide alarm: the gas kills sleepers without a smell. Fit a listed alarm for vehicles at sleeping height before the first night.':
		'An Bord verbrennt Brennstoff ({0}), und es gibt keinen Kohlenmonoxidmelder: das Gas tötet Schlafende ohne jeden Geruch. Vor der ersten Nacht einen für Fahrzeuge zugelassenen Melder in Schlafhöhe einbauen.',
	'Is a gas alarm fitted near the floor?': 'Ist ein Gasmelder in Bodennähe eingebaut?',
	'Fuel gas is aboard ({0}) and there is no gas alarm: propane and butane sink and gather on the floor until a spark finds them. Fit one near the floor.':
		'Brenngas ist an Bord ({0}), und es gibt keinen Gasmelder: Propan und Butan sinken und sammeln sich am Boden, bis ein Funke sie findet. Einen in Bodennähe einbauen.',
	'The gas bottle stands in the living space without a sealed locker: a leak gathers there and explodes. Put it in a locker sealed from the inside with a vent of at least {0} in its floor, or outside.':
		'Die Gasflasche steht im Wohnraum ohne dichten Kasten: ein Leck sammelt sich dort und explodiert. In einen nach innen dichten Kasten mit einer Öffnung von mindestens {0} im Boden stellen, oder nach draußen.',
	'The heater burns into the living space: it gives off carbon monoxide and water and takes the oxygen. Never sleep with it on; take a heater with sealed combustion, air and exhaust outside.':
		'Die Heizung verbrennt in den Wohnraum: sie gibt Kohlenmonoxid und Wasser ab und nimmt den Sauerstoff. Nie bei laufender Heizung schlafen; ein Gerät mit geschlossener Verbrennung nehmen, Luft und Abgas außen.',
	'Does the gas heater take its air from outside and send its exhaust outside?':
		'Nimmt die Gasheizung ihre Luft von außen und führt ihr Abgas nach außen?',
	'Is there a roof fan or a window that opens by the cooktop?':
		'Gibt es am Kochfeld einen Dachlüfter oder ein Fenster, das sich öffnen lässt?',
	'The cooktop burns with nothing to carry its air out: the flame takes oxygen and gives off carbon monoxide and water. Fit a roof fan and a fixed low opening of at least {0}.':
		'Das Kochfeld brennt, und nichts führt die Luft ab: die Flamme nimmt Sauerstoff und gibt Kohlenmonoxid und Wasser ab. Einen Dachlüfter und eine feste Öffnung unten von mindestens {0} einbauen.',
	'Is a smoke alarm fitted?': 'Ist ein Rauchmelder eingebaut?',
	'There is no smoke alarm: fit one on the ceiling of the sleeping area.':
		'Es gibt keinen Rauchmelder: einen an der Decke des Schlafbereichs einbauen.',
	'Is there a fire extinguisher by the door?': 'Gibt es einen Feuerlöscher an der Tür?',
	'There is no fire extinguisher: keep one within reach of the door.':
		'Es gibt keinen Feuerlöscher: einen in Reichweite der Tür anbringen.',
	"The {0} inverter draws {1} at full power, over the usual {2} for this bank: its voltage falls and the inverter cuts out. Stay at or below {3}, take a larger bank, or confirm the maker's limit.":
		'Der Wechselrichter mit {0} zieht bei voller Leistung {1}, mehr als die üblichen {2} dieser Batteriebank: ihre Spannung sinkt, und er schaltet ab. Bei höchstens {3} bleiben, eine größere Batteriebank nehmen oder die Grenze des Herstellers bestätigen.',
	'near empty draws': 'zieht fast leer',
	draws: 'zieht',
	"The {0} inverter {1} {2}, over the {3} at which the batteries' own protection switches off: everything goes dark under load. Stay at or below {4}, or take batteries whose protection allows {5} together.":
		'Der Wechselrichter mit {0} {1} {2}, mehr als die {3}, bei denen die eigene Schutzschaltung der Batterien abschaltet: unter Last wird alles dunkel. Bei höchstens {4} bleiben oder Batterien nehmen, deren Schutz zusammen {5} erlaubt.',
	"Starting the {0} draws {1} for a moment; the batteries' own protection allows {2}. See that it bears that for some seconds, or fit a soft start.":
		'Beim Anlauf zieht {0} kurz {1}; die eigene Schutzschaltung der Batterien erlaubt {2}. Prüfen, ob sie das einige Sekunden verträgt, oder einen Sanftanlauf einbauen.',
	'The {0} takes {1}, more than the {2} inverter gives: run it on shore power only, set it lower, or take an inverter of at least {3}.':
		'{0} braucht {1}, mehr als der Wechselrichter mit {2} gibt: nur am Landanschluss betreiben, niedriger einstellen oder einen Wechselrichter mit mindestens {3} nehmen.',
	'{0} and {1} together take {2}, more than the {3} inverter gives: use one at a time, or take an inverter of at least {4}.':
		'{0} und {1} brauchen zusammen {2}, mehr als der Wechselrichter mit {3} gibt: nacheinander benutzen oder einen Wechselrichter mit mindestens {4} nehmen.',
	'Is there an inverter or a shore inlet for the mains loads?':
		'Gibt es einen Wechselrichter oder einen Landanschluss für die Netzverbraucher?',
	'{0}: mains loads, but no inverter and no shore power feeds them. An inverter of at least {1} or a shore inlet would.':
		'{0}: Netzverbraucher, doch kein Wechselrichter und kein Landanschluss speist sie. Ein Wechselrichter mit mindestens {1} oder ein Landanschluss täte es.',
	'Left on, the inverter draws {0} with nothing connected: {1} % of what the bank gives, every day. Fit a remote switch or use its search mode.':
		'Eingeschaltet zieht der Wechselrichter {0}, auch wenn nichts angeschlossen ist: jeden Tag {1} % dessen, was die Batteriebank gibt. Einen Fernschalter einbauen oder seinen Suchbetrieb nutzen.',
	'{0} at 12 V is up to {1}: at 24 V it is half, with thinner cables and smaller losses.':
		'{0} bei 12 V sind bis zu {1}: bei 24 V die Hälfte, mit dünneren Leitungen und kleineren Verlusten.',
	'The inverter stands in a closed space and must shed up to {0} of heat: give it openings low and high, or it cuts out and ages.':
		'Der Wechselrichter steht in einem geschlossenen Raum und muss bis zu {0} Wärme abgeben: Öffnungen unten und oben vorsehen, sonst schaltet er ab und altert.',
	'on shore power the supply has its bond already':
		'am Landanschluss hat die Einspeisung ihre Verbindung schon',
	'it is joined at {0} places': 'sie sind an {0} Stellen verbunden',
	'Neutral and ground are joined in the van, and {0}: current flows on the metal of the van and protective devices may not trip. Keep one bond, in the source that feeds, made and broken by the transfer relay of the inverter.':
		'Neutralleiter und Schutzleiter sind im Fahrzeug verbunden, und {0}: Strom fließt über das Blech, und Schutzgeräte lösen womöglich nicht aus. Nur eine Verbindung lassen, in der speisenden Quelle, hergestellt und getrennt vom Umschaltrelais des Wechselrichters.',
	'Where are neutral and ground joined: in the inverter only while it feeds, and nowhere else in the van?':
		'Wo sind Neutralleiter und Schutzleiter verbunden: nur im Wechselrichter, solange er speist, und sonst nirgends im Fahrzeug?',
	'Which main fuse sits at the bank: its rating and its kind?':
		'Welche Hauptsicherung sitzt an der Batteriebank: Nennstrom und Art?',
	' It can feed about {0} into a short.': ' Sie kann etwa {0} in einen Kurzschluss speisen.',
	'The bank has no main fuse: a short burns the cable and the van.{0} Fit one within {1} of its positive pole, of a kind that breaks that current at direct current.':
		'Die Batteriebank hat keine Hauptsicherung: ein Kurzschluss verbrennt Leitung und Fahrzeug.{0} Eine innerhalb von {1} vom Pluspol einbauen, von einer Art, die diesen Strom bei Gleichstrom abschaltet.',
	'Of what kind is the main fuse (blade, strip, class T ...), and what current does it break?':
		'Von welcher Art ist die Hauptsicherung (Flach, Streifen, Klasse T ...), und welchen Strom schaltet sie ab?',
	'The main fuse is made for household alternating current: on direct current its arc does not go out. Take a class T fuse.':
		'Die Hauptsicherung ist für Haushalts-Wechselstrom gemacht: bei Gleichstrom erlischt ihr Lichtbogen nicht. Eine Sicherung der Klasse T nehmen.',
	"A {0} is a {1} part and the bank stands at {2}: it can't put out the arc. Take a class T fuse.":
		'{0}: ein Bauteil für {1}, und die Batteriebank liegt bei {2}: es kann den Lichtbogen nicht löschen. Eine Sicherung der Klasse T nehmen.',
	'The bank can feed about {0} into a short: the {1} must be marked for at least that at direct current; usual ones for {2}. Ask the battery maker for the true figure.':
		'Die Batteriebank kann etwa {0} in einen Kurzschluss speisen: {1} muss mindestens dafür bei Gleichstrom gekennzeichnet sein; übliche sind es für {2}. Den wahren Wert beim Hersteller der Batterie erfragen.',
	'A {0} as main fuse breaks {1}; the bank can feed about {2} into a short, and the fuse may burst. Take a class T fuse, or one marked for at least {3} at direct current.':
		'Als Hauptsicherung schaltet {0} {1} ab; die Batteriebank kann etwa {2} in einen Kurzschluss speisen, und die Sicherung kann bersten. Eine der Klasse T nehmen, oder eine, die für mindestens {3} bei Gleichstrom gekennzeichnet ist.',
	'No fuse or breaker is named for: {0}. Each needs one at its source that protects its conductor; ask me for wire and fuse together.':
		'Keine Sicherung und kein Schutzschalter ist genannt für: {0}. Jeder Stromkreis braucht eine an seiner Quelle, die seinen Leiter schützt; frag mich nach Leitung und Sicherung zusammen.',
	'There is no fuse block and no fuse of their own for: {0}. A short in one of their wires is fed by the whole bank; put each on a fuse that protects its wire.':
		'Es gibt keinen Sicherungskasten und keine eigene Sicherung für: {0}. Einen Kurzschluss in einer ihrer Leitungen speist die ganze Batteriebank; jeden auf eine Sicherung legen, die seine Leitung schützt.',
	'No circuit is named for: {0}. A fuse block with a way for each would take them.':
		'Kein Stromkreis ist genannt für: {0}. Ein Sicherungskasten mit je einem Abgang würde sie aufnehmen.',
	'The {0} takes {1} through {2}, which carries {3}: {4}.': '{0} zieht {1} durch {2}, das {3} trägt: {4}.',
	'The {0} takes up to {1} through {2}, which carries {3}: no standard fuse both holds that load and protects the cable. {4}.':
		'{0} zieht bis zu {1} durch {2}, das {3} trägt: keine genormte Sicherung hält diese Last und schützt zugleich die Leitung. {4}.',
	'Run of the {0}: {1}. {2}': 'Leitung zu {0}: {1}. {2}',
	'The {0} takes {1} on a {2} fuse: it opens in use. Its rating must be at least {3}, with a conductor to match.':
		'{0} zieht {1} an einer Sicherung mit {2}: sie löst im Betrieb aus. Ihr Nennstrom muss mindestens {3} sein, mit passendem Leiter.',
	'Is there GFCI protection on the mains outlets?': 'Sind die Netzsteckdosen durch GFCI geschützt?',
	'Is there an RCD of at most 30 mA on the mains?':
		'Gibt es einen FI-Schutzschalter (RCD) mit höchstens 30 mA am Netz?',
	'Mains outlets without GFCI protection: a fault can kill. Put every outlet behind a GFCI, on shore power and on the inverter.':
		'Netzsteckdosen ohne GFCI-Schutz: ein Fehler kann töten. Jede Steckdose hinter einen GFCI legen, am Landanschluss und am Wechselrichter.',
	'Mains without a residual current device: a fault can kill. Fit an RCD of at most 30 mA that opens all live conductors.':
		'Netz ohne Fehlerstrom-Schutzschalter: ein Fehler kann töten. Einen RCD mit höchstens 30 mA einbauen, der alle aktiven Leiter trennt.',
	'Which breakers does shore power go through in the van?':
		'Durch welche Schutzschalter geht der Landstrom im Fahrzeug?',
	"the inlet's rating": 'Nennstrom des Anschlusses',
	'Shore power enters without a breaker: a fault in the van is fed until the pedestal trips. Fit a panel with a main breaker of at most {0}, by a licensed electrician.':
		'Der Landstrom kommt ohne Schutzschalter herein: ein Fehler im Fahrzeug wird gespeist, bis die Säule auslöst. Eine Verteilung mit Hauptschalter von höchstens {0} einbauen, durch eine zugelassene Elektrofachkraft.',
	'Is there a switch that disconnects the bank?': 'Gibt es einen Schalter, der die Batteriebank trennt?',
	'Nothing disconnects the bank: fit a switch by its main fuse, rated for the largest current of the van, for work, storage and a fire.':
		'Nichts trennt die Batteriebank: an ihrer Hauptsicherung einen Schalter einbauen, bemessen für den größten Strom des Fahrzeugs, für Arbeiten, Stilllegung und Brand.',
	'The {0} at full power draws up to {1} near empty, over the main fuse of {2}: it opens in use. Take a rating of at least {3}, with cable to match.':
		'{0} zieht bei voller Leistung und fast leerer Batteriebank bis zu {1}, mehr als die Hauptsicherung von {2}: sie löst im Betrieb aus. Einen Nennstrom von mindestens {3} nehmen, mit passender Leitung.',
	' For hours on end stay at or below {0}.': ' Über Stunden bei höchstens {0} bleiben.',
	' Switch off in this order: {0}.': ' In dieser Reihenfolge abschalten: {0}.',
	'The {0} inlet gives no more than the {1} of the outlet behind the adapter, {2} for hours: the breaker in the van will not trip at that. Set the charger down and run one large load at a time.':
		'Der Anschluss mit {0} gibt nicht mehr als die {1} der Steckdose hinter dem Adapter, über Stunden {2}: der Schutzschalter im Fahrzeug löst dabei nicht aus. Das Ladegerät herunterstellen und immer nur einen großen Verbraucher betreiben.',
	'The {0} takes up to {1} at its start; the generator gives {2}. Take one of at least {3}, or a soft start.':
		'{0} braucht beim Anlauf bis zu {1}; der Generator gibt {2}. Einen mit mindestens {3} nehmen, oder einen Sanftanlauf.',
	'The generator joins neutral and ground in its frame and the panel of the van does so again: current flows on the metal of the van. Keep one bond, at the source that feeds.':
		'Der Generator verbindet Neutralleiter und Schutzleiter in seinem Gehäuse, und die Verteilung des Fahrzeugs tut es noch einmal: Strom fließt über das Blech. Nur eine Verbindung lassen, an der speisenden Quelle.',
	'How are the solar panels joined: how many in series?':
		'Wie sind die Solarmodule verschaltet: wie viele in Reihe?',
	' (voltage typical of such panels: read the label)':
		' (übliche Spannung solcher Module: das Typenschild lesen)',
	'The panels are joined to the bank without a charge controller: they overcharge it, which can end in fire. Fit one rated for their open-circuit voltage in the cold and for their current.':
		'Die Module hängen ohne Laderegler an der Batteriebank: sie überladen sie, das kann in einem Brand enden. Einen einbauen, der für ihre Leerlaufspannung bei Kälte und für ihren Strom bemessen ist.',
	'in the darkest month': 'im dunkelsten Monat',
	'in month {0}': 'im Monat {0}',
	'At {0} {1} the panels give {2} a day; the loads take {3}. {4} of panels would carry it, or driving and shore power.':
		'In {0} {1} bringen die Module {2} am Tag; die Verbraucher brauchen {3}. {4} an Modulen würden reichen, oder Fahren und Landanschluss.',
	'{0} of panels take some {1} and the roof holds about {2} beside what else stands there: about {3} fit. Measure before you buy.':
		'{0} an Modulen brauchen etwa {1}, und auf dem Dach ist neben dem Übrigen Platz für etwa {2}: etwa {3} passen. Vor dem Kauf messen.',
	'There is no gray tank: dumping on the ground is forbidden in most places. One of about {0} takes what the fresh tank gives.':
		'Es gibt keinen Abwassertank: auf den Boden ablassen ist fast überall verboten. Einer mit etwa {0} nimmt, was der Frischwassertank gibt.',
	'How large is the gray tank?': 'Wie groß ist der Abwassertank?',
	' It begins to freeze after {0}.': ' Er beginnt nach {0} zu gefrieren.',
	' A heating pad of {0} holds it; with insulation less does, or drain it.':
		' Eine Heizmatte mit {0} hält ihn; mit Dämmung genügt weniger, oder ihn entleeren.',
	'The {0} hangs in the cold and the place sees {1}.{2}{3}':
		'{0} hängt in der Kälte, und der Ort erreicht {1}.{2}{3}',
	'Is there a thermostatic mixing valve after the water heater?':
		'Gibt es hinter dem Boiler ein thermostatisches Mischventil?',
	'Water heaters are set to about {0}': 'Boiler sind auf etwa {0} eingestellt',
	'The water heater is set to {0}': 'Der Boiler ist auf {0} eingestellt',
	'{0} and no valve mixes it down: it burns skin in seconds. Fit a thermostatic mixing valve set to {1} or below.':
		'{0}, und kein Ventil mischt es herunter: es verbrüht die Haut in Sekunden. Ein thermostatisches Mischventil einbauen, auf {1} oder weniger eingestellt.',
	'What does the empty van weigh, or what do the scales show as it stands?':
		'Was wiegt das leere Fahrzeug, oder was zeigt die Waage, so wie es steht?',
	'By what was told the van weighs at least {0}; its GVWR is {1}: leave {2} out. Brakes, frame and insurance end at the rating.':
		'Nach dem Gesagten wiegt das Fahrzeug mindestens {0}; sein zulässiges Gesamtgewicht ist {1}: {2} weglassen. Bremsen, Rahmen und Versicherung enden bei diesem Wert.',
	'With full tanks, people and usual masses for what was not weighed it comes to about {0}, over the GVWR of {1} by {2}. Weigh it before more goes in.':
		'Mit vollen Tanks, Personen und üblichen Massen für das, was nicht gewogen ist, kommt es auf etwa {0}, über das zulässige Gesamtgewicht von {1} um {2}. Wiegen, bevor mehr hineinkommt.',
	'Only about {0} are left to the GVWR: clothes, food and tools of a trip weigh more. Weigh it.':
		'Nur etwa {0} bleiben bis zum zulässigen Gesamtgewicht: Kleider, Essen und Werkzeug einer Reise wiegen mehr. Wiegen.',
	'What are the ratings of the front and the rear axle on the door label?':
		'Welche Achslasten vorn und hinten stehen auf dem Türschild?',
	'By usual masses and places: {0} Weigh each axle.':
		'Nach üblichen Massen und Plätzen: {0} Jede Achse wiegen.',
	'The roof carries about {0} ({1}); {2} are allowed: take {3} down.':
		'Das Dach trägt etwa {0} ({1}); {2} sind erlaubt: {3} herunternehmen.',
	"The roof carries about {0} ({1}); many van roofs allow {2} with the rack. Read the limit in the vehicle's manual.":
		'Das Dach trägt etwa {0} ({1}); viele Dächer erlauben {2} mit dem Träger. Die Grenze im Handbuch des Fahrzeugs lesen.',
	'Tell me the size of the van and I work it out.':
		'Nenn mir die Größe des Fahrzeugs, und ich rechne es aus.',
	'By usual masses it goes from {0} bare to {1} loaded and lifted.':
		'Nach üblichen Massen geht er von {0} leer auf {1} beladen und höhergelegt.',
	' of {0}': ' um {0}',
	'The lift{0} raises the centre of gravity and the static stability factor was not worked out again: it tips sooner. {1} Keep weight low and have the change approved where the law asks for it.':
		'Die Höherlegung{0} hebt den Schwerpunkt, und der statische Stabilitätsfaktor wurde nicht neu berechnet: es kippt früher. {1} Gewicht unten halten und die Änderung abnehmen lassen, wo das Gesetz es verlangt.',
	'The {0} puts {1} behind the rear axle when full: more than that on the rear axle, and it lightens the front. Between the axles it loads both.':
		'{0} bringt gefüllt {1} hinter die Hinterachse: mehr als das auf die Hinterachse, und es entlastet die Vorderachse. Zwischen den Achsen belastet es beide.',
	'What is the GVWR on the door label?': 'Welches zulässige Gesamtgewicht (GVWR) steht auf dem Türschild?',
	'What current does the shore charger give?': 'Welchen Strom gibt das Netzladegerät?',
	'What current does the DC-DC charger give?': 'Welchen Strom gibt der Ladewandler (DC-DC)?',
	'What is the alternator rated (A)?': 'Welchen Nennstrom hat die Lichtmaschine (A)?',
	'What power does the generator give?': 'Welche Leistung gibt der Generator?',
	'What does the heater burn: diesel, propane, gasoline, or is it electric?':
		'Was verbrennt die Heizung: Diesel, Propan, Benzin, oder ist sie elektrisch?',
	'What capacity has the battery bank (Ah, and how many batteries)?':
		'Welche Kapazität hat die Batteriebank (Ah, und wie viele Batterien)?',
	"At what current does each battery's own protection (BMS) switch off?":
		'Bei welchem Strom schaltet die eigene Schutzschaltung (BMS) jeder Batterie ab?',
	'What charge current does the maker allow for each battery?':
		'Welchen Ladestrom erlaubt der Hersteller für jede Batterie?',
	'Where do the gas bottles stand: in a locker sealed from the inside and vented low to the outside?':
		'Wo stehen die Gasflaschen: in einem nach innen dichten, unten nach außen belüfteten Kasten?',
	'Is the cooktop induction, or what does it burn?': 'Ist das Kochfeld Induktion, oder was verbrennt es?',
	'What continuous power does the inverter give?': 'Welche Dauerleistung gibt der Wechselrichter?',
	'What is the shore inlet rated (A)?': 'Welchen Nennstrom hat der Landanschluss (A)?',
	'How large are the solar panels (W, and how many)?': 'Wie groß sind die Solarmodule (W, und wie viele)?',
	'What open-circuit voltage (Voc) does the label of a panel show?':
		'Welche Leerlaufspannung (Voc) steht auf dem Typenschild eines Moduls?',
	'What output current is the solar controller rated for?':
		'Für welchen Ausgangsstrom ist der Solarregler bemessen?',
	'What is the largest panel voltage the solar controller bears?':
		'Welche größte Modulspannung verträgt der Solarregler?',
	'Where will the van be used (the coldest place, a town)?':
		'Wo wird das Fahrzeug benutzt (der kälteste Ort, eine Stadt)?',
	'What heats the water: electricity, gas, diesel or the engine?':
		'Was erwärmt das Wasser: Strom, Gas, Diesel oder der Motor?',
	'How large is the fresh tank?': 'Wie groß ist der Frischwassertank?',
	'Is the {0} inside the heated space, or under the floor?':
		'Liegt im beheizten Raum oder unter dem Boden: {0}?',
	'Where does the {0} stand (front, middle, over the axle, back)?':
		'Wo steht es (vorn, Mitte, über der Achse, hinten): {0}?',
};
