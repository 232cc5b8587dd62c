import type { Phrasebook } from '../phrasebook.js';

export const energyWork: Phrasebook = {
	'number of batteries': 'número de baterías',
	'voltage of one battery': 'tensión de una batería',
	'number in series': 'número en serie',
	'number of strings': 'número de ramas',
	'in parallel': 'en paralelo',
	'how the batteries are joined': 'cómo se unen las baterías',
	'battery chemistry': 'química de la batería',
	"discharge limit of one battery's own protection":
		'límite de descarga de la protección propia de una batería',
	'batteries of 2, 4, 6 and 8 V are lead-acid': 'las baterías de 2, 4, 6 y 8 V son de plomo-ácido',
	'what most conversions fit now (practice)': 'lo que montan ahora la mayoría de las camper (práctica)',
	'I read {0}, which is neither a bank nor a mains voltage.':
		'Leo {0}, que no es tensión de un banco ni de red.',
	'Banks are 12, 24, 36 or 48 V; mains is 100 to 250 V.':
		'Los bancos son de 12, 24, 36 o 48 V; la red es de 100 a 250 V.',
	'batteries for vans are mostly 12 V': 'las baterías para furgonetas son casi siempre de 12 V',
	"Batteries of {0} can't be put in series to make {1} V with {2}.":
		'Baterías de {0} no se pueden poner en serie para hacer {1} V con {2}.',
	'Use batteries of {0} V, or of a voltage that divides it.':
		'Usa baterías de {0} V, o de una tensión que la divida.',
	"{0} in series and {1} in parallel don't make {2} V of {3} batteries of {4}.":
		'{0} en serie y {1} en paralelo no hacen {2} V con {3} baterías de {4}.',
	'For {0} V put {1} of {2} in series; the number of batteries is a multiple of that.':
		'Para {0} V pon {1} de {2} en serie; el número de baterías es un múltiplo de eso.',
	"{0} batteries don't make whole strings: {1} V takes {2} of {3} in series.":
		'{0} baterías no hacen ramas enteras: {1} V pide {2} de {3} en serie.',
	'Use {0}, {1} or {2} batteries.': 'Usa {0}, {1} o {2} baterías.',
	'several batteries in a higher bank are mostly 12 V':
		'varias baterías en un banco de más tensión son casi siempre de 12 V',
	'one battery': 'una batería',
	'{0} in parallel': '{0} en paralelo',
	'{0} in series': '{0} en serie',
	'{0} strings in parallel, each of {1} in series': '{0} ramas en paralelo, cada una de {1} en serie',
	'A bank can weld a spanner and burn you at any state of charge: disconnect, insulate tools, cover the terminals, one pole at a time.':
		'Un banco puede soldar una llave y quemarte con cualquier estado de carga: desconecta, aísla las herramientas, cubre los bornes, un polo cada vez.',
	'Join only batteries of the same make, type, capacity and age; bring each to full charge first, and take plus and minus from opposite ends of a parallel row.':
		'Une solo baterías de la misma marca, tipo, capacidad y edad; lleva antes cada una a carga completa, y toma el positivo y el negativo de extremos opuestos de una fila en paralelo.',
	'The main fuse sits at the bank itself and must be able to break what the bank can feed into a short: check its breaking capacity at direct current.':
		'El fusible principal va en el mismo banco y debe poder cortar lo que el banco puede dar en un cortocircuito: comprueba su poder de corte en corriente continua.',
	'Lead-acid gives off hydrogen while charging: vent the compartment to the outside, low and high, with no ignition source inside.':
		'El plomo-ácido desprende hidrógeno al cargar: ventila el compartimento al exterior, por abajo y por arriba, sin ninguna fuente de ignición dentro.',
	"The maker's limits for charging, discharging and temperature come before every figure here.":
		'Los límites del fabricante para carga, descarga y temperatura van antes que toda cifra de aquí.',
	'Neutral and ground are joined at one place only, at the source that is feeding: on shore power outside the van, on the inverter only while it feeds.':
		'Neutro y tierra se unen en un solo lugar, en la fuente que alimenta: con corriente exterior, fuera de la furgoneta; con el inversor, solo mientras alimenta.',
	'Give the inverter the free air round it that its manual asks for, away from bedding and out of a sealed locker; it gives off its losses as heat.':
		'Deja al inversor el aire libre alrededor que pide su manual, lejos de la ropa de cama y fuera de un cofre cerrado; desprende sus pérdidas en calor.',
	'Never charge lithium cells below 0 °C (32 °F): it damages them for good and can make them unsafe. See that every charger is stopped by the cold.':
		'Nunca cargues celdas de litio por debajo de 0 °C (32 °F): las daña para siempre y puede volverlas peligrosas. Cuida de que el frío detenga todos los cargadores.',
	'A cable between two batteries is fed from both: fuse the charger input at the starter battery and its output at the bank.':
		'Un cable entre dos baterías se alimenta desde las dos: pon fusible a la entrada del cargador en la batería de arranque y a su salida en el banco.',
	"Charging with {0} is over the bank's limit of {1}: set the chargers lower, together.":
		'Cargar con {0} supera el límite del banco, {1}: ajusta más bajos los cargadores, en conjunto.',
	"Charging with {0} is over the usual {1} for this bank: set the chargers lower, or confirm the maker's limit.":
		'Cargar con {0} supera lo habitual para este banco, {1}: ajusta más bajos los cargadores, o confirma el límite del fabricante.',
	"A draw of {0} is over the {1} at which the battery's own protection switches off: everything goes dark under load. Add batteries in parallel, raise the voltage or limit the inverter.":
		'Un consumo de {0} supera los {1} con los que corta la protección propia de la batería: todo se apaga bajo carga. Añade baterías en paralelo, sube la tensión o limita el inversor.',
	"A draw of {0} is over the usual {1} for this bank: its voltage may collapse, or its own protection switch it off. Confirm the maker's limit, or add batteries.":
		'Un consumo de {0} supera lo habitual para este banco, {1}: su tensión puede hundirse, o su propia protección desconectarlo. Confirma el límite del fabricante, o añade baterías.',
	'At {0} a heated lithium battery must be warmed above {1} before any charge reaches it, and the heater is a load of its own.':
		'A {0} una batería de litio calefactada debe calentarse por encima de {1} antes de que le llegue carga alguna, y el calefactor es una carga más.',
	'At {0} this battery must not be charged: below {1} lithium plates in the cells, which ruins them and can start a fire. Stop every charger by a cold cut-off, or heat the battery.':
		'A {0} esta batería no debe cargarse: por debajo de {1} el litio se deposita en las celdas, lo que las arruina y puede provocar un incendio. Detén todos los cargadores con un corte por frío, o calienta la batería.',
	'At {0} this battery must not be charged: {1} is the most.':
		'A {0} esta batería no debe cargarse: {1} es lo máximo.',
	'At {0} the bank ages fast, and many batteries stop charging at {1}.':
		'A {0} el banco envejece deprisa, y muchas baterías dejan de cargar a {1}.',
	'At {0} a discharged lead-acid battery freezes and bursts: keep it charged.':
		'A {0} una batería de plomo-ácido descargada se congela y revienta: mantenla cargada.',
	'{0} strings in parallel share badly; four are a usual limit. Use larger batteries or a higher voltage, and busbars with equal cables.':
		'{0} ramas en paralelo se reparten mal; cuatro es un límite habitual. Usa baterías más grandes o una tensión más alta, y barras con cables iguales.',
	'Lithium batteries in series must be of a kind whose maker allows {0} in series, and brought to equal charge first.':
		'Las baterías de litio en serie deben ser de un tipo cuyo fabricante permita {0} en serie, e igualarse antes en carga.',
	'The compartment needs openings of at least 1100 mm² (1.7 in²), one within 50 mm (2 in) of the top and one of the bottom, and none into the living space.':
		'El compartimento necesita aberturas de al menos 1100 mm² (1.7 in²), una a no más de 50 mm (2 in) de lo más alto y otra de lo más bajo, y ninguna hacia la zona habitable.',
	'A living-area battery has at least 60 Ah at the 20 h rate.':
		'Una batería de vivienda tiene al menos 60 Ah en régimen de 20 h.',
	'inverter efficiency': 'rendimiento del inversor',
	'not known: {0}': 'no se conoce: {0}',
	'usual for an inverter of 2 to 3 kW (practice); the nameplate decides':
		'habitual para un inversor de 2 a 3 kW (práctica); decide la placa',
	'power of the load': 'potencia de la carga',
	'current of the load': 'corriente de la carga',
	'energy a day': 'energía al día',
	'hours a day': 'horas al día',
	'share of the time it runs': 'parte del tiempo que funciona',
	'on inverter': 'con inversor',
	dc: 'CC',
	'where it is fed from': 'de dónde se alimenta',
	'where the {0} is fed from': 'de dónde se alimenta: {0}',
	'I read {0} h a day for the {1}; a day has 24.': 'Leo {0} h al día para {1}; un día tiene 24.',
	'Give the hours a day it is on, up to 24.': 'Da las horas al día que está en marcha, hasta 24.',
	'power of the {0}': 'potencia de {0}',
	'How much does the {0} draw (watts or amps)?': '¿Cuánto consume: {0} (vatios o amperios)?',
	'share of that time the {0} runs': 'parte de ese tiempo que funciona: {0}',
	'hours a day of the {0}': 'horas al día: {0}',
	'How many hours a day is the {0} on?': '¿Cuántas horas al día está en marcha: {0}?',
	'{0} W and {1} A for the {2} contradict each other: at {3} V that current is {4} W.':
		'{0} W y {1} A para {2} se contradicen: a {3} V esa corriente son {4} W.',
	'{0} Wh a day for the {1} contradicts its power and hours: they make {2} Wh.':
		'{0} Wh al día de {1} contradicen su potencia y sus horas, que dan {2} Wh.',
	'Give the energy a day, or the power and the hours.': 'Da la energía al día, o la potencia y las horas.',
	'Give the power or the current, whichever you trust.': 'Da la potencia o la corriente, la que sea fiable.',
	'load {0}': 'carga {0}',
	'typical load (practice); the nameplate decides': 'carga típica (práctica); decide la placa',
	cable: 'cable',
	'ground-fault protection (GFCI) of its receptacles, of the whole wiring on a single 15 A or 20 A circuit':
		'protección contra fugas a tierra (GFCI) de sus tomas, y de toda la instalación en un solo circuito de 15 A o 20 A',
	'a residual current device (RCD) of at most 30 mA that opens all live conductors':
		'un diferencial (RCD) de 30 mA como máximo que abra todos los conductores activos',
	'clock hour it begins': 'hora del reloj a la que empieza',
	'energy used a day': 'energía usada al día',
	'energy of one battery': 'energía de una batería',
	'charge used a day': 'carga usada al día (Ah)',
	period: 'periodo',
	'driving a day': 'conducción al día',
	'charging current while driving': 'corriente de carga en marcha',
	'hours a day on shore power': 'horas al día con corriente exterior',
	'charging current on shore power': 'corriente de carga con corriente exterior',
	'full at the start': 'lleno al inicio',
	'reserve to keep': 'reserva que se guarda',
	'20 % for lithium, 50 % for lead-acid (practice)': '20 % en litio, 50 % en plomo-ácido (práctica)',
	'state of charge at which the loads are switched off': 'estado de carga en que se desconectan las cargas',
	'where low-voltage cut-offs usually stand (practice)':
		'donde suelen estar los cortes por baja tensión (práctica)',
	'kept inside the living space': 'se guarda dentro de la zona habitable',
	'Give a cut-off at or below the reserve.': 'Da un corte igual o inferior a la reserva.',
	'The loads are switched off at {0}, above the reserve of {1}.':
		'Las cargas se desconectan a {0}, por encima de la reserva de {1}.',
	'Give a start at or above the reserve.': 'Da un inicio igual o superior a la reserva.',
	'A start at {0} is already below the reserve of {1}.':
		'Un inicio a {0} ya está por debajo de la reserva de {1}.',
	'a power with neither name nor hours at a place': 'una potencia sin nombre ni horas en un lugar',
	'Where is the van (a town, a park, or a position such as "35.2,-111.7")?':
		'¿Dónde está la furgoneta (una ciudad, un parque o una posición como "35.2,-111.7")?',
	bank: 'banco',
	'Which bank is there (Ah), or which array (W)?': '¿Qué banco hay (Ah), o qué campo solar (W)?',
	'Give the temperature of the battery itself, above −17 °C (0 °F).':
		'Da la temperatura de la batería misma, por encima de −17 °C (0 °F).',
	'At {0} no table says what is left of this bank.': 'A {0} ninguna tabla dice lo que queda de este banco.',
	'Name a larger array, more driving or shore power, or fewer loads.':
		'Indica un campo solar mayor, más conducción o corriente exterior, o menos cargas.',
	'No bank up to {0} keeps the reserve: over the period less comes in than the loads take.':
		'Ningún banco hasta {0} guarda la reserva: en el periodo entra menos de lo que toman las cargas.',
	'Name a larger bank, driving or shore power, fewer loads or another month.':
		'Indica un banco mayor, conducción o corriente exterior, menos cargas u otro mes.',
	'No array up to {0} keeps the reserve with this bank in the period.':
		'Ningún campo solar hasta {0} guarda la reserva con este banco en el periodo.',
	'Which loads run (watts and hours a day), or how much is used a day (Wh or Ah)?':
		'¿Qué cargas funcionan (vatios y horas al día), o cuánto se usa al día (Wh o Ah)?',
	'when the energy is used': 'cuándo se usa la energía',
	'evenly over the day': 'repartido por igual en el día',
	'no list of loads was given': 'no se dio una lista de cargas',
	'I read both a list of loads and an amount used a day.':
		'Leo a la vez una lista de cargas y un consumo al día.',
	'Give the list or the amount, not both.': 'Da la lista o la cantidad, no las dos.',
	'from {0}:00': 'desde las {0}:00',
	'usual (practice)': 'habitual (práctica)',
	'when the {0} runs': 'cuándo funciona: {0}',
	'7 days': '7 días',
	'no sun in it: every day is the same': 'sin sol de por medio: todos los días son iguales',
	'a year': 'un año',
	'neither month nor period was named': 'no se indicó mes ni periodo',
	'no month was named: the one with the least sun counts': 'no se indicó mes: cuenta el de menos sol',
	'when the van is driven': 'cuándo se conduce',
	'from {0}:00 every day': 'desde las {0}:00 cada día',
	'when shore power is there': 'cuándo hay corriente exterior',
	'a small charger, the safe side (practice)': 'un cargador pequeño, el lado seguro (práctica)',
	'day {0}, {1}': 'día {0}, {1}',
};
