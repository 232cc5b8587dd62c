import type { Phrasebook } from '../phrasebook.js';

export const solarWork: Phrasebook = {
	'number of panels': 'Anzahl der Module',
	'rated power of the whole array': 'Nennleistung des ganzen Felds',
	'tilt from flat': 'Neigung gegen die Waagerechte',
	'flat on the roof': 'flach auf dem Dach',
	north: 'Norden',
	northeast: 'Nordosten',
	east: 'Osten',
	southeast: 'Südosten',
	south: 'Süden',
	southwest: 'Südwesten',
	west: 'Westen',
	northwest: 'Nordwesten',
	'direction a tilted array faces': 'Richtung, in die ein geneigtes Feld zeigt',
	'glued flat to the roof': 'flach auf das Dach geklebt',
	'a rigid panel on brackets, with air under it': 'ein starres Modul auf Haltern, mit Luft darunter',
	'share lost to shade': 'Anteil, der durch Schatten verloren geht',
	'in the open, with fan, rack and vents on the roof; under trees it is far more':
		'im Freien, mit Lüfter, Träger und Lüftungen auf dem Dach; unter Bäumen ist es weit mehr',
	'dirt, mismatch, wiring and ageing': 'Schmutz, Fehlanpassung, Leitungen und Alterung',
	'PVWatts losses without its share for shade (counted apart) and for grid outages':
		'Verluste nach PVWatts ohne dessen Anteile für Schatten (eigens gezählt) und Netzausfälle',
	MPPT: 'MPPT',
	PWM: 'PWM',
	'kind of charge controller': 'Art des Ladereglers',
	'the usual kind': 'die übliche Art',
	'efficiency of the charge controller': 'Wirkungsgrad des Ladereglers',
	'95 % for MPPT; a PWM controller pulls the panel down to the battery: about 13.4 V of 18.6 V (practice)':
		'95 % bei MPPT; ein PWM-Regler zieht das Modul auf die Batterie herab: etwa 13.4 V von 18.6 V (Praxis)',
	'temperature coefficient of power': 'Temperaturkoeffizient der Leistung',
	'the warm end of standard monocrystalline, −0.37 to −0.42 %/K; the data sheet decides':
		'das warme Ende üblicher monokristalliner Module, −0.37 bis −0.42 %/K; das Datenblatt entscheidet',
	'direction the tilted array faces': 'Richtung, in die das geneigte Feld zeigt',
	'towards the noon sun; a van parked otherwise gets less':
		'zur Mittagssonne; ein anders abgestelltes Fahrzeug bekommt weniger',
	'Panels are live whenever light falls on them: cover them or open the array disconnect before you touch a connector, and never part a connector under load.':
		'Module stehen unter Spannung, sobald Licht auf sie fällt: abdecken oder den Trennschalter des Felds öffnen, bevor ein Stecker berührt wird, und nie einen Stecker unter Last trennen.',
	'Connect the controller to the battery first and the array last; take apart in the other order.':
		'Den Regler zuerst an die Batterie und das Feld zuletzt anschließen; in umgekehrter Folge abbauen.',
	'Fasten panels to the roof for highway wind, seal every hole, and keep the wind and rain off the cable entry.':
		'Die Module für den Fahrtwind auf der Autobahn auf dem Dach befestigen, jedes Loch abdichten und die Leitungseinführung vor Wind und Regen schützen.',
	'that of {0}, {1} km away: none is published for {2}':
		'die von {0}, {1} km entfernt: für {2} ist keine veröffentlicht',
	'from the typical year of {0}: no design value is published for it':
		'aus dem typischen Jahr von {0}: ein Auslegungswert ist dafür nicht veröffentlicht',
	'short-circuit current of a panel': 'Kurzschlussstrom eines Moduls',
	'110 % of the current of greatest power (practice)': '110 % des Stroms im Punkt größter Leistung (Praxis)',
	'kind of panel': 'Art des Moduls',
	'by its power; read Voc, Vmp and Isc from the label':
		'nach seiner Leistung; Voc, Vmp und Isc vom Typenschild ablesen',
	'open-circuit voltage of a panel': 'Leerlaufspannung eines Moduls',
	'the high end of its kind (practice)': 'das obere Ende seiner Art (Praxis)',
	'voltage of greatest power of a panel': 'Spannung im Punkt größter Leistung eines Moduls',
	'the low end of its kind (practice)': 'das untere Ende seiner Art (Praxis)',
	'the low end: 78 % of the open-circuit voltage (practice)':
		'das untere Ende: 78 % der Leerlaufspannung (Praxis)',
	"A panel can't give its greatest power at {0} when its open-circuit voltage is {1}.":
		'Ein Modul kann seine größte Leistung nicht bei {0} geben, wenn seine Leerlaufspannung {1} ist.',
	'Read Voc (the higher) and Vmp (the lower) from the label again.':
		'Voc (die höhere) und Vmp (die niedrigere) noch einmal vom Typenschild ablesen.',
	"The current of greatest power, {0}, can't be over the short-circuit current, {1}.":
		'Der Strom im Punkt größter Leistung, {0}, kann nicht über dem Kurzschlussstrom, {1}, liegen.',
	'Read Isc (the higher) and Imp (the lower) from the label again.':
		'Isc (den höheren) und Imp (den niedrigeren) noch einmal vom Typenschild ablesen.',
	'{0} does not go with Voc {1} and Isc {2}: their product is {3}, and a panel gives 60 to 85 % of it.':
		'{0} passt nicht zu Voc {1} und Isc {2}: ihr Produkt ist {3}, und ein Modul gibt 60 bis 85 % davon.',
	'Give the figures of one panel, from its label.':
		'Die Werte eines einzelnen Moduls angeben, von seinem Typenschild.',
	'Which "{0}" is meant: {1}?': 'Welches "{0}" ist gemeint: {1}?',
	'I have no climate for "{0}". Which place is nearest: {1}, or a position such as "35.2,-111.7"?':
		'Für "{0}" habe ich keine Klimadaten. Welcher Ort liegt am nächsten: {1}, oder eine Position wie "35.2,-111.7"?',
	'Which town in "{0}": {1}, or another?': 'Welcher Ort in "{0}": {1}, oder ein anderer?',
	'No weather station lies within 300 km of "{0}". Which of these comes nearest: {1}?':
		'Innerhalb von 300 km um "{0}" liegt keine Wetterstation. Welche davon liegt am nächsten: {1}?',
	'read from "{0}"': 'gelesen aus "{0}"',
	'the largest of that name; there is also {0}': 'der größte Ort dieses Namens; es gibt auch {0}',
	'weather station': 'Wetterstation',
	'the station of that name': 'die Station dieses Namens',
	'the nearest in the climate table, {0} from {1}': 'die nächste in der Klimatabelle, {0} von {1}',
	'The climate is that of {0}, {1} away at {2}: sun and temperature at {3} may differ, in mountains by a lot.':
		'Das Klima ist das von {0}, {1} entfernt auf {2}: Sonne und Temperatur in {3} können abweichen, in den Bergen stark.',
	remote: 'abgelegen',
	region: 'Region',
	unknown: 'unbekannt',
	many: 'viele',
	'energy needed a day': 'nötige Energie am Tag',
	'charge needed a day': 'nötige Ladung am Tag',
	'Give the power of a panel and their number, or the whole array.':
		'Die Leistung eines Moduls und die Anzahl angeben, oder das ganze Feld.',
	'{0} panels of {1} make {2}, not {3}.': '{0} Module mit {1} ergeben {2}, nicht {3}.',
	'In full shade an array gives nothing worth counting.':
		'Im vollen Schatten gibt ein Feld nichts Nennenswertes.',
	'Give the share lost to shade as less than 100 %.':
		'Den Verlust durch Schatten mit weniger als 100 % angeben.',
	'Give the energy or the charge, whichever you trust.':
		'Energie oder Ladung angeben, was davon sicher stimmt.',
	'{0} and {1} a day contradict each other: at {2} V that charge is {3}.':
		'{0} und {1} am Tag widersprechen sich: bei {2} V ist diese Ladung {3}.',
	'no array was named: the answer is for each 100 W': 'kein Feld genannt: die Antwort gilt je 100 W',
	'into the battery a day': 'in die Batterie am Tag',
	'charge a day at {0} V': 'Ladung am Tag bei {0} V',
	'mean power of the best hour': 'mittlere Leistung der besten Stunde',
	'tilted {0}': 'geneigt um {0}',
	'{0} a day of sun on {1} {2} at {3}; {4} % of it reaches the battery.':
		'{0} Sonne am Tag auf {1}, {2}, in {3}; {4} % davon erreichen die Batterie.',
	'The sun does not rise at {0} in {1}.': 'In {0} geht die Sonne im {1} nicht auf.',
	'Worst month {0}': 'Ungünstigster Monat {0}',
	'{0}: {1} of sun a day, {2} from each 100 W': '{0}: {1} Sonne am Tag, {2} aus je 100 W',
	'Worst month {0}: {1} a day = {2} at {3} V': 'Ungünstigster Monat {0}: {1} am Tag = {2} bei {3} V',
	'{0} a day = {1} at {2} V in {3}': '{0} am Tag = {1} bei {2} V im {3}',
	'share of the need that is covered': 'gedeckter Anteil des Bedarfs',
	'array for the whole need': 'Feld für den ganzen Bedarf',
	'for up to {0} a day': 'bis {0} am Tag',
	'charge to put back': 'nachzuladende Ladung',
	'Then the answer says in how many such days the array puts it back.':
		'Dann sagt die Antwort, in wie vielen solchen Tagen das Feld sie nachlädt.',
	'the array is to be sized': 'das Feld ist zu bemessen',
	'How much is used a day (Wh or Ah)? The daily energy budget adds it up from the loads.':
		'Wie viel wird am Tag gebraucht (Wh oder Ah)? Die Tages-Energiebilanz rechnet es aus den Verbrauchern zusammen.',
	'In {0} this array gives next to nothing: it never puts that back.':
		'Im {0} gibt dieses Feld so gut wie nichts: es lädt das nie nach.',
	'Name another month, or charge from the alternator or shore power.':
		'Einen anderen Monat nennen, oder mit Lichtmaschine oder Landstrom laden.',
	'mean voltage while charging': 'mittlere Spannung beim Laden',
	'usual of lithium; lead-acid takes a fifth more (practice)':
		'üblich bei Lithium; Blei braucht ein Fünftel mehr (Praxis)',
	'days to put it back': 'Tage bis sie nachgeladen ist',
	'What is drawn meanwhile is not in it: simulate counts loads and sun together.':
		'Was derweil verbraucht wird, ist nicht dabei: simulate rechnet Verbraucher und Sonne zusammen.',
	'{0} days in {1} to put back {2}: {3} a day': '{0} Tage im {1}, um {2} nachzuladen: {3} am Tag',
	'Enough in {0}: {1} a day for a need of {2}': 'Reicht im {0}: {1} am Tag bei einem Bedarf von {2}',
	'No array covers the need in {0}; another source must.':
		'Kein Feld deckt den Bedarf im {0}; eine andere Quelle muss es.',
	'The sun leaves {0} a day open in {1}: take {2}, or plan driving or shore power.':
		'Die Sonne lässt im {1} {0} am Tag offen: {2} nehmen oder Fahrt oder Landanschluss einplanen.',
	'Short in {0}: {1} a day for a need of {2}': 'Zu wenig im {0}: {1} am Tag bei einem Bedarf von {2}',
	'Name another month, or plan driving, shore power or fuel for it.':
		'Einen anderen Monat angeben oder dafür Fahrt, Landanschluss oder Brennstoff einplanen.',
	'At {0} in {1} the sun gives next to nothing: no array on a roof covers that need.':
		'In {0} gibt die Sonne im {1} so gut wie nichts: kein Feld auf einem Dach deckt diesen Bedarf.',
	'into the battery a day with it': 'damit in die Batterie am Tag',
	'charge a day at {0} V with it': 'damit Ladung am Tag bei {0} V',
	'array for the need': 'Feld für den Bedarf',
	'the sun gives next to nothing then': 'die Sonne gibt dann so gut wie nichts',
	'{0}, the worst month': '{0}, dem ungünstigsten Monat',
	'{0} takes some {1} of panels: more than most van roofs hold. Cut the need, tilt the panels or add driving or shore power.':
		'{0} braucht etwa {1} Module: mehr, als auf die meisten Dächer passt. Den Bedarf senken, die Module neigen oder Fahrt oder Landanschluss ergänzen.',
	'{0} of panels for {1} a day in {2}': '{0} Module für {1} am Tag im {2}',
	'A watt of panel gives {0} Wh a day at {1} in {2}: {3} of sun, less heat, losses and controller.':
		'Ein Watt Modul gibt {0} Wh am Tag in {1} im {2}: {3} Sonne, abzüglich Hitze, Verluste und Regler.',
	'sun hours on the panels a day': 'Sonnenstunden auf den Modulen am Tag',
	'worst month': 'ungünstigster Monat',
	'a day in the worst month': 'ein Tag im ungünstigsten Monat',
	'a day in the mean of the year': 'ein Tag im Jahresmittel',
	'a day in {0}': 'ein Tag im {0}',
	'no month was named: the worst of the year counts': 'kein Monat genannt: der ungünstigste des Jahres zählt',
	'{0} a day, the worst month': '{0} am Tag, der ungünstigste Monat',
	'tilted {0} to the noon sun': 'um {0} zur Mittagssonne geneigt',
	'{0} a day': '{0} am Tag',
	'{0} of sun a day in {1}: plan another source for it.':
		'{0} Sonne am Tag im {1}: dafür eine andere Quelle einplanen.',
	"This is the month's mean: about one day in ten gives less than {0} % of it. Whether the bank bears that is a question for simulate.":
		'Das ist das Mittel des Monats: etwa einer von zehn Tagen gibt weniger als {0} % davon. Ob die Batteriebank das trägt, sagt das Thema Simulation.',
	'Shade on part of one panel can take down its whole string: watch rack, fan and antenna shadows, and join shaded panels in parallel.':
		'Schatten auf einem Teil eines Moduls kann den ganzen Strang lahmlegen: auf Schatten von Träger, Lüfter und Antenne achten und beschattete Module parallel schalten.',
	'It freezes in this month: snow on a flat panel stops it altogether until it is cleared.':
		'In diesem Monat friert es: Schnee auf einem flachen Modul legt es ganz still, bis er weggeräumt ist.',
	'A panel glued to the roof runs hotter (up to {0} on the mean day): it gives less, ages sooner and warms the van.':
		'Ein auf das Dach geklebtes Modul wird heißer (bis {0} am mittleren Tag): es gibt weniger, altert früher und wärmt das Fahrzeug.',
	'irradiation on the horizontal, mean day': 'Einstrahlung auf die Waagerechte, mittlerer Tag',
	'of it from the sky': 'davon vom Himmel',
	'daily swing of the temperature': 'Tagesgang der Temperatur',
	'none is published for the station: 5 K either way (practice)':
		'für die Station ist keiner veröffentlicht: 5 K nach beiden Seiten (Praxis)',
	'irradiation on the panels': 'Einstrahlung auf die Module',
	'hottest cell of the day': 'heißeste Zelle des Tages',
	'energy from the panels': 'Energie aus den Modulen',
	'into the battery': 'in die Batterie',
	charge: 'Ladung',
};
