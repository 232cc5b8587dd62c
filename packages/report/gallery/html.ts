/** A piece of HTML as a strict reader takes it. */
export type HtmlToken =
	| { readonly kind: 'text'; readonly text: string }
	| {
			readonly kind: 'open';
			readonly name: string;
			readonly attributes: Readonly<Record<string, string>>;
			/** ends in itself */
			readonly alone: boolean;
	  }
	| { readonly kind: 'close'; readonly name: string; readonly attributes: Readonly<Record<string, never>> };

const empty = new Set(['br', 'col', 'meta']);

/**
 * Reads HTML by the rules that ours keeps to: every tag in lower case and with its attributes in double quotes. It
 * throws at a "<" that begins nothing of the kind, so that markup from a record can't pass as ours. For tests.
 */
export function* htmlTokens(html: string): Generator<HtmlToken> {
	let at = 0;
	while (at < html.length) {
		if (html[at] !== '<') {
			const end = html.indexOf('<', at);
			const text = html.slice(at, end === -1 ? html.length : end);
			yield { kind: 'text', text: unescaped(text) };
			at += text.length;
			continue;
		}
		const tag = /^<(\/?)([a-z][a-z0-9]*)((?:\s+[a-zA-Z-]+="[^"<]*")*)\s*(\/?)>/.exec(
			html.slice(at, at + 60_000),
		);
		if (tag === null) throw new Error(`no tag of ours: ${html.slice(at, at + 80)}`);
		const [whole, slash, name = '', list = '', ended] = tag;
		if (slash === '/') yield { kind: 'close', name, attributes: {} };
		else {
			const attributes = Object.fromEntries(
				[...list.matchAll(/([a-zA-Z-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [
					key.toLowerCase(),
					unescaped(value),
				]),
			);
			yield { kind: 'open', name, attributes, alone: ended === '/' || empty.has(name) };
		}
		at += whole.length;
	}
}

/** What a reader sees, pieces parted by spaces. */
export function textOfHtml(html: string): string {
	return [...htmlTokens(html)].flatMap((token) => (token.kind === 'text' ? [token.text] : [])).join(' ');
}

function unescaped(text: string): string {
	return text
		.replaceAll('&lt;', '<')
		.replaceAll('&gt;', '>')
		.replaceAll('&quot;', '"')
		.replaceAll('&#39;', "'")
		.replaceAll('&amp;', '&');
}
