import type { Region } from '../topic/context.js';
import { fromMemory, practice, published, type Source } from '../topic/source.js';

interface Cord {
	readonly ratingA: number;
	readonly size: string;
	readonly source: Source;
}

/** Supply cords by rating, smallest first: conductors for a cord of the usual length. */
const cords: Readonly<Record<Region, readonly Cord[]>> = {
	us: [
		{ ratingA: 15, size: '14 AWG', source: practice('supply cords: 14 AWG for 15 A') },
		{ ratingA: 20, size: '12 AWG', source: practice('supply cords: 12 AWG for 20 A') },
		{ ratingA: 30, size: '10 AWG', source: practice('supply cords: 10 AWG for 30 A') },
		{ ratingA: 50, size: '6 AWG', source: practice('supply cords: 6 AWG for 50 A') },
	],
	eu: [
		{ ratingA: 16, size: '2.5 mm²', source: published('IEC 60364-7-721', 'Table 721, 16 A') },
		{ ratingA: 25, size: '4 mm²', source: fromMemory('IEC 60364-7-721', 'Table 721, 25 A') },
		{ ratingA: 32, size: '6 mm²', source: fromMemory('IEC 60364-7-721', 'Table 721, 32 A') },
		{ ratingA: 63, size: '16 mm²', source: fromMemory('IEC 60364-7-721', 'Table 721, 63 A') },
	],
};

/** The thinnest supply cord for a rating, or null above the largest. */
export function cordFor(region: Region, ratingA: number): Cord | null {
	return cords[region].find((cord) => cord.ratingA >= ratingA) ?? null;
}

/** What protects people from a fault of the mains in the van. */
export function residualCurrentProtection(region: Region): {
	readonly text: string;
	readonly source: Source;
} {
	return region === 'us'
		? {
				text: 'ground-fault protection (GFCI) of its receptacles, of the whole wiring on a single 15 A or 20 A circuit',
				source: fromMemory('NFPA 70 (NEC)', '551.40(C) and 551.41(C)'),
			}
		: {
				text: 'a residual current device (RCD) of at most 30 mA that opens all live conductors',
				source: published('IEC 60364-7-721', '721.415'),
			};
}
