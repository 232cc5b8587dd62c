import { practice, published } from '../topic/source.js';

/** NFPA 70 Table 690.7(A): open-circuit voltage of crystalline silicon in the cold over that at 25 °C. */
export const necColdFactors: readonly {
	readonly fromC: number;
	readonly toC: number;
	readonly factor: number;
}[] = [
	{ fromC: 24, toC: 20, factor: 1.02 },
	{ fromC: 19, toC: 15, factor: 1.04 },
	{ fromC: 14, toC: 10, factor: 1.06 },
	{ fromC: 9, toC: 5, factor: 1.08 },
	{ fromC: 4, toC: 0, factor: 1.1 },
	{ fromC: -1, toC: -5, factor: 1.12 },
	{ fromC: -6, toC: -10, factor: 1.14 },
	{ fromC: -11, toC: -15, factor: 1.16 },
	{ fromC: -16, toC: -20, factor: 1.18 },
	{ fromC: -21, toC: -25, factor: 1.2 },
	{ fromC: -26, toC: -30, factor: 1.21 },
	{ fromC: -31, toC: -35, factor: 1.23 },
	{ fromC: -36, toC: -40, factor: 1.25 },
];
export const necColdTableSource = published('NFPA 70 (NEC)', 'Table 690.7(A), crystalline silicon');
export const necCoefficientSource = published('NFPA 70 (NEC)', '690.7(A)(1), the maker’s coefficient');
export const necCurrentSource = published(
	'NFPA 70 (NEC)',
	'690.8(A) and (B): 125 %, and 125 % again for conductors',
);

/** Voltages and currents of a kind of panel where only its power is known. */
export interface ModuleClass {
	readonly name: 'cells36' | 'cells60' | 'cells72';
	readonly label: string;
	/** open-circuit voltage, the high end of the class [V] */
	readonly vocV: number;
	/** voltage of greatest power, the low end of the class [V] */
	readonly vmpV: number;
}

export const moduleClasses: Readonly<Record<ModuleClass['name'], ModuleClass>> = {
	cells36: { name: 'cells36', label: '36 cells, "12 V" class', vocV: 24.4, vmpV: 18 },
	cells60: { name: 'cells60', label: '60 cells (or 120 halves)', vocV: 41.5, vmpV: 31 },
	cells72: { name: 'cells72', label: '72 cells (or 144 halves)', vocV: 50, vmpV: 38 },
};
export const moduleClassSource = practice('usual voltages of a panel by its cells; the data sheet decides');

/** Short-circuit current over the current of greatest power, the high end (practice). */
export const shortOverMpp = 1.1;

/** The kind of panel that its rated power points to. */
export function moduleClassFor(panelW: number): ModuleClass {
	if (panelW <= 230) return moduleClasses.cells36;
	return panelW <= 420 ? moduleClasses.cells60 : moduleClasses.cells72;
}

/** The coldest end of the typical coefficients of open-circuit voltage for crystalline silicon [1/K]. */
export const steepestVocPerK = -0.0036;
