import type { Phrasebook } from '../phrasebook.js';

export const pipe: Phrasebook = {
	'pipe size': 'medida de la tubería',
	flow: 'caudal',
	shower: 'ducha',
	'bathroom tap': 'grifo del baño',
	'kitchen tap': 'grifo de la cocina',
	fixture: 'punto de consumo',
	'How long is the pipe from the pump to the fixture?':
		'¿Qué longitud tiene la tubería de la bomba al punto de consumo?',
	bore: 'diámetro interior',
	'pressure at the pump': 'presión en la bomba',
	'the 25 psi at which the usual 12 V pump starts: the least it holds (practice)':
		'los 25 psi a los que arranca la bomba habitual de 12 V: lo mínimo que mantiene (práctica)',
	'pressure wanted at the fixture': 'presión deseada en el punto de consumo',
	'10 psi, enough for a water-saving head (practice)': '10 psi, bastan para un cabezal de ahorro (práctica)',
	'rise from pump to fixture': 'desnivel de la bomba al punto de consumo',
	'a shower head above a pump on the floor (practice)':
		'un cabezal de ducha sobre una bomba en el suelo (práctica)',
	elbows: 'codos',
	'a usual run (practice)': 'un recorrido habitual (práctica)',
	'tees taken through the branch': 'tes tomadas por la derivación',
	'stop valves': 'válvulas de paso',
	crimp: 'de engaste',
	expansion: 'de expansión',
	'kind of fittings': 'tipo de accesorios',
	'the safe side: fittings pushed into the pipe, narrower than it':
		'el lado seguro: accesorios metidos en la tubería, más estrechos que ella',
	'pump current': 'corriente de la bomba',
	'pump power': 'potencia de la bomba',
	'pump voltage': 'tensión de la bomba',
	'wire from the fuse block to the pump, one way': 'cable de la caja de fusibles a la bomba, ida',
	'What flow (or which fixture)?': '¿Qué caudal (o qué punto de consumo)?',
	'Give a rise no larger than the length of the pipe.':
		'Da un desnivel no mayor que la longitud de la tubería.',
	"A pipe of {0} can't rise {1}.": 'Una tubería de {0} no puede subir {1}.',
	'I read "{0}" as the pipe size; no such tubing is in my tables.':
		'Leo "{0}" como medida de la tubería; no hay tal tubo en mis tablas.',
	'Name one of: {0}; or the bore of a hose.':
		'Indica una de estas: {0}; o el diámetro interior de una manguera.',
	'{0}: {1} lost, {2} left at the fixture': '{0}: se pierden {1}, quedan {2} en el punto de consumo',
	'{0} will do: {1} lost, {2} left at the fixture':
		'{0} basta: se pierden {1}, quedan {2} en el punto de consumo',
	'No pipe offered will do: even {0} leaves only {1}':
		'Ninguna tubería ofrecida basta: incluso {0} deja solo {1}',
	'{0} is too thin: the water runs at {1}': '{0} es demasiado fina: el agua va a {1}',
	"{0} won't do: {1} lost, {2} left at the fixture":
		'{0} no basta: se pierden {1}, quedan {2} en el punto de consumo',
	'pressure at the fixture': 'presión en el punto de consumo',
	velocity: 'velocidad',
	'Pipe {0}, fittings {1}, rise {2}; the water runs at {3}.':
		'Tubería {0}, accesorios {1}, desnivel {2}; el agua va a {3}.',
	'the most such a fixture may pass': 'lo máximo que puede dejar pasar ese punto',
	'{0} bore': 'diámetro interior {0}',
	'Reynolds number': 'número de Reynolds',
	'friction factor': 'coeficiente de fricción',
	'loss in the straight pipe': 'pérdida en el tramo recto',
	'loss in the fittings': 'pérdida en los accesorios',
	rise: 'desnivel',
	'pressure left at the fixture': 'presión que queda en el punto de consumo',
	passes: 'sirve',
	fails: 'no sirve',
	'bore it was judged by': 'diámetro interior con que se juzgó',
	'pressure lost in all': 'presión perdida en total',
	'lost in the straight pipe': 'perdida en el tramo recto',
	'lost in the fittings': 'perdida en los accesorios',
	'lost in the rise': 'perdida en el desnivel',
	'straight pipe by Hazen-Williams, for comparison': 'tramo recto según Hazen-Williams, para comparar',
	'fittings as straight pipe': 'accesorios como tramo recto',
	'water standing in the pipe': 'agua que queda en la tubería',
	'time until water from the far end arrives': 'tiempo hasta que llega agua del extremo lejano',
	'leaves {0}, water at {1}': 'deja {0}, agua a {1}',
	'Less than {0} is left at the fixture; the pump must hold {1}.':
		'Quedan menos de {0} en el punto de consumo; la bomba debe mantener {1}.',
	'Less than {0} is left at the fixture; {1} would do, or a pump that holds {2}.':
		'Quedan menos de {0} en el punto de consumo; bastaría {1}, o una bomba que mantenga {2}.',
	'At {0} (limit {1}) the pipe sings and hammers; take less flow.':
		'A {0} (límite {1}) la tubería silba y golpea; toma menos caudal.',
	'At {0} (limit {1}) the pipe sings and hammers; {2} keeps it quiet.':
		'A {0} (límite {1}) la tubería silba y golpea; {2} la mantiene callada.',
	'{0} is above what van plumbing is rated for; fit a pressure reducer.':
		'{0} supera aquello para lo que está hecha la fontanería de una furgoneta; monta un reductor de presión.',
	'At this Reynolds number Hazen-Williams reads too low; Darcy-Weisbach counts.':
		'Con este número de Reynolds Hazen-Williams da de menos; cuenta Darcy-Weisbach.',
	"The pump's wire needs its current or power; read it from the label.":
		'El cable de la bomba necesita su corriente o potencia; léela en la etiqueta.',
	'wire to the pump': 'cable a la bomba',
	'fuse of the pump': 'fusible de la bomba',
	'The wire to the pump could not be sized from these numbers; ask the wire topic.':
		'El cable de la bomba no se pudo dimensionar con estos números; pregunta al tema del cable.',
};
