import type { Phrasebook } from '@lugbook/core';

/** What the conversation itself says, in German. */
export const german: Phrasebook = {
	DANGER: 'GEFAHR',
	Warning: 'Warnung',
	Note: 'Hinweis',
	Caution: 'Vorsicht',
	' or ': ' oder ',
	' and ': ' und ',
	'Not used: {0}.': 'Nicht verwendet: {0}.',
	'Not used: {0}': 'Nicht verwendet: {0}',
	'Read: {0}.': 'Gelesen: {0}.',
	'{0} one way': '{0} einfach',
	'Good {0}.': 'Gilt {0}.',
	' and {0} more (see the working)': ' und {0} weitere (siehe Rechenweg)',
	'Assumed, please confirm: {0}.': 'Angenommen, bitte bestätigen: {0}.',
	'Assumed: {0}.': 'Angenommen: {0}.',
	'No. {0}': 'Nr. {0}',
	'No. {0} in build "{1}"': 'Nr. {0} im Ausbau "{1}"',
	'from build "{0}"': 'aus dem Ausbau "{0}"',
	'From build "{0}"': 'Aus dem Ausbau "{0}"',
	'Rests on {0}: {1}': 'Beruht auf {0}: {1}',
	'Assumed {0} {1}: {2}': 'Angenommen {0} {1}: {2}',
	'Sources: {0}': 'Quellen: {0}',
	'Show working': 'Rechenweg zeigen',
	Change: 'Ändern',
	'Ask the lead': 'Meister fragen',
	'Working of No. {0}: {1}': 'Rechenweg zu Nr. {0}: {1}',
	'{0}: {1} governs': '{0}: maßgebend ist {1}',
	'{0} would do too: {1}': '{0} würde auch genügen: {1}',
	'{0} would not do: {1}': '{0} würde nicht genügen: {1}',
	'Is this about {0}, or {1}?': 'Geht es um {0}, oder um {1}?',
	'That message is too long for me: I read up to 2,000 characters. Send the question alone.':
		'Diese Nachricht ist mir zu lang: ich lese bis 2000 Zeichen. Nur die Frage senden.',
	'Happy to help. Ask me a sizing question, such as "{0}".':
		'Gern. Stell mir eine Frage zur Bemessung, etwa "{0}".',
	'Ask me a sizing question, such as "{0}".': 'Stell mir eine Frage zur Bemessung, etwa "{0}".',
	'I could not tell what to size. Say it with the numbers, such as "{0}".':
		'Ich konnte nicht erkennen, was zu bemessen ist. Sag es mit den Zahlen, etwa "{0}".',
	'I read two values for the {0}: {1} and {2}. Which one is meant?':
		'Ich lese zwei Werte für die Angabe "{0}": {1} und {2}. Welcher ist gemeint?',
	'I read several values for the {0}: {1}. Which one is meant?':
		'Ich lese mehrere Werte für die Angabe "{0}": {1}. Welcher ist gemeint?',
	'Is "{0}" fed from the mains ({1}), or is it a 12 V air conditioner?':
		'Wird "{0}" vom Netz gespeist ({1}), oder ist es eine 12-V-Klimaanlage?',
	'"{0}" is taken as {1}.': '"{0}" gilt als {1}.',
	'"{0}" is taken as what it was before.': '"{0}" gilt als das, was es vorher war.',
	'"{0}" is a range: its smaller end is taken, the unfavourable one.':
		'"{0}" ist ein Bereich: sein kleineres Ende gilt, das ungünstige.',
	'"{0}" is a range: its larger end is taken.': '"{0}" ist ein Bereich: sein größeres Ende gilt.',
	'The length was given there and back: half of it is the one-way length.':
		'Die Länge war hin und zurück angegeben: die Hälfte davon ist die einfache Länge.',
	'{0} is the cooling; its draw is taken as {1} W ({2} Btu/Wh).':
		'{0} ist die Kühlleistung; aufgenommen werden etwa {1} W ({2} Btu/Wh).',
	'{0} is taken as {1} ({2}).': '{0} gilt als {1} ({2}).',
	'Several places are named; {0} is taken, the coldest of them (also {1}).':
		'Mehrere Orte sind genannt; es gilt {0}, der kälteste davon (auch {1}).',
	'I read "{0}". {1}': 'Ich lese "{0}". {1}',
	'{0} has no input "{1}".': '{0} hat keine Angabe "{1}".',
	'The {0} is missing.': 'Die Angabe fehlt: {0}.',
	'The {0} must be from {1} to {2}.': 'Zulässig für die Angabe "{0}": {1} bis {2}.',
	'The {0} must be a whole number from {1} to {2}.':
		'Zulässig für die Angabe "{0}": eine ganze Zahl von {1} bis {2}.',
	'The {0} is one of: {1}.': 'Zulässig für die Angabe "{0}": {1}.',
	'The {0} is yes or no.': 'Zulässig für die Angabe "{0}": ja oder nein.',
	'The {0} is a size such as 4 AWG, 2/0 AWG or 35 mm².':
		'Zulässig für die Angabe "{0}": ein Querschnitt wie 4 AWG, 2/0 AWG oder 35 mm².',
	'The {0} is a name of up to 200 characters.':
		'Zulässig für die Angabe "{0}": ein Name mit bis zu 200 Zeichen.',
	'The {0} is the name of a place, such as "Flagstaff".':
		'Zulässig für die Angabe "{0}": der Name eines Ortes, wie "Flagstaff".',
	'The {0} is a month, such as "March".': 'Zulässig für die Angabe "{0}": ein Monat, wie "März".',
	'The {0} holds 1 to {1} items.': 'Zulässig für die Angabe "{0}": 1 bis {1} Einträge.',
	'I will not help to defeat a protective device: it is there because what it protects can burn or kill.':
		'Ich helfe nicht, eine Schutzeinrichtung außer Kraft zu setzen: sie ist da, weil das, was sie schützt, brennen oder töten kann.',
	'Find out why it opens: measure the current, look for a short or a loose lug, and ask me for the right conductor and device together.':
		'Herausfinden, warum sie öffnet: den Strom messen, nach Kurzschluss oder losem Kabelschuh suchen und mich nach dem richtigen Leiter samt Schutzorgan fragen.',
	'Neutral and ground are joined at one place only, at the source that feeds the van at that moment; a second bond puts current on the metal of the van.':
		'Neutralleiter und Erde sind nur an einer Stelle verbunden, an der Quelle, die das Fahrzeug gerade speist; eine zweite Verbindung legt Strom auf das Metall des Fahrzeugs.',
	'Use an inverter or transfer switch that makes and breaks the bond by itself, and have a licensed electrician test it.':
		'Einen Wechselrichter oder Umschalter verwenden, der die Verbindung selbst herstellt und trennt, und von einer zugelassenen Elektrofachkraft prüfen lassen.',
	'Seats, belts and their anchorages are safety equipment of the vehicle: they are tested as a whole and not sized from a chat.':
		'Sitze, Gurte und ihre Verankerungen sind Sicherheitsausrüstung des Fahrzeugs: sie werden als Ganzes geprüft und nicht im Chat bemessen.',
	'Use a certified seat and anchorage kit for that van, fitted as its approval says, or a certified engineer.':
		'Einen für dieses Fahrzeug zertifizierten Sitz mit Verankerung verwenden, eingebaut wie in seiner Zulassung, oder einen zertifizierten Ingenieur.',
	'I do not design fuel-gas piping: a wrong joint or size leaks or starves a burner.':
		'Ich entwerfe keine Brenngasleitungen: eine falsche Verbindung oder Größe leckt oder lässt einen Brenner verhungern.',
	'Have a licensed gas fitter design, fit and pressure-test it under the local code, with a gas and a carbon-monoxide alarm.':
		'Von einem zugelassenen Gasinstallateur nach den örtlichen Vorschriften entwerfen, einbauen und auf Druck prüfen lassen, mit Gas- und Kohlenmonoxid-Warner.',
	"I give no answer that I can't keep: {0}.": 'Ich gebe keine Antwort, die ich nicht aufbewahren kann: {0}.',
	'the disk that holds the log is full. Nothing was saved: free some room and ask again':
		'die Platte mit dem Protokoll ist voll. Nichts wurde gespeichert: Platz schaffen und noch einmal fragen',
	'the log can only be read, not written. Nothing was saved: make the file writable and ask again':
		'das Protokoll lässt sich nur lesen, nicht schreiben. Nichts wurde gespeichert: die Datei beschreibbar machen und noch einmal fragen',
	'another program is holding the log. Nothing was saved: ask again in a moment':
		'ein anderes Programm hält das Protokoll besetzt. Nichts wurde gespeichert: gleich noch einmal fragen',
	"the log's database does not answer. Ask again in a moment: a question that was kept is not kept twice":
		'die Datenbank des Protokolls antwortet nicht. Gleich noch einmal fragen: eine aufbewahrte Frage wird nicht zweimal aufbewahrt',
	'the log does not match its own hashes. Nothing was saved: run "pnpm log verify" before going on':
		'das Protokoll passt nicht zu seinen eigenen Prüfsummen. Nichts wurde gespeichert: vor dem Weitermachen "pnpm log verify" ausführen',
	"this message can't be kept as it stands. Nothing was saved: shorten it or leave odd characters out":
		'diese Nachricht lässt sich so nicht aufbewahren. Nichts wurde gespeichert: kürzen oder ungewöhnliche Zeichen weglassen',
	'the address of the log is wrong. Nothing was saved: check DATABASE_URL':
		'die Adresse des Protokolls ist falsch. Nichts wurde gespeichert: DATABASE_URL prüfen',
	"the log can't be opened. Nothing was saved: see the program's own messages for the reason":
		'das Protokoll lässt sich nicht öffnen. Nichts wurde gespeichert: den Grund nennen die Meldungen des Programms',
	'Ask in words, as you would ask across the shop:': 'Frag in Worten, wie quer durch die Werkstatt:',
	"Lengths are one way unless you say round trip. Units as you like: 12', 3.5m, 2/0, 35mm2.":
		"Längen sind einfach, außer du sagst hin und zurück. Einheiten nach Belieben: 12', 3.5m, 2/0, 35mm2.",
	'In the thread go on: "and at 20 ft?", "10% is fine", "what about 24 V", "why", "show the working".':
		'Im Thread geht es weiter: "und bei 20 ft?", "10% reicht", "und mit 24 V", "warum", "Rechenweg".',
	'One topic with named inputs: topic, then the inputs in words.':
		'Ein Thema mit seinen Angaben: das Thema, dann die Angaben in Worten.',
	'Topics: {0}.': 'Themen: {0}.',
	'Name a topic, then its inputs.': 'Ein Thema nennen, dann seine Angaben.',
	'"{0}" is no topic of mine.': '"{0}" ist keines meiner Themen.',
	'Done already, as No. {0}.': 'Schon erledigt, als Nr. {0}.',
	'No answer of this channel waits to be shown. "/log resend 128" shows one again.':
		'Keine Antwort dieses Kanals wartet auf Anzeige. "/log resend 128" zeigt eine noch einmal.',
	'Also waiting to be shown: {0}.': 'Auch noch nicht gezeigt: {0}.',
	"There is no answer No. {0} in this shop's log.":
		'Im Protokoll dieser Werkstatt gibt es keine Antwort Nr. {0}.',
	'The log is unbroken: {0} entries.': 'Das Protokoll ist lückenlos: {0} Einträge.',
	'The log is broken: {0}.': 'Das Protokoll ist beschädigt: {0}.',
	'I don\'t know "{0}".': '"{0}" kenne ich nicht.',
	'Example: {0}': 'Beispiel: {0}',
	'No words in this answer': 'Keine Worte in dieser Antwort',
	'I take this to be about {0}, where "{1}" has no place. Leave it out, or say it another way?':
		'Ich verstehe es als Frage zu "{0}", wo "{1}" nicht hingehört. Weglassen oder anders sagen?',
	'water an accumulator gives between pump starts':
		'Wasser, das ein Druckspeicher zwischen Pumpenstarts gibt',
	'charging from the alternator': 'Laden über die Lichtmaschine',
	'solar strings and charge controller': 'Solarstränge und Laderegler',
	'battery bank': 'Batteriebank',
	'rail, crossbeam or shelf in bending': 'Schiene, Querträger oder Regal auf Biegung',
	'daily energy budget': 'den täglichen Energiebedarf',
	'heat that comes in and the air conditioner it takes': 'Wärmeeintrag und die nötige Klimaanlage',
	'time to empty a tank by gravity': 'die Zeit, einen Tank durch Gefälle zu leeren',
	'a tank, pipe or pump bay in the cold': 'Tank, Rohr oder Pumpenfach in der Kälte',
	'fuse for a conductor and a load': 'die Sicherung für Leiter und Verbraucher',
	'heat loss of the van and the heater it needs': 'Wärmeverlust des Fahrzeugs und das nötige Heizgerät',
	'energy of hot water and what it takes from the bank':
		'die Energie für Warmwasser und was sie der Batteriebank nimmt',
	'time to inflate tires': 'die Zeit zum Aufpumpen von Reifen',
	'inverter, its cable and fuse': 'Wechselrichter, seine Leitung und Sicherung',
	'air that keeps the inside dry': 'Luft, die innen trocken hält',
	'voltages in the whole distribution': 'Spannungen in der ganzen Verteilung',
	'weight ledger, axle loads and stability': 'Gewichtsliste, Achslasten und Stabilität',
	'pressure lost in a water pipe': 'Druckverlust in einem Wasserrohr',
	'bolts that hold an item aboard': 'Schrauben, die ein Stück an Bord halten',
	'how long a bank lasts': 'wie lange eine Batteriebank reicht',
	'what may run on shore power': 'was am Landanschluss laufen darf',
	'prospective short-circuit current': 'den unbeeinflussten Kurzschlussstrom',
	'energy hour by hour': 'die Energie Stunde für Stunde',
	'solar yield': 'den Solarertrag',
	'gas spring for a lid or door': 'die Gasdruckfeder für Klappe oder Tür',
	'days of fresh and gray water': 'Tage mit Frischwasser und Abwasser',
	'tires against the axle load and the cold': 'Reifen gegen Achslast und Kälte',
	'fan, air changes and the intake they need': 'Lüfter, Luftwechsel und die nötige Zuluft',
	'conductor size and protection for one run': 'Leitungsquerschnitt und Schutz einer Leitung',
	'"/build rerun" works them out again.': '"/build rerun" rechnet sie neu.',
	'"/build rerun" works it out again.': '"/build rerun" rechnet sie neu.',
	'I found no equipment in that.': 'Darin habe ich keine Ausrüstung gefunden.',
	'No build is chosen for this channel. Say "/build use NAME".':
		'Für diesen Kanal ist kein Ausbau gewählt. Sag "/build use NAME".',
	'Then send this again:': 'Dann das hier noch einmal senden:',
	'That tells of a van. {0}': 'Das beschreibt ein Fahrzeug. {0}',
	'That description is too long for me: send it in two parts.':
		'Diese Beschreibung ist mir zu lang: in zwei Teilen senden.',
	'The rest is as it was: "/build show" has all of it.':
		'Das Übrige ist, wie es war: "/build show" zeigt alles.',
	'This shop has no build yet. Say "/build use NAME".':
		'Diese Werkstatt hat noch keinen Ausbau. Sag "/build use NAME".',
	'{0} of this shop:': '{0} dieser Werkstatt:',
	'1 build': '1 Ausbau',
	'{0} builds': '{0} Ausbauten',
	'1 piece': '1 Stück',
	'{0} pieces': '{0} Stücke',
	'1 answer': '1 Antwort',
	'{0} answers': '{0} Antworten',
	'1 question': '1 Frage',
	'{0} questions': '{0} Fragen',
	'1 more question': '1 weitere Frage',
	'{0} more questions': '{0} weitere Fragen',
	'1 danger': '1 Gefahr',
	'{0} dangers': '{0} Gefahren',
	'1 warning': '1 Warnung',
	'{0} warnings': '{0} Warnungen',
	'1 note': '1 Hinweis',
	'{0} notes': '{0} Hinweise',
	'1 thing': '1 Angabe',
	'{0} things': '{0} Angaben',
	'{0} cleared': '{0} behoben',
	'{0} new': '{0} neu',
	'{0} open': '{0} offen',
	'{0} settled': '{0} geklärt',
	'Better, no longer so: {0}': 'Besser, nicht mehr so: {0}',
	'Worse, new: DANGER, {0}': 'Schlechter, neu: GEFAHR, {0}',
	'Worse, new: {0}': 'Schlechter, neu: {0}',
	'Build "{0}" as understood: {1}': 'Ausbau "{0}", wie verstanden: {1}',
	'Build "{0}": {1}, {2} out of date': 'Ausbau "{0}": {1}, {2} überholt',
	'Build "{0}": {1} not known': 'Ausbau "{0}": {1} nicht bekannt',
	'Build "{0}": {1}; {2} not known': 'Ausbau "{0}": {1}; {2} nicht bekannt',
	'Build "{0}": {1}': 'Ausbau "{0}": {1}',
	'Left open: {0}': 'Offen gelassen: {0}',
	'Not known: {0}': 'Nicht bekannt: {0}',
	'Nothing is known of build "{0}" yet. Tell it with "/build describe ...".':
		'Vom Ausbau "{0}" ist noch nichts bekannt. Mit "/build describe ..." beschreiben.',
	'Out of date now: {0}. "/build rerun" works it out again.':
		'Jetzt überholt: {0}. "/build rerun" rechnet sie neu.',
	'Out of date now: {0}. "/build rerun" works them out again.':
		'Jetzt überholt: {0}. "/build rerun" rechnet sie neu.',
	'Out of date: No. {0}, {1} ({2})': 'Überholt: Nr. {0}, {1} ({2})',
	'Said not to be there: {0}': 'Als nicht vorhanden genannt: {0}',
	'Since No. {0}: {1}.': 'Seit Nr. {0}: {1}.',
	'Since No. {0}: nothing got better, nothing worse.': 'Seit Nr. {0}: nichts besser, nichts schlechter.',
	'Taken out: {0}': 'Entfernt: {0}',
	'This channel now works on build "{0}".': 'Dieser Kanal arbeitet jetzt am Ausbau "{0}".',
	'and {0} more': 'und {0} weitere',
	'No answer of build "{0}" is out of date.': 'Keine Antwort des Ausbaus "{0}" ist überholt.',
	'Worked out again: {0} of build "{1}"': 'Neu gerechnet: {0} des Ausbaus "{1}"',
	'No. {0} replaces No. {1}: {2}': 'Nr. {0} ersetzt Nr. {1}: {2}',
	'There is no {0} in this build.': 'In diesem Ausbau gibt es nicht: {0}.',
	'No longer valid: replaced by No. {0}.': 'Nicht mehr gültig: ersetzt durch Nr. {0}.',
	'No longer valid: rejected.': 'Nicht mehr gültig: abgelehnt.',
	'The signature is out of date. {0}': 'Die Unterschrift ist überholt. {0}',
	'Writing the book of build "{0}": {1} %': 'Die Mappe des Ausbaus "{0}" wird geschrieben: {1} %',
	'The book of build "{0}": {1}': 'Die Mappe des Ausbaus "{0}": {1}',
	'There is nothing of build "{0}" in this shop\'s log yet.':
		'Vom Ausbau "{0}" steht noch nichts im Protokoll dieser Werkstatt.',
	'"{0}" is no format of the book. It is {1}.': '"{0}" ist kein Format der Mappe. Es gibt {1}.',
	'"{0}" names no answers. Say the first and the last number: "{1}".':
		'"{0}" nennt keine Antworten. Die erste und die letzte Nummer sagen: "{1}".',
	'That is faster than I can follow. Give me a moment, then ask again.':
		'So schnell komme ich nicht mit. Gib mir einen Augenblick, dann frag noch einmal.',
	'That message is too long for me. Send the question alone, or the description in parts.':
		'Diese Nachricht ist mir zu lang. Nur die Frage senden, oder die Beschreibung in Teilen.',
	'Something failed on my side, and I gave no answer. Please ask again.':
		'Bei mir ist etwas fehlgeschlagen, und ich habe nicht geantwortet. Bitte frag noch einmal.',
	'That stands in the channel already.': 'Das steht schon im Kanal.',
	'Something failed on my side: I could not show the answer. I will try again by myself.':
		'Bei mir ist etwas fehlgeschlagen: ich konnte die Antwort nicht zeigen. Ich versuche es von selbst noch einmal.',
	'Something failed on my side: the answer is kept as No. {0}, but I could not show it. I will try again by myself; "/log resend {1}" shows it at once.':
		'Bei mir ist etwas fehlgeschlagen: die Antwort steht als Nr. {0} im Protokoll, aber ich konnte sie nicht zeigen. Ich versuche es von selbst noch einmal; "/log resend {1}" zeigt sie sofort.',
	'That button leads nowhere any more. Please type it instead.':
		'Dieser Knopf führt nirgends mehr hin. Bitte schreib es stattdessen.',
	'Part of the answer could not be shown: ask for it again by its number.':
		'Ein Teil der Antwort konnte nicht gezeigt werden: frag noch einmal mit ihrer Nummer danach.',
	'Sent again, as it was not certain that it had arrived: you may have it twice.':
		'Noch einmal gesendet, denn es war nicht sicher, ob es angekommen ist: vielleicht steht es zweimal da.',
	'The whole answer is in the file below.': 'Die ganze Antwort steht in der Datei darunter.',
	'There is more than fits here: ask for less at once.':
		'Es ist mehr, als hier Platz hat: frag nach weniger auf einmal.',
	'The file is for you alone: ask me in a direct message, and I send it there.':
		'Die Datei ist für dich allein: frag mich in einer Direktnachricht, dann sende ich sie dort.',
	'{0} could not be sent ({1}): the app needs the scope files:write and has to be in the channel.':
		'{0} konnte nicht gesendet werden ({1}): die App braucht das Recht files:write und muss im Kanal sein.',
	'{0} is larger than may be sent here; "pnpm export" writes it to a disk.':
		'{0} ist größer, als hier gesendet werden darf; "pnpm export" schreibt es auf einen Datenträger.',
	'Change an assumption': 'Eine Annahme ändern',
	'I keep what is addressed to me here, with the name of who asked, in the log of this shop. I read nothing else. Your name and words can be erased on request; the calculation stays.':
		'Ich bewahre im Protokoll dieser Werkstatt auf, was hier an mich gerichtet ist, mit dem Namen dessen, der fragt. Sonst lese ich nichts. Dein Name und deine Worte werden auf Wunsch gelöscht; die Berechnung bleibt.',
	'Save to a build': 'Zu einem Ausbau',
	'Show to the channel': 'Im Kanal zeigen',
	Sign: 'Unterschreiben',
	Reject: 'Ablehnen',
	Comment: 'Anmerken',
};
