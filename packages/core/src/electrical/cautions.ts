/** The standing cautions of electrical work; published distances are those of 33 CFR 183.455 and 183.460. */
export const cautionSourceEnd =
	"Fuse at the source end itself; only where that can't be done, within 7 in (180 mm) of wire, or 40 in (1 m) if it is also sheathed all the way (33 CFR 183.455).";
export const cautionDisconnect =
	'Disconnect the battery and shore power before you work; a dropped spanner across a bank welds itself on.';
export const cautionLugs =
	'Crimp lugs with the right die, pull-test them, and use grommets and sleeve where the cable passes metal.';
export const cautionMains =
	'Mains work belongs to a licensed electrician and the local code decides: breaker, GFCI or RCD, and one neutral-to-ground bond only, at the source.';
