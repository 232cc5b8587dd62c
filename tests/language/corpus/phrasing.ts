/**
 * What a person typed, and what that person meant by it.
 *
 * `given` holds every input that was said, in base units. A name that ends in "?" may be read or not, as the words
 * carry it either way; "a|b" stands for one input that either field takes rightly. Free names of loads and items are
 * not compared. Nothing else may be read: a value too many is as wrong as one missing.
 */
export interface Phrasing {
	readonly text: string;
	/** read: answered as meant; asks: it can't be told without a question */
	readonly expect: 'read' | 'asks' | 'declined' | 'small-talk' | 'not-understood';
	/** the topic meant; several where each answers the question as asked */
	readonly topics: readonly string[];
	readonly given: Readonly<Record<string, Meant>>;
	/** words that must be said back as not used */
	readonly unread: readonly string[];
}

export type Meant =
	| number
	| string
	| boolean
	| readonly Readonly<Record<string, number | string | boolean>>[];

type Topics = string | readonly string[];

const listOf = (topics: Topics) => (typeof topics === 'string' ? [topics] : topics);

/** Answered with exactly these inputs. */
export function read(
	text: string,
	topics: Topics,
	given: Record<string, Meant>,
	unread: readonly string[] = [],
): Phrasing {
	return { text, expect: 'read', topics: listOf(topics), given, unread };
}

/** A question has to come back; what was said is kept with it. */
export function asks(text: string, topics: Topics = [], given: Record<string, Meant> = {}): Phrasing {
	return { text, expect: 'asks', topics: listOf(topics), given, unread: [] };
}

function without(expect: Phrasing['expect']): (text: string) => Phrasing {
	return (text) => ({ text, expect, topics: [], given: {}, unread: [] });
}

export const declined = without('declined');
export const smallTalk = without('small-talk');
export const notUnderstood = without('not-understood');

/** To base units, by definition: international foot, US liquid gallon, avoirdupois pound, pound per square inch. */
export const ft = (feet: number, inches = 0) => feet * 0.3048 + inches * 0.0254;
export const inch = (inches: number) => inches * 0.0254;
export const inchMm = (inches: number) => inches * 25.4;
export const fahrenheit = (degrees: number) => ((degrees - 32) * 5) / 9;
export const gal = (gallons: number) => gallons * 3.785411784;
export const lb = (pounds: number) => pounds * 0.45359237;
export const psi = (pressure: number) => pressure * 6.894757293168;
export const min = (minutes: number) => minutes / 60;
export const days = (count: number) => count * 24;
export const cfm = (flow: number) => flow * 1.69901082;
export const btuH = (power: number) => power * 0.29307107;
