/** The standing cautions of water work. */
export const cautionPotable =
	'Drinking water: tank, hose and pipe of drinking-water grade; disinfect and rinse before first use and after storage, as the local health authority says.';
export const cautionBackflow =
	'Fill through an air gap or a backflow preventer, so that tank water can never run back into the supply.';
export const cautionTankWeight =
	'A full tank is a heavy loose weight: strap it to structure, low and near the axle, and count it in the axle loads.';
export const cautionScald =
	'Hot water scalds: fit a thermostatic mixing valve at 49 °C (120 °F) or less and try the tap before a child does.';
export const cautionRelief =
	'A closed water heater needs its temperature and pressure relief valve, piped to the outside and never plugged.';
export const cautionDrain =
	'Gray water goes to a proper drain: dumping it on the ground is forbidden in many places.';
export const cautionPressure =
	'Let the pressure out of the system before you open a fitting, and never fill an accumulator above its rating.';
export const cautionPad =
	'Heating pads: only on a tank with water in it, with their own thermostat and fuse, and nothing that burns against them.';
