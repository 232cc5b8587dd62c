import type { Phrasebook } from '../phrasebook.js';

/** What the cross-checks of a whole van find and ask. */
export const van: Phrasebook = {
	'the {0} it may be charged with': 'los {0} con los que se puede cargar',
	'the usual {0} for this bank': 'los {0} usuales para este banco',
	'The chargers together give {0} ({1}), over {2}: set them to {3} together, or add batteries.':
		'Los cargadores juntos dan {0} ({1}), más que {2}: ajústalos a {3} en total, o añade baterías.',
	'What current does the charger in the inverter give?': '¿Qué corriente da el cargador del inversor?',
	'Which chemistry has the bank: lithium iron phosphate, AGM, gel, flooded lead-acid?':
		'¿Qué química tiene el banco: litio-ferrofosfato, AGM, gel, plomo-ácido abierto?',
	'outside the heated space ': 'fuera del espacio calefactado ',
	'The lithium bank {0}may see {1} and nothing stops its charging below {2}: lithium plates in the cells, which ruins them and can start a fire. Take batteries with a low-temperature cut-off or a heater, or stop every charger by a cold switch.':
		'El banco de litio {0}puede llegar a {1} y nada impide cargarlo por debajo de {2}: el litio se deposita en las celdas, las arruina y puede provocar un incendio. Pon baterías con corte por baja temperatura o con calefacción, o detén todos los cargadores con un termostato de frío.',
	'Does the battery stop charging below freezing by itself, or is it heated?':
		'¿La batería deja de cargarse por sí sola bajo cero, o tiene calefacción?',
	'The bank is tied straight to the alternator: the house loads drain the starter battery. Put a relay or a DC-DC charger between them, fused at both ends.':
		'El banco está unido directamente al alternador: los consumos de la vivienda vacían la batería de arranque. Pon entre ellos un relé o un cargador CC-CC, con fusible en ambos extremos.',
	'A lithium bank tied straight to the alternator takes all it can give: the alternator overheats and can burn, and the starter battery is drained with it. Put a DC-DC charger between them, fused at both ends.':
		'Un banco de litio unido directamente al alternador toma todo lo que este da: el alternador se sobrecalienta y puede arder, y la batería de arranque se vacía con él. Pon entre ellos un cargador CC-CC, con fusible en ambos extremos.',
	'A relay between alternator and a lithium bank sets no limit to the current: the alternator overheats and can burn. Charge through a DC-DC charger sized to the alternator.':
		'Un relé entre el alternador y un banco de litio no limita la corriente: el alternador se sobrecalienta y puede arder. Carga con un cargador CC-CC dimensionado para el alternador.',
	'The DC-DC charging of {0} takes {1} from the {2} alternator; the vehicle itself takes some {3}':
		'La carga CC-CC de {0} toma {1} del alternador de {2}; el propio vehículo toma unos {3}',
	'{0}: more than it is rated for. It overheats; charge with at most {1}.':
		'{0}: más de lo que admite. Se sobrecalienta; carga con {1} como máximo.',
	'{0}: over {1} % of its rating for long. Charge with at most {2}.':
		'{0}: más del {1} % de su valor nominal durante mucho tiempo. Carga con {2} como máximo.',
	'{0}: at hot idle it gives about half its rating and can spare {1} of charging. Stop charging at idle, or set the charger to that.':
		'{0}: caliente y al ralentí da cerca de la mitad de su valor nominal y le sobran {1} para cargar. Detén la carga al ralentí, o ajusta el cargador a eso.',
	'Is the battery compartment vented to the outside, low and high?':
		'¿El compartimento de las baterías ventila al exterior, abajo y arriba?',
	'The {0} bank gives off hydrogen while charging and its compartment is not vented: a spark can set it off. Vent it to the outside with openings of at least {1}, one low and one high.':
		'El banco {0} desprende hidrógeno al cargarse y su compartimento no está ventilado: una chispa puede hacerlo explotar. Ventílalo al exterior con aberturas de al menos {1}, una baja y otra alta.',
	'Nothing charges the bank: add shore, alternator or solar charging.':
		'Nada carga el banco: añade carga por red exterior, alternador o sol.',
	'What charges the bank: shore power, the alternator, solar?':
		'¿Qué carga el banco: la red exterior, el alternador, el sol?',
	'What charges the bank besides the sun: the alternator, shore power?':
		'¿Qué carga el banco además del sol: el alternador, la red exterior?',
	'In winter the sun alone charges the bank: a flat array gives a tenth to a third of its summer yield. Add alternator or shore charging.':
		'En invierno solo el sol carga el banco: unos paneles planos dan entre una décima y una tercera parte de lo que dan en verano. Añade carga por alternador o por red exterior.',
	'How big is the van: short, medium, long or extra-long wheelbase, and which roof?':
		'¿Cómo es de grande la furgoneta: batalla corta, media, larga o extralarga, y qué techo?',
	'What insulation has the van, and how thick is it?': '¿Qué aislamiento tiene la furgoneta y qué espesor?',
	'What heat output has the heater (kW)?': '¿Qué potencia calorífica tiene el calefactor (kW)?',
	'What heats the van in winter?': '¿Qué calienta la furgoneta en invierno?',
	'The van is for winter and has no heater: water freezes and nobody stays. Ask me for the heat loss to size one.':
		'La furgoneta es para invierno y no tiene calefactor: el agua se hiela y nadie se queda. Pregúntame la pérdida de calor para dimensionar uno.',
	'The van is for winter and not insulated: bare metal runs with water and loses some five times the heat. 25 mm over walls, roof and doors is what most vans get.':
		'La furgoneta es para invierno y no está aislada: la chapa desnuda chorrea agua y pierde unas cinco veces más calor. La mayoría lleva 25 mm en paredes, techo y puertas.',
	'On a cold night the fan must move at least {0} to keep the shell dry; run it low with an opening for the air to come in.':
		'En una noche fría el ventilador debe mover al menos {0} para mantener seca la carrocería; déjalo a baja velocidad y con una abertura de entrada de aire.',
	'Is there a roof fan?': '¿Hay ventilador de techo?',
	'On a cold night it takes {0} of air to keep the shell dry and there is no fan: water runs down behind the panels. Fit a roof fan.':
		'En una noche fría hacen falta {0} de aire para mantener seca la carrocería y no hay ventilador: el agua corre por detrás de los paneles. Pon un ventilador de techo.',
	'What cooling has the air conditioner (Btu/h)?':
		'¿Qué potencia frigorífica tiene el aire acondicionado (Btu/h)?',
	'Single glass is the coldest part of a winter van and runs with water: insulated covers cut its loss to about a third.':
		'El vidrio simple es lo más frío de una furgoneta en invierno y chorrea agua: unas cubiertas aislantes reducen su pérdida a cerca de un tercio.',
	'A day takes {0} and the bank gives {1} from full: {2} at {3} V would carry it.':
		'Un día consume {0} y el banco lleno da {1}: bastarían {2} a {3} V.',
	'The bank lasts {0} days of the {1} wanted off grid: a day takes {2} and gains {3}. {4} at {5} V would do.':
		'El banco dura {0} días de los {1} deseados sin conexión: un día consume {2} y gana {3}. Bastarían {4} a {5} V.',
	'On a winter night of {0} h {1} take {2} of the {3} a cold bank gives: when it is empty the heat goes off and water freezes. {4} would leave half.':
		'En una noche de invierno de {0} h {1} consumen {2} de los {3} que da un banco frío: cuando se vacía se apaga la calefacción y el agua se hiela. {4} dejarían la mitad.',
	'The {0} water heater left on for a day takes {1} % of what the bank gives. Put it on a timer of two hours, or run it on shore power only.':
		'El calentador de agua de {0} encendido un día consume el {1} % de lo que da el banco. Ponle un temporizador de dos horas, o úsalo solo con red exterior.',
	'The {0} at {1} runs {2} h from a full bank with nothing else on. For {3} h it takes {4} at {5} V, or shore power.':
		'{0} con {1} funciona {2} h con el banco lleno y nada más encendido. Para {3} h hacen falta {4} a {5} V, o red exterior.',
	'The {0} of {1} empties the bank in {2} h: keep electric heat for shore power and heat with fuel on the road.':
		'{0} de {1} vacía el banco en {2} h: deja la calefacción eléctrica para la red exterior y calienta con combustible en ruta.',
	"The inverter at full power and all 12 V loads together draw {0}; the batteries' own protection allows {1}. Leave the inverter at {2} or less.":
		'El inversor a plena potencia y todos los consumos de 12 V juntos toman {0}; la protección propia de las baterías permite {1}. Deja el inversor en {2} o menos.',
	'Is a carbon-monoxide alarm fitted where people sleep?':
		'¿Hay un detector de monóxido de carbono donde se duerme?',
	'Fuel burns aboard ({0}) and there is no carbon-monoxide alarm: the gas kills sleepers without a smell. Fit a listed alarm for vehicles at sleeping height before the first night.':
		'A bordo se quema combustible ({0}) y no hay detector de monóxido de carbono: el gas mata a quien duerme y no huele. Pon un detector homologado para vehículos a la altura de la cama antes de la primera noche.',
	'Is a gas alarm fitted near the floor?': '¿Hay un detector de gas cerca del suelo?',
	'Fuel gas is aboard ({0}) and there is no gas alarm: propane and butane sink and gather on the floor until a spark finds them. Fit one near the floor.':
		'Hay gas combustible a bordo ({0}) y ningún detector de gas: el propano y el butano bajan y se acumulan en el suelo hasta que una chispa los alcanza. Pon uno cerca del suelo.',
	'The gas bottle stands in the living space without a sealed locker: a leak gathers there and explodes. Put it in a locker sealed from the inside with a vent of at least {0} in its floor, or outside.':
		'La bombona de gas está en la vivienda sin armario estanco: una fuga se acumula ahí y explota. Ponla en un armario estanco hacia el interior con una ventilación de al menos {0} en su suelo, o fuera.',
	'The heater burns into the living space: it gives off carbon monoxide and water and takes the oxygen. Never sleep with it on; take a heater with sealed combustion, air and exhaust outside.':
		'El calefactor quema dentro de la vivienda: desprende monóxido de carbono y agua y consume el oxígeno. No duermas nunca con él encendido; pon un calefactor de combustión estanca, con toma de aire y escape fuera.',
	'Does the gas heater take its air from outside and send its exhaust outside?':
		'¿El calefactor de gas toma el aire de fuera y echa los gases fuera?',
	'Is there a roof fan or a window that opens by the cooktop?':
		'¿Hay un ventilador de techo o una ventana que se abra junto a la placa?',
	'The cooktop burns with nothing to carry its air out: the flame takes oxygen and gives off carbon monoxide and water. Fit a roof fan and a fixed low opening of at least {0}.':
		'El fuego de cocina arde sin nada que saque el aire: la llama consume oxígeno y desprende monóxido de carbono y agua. Pon un ventilador de techo y una abertura baja fija de al menos {0}.',
	'Is a smoke alarm fitted?': '¿Hay detector de humo?',
	'There is no smoke alarm: fit one on the ceiling of the sleeping area.':
		'No hay detector de humo: pon uno en el techo de la zona de dormir.',
	'Is there a fire extinguisher by the door?': '¿Hay un extintor junto a la puerta?',
	'There is no fire extinguisher: keep one within reach of the door.':
		'No hay extintor: ten uno al alcance de la puerta.',
	"The {0} inverter draws {1} at full power, over the usual {2} for this bank: its voltage falls and the inverter cuts out. Stay at or below {3}, take a larger bank, or confirm the maker's limit.":
		'El inversor de {0} toma {1} a plena potencia, más que los {2} usuales de este banco: la tensión cae y el inversor se corta. Quédate en {3} o menos, pon un banco mayor o confirma el límite del fabricante.',
	'near empty draws': 'casi vacío toma',
	draws: 'toma',
	"The {0} inverter {1} {2}, over the {3} at which the batteries' own protection switches off: everything goes dark under load. Stay at or below {4}, or take batteries whose protection allows {5} together.":
		'El inversor de {0} {1} {2}, más que los {3} a los que se desconecta la protección propia de las baterías: todo se apaga bajo carga. Quédate en {4} o menos, o pon baterías cuya protección permita {5} en total.',
	"Starting the {0} draws {1} for a moment; the batteries' own protection allows {2}. See that it bears that for some seconds, or fit a soft start.":
		'Al arrancar, {0} toma {1} por un momento; la protección propia de las baterías permite {2}. Comprueba que lo soporta unos segundos, o pon un arrancador suave.',
	'The {0} takes {1}, more than the {2} inverter gives: run it on shore power only, set it lower, or take an inverter of at least {3}.':
		'{0} toma {1}, más de lo que da el inversor de {2}: úsalo solo con red exterior, ponlo más bajo o pon un inversor de al menos {3}.',
	'{0} and {1} together take {2}, more than the {3} inverter gives: use one at a time, or take an inverter of at least {4}.':
		'{0} y {1} juntos toman {2}, más de lo que da el inversor de {3}: usa uno cada vez, o pon un inversor de al menos {4}.',
	'Is there an inverter or a shore inlet for the mains loads?':
		'¿Hay un inversor o una toma exterior para los consumos de red?',
	'{0}: mains loads, but no inverter and no shore power feeds them. An inverter of at least {1} or a shore inlet would.':
		'{0}: consumos de red, pero ningún inversor ni red exterior los alimenta. Lo haría un inversor de al menos {1} o una toma exterior.',
	'Left on, the inverter draws {0} with nothing connected: {1} % of what the bank gives, every day. Fit a remote switch or use its search mode.':
		'Encendido, el inversor toma {0} sin nada conectado: el {1} % de lo que da el banco, cada día. Pon un interruptor remoto o usa su modo de búsqueda.',
	'{0} at 12 V is up to {1}: at 24 V it is half, with thinner cables and smaller losses.':
		'{0} a 12 V son hasta {1}: a 24 V es la mitad, con cables más finos y menos pérdidas.',
	'The inverter stands in a closed space and must shed up to {0} of heat: give it openings low and high, or it cuts out and ages.':
		'El inversor está en un espacio cerrado y debe disipar hasta {0} de calor: dale aberturas abajo y arriba, o se corta y envejece.',
	'on shore power the supply has its bond already': 'con red exterior el suministro ya tiene su unión',
	'it is joined at {0} places': 'están unidos en {0} sitios',
	'Neutral and ground are joined in the van, and {0}: current flows on the metal of the van and protective devices may not trip. Keep one bond, in the source that feeds, made and broken by the transfer relay of the inverter.':
		'Neutro y tierra están unidos en la furgoneta, y {0}: circula corriente por la chapa y las protecciones pueden no disparar. Deja una sola unión, en la fuente que alimenta, hecha y deshecha por el relé de transferencia del inversor.',
	'Where are neutral and ground joined: in the inverter only while it feeds, and nowhere else in the van?':
		'¿Dónde se unen neutro y tierra: en el inversor solo mientras alimenta, y en ningún otro sitio de la furgoneta?',
	'Which main fuse sits at the bank: its rating and its kind?':
		'¿Qué fusible principal hay en el banco: su valor nominal y su tipo?',
	' It can feed about {0} into a short.': ' Puede aportar unos {0} a un cortocircuito.',
	'The bank has no main fuse: a short burns the cable and the van.{0} Fit one within {1} of its positive pole, of a kind that breaks that current at direct current.':
		'El banco no tiene fusible principal: un cortocircuito quema el cable y la furgoneta.{0} Pon uno a menos de {1} de su polo positivo, de un tipo que corte esa corriente en continua.',
	'Of what kind is the main fuse (blade, strip, class T ...), and what current does it break?':
		'¿De qué tipo es el fusible principal (cuchilla, lámina, clase T ...), y qué corriente corta?',
	'The main fuse is made for household alternating current: on direct current its arc does not go out. Take a class T fuse.':
		'El fusible principal es para la corriente alterna doméstica: en continua su arco no se apaga. Pon un fusible de clase T.',
	"A {0} is a {1} part and the bank stands at {2}: it can't put out the arc. Take a class T fuse.":
		'{0}: es una pieza de {1} y el banco está a {2}: no puede apagar el arco. Pon un fusible de clase T.',
	'The bank can feed about {0} into a short: the {1} must be marked for at least that at direct current; usual ones for {2}. Ask the battery maker for the true figure.':
		'El banco puede aportar unos {0} a un cortocircuito: {1} debe estar marcado para al menos eso en continua; los usuales, para {2}. Pide la cifra real al fabricante de la batería.',
	'A {0} as main fuse breaks {1}; the bank can feed about {2} into a short, and the fuse may burst. Take a class T fuse, or one marked for at least {3} at direct current.':
		'Como fusible principal, {0} corta {1}; el banco puede aportar unos {2} a un cortocircuito, y el fusible puede reventar. Pon un fusible de clase T, o uno marcado para al menos {3} en continua.',
	'No fuse or breaker is named for: {0}. Each needs one at its source that protects its conductor; ask me for wire and fuse together.':
		'No se ha nombrado fusible ni interruptor para: {0}. Cada uno necesita el suyo en su origen, que proteja su conductor; pregúntame cable y fusible juntos.',
	'There is no fuse block and no fuse of their own for: {0}. A short in one of their wires is fed by the whole bank; put each on a fuse that protects its wire.':
		'No hay caja de fusibles ni fusible propio para: {0}. Un cortocircuito en uno de sus cables lo alimenta todo el banco; pon cada uno en un fusible que proteja su cable.',
	'No circuit is named for: {0}. A fuse block with a way for each would take them.':
		'No se ha nombrado circuito para: {0}. Los recogería una caja de fusibles con una salida para cada uno.',
	'The {0} takes {1} through {2}, which carries {3}: {4}.':
		'{0} toma {1} a través de {2}, que admite {3}: {4}.',
	'The {0} takes up to {1} through {2}, which carries {3}: no standard fuse both holds that load and protects the cable. {4}.':
		'{0} toma hasta {1} a través de {2}, que admite {3}: ningún fusible normalizado soporta esa carga y protege el cable a la vez. {4}.',
	'Run of the {0}: {1}. {2}': 'Tramo de {0}: {1}. {2}',
	'The {0} takes {1} on a {2} fuse: it opens in use. Its rating must be at least {3}, with a conductor to match.':
		'{0} toma {1} con un fusible de {2}: se abre en uso. Su valor nominal debe ser al menos {3}, con un conductor acorde.',
	'Is there GFCI protection on the mains outlets?': '¿Hay protección GFCI en los enchufes de red?',
	'Is there an RCD of at most 30 mA on the mains?': '¿Hay un diferencial de 30 mA como máximo en la red?',
	'Mains outlets without GFCI protection: a fault can kill. Put every outlet behind a GFCI, on shore power and on the inverter.':
		'Enchufes de red sin protección GFCI: una avería puede matar. Pon todos los enchufes detrás de un GFCI, con red exterior y con el inversor.',
	'Mains without a residual current device: a fault can kill. Fit an RCD of at most 30 mA that opens all live conductors.':
		'Red sin diferencial: una avería puede matar. Pon un diferencial de 30 mA como máximo que abra todos los conductores activos.',
	'Which breakers does shore power go through in the van?':
		'¿Por qué interruptores pasa la red exterior en la furgoneta?',
	"the inlet's rating": 'el valor nominal de la toma',
	'Shore power enters without a breaker: a fault in the van is fed until the pedestal trips. Fit a panel with a main breaker of at most {0}, by a licensed electrician.':
		'La red exterior entra sin interruptor: una avería en la furgoneta se alimenta hasta que dispara el poste. Pon un cuadro con interruptor general de {0} como máximo, por un electricista autorizado.',
	'Is there a switch that disconnects the bank?': '¿Hay un interruptor que desconecte el banco?',
	'Nothing disconnects the bank: fit a switch by its main fuse, rated for the largest current of the van, for work, storage and a fire.':
		'Nada desconecta el banco: pon un interruptor junto a su fusible principal, dimensionado para la mayor corriente de la furgoneta, para trabajos, invernaje y un incendio.',
	'The {0} at full power draws up to {1} near empty, over the main fuse of {2}: it opens in use. Take a rating of at least {3}, with cable to match.':
		'{0} a plena potencia toma hasta {1} con el banco casi vacío, más que el fusible principal de {2}: se abre en uso. Pon un valor nominal de al menos {3}, con cable acorde.',
	' For hours on end stay at or below {0}.': ' Durante horas seguidas quédate en {0} o menos.',
	' Switch off in this order: {0}.': ' Apaga en este orden: {0}.',
	'The {0} inlet gives no more than the {1} of the outlet behind the adapter, {2} for hours: the breaker in the van will not trip at that. Set the charger down and run one large load at a time.':
		'La toma de {0} no da más que los {1} del enchufe tras el adaptador, {2} durante horas: el interruptor de la furgoneta no disparará con eso. Baja el cargador y usa un solo consumo grande cada vez.',
	'The {0} takes up to {1} at its start; the generator gives {2}. Take one of at least {3}, or a soft start.':
		'{0} toma hasta {1} al arrancar; el generador da {2}. Pon uno de al menos {3}, o un arrancador suave.',
	'The generator joins neutral and ground in its frame and the panel of the van does so again: current flows on the metal of the van. Keep one bond, at the source that feeds.':
		'El generador une neutro y tierra en su bastidor y el cuadro de la furgoneta los vuelve a unir: circula corriente por la chapa. Deja una sola unión, en la fuente que alimenta.',
	'How are the solar panels joined: how many in series?':
		'¿Cómo están unidos los paneles solares: cuántos en serie?',
	' (voltage typical of such panels: read the label)': ' (tensión típica de esos paneles: lee la etiqueta)',
	'The panels are joined to the bank without a charge controller: they overcharge it, which can end in fire. Fit one rated for their open-circuit voltage in the cold and for their current.':
		'Los paneles están unidos al banco sin regulador de carga: lo sobrecargan, y eso puede acabar en incendio. Pon uno dimensionado para su tensión en circuito abierto con frío y para su corriente.',
	'in the darkest month': 'en el mes más oscuro',
	'in month {0}': 'en el mes {0}',
	'At {0} {1} the panels give {2} a day; the loads take {3}. {4} of panels would carry it, or driving and shore power.':
		'En {0} {1} los paneles dan {2} al día; los consumos toman {3}. Bastarían {4} de paneles, o conducir y red exterior.',
	'{0} of panels take some {1} and the roof holds about {2} beside what else stands there: about {3} fit. Measure before you buy.':
		'{0} de paneles ocupan unos {1} y en el techo caben unos {2} junto a lo demás: caben unos {3}. Mide antes de comprar.',
	'There is no gray tank: dumping on the ground is forbidden in most places. One of about {0} takes what the fresh tank gives.':
		'No hay depósito de aguas grises: verter al suelo está prohibido en casi todas partes. Uno de unos {0} recoge lo que da el de agua limpia.',
	'How large is the gray tank?': '¿Qué tamaño tiene el depósito de aguas grises?',
	' It begins to freeze after {0}.': ' Empieza a helarse al cabo de {0}.',
	' A heating pad of {0} holds it; with insulation less does, or drain it.':
		' Una manta calefactora de {0} lo mantiene; con aislamiento basta menos, o vacíalo.',
	'The {0} hangs in the cold and the place sees {1}.{2}{3}':
		'{0} cuelga al frío y el lugar llega a {1}.{2}{3}',
	'Is there a thermostatic mixing valve after the water heater?':
		'¿Hay una válvula mezcladora termostática tras el calentador de agua?',
	'Water heaters are set to about {0}': 'Los calentadores de agua se ajustan a unos {0}',
	'The water heater is set to {0}': 'El calentador de agua está ajustado a {0}',
	'{0} and no valve mixes it down: it burns skin in seconds. Fit a thermostatic mixing valve set to {1} or below.':
		'{0} y ninguna válvula lo mezcla: quema la piel en segundos. Pon una válvula mezcladora termostática ajustada a {1} o menos.',
	'What does the empty van weigh, or what do the scales show as it stands?':
		'¿Cuánto pesa la furgoneta vacía, o qué marca la báscula tal como está?',
	'By what was told the van weighs at least {0}; its GVWR is {1}: leave {2} out. Brakes, frame and insurance end at the rating.':
		'Según lo dicho la furgoneta pesa al menos {0}; su masa máxima es {1}: deja fuera {2}. Frenos, bastidor y seguro acaban en ese valor.',
	'With full tanks, people and usual masses for what was not weighed it comes to about {0}, over the GVWR of {1} by {2}. Weigh it before more goes in.':
		'Con depósitos llenos, personas y masas usuales para lo que no se pesó llega a unos {0}, por encima de la masa máxima de {1} en {2}. Pésala antes de meter más.',
	'Only about {0} are left to the GVWR: clothes, food and tools of a trip weigh more. Weigh it.':
		'Solo quedan unos {0} hasta la masa máxima: la ropa, la comida y las herramientas de un viaje pesan más. Pésala.',
	'What are the ratings of the front and the rear axle on the door label?':
		'¿Qué cargas máximas de eje delantero y trasero pone la etiqueta de la puerta?',
	'By usual masses and places: {0} Weigh each axle.': 'Con masas y lugares usuales: {0} Pesa cada eje.',
	'The roof carries about {0} ({1}); {2} are allowed: take {3} down.':
		'El techo lleva unos {0} ({1}); se permiten {2}: baja {3}.',
	"The roof carries about {0} ({1}); many van roofs allow {2} with the rack. Read the limit in the vehicle's manual.":
		'El techo lleva unos {0} ({1}); muchos techos de furgoneta permiten {2} con la baca. Lee el límite en el manual del vehículo.',
	'Tell me the size of the van and I work it out.': 'Dime el tamaño de la furgoneta y lo calculo.',
	'By usual masses it goes from {0} bare to {1} loaded and lifted.':
		'Con masas usuales pasa de {0} vacía a {1} cargada y elevada.',
	' of {0}': ' de {0}',
	'The lift{0} raises the centre of gravity and the static stability factor was not worked out again: it tips sooner. {1} Keep weight low and have the change approved where the law asks for it.':
		'La elevación{0} sube el centro de gravedad y el factor de estabilidad estática no se volvió a calcular: vuelca antes. {1} Mantén el peso abajo y haz aprobar el cambio donde la ley lo pida.',
	'The {0} puts {1} behind the rear axle when full: more than that on the rear axle, and it lightens the front. Between the axles it loads both.':
		'{0} pone {1} detrás del eje trasero cuando está lleno: más que eso sobre el eje trasero, y aligera el delantero. Entre los ejes carga los dos.',
	'What is the GVWR on the door label?': '¿Qué masa máxima (GVWR) pone la etiqueta de la puerta?',
	'What current does the shore charger give?': '¿Qué corriente da el cargador de red?',
	'What current does the DC-DC charger give?': '¿Qué corriente da el cargador CC-CC?',
	'What is the alternator rated (A)?': '¿Qué valor nominal tiene el alternador (A)?',
	'What power does the generator give?': '¿Qué potencia da el generador?',
	'What does the heater burn: diesel, propane, gasoline, or is it electric?':
		'¿Qué quema el calefactor: diésel, propano, gasolina, o es eléctrico?',
	'What capacity has the battery bank (Ah, and how many batteries)?':
		'¿Qué capacidad tiene el banco de baterías (Ah, y cuántas baterías)?',
	"At what current does each battery's own protection (BMS) switch off?":
		'¿A qué corriente se desconecta la protección propia (BMS) de cada batería?',
	'What charge current does the maker allow for each battery?':
		'¿Qué corriente de carga permite el fabricante para cada batería?',
	'Where do the gas bottles stand: in a locker sealed from the inside and vented low to the outside?':
		'¿Dónde están las bombonas de gas: en un armario estanco hacia el interior y ventilado por abajo al exterior?',
	'Is the cooktop induction, or what does it burn?': '¿La placa es de inducción, o qué quema?',
	'What continuous power does the inverter give?': '¿Qué potencia continua da el inversor?',
	'What is the shore inlet rated (A)?': '¿Qué valor nominal tiene la toma exterior (A)?',
	'How large are the solar panels (W, and how many)?':
		'¿De qué potencia son los paneles solares (W, y cuántos)?',
	'What open-circuit voltage (Voc) does the label of a panel show?':
		'¿Qué tensión en circuito abierto (Voc) pone la etiqueta de un panel?',
	'What output current is the solar controller rated for?':
		'¿Qué corriente de salida nominal tiene el regulador solar?',
	'What is the largest panel voltage the solar controller bears?':
		'¿Cuál es la mayor tensión de paneles que admite el regulador solar?',
	'Where will the van be used (the coldest place, a town)?':
		'¿Dónde se usará la furgoneta (el lugar más frío, una ciudad)?',
	'What heats the water: electricity, gas, diesel or the engine?':
		'¿Qué calienta el agua: electricidad, gas, diésel o el motor?',
	'How large is the fresh tank?': '¿Qué tamaño tiene el depósito de agua limpia?',
	'Is the {0} inside the heated space, or under the floor?':
		'¿Está dentro del espacio calefactado o bajo el suelo: {0}?',
	'Where does the {0} stand (front, middle, over the axle, back)?':
		'¿Dónde va (delante, en medio, sobre el eje, detrás): {0}?',
};
