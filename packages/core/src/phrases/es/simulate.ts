import type { Phrasebook } from '../phrasebook.js';

export const simulate: Phrasebook = {
	'{0} days from {1} 1': '{0} días desde el 1 de {1}',
	'energy of the bank at its temperature': 'energía del banco a su temperatura',
	'loads a day, at the bank': 'cargas al día, en el banco',
	'from the sun, as much a day': 'del sol, otro tanto al día',
	'every hour': 'cada hora',
	'check: in less served, stored, lost, spilled, unused':
		'control: entrada menos servido, guardado, perdido, sobrante, sin usar',
	'lowest state of charge': 'estado de carga más bajo',
	'when it is lowest': 'cuándo está más bajo',
	'state of charge at the end': 'estado de carga al final',
	'days below the reserve': 'días por debajo de la reserva',
	'hours with a load not served': 'horas con una carga sin servir',
	'days run': 'días simulados',
	'bank simulated': 'banco simulado',
	'smallest bank that keeps the reserve': 'banco mínimo que guarda la reserva',
	'smallest array that keeps the reserve': 'campo solar mínimo que guarda la reserva',
	'twice the bank': 'el doble de banco',
	'half the bank': 'la mitad de banco',
	'lowest {0}': 'mínimo {0}',
	'The bank runs empty: {0} in {1} hours are not given.': 'El banco se vacía: {0} en {1} horas no se dan.',
	'On {0} of {1} days the bank falls below the reserve of {2}; the lowest is {3}.':
		'En {0} de {1} días el banco baja de la reserva de {2}; lo más bajo es {3}.',
	'The bank ends at {0} where it began at {1}: over a longer time it would not hold.':
		'El banco acaba en {0} donde empezó en {1}: a más largo plazo no aguantaría.',
	'{0} of the sun finds the bank full or its charge limit reached: there is room for more loads, or the array could be smaller.':
		'{0} del sol encuentran el banco lleno o su límite de carga alcanzado: hay sitio para más cargas, o el campo podría ser menor.',
	'The bank is not full for two weeks and more: lead-acid that stays half charged sulphates and loses its capacity.':
		'El banco no se llena durante dos semanas o más: el plomo-ácido que queda a media carga se sulfata y pierde su capacidad.',
	'The sun is that of a mean year with dull and clear days in a fixed order: a real run of bad weather can be longer, and snow or shade are not in it.':
		'El sol es el de un año medio con días nublados y claros en orden fijo: una racha real de mal tiempo puede ser más larga, y nieve o sombra no están contadas.',
	'{0} is more than most vans carry: add sun, driving or shore power instead.':
		'{0} es más de lo que llevan la mayoría de las furgonetas: añade sol, conducción o corriente exterior.',
	'{0} at {1} V keep {2} through {3}': '{0} a {1} V guardan {2} durante {3}',
	'{0} of panels keep {1} in the bank through {2}': '{0} de paneles guardan {1} en el banco durante {2}',
	' without solar': ' sin solar',
	'It holds{0}: never below {1} through {2}': 'Aguanta{0}: nunca por debajo de {1} durante {2}',
	'{0} of bank': '{0} de banco',
	'{0} of panels': '{0} de paneles',
	'no bank or array alone cures it': 'ni un banco ni un campo por sí solos lo arreglan',
	'it takes {0}': 'hacen falta {0}',
	'It runs empty': 'Se vacía',
	'It falls to {0}': 'Baja a {0}',
	'{0} in {1}: {2}': '{0} durante {1}: {2}',
	'the sun brings {0}': 'el sol aporta {0}',
	'driving could bring {0}': 'conducir podría aportar {0}',
	'shore power could bring {0}': 'la corriente exterior podría aportar {0}',
	'nothing charges the bank': 'nada carga el banco',
	'Lowest {0}.': 'Mínimo {0}.',
	'{0} a day asked for; {1}.': 'Se piden {0} al día; {1}.',
};
