import type { Part } from '../message.js';

/** The headline, then every danger, then the rest as it came; what may be folded last. Empty parts are left out. */
export function inReadingOrder(parts: readonly Part[]): Part[] {
	const rank = (part: Part) =>
		part.kind === 'headline' ? 0 : part.kind === 'danger' ? 1 : part.fold ? 3 : 2;
	return parts.filter((part) => part.text.trim() !== '').toSorted((a, b) => rank(a) - rank(b));
}
