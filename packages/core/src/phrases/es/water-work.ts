import type { Phrasebook } from '../phrasebook.js';

export const waterWork: Phrasebook = {
	'Drinking water: tank, hose and pipe of drinking-water grade; disinfect and rinse before first use and after storage, as the local health authority says.':
		'Agua de beber: depósito, manguera y tubería aptos para agua potable; desinfecta y enjuaga antes del primer uso y tras guardarla, como diga la autoridad sanitaria local.',
	'Fill through an air gap or a backflow preventer, so that tank water can never run back into the supply.':
		'Llena con una separación de aire o una válvula antirretorno, para que el agua del depósito nunca pueda volver al suministro.',
	'A full tank is a heavy loose weight: strap it to structure, low and near the axle, and count it in the axle loads.':
		'Un depósito lleno es un peso grande y suelto: átalo a la estructura, bajo y cerca del eje, y cuéntalo en las cargas por eje.',
	'Hot water scalds: fit a thermostatic mixing valve at 49 °C (120 °F) or less and try the tap before a child does.':
		'El agua caliente escalda: monta una válvula mezcladora termostática a 49 °C (120 °F) o menos y prueba el grifo antes que un niño.',
	'A closed water heater needs its temperature and pressure relief valve, piped to the outside and never plugged.':
		'Un calentador de agua cerrado necesita su válvula de alivio de temperatura y presión, llevada al exterior y nunca tapada.',
	'Gray water goes to a proper drain: dumping it on the ground is forbidden in many places.':
		'Las aguas grises van a un desagüe adecuado: verterlas al suelo está prohibido en muchos lugares.',
	'Let the pressure out of the system before you open a fitting, and never fill an accumulator above its rating.':
		'Quita la presión del sistema antes de abrir un accesorio, y nunca llenes un acumulador por encima de su presión nominal.',
	'Heating pads: only on a tank with water in it, with their own thermostat and fuse, and nothing that burns against them.':
		'Mantas calefactoras: solo en un depósito con agua dentro, con su propio termostato y fusible, y sin nada que arda contra ellas.',
};
