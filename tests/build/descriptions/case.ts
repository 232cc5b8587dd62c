import type { Region } from '@lugbook/core';

/** A van described as somebody in a shop would, what must be read from it and what must be found. */
export interface DescriptionCase {
	readonly name: string;
	readonly region: Region;
	readonly text: string;
	/** kind of equipment and its values in base units; each line is one component */
	readonly expected: readonly (readonly [
		kind: string,
		values?: Readonly<Record<string, number | string | boolean>>,
	])[];
	/** kinds said not to be there */
	readonly absent?: readonly string[];
	/** every danger there is: all of them must be found, and none besides */
	readonly dangers: readonly string[];
	/** faults planted besides, which must be found */
	readonly faults?: readonly string[];
}

export const gal = (value: number) => value * 3.785411784;
export const ft = (value: number) => value * 0.3048;
export const inch = (value: number) => value * 25.4;
export const lb = (value: number) => value * 0.45359237;
export const f = (value: number) => (value - 32) / 1.8;
export const btu = (value: number) => value * 0.29307107;
