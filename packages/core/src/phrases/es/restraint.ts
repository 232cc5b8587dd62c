import type { Phrasebook } from '../phrasebook.js';

export const restraint: Phrasebook = {
	'mass of the item': 'masa de la pieza',
	'What does the item weigh (with what is in it)?': '¿Cuánto pesa la pieza (con lo que lleva dentro)?',
	'centre of mass over its base': 'centro de masa sobre su base',
	'height of the item': 'altura de la pieza',
	'bolt spacing along the van': 'separación de los pernos a lo largo de la furgoneta',
	'How far apart are the bolts along the van, first to last?':
		'¿Qué separación hay entre los pernos a lo largo de la furgoneta, del primero al último?',
	'bolt spacing across the van': 'separación de los pernos a lo ancho de la furgoneta',
	'How far apart are the bolts across the van?':
		'¿Qué separación hay entre los pernos a lo ancho de la furgoneta?',
	bolts: 'pernos',
	thread: 'rosca',
	'property class': 'clase de resistencia',
	'the usual class; read it from the head': 'la clase habitual; léela en la cabeza',
	crash: 'choque',
	'delivery van': 'furgoneta de reparto',
	driving: 'marcha',
	'load case': 'caso de carga',
	'people ride in the same room: held in a crash, not only under braking':
		'viajan personas en el mismo espacio: sujeto en un choque, no solo al frenar',
	'forward load in g': 'carga hacia delante en g',
	'prying factor': 'factor de palanca',
	'an angle bracket with its bolt in mid leg doubles the pull (a stiff foot or a bolt through the base: 1)':
		'una escuadra con su perno a media pata duplica el tirón (un pie rígido o un perno por la base: 1)',
	'through-bolted': 'perno pasante',
	'rivet nut': 'tuerca remachable',
	'wood screw': 'tornillo para madera',
	'how it is bolted': 'cómo va atornillada',
	'through-bolts with nuts and backing plates': 'pernos pasantes con tuercas y placas de refuerzo',
	'pull-out load of the insert': 'carga de arranque del inserto',
	'thickness of what it is bolted to': 'espesor de aquello a lo que se atornilla',
	steel: 'acero',
	aluminium: 'aluminio',
	'metal of the sheet': 'metal de la chapa',
	'steel body': 'carrocería de acero',
	'washer or backing plate': 'arandela o placa de refuerzo',
	'safety factor on the proof load': 'factor de seguridad sobre la carga de prueba',
	'two against lasting stretch (practice)': 'dos contra el alargamiento permanente (práctica)',
	'it holds people': 'sujeta a personas',
	'How tall is the item (or how high is its centre of mass over its base)?':
		'¿Qué altura tiene la pieza (o a qué altura sobre su base está el centro de masa)?',
	'I do not size seats, belts, child seats or their anchorages: lives hang on tests that no sum replaces.':
		'No dimensiono asientos, cinturones, sillas infantiles ni sus anclajes: hay vidas que dependen de ensayos que ninguna cuenta sustituye.',
	'Use a seat and belt set certified for this van and fit it as its maker says, or have a licensed engineer test the anchorage (49 CFR 571.207, 571.209 and 571.210; UN R14 and R17).':
		'Usa un conjunto de asiento y cinturón certificado para esta furgoneta y móntalo como dice su fabricante, o haz que un ingeniero autorizado ensaye el anclaje (49 CFR 571.207, 571.209 y 571.210; UN R14 y R17).',
	'Wood screws pull out of a floor in a crash; I do not size them for heavy items.':
		'Los tornillos para madera se arrancan del suelo en un choque; no los dimensiono para piezas pesadas.',
	'Bolt through the floor with nuts and backing plates, or into rated rails.':
		'Atornilla a través del suelo con tuercas y placas de refuerzo, o a raíles homologados.',
	'What pull-out load does the maker give for the rivet nut in this sheet? No general standard has one.':
		'¿Qué carga de arranque da el fabricante para la tuerca remachable en esta chapa? Ninguna norma general la tiene.',
	'I read a centre of mass {0} up on an item {1} tall.':
		'Leo un centro de masa a {0} de altura en una pieza de {1}.',
	'The centre of mass lies within the item.': 'El centro de masa está dentro de la pieza.',
	'half its height': 'la mitad de su altura',
	'I read {0} as the property class; I have proof loads for 8.8 and 10.9 alone.':
		'Leo {0} como clase de resistencia; solo tengo cargas de prueba para clase 8.8 y clase 10.9.',
	'Use 8.8 or 10.9, marked on the head. Stainless and plain bolts carry less.':
		'Usa clase 8.8 o clase 10.9, marcada en la cabeza. Los pernos inoxidables y corrientes aguantan menos.',
	'{0} bolts in one line do not keep an item from tipping over them.':
		'{0} pernos en una sola línea no evitan que la pieza vuelque sobre ellos.',
	'Use at least four, at the corners of the base.': 'Usa al menos cuatro, en las esquinas de la base.',
	'No fixing in my table holds it: even {0} would be loaded to {1}.':
		'Ninguna fijación de mi tabla lo aguanta: incluso {0} iría cargada al {1}.',
	'Set the bolts further apart, hold the item at its top as well, lower it, use a thicker plate, or split the load.':
		'Separa más los pernos, sujeta la pieza también por arriba, bájala, usa una placa más gruesa o reparte la carga.',
	'{0} of what is allowed': '{0} de lo admitido',
	'{0} hold {1} at {2} g ({3} used)': '{0} sujetan {1} a {2} g ({3} usado)',
	'{0} × {1} class {2}': '{0} × {1} clase {2}',
	'{0} {1} on its centre of mass: each bolt {2} in shear and up to {3} in tension.':
		'{0} {1} en su centro de masa: cada perno {2} a cortante y hasta {3} a tracción.',
	'force {0}': 'fuerza {0}',
	'shear in each bolt': 'cortante en cada perno',
	'tension in the most loaded bolt': 'tracción en el perno más cargado',
	'allowed in shear': 'admitido a cortante',
	'proof load {0} N, safety factor {1}': 'carga de prueba {0} N, factor de seguridad {1}',
	'allowed in tension': 'admitido a tracción',
	used: 'usado',
	'share used': 'parte usada',
	'deciding direction': 'dirección que decide',
	'This load case covers braking and bends alone. In a crash the item comes loose: where people ride in the same room, ask for the crash case.':
		'Este caso de carga cubre solo frenado y curvas. En un choque la pieza se suelta: donde viajan personas en el mismo espacio, pide el caso de choque.',
	'The bolts are checked, what they are bolted to is not: body sheet under 1 mm tears first. Name its thickness, and use backing plates of 3 mm or more over ribs.':
		'Los pernos están comprobados, aquello a lo que se atornillan no: la chapa de carrocería de menos de 1 mm se rasga antes. Indica su espesor, y usa placas de refuerzo de 3 mm o más sobre costillas.',
	'No washer or backing plate was named: the sheet is checked as if the nut pulled on the bare hole. Name its diameter.':
		'No se indicó arandela ni placa: la chapa se comprueba como si la tuerca tirara del agujero desnudo. Indica su diámetro.',
	'The odd bolt is not counted: two even lines are taken.':
		'El perno impar no se cuenta: se toman dos líneas iguales.',
	'too weak': 'demasiado débil',
	'{0} are enough ({1} used)': '{0} bastan ({1} usado)',
	'Set the bolts further apart, hold the item at its top as well, or lower it.':
		'Separa más los pernos, sujeta la pieza también por arriba o bájala.',
	'{0} would hold ({1}).': '{0} aguantarían ({1}).',
	'{0} are loaded to {1} {2}: the item comes loose. {3}':
		'{0} van cargados al {1} {2}: la pieza se suelta. {3}',
	'{0} are too weak ({1})': '{0} son demasiado débiles ({1})',
};
