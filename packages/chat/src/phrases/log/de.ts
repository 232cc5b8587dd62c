import type { Phrasebook } from '@lugbook/core';

/** What "/log" says to the people of a shop, in German. */
export const german: Phrasebook = {
	'checked and approved': 'geprüft und freigegeben',
	'checked and approved, own question': 'geprüft und freigegeben, eigene Frage',
	'checked and approved, worked out again by the signer':
		'geprüft und freigegeben, von der unterschreibenden Person neu gerechnet',
	'checked and approved, own question, worked out again by the signer':
		'geprüft und freigegeben, eigene Frage, von der unterschreibenden Person neu gerechnet',
	'checked and approved: {0}': 'geprüft und freigegeben: {0}',
	'checked and approved, {0}': 'geprüft und freigegeben, {0}',
	'checked and approved, own question: {0}': 'geprüft und freigegeben, eigene Frage: {0}',
	'checked and approved, worked out again by the signer: {0}':
		'geprüft und freigegeben, von der unterschreibenden Person neu gerechnet: {0}',
	'checked and approved, worked out again by the signer, {0}':
		'geprüft und freigegeben, von der unterschreibenden Person neu gerechnet, {0}',
	'checked and approved, own question, worked out again by the signer: {0}':
		'geprüft und freigegeben, eigene Frage, von der unterschreibenden Person neu gerechnet: {0}',
	'approved as a whole, with what is open': 'als Ganzes freigegeben, mit dem, was offen ist',
	'approved as a whole, with what is open: {0}': 'als Ganzes freigegeben, mit dem, was offen ist: {0}',
	'checked and approved as a whole': 'als Ganzes geprüft und freigegeben',
	'checked and approved as a whole: {0}': 'als Ganzes geprüft und freigegeben: {0}',
	rejected: 'abgelehnt',
	'rejected: {0}': 'abgelehnt: {0}',
	comment: 'Anmerkung',
	'comment: {0}': 'Anmerkung: {0}',
	'asked of the lead': 'dem Meister vorgelegt',
	'asked of the lead: {0}': 'dem Meister vorgelegt: {0}',
	'somebody who was forgotten': 'jemand, der vergessen wurde',
	signed: 'unterschrieben',
	unsigned: 'ohne Unterschrift',
	'not checked': 'nicht geprüft',
	replaced: 'ersetzt',
	'out of date': 'überholt',
	refused: 'verweigert',
	unanswered: 'ohne Antwort',
	'needs-input': 'Angabe fehlt',
	'not-understood': 'nicht verstanden',
	listed: 'mitgeteilt',
	'no topic': 'ohne Thema',
	'{0} (signed)': '{0} (unterschrieben)',
	'{0} (rejected)': '{0} (abgelehnt)',
	'{0} (out of date)': '{0} (überholt)',
	'{0} (asked of the lead)': '{0} (dem Meister vorgelegt)',
	'{0} (replaced by No. {1})': '{0} (ersetzt durch Nr. {1})',
	'{0} (1 comment)': '{0} (1 Anmerkung)',
	'{0} ({1} comments)': '{0} ({1} Anmerkungen)',
	'Asked by {0} in No. {1}, worked out again from the build by {2}':
		'Gefragt von {0} in Nr. {1}, aus dem Ausbau neu gerechnet von {2}',
	'Since then: {0}.': 'Seitdem: {0}.',
	'It was signed before No. {0}, on which it rests, ceased to stand (No. {1}).':
		'Sie wurde unterschrieben, bevor Nr. {0}, auf der sie beruht, ungültig wurde (Nr. {1}).',
	'Signed by {0}, {1}: {2}': 'Unterschrieben von {0}, {1}: {2}',
	'Rejected by {0}, {1}: {2}': 'Abgelehnt von {0}, {1}: {2}',
	'Comment by {0}, {1}: {2}': 'Anmerkung von {0}, {1}: {2}',
	'Asked by {0}, {1}: {2}': 'Vorgelegt von {0}, {1}: {2}',
	'Signed by {0} (their own question; this shop allows it), {1}: {2}':
		'Unterschrieben von {0} (eigene Frage; diese Werkstatt erlaubt es), {1}: {2}',
	'Signing is for the leads of this shop. Ask one of them with "/log ask-lead {0}".':
		'Unterschreiben ist Sache der Meister dieser Werkstatt. Mit "/log ask-lead {0}" einen von ihnen fragen.',
	'No. {0} is your own question: somebody else signs its answer.':
		'Nr. {0} ist deine eigene Frage: ihre Antwort unterschreibt jemand anderes.',
	'No. {0} was replaced by No. {1}: look at that one.': 'Nr. {0} wurde durch Nr. {1} ersetzt: diese ansehen.',
	'No. {0} signed by {1}, {2}: {3}': 'Nr. {0} unterschrieben von {1}, {2}: {3}',
	'No. {0} signed by {1} (their own question; this shop allows it), {2}: {3}':
		'Nr. {0} unterschrieben von {1} (eigene Frage; diese Werkstatt erlaubt es), {2}: {3}',
	'Rejecting is for the leads of this shop. You can say a word: "/log comment {0} TEXT".':
		'Ablehnen ist Sache der Meister dieser Werkstatt. Anmerken geht: "/log comment {0} TEXT".',
	'Say why: "/log reject {0} REASON".': 'Den Grund sagen: "/log reject {0} REASON".',
	'No. {0} rejected by {1}: {2}': 'Nr. {0} abgelehnt von {1}: {2}',
	'These rest on No. {0}: look at them again': 'Diese beruhen auf Nr. {0}: noch einmal ansehen',
	'Say what: "/log comment {0} TEXT".': 'Sagen, was: "/log comment {0} TEXT".',
	'No. {0}, comment by {1}: {2}': 'Nr. {0}, Anmerkung von {1}: {2}',
	'No. {0} is asked of the lead: it stands in "/log review" until it is signed or rejected.':
		'Nr. {0} ist dem Meister vorgelegt: sie steht in "/log review", bis sie unterschrieben oder abgelehnt ist.',
	'Only a lead can change that.': 'Das kann nur ein Meister ändern.',
	'Leads may now sign answers to their own questions; the signature says so.':
		'Meister dürfen jetzt Antworten auf eigene Fragen unterschreiben; die Unterschrift sagt es.',
	'Nobody signs an answer to their own question.': 'Niemand unterschreibt eine Antwort auf die eigene Frage.',
	'Say the number of an answer: "/log {0} 128".': 'Die Nummer einer Antwort sagen: "/log {0} 128".',
	'"{0}" is no number of an answer. {1}': '"{0}" ist keine Nummer einer Antwort. {1}',
	'Newest answers, {0}': 'Neueste Antworten, {0}',
	'Newest answers by you, {0}': 'Neueste Antworten von dir, {0}',
	'Newest answers by {0}, {1}': 'Neueste Antworten von {0}, {1}',
	'Answers: {0}, {1}': 'Antworten: {0}, {1}',
	'Answers: {0} by you, {1}': 'Antworten: {0}, von dir, {1}',
	'Answers: {0} by {1}, {2}': 'Antworten: {0}, von {1}, {2}',
	'{0}: none.': '{0}: keine.',
	'{0}: no more.': '{0}: keine weiteren.',
	'this channel': 'dieser Kanal',
	'another channel': 'ein anderer Kanal',
	'all builds': 'alle Ausbauten',
	'build "{0}"': 'Ausbau "{0}"',
	'since {0}, {1}': 'seit {0}, {1}',
	'until {0}, {1}': 'bis {0}, {1}',
	'No. {0}, {1}, {2}, {3}\n{4}': 'Nr. {0}, {1}, {2}, {3}\n{4}',
	'No. {0}, {1}, forgotten, {2}\n{3}': 'Nr. {0}, {1}, vergessen, {2}\n{3}',
	'Not all is looked through yet: of {0} answers down to No. {1}, {2} fit.':
		'Noch ist nicht alles durchgesehen: von {0} Antworten bis Nr. {1} passen {2}.',
	'More: /log more {0}': 'Mehr: /log more {0}',
	More: 'Mehr',
	'"{0}" could be two days. Write the year first, such as 2026-05-04.':
		'"{0}" kann zwei Tage meinen. Das Jahr zuerst schreiben, etwa 2026-05-04.',
	'"{0}" is no day of the calendar.': '"{0}" ist kein Tag des Kalenders.',
	'There are {0} people called "{1}" here: say which by the id, {2}.':
		'Hier gibt es {0} Personen namens "{1}": mit der Kennung sagen, welche, {2}.',
	'I know nobody called "{0}" here. Mention them, or let them ask me something first.':
		'Hier kenne ich niemanden namens "{0}". Die Person erwähnen, oder sie zuerst etwas fragen lassen.',
	'Nothing is unsigned in {0}.': 'Nichts ist ohne Unterschrift: {0}.',
	'{0} unsigned in {1}': '{0} ohne Unterschrift: {1}',
	'Rejected, and nothing in their place yet: {0}': 'Abgelehnt, und noch nichts an ihrer Stelle: {0}',
	'DANGER {0}': 'GEFAHR {0}',
	'warning {0}': 'Warnung {0}',
	'climate: {0}': 'Klima: {0}',
	'energy: {0}': 'Energie: {0}',
	'structure: {0}': 'Aufbau: {0}',
	'water: {0}': 'Wasser: {0}',
	'weight: {0}': 'Gewicht: {0}',
	'wiring: {0}': 'Verkabelung: {0}',
	'other: {0}': 'Sonstiges: {0}',
	'Only the newest {0} answers were looked at; older ones: "/log show unsigned"':
		'Nur die neuesten {0} Antworten wurden angesehen; ältere: "/log show unsigned"',
	'and {0} more: "/log show unsigned"': 'und {0} weitere: "/log show unsigned"',
	'No. {0} has no calculation: "/log show {1}" shows what was said.':
		'Nr. {0} hat keine Berechnung: "/log show {1}" zeigt, was gesagt wurde.',
	'Build "{0}" is not signed as a whole. A lead says "/log sign build".':
		'Der Ausbau "{0}" ist nicht als Ganzes unterschrieben. Ein Meister sagt "/log sign build".',
	'Build "{0}" is signed as a whole by {1} (No. {2}), as it stood at No. {3}: {4}':
		'Der Ausbau "{0}" ist als Ganzes unterschrieben von {1} (Nr. {2}), wie er bei Nr. {3} stand: {4}',
	'The signature under build "{0}" as a whole is OUT OF DATE: {1} signed it as it stood at No. {2}; changed since by {3}':
		'Die Unterschrift unter dem Ausbau "{0}" als Ganzem ist ÜBERHOLT: {1} hat ihn unterschrieben, wie er bei Nr. {2} stand; seitdem geändert durch {3}',
	'Open when it was signed: {0}': 'Offen, als unterschrieben wurde: {0}',
	'No. {0} and later ones': 'Nr. {0} und spätere',
	'No. {0} and {1} more': 'Nr. {0} und {1} weitere',
	'{0} not checked ({1})': '{0} nicht geprüft ({1})',
	'{0} asked of the lead ({1})': '{0} dem Meister vorgelegt ({1})',
	'{0} rejected ({1})': '{0} abgelehnt ({1})',
	'{0} out of date ({1})': '{0} überholt ({1})',
	'1 danger ({0})': '1 Gefahr ({0})',
	'{0} dangers ({1})': '{0} Gefahren ({1})',
	'Signing a build is for the leads of this shop.':
		'Einen Ausbau unterschreiben ist Sache der Meister dieser Werkstatt.',
	'There is nothing of build "{0}" to sign yet.': 'Vom Ausbau "{0}" gibt es noch nichts zu unterschreiben.',
	'Build "{0}" is not signed: {1} is your own question, whose answer somebody else signs first.':
		'Der Ausbau "{0}" wird nicht unterschrieben: {1} ist deine eigene Frage, deren Antwort zuerst jemand anderes unterschreibt.',
	'Build "{0}" is not signed: {1} are your own questions, whose answers somebody else signs first.':
		'Der Ausbau "{0}" wird nicht unterschrieben: {1} sind deine eigenen Fragen, deren Antworten zuerst jemand anderes unterschreibt.',
	'Build "{0}" is not signed, for there is still open: {1}. Settle it first, or say why it is signed all the same: "/log sign build anyway REASON".':
		'Der Ausbau "{0}" wird nicht unterschrieben, denn offen ist noch: {1}. Erst klären, oder sagen, warum trotzdem unterschrieben wird: "/log sign build anyway REASON".',
	'Say why it is signed all the same: "/log sign build anyway REASON".':
		'Sagen, warum trotzdem unterschrieben wird: "/log sign build anyway REASON".',
	'Build "{0}" signed as a whole by {1}, {2} (No. {3}): {4}':
		'Ausbau "{0}" als Ganzes unterschrieben von {1}, {2} (Nr. {3}): {4}',
	'It covers the log up to No. {0}, hash {1}': 'Sie umfasst das Protokoll bis Nr. {0}, Prüfsumme {1}',
	'In this log No. {0} has another hash, {1}: it was chained anew since, as an import under another name does. Compare it with the log that was signed.':
		'In diesem Protokoll hat Nr. {0} eine andere Prüfsumme, {1}: es wurde seitdem neu verkettet, wie beim Einlesen unter anderem Namen. Mit dem unterschriebenen Protokoll vergleichen.',
	'{0} of {1} answers have a signature that holds; {2}':
		'{0} von {1} Antworten haben eine gültige Unterschrift; {2}',
	'{0}; among them answers to their own questions, as this shop allows':
		'{0}; darunter Antworten auf eigene Fragen, wie diese Werkstatt es erlaubt',
	'nothing is open': 'nichts ist offen',
	'open all the same: {0}': 'trotzdem offen: {0}',
	'Whatever changes the build from now on puts this signature out of date.':
		'Was den Ausbau von jetzt an ändert, macht diese Unterschrift überholt.',
	'No. {0} is no answer: it is the signature under No. {1}, by {2}':
		'Nr. {0} ist keine Antwort: sie ist die Unterschrift unter Nr. {1}, von {2}',
	'No. {0} is no answer: it is the rejection of No. {1}, by {2}':
		'Nr. {0} ist keine Antwort: sie ist die Ablehnung von Nr. {1}, von {2}',
	'No. {0} is no answer: it is a comment on No. {1}, by {2}':
		'Nr. {0} ist keine Antwort: sie ist eine Anmerkung zu Nr. {1}, von {2}',
	'No. {0} is no answer: it asks the lead about No. {1}, by {2}':
		'Nr. {0} ist keine Antwort: sie legt dem Meister vor: Nr. {1}, von {2}',
	'It says: {0}': 'Darin steht: {0}',
	'About {0}': 'Betrifft {0}',
	'No. {0} is no answer: it tells of build "{1}", by {2}':
		'Nr. {0} ist keine Antwort: sie beschreibt den Ausbau "{1}", von {2}',
	'No. {0} is no answer: a channel was set to build "{1}", by {2}':
		'Nr. {0} ist keine Antwort: ein Kanal wurde auf den Ausbau "{1}" gestellt, von {2}',
	'No. {0} is no answer: something was refused to {1}':
		'Nr. {0} ist keine Antwort: etwas wurde verweigert, und zwar {1}',
	'No. {0} is no answer: a setting was changed by {1}':
		'Nr. {0} ist keine Antwort: eine Einstellung wurde geändert von {1}',
	'No. {0} is no answer: somebody was forgotten on {1}':
		'Nr. {0} ist keine Antwort: jemand wurde vergessen am {1}',
	'Name and words are erased from entries of theirs: {0}.':
		'Name und Worte sind gelöscht aus eigenen Einträgen: {0}.',
	'No. {0} is kept in the log in a form that I can\'t read: kind "{1}", by {2}':
		'Nr. {0} steht im Protokoll in einer Form, die ich nicht lesen kann: Art "{1}", von {2}',
	'No. {0} is no answer: it is the signature under build "{1}" as a whole, by {2}':
		'Nr. {0} ist keine Antwort: sie ist die Unterschrift unter dem Ausbau "{1}" als Ganzem, von {2}',
	'Among them are answers to their own questions, as this shop allows.':
		'Darunter sind Antworten auf eigene Fragen, wie diese Werkstatt es erlaubt.',
	'Nothing of the build has changed since: it holds.':
		'Am Ausbau hat sich seitdem nichts geändert: sie gilt.',
	'OUT OF DATE: the build was changed since by {0}': 'ÜBERHOLT: der Ausbau wurde seitdem geändert durch {0}',
	'It left the van as it was.': 'Sie ließ den Van, wie er war.',
	"It is kept in a form that I can't read.": 'Sie ist in einer Form gespeichert, die ich nicht lesen kann.',
	'Leads may sign answers to their own questions.':
		'Meister dürfen Antworten auf eigene Fragen unterschreiben.',
	'The daily digest comes at {0}.': 'Die tägliche Übersicht kommt um {0}.',
	'{0} was made a lead.': 'Zum Meister gemacht: {0}.',
	"The lead's right was taken from {0}.": 'Das Recht eines Meisters wurde entzogen: {0}.',
	"Only an administrator says who is a lead: whoever the bot's own configuration names as one.":
		'Nur ein Administrator sagt, wer Meister ist: wen die eigene Konfiguration des Bots so nennt.',
	'You are an administrator, and so a lead already.': 'Du bist Administrator und damit schon Meister.',
	'Another administrator has to take your right away, so that one always stays.':
		'Dein Recht muss ein anderer Administrator entziehen, damit immer einer bleibt.',
	'{0} is a lead already.': 'Ist schon Meister: {0}.',
	'{0} is no lead already.': 'Ist schon kein Meister: {0}.',
	'{0} is now a lead and may sign.': 'Ist jetzt Meister und darf unterschreiben: {0}.',
	'{0} is no lead any more, from this moment on. What was signed stays signed.':
		'Ist kein Meister mehr, von diesem Moment an: {0}. Was unterschrieben ist, bleibt unterschrieben.',
	'Others are changing the list of leads right now. Please say it again.':
		'Andere ändern gerade die Liste der Meister. Bitte noch einmal sagen.',
	'{0}: lead': '{0}: Meister',
	'{0}: no lead any more': '{0}: kein Meister mehr',
	'No leads were added here.': 'Hier wurde kein Meister hinzugefügt.',
	'Leads said here': 'Hier genannte Meister',
	"Administrators, and leads with them, are those whom the bot's own configuration names.":
		'Administratoren und damit Meister sind die, die die eigene Konfiguration des Bots nennt.',
	"I keep no entry of yours in this shop's log.":
		'Im Protokoll dieser Werkstatt habe ich keinen Eintrag von dir.',
	'You are a lead here.': 'Du bist hier Meister.',
	'You are a lead of this shop.': 'Du bist Meister dieser Werkstatt.',
	"I keep {0} entries of yours in this shop's log, from {1} to {2}.":
		'Im Protokoll dieser Werkstatt habe ich {0} Einträge von dir, vom {1} bis zum {2}.',
	'Among them: {0}, {1}, in {2}.': 'Darunter: {0}, {1}, in {2}.',
	'Among them: {0}, {1}, in {2}. Builds: {3}.': 'Darunter: {0}, {1}, in {2}. Ausbauten: {3}.',
	'1 signature': '1 Unterschrift',
	'{0} signatures': '{0} Unterschriften',
	'1 channel': '1 Kanal',
	'{0} channels': '{0} Kanälen',
	'With each: your name ({0}), your id ({1}), your words as typed. That part can be erased.':
		'Bei jedem: dein Name ({0}), deine Kennung ({1}), deine Worte wie getippt. Dieser Teil kann gelöscht werden.',
	'For good: the calculation, when and where it was asked, and a pseudonym that is the same in all of them.':
		'Auf Dauer: die Berechnung, wann und wo gefragt wurde, und ein Pseudonym, das in allen dasselbe ist.',
	'Not in my hands: the messages in the channel itself, and backups and exports made before.':
		'Nicht in meiner Hand: die Nachrichten im Kanal selbst, und früher gemachte Sicherungen und Exporte.',
	'To have your name and words erased: "/log forget-me".':
		'Damit Name und Worte gelöscht werden: "/log forget-me".',
	"There is nothing to erase: I keep no entry of yours in this shop's log.":
		'Es gibt nichts zu löschen: im Protokoll dieser Werkstatt habe ich keinen Eintrag von dir.',
	"This erases your name, your id and your words as typed from {0} entries. It can't be undone.":
		'Das löscht deinen Namen, deine Kennung und deine Worte wie getippt aus {0} Einträgen. Es lässt sich nicht rückgängig machen.',
	'The calculations stay, and the log still verifies.':
		'Die Berechnungen bleiben, und das Protokoll ist weiter nachprüfbar.',
	'Your signatures stay as signatures of somebody who was forgotten.':
		'Deine Unterschriften bleiben als Unterschriften von jemandem, der vergessen wurde.',
	'What waits to be shown to you is dropped. Backups and exports made before are not in my hands.':
		'Was dir noch gezeigt werden sollte, wird verworfen. Früher gemachte Sicherungen und Exporte sind nicht in meiner Hand.',
	'To do it: the button, or "/log forget-me confirm".':
		'Dafür: die Schaltfläche, oder "/log forget-me confirm".',
	'Done: your name, your id and your words are erased from {0} entries. The log still verifies.':
		'Erledigt: dein Name, deine Kennung und deine Worte sind aus {0} Einträgen gelöscht. Das Protokoll ist weiter nachprüfbar.',
	"One thing stays, your id alone: that an administrator took the lead's right away from it.":
		'Eines bleibt, nur deine Kennung: dass ein Administrator ihr das Recht eines Meisters entzogen hat.',
	'If you write to me again, that is kept anew.': 'Wenn du mir wieder schreibst, wird das neu gespeichert.',
	'Forget me': 'Vergiss mich',
	'Yes, forget me': 'Ja, vergiss mich',
	'To look at: {0} unsigned, {1} with a danger, {2} asked of the lead':
		'Anzusehen: {0} ohne Unterschrift, {1} mit einer Gefahr, {2} dem Meister vorgelegt',
	'Without a build: {0}': 'Ohne Ausbau: {0}',
	'Nothing is unsigned in this shop.': 'In dieser Werkstatt ist nichts ohne Unterschrift.',
	'The daily digest is off. A lead says "/log digest on 07:00".':
		'Die tägliche Übersicht ist aus. Ein Meister sagt "/log digest on 07:00".',
	'The daily digest is off.': 'Die tägliche Übersicht ist aus.',
	'The daily digest comes at {0} into {1}.': 'Die tägliche Übersicht kommt um {0}: {1}.',
	'The daily digest is switched by a lead.': 'Die tägliche Übersicht schaltet ein Meister.',
	'"{0}" is no time of day. Say it as 07:00 or 16:30.':
		'"{0}" ist keine Uhrzeit. Sie wie 07:00 oder 16:30 sagen.',
	'From now on what is unsigned in the whole shop comes into this channel at {0}, on days when there is something. I have to be a member of the channel.':
		'Von jetzt an kommt, was in der ganzen Werkstatt ohne Unterschrift ist, um {0} in diesen Kanal, an Tagen, an denen es etwas gibt. Ich muss Mitglied des Kanals sein.',
	'No. {0} ({1}) has no picture. Runs, payloads, simulations, solar answers with a need and gas springs with both mounts have one.':
		'Nr. {0} ({1}) hat kein Bild. Eines haben Leitungen, Zuladungen, Simulationen, Solarantworten mit einem Bedarf und Gasfedern mit beiden Anlenkpunkten.',
	'There is no picture "{0}" of {1}. There is {2}.': 'Es gibt kein Bild "{0}" von {1}. Es gibt {2}.',
	'Picture of {0}: {1}': 'Bild von {0}: {1}',
	'Pictures of {0}: {1}': 'Bilder von {0}: {1}',
	'Build "{0}" has no picture yet: tell its battery bank for the wiring, its size and weights for the axles.':
		'Der Ausbau "{0}" hat noch kein Bild: für die Verkabelung die Batterie nennen, für die Achsen Größe und Gewichte.',
	'No. {0} is replaced by whoever asked it, or by a lead.':
		'Nr. {0} ersetzt, wer sie gefragt hat, oder ein Meister.',
	'No. {0} was replaced by No. {1} already: change that one.':
		'Nr. {0} wurde schon durch Nr. {1} ersetzt: diese ändern.',
	'Say what changes: "/log replace {0} and at 20 ft", or the whole question.':
		'Sagen, was sich ändert: "/log replace {0} and at 20 ft", oder die ganze Frage.',
	'No. {0} stays.': 'Nr. {0} bleibt.',
	'No. {0} stays: {1}': 'Nr. {0} bleibt: {1}',
	'It replaces No. {0}, which stays in the log.': 'Sie ersetzt Nr. {0}, die im Protokoll bleibt.',
	"Posting the log's root is for the leads of this shop.":
		'Die Wurzel des Protokolls zu zeigen ist Sache der Meister dieser Werkstatt.',
	'The log of this shop has no entries yet.': 'Das Protokoll dieser Werkstatt hat noch keine Einträge.',
	"Root of this shop's log: {0} entries, {1}": 'Wurzel des Protokolls dieser Werkstatt: {0} Einträge, {1}',
	'Head {0}': 'Kopf {0}',
	'Whoever keeps this message can show later that none of these {0} entries was changed or taken away.':
		'Wer diese Nachricht aufhebt, kann später zeigen, dass keiner dieser {0} Einträge geändert oder weggenommen wurde.',
	'These are {0} calculation sheets of build "{1}"; a PDF takes {2}. Export it in {3} pieces, by the numbers of the answers: {4}. HTML, CSV and JSON take all of them in one file. Say "/log export pdf {5}".':
		'Das sind {0} Rechenblätter des Ausbaus "{1}"; ein PDF fasst {2}. In {3} Teilen exportieren, nach den Nummern der Antworten: {4}. HTML, CSV und JSON fassen alle in einer Datei. Sagen: "/log export pdf {5}".',
	'This is the book of one build, for programs to read. It can\'t be read back into a log: for that take the whole shop, with "pnpm log export FILE", and bring it in with "pnpm log import FILE".':
		'Das ist die Mappe eines Ausbaus, zum Lesen für Programme. Sie lässt sich nicht in ein Protokoll zurücklesen: dafür die ganze Werkstatt nehmen, mit "pnpm log export FILE", und sie mit "pnpm log import FILE" einlesen.',
	"the book of the channel's build as a file": 'die Mappe zum Ausbau des Kanals als Datei',
	'one answer with its working, or what else was kept; as a calculation sheet':
		'eine Antwort mit Rechenweg, oder was sonst gespeichert wurde; als Rechenblatt',
	'answers: "wire by Robin last week", "unsigned", "build heron", "roof fan", 2026-05-04':
		'Antworten: "wire by Robin last week", "unsigned", "build heron", "roof fan", 2026-05-04',
	'what is unsigned in the build, dangers first': 'was im Ausbau ohne Unterschrift ist, Gefahren zuerst',
	'a lead signs ("sign build": the whole build), takes that back, or rejects; all comment or ask the lead':
		'ein Meister unterschreibt ("sign build": den ganzen Ausbau), nimmt das zurück oder lehnt ab; alle merken an oder fragen den Meister',
	'asks it again with a change; the old one stays, struck through':
		'fragt mit einer Änderung neu; die alte bleibt, durchgestrichen',
	'who may sign; what is unsigned, daily into this channel':
		'wer unterschreiben darf; was ohne Unterschrift ist, täglich in diesen Kanal',
	'what is kept about you; has your name and words erased':
		'was über dich gespeichert ist; lässt Name und Worte löschen',
	'walks the whole log and says whether it is unbroken':
		'geht das ganze Protokoll durch und sagt, ob es unversehrt ist',
	'this channel works on that build (the van); its answers are kept under that name':
		'dieser Kanal arbeitet an diesem Ausbau (dem Van); seine Antworten stehen unter diesem Namen',
	'tells the equipment of the van, or corrects it ("the fridge is 60 W", "drop the cooktop")':
		'nennt die Ausrüstung des Vans, oder berichtigt sie ("the fridge is 60 W", "drop the cooktop")',
	'what does not fit together, dangers first, and what is not known':
		'was nicht zusammenpasst, Gefahren zuerst, und was nicht bekannt ist',
	'the equipment of the build, its newest answers and those out of date':
		'die Ausrüstung des Ausbaus, seine neuesten Antworten und die überholten',
	'works out again what is out of date': 'rechnet neu, was überholt ist',
	"the shop's builds": 'die Ausbauten der Werkstatt',
	'{0} (this channel)': '{0} (dieser Kanal)',
	'signature withdrawn': 'Unterschrift zurückgezogen',
	'signature withdrawn: {0}': 'Unterschrift zurückgezogen: {0}',
	'Withdrawn by {0}, {1}: {2}': 'Zurückgezogen von {0}, {1}: {2}',
	'Withdrawing a signature is for the leads of this shop.':
		'Eine Unterschrift zurückziehen ist Sache der Meister dieser Werkstatt.',
	'No. {0} has no signature that could be withdrawn.':
		'Nr. {0} hat keine Unterschrift, die sich zurückziehen ließe.',
	'Say why: "/log withdraw {0} REASON".': 'Den Grund sagen: "/log withdraw {0} REASON".',
	'The signature under No. {0} is withdrawn by {1}: {2}':
		'Die Unterschrift unter Nr. {0} ist zurückgezogen von {1}: {2}',
	'It stands in "/log review" until it is signed again or rejected: {0}':
		'Sie steht in "/log review", bis sie wieder unterschrieben oder abgelehnt ist: {0}',
	'Build "{0}" has no signature as a whole to withdraw.':
		'Der Ausbau "{0}" hat als Ganzes keine Unterschrift, die sich zurückziehen ließe.',
	'The signature under build "{0}" as a whole was withdrawn already (No. {1}).':
		'Die Unterschrift unter dem Ausbau "{0}" als Ganzem ist schon zurückgezogen (Nr. {1}).',
	'Say why it is withdrawn: "/log withdraw build REASON".':
		'Sagen, warum sie zurückgezogen wird: "/log withdraw build REASON".',
	'The signature under build "{0}" as a whole (No. {1}) is WITHDRAWN by {2} (No. {3})':
		'Die Unterschrift unter dem Ausbau "{0}" als Ganzem (Nr. {1}) ist ZURÜCKGEZOGEN von {2} (Nr. {3})',
	'The signature under build "{0}" as a whole (No. {1}) is WITHDRAWN by {2} (No. {3}): {4}':
		'Die Unterschrift unter dem Ausbau "{0}" als Ganzem (Nr. {1}) ist ZURÜCKGEZOGEN von {2} (Nr. {3}): {4}',
	'A lead signs it anew with "/log sign build".': 'Neu unterschreibt ein Meister mit "/log sign build".',
	'No. {0} is no answer: it withdraws the signature under No. {1}, by {2}':
		'Nr. {0} ist keine Antwort: sie zieht die Unterschrift zurück unter Nr. {1}, von {2}',
	'No. {0} is no answer: it withdraws the signature under build "{1}" as a whole (No. {2}), by {3}':
		'Nr. {0} ist keine Antwort: sie zieht die Unterschrift unter dem Ausbau "{1}" als Ganzem zurück (Nr. {2}), von {3}',
	'WITHDRAWN by {0}, {1} (No. {2})': 'ZURÜCKGEZOGEN von {0}, {1} (Nr. {2})',
	'No longer valid: rejected by {0} ({1}): {2}': 'Nicht mehr gültig: abgelehnt von {0} ({1}): {2}',
	'No longer valid: replaced by No. {0} ({1}).': 'Nicht mehr gültig: ersetzt durch Nr. {0} ({1}).',
	'No longer valid: replaced by No. {0}: {1}': 'Nicht mehr gültig: ersetzt durch Nr. {0}: {1}',
	'Nothing was done: answers are judged one by one, each by its number. "/log review" lists what is unsigned; "/log sign build" signs the build as a whole.':
		'Nichts wurde getan: Antworten werden einzeln beurteilt, jede mit ihrer Nummer. "/log review" nennt, was ohne Unterschrift ist; "/log sign build" unterschreibt den Ausbau als Ganzen.',
};
