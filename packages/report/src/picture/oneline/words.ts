import { type UnitHabit, write, writeNumber } from '@lugbook/core';
import { plainLine } from '../../plain.js';
import type { OneLineDevice, OneLinePart, OneLineRun } from './input.js';

/** What stands on a run: its conductor and its length. */
export function conductorText({ conductor }: OneLineRun): string {
	return conductor === null ? 'size?' : plainLine(conductor);
}

export function lengthText({ lengthM }: OneLineRun, units: UnitHabit): string {
	return lengthM === null ? 'length?' : write('length', lengthM, units, { round: 'up' });
}

export function ratingText({ kind, ratingA }: OneLineDevice): string {
	if (ratingA !== null) return `${writeNumber(ratingA, 1)} A`;
	return kind === 'switch' ? '' : '? A';
}

/** True where nothing is named that would protect the run, and nothing says that it may go without. */
export function isBare({ devices, unprotected }: OneLineRun): boolean {
	return unprotected === null && devices.every(({ kind }) => kind === 'switch');
}

export function partText({ name, detail }: OneLinePart): string {
	return plainLine(detail === undefined ? name : `${name}, ${detail}`);
}
