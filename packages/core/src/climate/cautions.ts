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
export const cautionCylinder =
	'Gas cylinders stand upright and strapped, outside the living space or in a locker sealed from it and vented low to the outside; test every connection for leaks after each change, never with a flame, and close the valve when it is not in use.';
export const cautionGasDetector =
	'Fit a gas detector near the floor: propane and butane are heavier than air and gather low. At a smell of gas: valve shut, no flame, no switch, everybody out.';
export const cautionGasFitter =
	'A licensed gas fitter and the local code decide what may be connected, where it stands and how it is vented.';
export const cautionLiquidFuel =
	'Fill diesel and gasoline outside with every burner off and cold; keep them in tanks and cans made for them, outside the living space.';
