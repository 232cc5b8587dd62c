import {
	awgAreaMm2,
	awgDiameterMm,
	conductorSize,
	copperResistanceAt,
	solidCopperOhmPerM,
} from '../../packages/core/src/tables/conductors.js';
import { readTable } from './csv.js';
import type { EvidenceMark, EvidenceRow } from './evidence.js';

const topic = 'conductor';
const metresPerKft = 304.8;
const mm2PerCircularMil = (Math.PI / 4) * 0.0254 ** 2;

function sizeOf(name: string) {
	const size = conductorSize(name);
	if (size === null) throw new Error(`${name} is not in the tables`);
	return size;
}

/** The n of the gauge formula: 0 for 1/0, -1 for 2/0 and so on. */
function gaugeOf(awg: string): number {
	const zeros = /^(\d)\/0$/.exec(awg);
	return zeros === null ? Number(awg) : 1 - Number(zeros[1]);
}

// The table prints four figures and rounds wires to standard circular mils: worst 0.25 %.
const areas: EvidenceRow[] = readTable('electrical/awg_geometry.csv')
	.filter((row) => row.area_circular_mils_nec_table8 !== '')
	.map((row) => ({
		topic,
		what: `${row.awg} AWG: copper area by the gauge formula`,
		source: 'NFPA 70 (NEC), Chapter 9 Table 8, area',
		mark: 'verified',
		published: Number(row.area_circular_mils_nec_table8),
		unit: 'cmil',
		tolerance: { rel: 0.003 },
		ours: () => awgAreaMm2(gaugeOf(row.awg ?? '')) / mm2PerCircularMil,
	}));

const diameters: EvidenceRow[] = (
	[
		['36', 0.005],
		['18', 0.0403],
		['10', 0.1019],
		['4', 0.2043],
		['4/0', 0.46],
	] as const
).map(([awg, inch]) => ({
	topic,
	what: `${awg} AWG: diameter of the solid wire`,
	source: 'ASTM B258, standard diameters',
	mark: 'from memory',
	published: inch,
	unit: 'in',
	// printed to a tenth of a mil
	tolerance: { abs: 0.00005 },
	ours: () => awgDiameterMm(gaugeOf(awg)) / 25.4,
}));

// Table 8 gives three figures; its own conductivity is a shade under 100 % IACS.
const solid: EvidenceRow[] = readTable('electrical/nec_ch9_table8_dc_resistance.csv')
	.filter((row) => row.form === 'solid')
	.map((row) => ({
		topic,
		what: `${row.awg} AWG solid, 75 °C: resistance from area and resistivity`,
		source: 'NFPA 70 (NEC), Chapter 9 Table 8, solid uncoated copper',
		mark: 'verified',
		published: Number(row.resistance_uncoated_copper_ohm_per_kft_75C),
		unit: 'ohm/kft',
		tolerance: { rel: 0.006 },
		ours: () => solidCopperOhmPerM(awgAreaMm2(gaugeOf(row.awg ?? '')), 75) * metresPerKft,
	}));

// Four figures as printed; the handbook rounds the diameters first, so the fourth figure may differ by a few.
const handbook: EvidenceRow[] = (
	[
		['18', 6.385],
		['14', 2.525],
		['12', 1.588],
		['10', 0.9989],
		['8', 0.6282],
		['6', 0.3951],
		['4', 0.2485],
		['2', 0.1563],
		['4/0', 0.04901],
	] as const
).map(([awg, ohmPerKft]) => ({
	topic,
	what: `${awg} AWG solid, 20 °C: resistance from area and resistivity`,
	source: 'NBS Handbook 100 (1966), copper wire tables, annealed copper at 20 °C',
	mark: 'from memory',
	published: ohmPerKft,
	unit: 'ohm/kft',
	tolerance: { rel: 0.0006 },
	ours: () => solidCopperOhmPerM(awgAreaMm2(gaugeOf(awg)), 20) * metresPerKft,
}));

