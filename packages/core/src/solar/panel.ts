import {
	type ModuleClass,
	moduleClasses,
	moduleClassFor,
	moduleClassSource,
	shortOverMpp,
} from '../tables/modules.js';
import type { Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';

/** A panel with its figures, given or typical; power and currents are null where only a voltage was named. */
export interface Panel {
	readonly ratedW: number | null;
	readonly vocV: number;
	readonly vmpV: number;
	readonly iscA: number | null;
	/** share by which a degree changes the open-circuit voltage, negative, or null where it is not known [1/K] */
	readonly vocPerK: number | null;
}

export interface PanelInput {
	readonly panelW?: number | undefined;
	readonly vocV?: number | undefined;
	readonly vmpV?: number | undefined;
	readonly iscA?: number | undefined;
	readonly impA?: number | undefined;
	readonly vocPerK?: number | undefined;
	readonly cells?: ModuleClass['name'] | undefined;
}

/** The voltage of greatest power over the open-circuit voltage, the low end (practice). */
const lowVmpOverVoc = 0.78;

/** The panel as named, its gaps filled on the safe side and listed; or why the figures can't be those of one panel. */
export function readPanel(input: PanelInput, sheet: Sheet): Panel | Refusal {
	const wrong = contradiction(input, sheet);
	if (wrong !== null) return wrong;
	const givenW =
		input.panelW ?? (input.vmpV !== undefined && input.impA !== undefined ? input.vmpV * input.impA : null);
	const vocV = input.vocV ?? typicalVocV(input, givenW, sheet);
	const vmpV = input.vmpV ?? assumedVmpV(input, givenW, sheet);
	const vocPerK = input.vocPerK === undefined ? null : -Math.abs(input.vocPerK);
	const impA = input.impA ?? (givenW === null ? null : givenW / vmpV);
	if (input.iscA !== undefined) {
		return {
			ratedW: givenW ?? vmpV * (impA ?? input.iscA / shortOverMpp),
			vocV,
			vmpV,
			iscA: input.iscA,
			vocPerK,
		};
	}
	if (impA === null) return { ratedW: null, vocV, vmpV, iscA: null, vocPerK };
	const iscA = impA * shortOverMpp;
	sheet.assume(
		'iscA',
		'short-circuit current of a panel',
		iscA,
		'110 % of the current of greatest power (practice)',
		{ kind: 'current', confirm: true },
	);
	return { ratedW: givenW ?? vmpV * impA, vocV, vmpV, iscA, vocPerK };
}

function classOf(input: PanelInput, givenW: number | null): ModuleClass {
	return input.cells === undefined ? moduleClassFor(givenW ?? 100) : moduleClasses[input.cells];
}

function typicalVocV(input: PanelInput, givenW: number | null, sheet: Sheet): number {
	const kind = classOf(input, givenW);
	if (input.cells === undefined) {
		sheet.assume('cells', 'kind of panel', kind.label, 'by its power; read Voc, Vmp and Isc from the label', {
			confirm: true,
		});
	}
	sheet.assume('vocV', 'open-circuit voltage of a panel', kind.vocV, 'the high end of its kind (practice)', {
		kind: 'voltage',
		confirm: true,
	});
	sheet.source(moduleClassSource);
	return kind.vocV;
}

function assumedVmpV(input: PanelInput, givenW: number | null, sheet: Sheet): number {
	const vmpV = input.vocV === undefined ? classOf(input, givenW).vmpV : lowVmpOverVoc * input.vocV;
	sheet.assume(
		'vmpV',
		'voltage of greatest power of a panel',
		vmpV,
		input.vocV === undefined
			? 'the low end of its kind (practice)'
			: 'the low end: 78 % of the open-circuit voltage (practice)',
		{ kind: 'voltage', confirm: true },
	);
	return vmpV;
}

/** Figures that no one panel can have. */
function contradiction(input: PanelInput, sheet: Sheet): Refusal | null {
	const { panelW, vocV, vmpV, iscA, impA } = input;
	if (vocV !== undefined && vmpV !== undefined && vmpV >= vocV) {
		return {
			code: 'contradiction',
			text: sheet.say`A panel can't give its greatest power at ${sheet.show('voltage', vmpV)} when its open-circuit voltage is ${sheet.show('voltage', vocV)}.`,
			instead: 'Read Voc (the higher) and Vmp (the lower) from the label again.',
			field: 'vmpV',
		};
	}
	if (iscA !== undefined && impA !== undefined && impA > iscA) {
		return {
			code: 'contradiction',
			text: sheet.say`The current of greatest power, ${sheet.show('current', impA)}, can't be over the short-circuit current, ${sheet.show('current', iscA)}.`,
			instead: 'Read Isc (the higher) and Imp (the lower) from the label again.',
			field: 'impA',
		};
	}
	if (panelW === undefined || iscA === undefined || vocV === undefined) return null;
	// The fill factor of a panel: 0.6 to 0.85, wide enough here for rounding and worn labels.
	const share = panelW / (vocV * iscA);
	if (share <= 0.95 && share >= 0.45) return null;
	return {
		code: 'contradiction',
		text: sheet.say`${sheet.show('power', panelW)} does not go with Voc ${sheet.show('voltage', vocV)} and Isc ${sheet.show('current', iscA)}: their product is ${sheet.show('power', vocV * iscA)}, and a panel gives 60 to 85 % of it.`,
		instead: 'Give the figures of one panel, from its label.',
		field: 'panelW',
	};
}
