import type { NewEntry } from '@lugbook/log';

/** An entry to write, all invented; a test says only what it is about. */
export function entryOf(given: Partial<NewEntry> = {}): NewEntry {
	return {
		shop: 'local',
		kind: 'exchange',
		delivery: null,
		platform: 'terminal',
		channel: 'C1',
		thread: null,
		build: null,
		topic: null,
		personId: 'U1',
		personName: 'Robin',
		text: 'wire for 40 A over 15 ft',
		at: '2026-05-04T12:00:00.000Z',
		follows: null,
		replaces: null,
		state: null,
		body: { headline: '4 AWG copper' },
		...given,
	};
}
