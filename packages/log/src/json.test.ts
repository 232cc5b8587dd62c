/** The encoding under every hash, held against RFC 8785 (JSON Canonicalization Scheme) and against its own laws. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LogError } from './errors.js';
import { canonicalJson } from './json.js';

function refusal(value: unknown, limits?: { bytes: number; depth: number }): string {
	try {
		canonicalJson(value, 'body', limits);
	} catch (error) {
		expect(error).toBeInstanceOf(LogError);
		expect((error as LogError).code).toBe('bad-entry');
		return (error as LogError).message;
	}
	throw new Error('was accepted');
}

describe('RFC 8785 (its examples and vectors as remembered, not read again)', () => {
	test('section 3.2.2 to 3.2.4: the sample object and its UTF-8 bytes', () => {
		const sample = JSON.parse(String.raw`{
			"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
			"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
			"literals": [null, true, false]
		}`);
		const bytes = [
			'7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72',
			'75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a',
			'5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31',
			'65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37',
			'5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30',
			'30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d',
		];
		expect(Buffer.from(canonicalJson(sample)).toString('hex')).toBe(bytes.join('').replaceAll(' ', ''));
	});

	test('section 3.2.3: keys sorted by UTF-16 code units, not by code points', () => {
		const keys = ['\u20ac', '\r', '\ufb33', '1', '\u{1f600}', '\u0080', '\u00f6'];
		const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\u{1f600}', '\ufb33'];
		const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
		expect([...text.matchAll(/"([^"]*)":0/g)].map((match) => JSON.parse(`"${match[1]}"`))).toEqual(sorted);
	});

	test.each([
		['0000000000000000', '0'],
		['8000000000000000', '0'],
		['0000000000000001', '5e-324'],
		['8000000000000001', '-5e-324'],
		['7fefffffffffffff', '1.7976931348623157e+308'],
		['ffefffffffffffff', '-1.7976931348623157e+308'],
		['4340000000000000', '9007199254740992'],
		['c340000000000000', '-9007199254740992'],
		['4430000000000000', '295147905179352830000'],
		['44b52d02c7e14af5', '9.999999999999997e+22'],
		['44b52d02c7e14af6', '1e+23'],
		['44b52d02c7e14af7', '1.0000000000000001e+23'],
		['444b1ae4d6e2ef4e', '999999999999999700000'],
		['444b1ae4d6e2ef4f', '999999999999999900000'],
		['444b1ae4d6e2ef50', '1e+21'],
		['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
		['3eb0c6f7a0b5ed8d', '0.000001'],
		['41b3de4355555553', '333333333.3333332'],
		['41b3de4355555554', '333333333.33333325'],
		['41b3de4355555555', '333333333.3333333'],
		['41b3de4355555556', '333333333.3333334'],
		['41b3de4355555557', '333333333.33333343'],
		['becbf647612f3696', '-0.0000033333333333333333'],
		['43143ff3c1cb0959', '1424953923781206.2'],
	])('appendix B: the double %s is written %s', (hex, written) => {
		expect(canonicalJson(Buffer.from(hex, 'hex').readDoubleBE())).toBe(written);
	});

	test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
		'section 3.2.2.3: %s ends the encoding with an error',
		(value) => {
			expect(refusal({ rows: [{ dropV: value }] })).toBe(
				`body.rows[0].dropV is ${value}; a number must be finite`,
			);
		},
	);

	test('section 3.2.2.2: half of a surrogate pair ends the encoding with an error', () => {
		expect(refusal(['fine', '\ud83d'])).toMatch(/^body\[1\] holds half of a surrogate pair/);
		expect(refusal({ '\udead': 1 })).toMatch(/^a key of body holds half of a surrogate pair/);
	});
});

describe('laws', () => {
	const json = fc.jsonValue({ noUnicodeString: false });

	test('what is read back is what was written', () => {
		fc.assert(
			fc.property(json, (value) => {
				const withoutMinusZero = JSON.parse(JSON.stringify(value));
				expect(JSON.parse(canonicalJson(value))).toEqual(withoutMinusZero);
			}),
		);
	});

	test('a canonical text is its own canonical text', () => {
		fc.assert(
			fc.property(json, (value) => {
				const text = canonicalJson(value);
				expect(canonicalJson(JSON.parse(text))).toBe(text);
			}),
		);
	});

	test('the order in which keys were set makes no difference', () => {
		fc.assert(
			fc.property(fc.dictionary(fc.string(), json), (object) => {
				const turned = Object.fromEntries(Object.entries(object).reverse());
				expect(canonicalJson(turned)).toBe(canonicalJson(object));
			}),
		);
	});
});

describe('what JSON can not carry is refused with its place', () => {
	test.each([
		['undefined in an object', { a: { b: undefined } }, 'body.a.b is undefined, which JSON'],
		['a hole in a list', Object.assign(new Array(3), { 0: 1, 2: 3 }), 'body[1] is undefined, which JSON'],
		['a bigint', { n: 1n }, 'body.n is bigint, which JSON'],
		['a function', [() => 1], 'body[0] is function, which JSON'],
		['a symbol', Symbol('s'), 'body is symbol, which JSON'],
		['a date', { at: new Date(0) }, 'body.at is an object with a class of its own'],
		['a map', new Map(), 'body is an object with a class of its own'],
		[
			'something with toJSON',
			new (class {
				toJSON() {
					return 1;
				}
			})(),
			'body is an object with a class of its own',
		],
	])('%s', (_, value, message) => {
		expect(refusal(value)).toContain(message);
	});

	test('an object that contains itself ends at the depth limit', () => {
		const loop: { again?: unknown } = {};
		loop.again = loop;
		expect(refusal(loop, { bytes: 1e6, depth: 100 })).toContain(
			'is nested deeper than the 100 levels allowed',
		);
	});

	test('an object without prototype is plain', () => {
		expect(canonicalJson(Object.assign(Object.create(null), { a: 1 }))).toBe('{"a":1}');
	});

	test('a key that means something to the language is a key like any other', () => {
		const text = '{"__proto__":{"x":1},"constructor":2}';
		expect(canonicalJson(JSON.parse(text))).toBe(text);
	});

	test('the byte limit counts the encoding in UTF-8 and lets exactly its length through', () => {
		// ["€€"]: two brackets, two quotes, three bytes a sign.
		expect(canonicalJson(['€€'], 'body', { bytes: 10, depth: 1 })).toBe('["€€"]');
		expect(refusal(['€€'], { bytes: 9, depth: 1 })).toBe('body is longer than the 9 bytes allowed');
	});

	test('a shared part that would unfold to a gigabyte is refused at the limit', () => {
		let value: unknown = 'x'.repeat(1000);
		for (let level = 0; level < 20; level += 1) value = [value, value];
		expect(refusal(value, { bytes: 1024 * 1024, depth: 100 })).toContain('is longer than the 1048576 bytes');
	});
});
