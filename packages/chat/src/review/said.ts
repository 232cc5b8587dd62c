/** How people ask the log without its verbs, and which verb they mean by it. Only what shows or exports something. */

const meant: readonly (readonly [said: RegExp, verb: string])[] = [
	[
		/^(?:what(?:'?s| is| are)?\s+(?:still\s+|there\s+)?(?:left|open|unsigned|missing)(?:\s+to\s+(?:sign|do|check))?|(?:what\s+)?(?:still\s+)?to\s?do|open|unsigned)(?:\s+here)?$/i,
		'review',
	],
	[/^who\s+(?:has\s+)?signed\s+(?:off\s+)?(?:the\s+)?(?:whole\s+)?(?:build|van)$/i, 'review'],
	[
		/^(?:who\s+(?:has\s+)?(?:signed|rejected|asked)|(?:the\s+)?history\s+of|what\s+(?:became|happened)\s+(?:of|to|with))\s+(?:no\.?\s*|#)?([1-9]\d{0,8})$/i,
		'show $1',
	],
	[/^(?:(?:print|export|get|make|write|give)\s+(?:me\s+)?)?(?:the\s+)?book$/i, 'export pdf'],
	[/^(pdf|html|csv|json)$/i, 'export $1'],
	[/^(?:find|search)(?:\s+for)?\s+(\S[\s\S]*)$/i, 'show $1'],
];

/** The verb that is meant, or the words as they are. */
export function verbMeant(text: string): string {
	const said = text.replace(/[\s?.!]+$/, '');
	for (const [pattern, verb] of meant) {
		if (pattern.test(said)) return said.replace(pattern, verb);
	}
	return text;
}
