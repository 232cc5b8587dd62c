import { fromMemory, published, type Source } from '../topic/source.js';

export interface BodyHeat {
	readonly sensibleW: number;
	/** carried by the water a person gives off */
	readonly latentW: number;
	readonly source: Source;
}

const ashrae = published(
	'ASHRAE Handbook of Fundamentals, nonresidential cooling and heating loads',
	'heat gain from people',
);

/** Heat one person gives to the room. */
export const bodyHeat = {
	asleep: {
		sensibleW: 50,
		latentW: 25,
		source: fromMemory('ASHRAE Handbook of Fundamentals', 'sleeping, about 0.7 met'),
	},
	seated: { sensibleW: 70, latentW: 35, source: ashrae },
	lightWork: { sensibleW: 70, latentW: 45, source: ashrae },
	active: { sensibleW: 75, latentW: 55, source: ashrae },
	walking: { sensibleW: 75, latentW: 70, source: ashrae },
} as const satisfies Record<string, BodyHeat>;

export type Activity = keyof typeof bodyHeat;
