import { z } from 'zod';
import { type KindName, kindOf } from '../quantity/kinds.js';
import type { Context } from './context.js';

/**
 * What a topic says of one of its inputs. Everything a person meets is derived from it: the validation and its
 * words, the reading of text, the typed options and forms of the platforms, help, the topic reference.
 */
export interface FieldMeta {
	/** the trade's word for it, in lower case: "one-way length" */
	readonly label: string;
	/** words that point to this field when they stand beside a value; in Spanish and German too where they differ */
	readonly aliases: readonly string[];
	/** one sentence for forms and the reference, where the label is not enough */
	readonly help: string | null;
	/** the question that asks for it, where the topic can't do without it */
	readonly question: string | null;
	/** stands in for a missing value, with the reason; only where a careful person would make the same guess unseen */
	readonly fallback: Fallback | null;
	/** the end of a range ("-5 to -15 °C") that is the unfavourable one for what is worked out; null where it can be either */
	readonly worseEnd: 'low' | 'high' | null;
	/** true where only a word beside a value puts it here, never what kind of value it is */
	readonly onlyNamed: boolean;
}

interface Fallback {
	readonly value: FieldValue | ((given: Readonly<Record<string, unknown>>, context: Context) => FieldValue);
	readonly why: string;
	/** true where the shop should confirm it before building */
	readonly confirm: boolean;
}

export type FieldValue = number | string | boolean | readonly Record<string, unknown>[];

/** How a field's values look and are read; one member for each sort of field. */
export type FieldType =
	| {
			readonly sort: 'quantity';
			readonly kind: KindName;
			readonly min: number;
			readonly max: number;
			/** the unit it is always shown in, where the trade marks it so whatever the habit; null for the habit's own */
			readonly unit: string | null;
	  }
	| { readonly sort: 'count'; readonly min: number; readonly max: number }
	| { readonly sort: 'number'; readonly min: number; readonly max: number }
	| { readonly sort: 'choice'; readonly options: Readonly<Record<string, readonly string[]>> }
	| { readonly sort: 'flag'; readonly yes: readonly string[]; readonly no: readonly string[] }
	| { readonly sort: 'conductor' }
	| { readonly sort: 'text'; readonly words: readonly string[]; readonly pattern: string | null }
	| { readonly sort: 'place' }
	| { readonly sort: 'month' }
	| { readonly sort: 'list'; readonly item: Fields; readonly max: number };

/** Required: asked for when missing. Assumed: has a fallback. Optional: the calculation copes without it. */
type Presence = 'required' | 'assumed' | 'optional';

export interface Field<T = unknown, P extends Presence = Presence> {
	readonly meta: FieldMeta;
	readonly type: FieldType;
	readonly schema: z.ZodType<T>;
	readonly presence: P;
}

export type Fields = Readonly<Record<string, Field>>;

/** The values a topic's calculation receives: checked, defaults filled in. */
export type InputOf<F extends Fields> = {
	[K in keyof F]: F[K] extends Field<infer T, infer P> ? (P extends 'optional' ? T | undefined : T) : never;
};

interface CommonOptions {
	readonly label: string;
	readonly aliases?: readonly string[];
	readonly help?: string;
	/** the question to ask where the topic can't do without this field */
	readonly required?: string;
	/** the unfavourable end of a range; where it is not named a range of temperatures is asked about */
	readonly worseEnd?: 'low' | 'high';
	/** where a value that no word names was hardly meant for it: the fuse before this one, a limit of the maker */
	readonly onlyNamed?: true;
	/** value, reason, and whether it should be confirmed before building (default: false) */
	readonly fallback?: {
		readonly value: Fallback['value'];
		readonly why: string;
		readonly confirm?: boolean;
	};
}

type PresenceOf<O> = O extends { required: string }
	? 'required'
	: O extends { fallback: object }
		? 'assumed'
		: 'optional';

function presenceOf(options: CommonOptions): Presence {
	if (options.required !== undefined) return 'required';
	return options.fallback === undefined ? 'optional' : 'assumed';
}

