import type { Phrasebook } from '../phrasebook.js';

export const inflate: Phrasebook = {
	'free-air flow of the pump': 'caudal libre del compresor',
	'free-air flow of the pump in cubic feet or metres': 'caudal libre del compresor en pies o metros cúbicos',
	'flow against a pressure': 'caudal contra una presión',
	'pressure to start from': 'presión de partida',
	'pressure to reach': 'presión que se quiere alcanzar',
	'both pressures': 'ambas presiones',
	'pressure of the second flow': 'presión del segundo caudal',
	'highest pressure on the sidewall': 'presión máxima en el flanco',
	'air in one tire': 'aire de un neumático',
	'tire size': 'medida del neumático',
	tires: 'neumáticos',
	'all four tires of a van': 'los cuatro neumáticos de una furgoneta',
	'sea level; thinner air takes longer': 'nivel del mar; con aire más fino tarda más',
	'current of the pump': 'corriente del compresor',
	'power of the pump': 'potencia del compresor',
	voltage: 'tensión',
	'battery bank': 'banco de baterías',
	'longest run of the pump': 'tiempo máximo de marcha del compresor',
	'rest after it': 'descanso después',
	'as long as it ran (practice); the maker says how long':
		'tanto como funcionó (práctica); el fabricante dice cuánto',
	'From which pressure?': '¿Desde qué presión?',
	'Up to which pressure?': '¿Hasta qué presión?',
	'What free-air flow has the pump (L/min or cfm)?': '¿Qué caudal libre tiene el compresor (L/min o cfm)?',
	'What size are the tires (as LT225/75R16), or how much air do they hold?':
		'¿Qué medida tienen los neumáticos (como LT225/75R16), o cuánto aire les cabe?',
	'I read "{0}" as both pressures.': 'Leo "{0}" como ambas presiones.',
	'Give them as 25 to 65 psi.': 'Dalas como 25 a 65 psi.',
	'I read from {0} to {1}: that lets air out.': 'Leo de {0} a {1}: eso es sacar aire.',
	'Give the lower pressure as the start and the higher one as the end.':
		'Da la presión menor como inicio y la mayor como final.',
	'{0} is above the {1} on the sidewall: a tire can burst.':
		'{0} supera los {1} del flanco: un neumático puede reventar.',
	'Stay at or below {0}, and at what the door label asks.':
		'Quédate en {0} o menos, y en lo que pide la etiqueta de la puerta.',
	"I read {0} and {1} as the pump's flow.": 'Leo {0} y {1} como caudal del compresor.',
	'Give one of them.': 'Da uno de los dos.',
	'I read "{0}" as the tire size.': 'Leo "{0}" como medida del neumático.',
	'Give it as printed, such as LT225/75R16, or the volume of air.':
		'Dala como está impresa, por ejemplo LT225/75R16, o el volumen de aire.',
	'The flow against pressure must be below the open flow of {0}, and its pressure be named.':
		'El caudal contra presión debe ser menor que el libre de {0}, y hay que indicar su presión.',
	'Give two points of the pump curve, such as 70 L/min open and 40 L/min at 40 psi.':
		'Da dos puntos de la curva del compresor, como 70 L/min libre y 40 L/min a 40 psi.',
	'By its curve this pump stalls before {0}.': 'Por su curva este compresor se cala antes de {0}.',
	'Take a pump made for the pressure, or a lower target.':
		'Toma un compresor hecho para esa presión, o un objetivo más bajo.',
	'air pressure here': 'presión del aire aquí',
	'standard atmosphere at {0} m': 'atmósfera estándar a {0} m',
	'free air for one tire': 'aire libre para un neumático',
	'time at the open flow': 'tiempo al caudal libre',
	'time along the pump curve': 'tiempo según la curva del compresor',
	'from {0} to {1} kPa': 'de {0} a {1} kPa',
	rests: 'descansos',
	'It runs for {0} min in all: small pumps may run 10 to 30 min before they must rest. Look it up.':
		'Funciona {0} min en total: los compresores pequeños pueden funcionar de 10 a 30 min antes de que deban descansar. Míralo en el manual.',
	'The pump must rest {0} times on the way.': 'El compresor debe descansar {0} veces por el camino.',
	'{0} for the tire': '{0} para el neumático',
	'{0} for {1} tires, {2} each': '{0} para {1} neumáticos, {2} cada uno',
	'{0} min of pumping and {1} rests. {2}': '{0} min de bombeo y {1} descansos. {2}',
	'{0} L of free air a tire. {1}': '{0} L de aire libre por neumático. {1}',
	'Thin air at this altitude adds {0} % to the air needed.':
		'El aire fino de esta altitud añade {0} % al aire necesario.',
	'Flow falls as the pressure rises; that is counted.':
		'El caudal baja al subir la presión; eso está contado.',
	'air in the ring between rim and tread': 'aire en el anillo entre llanta y banda',
	'nine tenths of it (practice)': 'nueve décimas partes de él (práctica)',
	'dead space of the pump': 'espacio muerto del compresor',
	'a usual small piston pump (practice)': 'un compresor de pistón pequeño habitual (práctica)',
	'charge taken': 'carga tomada (Ah)',
	current: 'corriente',
	'energy taken': 'energía tomada',
	'share of the bank': 'parte del banco',
	'That takes {0} of the bank: run the engine or charge meanwhile.':
		'Eso toma {0} del banco: deja el motor en marcha o carga mientras tanto.',
};
