import type { Element } from '../elements.js';
import { kindsServed } from './text.js';

/** Kinds that the words or the figures of a clause speak of, though it names none. */
export function impliedKinds(elements: readonly Element[]): readonly string[] {
	const kinds = new Set<string>();
	for (const element of elements) {
		// A word of one kind's inputs alone ("front axle", "chemistry") speaks of that kind.
		const served = new Set(kindsServed(element));
		if (served.size === 1) for (const kind of served) kinds.add(kind);
		if (element.type !== 'quantity') continue;
		for (const { kind, value, symbol } of element.readings) {
			if (kind === 'charge' && value >= 20) kinds.add('battery');
			if (kind === 'energy' && value >= 400) kinds.add('battery');
			if (symbol === 'Btu/h' && value <= 6000) kinds.add('air-conditioner');
			if (kind === 'voltage' && value >= 10 && value <= 60) kinds.add('battery');
			if (kind === 'temperature' && value <= 5) kinds.add('place');
			if (kind === 'duration' && value >= 24) kinds.add('trip');
			if (kind === 'mass' && value >= 1800) kinds.add('van');
		}
	}
	return [...kinds];
}
