import type { Phrasebook } from '../phrasebook.js';

export const strut: Phrasebook = {
	'mass of the lid': 'masa de la tapa',
	'What does the lid weigh?': '¿Cuánto pesa la tapa?',
	'hinge to free edge': 'de la bisagra al borde libre',
	'hinge to centre of mass': 'de la bisagra al centro de masa',
	'half way from the hinge to the free edge, an even lid':
		'a medio camino de la bisagra al borde libre, una tapa uniforme',
	'lever of the spring': 'brazo del resorte',
	'spring on the lid, from the hinge': 'resorte en la tapa, desde la bisagra',
	'spring on the body, below the hinge': 'resorte en el cuerpo, por debajo de la bisagra',
	'spring on the body, out from the hinge': 'resorte en el cuerpo, hacia fuera de la bisagra',
	'straight below the hinge': 'recto debajo de la bisagra',
	'spring on the lid, under its face': 'resorte en la tapa, bajo su cara',
	'in the line of hinge and lid': 'en la línea de bisagra y tapa',
	'hinge to handle': 'de la bisagra al tirador',
	'at the free edge': 'en el borde libre',
	springs: 'resortes',
	'one on each side': 'uno a cada lado',
	'force of the spring to be checked': 'fuerza del resorte que se comprueba',
	flat: 'plano',
	hatch: 'compuerta',
	'how it hangs when shut': 'cómo cuelga cerrada',
	'lying flat when shut, as on a bench': 'horizontal cerrada, como en un banco',
	'opening angle': 'ángulo de apertura',
	'a quarter turn': 'un cuarto de vuelta',
	'coldest use': 'uso más frío',
	'winter use; springs weaken in the cold': 'uso en invierno; los resortes pierden fuerza con el frío',
	'hottest use': 'uso más caliente',
	'a closed van in summer; springs stiffen in the heat':
		'una furgoneta cerrada en verano; los resortes se endurecen con el calor',
	'force pushed in over force extended': 'fuerza metido entre fuerza extendido',
	'the low end of the usual 1.2 to 1.4, the safe side for holding (practice)':
		'el extremo bajo de lo habitual, 1.2 a 1.4, el lado seguro para sostener (práctica)',
	'How long is the lid from hinge to free edge?': '¿Qué longitud tiene la tapa de la bisagra al borde libre?',
	'Where does the spring sit on the lid, from the hinge (or what is its lever)?':
		'¿Dónde va el resorte en la tapa, desde la bisagra (o cuál es su brazo)?',
	'I read the centre of mass at {0} on a lid {1} long.':
		'Leo el centro de masa a {0} en una tapa de {1} de largo.',
	'Both are measured from the hinge; the centre of mass lies within the lid.':
		'Los dos se miden desde la bisagra; el centro de masa está dentro de la tapa.',
	'moment of the lid, level': 'momento de la tapa, horizontal',
	'force to balance it': 'fuerza para equilibrarla',
	'force that balances it': 'fuerza que la equilibra',
	'This looks at one place of the swing. Name where the spring sits on lid and body to have the whole swing checked.':
		'Esto mira un solo punto del giro. Indica dónde va el resorte en tapa y cuerpo para comprobar todo el giro.',
	'with reserve, in the cold': 'con reserva, en frío',
	'How far below the hinge does the spring sit on the body?':
		'¿A qué distancia por debajo de la bisagra va el resorte en el cuerpo?',
	'I read the spring {0} from the hinge on a lid {1} long.':
		'Leo el resorte a {0} de la bisagra en una tapa de {1} de largo.',
	'Both are measured from the hinge.': 'Los dos se miden desde la bisagra.',
	'Mounted so, the spring does not lengthen all the way as the lid opens: it would be longest before the lid is open.':
		'Montado así, el resorte no se alarga todo el camino al abrir la tapa: sería más largo antes de abrirse del todo.',
	"Move the body's end lower or further back, or open the lid less.":
		'Baja o retrasa el extremo del cuerpo, o abre menos la tapa.',
	"Between mid swing and open the spring's line passes the hinge on the wrong side: no force holds the lid so.":
		'Entre medio giro y abierta la línea del resorte pasa por el lado malo de la bisagra: así ninguna fuerza sostiene la tapa.',
	'Between mid swing and open the weight does not close this lid: no spring is needed to hold it.':
		'Entre medio giro y abierta el peso no cierra esta tapa: no hace falta resorte para sostenerla.',
	"Move the body's end lower or further out, so that the spring pushes the lid open.":
		'Baja o saca más el extremo del cuerpo, para que el resorte empuje la tapa hacia abierta.',
	'Check the opening angle and how the lid hangs.': 'Comprueba el ángulo de apertura y cómo cuelga la tapa.',
	'moment of the lid at mid swing': 'momento de la tapa a medio giro',
	'lever of the spring at mid swing': 'brazo del resorte a medio giro',
	'hinge to the line of the spring': 'de la bisagra a la línea del resorte',
	'force that balances it from mid swing to open': 'fuerza que la equilibra de medio giro a abierta',
	'{0} springs, force rising to {1} times as they are pushed in':
		'{0} resortes, fuerza que sube a {1} veces al meterlos',
	'Shut, only {0} mm lie between the mounts; a spring of {1} mm stroke needs about {2} mm. Move a mount.':
		'Cerrada, solo quedan {0} mm entre los soportes; un resorte de {1} mm de carrera necesita unos {2} mm. Mueve un soporte.',
	'force needed, each': 'fuerza necesaria, cada uno',
	'spring, each': 'resorte, cada uno',
	'{0} just balances the lid in the cold, with less than a tenth in hand: it will sink as the spring ages. {1} each would hold.':
		'{0} apenas equilibran la tapa en frío, con menos de una décima parte de margen: bajará cuando el resorte envejezca. Aguantarían {1} cada uno.',
	'{0} each does not hold the lid from mid swing to open in the cold: it falls on whoever is under it. It takes at least {1} each ({2} as sold).':
		'{0} cada uno no sostienen la tapa de medio giro a abierta en frío: cae sobre quien esté debajo. Hacen falta al menos {1} cada uno ({2} como se venden).',
	'{0} only just holds: take {1} each': '{0} apenas sostienen: toma {1} cada uno',
	'{0} is too weak: the lid falls. Take {1} each': '{0} es demasiado poco: la tapa cae. Toma {1} cada uno',
	'holding at mid swing': 'sostener a medio giro',
	'Needed {0} each, a tenth in hand at {1}.': 'Hacen falta {0} cada uno, una décima parte de margen a {1}.',
	'below the {0} needed': 'por debajo de los {0} necesarios',
	'holds with more in hand, harder to close': 'sostiene con más margen, cuesta más cerrar',
	'{0} × {1} gas spring': '{0} × resorte de gas de {1}',
	'{0} × {1} holds the lid': '{0} × {1} sostienen la tapa',
	'Balances the level lid at {0} with a tenth in hand; {1} each is needed.':
		'Equilibra la tapa horizontal a {0} con una décima parte de margen; hacen falta {1} cada uno.',
	'Holds from mid swing to open at {0} with a tenth in hand; {1} each is needed.':
		'Sostiene de medio giro a abierta a {0} con una décima parte de margen; hacen falta {1} cada uno.',
	'holds by itself from an opening of': 'se sostiene sola desde una apertura de',
	'Somewhere in the swing a hand must give {0} at the handle, more than the usual {1} N. Move a mount or the handle.':
		'En algún punto del giro la mano debe dar {0} en el tirador, más de lo habitual, {1} N. Mueve un soporte o el tirador.',
	'Shut and hot, the springs lift the lid with {0} at the handle: it needs a latch that holds, also in a crash.':
		'Cerrada y caliente, los resortes levantan la tapa con {0} en el tirador: necesita un cierre que aguante, también en un choque.',
};
