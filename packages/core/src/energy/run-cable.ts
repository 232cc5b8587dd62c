import type { Sheet } from '../topic/sheet.js';
import { wire } from '../topics/wire.js';

/** What the wire topic chose for a run. */
export interface RunCable {
	/** "2/0 AWG", "2 x 4/0 AWG" */
	readonly conductor: string;
	readonly deviceA: number;
}

/**
 * Cable and fuse of a run by the wire topic; where no single conductor does it, two or more in parallel.
 * The wire's sheet joins the chain, and its size and device become results here.
 * @param given the wire topic's inputs
 * @returns null where nothing in the tables does it
 */
export function runCable(sheet: Sheet, given: Readonly<Record<string, unknown>>): RunCable | null {
	for (let parallel = 1; parallel <= 4; parallel += 1) {
		const outcome = sheet.call(wire, parallel === 1 ? given : { ...given, parallel });
		if (outcome.status !== 'answered') continue;
		const value = (name: string) => outcome.sizing.results.find((result) => result.name === name)?.value;
		const size = String(value('conductor'));
		const conductor = parallel === 1 ? size : `${parallel} × ${size}`;
		const deviceA = Number(value('device'));
		sheet.result('conductor', 'cable', conductor);
		sheet.result('device', 'fuse', deviceA, { kind: 'current' });
		return { conductor, deviceA };
	}
	return null;
}
