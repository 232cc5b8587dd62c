import { describe, expect, test } from 'vitest';
import { inert, typedText } from './text.js';

describe('typed text', () => {
	test.each([
		['<@UBOT> 40A 12V 15 ft', '40A 12V 15 ft'],
		['<@UBOT>: is 5 &lt; 6 &amp; 7 &gt; 2?', ': is 5 < 6 & 7 > 2?'],
		['ask <!here> and <!channel|channel>', 'ask @here and @channel'],
		['see <https://example.com/a|the page>, <https://example.com/b>', 'see the page, https://example.com/b'],
		['<@U777> and <#C1|vans>', '@U777 and #vans'],
		['&amp;lt; stays', '&lt; stays'],
	])('%s', (transmitted, typed) => {
		expect(typedText(transmitted, 'UBOT')).toBe(typed);
	});
});

test.each(['<!channel>', '<@U1|x> & <https://example.com>', '&lt;!here&gt;', 'a < b && c > d'])(
	'%s is inert on its way out, and comes back as it was',
	(text) => {
		const safe = inert(text);
		expect(safe).not.toMatch(/[<>]/);
		expect(typedText(safe, 'UBOT')).toBe(text);
	},
);
