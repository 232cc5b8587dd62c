import { wait } from '../calls.js';

/** The platform waits three seconds for its acknowledgement; it gets one by then also while the log is slow [ms]. */
const NOTE_PATIENCE_MS = 1500;

/** Waits until a message can't get lost any more, as long as the acknowledgement may wait. */
export async function notedOrLate(noted: Promise<void>): Promise<void> {
	await Promise.race([noted, wait(NOTE_PATIENCE_MS)]);
}
