import type { Phrasebook } from '@lugbook/core';

/** What the conversation itself says, in Spanish. */
export const spanish: Phrasebook = {
	DANGER: 'PELIGRO',
	Warning: 'Advertencia',
	Note: 'Nota',
	Caution: 'Precaución',
	' or ': ' o ',
	' and ': ' y ',
	'Not used: {0}.': 'No usado: {0}.',
	'Not used: {0}': 'No usado: {0}',
	'Read: {0}.': 'Leído: {0}.',
	'{0} one way': '{0} de ida',
	'Good {0}.': 'Vale {0}.',
	' and {0} more (see the working)': ' y {0} más (en el cálculo)',
	'Assumed, please confirm: {0}.': 'Supuesto, confírmalo: {0}.',
	'Assumed: {0}.': 'Supuesto: {0}.',
	'No. {0}': 'N.º {0}',
	'No. {0} in build "{1}"': 'N.º {0} en el proyecto "{1}"',
	'from build "{0}"': 'del proyecto "{0}"',
	'From build "{0}"': 'Del proyecto "{0}"',
	'Rests on {0}: {1}': 'Se apoya en {0}: {1}',
	'Assumed {0} {1}: {2}': 'Supuesto {0} {1}: {2}',
	'Sources: {0}': 'Fuentes: {0}',
	'Show working': 'Ver cálculo',
	Change: 'Cambiar',
	'Ask the lead': 'Preguntar al responsable',
	'Working of No. {0}: {1}': 'Cálculo del n.º {0}: {1}',
	'{0}: {1} governs': '{0}: decide {1}',
	'{0} would do too: {1}': '{0} también serviría: {1}',
	'{0} would not do: {1}': '{0} no serviría: {1}',
	'Is this about {0}, or {1}?': '¿Se trata de {0}, o de {1}?',
	'That message is too long for me: I read up to 2,000 characters. Send the question alone.':
		'Ese mensaje es demasiado largo para mí: leo hasta 2000 caracteres. Envía solo la pregunta.',
	'Happy to help. Ask me a sizing question, such as "{0}".':
		'Con gusto. Hazme una pregunta de dimensionado, como "{0}".',
	'Ask me a sizing question, such as "{0}".': 'Hazme una pregunta de dimensionado, como "{0}".',
	'I could not tell what to size. Say it with the numbers, such as "{0}".':
		'No he entendido qué hay que dimensionar. Dilo con los números, como "{0}".',
	'I read two values for the {0}: {1} and {2}. Which one is meant?':
		'Leo dos valores para {0}: {1} y {2}. ¿Cuál es?',
	'I read several values for the {0}: {1}. Which one is meant?':
		'Leo varios valores para {0}: {1}. ¿Cuál es?',
	'Is "{0}" fed from the mains ({1}), or is it a 12 V air conditioner?':
		'¿"{0}" se alimenta de la red ({1}), o es un aire acondicionado de 12 V?',
	'"{0}" is taken as {1}.': '"{0}" se toma como {1}.',
	'"{0}" is taken as what it was before.': '"{0}" se toma como lo que era antes.',
	'"{0}" is a range: its smaller end is taken, the unfavourable one.':
		'"{0}" es un intervalo: se toma su extremo menor, el desfavorable.',
	'"{0}" is a range: its larger end is taken.': '"{0}" es un intervalo: se toma su extremo mayor.',
	'The length was given there and back: half of it is the one-way length.':
		'La longitud se dio de ida y vuelta: la mitad es la longitud de ida.',
	'{0} is the cooling; its draw is taken as {1} W ({2} Btu/Wh).':
		'{0} es el frío que produce; su consumo se toma como {1} W ({2} Btu/Wh).',
	'{0} is taken as {1} ({2}).': '{0} se toma como {1} ({2}).',
	'Several places are named; {0} is taken, the coldest of them (also {1}).':
		'Se nombran varios lugares; se toma {0}, el más frío (también {1}).',
	'I read "{0}". {1}': 'Leo "{0}". {1}',
	'{0} has no input "{1}".': '{0} no tiene un dato "{1}".',
	'The {0} is missing.': 'Falta el dato: {0}.',
	'The {0} must be from {1} to {2}.': 'Para {0} vale de {1} a {2}.',
	'The {0} must be a whole number from {1} to {2}.': 'Para {0} vale un número entero de {1} a {2}.',
	'The {0} is one of: {1}.': 'Para {0} vale uno de estos: {1}.',
	'The {0} is yes or no.': 'Para {0} vale sí o no.',
	'The {0} is a size such as 4 AWG, 2/0 AWG or 35 mm².':
		'Para {0} vale una sección como 4 AWG, 2/0 AWG o 35 mm².',
	'The {0} is a name of up to 200 characters.': 'Para {0} vale un nombre de hasta 200 caracteres.',
	'The {0} is the name of a place, such as "Flagstaff".':
		'Para {0} vale el nombre de un lugar, como "Flagstaff".',
	'The {0} is a month, such as "March".': 'Para {0} vale un mes, como "marzo".',
	'The {0} holds 1 to {1} items.': 'Para {0} valen de 1 a {1} elementos.',
	'I will not help to defeat a protective device: it is there because what it protects can burn or kill.':
		'No ayudo a anular un dispositivo de protección: está ahí porque lo que protege puede arder o matar.',
	'Find out why it opens: measure the current, look for a short or a loose lug, and ask me for the right conductor and device together.':
		'Averigua por qué abre: mide la corriente, busca un cortocircuito o un terminal flojo, y pregúntame a la vez por el conductor y la protección correctos.',
	'Neutral and ground are joined at one place only, at the source that feeds the van at that moment; a second bond puts current on the metal of the van.':
		'Neutro y tierra se unen en un solo lugar, en la fuente que alimenta la furgoneta en ese momento; una segunda unión pone corriente en el metal de la furgoneta.',
	'Use an inverter or transfer switch that makes and breaks the bond by itself, and have a licensed electrician test it.':
		'Usa un inversor o conmutador de transferencia que haga y deshaga la unión por sí mismo, y haz que lo pruebe un electricista autorizado.',
	'Seats, belts and their anchorages are safety equipment of the vehicle: they are tested as a whole and not sized from a chat.':
		'Asientos, cinturones y sus anclajes son equipo de seguridad del vehículo: se ensayan como un todo y no se dimensionan en un chat.',
	'Use a certified seat and anchorage kit for that van, fitted as its approval says, or a certified engineer.':
		'Usa un conjunto certificado de asiento y anclaje para esa furgoneta, montado como dice su homologación, o un ingeniero certificado.',
	'I do not design fuel-gas piping: a wrong joint or size leaks or starves a burner.':
		'No diseño tuberías de gas combustible: una unión o medida equivocada fuga o deja sin gas un quemador.',
	'Have a licensed gas fitter design, fit and pressure-test it under the local code, with a gas and a carbon-monoxide alarm.':
		'Que un instalador de gas autorizado la diseñe, monte y pruebe a presión según la norma local, con alarma de gas y de monóxido de carbono.',
	"I give no answer that I can't keep: {0}.": 'No doy una respuesta que no pueda guardar: {0}.',
	'the disk that holds the log is full. Nothing was saved: free some room and ask again':
		'el disco del registro está lleno. No se guardó nada: libera espacio y pregunta otra vez',
	'the log can only be read, not written. Nothing was saved: make the file writable and ask again':
		'el registro solo se puede leer, no escribir. No se guardó nada: permite escribir en el archivo y pregunta otra vez',
	'another program is holding the log. Nothing was saved: ask again in a moment':
		'otro programa tiene ocupado el registro. No se guardó nada: pregunta otra vez en un momento',
	"the log's database does not answer. Ask again in a moment: a question that was kept is not kept twice":
		'la base de datos del registro no responde. Pregunta otra vez en un momento: una pregunta guardada no se guarda dos veces',
	'the log does not match its own hashes. Nothing was saved: run "pnpm log verify" before going on':
		'el registro no coincide con sus propias sumas de control. No se guardó nada: ejecuta "pnpm log verify" antes de seguir',
	"this message can't be kept as it stands. Nothing was saved: shorten it or leave odd characters out":
		'este mensaje no se puede guardar tal como está. No se guardó nada: acórtalo o quita caracteres raros',
	'the address of the log is wrong. Nothing was saved: check DATABASE_URL':
		'la dirección del registro está mal. No se guardó nada: comprueba DATABASE_URL',
	"the log can't be opened. Nothing was saved: see the program's own messages for the reason":
		'no se puede abrir el registro. No se guardó nada: mira el motivo en los mensajes del programa',
	'Ask in words, as you would ask across the shop:': 'Pregunta con palabras, como lo harías en el taller:',
	"Lengths are one way unless you say round trip. Units as you like: 12', 3.5m, 2/0, 35mm2.":
		"Las longitudes son de ida si no dices ida y vuelta. Unidades a tu gusto: 12', 3.5m, 2/0, 35mm2.",
	'In the thread go on: "and at 20 ft?", "10% is fine", "what about 24 V", "why", "show the working".':
		'En el hilo sigue así: "y a 20 ft?", "10% vale", "y con 24 V", "por qué", "desarrollo".',
	'One topic with named inputs: topic, then the inputs in words.':
		'Un tema con sus datos: el tema y después los datos con palabras.',
	'Topics: {0}.': 'Temas: {0}.',
	'Name a topic, then its inputs.': 'Indica un tema y después sus datos.',
	'"{0}" is no topic of mine.': '"{0}" no es un tema mío.',
	'Done already, as No. {0}.': 'Ya está hecho, como n.º {0}.',
	'No answer of this channel waits to be shown. "/log resend 128" shows one again.':
		'Ninguna respuesta de este canal espera mostrarse. "/log resend 128" muestra una otra vez.',
	'Also waiting to be shown: {0}.': 'También esperan mostrarse: {0}.',
	"There is no answer No. {0} in this shop's log.": 'No hay respuesta n.º {0} en el registro de este taller.',
	'The log is unbroken: {0} entries.': 'El registro está íntegro: {0} entradas.',
	'The log is broken: {0}.': 'El registro está roto: {0}.',
	'I don\'t know "{0}".': 'No conozco "{0}".',
	'Example: {0}': 'Ejemplo: {0}',
	'No words in this answer': 'Respuesta sin palabras',
	'I take this to be about {0}, where "{1}" has no place. Leave it out, or say it another way?':
		'Entiendo que se trata de {0}, donde "{1}" no tiene lugar. ¿Lo quitas, o lo dices de otro modo?',
	'water an accumulator gives between pump starts':
		'el agua que da un acumulador entre arranques de la bomba',
	'charging from the alternator': 'la carga con el alternador',
	'solar strings and charge controller': 'las ramas solares y el regulador de carga',
	'battery bank': 'banco de baterías',
	'rail, crossbeam or shelf in bending': 'un larguero, travesaño o estante a flexión',
	'daily energy budget': 'el balance diario de energía',
	'heat that comes in and the air conditioner it takes':
		'el calor que entra y el aire acondicionado que pide',
	'time to empty a tank by gravity': 'el tiempo de vaciar un depósito por gravedad',
	'a tank, pipe or pump bay in the cold': 'un depósito, tubería o compartimento de bomba con frío',
	'fuse for a conductor and a load': 'el fusible de un conductor y una carga',
	'heat loss of the van and the heater it needs':
		'la pérdida de calor de la furgoneta y el calefactor que necesita',
	'energy of hot water and what it takes from the bank':
		'la energía del agua caliente y lo que toma del banco',
	'time to inflate tires': 'el tiempo de inflar neumáticos',
	'inverter, its cable and fuse': 'el inversor, su cable y su fusible',
	'air that keeps the inside dry': 'el aire que mantiene seco el interior',
	'voltages in the whole distribution': 'las tensiones de toda la distribución',
	'weight ledger, axle loads and stability': 'la lista de pesos, las cargas por eje y la estabilidad',
	'pressure lost in a water pipe': 'la presión perdida en una tubería de agua',
	'bolts that hold an item aboard': 'los pernos que sujetan una pieza a bordo',
	'how long a bank lasts': 'cuánto dura un banco',
	'what may run on shore power': 'lo que puede funcionar con corriente exterior',
	'prospective short-circuit current': 'la corriente de cortocircuito prevista',
	'energy hour by hour': 'la energía hora por hora',
	'solar yield': 'la producción solar',
	'gas spring for a lid or door': 'el resorte de gas de una tapa o puerta',
	'days of fresh and gray water': 'los días de agua limpia y aguas grises',
	'tires against the axle load and the cold': 'los neumáticos frente a la carga del eje y el frío',
	'fan, air changes and the intake they need':
		'el ventilador, las renovaciones de aire y la entrada que piden',
	'conductor size and protection for one run': 'la sección y la protección de un recorrido',
	'"/build rerun" works them out again.': '"/build rerun" las calcula de nuevo.',
	'"/build rerun" works it out again.': '"/build rerun" la calcula de nuevo.',
	'I found no equipment in that.': 'No he encontrado ningún equipo en eso.',
	'No build is chosen for this channel. Say "/build use NAME".':
		'Este canal no tiene proyecto elegido. Di "/build use NAME".',
	'Then send this again:': 'Después vuelve a enviar esto:',
	'That tells of a van. {0}': 'Eso describe una furgoneta. {0}',
	'That description is too long for me: send it in two parts.':
		'Esa descripción es demasiado larga para mí: envíala en dos partes.',
	'The rest is as it was: "/build show" has all of it.':
		'Lo demás sigue como estaba: "/build show" lo tiene todo.',
	'This shop has no build yet. Say "/build use NAME".':
		'Este taller aún no tiene proyectos. Di "/build use NAME".',
	'{0} of this shop:': '{0} de este taller:',
	'1 build': '1 proyecto',
	'{0} builds': '{0} proyectos',
	'1 piece': '1 pieza',
	'{0} pieces': '{0} piezas',
	'1 answer': '1 respuesta',
	'{0} answers': '{0} respuestas',
	'1 question': '1 pregunta',
	'{0} questions': '{0} preguntas',
	'1 more question': '1 pregunta más',
	'{0} more questions': '{0} preguntas más',
	'1 danger': '1 peligro',
	'{0} dangers': '{0} peligros',
	'1 warning': '1 advertencia',
	'{0} warnings': '{0} advertencias',
	'1 note': '1 nota',
	'{0} notes': '{0} notas',
	'1 thing': '1 cosa',
	'{0} things': '{0} cosas',
	'{0} cleared': '{0} resueltos',
	'{0} new': '{0} nuevos',
	'{0} open': '{0} sin responder',
	'{0} settled': '{0} resueltas',
	'Better, no longer so: {0}': 'Mejor, ya no es así: {0}',
	'Worse, new: DANGER, {0}': 'Peor, nuevo: PELIGRO, {0}',
	'Worse, new: {0}': 'Peor, nuevo: {0}',
	'Build "{0}" as understood: {1}': 'Proyecto "{0}" según lo entendido: {1}',
	'Build "{0}": {1}, {2} out of date': 'Proyecto "{0}": {1}, {2} sin actualizar',
	'Build "{0}": {1} not known': 'Proyecto "{0}": {1} sin conocer',
	'Build "{0}": {1}; {2} not known': 'Proyecto "{0}": {1}; {2} sin conocer',
	'Build "{0}": {1}': 'Proyecto "{0}": {1}',
	'Left open: {0}': 'Queda abierto: {0}',
	'Not known: {0}': 'No se sabe: {0}',
	'Nothing is known of build "{0}" yet. Tell it with "/build describe ...".':
		'Aún no se sabe nada del proyecto "{0}". Cuéntalo con "/build describe ...".',
	'Out of date now: {0}. "/build rerun" works it out again.':
		'Ahora sin actualizar: {0}. "/build rerun" la calcula de nuevo.',
	'Out of date now: {0}. "/build rerun" works them out again.':
		'Ahora sin actualizar: {0}. "/build rerun" las calcula de nuevo.',
	'Out of date: No. {0}, {1} ({2})': 'Sin actualizar: n.º {0}, {1} ({2})',
	'Said not to be there: {0}': 'Se dijo que no está: {0}',
	'Since No. {0}: {1}.': 'Desde el n.º {0}: {1}.',
	'Since No. {0}: nothing got better, nothing worse.': 'Desde el n.º {0}: nada mejoró, nada empeoró.',
	'Taken out: {0}': 'Quitado: {0}',
	'This channel now works on build "{0}".': 'Este canal trabaja ahora en el proyecto "{0}".',
	'and {0} more': 'y {0} más',
	'No answer of build "{0}" is out of date.': 'Ninguna respuesta del proyecto "{0}" está sin actualizar.',
	'Worked out again: {0} of build "{1}"': 'Calculado de nuevo: {0} del proyecto "{1}"',
	'No. {0} replaces No. {1}: {2}': 'N.º {0} sustituye al n.º {1}: {2}',
	'There is no {0} in this build.': 'No hay en este proyecto: {0}.',
	'No longer valid: replaced by No. {0}.': 'Ya no vale: sustituido por el n.º {0}.',
	'No longer valid: rejected.': 'Ya no vale: rechazado.',
	'The signature is out of date. {0}': 'La firma no está actualizada. {0}',
	'Writing the book of build "{0}": {1} %': 'Escribiendo la carpeta del proyecto "{0}": {1} %',
	'The book of build "{0}": {1}': 'La carpeta del proyecto "{0}": {1}',
	'There is nothing of build "{0}" in this shop\'s log yet.':
		'Del proyecto "{0}" aún no hay nada en el registro de este taller.',
	'"{0}" is no format of the book. It is {1}.': '"{0}" no es un formato de la carpeta. Los hay: {1}.',
	'"{0}" names no answers. Say the first and the last number: "{1}".':
		'"{0}" no nombra respuestas. Di el primer número y el último: "{1}".',
	'That is faster than I can follow. Give me a moment, then ask again.':
		'Vas más rápido de lo que puedo seguir. Dame un momento y pregunta otra vez.',
	'That message is too long for me. Send the question alone, or the description in parts.':
		'Ese mensaje es demasiado largo para mí. Envía solo la pregunta, o la descripción por partes.',
	'Something failed on my side, and I gave no answer. Please ask again.':
		'Algo falló de mi lado y no respondí. Pregunta otra vez, por favor.',
	'That stands in the channel already.': 'Eso ya está en el canal.',
	'Something failed on my side: I could not show the answer. I will try again by myself.':
		'Algo falló de mi lado: no pude mostrar la respuesta. Lo intentaré otra vez por mi cuenta.',
	'Something failed on my side: the answer is kept as No. {0}, but I could not show it. I will try again by myself; "/log resend {1}" shows it at once.':
		'Algo falló de mi lado: la respuesta está guardada con el n.º {0}, pero no pude mostrarla. Lo intentaré otra vez por mi cuenta; "/log resend {1}" la muestra enseguida.',
	'That button leads nowhere any more. Please type it instead.':
		'Ese botón ya no lleva a ninguna parte. Escríbelo, por favor.',
	'Part of the answer could not be shown: ask for it again by its number.':
		'No se pudo mostrar una parte de la respuesta: pídela otra vez por su número.',
	'Sent again, as it was not certain that it had arrived: you may have it twice.':
		'Enviado otra vez, porque no era seguro que hubiera llegado: puede que esté dos veces.',
	'The whole answer is in the file below.': 'La respuesta entera está en el archivo de abajo.',
	'There is more than fits here: ask for less at once.':
		'Hay más de lo que cabe aquí: pide menos de una vez.',
	'The file is for you alone: ask me in a direct message, and I send it there.':
		'El archivo es solo para ti: pídemelo en un mensaje directo y te lo envío allí.',
	'{0} could not be sent ({1}): the app needs the scope files:write and has to be in the channel.':
		'{0} no se pudo enviar ({1}): la aplicación necesita el permiso files:write y tiene que estar en el canal.',
	'{0} is larger than may be sent here; "pnpm export" writes it to a disk.':
		'{0} es mayor de lo que se puede enviar aquí; "pnpm export" lo escribe en un disco.',
	'Change an assumption': 'Cambiar una suposición',
	'I keep what is addressed to me here, with the name of who asked, in the log of this shop. I read nothing else. Your name and words can be erased on request; the calculation stays.':
		'Guardo en el registro de este taller lo que aquí va dirigido a mí, con el nombre de quien pregunta. No leo nada más. Tu nombre y tus palabras se borran a petición; el cálculo se queda.',
	'Save to a build': 'Guardar en un proyecto',
	'Show to the channel': 'Mostrar en el canal',
	Sign: 'Firmar',
	Reject: 'Rechazar',
	Comment: 'Comentar',
};
