import { writeNumber } from '../quantity/write.js';
import { batteryPracticeSource, type Chemistry } from '../tables/batteries.js';
import type { Decision, Sheet } from '../topic/sheet.js';
import { practice } from '../topic/source.js';
import { type Bank, capacityAh } from './bank.js';
import type { ChargeTime } from './charging.js';

/** States of charge between which a bank is charged, 0 to 1. */
export interface ChargeSpan {
	readonly from: number;
	readonly to: number;
}

/** A charge with what it was worked out for. */
export interface TimedCharge extends ChargeTime, ChargeSpan {
	/** current into the bank while it is constant [A] */
	readonly currentA: number;
}

const chargingSource = practice(
	'constant current, then constant voltage; knee and taper by chemistry, the maker decides',
);

const n = (value: number, decimals = 2) => writeNumber(value, decimals);

/** From where to where it is charged; what wasn't said is assumed. Or the refusal where nothing lies between. */
export function chargeSpanOf(
	input: { readonly fromSoc?: number | undefined; readonly toSoc?: number | undefined },
	chemistry: Chemistry,
	sheet: Sheet,
): ChargeSpan | Decision {
	const named = [input.fromSoc, input.toSoc].filter((value) => value !== undefined);
	// Charging goes up: of two states of charge the lower is the start.
	const from = named.length === 2 ? Math.min(...named) : (input.fromSoc ?? usualStart(chemistry, sheet));
	const to = named.length === 2 ? Math.max(...named) : (input.toSoc ?? full(sheet));
	if (to - from >= 0.005) return { from, to };
	return sheet.refuse(
		'impossible',
		sheet.say`From ${sheet.show('fraction', from)} to ${sheet.show('fraction', to)} there is nothing to charge.`,
		'Name a state of charge to start at and a higher one to reach.',
		'toSoc',
	);
}

function usualStart(chemistry: Chemistry, sheet: Sheet): number {
	const start = 1 - chemistry.depthOfDischarge;
	sheet.assume('fromSoc', 'state of charge at the start', start, 'drawn down as far as is usual (practice)', {
		kind: 'fraction',
		confirm: true,
	});
	return start;
}

function full(sheet: Sheet): number {
	sheet.assume('toSoc', 'state of charge to reach', 1, 'full', { kind: 'fraction' });
	return 1;
}

/** The working and the results that every charge has. */
export function writeCharge(sheet: Sheet, bank: Bank, time: TimedCharge): void {
	const { chemistry } = bank;
	const capacity = capacityAh(bank);
	sheet.step(
		'state of charge where the current begins to fall',
		'sk = 1 − T · (I / C − it)',
		`1 − ${n(chemistry.taperH)} h × (${n(time.currentA)} A / ${n(capacity)} Ah − ${n(chemistry.tailRatePerH)}/h)`,
		time.knee,
		{ kind: 'fraction', source: chargingSource },
	);
	sheet.step(
		'at constant current',
		't1 = (min(s2, sk) − s1) · C / (I · ηc)',
		`(${n(Math.min(time.to, time.knee), 3)} − ${n(time.from, 3)}) × ${n(capacity)} Ah / (${n(time.currentA)} A × ${n(chemistry.chargeEfficiency)})`,
		time.constantH,
		{ kind: 'duration', source: batteryPracticeSource },
	);
	if (time.taperH > 0) {
		sheet.step(
			'at constant voltage',
			't2 = (T / ηc) · ln(I1 / I2)',
			`${n(chemistry.taperH)} h / ${n(chemistry.chargeEfficiency)} × ln(${n(time.currentA)} A / ${n(time.endA)} A)`,
			time.taperH,
			{ kind: 'duration', source: chargingSource },
		);
	}
	const up = { kind: 'duration', write: { round: 'up' } } as const;
	sheet.result('constantCurrentTime', 'at constant current', time.constantH, up);
	sheet.result('taperTime', 'at constant voltage', time.taperH, up);
	sheet.result('knee', 'state of charge where the current begins to fall', time.knee, { kind: 'fraction' });
	sheet.result('chargeCurrent', 'current into the bank', time.currentA, {
		kind: 'current',
		write: { round: 'down' },
	});
	const reached = sheet.show('fraction', time.knee, { round: 'down' });
	sheet.tipping('toSoc', 'state of charge to reach', time.knee, sheet.say`up to ${reached} at full current`, {
		kind: 'fraction',
	});
}

/** How the time of a charge comes about. */
export function chargeBecause(sheet: Sheet, time: TimedCharge): string {
	const current = sheet.show('current', time.currentA, { round: 'down' });
	const knee = sheet.show('fraction', time.knee, { decimals: 0, round: 'down' });
	return time.taperH > 0
		? sheet.say`${hoursUp(sheet, time.constantH)} at ${current} up to ${knee}, then ${hoursUp(sheet, time.taperH)} with a falling current.`
		: sheet.say`At ${current} all the way; the current begins to fall only at ${knee}.`;
}

/** Hours rounded up to tenths, minutes below one hour. */
export function hoursUp(sheet: Sheet, hours: number): string {
	return sheet.show('duration', hours, { round: 'up', decimals: hours < 1 ? 0 : 1 });
}
