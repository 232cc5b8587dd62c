import type { Wheelbase } from '../tables/interiors.js';
import { bulkheadM, usualSeatM, vanClasses } from '../tables/vans.js';

/** Where in the van, as people say it. */
export type Zone = 'cab' | 'front' | 'middle' | 'axle' | 'back' | 'door';

/** Lengths a zone is measured by [m]. */
export interface Floor {
	readonly wheelbaseM: number;
	/** from the rear axle to the rear doors */
	readonly rearOverhangM: number;
}

export function floorOf(wheelbase: Wheelbase, wheelbaseM: number): Floor {
	return { wheelbaseM, rearOverhangM: vanClasses[wheelbase].rearOverhangM };
}

/**
 * The middle of a zone behind the front axle [m]: living space from behind the seats to the rear doors, in thirds;
 * the door is what hangs outside it.
 */
export function zoneM(zone: Zone, floor: Floor): number {
	const endM = floor.wheelbaseM + floor.rearOverhangM;
	const third = (endM - bulkheadM) / 3;
	switch (zone) {
		case 'cab':
			return usualSeatM;
		case 'front':
			return bulkheadM + third / 2;
		case 'middle':
			return bulkheadM + 1.5 * third;
		case 'axle':
			return floor.wheelbaseM;
		case 'back':
			return bulkheadM + 2.5 * third;
		case 'door':
			return endM + 0.3;
	}
}
