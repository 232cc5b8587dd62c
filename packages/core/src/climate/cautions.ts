/** The standing cautions of heating, cooling and air. */
export const cautionMonoxide =
	'Anything that burns fuel aboard: combustion air from outside, exhaust led outside and away from windows, intakes and the underbody, and a carbon-monoxide alarm at sleeping height, tested.';
export const cautionHeaterFire =
	'Keep the distances to what can burn that the heater asks for, seal the exhaust where it passes the floor, and switch off before refuelling.';
export const cautionFuelGas =
	'Fuel gas is work for the licensed trade: vented locker, regulator, leak test and gas alarm as the local code asks.';
export const cautionRefrigerant =
	'Refrigerant is under pressure, and opening the circuit needs a certified technician; do not drill or bend its pipes.';
export const cautionRoofUnit =
	'A unit on the roof adds weight up high: check the roof, the payload and where its condensate runs.';
export const cautionHeatStroke =
	'A parked van in the sun can reach deadly heat when the cooling stops: never rely on it alone for a child, a pet or a sick person.';
export const cautionBreathing =
	'Never close the vents to save heat: people need fresh air to sleep, and stoves and heaters use it up.';
export const cautionBackdraft =
	'A fan that draws air out pulls fumes back down a flue: open a window before the fan while anything burns.';
