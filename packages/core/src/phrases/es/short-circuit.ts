import type { Phrasebook } from '../phrasebook.js';

export const shortCircuit: Phrasebook = {
	'point of the fault': 'punto de la falla',
	'cable from the bank to the point': 'cable del banco al punto',
	'one-way length of that cable': 'longitud de ida de ese cable',
	'cables in parallel in each leg': 'cables en paralelo en cada tramo',
	'one cable in each leg': 'un cable en cada tramo',
	'cold-cranking amperes of the bank': 'amperios de arranque en frío del banco',
	'I read "{0}" as the cable; no such size is in my tables.':
		'Leo "{0}" como cable; no hay tal sección en mis tablas.',
	'What size is that cable?': '¿Qué sección tiene ese cable?',
	'How long is that cable, one way?': '¿Qué longitud de ida tiene ese cable?',
	'the same at the terminals of the bank': 'la misma en los bornes del banco',
	'open-circuit voltage': 'tensión en circuito abierto',
	'cable loop at 20 °C': 'bucle de cable a 20 °C',
	'interrupting rating a device here needs, at direct current':
		'poder de corte que necesita aquí un dispositivo, en corriente continua',
	'fuses that can break it': 'fusibles que pueden cortarla',
	'none of mine': 'ninguno de los míos',
	'fuses that can not': 'fusibles que no pueden',
	none: 'ninguno',
	'About {0}: no fuse in my tables breaks that, ask the battery maker':
		'Unos {0}: ningún fusible de mis tablas corta eso, pregunta al fabricante de la batería',
	'About {0}: needs a {1} marked {2} DC or more': 'Unos {0}: hace falta {1} marcado {2} CC o más',
	'About {0}: a {1} breaks that on {2}': 'Unos {0}: {1} corta eso con {2}',
	'{0} behind {1} inside the bank, right at its terminals; every metre of cable lowers it.':
		'{0} tras {1} dentro del banco, justo en sus bornes; cada metro de cable la baja.',
	'{0} behind {1} inside the bank and {2} of cold cable.':
		'{0} tras {1} dentro del banco y {2} de cable frío.',
	'resistance of the bank': 'resistencia del banco',
	'cable loop, both legs at 20 °C': 'bucle de cable, ida y vuelta a 20 °C',
	'prospective current': 'corriente prevista',
	'least interrupting capacity of the main breaker on a boat':
		'poder de corte mínimo del disyuntor principal de un barco',
	'the same of branch breakers': 'lo mismo en los disyuntores de derivación',
	"A bank this large needs the battery maker's own short-circuit current; where that is over 10 kA the boat rule takes a device of {0}.":
		'Un banco tan grande necesita la corriente de cortocircuito propia del fabricante de la batería; donde pasa de 10 kA la norma de barcos toma un dispositivo de {0}.',
	'The internal resistance is the usual one of the chemistry: ask the maker for the short-circuit current of this battery before the main fuse is bought.':
		'La resistencia interna es la habitual de la química: pide al fabricante la corriente de cortocircuito de esta batería antes de comprar el fusible principal.',
	'{0} is more than blade, strip and bolt-down vehicle fuses break (1000 to 2000 A): such a fuse can burst and burn on here. Fit one whose own marking gives the direct-current interrupting rating.':
		'{0} es más de lo que cortan los fusibles de vehículo de cuchilla, de lámina y atornillados (de 1000 a 2000 A): uno así puede reventar y seguir ardiendo aquí. Monta uno cuya propia marca dé el poder de corte en corriente continua.',
	'{0} is more than a blade fuse breaks (1000 A): a strip or single-bolt fuse is the least here.':
		'{0} es más de lo que corta un fusible de cuchilla (1000 A): aquí lo mínimo es uno de lámina o de un solo perno.',
	'Strip fuses are 32 V parts: never on a {0} V bank, whatever the current.':
		'Los fusibles de lámina son de 32 V: nunca en un banco de {0} V, sea cual sea la corriente.',
	'An interrupting rating for alternating current says nothing here: a direct-current arc has no zero crossing to go out at.':
		'Un poder de corte en corriente alterna aquí no dice nada: un arco de corriente continua no tiene paso por cero en que apagarse.',
	"The battery's own electronics may switch off sooner, or weld shut; the fuse is sized as if they were not there.":
		'La electrónica de la propia batería puede cortar antes, o quedarse soldada; el fusible se dimensiona como si no estuviera.',
	'below {0} A from {1} on': 'por debajo de {0} A a partir de {1}',
};
