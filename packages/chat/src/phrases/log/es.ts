import type { Phrasebook } from '@lugbook/core';

/** What "/log" says to the people of a shop, in Spanish. */
export const spanish: Phrasebook = {
	'checked and approved': 'revisado y aprobado',
	'checked and approved, own question': 'revisado y aprobado, pregunta propia',
	'checked and approved, worked out again by the signer':
		'revisado y aprobado, calculado de nuevo por quien firma',
	'checked and approved, own question, worked out again by the signer':
		'revisado y aprobado, pregunta propia, calculado de nuevo por quien firma',
	'checked and approved: {0}': 'revisado y aprobado: {0}',
	'checked and approved, {0}': 'revisado y aprobado, {0}',
	'checked and approved, own question: {0}': 'revisado y aprobado, pregunta propia: {0}',
	'checked and approved, worked out again by the signer: {0}':
		'revisado y aprobado, calculado de nuevo por quien firma: {0}',
	'checked and approved, worked out again by the signer, {0}':
		'revisado y aprobado, calculado de nuevo por quien firma, {0}',
	'checked and approved, own question, worked out again by the signer: {0}':
		'revisado y aprobado, pregunta propia, calculado de nuevo por quien firma: {0}',
	'approved as a whole, with what is open': 'aprobado en su conjunto, con lo que queda abierto',
	'approved as a whole, with what is open: {0}': 'aprobado en su conjunto, con lo que queda abierto: {0}',
	'checked and approved as a whole': 'revisado y aprobado en su conjunto',
	'checked and approved as a whole: {0}': 'revisado y aprobado en su conjunto: {0}',
	rejected: 'rechazado',
	'rejected: {0}': 'rechazado: {0}',
	comment: 'comentario',
	'comment: {0}': 'comentario: {0}',
	'asked of the lead': 'preguntado al responsable',
	'asked of the lead: {0}': 'preguntado al responsable: {0}',
	'somebody who was forgotten': 'alguien que fue olvidado',
	signed: 'firmado',
	unsigned: 'sin firmar',
	'not checked': 'sin revisar',
	replaced: 'sustituido',
	'out of date': 'sin actualizar',
	refused: 'denegado',
	unanswered: 'sin respuesta',
	'needs-input': 'falta un dato',
	'not-understood': 'sin entender',
	listed: 'informado',
	'no topic': 'sin tema',
	'{0} (signed)': '{0} (firmado)',
	'{0} (rejected)': '{0} (rechazado)',
	'{0} (out of date)': '{0} (sin actualizar)',
	'{0} (asked of the lead)': '{0} (preguntado al responsable)',
	'{0} (replaced by No. {1})': '{0} (sustituido por el n.º {1})',
	'{0} (1 comment)': '{0} (1 comentario)',
	'{0} ({1} comments)': '{0} ({1} comentarios)',
	'Asked by {0} in No. {1}, worked out again from the build by {2}':
		'Preguntado por {0} en el n.º {1}, calculado de nuevo a partir del proyecto por {2}',
	'Since then: {0}.': 'Desde entonces: {0}.',
	'It was signed before No. {0}, on which it rests, ceased to stand (No. {1}).':
		'Se firmó antes de que el n.º {0}, en el que se apoya, dejara de valer (n.º {1}).',
	'Signed by {0}, {1}: {2}': 'Firmado por {0}, {1}: {2}',
	'Rejected by {0}, {1}: {2}': 'Rechazado por {0}, {1}: {2}',
	'Comment by {0}, {1}: {2}': 'Comentario de {0}, {1}: {2}',
	'Asked by {0}, {1}: {2}': 'Preguntado por {0}, {1}: {2}',
	'Signed by {0} (their own question; this shop allows it), {1}: {2}':
		'Firmado por {0} (pregunta propia; este taller lo permite), {1}: {2}',
	'Signing is for the leads of this shop. Ask one of them with "/log ask-lead {0}".':
		'Firmar corresponde a los responsables de este taller. Pregunta a uno con "/log ask-lead {0}".',
	'No. {0} is your own question: somebody else signs its answer.':
		'El n.º {0} es una pregunta tuya: su respuesta la firma otra persona.',
	'No. {0} was replaced by No. {1}: look at that one.': 'El n.º {0} fue sustituido por el n.º {1}: mira ese.',
	'No. {0} signed by {1}, {2}: {3}': 'N.º {0} firmado por {1}, {2}: {3}',
	'No. {0} signed by {1} (their own question; this shop allows it), {2}: {3}':
		'N.º {0} firmado por {1} (pregunta propia; este taller lo permite), {2}: {3}',
	'Rejecting is for the leads of this shop. You can say a word: "/log comment {0} TEXT".':
		'Rechazar corresponde a los responsables de este taller. Puedes comentar: "/log comment {0} TEXT".',
	'Say why: "/log reject {0} REASON".': 'Di por qué: "/log reject {0} REASON".',
	'No. {0} rejected by {1}: {2}': 'N.º {0} rechazado por {1}: {2}',
	'These rest on No. {0}: look at them again': 'Estas se apoyan en el n.º {0}: míralas otra vez',
	'Say what: "/log comment {0} TEXT".': 'Di qué: "/log comment {0} TEXT".',
	'No. {0}, comment by {1}: {2}': 'N.º {0}, comentario de {1}: {2}',
	'No. {0} is asked of the lead: it stands in "/log review" until it is signed or rejected.':
		'El n.º {0} queda preguntado al responsable: está en "/log review" hasta que se firme o se rechace.',
	'Only a lead can change that.': 'Eso solo lo cambia un responsable.',
	'Leads may now sign answers to their own questions; the signature says so.':
		'Los responsables pueden firmar ahora respuestas a sus propias preguntas; la firma lo dice.',
	'Nobody signs an answer to their own question.': 'Nadie firma una respuesta a su propia pregunta.',
	'Say the number of an answer: "/log {0} 128".': 'Di el número de una respuesta: "/log {0} 128".',
	'"{0}" is no number of an answer. {1}': '"{0}" no es el número de una respuesta. {1}',
	'Newest answers, {0}': 'Respuestas más recientes, {0}',
	'Newest answers by you, {0}': 'Respuestas más recientes tuyas, {0}',
	'Newest answers by {0}, {1}': 'Respuestas más recientes de {0}, {1}',
	'Answers: {0}, {1}': 'Respuestas: {0}, {1}',
	'Answers: {0} by you, {1}': 'Respuestas: {0}, tuyas, {1}',
	'Answers: {0} by {1}, {2}': 'Respuestas: {0}, de {1}, {2}',
	'{0}: none.': '{0}: ninguna.',
	'{0}: no more.': '{0}: no hay más.',
	'this channel': 'este canal',
	'another channel': 'otro canal',
	'all builds': 'todos los proyectos',
	'build "{0}"': 'proyecto "{0}"',
	'since {0}, {1}': 'desde {0}, {1}',
	'until {0}, {1}': 'hasta {0}, {1}',
	'No. {0}, {1}, {2}, {3}\n{4}': 'N.º {0}, {1}, {2}, {3}\n{4}',
	'No. {0}, {1}, forgotten, {2}\n{3}': 'N.º {0}, {1}, olvidado, {2}\n{3}',
	'Not all is looked through yet: of {0} answers down to No. {1}, {2} fit.':
		'Aún no está todo revisado: de {0} respuestas hasta el n.º {1}, encajan {2}.',
	'More: /log more {0}': 'Más: /log more {0}',
	More: 'Más',
	'"{0}" could be two days. Write the year first, such as 2026-05-04.':
		'"{0}" puede ser dos días. Escribe primero el año, como 2026-05-04.',
	'"{0}" is no day of the calendar.': '"{0}" no es un día del calendario.',
	'There are {0} people called "{1}" here: say which by the id, {2}.':
		'Aquí hay {0} personas llamadas "{1}": di cuál por su identificador, {2}.',
	'I know nobody called "{0}" here. Mention them, or let them ask me something first.':
		'No conozco aquí a nadie llamado "{0}". Menciónalo, o que me pregunte algo primero.',
	'Nothing is unsigned in {0}.': 'Nada queda sin firmar: {0}.',
	'{0} unsigned in {1}': '{0} sin firmar: {1}',
	'Rejected, and nothing in their place yet: {0}': 'Rechazadas, y aún nada en su lugar: {0}',
	'DANGER {0}': 'PELIGRO {0}',
	'warning {0}': 'advertencia {0}',
	'climate: {0}': 'clima: {0}',
	'energy: {0}': 'energía: {0}',
	'structure: {0}': 'estructura: {0}',
	'water: {0}': 'agua: {0}',
	'weight: {0}': 'peso: {0}',
	'wiring: {0}': 'cableado: {0}',
	'other: {0}': 'otros: {0}',
	'Only the newest {0} answers were looked at; older ones: "/log show unsigned"':
		'Solo se miraron las {0} respuestas más recientes; las anteriores: "/log show unsigned"',
	'and {0} more: "/log show unsigned"': 'y {0} más: "/log show unsigned"',
	'No. {0} has no calculation: "/log show {1}" shows what was said.':
		'El n.º {0} no tiene cálculo: "/log show {1}" muestra lo que se dijo.',
	'Build "{0}" is not signed as a whole. A lead says "/log sign build".':
		'El proyecto "{0}" no está firmado en su conjunto. Un responsable dice "/log sign build".',
	'Build "{0}" is signed as a whole by {1} (No. {2}), as it stood at No. {3}: {4}':
		'El proyecto "{0}" está firmado en su conjunto por {1} (n.º {2}), tal como estaba en el n.º {3}: {4}',
	'The signature under build "{0}" as a whole is OUT OF DATE: {1} signed it as it stood at No. {2}; changed since by {3}':
		'La firma del proyecto "{0}" en su conjunto está SIN ACTUALIZAR: {1} lo firmó tal como estaba en el n.º {2}; cambiado desde entonces por {3}',
	'Open when it was signed: {0}': 'Abierto cuando se firmó: {0}',
	'No. {0} and later ones': 'n.º {0} y posteriores',
	'No. {0} and {1} more': 'n.º {0} y {1} más',
	'{0} not checked ({1})': '{0} sin revisar ({1})',
	'{0} asked of the lead ({1})': '{0} preguntado al responsable ({1})',
	'{0} rejected ({1})': '{0} rechazado ({1})',
	'{0} out of date ({1})': '{0} sin actualizar ({1})',
	'1 danger ({0})': '1 peligro ({0})',
	'{0} dangers ({1})': '{0} peligros ({1})',
	'Signing a build is for the leads of this shop.':
		'Firmar un proyecto corresponde a los responsables de este taller.',
	'There is nothing of build "{0}" to sign yet.': 'Del proyecto "{0}" aún no hay nada que firmar.',
	'Build "{0}" is not signed: {1} is your own question, whose answer somebody else signs first.':
		'El proyecto "{0}" no se firma: {1} es una pregunta tuya, cuya respuesta firma antes otra persona.',
	'Build "{0}" is not signed: {1} are your own questions, whose answers somebody else signs first.':
		'El proyecto "{0}" no se firma: {1} son preguntas tuyas, cuyas respuestas firma antes otra persona.',
	'Build "{0}" is not signed, for there is still open: {1}. Settle it first, or say why it is signed all the same: "/log sign build anyway REASON".':
		'El proyecto "{0}" no se firma, porque queda abierto: {1}. Resuélvelo antes, o di por qué se firma a pesar de ello: "/log sign build anyway REASON".',
	'Say why it is signed all the same: "/log sign build anyway REASON".':
		'Di por qué se firma a pesar de ello: "/log sign build anyway REASON".',
	'Build "{0}" signed as a whole by {1}, {2} (No. {3}): {4}':
		'Proyecto "{0}" firmado en su conjunto por {1}, {2} (n.º {3}): {4}',
	'It covers the log up to No. {0}, hash {1}': 'Abarca el registro hasta el n.º {0}, suma de control {1}',
	'In this log No. {0} has another hash, {1}: it was chained anew since, as an import under another name does. Compare it with the log that was signed.':
		'En este registro el n.º {0} tiene otra suma de control, {1}: desde entonces se encadenó de nuevo, como hace una importación con otro nombre. Compáralo con el registro que se firmó.',
	'{0} of {1} answers have a signature that holds; {2}': '{0} de {1} respuestas tienen una firma válida; {2}',
	'{0}; among them answers to their own questions, as this shop allows':
		'{0}; entre ellas respuestas a preguntas propias, como permite este taller',
	'nothing is open': 'nada queda abierto',
	'open all the same: {0}': 'abierto a pesar de ello: {0}',
	'Whatever changes the build from now on puts this signature out of date.':
		'Cualquier cambio del proyecto desde ahora deja esta firma sin actualizar.',
	'No. {0} is no answer: it is the signature under No. {1}, by {2}':
		'El n.º {0} no es una respuesta: es la firma bajo el n.º {1}, de {2}',
	'No. {0} is no answer: it is the rejection of No. {1}, by {2}':
		'El n.º {0} no es una respuesta: es el rechazo de el n.º {1}, de {2}',
	'No. {0} is no answer: it is a comment on No. {1}, by {2}':
		'El n.º {0} no es una respuesta: es un comentario sobre el n.º {1}, de {2}',
	'No. {0} is no answer: it asks the lead about No. {1}, by {2}':
		'El n.º {0} no es una respuesta: pregunta al responsable por el n.º {1}, de {2}',
	'It says: {0}': 'Dice: {0}',
	'About {0}': 'Sobre {0}',
	'No. {0} is no answer: it tells of build "{1}", by {2}':
		'El n.º {0} no es una respuesta: describe el proyecto "{1}", de {2}',
	'No. {0} is no answer: a channel was set to build "{1}", by {2}':
		'El n.º {0} no es una respuesta: un canal se puso en el proyecto "{1}", por {2}',
	'No. {0} is no answer: something was refused to {1}':
		'El n.º {0} no es una respuesta: se denegó algo a {1}',
	'No. {0} is no answer: a setting was changed by {1}':
		'El n.º {0} no es una respuesta: un ajuste fue cambiado por {1}',
	'No. {0} is no answer: somebody was forgotten on {1}':
		'El n.º {0} no es una respuesta: alguien fue olvidado el {1}',
	'Name and words are erased from entries of theirs: {0}.':
		'Nombre y palabras borrados de entradas suyas: {0}.',
	'No. {0} is kept in the log in a form that I can\'t read: kind "{1}", by {2}':
		'El n.º {0} está en el registro en una forma que no puedo leer: clase "{1}", de {2}',
	'No. {0} is no answer: it is the signature under build "{1}" as a whole, by {2}':
		'El n.º {0} no es una respuesta: es la firma del proyecto "{1}" en su conjunto, de {2}',
	'Among them are answers to their own questions, as this shop allows.':
		'Entre ellas hay respuestas a preguntas propias, como permite este taller.',
	'Nothing of the build has changed since: it holds.': 'Nada del proyecto ha cambiado desde entonces: vale.',
	'OUT OF DATE: the build was changed since by {0}':
		'SIN ACTUALIZAR: el proyecto fue cambiado desde entonces por {0}',
	'It left the van as it was.': 'Dejó la furgoneta como estaba.',
	"It is kept in a form that I can't read.": 'Está guardado en una forma que no puedo leer.',
	'Leads may sign answers to their own questions.':
		'Los responsables pueden firmar respuestas a sus propias preguntas.',
	'The daily digest comes at {0}.': 'El resumen diario llega a las {0}.',
	'{0} was made a lead.': 'Nuevo responsable: {0}.',
	"The lead's right was taken from {0}.": 'Se retiró el derecho de responsable a {0}.',
	"Only an administrator says who is a lead: whoever the bot's own configuration names as one.":
		'Solo un administrador dice quién es responsable: aquel a quien nombra la configuración del bot.',
	'You are an administrator, and so a lead already.': 'Eres administrador, y por tanto ya responsable.',
	'Another administrator has to take your right away, so that one always stays.':
		'Tu derecho te lo tiene que retirar otro administrador, para que siempre quede uno.',
	'{0} is a lead already.': 'Ya es responsable: {0}.',
	'{0} is no lead already.': 'Ya no es responsable: {0}.',
	'{0} is now a lead and may sign.': 'Ahora es responsable y puede firmar: {0}.',
	'{0} is no lead any more, from this moment on. What was signed stays signed.':
		'Deja de ser responsable, desde este momento: {0}. Lo firmado sigue firmado.',
	'Others are changing the list of leads right now. Please say it again.':
		'Otros están cambiando ahora mismo la lista de responsables. Dilo otra vez, por favor.',
	'{0}: lead': '{0}: responsable',
	'{0}: no lead any more': '{0}: ya no es responsable',
	'No leads were added here.': 'Aquí no se ha añadido ningún responsable.',
	'Leads said here': 'Responsables nombrados aquí',
	"Administrators, and leads with them, are those whom the bot's own configuration names.":
		'Administradores, y con ello responsables, son los que nombra la configuración del bot.',
	"I keep no entry of yours in this shop's log.":
		'No guardo ninguna entrada tuya en el registro de este taller.',
	'You are a lead here.': 'Aquí eres responsable.',
	'You are a lead of this shop.': 'Eres responsable de este taller.',
	"I keep {0} entries of yours in this shop's log, from {1} to {2}.":
		'Guardo {0} entradas tuyas en el registro de este taller, del {1} al {2}.',
	'Among them: {0}, {1}, in {2}.': 'Entre ellas: {0}, {1}, en {2}.',
	'Among them: {0}, {1}, in {2}. Builds: {3}.': 'Entre ellas: {0}, {1}, en {2}. Proyectos: {3}.',
	'1 signature': '1 firma',
	'{0} signatures': '{0} firmas',
	'1 channel': '1 canal',
	'{0} channels': '{0} canales',
	'With each: your name ({0}), your id ({1}), your words as typed. That part can be erased.':
		'Con cada una: tu nombre ({0}), tu identificador ({1}), tus palabras tal como las escribiste. Esa parte se puede borrar.',
	'For good: the calculation, when and where it was asked, and a pseudonym that is the same in all of them.':
		'Para siempre: el cálculo, cuándo y dónde se preguntó, y un seudónimo que es el mismo en todas.',
	'Not in my hands: the messages in the channel itself, and backups and exports made before.':
		'No está en mis manos: los mensajes del propio canal, y las copias y exportaciones hechas antes.',
	'To have your name and words erased: "/log forget-me".':
		'Para que se borren tu nombre y tus palabras: "/log forget-me".',
	"There is nothing to erase: I keep no entry of yours in this shop's log.":
		'No hay nada que borrar: no guardo ninguna entrada tuya en el registro de este taller.',
	"This erases your name, your id and your words as typed from {0} entries. It can't be undone.":
		'Esto borra tu nombre, tu identificador y tus palabras tal como las escribiste de {0} entradas. No se puede deshacer.',
	'The calculations stay, and the log still verifies.':
		'Los cálculos quedan, y el registro sigue siendo verificable.',
	'Your signatures stay as signatures of somebody who was forgotten.':
		'Tus firmas quedan como firmas de alguien que fue olvidado.',
	'What waits to be shown to you is dropped. Backups and exports made before are not in my hands.':
		'Lo que espera mostrarse a ti se descarta. Las copias y exportaciones hechas antes no están en mis manos.',
	'To do it: the button, or "/log forget-me confirm".': 'Para hacerlo: el botón, o "/log forget-me confirm".',
	'Done: your name, your id and your words are erased from {0} entries. The log still verifies.':
		'Hecho: tu nombre, tu identificador y tus palabras están borrados de {0} entradas. El registro sigue siendo verificable.',
	"One thing stays, your id alone: that an administrator took the lead's right away from it.":
		'Una cosa queda, solo tu identificador: que un administrador le retiró el derecho de responsable.',
	'If you write to me again, that is kept anew.': 'Si vuelves a escribirme, eso se guarda de nuevo.',
	'Forget me': 'Olvídame',
	'Yes, forget me': 'Sí, olvídame',
	'To look at: {0} unsigned, {1} with a danger, {2} asked of the lead':
		'Por mirar: {0} sin firmar, {1} con un peligro, {2} preguntadas al responsable',
	'Without a build: {0}': 'Sin proyecto: {0}',
	'Nothing is unsigned in this shop.': 'En este taller nada queda sin firmar.',
	'The daily digest is off. A lead says "/log digest on 07:00".':
		'El resumen diario está apagado. Un responsable dice "/log digest on 07:00".',
	'The daily digest is off.': 'El resumen diario está apagado.',
	'The daily digest comes at {0} into {1}.': 'El resumen diario llega a las {0}: {1}.',
	'The daily digest is switched by a lead.': 'El resumen diario lo enciende o apaga un responsable.',
	'"{0}" is no time of day. Say it as 07:00 or 16:30.':
		'"{0}" no es una hora del día. Dila como 07:00 o 16:30.',
	'From now on what is unsigned in the whole shop comes into this channel at {0}, on days when there is something. I have to be a member of the channel.':
		'Desde ahora lo que queda sin firmar en todo el taller llega a este canal a las {0}, los días en que haya algo. Tengo que ser miembro del canal.',
	'No. {0} ({1}) has no picture. Runs, payloads, simulations, solar answers with a need and gas springs with both mounts have one.':
		'El n.º {0} ({1}) no tiene imagen. La tienen los recorridos, las cargas útiles, las simulaciones, las respuestas solares con una necesidad y los resortes de gas con sus dos anclajes.',
	'There is no picture "{0}" of {1}. There is {2}.': 'No hay imagen "{0}" de {1}. Hay {2}.',
	'Picture of {0}: {1}': 'Imagen de {0}: {1}',
	'Pictures of {0}: {1}': 'Imágenes de {0}: {1}',
	'Build "{0}" has no picture yet: tell its battery bank for the wiring, its size and weights for the axles.':
		'El proyecto "{0}" aún no tiene imagen: cuenta su banco de baterías para el cableado, su tamaño y sus pesos para los ejes.',
	'No. {0} is replaced by whoever asked it, or by a lead.':
		'El n.º {0} lo sustituye quien lo preguntó, o un responsable.',
	'No. {0} was replaced by No. {1} already: change that one.':
		'El n.º {0} ya fue sustituido por el n.º {1}: cambia ese.',
	'Say what changes: "/log replace {0} and at 20 ft", or the whole question.':
		'Di qué cambia: "/log replace {0} and at 20 ft", o la pregunta entera.',
	'No. {0} stays.': 'El n.º {0} queda como está.',
	'No. {0} stays: {1}': 'El n.º {0} queda como está: {1}',
	'It replaces No. {0}, which stays in the log.': 'Sustituye al n.º {0}, que queda en el registro.',
	"Posting the log's root is for the leads of this shop.":
		'Publicar la raíz del registro corresponde a los responsables de este taller.',
	'The log of this shop has no entries yet.': 'El registro de este taller aún no tiene entradas.',
	"Root of this shop's log: {0} entries, {1}": 'Raíz del registro de este taller: {0} entradas, {1}',
	'Head {0}': 'Cabeza {0}',
	'Whoever keeps this message can show later that none of these {0} entries was changed or taken away.':
		'Quien guarde este mensaje puede mostrar más tarde que ninguna de estas {0} entradas fue cambiada ni quitada.',
	'These are {0} calculation sheets of build "{1}"; a PDF takes {2}. Export it in {3} pieces, by the numbers of the answers: {4}. HTML, CSV and JSON take all of them in one file. Say "/log export pdf {5}".':
		'Son {0} hojas de cálculo del proyecto "{1}"; un PDF admite {2}. Expórtalo en {3} partes, por los números de las respuestas: {4}. HTML, CSV y JSON las admiten todas en un archivo. Di "/log export pdf {5}".',
	'This is the book of one build, for programs to read. It can\'t be read back into a log: for that take the whole shop, with "pnpm log export FILE", and bring it in with "pnpm log import FILE".':
		'Esta es la carpeta de un proyecto, para que la lean programas. No se puede volver a leer en un registro: para eso toma el taller entero, con "pnpm log export FILE", e intégralo con "pnpm log import FILE".',
	"the book of the channel's build as a file": 'la carpeta del proyecto del canal como archivo',
	'one answer with its working, or what else was kept; as a calculation sheet':
		'una respuesta con su cálculo, u otra entrada; como hoja de cálculo',
	'answers: "wire by Robin last week", "unsigned", "build heron", "roof fan", 2026-05-04':
		'respuestas: "wire by Robin last week", "unsigned", "build heron", "roof fan", 2026-05-04',
	'what is unsigned in the build, dangers first':
		'lo que queda sin firmar en el proyecto, primero los peligros',
	'a lead signs ("sign build": the whole build), takes that back, or rejects; all comment or ask the lead':
		'un responsable firma ("sign build": el proyecto entero), lo retira o rechaza; todos comentan o preguntan al responsable',
	'asks it again with a change; the old one stays, struck through':
		'la pregunta otra vez con un cambio; la anterior queda, tachada',
	'who may sign; what is unsigned, daily into this channel':
		'quién puede firmar; lo que queda sin firmar, a diario en este canal',
	'what is kept about you; has your name and words erased':
		'lo que se guarda de ti; hace borrar tu nombre y tus palabras',
	'walks the whole log and says whether it is unbroken': 'recorre todo el registro y dice si está íntegro',
	'this channel works on that build (the van); its answers are kept under that name':
		'este canal trabaja en ese proyecto (la furgoneta); sus respuestas se guardan con ese nombre',
	'tells the equipment of the van, or corrects it ("the fridge is 60 W", "drop the cooktop")':
		'cuenta el equipo de la furgoneta, o lo corrige ("the fridge is 60 W", "drop the cooktop")',
	'what does not fit together, dangers first, and what is not known':
		'lo que no encaja, primero los peligros, y lo que no se sabe',
	'the equipment of the build, its newest answers and those out of date':
		'el equipo del proyecto, sus respuestas más recientes y las que están sin actualizar',
	'works out again what is out of date': 'calcula de nuevo lo que está sin actualizar',
	"the shop's builds": 'los proyectos del taller',
	'{0} (this channel)': '{0} (este canal)',
	'signature withdrawn': 'firma retirada',
	'signature withdrawn: {0}': 'firma retirada: {0}',
	'Withdrawn by {0}, {1}: {2}': 'Retirado por {0}, {1}: {2}',
	'Withdrawing a signature is for the leads of this shop.':
		'Retirar una firma es cosa de los responsables de este taller.',
	'No. {0} has no signature that could be withdrawn.':
		'El n.º {0} no tiene ninguna firma que se pueda retirar.',
	'Say why: "/log withdraw {0} REASON".': 'Di por qué: "/log withdraw {0} REASON".',
	'The signature under No. {0} is withdrawn by {1}: {2}':
		'La firma bajo el n.º {0} queda retirada por {1}: {2}',
	'It stands in "/log review" until it is signed again or rejected: {0}':
		'Está en "/log review" hasta que se firme de nuevo o se rechace: {0}',
	'Build "{0}" has no signature as a whole to withdraw.':
		'El proyecto "{0}" no tiene ninguna firma en su conjunto que retirar.',
	'The signature under build "{0}" as a whole was withdrawn already (No. {1}).':
		'La firma del proyecto "{0}" en su conjunto ya está retirada (n.º {1}).',
	'Say why it is withdrawn: "/log withdraw build REASON".':
		'Di por qué se retira: "/log withdraw build REASON".',
	'The signature under build "{0}" as a whole (No. {1}) is WITHDRAWN by {2} (No. {3})':
		'La firma del proyecto "{0}" en su conjunto (n.º {1}) está RETIRADA por {2} (n.º {3})',
	'The signature under build "{0}" as a whole (No. {1}) is WITHDRAWN by {2} (No. {3}): {4}':
		'La firma del proyecto "{0}" en su conjunto (n.º {1}) está RETIRADA por {2} (n.º {3}): {4}',
	'A lead signs it anew with "/log sign build".': 'Un responsable lo firma de nuevo con "/log sign build".',
	'No. {0} is no answer: it withdraws the signature under No. {1}, by {2}':
		'El n.º {0} no es una respuesta: retira la firma bajo el n.º {1}, de {2}',
	'No. {0} is no answer: it withdraws the signature under build "{1}" as a whole (No. {2}), by {3}':
		'El n.º {0} no es una respuesta: retira la firma del proyecto "{1}" en su conjunto (n.º {2}), de {3}',
	'WITHDRAWN by {0}, {1} (No. {2})': 'RETIRADA por {0}, {1} (n.º {2})',
	'No longer valid: rejected by {0} ({1}): {2}': 'Ya no vale: rechazado por {0} ({1}): {2}',
	'No longer valid: replaced by No. {0} ({1}).': 'Ya no vale: sustituido por el n.º {0} ({1}).',
	'No longer valid: replaced by No. {0}: {1}': 'Ya no vale: sustituido por el n.º {0}: {1}',
	'Nothing was done: answers are judged one by one, each by its number. "/log review" lists what is unsigned; "/log sign build" signs the build as a whole.':
		'No se ha hecho nada: las respuestas se juzgan una a una, cada cual por su número. "/log review" muestra lo que queda sin firmar; "/log sign build" firma el proyecto en su conjunto.',
};
