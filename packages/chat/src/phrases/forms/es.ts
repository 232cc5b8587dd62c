import type { Phrasebook } from '@lugbook/core';

/** What forms show of the topics, in Spanish: titles, purposes and helps of their declarations, and the words around them. */
export const spanish: Phrasebook = {
	'Size it': 'Calcular',
	Send: 'Enviar',
	Cancel: 'Cancelar',
	Next: 'Siguiente',
	'Size a part': 'Dimensionar',
	'What is to be sized?': '¿Qué hay que dimensionar?',
	'Choose one of the list.': 'Elige uno de la lista.',
	'Left empty: {0}': 'Si queda vacío: {0}',
	'a number with its unit': 'un número con su unidad',
	'a whole number': 'un número entero',
	'a number': 'un número',
	'the name of a town': 'el nombre de una población',
	'in words': 'con palabras',
	'Reject No. {0}': 'Rechazar N.º {0}',
	'Why is it rejected?': '¿Por qué se rechaza?',
	'A word on No. {0}': 'Comentar N.º {0}',
	'What is to be said?': '¿Qué hay que decir?',
	'No. {0} to a build': 'N.º {0} a un proyecto',
	'Name of the build': 'Nombre del proyecto',
	Welcome: 'Bienvenido',
	'Nothing has been asked here yet. Invite me into the channel of a van with /invite @Lugbook, name the van with "/build use heron", then ask as you would ask somebody: "/ask 40A 12V 15 ft". A mention works as well, and so does a message to me alone.':
		'Aquí no se ha preguntado nada todavía. Invítame al canal de una furgoneta con /invite @Lugbook, ponle nombre con "/build use heron" y pregunta como a cualquiera: "/ask 40A 12V 15 ft". También vale una mención o un mensaje solo para mí.',
	Vans: 'Furgonetas',
	'No channel has named its van yet: "/build use heron" does.':
		'Ningún canal ha puesto nombre a su furgoneta todavía: se hace con "/build use heron".',
	' in ': ' en ',
	'Also: {0}': 'También: {0}',
	'Water an accumulator gives between pump starts': 'Agua de un acumulador entre arranques de la bomba',
	'Charging from the alternator': 'Carga desde el alternador',
	'Solar strings and charge controller': 'Cadenas solares y regulador de carga',
	'Battery bank': 'Banco de baterías',
	'Rail, crossbeam or shelf in bending': 'Carril, travesaño o estante a flexión',
	'Daily energy budget': 'Consumo diario de energía',
	'Time to charge a bank': 'Tiempo para cargar un banco',
	'Heat that comes in and the air conditioner it takes': 'Calor que entra y el aire acondicionado que exige',
	'Time to empty a tank by gravity': 'Tiempo para vaciar un depósito por gravedad',
	'A tank, pipe or pump bay in the cold': 'Un depósito, tubo o hueco de bomba con frío',
	'Fuse for a conductor and a load': 'Fusible para un conductor y una carga',
	'Heat loss of the van and the heater it needs': 'Pérdida de calor y la calefacción que exige',
	'Energy of hot water and what it takes from the bank': 'Energía del agua caliente y lo que toma del banco',
	'Time to inflate tires': 'Tiempo para inflar neumáticos',
	'Inverter, its cable and fuse': 'Inversor, su cable y su fusible',
	'Air that keeps the inside dry': 'Aire que mantiene seco el interior',
	'Voltages in the whole distribution': 'Tensiones en toda la distribución',
	'Weight ledger, axle loads and stability': 'Pesos, cargas por eje y estabilidad',
	'Pressure lost in a water pipe': 'Presión perdida en un tubo de agua',
	'Bolts that hold an item aboard': 'Tornillos que sujetan un objeto a bordo',
	'How long a bank lasts': 'Cuánto dura un banco',
	'What may run on shore power': 'Qué puede funcionar con la toma de puerto',
	'Prospective short-circuit current': 'Corriente de cortocircuito prevista',
	'Energy hour by hour': 'Energía hora a hora',
	'Solar yield': 'Producción solar',
	'Gas spring for a lid or door': 'Muelle de gas para tapa o puerta',
	'Days of fresh and gray water': 'Días de agua limpia y gris',
	'Tires against the axle load and the cold': 'Neumáticos frente a la carga del eje y el frío',
	'Fan, air changes and the intake they need': 'Ventilador, renovaciones de aire y entrada',
	'Conductor size and protection for one run': 'Sección y protección de un tramo',
	'How much water comes without the pump, and how often the pump starts.':
		'Cuánta agua sale sin la bomba y cada cuánto arranca esta.',
	'Which DC-DC charger an alternator bears, its cable, and how many hours of driving bring a bank to a state of charge.':
		'Qué cargador CC-CC soporta un alternador, su cable, y cuántas horas de marcha llevan el banco a un estado de carga.',
	'How the panels are joined, and which controller, conductor and protection they take, in the cold and the heat.':
		'Cómo se unen los paneles y qué regulador, conductor y protección llevan, con frío y con calor.',
	'Which bank carries the daily use for so long, how its units are joined, and what currents it bears.':
		'Qué banco aguanta el consumo diario durante ese tiempo, cómo se unen sus unidades y qué corrientes soporta.',
	'Whether a rail, crossbeam or shelf is stiff and strong enough, and the span or section that is.':
		'Si un carril, travesaño o estante es bastante rígido y resistente, y la luz o la sección que lo es.',
	'How much the loads of a van take from the bank in a day, and the most they draw at once.':
		'Cuánto toman del banco en un día las cargas de una furgoneta y lo máximo que consumen a la vez.',
	'How long a charger takes to fill a bank from one state of charge to another, whether the bank bears it, and which charger does it in the time there is.':
		'Cuánto tarda un cargador en llevar un banco de un estado de carga a otro, si el banco lo soporta y qué cargador lo hace en el tiempo que hay.',
	'How much heat a parked van takes in on a clear hot day, which unit keeps up, and how long the bank runs it.':
		'Cuánto calor entra en una furgoneta parada un día claro y caluroso, qué aparato puede con él y cuánto tiempo lo mueve el banco.',
	'How long a tank takes to empty through its valve and hose, and what vent it needs.':
		'Cuánto tarda un depósito en vaciarse por su válvula y manguera, y qué respiradero necesita.',
	'Whether it freezes overnight, how long until it does, and what a heating pad needs.':
		'Si se hiela durante la noche, cuánto tarda y qué necesita una manta calefactora.',
	'Which rating and which kind of fuse protects a known conductor on a battery circuit, and how it behaves.':
		'Qué calibre y qué tipo de fusible protege un conductor conocido en un circuito de batería, y cómo se comporta.',
	'How much heat the van loses on a cold night, which heater covers it, and what fuel and battery a night costs.':
		'Cuánto calor pierde la furgoneta en una noche fría, qué calefacción lo cubre y qué combustible y batería cuesta una noche.',
	'What a tank of hot water costs in energy, time and amps, how long a shower it gives, and what leaving it on does to the bank.':
		'Qué cuesta un depósito de agua caliente en energía, tiempo y amperios, cuánta ducha da y qué le hace al banco dejarlo encendido.',
	'How long a pump takes to fill the tires, with its rests, and what that costs the battery.':
		'Cuánto tarda un compresor en llenar los neumáticos, con sus pausas, y qué le cuesta a la batería.',
	'Which inverter the loads need, the current it draws, its cable and fuse, and whether the bank bears it.':
		'Qué inversor necesitan las cargas, la corriente que toma, su cable y fusible, y si el banco lo soporta.',
	'How much water people, cooking and drying give off, and the air flow that keeps the cold surfaces above the dew point.':
		'Cuánta agua desprenden las personas, la cocina y la ropa, y el caudal de aire que mantiene las superficies frías sobre el punto de rocío.',
	'The true voltage at every load with all loads on, the current in every segment, and which segment to thicken first.':
		'La tensión real en cada carga con todas encendidas, la corriente en cada tramo y qué tramo engrosar primero.',
	'Whether the van with everything aboard stays within its GVWR and axle ratings, how it stands side to side, and what would clear an overload.':
		'Si la furgoneta con todo a bordo respeta su masa máxima y la de sus ejes, cómo queda de lado a lado y qué quitaría una sobrecarga.',
	'Which pipe a fixture needs, or whether a named one will do, and what pressure is left at the tap.':
		'Qué tubo necesita un grifo o ducha, o si vale uno dado, y qué presión queda en el grifo.',
	'How many bolts of which size hold a heavy item under braking, in bends and in a crash.':
		'Cuántos tornillos y de qué medida sujetan un objeto pesado al frenar, en curvas y en un choque.',
	'How many hours a bank carries a load or a mix of loads, from one state of charge to another, and whether that is enough for a night, some days or the hours that each load is to run.':
		'Cuántas horas lleva un banco una carga o varias, de un estado de carga a otro, y si basta para una noche, unos días o las horas de cada carga.',
	'What of the mains loads may run together on a supply, and which charger limit to set with each set.':
		'Qué cargas de red pueden funcionar juntas en una toma y qué límite del cargador poner con cada conjunto.',
	'The current a dead short draws at a point of the battery circuit, and which fuses can break it.':
		'La corriente de un cortocircuito franco en un punto del circuito de batería y qué fusibles la cortan.',
	'Whether bank, array, driving and shore power carry the loads through days or a year, and the smallest that do.':
		'Si banco, paneles, marcha y toma de puerto llevan las cargas durante días o un año, y los menores que lo hacen.',
	'What an array on the roof puts into the battery at a place in a month, or how large an array a daily need takes.':
		'Qué pone en la batería un campo solar en el techo, en un lugar y un mes, o qué campo exige un consumo diario.',
	'Which gas spring holds a lid or door open, with its stroke and the force a hand needs over the swing.':
		'Qué muelle de gas mantiene abierta una tapa o puerta, con su carrera y la fuerza de la mano en el giro.',
	'How long the fresh tank lasts, when the gray tank is full, and which comes first; or the tanks that so many days take.':
		'Cuánto dura el depósito de agua limpia, cuándo se llena el de grises y qué llega antes; o los depósitos para tantos días.',
	'Whether the tires carry what stands on their axle, at which pressure, and what cold and height make of the pressure.':
		'Si los neumáticos llevan lo que pesa sobre su eje, a qué presión, y qué hacen de ella el frío y la altura.',
	'How often a fan renews the air, how large the intake must be, and what a small one does.':
		'Cada cuánto renueva el aire un ventilador, qué entrada debe tener y qué hace una pequeña.',
	'Which conductor one run needs, and which fuse or breaker protects it.':
		'Qué conductor necesita un tramo y qué fusible o disyuntor lo protege.',
	'The whole inside, gas and water together.': 'Todo el interior, gas y agua juntos.',
	'Cut-in and cut-out in psi as stamped on it: 30/50.':
		'Arranque y paro en psi, como vienen marcados: 30/50.',
	'To see whether so much driving is enough.': 'Para ver si basta con tanta marcha.',
	'All of them one way; name the numbers where they are joined both ways.':
		'Todas de un modo; di los números donde estén unidas de los dos.',
	'From the maker: the current at which the battery management system switches the battery off.':
		'Del fabricante: la corriente a la que el sistema de gestión desconecta la batería.',
	'From the starter battery to the charger, along the cable.':
		'De la batería de arranque al cargador, por el cable.',
	'Where only the number of panels is named: all of them in one string, or each its own.':
		'Donde solo se dice el número de paneles: todos en una cadena o cada uno en la suya.',
	'Its record low decides how high the voltage climbs.':
		'Su mínima histórica decide hasta dónde sube la tensión.',
	'In place of a daily figure: each load with watts or amps and hours a day.':
		'En lugar de una cifra diaria: cada carga con vatios o amperios y horas al día.',
	'How long the bank must last without being charged.': 'Cuánto debe durar el banco sin cargarse.',
	'On top of everything else, 1 for none; IEEE 485 suggests 1.1 to 1.15 where loads may grow.':
		'Sobre todo lo demás, 1 si ninguno; IEEE 485 propone de 1.1 a 1.15 donde las cargas puedan crecer.',
	'All chargers that may run at once, added up.':
		'La suma de todos los cargadores que puedan funcionar a la vez.',
	'From the maker.': 'Del fabricante.',
	'Between the supports; for a cantilever from the wall to the tip.':
		'Entre los apoyos; en un voladizo, de la pared a la punta.',
	'Each with a mass, a force or a line load, and its place where it has one.':
		'Cada una con una masa, una fuerza o una carga lineal, y su lugar donde lo tenga.',
	'Width × height × wall, "40x40x2"; two figures are a solid bar.':
		'Ancho × alto × pared, "40x40x2"; dos cifras son una barra maciza.',
	'For a section of two unlike sides given as one marking; without a word it is taken as lying flat.':
		'Para una sección de dos lados distintos dada en una sola marca; si no se dice nada, se toma tumbada.',
	'A fraction of an inch before the word plywood or board, "3/4 plywood".':
		'Una fracción de pulgada ante la palabra plywood o board, "3/4 plywood".',
	'From the maker for a slotted profile; it is much less than that of its outline.':
		'Del fabricante para un perfil ranurado; es mucho menor que el de su contorno.',
	'As 6061-T6; it stands before the material.': 'Como 6061-T6; prevalece sobre el material.',
	'The 240 of L/240.': 'El 240 de L/240.',
	'People leave a bed while driving.': 'En marcha nadie queda en la cama.',
	'Each with watts or amps and hours a day: "fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h".':
		'Cada una con vatios o amperios y horas al día: "fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h".',
	'What it gives to the bank, where no amps are on its plate.':
		'Lo que da al banco, si su placa no dice amperios.',
	'Then the answer says whether it is enough.': 'Entonces la respuesta dice si basta.',
	'Its sun, altitude and design high are taken where they are not named.':
		'De él se toman el sol, la altitud y la máxima de proyecto si no se dicen.',
	'Name its rating to have it judged.': 'Di su valor para que se juzgue.',
	'Of the living space, behind the seats.': 'De la zona habitable, detrás de los asientos.',
	'Where it is not named: 80 %, lithium iron phosphate down to 20 %.':
		'Si no se dice: 80 %; con fosfato de hierro y litio, hasta el 20 %.',
	'From the outlet up to the water.': 'De la salida hasta el nivel del agua.',
	'Its design low is taken where no temperature is named.':
		'Se toma su mínima de proyecto si no se dice una temperatura.',
	'Name a rating to have it judged.': 'Di un calibre para que se juzgue.',
	'Between the power named and the power drawn from this run, as for an inverter.':
		'Entre la potencia dicha y la que toma este tramo, como en un inversor.',
	'To see whether a short at the far end still opens the fuse at once.':
		'Para ver si un cortocircuito en el extremo aún abre el fusible al instante.',
	'Its design low and its altitude are taken where they are not named.':
		'De él se toman la mínima de proyecto y la altitud si no se dicen.',
	'Days or nights for which the fuel has to last.': 'Días o noches que debe durar el combustible.',
	'As rated, against no pressure.': 'El nominal, sin presión en contra.',
	'A second point of the pump curve, with its pressure.':
		'Un segundo punto de la curva de la bomba, con su presión.',
	'From and to with one unit, "25 to 65 psi".': 'De y a con una unidad, "25 to 65 psi".',
	'As printed, "LT225/75R16"; the volume follows from it.':
		'Como está impreso, "LT225/75R16"; de ahí sale el volumen.',
	'How long it may run before it must rest.': 'Cuánto puede funcionar antes de que deba parar.',
	'The inverter itself ("2000W inverter"), or what it must run: "microwave 1500W, laptop 60W".':
		'El propio inversor ("2000W inverter") o lo que debe mover: "microwave 1500W, laptop 60W".',
	'From the bank to the inverter, along the cable.': 'Del banco al inversor, por el cable.',
	'Segments: from - to, size, one-way length. Loads: node, amperes or watts. "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"':
		'Tramos: de - a, sección, longitud de ida. Cargas: nudo, amperios o vatios. "battery-bus 2/0 3 ft; bus-fridge 10 awg 20 ft; fridge 5A"',
	'Only where its name does not say so.': 'Solo si su nombre no lo dice.',
	'Each with its mass (or the volume of its tank) and its place.':
		'Cada una con su masa (o el volumen de su depósito) y su lugar.',
	'The greatest mass of the loaded van, on the door label.':
		'La mayor masa de la furgoneta cargada, en la placa de la puerta.',
	'With fuel, without people and load.': 'Con combustible, sin personas ni carga.',
	'What springs and tires raise the body; item heights are taken as before it.':
		'Lo que muelles y neumáticos elevan la carrocería; las alturas de las cosas se toman sin ello.',
	'Where the third person and more sit.': 'Donde se sientan la tercera persona y más.',
	'A size of PEX (3/8, 1/2, 3/4 in; 12, 16, 20 mm) to have it judged; leave it out to have one chosen.':
		'Una medida de PEX (3/8, 1/2, 3/4 in; 12, 16, 20 mm) para que se juzgue; sin ella se elige una.',
	'For hose and pipe that is not in the table.': 'Para mangueras y tubos que no están en la tabla.',
	'Leave it out to have it chosen.': 'Si falta, se elige.',
	'Replaces the forward figure of the load case where it is higher.':
		'Sustituye la cifra hacia delante del caso de carga si es mayor.',
	'From its maker, for this sheet.': 'De su fabricante, para esta chapa.',
	'Its diameter, under each nut.': 'Su diámetro, bajo cada tuerca.',
	'What is on meanwhile, with watts or amps; hours a day or a share where it is not on all the time.':
		'Lo que está encendido entretanto, con vatios o amperios; horas al día o una parte si no es siempre.',
	'Then the answer says whether the bank carries it.': 'Entonces la respuesta dice si el banco lo aguanta.',
	'The inlet on the van, or the whole supply where nothing else is named.':
		'La toma de la furgoneta, o toda la alimentación si no se dice otra cosa.',
	'The household outlet, pedestal or generator it is plugged into.':
		'El enchufe, poste o generador al que se conecta.',
	"The charger's output into the bank.": 'La salida del cargador hacia el banco.',
	'What is to run on the supply: "water heater 1440W, cooktop 1800W, microwave 12A".':
		'Lo que ha de funcionar con la toma: "water heater 1440W, cooktop 1800W, microwave 12A".',
	'Each with watts or amps, hours a day and, as a second time, the clock hour it begins: "lights 20W 5h from 18h".':
		'Cada una con vatios o amperios, horas al día y, como segunda hora, la del reloj a la que empieza: "lights 20W 5h from 18h".',
	'In place of a list: taken evenly over the day.': 'En lugar de una lista: repartido por igual en el día.',
	'A town, a park or a position; needed where there is solar.':
		'Una población, un parque o una posición; hace falta donde hay solar.',
	'The first month of the run; without it and without a period a whole year is run.':
		'El primer mes del cálculo; sin él y sin período se calcula un año entero.',
	'A town with its state or country, a park, or a position such as "35.2,-111.7".':
		'Una población con su estado o país, un parque o una posición como "35.2,-111.7".',
	'Without it the worst month counts.': 'Sin él cuenta el peor mes.',
	'Under standard test conditions, from the label; the whole array where no number of panels is named.':
		'En condiciones estándar de ensayo, de la etiqueta; todo el campo si no se dice el número de paneles.',
	'Distance of the hinge from the line of the spring, where only one place is looked at.':
		'Distancia de la bisagra a la línea del muelle, si solo se mira un lugar.',
	'Along the lid.': 'A lo largo de la tapa.',
	'Level, towards the free edge of the lid.': 'En horizontal, hacia el borde libre de la tapa.',
	'Extended, as printed on it; leave it out to have it chosen.':
		'Extendido, como está impreso; si falta, se elige.',
	'Only while the water runs.': 'Solo mientras corre el agua.',
	'What stands on this axle with tanks full and people aboard.':
		'Lo que pesa sobre este eje con depósitos llenos y personas a bordo.',
	'Where one tire was weighed and not the axle; of two that differ the heavier.':
		'Si se pesó un neumático y no el eje; de dos distintos, el más cargado.',
	'The number before the speed letter on the sidewall; of two numbers the first, for single tires.':
		'El número ante la letra de velocidad en el flanco; de dos, el primero, para ruedas simples.',
	'The second of two numbers on the sidewall.': 'El segundo de los dos números del flanco.',
	'Load index and speed symbol as printed, "121/120R".':
		'Índice de carga y símbolo de velocidad como están impresos, "121/120R".',
	'Read so that it is not lost; what a tire carries stands in its load index, "LT245/75R16 120/116R".':
		'Se lee para que no se pierda; lo que lleva un neumático está en su índice de carga, "LT245/75R16 120/116R".',
	'The pressure printed beside the largest load on the sidewall.':
		'La presión impresa junto a la carga mayor en el flanco.',
	'At free flow, as the maker rates it.': 'En flujo libre, como lo da el fabricante.',
	'Such as 6x10 in or 20x30 cm.': 'Como 6x10 in o 20x30 cm.',
	'From the source to the load, along the cable; both legs are counted by the calculation.':
		'De la fuente a la carga, por el cable; el cálculo cuenta la ida y la vuelta.',
	'The current named is the rating of an inlet or circuit, so its device has that rating.':
		'La corriente dicha es la nominal de una toma o circuito, así que su dispositivo tiene ese calibre.',
	'Name a size to have it judged.': 'Di una sección para que se juzgue.',
	'The longest run of the named size that keeps the drop.':
		'El tramo más largo de la sección dicha que respeta la caída.',
	'How many hours or days a store of propane, butane, diesel or gasoline feeds the burners aboard, whether it does for a trip, or which cylinder or tank the trip takes.':
		'Cuántas horas o días una reserva de propano, butano, diésel o gasolina alimenta los quemadores de a bordo, si basta para un viaje, o qué botella o depósito requiere el viaje.',
	'What a cylinder holds when full, without its own weight.':
		'Lo que contiene una botella llena, sin su propio peso.',
	'Of a propane container its whole volume: 80 % of it counts.':
		'De un recipiente de propano, todo su volumen: cuenta el 80 %.',
	'Each with its power and hours a day: "furnace 16000 Btu/h 8 h 50 %, cooktop 7000 Btu/h 1 h".':
		'Cada uno con su potencia y horas al día: "calefacción 16000 Btu/h 8 h 50 %, cocina 7000 Btu/h 1 h".',
	'Days for which the fuel has to last.': 'Días que debe durar el combustible.',
	'Of what is rated by its output, by the lower heating value.':
		'De lo que se indica por su potencia útil, según el poder inferior.',
};
