import type { Phrasebook } from '../phrasebook.js';

export const structureWork: Phrasebook = {
	'Joints usually give before members: screws, rivet nuts, welds and the wall they sit in need their own check.':
		'Las uniones suelen ceder antes que las barras: tornillos, tuercas remachables, soldaduras y la pared en que se apoyan piden su propia comprobación.',
	'This is for fixed furniture and racks. Lifting gear, hoists, jacks and anything over people are certified work.':
		'Esto es para muebles fijos y estanterías. Elevadores, polipastos, gatos y todo lo que quede sobre personas son trabajo certificado.',
	'Nobody lies or sits on it while the van moves; what it carries is held against braking by itself.':
		'Nadie va tumbado ni sentado encima mientras la furgoneta se mueve; lo que lleva se sujeta por sí mismo contra el frenado.',
	'A gas spring holds pressure even when worn out: never open, heat, drill or clamp it by the rod. Prop the lid before you unhook one.':
		'Un resorte de gas guarda presión incluso gastado: nunca lo abras, calientes, taladres ni lo sujetes por el vástago. Apuntala la tapa antes de soltar uno.',
	'Prop the lid while you work under it, and keep hands off the hinge side; a second spring on the other side keeps it from twisting.':
		'Apuntala la tapa mientras trabajas debajo y aparta las manos del lado de la bisagra; un segundo resorte en el otro lado evita que se tuerza.',
	'Stand beside the tread, clear of the sidewall, use a clip-on chuck with a gauge, and stop at once at a bulge or a crackle. A tire run flat or far down is looked at by a tire shop before it is filled.':
		'Colócate junto a la banda de rodadura, fuera de la línea del flanco, usa una boquilla de pinza con manómetro y para al instante ante un bulto o un crujido. Un neumático rodado sin aire o muy bajo lo revisa un taller de neumáticos antes de inflarlo.',
	"Never go above the pressure on the sidewall or the rim's limit.":
		'Nunca pases de la presión del flanco ni del límite de la llanta.',
	'Pump and hose get hot enough to burn; let the pump rest as its maker says.':
		'El compresor y la manguera se calientan hasta quemar; deja descansar el compresor como diga su fabricante.',
	'{0} solid': '{0} macizo',
	'{0} tube': 'tubo {0}',
	'{0} angle': 'ángulo {0}',
	'{0} round bar': 'barra redonda {0}',
	'{0} round tube': 'tubo redondo {0}',
};
