import { LogError } from './errors.js';

/** What a body may hold: exactly what JSON can carry. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

export interface CanonicalLimits {
	/** Length of the encoding in UTF-8 bytes. */
	readonly bytes: number;
	/** Nesting of arrays and objects. */
	readonly depth: number;
}

const NO_LIMITS: CanonicalLimits = { bytes: Number.POSITIVE_INFINITY, depth: 200 };

/** With the `u` flag a paired surrogate is one code point, so only a lone one matches. */
const LONE_SURROGATE = /\p{Surrogate}/u;

export function isWellFormed(text: string): boolean {
	return !LONE_SURROGATE.test(text);
}

/**
 * The one encoding of a JSON value over which hashes are taken: no spaces, object keys sorted by their
 * UTF-16 code units, numbers and strings as ECMAScript writes them.
 * @param name how errors call the value, e.g. `body`
 * @throws LogError 'bad-entry' naming the place of a value that JSON can't carry (undefined, NaN, Infinity,
 * a lone surrogate, a Date or other object with a class) and of the limit that was passed
 * @source RFC 8785, JSON Canonicalization Scheme, section 3.2
 */
export function canonicalJson(value: unknown, name = 'value', limits: CanonicalLimits = NO_LIMITS): string {
	const parts: string[] = [];
	let bytes = 0;

	function refuse(place: string, problem: string): never {
		// A place may be as long as the keys that lead to it.
		const shown = place.length > 200 ? `${place.slice(0, 60)}...${place.slice(-120)}` : place;
		throw new LogError('bad-entry', `${shown} ${problem}`);
	}

	function put(part: string): void {
		bytes += Buffer.byteLength(part);
		if (bytes > limits.bytes) {
			refuse(name, `is longer than the ${limits.bytes} bytes allowed`);
		}
		parts.push(part);
	}

	function putString(text: string, place: string): void {
		if (!isWellFormed(text)) {
			refuse(place, `holds half of a surrogate pair, which is not valid Unicode text`);
		}
		put(JSON.stringify(text));
	}

	function encode(item: unknown, place: string, depth: number): void {
		if (item === null || typeof item === 'boolean') {
			put(String(item));
		} else if (typeof item === 'number') {
			if (!Number.isFinite(item)) {
				refuse(place, `is ${item}; a number must be finite`);
			}
			put(JSON.stringify(item));
		} else if (typeof item === 'string') {
			putString(item, place);
		} else if (typeof item === 'object') {
			// The depth limit also ends the walk through an object that contains itself.
			if (depth >= limits.depth) {
				refuse(place, `is nested deeper than the ${limits.depth} levels allowed`);
			}
			if (Array.isArray(item)) encodeArray(item, place, depth);
			else encodeObject(item, place, depth);
		} else {
			refuse(place, `is ${typeof item}, which JSON can't carry`);
		}
	}

	function encodeArray(items: readonly unknown[], place: string, depth: number): void {
		put('[');
		// By index: forEach would pass over the holes of a sparse array.
		for (let index = 0; index < items.length; index += 1) {
			if (index > 0) put(',');
			encode(items[index], `${place}[${index}]`, depth + 1);
		}
		put(']');
	}

	function encodeObject(item: object, place: string, depth: number): void {
		const prototype: unknown = Object.getPrototypeOf(item);
		if (prototype !== Object.prototype && prototype !== null) {
			refuse(place, `is an object with a class of its own; only plain objects are kept`);
		}
		// `<` compares by UTF-16 code units, as RFC 8785 section 3.2.3 asks.
		const members = Object.entries(item).sort(([a], [b]) => (a < b ? -1 : 1));
		put('{');
		for (const [index, [key, member]] of members.entries()) {
			if (index > 0) put(',');
			putString(key, `a key of ${place}`);
			put(':');
			encode(member, `${place}.${key}`, depth + 1);
		}
		put('}');
	}

	encode(value, name, 0);
	return parts.join('');
}
