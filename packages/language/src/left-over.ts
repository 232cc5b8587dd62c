import { type Element, isFiller, meaningsFor } from './elements.js';

/**
 * The pieces that found no use, neighbours joined, in the words of the message.
 *
 * @param includes topics whose answer is part of this one's: asking for them by name found its use
 */
export function leftOver(
	elements: readonly Element[],
	claimed: ReadonlySet<Element>,
	message: string,
	includes: readonly string[] = [],
): string[] {
	const left: { start: number; end: number }[] = [];
	for (const element of elements) {
		if (claimed.has(element) || element.type === 'mark' || isFiller(element)) continue;
		if (element.type === 'phrase' && element.meanings.some((meaning) => meaning.means === 'said')) continue;
		if (includes.some((topic) => meaningsFor(element, topic).some(({ means }) => means === 'topic')))
			continue;
		const last = left.at(-1);
		if (last !== undefined && /^[\s-]*$/.test(message.slice(last.end, element.start))) last.end = element.end;
		else left.push({ start: element.start, end: element.end });
	}
	return left.map(({ start, end }) => message.slice(start, end));
}
