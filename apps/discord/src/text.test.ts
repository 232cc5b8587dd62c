import { describe, expect, test } from 'vitest';
import { inert, typedText } from './text.js';

describe('typed text', () => {
	test.each([
		['<@111> 40A 12V 15 ft', '40A 12V 15 ft'],
		['<@!111> is 5 < 6?', 'is 5 < 6?'],
		['ask <@222> and <@&333> in <#444> <:bolt:555>', 'ask @222 and @333 in #444 :bolt:'],
	])('%s', (content, typed) => {
		expect(typedText(content, '111')).toBe(typed);
	});
});

test.each([
	['**bold** _it_ ~~no~~ `x` ||y||', '\\*\\*bold\\*\\* \\_it\\_ \\~\\~no\\~\\~ \\`x\\` \\|\\|y\\|\\|'],
	['@everyone <@222> <t:0>', '\\@everyone \\<\\@222\\> \\<t:0\\>'],
	['[go](https://example.com)', '\\[go\\](https:\\/\\/example.com)'],
	['# head\n- item\n-# small\n1. one\n> quote', '\\# head\n\\- item\n\\-\\# small\n1\\. one\n\\> quote'],
	['2 - 3 = -1, 4.5 m', '2 - 3 = -1, 4.5 m'],
	['back\\slash', 'back\\\\slash'],
])('%j is inert on its way out', (text, expected) => {
	expect(inert(text)).toBe(expected);
});
