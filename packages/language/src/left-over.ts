import { type Element, isFiller } from './elements.js';

/**
 * The pieces that found no use, neighbours joined, in the words of the message.
 *
 * @param answered what asks for something that the answer holds anyway, such as a fuse beside its wire
 */
export function leftOver(
	elements: readonly Element[],
	claimed: ReadonlySet<Element>,
	message: string,
	answered: readonly Element[] = [],
): string[] {
	const left: { start: number; end: number }[] = [];
	for (const element of elements) {
		if (claimed.has(element) || element.type === 'mark' || isFiller(element)) continue;
		if (element.type === 'phrase' && element.meanings.some((meaning) => meaning.means === 'said')) continue;
		if (answered.some(({ start, end }) => start <= element.start && element.end <= end)) continue;
		const last = left.at(-1);
		if (last !== undefined && /^[\s-]*$/.test(message.slice(last.end, element.start))) last.end = element.end;
		else left.push({ start: element.start, end: element.end });
	}
	return left.map(({ start, end }) => message.slice(start, end));
}

/**
 * Figures of the message that stand in nothing that was taken, noted or said back: a reading that swallows one with
 * what stands beside it must not lose it in silence.
 */
export function figuresLost(message: string, accounted: readonly string[]): string[] {
	const told = accounted.join('\n');
	const figures = message.match(/(?<![\p{L}\p{N}.,/x×½²-])\d+/gu) ?? [];
	return [...new Set(figures)].filter((figure) => !told.includes(figure));
}
