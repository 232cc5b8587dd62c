import type { Phrasebook } from '../phrasebook.js';

export const waterWork: Phrasebook = {
	'Drinking water: tank, hose and pipe of drinking-water grade; disinfect and rinse before first use and after storage, as the local health authority says.':
		'Trinkwasser: Tank, Schlauch und Rohr in Trinkwasserqualität; vor der ersten Nutzung und nach Standzeiten desinfizieren und spülen, wie es die örtliche Gesundheitsbehörde verlangt.',
	'Fill through an air gap or a backflow preventer, so that tank water can never run back into the supply.':
		'Über eine freie Luftstrecke oder einen Rückflussverhinderer füllen, damit Tankwasser nie in die Versorgung zurücklaufen kann.',
	'A full tank is a heavy loose weight: strap it to structure, low and near the axle, and count it in the axle loads.':
		'Ein voller Tank ist ein schweres, loses Gewicht: an der Struktur verzurren, tief und nahe der Achse, und in die Achslasten einrechnen.',
	'Hot water scalds: fit a thermostatic mixing valve at 49 °C (120 °F) or less and try the tap before a child does.':
		'Warmwasser verbrüht: ein thermostatisches Mischventil auf 49 °C (120 °F) oder weniger einbauen und den Hahn prüfen, bevor es ein Kind tut.',
	'A closed water heater needs its temperature and pressure relief valve, piped to the outside and never plugged.':
		'Ein geschlossener Warmwasserbereiter braucht sein Temperatur- und Druckentlastungsventil, nach außen geführt und nie verschlossen.',
	'Gray water goes to a proper drain: dumping it on the ground is forbidden in many places.':
		'Abwasser gehört in eine Entsorgung: auf den Boden ablassen ist vielerorts verboten.',
	'Let the pressure out of the system before you open a fitting, and never fill an accumulator above its rating.':
		'Den Druck aus der Anlage lassen, bevor ein Anschluss geöffnet wird, und einen Druckspeicher nie über seinen Nenndruck füllen.',
	'Heating pads: only on a tank with water in it, with their own thermostat and fuse, and nothing that burns against them.':
		'Heizmatten: nur an einem Tank mit Wasser darin, mit eigenem Thermostat und eigener Sicherung, und nichts Brennbares daran.',
};
