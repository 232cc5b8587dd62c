import type { Phrasebook } from '../phrasebook.js';

export const freeze: Phrasebook = {
	pipe: 'tubería',
	'pump bay': 'compartimento de la bomba',
	'what is in the cold': 'lo que está al frío',
	'a tank, unless only the length of a pipe is given':
		'un depósito, salvo que solo se dé la longitud de una tubería',
	'temperature around it': 'temperatura a su alrededor',
	water: 'agua',
	insulation: 'aislamiento',
	'the safe side: bare, as no insulation was named':
		'el lado seguro: sin cubrir, al no indicarse aislamiento',
	'bore of the pipe': 'diámetro interior de la tubería',
	'1/2 in tubing (practice)': 'tubería de 1/2 in (práctica)',
	'length of pipe': 'longitud de la tubería',
	'closed-cell rubber foam, the usual cover (practice)':
		'espuma de caucho de celda cerrada, la cubierta habitual (práctica)',
	'outside area': 'superficie exterior',
	'out of the wind': 'a resguardo del viento',
	'a bay is sheltered; a tank or pipe is taken as exposed (the safe side)':
		'un compartimento está a resguardo; un depósito o una tubería se toman expuestos (el lado seguro)',
	'water at the start': 'agua al inicio',
	'as it comes from the tap in winter': 'como sale del grifo en invierno',
	'heating pad': 'manta calefactora',
	'temperature it is held at': 'temperatura a la que se mantiene',
	'the usual thermostat of a pad (practice)': 'el termostato habitual de una manta (práctica)',
	'hours of cold': 'horas de frío',
	'a long winter night (practice)': 'una noche larga de invierno (práctica)',
	'How cold does it get (or where)?': '¿Cuánto frío hace (o dónde)?',
	'How much water is in it (or how long is the pipe)?':
		'¿Cuánta agua hay dentro (o qué longitud tiene la tubería)?',
	'How long is the pipe?': '¿Qué longitud tiene la tubería?',
	'How much water is in it?': '¿Cuánta agua hay dentro?',
	'Drain pump, filter, taps and low points when the van stands unheated: they freeze before the tank.':
		'Vacía bomba, filtro, grifos y puntos bajos cuando la furgoneta esté sin calefacción: se congelan antes que el depósito.',
	'No freezing at {0}': 'No se congela a {0}',
	'Water freezes only below 0 °C (32 °F) around it; wind does not change that.':
		'El agua solo se congela por debajo de 0 °C (32 °F) a su alrededor; el viento no lo cambia.',
	'Ice after {0} without heat; {1} keeps it open': 'Hielo tras {0} sin calor; {1} lo mantienen abierto',
	'No ice within {0}; ice after {1} without heat': 'Sin hielo en {0}; hielo tras {1} sin calor',
	'heat loss': 'pérdida de calor',
	'Solid after {0}. Holding it takes {1}, {2} a night.':
		'Macizo tras {0}. Mantenerlo pide {1}, {2} por noche.',
	'a usual pump bay (practice)': 'un compartimento de bomba habitual (práctica)',
	'a flat tank, sides 4 : 2 : 1 (practice)': 'un depósito plano, lados 4 : 2 : 1 (práctica)',
	'hours until ice begins': 'horas hasta que empieza el hielo',
	'hours until solid': 'horas hasta helarse del todo',
	'heat to hold it': 'calor para mantenerlo',
	'least power of a pad': 'potencia mínima de una manta',
	'pad to fit': 'manta que hay que montar',
	'share of the time the pad is on': 'parte del tiempo que la manta está encendida',
	'current while the pad is on': 'corriente con la manta encendida',
	'energy a night': 'energía por noche',
	'from the bank a night': 'del banco por noche',
	'share of the bank a night': 'parte del banco por noche',
	'ice after {0}, {1} to hold': 'hielo tras {0}, {1} para mantenerlo',
	'down to {0} for {1} without heat': 'hasta {0} durante {1} sin calor',
	'With no heat it freezes within {0}. A pad of at least {1}, or draining it, clears it.':
		'Sin calor se congela en {0}. Una manta de al menos {1}, o vaciarlo, lo resuelve.',
	'It is solid after {0}: ice takes {1} % more room and splits pipes, pump, filter and valves.':
		'Está macizo tras {0}: el hielo ocupa un {1} % más y revienta tuberías, bomba, filtro y válvulas.',
	"The pad ({0}) can't hold the thermostat's temperature: it settles at {1}. {2} would hold it.":
		'La manta ({0}) no puede mantener la temperatura del termostato: se queda en {1}. {2} la mantendrían.',
	"The pad ({0}) can't keep it from freezing; it takes at least {1}, or more insulation.":
		'La manta ({0}) no puede evitar que se congele; hacen falta al menos {1}, o más aislamiento.',
	'The pad takes {0} a night and the bank gives {1}; a bank of {2}, or more insulation, clears it.':
		'La manta toma {0} por noche y el banco da {1}; un banco de {2}, o más aislamiento, lo resuelve.',
	'The tank is at {0} after {1}, but its pipes, valve and pump hold little water and freeze far sooner.':
		'El depósito está a {0} tras {1}, pero sus tuberías, válvula y bomba tienen poca agua y se congelan mucho antes.',
};