function build<T, O extends CommonOptions>(
	options: O,
	type: FieldType,
	schema: z.ZodType<T>,
): Field<T, PresenceOf<O>> {
	const fallback = options.fallback;
	return {
		meta: {
			label: options.label,
			aliases: options.aliases ?? [],
			help: options.help ?? null,
			question: options.required ?? null,
			fallback:
				fallback === undefined
					? null
					: { value: fallback.value, why: fallback.why, confirm: fallback.confirm ?? false },
			worseEnd: options.worseEnd ?? null,
			onlyNamed: options.onlyNamed ?? false,
		},
		type,
		schema,
		presence: presenceOf(options) as PresenceOf<O>,
	};
}

interface Range {
	/** smallest accepted value, in the kind's base unit */
	readonly min: number;
	/** largest accepted value, in the kind's base unit */
	readonly max: number;
}

/** A physical quantity, in the base unit of its kind. */
export function quantity<
	const O extends CommonOptions & Range & { readonly kind: KindName; readonly unit?: string },
>(options: O) {
	const { kind, min, max } = options;
	const unit = options.unit ?? null;
	return build(options, { sort: 'quantity', kind, min, max, unit }, z.number().min(min).max(max));
}

/** How many of something: a whole number. */
export function count<const O extends CommonOptions & Range>(options: O) {
	const { min, max } = options;
	return build(options, { sort: 'count', min, max }, z.int().min(min).max(max));
}

/** A plain number with no unit: a factor, an exponent. */
export function number<const O extends CommonOptions & Range>(options: O) {
	const { min, max } = options;
	return build(options, { sort: 'number', min, max }, z.number().min(min).max(max));
}

/** One of a closed list; each option with the words by which people say it. */
export function choice<
	const C extends Readonly<Record<string, readonly string[]>>,
	const O extends CommonOptions,
>(options: O & { readonly options: C }) {
	const names = Object.keys(options.options) as [keyof C & string, ...(keyof C & string)[]];
	return build<keyof C & string, O>(
		options,
		{ sort: 'choice', options: options.options },
		z.enum(names) as unknown as z.ZodType<keyof C & string>,
	);
}

/** Yes or no, with the words that say either. */
export function flag<
	const O extends CommonOptions & { readonly yes: readonly string[]; readonly no?: readonly string[] },
>(options: O) {
	return build(options, { sort: 'flag', yes: options.yes, no: options.no ?? [] }, z.boolean());
}

/** A conductor size as the trade writes it: "4 AWG", "2/0 AWG", "35 mm²". */
export function conductor<const O extends CommonOptions>(options: O) {
	return build(options, { sort: 'conductor' }, z.string().min(1).max(20));
}

/**
 * A name or free words; `words` are those that may stand for it unasked ("fridge", "pump"). `pattern`, a regular
 * expression, finds a marking that would fall apart as numbers and words ("LT225/75R16", "40x40x2").
 */
export function text<
	const O extends CommonOptions & { readonly words?: readonly string[]; readonly pattern?: string },
>(options: O) {
	return build(
		options,
		{ sort: 'text', words: options.words ?? [], pattern: options.pattern ?? null },
		z.string().min(1).max(200),
	);
}

/** The name of a place, looked up by the calculation in the climate table. */
export function place<const O extends CommonOptions>(options: O) {
	return build(options, { sort: 'place' }, z.string().min(1).max(100));
}

/** A month, 1 to 12. */
export function month<const O extends CommonOptions>(options: O) {
	return build(options, { sort: 'month' }, z.int().min(1).max(12));
}

/** Several things of one shape: a load list, the items of a ledger. */
export function list<const F extends Fields, const O extends CommonOptions>(
	options: O & { readonly item: F; readonly max: number },
) {
	const shape = Object.fromEntries(
		Object.entries(options.item).map(([name, field]) => [
			name,
			field.presence === 'required' ? field.schema : field.schema.optional(),
		]),
	);
	type Item = {
		[K in keyof F]: F[K] extends Field<infer T, infer P> ? (P extends 'required' ? T : T | undefined) : never;
	};
	return build<readonly Item[], O>(
		options,
		{ sort: 'list', item: options.item, max: options.max },
		z.array(z.object(shape)).min(1).max(options.max) as unknown as z.ZodType<readonly Item[]>,
	);
}

/** The base unit of a field's numbers, or null where it has none. */
export function baseUnitOf(field: Field): string | null {
	return field.type.sort === 'quantity' ? kindOf(field.type.kind).base : null;
}
