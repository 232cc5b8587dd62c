/** Reading of JSON that came over the wire, where nothing about its shape may be taken for granted. */

export type JsonObject = Record<string, unknown>;

export function isObject(value: unknown): value is JsonObject {
	return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value when it is an object, else an empty one. */
export function objectOf(value: unknown): JsonObject {
	return isObject(value) ? value : {};
}

/** The value when it is an array, else an empty one. */
export function arrayOf(value: unknown): unknown[] {
	return Array.isArray(value) ? value : [];
}

/** The value when it is a string, else the given default. */
export function stringOf(value: unknown, fallback = ''): string {
	return typeof value === 'string' ? value : fallback;
}

/** Parses JSON text; `undefined` when it is none. */
export function parseJson(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}
