import type { Phrasebook } from '../phrasebook.js';

export const fuse: Phrasebook = {
	'load current': 'corriente de la carga',
	'rating of the fuse to be judged': 'corriente nominal del fusible que se juzga',
	'load power': 'potencia de la carga',
	'conductor it protects': 'conductor que protege',
	'What size is the thinnest conductor behind it?': '¿Qué sección tiene el conductor más fino detrás de él?',
	blade: 'cuchilla',
	'sub-miniature blade': 'cuchilla subminiatura',
	cartridge: 'cartucho',
	strip: 'lámina',
	'single-bolt': 'un solo perno',
	'class t': 'clase T',
	'class j': 'clase J',
	household: 'doméstico',
	'kind of fuse to be judged': 'tipo de fusible que se juzga',
	'main fuse of the bank': 'fusible principal del banco',
	'a branch, unless the main fuse of the bank is named':
		'una derivación, salvo que se indique el fusible principal del banco',
	'prospective short-circuit current at the fuse': 'corriente de cortocircuito prevista en el fusible',
	'rating of the fuse before it': 'corriente nominal del fusible anterior',
	'largest rating of the fuses after it': 'mayor corriente nominal de los fusibles posteriores',
	'one-way length of the conductor': 'longitud de ida del conductor',
	'conductors in parallel in each leg': 'conductores en paralelo en cada tramo',
	'one conductor in each leg': 'un conductor en cada tramo',
	'What current does it carry (or which fuse is to be judged)?':
		'¿Qué corriente lleva (o qué fusible hay que juzgar)?',
	'I read "{0}" as the conductor; no such size is in my tables.':
		'Leo "{0}" como conductor; no hay tal sección en mis tablas.',
	'I have no ampacity for {0} at {1} insulation under these rules.':
		'No tengo corriente admisible para {0} con aislamiento de {1} en estas reglas.',
	"Name a size of this region's range: {0}.": 'Indica una sección de la gama de esta región: {0}.',
	'What is the bank: capacity and chemistry (or its short-circuit current from the maker)?':
		'¿Cuál es el banco: capacidad y química (o su corriente de cortocircuito según el fabricante)?',
	'as at the terminals of the bank: cable before the fuse only lowers it':
		'como en los bornes del banco: el cable antes del fusible solo la baja',
	'{0} may have no fuse above {1} here, and the load needs {2}: no standard rating does both.':
		'{0} no puede llevar aquí un fusible de más de {1}, y la carga necesita {2}: ningún valor normalizado cumple ambas cosas.',
	'Split the load over several conductors, each with its own fuse.':
		'Reparte la carga entre varios conductores, cada uno con su propio fusible.',
	'Run at least {0} for this load, or shed load; the wire topic checks the drop too.':
		'Pon al menos {0} para esta carga, o quita carga; el tema del cable comprueba también la caída.',
	'smallest rating': 'valor mínimo',
	'allowable current of the conductor': 'corriente admisible del conductor',
	'largest fuse on this small conductor': 'mayor fusible para este conductor fino',
	rating: 'corriente nominal',
	'rating to be judged': 'corriente nominal que se juzga',
	'{0} does not protect {1}: the conductor can overheat before the fuse opens. At most {2} here.':
		'{0} no protege {1}: el conductor puede sobrecalentarse antes de que abra el fusible. Aquí como máximo {2}.',
	"The federal boat rule would allow up to 150 % of the table value below 50 V; we don't use that.":
		'La norma federal de barcos permitiría hasta el 150 % del valor de tabla por debajo de 50 V; no lo usamos.',
	'{0} is under the {1} this load needs: it will age and open for nothing.':
		'{0} queda por debajo de los {1} que necesita esta carga: envejecerá y abrirá sin motivo.',
	'A device rated for alternating current only may never open on a battery: its arc has no zero crossing to go out at. Its AC interrupting rating, however high, counts for nothing here.':
		'Un dispositivo solo para corriente alterna puede no abrir nunca con una batería: su arco no tiene paso por cero en que apagarse. Su poder de corte en alterna, por alto que sea, aquí no cuenta nada.',
	'A {0} is rated for {1} V at most: on {2} V it may burn on instead of opening.':
		'{0}: vale para {1} V como máximo; con {2} V puede seguir ardiendo en vez de abrir.',
	'{0} is not made as a {1}: {2} is the largest.': '{0} no se fabrica como {1}: {2} es el mayor.',
	'A {0} breaks {1}; a short here draws up to {2}. It can burst and burn on.':
		'{0}: corta {1}; un cortocircuito aquí llega a {2}. Puede reventar y seguir ardiendo.',
	'Never a {0} as the main fuse of a lithium bank of 100 Ah or more: it breaks {1}, the bank can give many times that.':
		'Nunca {0} como fusible principal de un banco de litio de 100 Ah o más: corta {1}, el banco puede dar muchas veces eso.',
	'at least {0}': 'al menos {0}',
	'The direct-current rating of a {0} is optional: the fuse itself must be marked for {1} V DC or more and an interrupting rating of{2} DC.':
		'El valor en corriente continua es opcional en {0}: el propio fusible debe estar marcado para {1} V CC o más y un poder de corte de{2} en CC.',
	' the fault current': ' la corriente de falla',
	'Most fuses of this kind are 32 V parts: on {0} V only those marked 58 V.':
		'La mayoría de los fusibles de este tipo son de 32 V: con {0} V, solo los marcados 58 V.',
	'This bank is charged at up to {0}, above the {1} V of the fuse: take one of a higher voltage.':
		'Este banco se carga hasta {0}, por encima de los {1} V del fusible: toma uno de más tensión.',
	'smallest rating for the load': 'valor mínimo para la carga',
	'largest rating for the conductor': 'valor máximo para el conductor',
	'what the federal boat rule would allow (150 %)': 'lo que permitiría la norma federal de barcos (150 %)',
	'kind of fuse': 'tipo de fusible',
	'none of my tables': 'ninguno de mis tablas',
	'verdict on the kind': 'veredicto sobre el tipo',
	'prospective short-circuit current': 'corriente de cortocircuito prevista',
	'what that kind breaks': 'lo que corta ese tipo',
	'interrupting rating it must be marked with': 'poder de corte con que debe estar marcado',
	'what that kind is rated for': 'para qué vale ese tipo',
	'carries at least 100 h ({0} %)': 'aguanta al menos 100 h ({0} %)',
	'at {0} % opens no sooner than': 'con el {0} % no abre antes de',
	'at {0} % opens no later than': 'con el {0} % no abre después de',
	'short at the far end, at its lowest': 'cortocircuito en el extremo lejano, el mínimo',
	'short-circuit current at the far end, at its lowest':
		'corriente de cortocircuito en el extremo lejano, la mínima',
	'that short is cut off within': 'ese cortocircuito se corta en',
	'A short at the far end draws only {0} times the rating: the fuse opens slowly or not at all while the conductor heats. Take a thicker conductor or a smaller fuse.':
		'Un cortocircuito en el extremo lejano solo toma {0} veces el valor nominal: el fusible abre despacio o no abre mientras el conductor se calienta. Toma un conductor más grueso o un fusible menor.',
	'rating of the fuse before it over this one': 'fusible anterior entre este',
	'this rating over the largest after it': 'este entre el mayor posterior',
	"{0} before {1} is {2} : 1, so the smaller mostly opens first. Indicative only: in a dead short both may open; the makers' curves decide.":
		'{0} antes de {1} son {2} : 1, así que casi siempre abre primero el menor. Solo orientativo: en un cortocircuito franco pueden abrir los dos; deciden las curvas de los fabricantes.',
	'{0} before {1} is only {2} : 1: both may open, and everything behind the larger goes dark. Aim for {3} : 1 between fuses of one kind (indicative).':
		'{0} antes de {1} son solo {2} : 1: pueden abrir los dos, y se apaga todo lo que hay tras el mayor. Busca {3} : 1 entre fusibles del mismo tipo (orientativo).',
	'The kind is chosen by voltage and rating alone: name the bank (capacity and chemistry) or the fault current to have the interrupting rating checked.':
		'El tipo se elige solo por tensión y valor: indica el banco (capacidad y química) o la corriente de falla para comprobar el poder de corte.',
	'The fault current rests on the usual resistance of the chemistry: ask the maker for the short-circuit current of this battery.':
		'La corriente de falla se basa en la resistencia habitual de la química: pide al fabricante la corriente de cortocircuito de esta batería.',
	"Fuses are rated at room temperature: at {0} they carry less and open sooner. Mount the fuse in a cooler place or ask the maker's derating curve; never answer with a rating above the conductor's.":
		'Los fusibles se miden a temperatura ambiente: a {0} aguantan menos y abren antes. Monta el fusible en un sitio más fresco o pide la curva de corrección del fabricante; nunca respondas con un valor mayor que el del conductor.',
	'A motor draws several times its running current at the start: take a slow fuse.':
		'Un motor toma al arrancar varias veces su corriente de marcha: usa un fusible lento.',
	'The load is over 80 % of the rating for hours: the fuse runs hot.':
		'La carga supera durante horas el 80 % del valor nominal: el fusible trabaja caliente.',
	'The load is {0}. ': 'La carga es {0}. ',
	' A short draws up to {0}.': ' Un cortocircuito llega a {0}.',
	'{0}{1} may have at most {2} here.{3}': '{0}{1} admite aquí como máximo {2}.{3}',
	'at most {0}': 'como máximo {0}',
	'a thicker conductor': 'un conductor más grueso',
	'{0} is too large for {1}: {2}': '{0} es demasiado para {1}: {2}',
	ampacity: 'corriente admisible',
	'{0} is too small for the load, and {1} takes no larger': '{0} es poco para la carga, y {1} no admite más',
	'{0} is too small for the load: take {1}': '{0} es poco para la carga: toma {1}',
	'No fuse of my tables': 'Ningún fusible de mis tablas',
	'Not that kind of fuse': 'Ese tipo de fusible no',
	'{0}: ask the maker for {1} with the DC rating needed':
		'{0}: pide al fabricante {1} con el valor en CC necesario',
	'{0}: take a {1} {2}': '{0}: toma {2} de {1}',
	'interrupting rating': 'poder de corte',
	' is right on {0}': ' es correcto en {0}',
	' at the source end of {0}': ' en el extremo de la fuente de {0}',
	'{0} Within that the load decides: at least 125 % of what is on for 3 h or more.':
		'{0} Dentro de eso decide el consumo: al menos el 125 % de lo que esté encendido 3 h o más.',
	'{0} {1} at most on {2}': '{0} {1} como máximo en {2}',
};
