/** The standing cautions of work on banks, chargers and inverters. */
export const cautionBank =
	'A bank can weld a spanner and burn you at any state of charge: disconnect, insulate tools, cover the terminals, one pole at a time.';
export const cautionEqualUnits =
	'Join only batteries of the same make, type, capacity and age; bring each to full charge first, and take plus and minus from opposite ends of a parallel row.';
export const cautionFuseBank =
	'The main fuse sits at the bank itself and must be able to break what the bank can feed into a short: check its breaking capacity at direct current.';
export const cautionLeadAcidVent =
	'Lead-acid gives off hydrogen while charging: vent the compartment to the outside, low and high, with no ignition source inside.';
export const cautionMakerLimits =
	"The maker's limits for charging, discharging and temperature come before every figure here.";
export const cautionOneBond =
	'Neutral and ground are joined at one place only, at the source that is feeding: on shore power outside the van, on the inverter only while it feeds.';
export const cautionInverterAir =
	'Give the inverter the free air round it that its manual asks for, away from bedding and out of a sealed locker; it gives off its losses as heat.';
export const cautionLithiumCold =
	'Never charge lithium cells below 0 °C (32 °F): it damages them for good and can make them unsafe. See that every charger is stopped by the cold.';
export const cautionBothEnds =
	'A cable between two batteries is fed from both: fuse the charger input at the starter battery and its output at the bank.';
