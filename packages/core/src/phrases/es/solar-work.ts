import type { Phrasebook } from '../phrasebook.js';

export const solarWork: Phrasebook = {
	'number of panels': 'número de paneles',
	'rated power of the whole array': 'potencia nominal de todo el campo',
	'tilt from flat': 'inclinación desde la horizontal',
	'flat on the roof': 'plano sobre el techo',
	north: 'norte',
	northeast: 'noreste',
	east: 'este',
	southeast: 'sureste',
	south: 'sur',
	southwest: 'suroeste',
	west: 'oeste',
	northwest: 'noroeste',
	'direction a tilted array faces': 'dirección a la que mira un campo inclinado',
	'glued flat to the roof': 'pegado plano al techo',
	'a rigid panel on brackets, with air under it': 'un panel rígido sobre soportes, con aire debajo',
	'share lost to shade': 'parte perdida por sombra',
	'in the open, with fan, rack and vents on the roof; under trees it is far more':
		'al aire libre, con ventilador, portaequipajes y ventilaciones en el techo; bajo árboles es mucho más',
	'dirt, mismatch, wiring and ageing': 'suciedad, desajuste, cableado y envejecimiento',
	'PVWatts losses without its share for shade (counted apart) and for grid outages':
		'pérdidas de PVWatts sin su parte de sombra (contada aparte) y de cortes de red',
	MPPT: 'MPPT',
	PWM: 'PWM',
	'kind of charge controller': 'tipo de regulador de carga',
	'the usual kind': 'el tipo habitual',
	'efficiency of the charge controller': 'rendimiento del regulador de carga',
	'95 % for MPPT; a PWM controller pulls the panel down to the battery: about 13.4 V of 18.6 V (practice)':
		'95 % en MPPT; un regulador PWM baja el panel a la batería: unos 13.4 V de 18.6 V (práctica)',
	'temperature coefficient of power': 'coeficiente de temperatura de la potencia',
	'the warm end of standard monocrystalline, −0.37 to −0.42 %/K; the data sheet decides':
		'el extremo cálido del monocristalino normal, −0.37 a −0.42 %/K; decide la hoja de datos',
	'direction the tilted array faces': 'dirección a la que mira el campo inclinado',
	'towards the noon sun; a van parked otherwise gets less':
		'hacia el sol de mediodía; una furgoneta aparcada de otro modo recibe menos',
	'Panels are live whenever light falls on them: cover them or open the array disconnect before you touch a connector, and never part a connector under load.':
		'Los paneles tienen tensión siempre que les da la luz: cúbrelos o abre el seccionador del campo antes de tocar un conector, y nunca separes un conector con carga.',
	'Connect the controller to the battery first and the array last; take apart in the other order.':
		'Conecta el regulador primero a la batería y el campo al final; desmonta en el orden contrario.',
	'Fasten panels to the roof for highway wind, seal every hole, and keep the wind and rain off the cable entry.':
		'Sujeta los paneles al techo para el viento de autopista, sella cada agujero y protege de viento y lluvia la entrada del cable.',
	'that of {0}, {1} km away: none is published for {2}':
		'la de {0}, a {1} km: no hay ninguna publicada para {2}',
	'from the typical year of {0}: no design value is published for it':
		'del año típico de {0}: no hay valor de cálculo publicado',
	'short-circuit current of a panel': 'corriente de cortocircuito de un panel',
	'110 % of the current of greatest power (practice)': '110 % de la corriente de máxima potencia (práctica)',
	'kind of panel': 'tipo de panel',
	'by its power; read Voc, Vmp and Isc from the label': 'por su potencia; lee Voc, Vmp e Isc en la etiqueta',
	'open-circuit voltage of a panel': 'tensión en circuito abierto de un panel',
	'the high end of its kind (practice)': 'el extremo alto de su tipo (práctica)',
	'voltage of greatest power of a panel': 'tensión de máxima potencia de un panel',
	'the low end of its kind (practice)': 'el extremo bajo de su tipo (práctica)',
	'the low end: 78 % of the open-circuit voltage (practice)':
		'el extremo bajo: 78 % de la tensión en circuito abierto (práctica)',
	"A panel can't give its greatest power at {0} when its open-circuit voltage is {1}.":
		'Un panel no puede dar su máxima potencia a {0} si su tensión en circuito abierto es {1}.',
	'Read Voc (the higher) and Vmp (the lower) from the label again.':
		'Lee de nuevo en la etiqueta Voc (la mayor) y Vmp (la menor).',
	"The current of greatest power, {0}, can't be over the short-circuit current, {1}.":
		'La corriente de máxima potencia, {0}, no puede superar la de cortocircuito, {1}.',
	'Read Isc (the higher) and Imp (the lower) from the label again.':
		'Lee de nuevo en la etiqueta Isc (la mayor) e Imp (la menor).',
	'{0} does not go with Voc {1} and Isc {2}: their product is {3}, and a panel gives 60 to 85 % of it.':
		'{0} no cuadra con Voc {1} e Isc {2}: su producto es {3}, y un panel da del 60 al 85 % de él.',
	'Give the figures of one panel, from its label.': 'Da las cifras de un solo panel, de su etiqueta.',
	'Which "{0}" is meant: {1}?': '¿Cuál es "{0}": {1}?',
	'I have no climate for "{0}". Which place is nearest: {1}, or a position such as "35.2,-111.7"?':
		'No tengo clima para "{0}". ¿Qué lugar queda más cerca: {1}, o una posición como "35.2,-111.7"?',
	'Which town in "{0}": {1}, or another?': '¿Qué ciudad de "{0}": {1}, u otra?',
	'No weather station lies within 300 km of "{0}". Which of these comes nearest: {1}?':
		'No hay estación meteorológica a menos de 300 km de "{0}". ¿Cuál de estas queda más cerca: {1}?',
	'read from "{0}"': 'leído de "{0}"',
	'the largest of that name; there is also {0}': 'la mayor de ese nombre; también hay {0}',
	'weather station': 'estación meteorológica',
	'the station of that name': 'la estación de ese nombre',
	'the nearest in the climate table, {0} from {1}': 'la más cercana en la tabla climática, a {0} de {1}',
	'The climate is that of {0}, {1} away at {2}: sun and temperature at {3} may differ, in mountains by a lot.':
		'El clima es el de {0}, a {1}, en {2}: el sol y la temperatura en {3} pueden ser distintos, en la montaña mucho.',
	remote: 'remoto',
	region: 'región',
	unknown: 'desconocido',
	many: 'muchos',
	'energy needed a day': 'energía necesaria al día',
	'charge needed a day': 'carga necesaria al día (Ah)',
	'Give the power of a panel and their number, or the whole array.':
		'Da la potencia de un panel y su número, o el campo entero.',
	'{0} panels of {1} make {2}, not {3}.': '{0} paneles de {1} hacen {2}, no {3}.',
	'In full shade an array gives nothing worth counting.':
		'En plena sombra un campo no da nada que merezca contarse.',
	'Give the share lost to shade as less than 100 %.': 'Da la parte perdida por sombra menor del 100 %.',
	'Give the energy or the charge, whichever you trust.': 'Da la energía o la carga en Ah, la que sea fiable.',
	'{0} and {1} a day contradict each other: at {2} V that charge is {3}.':
		'{0} y {1} al día se contradicen: a {2} V esa carga son {3}.',
	'no array was named: the answer is for each 100 W': 'no se indicó campo: la respuesta es por cada 100 W',
	'into the battery a day': 'a la batería al día',
	'charge a day at {0} V': 'carga al día a {0} V',
	'mean power of the best hour': 'potencia media de la mejor hora',
	'tilted {0}': 'inclinado {0}',
	'{0} a day of sun on {1} {2} at {3}; {4} % of it reaches the battery.':
		'{0} de sol al día sobre {1}, {2}, en {3}; el {4} % llega a la batería.',
	'The sun does not rise at {0} in {1}.': 'En {0} el sol no sale en {1}.',
	'Worst month {0}': 'Peor mes {0}',
	'{0}: {1} of sun a day, {2} from each 100 W': '{0}: {1} de sol al día, {2} de cada 100 W',
	'Worst month {0}: {1} a day = {2} at {3} V': 'Peor mes {0}: {1} al día = {2} a {3} V',
	'{0} a day = {1} at {2} V in {3}': '{0} al día = {1} a {2} V en {3}',
	'share of the need that is covered': 'parte de la necesidad que se cubre',
	'array for the whole need': 'campo para toda la necesidad',
	'for up to {0} a day': 'hasta {0} al día',
	'charge to put back': 'carga que reponer',
	'Then the answer says in how many such days the array puts it back.':
		'Entonces la respuesta dice en cuántos días así la repone el campo.',
	'the array is to be sized': 'hay que dimensionar el campo',
	'How much is used a day (Wh or Ah)? The daily energy budget adds it up from the loads.':
		'¿Cuánto se usa al día (Wh o Ah)? El balance diario de energía lo suma a partir de las cargas.',
	'In {0} this array gives next to nothing: it never puts that back.':
		'En {0} este campo no da casi nada: nunca repone eso.',
	'Name another month, or charge from the alternator or shore power.':
		'Indica otro mes, o carga con el alternador o la toma exterior.',
	'mean voltage while charging': 'tensión media durante la carga',
	'usual of lithium; lead-acid takes a fifth more (practice)':
		'habitual del litio; el plomo pide una quinta parte más (práctica)',
	'days to put it back': 'días para reponerla',
	'What is drawn meanwhile is not in it: simulate counts loads and sun together.':
		'Lo que se consume mientras tanto no está contado: simulate cuenta cargas y sol juntos.',
	'{0} days in {1} to put back {2}: {3} a day': '{0} días en {1} para reponer {2}: {3} al día',
	'Enough in {0}: {1} a day for a need of {2}': 'Basta en {0}: {1} al día para una necesidad de {2}',
	'No array covers the need in {0}; another source must.':
		'Ningún campo cubre la necesidad en {0}; debe hacerlo otra fuente.',
	'The sun leaves {0} a day open in {1}: take {2}, or plan driving or shore power.':
		'El sol deja {0} al día sin cubrir en {1}: toma {2}, o planifica conducción o corriente exterior.',
	'Short in {0}: {1} a day for a need of {2}': 'Falta en {0}: {1} al día para una necesidad de {2}',
	'Name another month, or plan driving, shore power or fuel for it.':
		'Indica otro mes, o planifica para él conducción, corriente exterior o combustible.',
	'At {0} in {1} the sun gives next to nothing: no array on a roof covers that need.':
		'En {0} en {1} el sol no da casi nada: ningún campo sobre un techo cubre esa necesidad.',
	'into the battery a day with it': 'a la batería al día con él',
	'charge a day at {0} V with it': 'carga al día a {0} V con él',
	'array for the need': 'campo para la necesidad',
	'the sun gives next to nothing then': 'el sol no da casi nada entonces',
	'{0}, the worst month': '{0}, el peor mes',
	'{0} takes some {1} of panels: more than most van roofs hold. Cut the need, tilt the panels or add driving or shore power.':
		'{0} pide unos {1} de paneles: más de lo que cabe en la mayoría de los techos. Reduce la necesidad, inclina los paneles o añade conducción o corriente exterior.',
	'{0} of panels for {1} a day in {2}': '{0} de paneles para {1} al día en {2}',
	'A watt of panel gives {0} Wh a day at {1} in {2}: {3} of sun, less heat, losses and controller.':
		'Un vatio de panel da {0} Wh al día en {1} en {2}: {3} de sol, menos calor, pérdidas y regulador.',
	'sun hours on the panels a day': 'horas de sol en los paneles al día',
	'worst month': 'peor mes',
	'a day in the worst month': 'un día del peor mes',
	'a day in the mean of the year': 'un día de la media del año',
	'a day in {0}': 'un día de {0}',
	'no month was named: the worst of the year counts': 'no se indicó mes: cuenta el peor del año',
	'{0} a day, the worst month': '{0} al día, el peor mes',
	'tilted {0} to the noon sun': 'inclinado {0} hacia el sol de mediodía',
	'{0} a day': '{0} al día',
	'{0} of sun a day in {1}: plan another source for it.':
		'{0} de sol al día en {1}: planifica otra fuente para ese mes.',
	"This is the month's mean: about one day in ten gives less than {0} % of it. Whether the bank bears that is a question for simulate.":
		'Esta es la media del mes: cerca de un día de cada diez da menos del {0} % de ella. Si el banco lo aguanta lo dice el tema de simulación.',
	'Shade on part of one panel can take down its whole string: watch rack, fan and antenna shadows, and join shaded panels in parallel.':
		'La sombra en una parte de un panel puede anular toda su rama: vigila las sombras de portaequipajes, ventilador y antena, y une en paralelo los paneles con sombra.',
	'It freezes in this month: snow on a flat panel stops it altogether until it is cleared.':
		'En este mes hiela: la nieve sobre un panel plano lo para del todo hasta que se quita.',
	'A panel glued to the roof runs hotter (up to {0} on the mean day): it gives less, ages sooner and warms the van.':
		'Un panel pegado al techo trabaja más caliente (hasta {0} en el día medio): da menos, envejece antes y calienta la furgoneta.',
	'irradiation on the horizontal, mean day': 'irradiación en la horizontal, día medio',
	'of it from the sky': 'de ella, del cielo',
	'daily swing of the temperature': 'variación diaria de la temperatura',
	'none is published for the station: 5 K either way (practice)':
		'no hay ninguna publicada para la estación: 5 K a cada lado (práctica)',
	'irradiation on the panels': 'irradiación en los paneles',
	'hottest cell of the day': 'celda más caliente del día',
	'energy from the panels': 'energía de los paneles',
	'into the battery': 'a la batería',
	charge: 'carga (Ah)',
};
