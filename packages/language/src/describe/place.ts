import { type Context, findPlaces, lookUpPlace, recordLow } from '@lugbook/core';
import { isFiller } from '../elements.js';
import type { Given } from '../fill.js';
import { type Span, type Text, textOf } from './text.js';

export interface PlaceNamed {
	readonly given: readonly Given[];
	readonly said: string;
	readonly spans: readonly Span[];
	readonly notes: readonly string[];
}

/** The place and month a description names; of several places the coldest, which is the safe side. */
export function placeNamed(text: Text, context: Context): PlaceNamed | null {
	const found = findPlaces(text.message)
		.filter((match) => match.sure && !isTradeWord(text, match))
		.flatMap((match) => {
			const looked = lookUpPlace(match.place, context.region);
			if (looked.kind !== 'found') return [];
			return [{ ...match, place: looked.place.name, lowC: recordLow(looked.place).valueC }];
		});
	const coldest = found.toSorted((a, b) => a.lowC - b.lowC)[0];
	const months = monthsIn(text);
	const month = months.length === 1 ? months[0] : undefined;
	if (coldest === undefined) return null;
	const others = found.filter(({ place }) => place !== coldest.place).map(({ place }) => place);
	return {
		given: [
			{ name: 'place', value: coldest.place, said: coldest.said },
			...(month === undefined ? [] : [{ name: 'month', value: month.month, said: month.said }]),
		],
		said: coldest.said,
		spans: [...found, ...(month === undefined ? [] : [month])].map(({ start, end }) => ({ start, end })),
		notes:
			others.length === 0
				? []
				: [
						`Several places are named; ${coldest.place} is taken, the coldest of them (also ${others.join(', ')}).`,
					],
	};
}

/** "low temperature cut-off" is no town, though there is one of that name. */
function isTradeWord(text: Text, match: Span): boolean {
	return text
		.elements(null)
		.some(
			(element) =>
				element.type === 'phrase' &&
				!isFiller(element) &&
				element.start < match.end &&
				element.end > match.start &&
				element.meanings.some((meaning) => 'topic' in meaning),
		);
}

function monthsIn(text: Text) {
	const elements = text.elements(null);
	return elements.flatMap((element, index) => {
		if (element.type !== 'phrase') return [];
		const meaning = element.meanings.find((one) => one.means === 'month');
		const before = elements[index - 1];
		// "may" and "mar" are months only where they stand as one.
		const isOne =
			element.phrase.length > 3 ||
			(before !== undefined &&
				/^(?:in|of|for|during|early|late|mid|through|until|en|im)$/.test(textOf(before)));
		if (meaning?.means !== 'month' || !isOne) return [];
		return [{ month: meaning.month, said: text.slice(element), start: element.start, end: element.end }];
	});
}