const kFactors: EvidenceRow[] = [
	...(
		[
			['K_20C', 20, 0.001],
			['K_25C', 25, 0.002],
			// rounded to three figures by those who use them
			['K_10_4', 20, 0.05],
			['K_11_2', 40, 0.05],
		] as const
	).map(([id, temperatureC, abs]): EvidenceRow => {
		const row = readTable('electrical/copper_constants.csv').find((one) => one.id === id);
		return {
			topic,
			what: `K factor, solid copper at ${temperatureC} °C (${row?.value} ohm cmil/ft)`,
			source: 'handbook K factors of copper',
			mark: 'verified',
			published: Number(row?.value),
			unit: 'ohm cmil/ft',
			tolerance: { abs },
			ours: () => (solidCopperOhmPerM(1, temperatureC) * 0.3048) / mm2PerCircularMil,
		};
	}),
	...['14 AWG', '10 AWG', '4 AWG', '4/0 AWG'].map(
		(name): EvidenceRow => ({
			topic,
			what: `K factor, ${name} stranded at 75 °C`,
			source: 'K = 12.9 for 2·K·I·D/CM (code-based trade textbooks)',
			mark: 'verified',
			published: 12.9,
			unit: 'ohm cmil/ft',
			// rounded to three figures; Table 8 gives 12.8 to 12.9
			tolerance: { abs: 0.1 },
			ours: () => {
				const size = sizeOf(name);
				return (copperResistanceAt(size.bareOhmPerM20C, 75) * 0.3048 * size.areaMm2) / mm2PerCircularMil;
			},
		}),
	),
];

const stranded = readTable('electrical/nec_ch9_table8_dc_resistance.csv').filter(
	(row) => row.form === 'stranded',
);

/** R2 = R1 (1 + 0.00323 (T2 - 75)): the note below the table. */
const converted: EvidenceRow[] = ['12', '4', '4/0'].flatMap((awg) =>
	[20, 40, 60, 90, 105].map((temperatureC): EvidenceRow => {
		const at75 = Number(stranded.find((row) => row.awg === awg)?.resistance_uncoated_copper_ohm_per_kft_75C);
		return {
			topic,
			what: `${awg} AWG stranded at ${temperatureC} °C`,
			source: 'NFPA 70 (NEC), Chapter 9 Table 8, Note 2 (0.00323 per K from 75 °C)',
			mark: 'verified',
			published: at75 * (1 + 0.00323 * (temperatureC - 75)),
			unit: 'ohm/kft',
			// 0.00323 is 0.003231 rounded
			tolerance: { rel: 0.0005 },
			ours: () => copperResistanceAt(sizeOf(`${awg} AWG`).bareOhmPerM20C, temperatureC) * metresPerKft,
		};
	}),
);

/** Factor to 20 °C kt = 254.5 / (234.5 + t). */
const kt: EvidenceRow[] = [5, 10, 25, 30, 70, 90].map((temperatureC) => ({
	topic,
	what: `factor from ${temperatureC} °C to 20 °C`,
	source: 'IEC 60228, Annex B, kt = 254.5 / (234.5 + t)',
	mark: 'verified',
	published: 254.5 / (234.5 + temperatureC),
	unit: '',
	// 1 / 254.5 is 0.003929; the coefficient is 0.00393
	tolerance: { abs: 0.0002 },
	ours: () => 1 / copperResistanceAt(1, temperatureC),
}));

/** Drop of a two-core flexible cord at 60 °C in mV per ampere and metre, as printed for coated strands. */
const cords: EvidenceRow[] = (
	[
		[0.75, 62],
		[1, 46],
		[1.5, 32],
		[2.5, 19],
		[4, 12],
	] as const
).map(([areaMm2, printed]) => ({
	topic,
	what: `${areaMm2} mm² flexible cord at 60 °C: drop per ampere and metre`,
	source: 'BS 7671, Table 4F3B',
	mark: 'from memory' as EvidenceMark,
	published: printed,
	unit: 'mV/(A m)',
	// whole millivolts are printed
	tolerance: { abs: 0.5 },
	ours: () => 2 * copperResistanceAt(sizeOf(`${areaMm2} mm²`).tinnedOhmPerM20C, 60) * 1000,
}));

export const rows: readonly EvidenceRow[] = [
	...areas,
	...diameters,
	...solid,
	...handbook,
	...kFactors,
	...converted,
	...kt,
	...cords,
];
