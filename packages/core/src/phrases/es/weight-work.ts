import type { Phrasebook } from '../phrasebook.js';

export const weightWork: Phrasebook = {
	'A sum is no scale: weigh the finished van with full tanks and people aboard, each axle and each side, before it goes out.':
		'Una cuenta no es una báscula: pesa la furgoneta acabada con depósitos llenos y personas a bordo, cada eje y cada lado, antes de que salga.',
	'An overloaded axle or tire fails without warning. Ratings on the door label bind; stiffer springs do not raise them.':
		'Un eje o neumático sobrecargado falla sin aviso. Los límites de la etiqueta de la puerta obligan; unos muelles más duros no los suben.',
	"The tire maker's load and inflation table and the door label decide; never go below the label's pressure.":
		'Deciden la tabla de carga e inflado del fabricante del neumático y la etiqueta de la puerta; nunca bajes de la presión de la etiqueta.',
	"Stand beside the tread, not before the sidewall, while you inflate; never go above the pressure on the sidewall or the rim's limit.":
		'Colócate junto a la banda de rodadura, no ante el flanco, mientras inflas; nunca pases de la presión del flanco ni del límite de la llanta.',
	'Set and check pressure cold, after three hours at rest.':
		'Ajusta y comprueba la presión en frío, tras tres horas parada.',
	'In a crash everything aboard becomes a missile. This sizes fixings of equipment only; seats, belts and their anchorages are certified parts for licensed engineering.':
		'En un choque todo lo que va a bordo se vuelve un proyectil. Esto dimensiona solo fijaciones de equipo; asientos, cinturones y sus anclajes son piezas certificadas, cosa de ingeniería autorizada.',
	'A bolt is no better than what it holds: fix into ribs or plates, not bare skin, and have unusual mountings checked by a structural engineer.':
		'Un perno no vale más que aquello que lo sujeta: fija a costillas o placas, no a la chapa desnuda, y haz revisar montajes poco habituales por un ingeniero de estructuras.',
};
