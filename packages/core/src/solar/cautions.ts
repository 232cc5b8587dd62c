/** The standing cautions of work on solar arrays. */
export const cautionLive =
	'Panels are live whenever light falls on them: cover them or open the array disconnect before you touch a connector, and never part a connector under load.';
export const cautionOrder =
	'Connect the controller to the battery first and the array last; take apart in the other order.';
export const cautionRoof =
	'Fasten panels to the roof for highway wind, seal every hole, and keep the wind and rain off the cable entry.';
