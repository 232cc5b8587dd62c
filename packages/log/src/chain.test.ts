/** The hashes of the chain, held against the published vectors of what they are made of. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type Chained,
	commitmentTo,
	entryHash,
	FIRST_PREVIOUS_HASH,
	newSalt,
	personTagFor,
	sha256Hex,
} from './chain.js';
import { canonicalJson } from './json.js';

/** FIPS 180-4, the examples NIST publishes with it; as remembered. */
describe('SHA-256 (FIPS 180-4 examples)', () => {
	test.each([
		['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
		['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
		[
			'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
			'248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
		],
		['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
	])('%.60s', (message, digest) => {
		expect(sha256Hex(message)).toBe(digest);
	});
});

/** HMAC by its definition, RFC 2104 section 2, from SHA-256 alone. */
function hmacSha256(key: Buffer, message: string): string {
	const block = Buffer.alloc(64);
	(key.length > 64 ? Buffer.from(sha256Hex(key), 'hex') : key).copy(block);
	const inner = sha256Hex(Buffer.concat([block.map((byte) => byte ^ 0x36), Buffer.from(message)]));
	return sha256Hex(Buffer.concat([block.map((byte) => byte ^ 0x5c), Buffer.from(inner, 'hex')]));
}

test('the HMAC of this test gives RFC 4231, test case 2 (as remembered)', () => {
	expect(hmacSha256(Buffer.from('Jefe'), 'what do ya want for nothing?')).toBe(
		'5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
	);
});

test("a person's pseudonym is the first half of an HMAC over shop and id", () => {
	const key = newSalt();
	const whole = hmacSha256(Buffer.from(key), '["slack:T1","U1"]');
	expect(personTagFor('slack:T1', 'U1', key)).toBe(whole.slice(0, 32));
	// As hexadecimal digits these would all be the same key.
	for (const other of [`${key}0`, `${key}x`])
		expect(personTagFor('slack:T1', 'U1', other)).not.toBe(whole.slice(0, 32));
});

test('a salt is 256 bits and never the same twice', () => {
	const salts = Array.from({ length: 1000 }, newSalt);
	for (const salt of salts) expect(salt).toMatch(/^[0-9a-f]{64}$/);
	expect(new Set(salts).size).toBe(1000);
});

const name = fc.string({ minLength: 1 });
const optional = fc.option(name);
const reference = fc.option(fc.integer({ min: 1 }));
const chained: fc.Arbitrary<Chained> = fc.record({
	shop: name,
	number: fc.integer({ min: 1 }),
	kind: fc.constantFrom('exchange', 'signed'),
	delivery: optional,
	platform: name,
	channel: name,
	thread: optional,
	build: optional,
	topic: optional,
	at: name,
	follows: reference,
	replaces: reference,
	state: optional,
	personTag: name,
	commitment: name,
	previousHash: fc.constant(FIRST_PREVIOUS_HASH),
	bodyText: fc.jsonValue().map((value) => canonicalJson(value)),
});

test('the hash of an entry is SHA-256 over the canonical JSON of all that is chained', () => {
	fc.assert(
		fc.property(chained, (entry) => {
			const { bodyText, ...others } = entry;
			const whole = { ...others, body: JSON.parse(bodyText), format: 1 };
			expect(entryHash(entry)).toBe(sha256Hex(canonicalJson(whole)));
		}),
	);
});

test('changing any one chained field changes the hash', () => {
	fc.assert(
		fc.property(chained, chained, (entry, other) => {
			const hash = entryHash(entry);
			for (const key of Object.keys(entry) as (keyof Chained)[]) {
				if (other[key] === entry[key]) continue;
				expect(entryHash({ ...entry, [key]: other[key] }), key).not.toBe(hash);
			}
		}),
	);
});

test('a body that means the same but is written otherwise has another hash', () => {
	const [entry] = fc.sample(chained, 1);
	if (entry === undefined) throw new Error('no sample');
	expect(entryHash({ ...entry, bodyText: '{"a": 1}' })).not.toBe(
		entryHash({ ...entry, bodyText: '{"a":1}' }),
	);
});

test('a commitment tells different people, texts and salts apart, also where they run together', () => {
	const base = { personId: 'U1', personName: 'Sam', text: 'wire', salt: '00' };
	const digests = [
		base,
		{ ...base, personId: 'U1S', personName: 'am' },
		{ ...base, personName: 'Samw', text: 'ire' },
		{ ...base, text: 'wire ' },
		{ ...base, salt: '01' },
	].map(commitmentTo);
	expect(new Set(digests).size).toBe(digests.length);
	expect(digests[0]).toBe(sha256Hex('{"personId":"U1","personName":"Sam","salt":"00","text":"wire"}'));
});
