import type { Phrasebook } from '../phrasebook.js';

export const accumulator: Phrasebook = {
	accumulator: 'acumulador',
	'water wanted without the pump': 'agua deseada sin la bomba',
	'pressure switch': 'presostato',
	'cut-in pressure': 'presión de arranque',
	'cut-out pressure': 'presión de paro',
	'pre-charge': 'precarga',
	'2 psi below the cut-in pressure (practice); set it with the water side open':
		'2 psi por debajo de la presión de arranque (práctica); se ajusta con el lado del agua abierto',
	'flow of the pump': 'caudal de la bomba',
	'3 gpm, the usual 12 V pump (practice)': '3 gpm, la bomba habitual de 12 V (práctica)',
	'flow drawn': 'caudal que se toma',
	'sea level; thinner air changes it by a few percent':
		'nivel del mar; el aire más fino lo cambia en unos pocos por ciento',
	'At what pressure does the pump start?': '¿A qué presión arranca la bomba?',
	'At what pressure does the pump stop?': '¿A qué presión para la bomba?',
	'How big is the accumulator (or how much water is wanted from it)?':
		'¿Qué tamaño tiene el acumulador (o cuánta agua se quiere de él)?',
	'I can\'t use "{0}" as the pressure switch.': 'No puedo usar "{0}" como presostato.',
	'It is written as cut-in and cut-out in psi: 30/50.': 'Se escribe como arranque y paro en psi: 30/50.',
	"The pump can't stop at {0} and start at {1}.": 'La bomba no puede parar a {0} y arrancar a {1}.',
	'The cut-out pressure lies at least {0} above the cut-in pressure.':
		'La presión de paro está al menos {0} por encima de la de arranque.',
	'With a pre-charge of {0} no water gets in before the pump stops at {1}.':
		'Con una precarga de {0} no entra agua antes de que la bomba pare a {1}.',
	'Set the pre-charge just below the cut-in pressure.':
		'Ajusta la precarga justo por debajo de la presión de arranque.',
	'water without the pump': 'agua sin la bomba',
	'water in it at cut-out': 'agua dentro al parar la bomba',
	'most pump starts an hour, at half its flow': 'máximo de arranques por hora, a la mitad de su caudal',
	'accumulator for {0} starts an hour at most': 'acumulador para {0} arranques por hora como máximo',
	'best pre-charge': 'mejor precarga',
	'water without the pump at the best pre-charge': 'agua sin la bomba con la mejor precarga',
	'pump starts an hour at the flow drawn': 'arranques por hora con el caudal tomado',
	'pump off in each turn': 'bomba parada en cada ciclo',
	'pump on in each turn': 'bomba en marcha en cada ciclo',
	'{0}, up to {1} starts an hour': '{0}, hasta {1} arranques por hora',
	'Check the pre-charge with the water side open and the pump off; a gauge on a full accumulator reads the water.':
		'Comprueba la precarga con el lado del agua abierto y la bomba parada; un manómetro en un acumulador lleno lee el agua.',
	'{0} accumulator for {1} without the pump': 'acumulador de {0} para {1} sin la bomba',
	'{0} without the pump; up to {1} starts an hour': '{0} sin la bomba; hasta {1} arranques por hora',
	'gas pressure': 'presión del gas',
	'Between {0} and {1}, gas set to {2}.': 'Entre {0} y {1}, gas ajustado a {2}.',
	'air pressure around': 'presión del aire alrededor',
	'most pump starts an hour': 'máximo de arranques por hora',
	'down to {0} of gas, where it gives {1}, a tenth less':
		'hasta {0} de gas como mínimo, donde da {1}, una décima parte menos',
	'The gas is set above the cut-in: the accumulator is empty before the pump starts and the tap stutters. Set it to {0}.':
		'El gas está por encima del arranque: el acumulador se vacía antes de que arranque la bomba y el grifo da tirones. Ajústalo a {0}.',
	'The gas is set low; at {0} the same accumulator gives more.':
		'El gas está bajo; a {0} el mismo acumulador da más.',
	'A slow tap can start the pump {0} times an hour; an accumulator of {1} keeps it to {2}.':
		'Un grifo lento puede arrancar la bomba {0} veces por hora; un acumulador de {1} lo deja en {2}.',
	'This tap starts the pump {0} times an hour; an accumulator of {1} keeps any tap to {2}.':
		'Este grifo arranca la bomba {0} veces por hora; un acumulador de {1} deja cualquier grifo en {2}.',
	'The tap takes all the pump gives: once started it runs on and the pressure falls.':
		'El grifo toma todo lo que da la bomba: una vez arrancada sigue en marcha y la presión baja.',
};
