import type { Phrasebook } from '../phrasebook.js';

export const climateWork: Phrasebook = {
	'bank capacity': 'capacidad del banco de baterías',
	'bank energy': 'energía del banco de baterías',
	'usable share of the bank': 'parte utilizable del banco',
	'the usual house bank': 'el banco habitual de la vivienda',
	'lithium iron phosphate down to 20 % (practice); lead-acid gives about 50 %':
		'fosfato de hierro y litio hasta el 20 % (práctica); el plomo-ácido da cerca del 50 %',
	'Anything that burns fuel aboard: combustion air from outside, exhaust led outside and away from windows, intakes and the underbody, and a carbon-monoxide alarm at sleeping height, tested.':
		'Todo lo que queme combustible a bordo: aire de combustión desde fuera, escape conducido al exterior y lejos de ventanas, tomas de aire y bajos, y una alarma de monóxido de carbono a la altura de quien duerme, probada.',
	'Keep the distances to what can burn that the heater asks for, seal the exhaust where it passes the floor, and switch off before refuelling.':
		'Guarda las distancias a lo que puede arder que pide el calefactor, sella el escape donde atraviesa el suelo y apágalo antes de repostar.',
	'Fuel gas is work for the licensed trade: vented locker, regulator, leak test and gas alarm as the local code asks.':
		'El gas combustible es trabajo de un instalador autorizado: cofre ventilado, regulador, prueba de fugas y alarma de gas según la norma local.',
	'Refrigerant is under pressure, and opening the circuit needs a certified technician; do not drill or bend its pipes.':
		'El refrigerante está a presión y abrir el circuito exige un técnico certificado; no taladres ni dobles sus tubos.',
	'A unit on the roof adds weight up high: check the roof, the payload and where its condensate runs.':
		'Un equipo en el techo pone peso en lo alto: comprueba el techo, la carga útil y adónde va su condensado.',
	'A parked van in the sun can reach deadly heat when the cooling stops: never rely on it alone for a child, a pet or a sick person.':
		'Una furgoneta aparcada al sol puede alcanzar un calor mortal cuando se para la refrigeración: nunca confíes solo en ella para un niño, un animal o una persona enferma.',
	'Never close the vents to save heat: people need fresh air to sleep, and stoves and heaters use it up.':
		'Nunca cierres las ventilaciones para guardar calor: las personas necesitan aire fresco para dormir, y las cocinas y calefactores lo consumen.',
	'A fan that draws air out pulls fumes back down a flue: open a window before the fan while anything burns.':
		'Un ventilador que extrae aire hace volver los gases por el conducto: abre una ventana antes que el ventilador mientras algo arda.',
	'size of the van': 'tamaño de la furgoneta',
	wheelbase: 'batalla',
	'the usual roof of a camper van; the safe side': 'el techo habitual de una camper; el lado seguro',
	'inside length': 'longitud interior',
	'inside width': 'anchura interior',
	'inside height': 'altura interior',
	'insulation of the walls': 'aislamiento de las paredes',
	'what most fitted vans get, or none where it is said so (practice); name yours':
		'lo que llevan la mayoría de las furgonetas camperizadas, o nada donde se diga así (práctica); indica el tuyo',
	'insulation of the roof': 'aislamiento del techo',
	'as the walls': 'como las paredes',
	'insulation of the floor': 'aislamiento del suelo',
	'a thin board under the floor, never more than the walls (practice)':
		'una plancha fina bajo el suelo, nunca más que las paredes (práctica)',
	'insulation material': 'material del aislamiento',
	'the safe side: the poorest of the usual materials, 0.045 W/mK; name yours':
		'el lado seguro: el peor de los materiales habituales, 0.045 W/mK; indica el tuyo',
	'insulation over the ribs': 'aislamiento sobre las costillas',
	'the safe side: nothing said of covered ribs': 'el lado seguro: no se dijo nada de costillas cubiertas',
	'share of the shell over ribs': 'parte de la carrocería sobre costillas',
	'ribs and frames of a panel van (practice)': 'costillas y marcos de un furgón (práctica)',
	'windows of the living space': 'ventanas de la zona habitable',
	'two side windows and a roof hatch (practice)': 'dos ventanas laterales y una claraboya (práctica)',
	'single glass': 'vidrio simple',
	'double acrylic': 'acrílico doble',
	'kind of windows': 'tipo de ventanas',
	'the safe side: one pane of glass': 'el lado seguro: una sola hoja de vidrio',
	'insulated window covers': 'cubiertas aislantes de ventana',
	'the safe side: bare glass': 'el lado seguro: vidrio desnudo',
	'cab closed off': 'cabina separada',
	'the safe side: the cab is open to the living space':
		'el lado seguro: la cabina está abierta a la zona habitable',
	'How big is the van: short, medium, long or extra-long wheelbase (or its inside length)?':
		'¿Qué tamaño tiene la furgoneta: batalla corta, media, larga o extralarga (o su longitud interior)?',
	'typical of the size class (practice); measure yours':
		'típico de esa clase de tamaño (práctica); mide el tuyo',
};
