import {
	necCoefficientSource,
	necColdFactors,
	necColdTableSource,
	steepestVocPerK,
} from '../tables/modules.js';
import { fromMemory, type Source } from '../topic/source.js';

/** How much higher a string's open-circuit voltage stands in the cold. */
export interface ColdFactor {
	/** over that at 25 °C, 1 or more */
	readonly factor: number;
	readonly method: 'coefficient' | 'table';
	readonly source: Source;
}

/**
 * Factor of the open-circuit voltage at a cell temperature: by the maker's coefficient where it is known
 * (NEC 690.7(A)(1)), else by NEC Table 690.7(A) for crystalline silicon, and below its end by the steepest typical
 * coefficient.
 *
 * @param vocPerK share by which a degree changes the voltage, negative [1/K], or null where it is not known
 */
export function coldFactor(lowC: number, vocPerK: number | null): ColdFactor {
	if (vocPerK !== null) {
		return { factor: 1 + vocPerK * (lowC - 25), method: 'coefficient', source: necCoefficientSource };
	}
	if (lowC < -40) {
		return {
			factor: 1 + steepestVocPerK * (lowC - 25),
			method: 'coefficient',
			source: fromMemory(
				'typical coefficients of crystalline silicon',
				'−0.36 %/K, below the end of NEC Table 690.7(A)',
			),
		};
	}
	// Between two rows the colder one counts: the table gives whole degrees.
	const row = necColdFactors.find((one) => Math.floor(lowC) >= one.toC);
	return { factor: lowC >= 25 ? 1 : (row?.factor ?? 1), method: 'table', source: necColdTableSource };
}

/** Open-circuit voltage of a string in the cold [V]. */
export function stringVocV(vocV: number, series: number, factor: number): number {
	return vocV * series * factor;
}

/**
 * The coldest temperature at which a string keeps within a voltage, in whole degrees.
 *
 * @returns [°C], or null where it does not even at 25 °C
 */
export function coldestWithin(
	limitV: number,
	string: { readonly vocV: number; readonly series: number; readonly vocPerK: number | null },
): number | null {
	const within = (lowC: number) =>
		stringVocV(string.vocV, string.series, coldFactor(lowC, string.vocPerK).factor) <= limitV;
	if (!within(25)) return null;
	let coldest = 25;
	while (coldest > -90 && within(coldest - 1)) coldest -= 1;
	return coldest;
}

/** The most panels in series that keep within a voltage in the cold; 0 where not even one does. */
export function mostInSeries(limitV: number, vocV: number, factor: number): number {
	return Math.floor(limitV / (vocV * factor) + 1e-9);
}

/** The fewest in series whose voltage of greatest power when hot reaches what charging takes. */
export function fewestInSeries(neededV: number, hotVmpV: number): number {
	return Math.max(1, Math.ceil(neededV / hotVmpV - 1e-9));
}

/** Short-circuit current to design for: NEC 690.8(A)(1) [A]. */
export function designShortA(iscA: number, parallel: number): number {
	return iscA * parallel * 1.25;
}

/** What conductors and protection of the array must carry: NEC 690.8(B), 690.9(B) [A]. */
export function conductorA(iscA: number, parallel: number): number {
	return designShortA(iscA, parallel) * 1.25;
}

/**
 * The layouts of a number of panels, fewest in series first.
 */
export function layouts(panels: number): { readonly series: number; readonly parallel: number }[] {
	const found: { series: number; parallel: number }[] = [];
	for (let series = 1; series <= panels; series += 1) {
		if (panels % series === 0) found.push({ series, parallel: panels / series });
	}
	return found;
}
