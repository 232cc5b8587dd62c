import type { UnitHabit } from '@lugbook/core';

/** The direct-current wiring of a build: what there is, and the runs between. */
export interface OneLinePicture {
	readonly kind: 'one-line';
	readonly title: string;
	readonly units: UnitHabit;
	readonly parts: readonly OneLinePart[];
	readonly runs: readonly OneLineRun[];
}

export interface OneLinePart {
	/** by which the runs name it */
	readonly id: string;
	readonly kind: 'battery' | 'busbar' | 'converter' | 'solar' | 'alternator' | 'shore' | 'load' | 'chassis';
	readonly name: string;
	/** a second line: "12 V, 300 Ah" */
	readonly detail?: string;
	/** of a converter: what it takes and what it gives */
	readonly takes?: 'dc' | 'ac';
	readonly gives?: 'dc' | 'ac';
}

export interface OneLineRun {
	/** ids of the two parts, in the direction of the energy */
	readonly from: string;
	readonly to: string;
	/** "4 AWG"; null where it is not known */
	readonly conductor: string | null;
	/** one way [m]; null where it is not known */
	readonly lengthM: number | null;
	readonly devices: readonly OneLineDevice[];
	/** why this run may go without a fuse or breaker; null where it may not, and is then marked where none is named */
	readonly unprotected: string | null;
}

export interface OneLineDevice {
	readonly kind: 'fuse' | 'circuit breaker' | 'switch';
	readonly ratingA: number | null;
	/** the end of the run at which it stands */
	readonly at: 'from' | 'to';
}

/**
 * What keeps a wiring from being drawn, in plain words; empty where nothing does. `drawOneLine` throws these as one
 * RangeError.
 */
export function oneLineProblems({ parts, runs }: OneLinePicture): string[] {
	const problems: string[] = [];
	const ids = new Set<string>();
	if (parts.length === 0) problems.push('there is no part to draw');
	for (const { id, name } of parts) {
		if (ids.has(id)) problems.push(`two parts have the id "${id}" (the second is "${name}")`);
		ids.add(id);
	}
	for (const { from, to } of runs) {
		for (const end of [from, to]) {
			if (!ids.has(end))
				problems.push(`the run from "${from}" to "${to}" ends at "${end}", which is no part`);
		}
		if (from === to) problems.push(`a run begins and ends at "${from}"`);
	}
	return problems;
}
