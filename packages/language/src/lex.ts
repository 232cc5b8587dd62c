import { evaluateSum, findPlaces, type KindName, toBase } from '@lugbook/core';
import { type UnitMatch, unitAt, unitPrefixAt } from './units.js';
import { spelledCompound, spelledNumber } from './words/numbers.js';
import { lengthened } from './words/short.js';

interface Placed {
	/** first and behind-last position in the message */
	readonly start: number;
	readonly end: number;
}

interface UnitReading {
	readonly kind: KindName;
	/** in the kind's base unit */
	readonly value: number;
	readonly symbol: string;
}

/** A number with its unit; several readings where the unit serves several kinds. */
export interface QuantityToken extends Placed {
	readonly type: 'quantity';
	readonly readings: readonly UnitReading[];
	/** "2 x 200 W": how many of it */
	readonly count: number | null;
	/** a range was written and its larger end is taken */
	readonly range: boolean;
	/** the smaller end of a range, for inputs that come in pairs ("20 to 80 %", "30-50 psi") */
	readonly low: readonly UnitReading[];
	/** what words without a figure were taken as ("half the night": "6 h") */
	readonly taken?: string;
	/** the thing a marking belongs to, whose inputs its figures are */
	readonly of?: 'controller' | 'bank';
}

export type Token =
	| QuantityToken
	| (Placed & { readonly type: 'number'; readonly value: number })
	| (Placed & { readonly type: 'conductor'; readonly name: string; readonly count: number | null })
	| (Placed & { readonly type: 'word'; readonly word: string })
	| (Placed & { readonly type: 'mark'; readonly mark: string })
	/** a marking of the trade, left whole */
	| (Placed & { readonly type: 'marking' })
	/** something that looks like a number but can't be one */
	| (Placed & { readonly type: 'unreadable'; readonly kinds: readonly KindName[] });

const numberPattern = /^(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+[.,]\d+|\d+|[.,]\d+)/;
const fractions: Readonly<Record<string, number>> = {
	'½': 0.5,
	'¼': 0.25,
	'¾': 0.75,
	'⅓': 1 / 3,
	'⅔': 2 / 3,
	'⅛': 0.125,
	'⅜': 0.375,
	'⅝': 0.625,
	'⅞': 0.875,
};

/** What says behind a figure that it is below zero; a bare "below" only where nothing follows that it could be below of. */
const belowZero =
	/^\s*(?:(?:below|under)\s+zero|unter\s+null|bajo\s+cero|below(?=\s*(?:$|[,.;!?)]|outside\b|out\b|at\s+night\b|tonight\b)))/;

/** Two figures that a dash or a word makes the ends of a range, each with its sign. */
const range =
	/^(-|minus\s+)?(\d+(?:[.,]\d+)?)(?:\s+(?:up to|down to|to|bis|auf|hasta|a)\s+|-|\s-\s)(-|minus\s+)?(\d+(?:[.,]\d+)?)(?![\d/])/;
/** The same behind "between". */
const rangeBetween =
	/^(-|minus\s+)?(\d+(?:[.,]\d+)?)\s+(?:and|y|und)\s+(-|minus\s+)?(\d+(?:[.,]\d+)?)(?![\d/])/;

/** "1,440" is 1440; "3,5" is 3.5. */
function toNumber(digits: string): number {
	if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(digits)) return Number(digits.replaceAll(',', ''));
	return Number(digits.replace(',', '.'));
}

/**
 * The tokens of a message: quantities as people write them, conductor sizes, numbers, words and marks, each with its
 * place. Every character but blanks belongs to a token, so nothing is lost unseen.
 *
 * @param text the plain text of the message
 * @param message the message as typed
 * @param isWord whether a word is known, for words glued to a unit
 */
export function lex(
	text: string,
	message: string,
	isWord: (word: string) => boolean,
	options: LexOptions = {},
): Token[] {
	const lexer = new Lexer(text, message, isWord, options);
	return lexer.run();
}

interface LexOptions {
	/** what "20 degrees" means where a temperature is meant */
	readonly degrees?: '°C' | '°F';
	/** markings of the trade that are one piece ("6061-T6"), in order */
	readonly whole?: readonly Placed[];
	/** words that mean nothing here and are no two words typed as one ("forgot") */
	readonly isOther?: (word: string) => boolean;
}

const label =
	'(?:len(?:gth|ght)?|lenght|distance|run|feet|ft|meters?|metres?|metros|amps?|amperage|current|load|volts?|voltage|watts?|power|ampere|volt|amperios|voltios|vatios|longitud|länge|strom|spannung|leistung)';
/** "length 14 amps 22 volts 12": a form filled in, each figure behind its name. */
const labelled = new RegExp(
	`^\\W*(?:(?:wire|cable|kabel|size|gauge|awg)\\W+)?${label}\\s*[:=]?\\s*\\d+(?:[.,]\\d+)?(?:[\\s,;]+${label}\\s*[:=]?\\s*\\d+(?:[.,]\\d+)?)+\\W*$`,
	'u',
);

class Lexer {
	readonly #text: string;
	readonly #message: string;
	readonly #isWord: (word: string) => boolean;
	readonly #degrees: '°C' | '°F';
	readonly #whole: readonly Placed[];
	readonly #isOther: (word: string) => boolean;
	readonly #isLabelled: boolean;
	readonly #tokens: Token[] = [];
	#at = 0;

	constructor(text: string, message: string, isWord: (word: string) => boolean, options: LexOptions) {
		this.#text = text;
		this.#message = message;
		this.#isWord = isWord;
		this.#degrees = options.degrees ?? '°C';
		this.#whole = options.whole ?? [];
		this.#isOther = options.isOther ?? (() => false);
		this.#isLabelled = labelled.test(text);
	}

	run(): Token[] {
		while (this.#at < this.#text.length) {
			const before = this.#at;
			if (/\s/.test(this.#text[this.#at] as string) && this.#text[this.#at] !== '\n') this.#at += 1;
			else if (
				!(
					this.#marking() ||
					this.#power() ||
					this.#sum() ||
					this.#strings() ||
					this.#controller() ||
					this.#converter() ||
					this.#shortFor() ||
					this.#pounds() ||
					this.#thousandBtu() ||
					this.#ofKind() ||
					this.#conductor() ||
					this.#feetAndInches() ||
					this.#nights() ||
					this.#days() ||
					this.#shareOfTime() ||
					this.#chargeState() ||
					this.#inverterRating() ||
					this.#temperatureRange() ||
					this.#number() ||
					this.#halfNight() ||
					this.#halfShare() ||
					this.#half() ||
					this.#word()
				)
			) {
				this.#push({
					type: 'mark',
					mark: this.#text[this.#at] as string,
					start: this.#at,
					end: this.#at + 1,
				});
			}
			if (this.#at <= before) throw new Error(`the reader stood still at ${before}`);
		}
		return this.#tokens;
	}

	#push(token: Token): true {
		this.#tokens.push(token);
		this.#at = token.end;
		return true;
	}

	#rest(from = this.#at): string {
		return this.#text.slice(from, from + 80);
	}

	#match(pattern: RegExp, from = this.#at): RegExpExecArray | null {
		return pattern.exec(this.#rest(from));
	}

	#marking(): boolean {
		const whole = this.#whole.find(({ start, end }) => start === this.#at && end > this.#at);
		return whole === undefined ? false : this.#push({ type: 'marking', start: whole.start, end: whole.end });
	}

	/** "2s2p": two in series, two such strings in parallel. */
	#strings(): boolean {
		const match = this.#match(/^(\d{1,2})\s?s\s?(\d{1,2})\s?p(?![\p{L}\d])/u);
		if (match === null) return false;
		const [whole, series = '', parallel = ''] = match;
		let at = this.#at;
		for (const [digits, letter] of [
			[series, 's'],
			[parallel, 'p'],
		] as const) {
			const start = this.#text.indexOf(digits, at);
			const place = this.#text.indexOf(letter, start + digits.length);
			this.#tokens.push({ type: 'number', value: Number(digits), start, end: start + digits.length });
			this.#tokens.push({ type: 'word', word: letter, start: place, end: place + 1 });
			at = place + 1;
		}
		this.#at += whole.length;
		return true;
	}

	/** "100/30 mppt": a charge controller is marked with its greatest volts and amps. */
	#controller(): boolean {
		const match = this.#match(/^(\d{2,3})(\s?\/\s?)(\d{1,3})(?![\d/.,])/);
		if (match === null) return false;
		const [whole, volts = '', slash = '', amps = ''] = match;
		const next = this.#text[this.#at + whole.length] ?? '';
		// Controllers are built for few voltages, and no fraction of anything is written so.
		const isMarking =
			/^(?:75|100|150|200|250)$/.test(volts) &&
			/^(?:[1-9][05]|100)$/.test(amps) &&
			Number(amps) < Number(volts) &&
			!/[\p{L}"'-]/u.test(next) &&
			this.#unitAfter(this.#at + whole.length) === null;
		const named =
			'(?:mppt|pwm|controller|charge controller|solar controller|regulator|laderegler|solarregler|regler|regulador)';
		const before = new RegExp(`\\b${named} $`).test(this.#text.slice(0, this.#at).slice(-24));
		const after = new RegExp(`^[ -]?${named}\\b`).test(this.#rest(this.#at + whole.length));
		if (!before && !after && !isMarking) return false;
		const start = this.#at;
		const second = start + volts.length + slash.length;
		this.#tokens.push({
			type: 'quantity',
			readings: [{ kind: 'voltage', symbol: 'V', value: Number(volts) }],
			count: null,
			range: false,
			low: [],
			of: 'controller',
			start,
			end: start + volts.length,
		});
		return this.#push({
			type: 'quantity',
			readings: [{ kind: 'current', symbol: 'A', value: Number(amps) }],
			count: null,
			range: false,
			low: [],
			of: 'controller',
			start: second,
			end: second + amps.length,
		});
	}

	/** "dc 2 dc": the figure is a word. */
	#converter(): boolean {
		const match = this.#match(/^dc\s?2\s?dc(?![\p{L}\d])/u);
		if (match === null) return false;
		return this.#push({ type: 'word', word: 'dcdc', start: this.#at, end: this.#at + match[0].length });
	}

	/** "10ga ok 4 25a", "enough 4 my van": behind a word of judgement the figure is the word "for". */
	#shortFor(): boolean {
		if (!this.#follows(/^(?:ok|okay|good|enough|fine)$/) || this.#match(/^4\s+[\p{L}\d]/u) === null)
			return false;
		if (this.#unitAfter(this.#at + 1) !== null) return false;
		return this.#push({ type: 'word', word: 'for', start: this.#at, end: this.#at + 1 });
	}

	/** "20# cylinder": pounds, as stores of gas are named. */
	#pounds(): boolean {
		const match = this.#match(/^(\d{1,3}(?:\.\d)?)#(?!\s?\d)/);
		if (match === null || this.#followsNumber()) return false;
		const value = toBase('mass', Number(match[1]), 'lb');
		return this.#push({
			type: 'quantity',
			readings: [{ kind: 'mass', symbol: 'lb', value }],
			...this.#takeCount(),
			range: false,
			low: [],
			end: this.#at + match[0].length,
		});
	}

	/** "16k furnace", "furnace 30k": thousands of Btu/h, and said so. */
	#thousandBtu(): boolean {
		const match = this.#match(/^(\d{1,2}(?:\.\d)?)k(?![\p{L}\d])/u);
		const figure = Number(match?.[1]);
		if (match === null || figure < leastThousandBtu || this.#followsNumber()) return false;
		const end = this.#at + match[0].length;
		if (this.#unitAfter(end) !== null) return false;
		const named = /^\s+(?:(?:propane|gas|lp|lpg)\s+)?(?:furnace|fire ?pit|gas heater|propane heater)\b/;
		if (!this.#follows(/^(?:furnace|firepit)$/) && !named.test(this.#rest(end))) return false;
		return this.#push({
			type: 'quantity',
			readings: [{ kind: 'power', symbol: 'Btu/h', value: toBase('power', figure * 1000, 'Btu/h') }],
			count: null,
			range: false,
			low: [],
			taken: `${figure * 1000} Btu/h`,
			start: this.#at,
			end,
		});
	}

	/** Towers of powers, faculties and the like: named as unreadable, never worked out. */
	#power(): boolean {
		const match = this.#match(/^[\d.]+\s*(?:\^|\*\*|!)[\d.^*!() ]*/);
		if (match === null) return false;
		const end = this.#at + match[0].trimEnd().length;
		const unit = unitAt(this.#text, this.#message, this.#skipBlanks(end));
		return this.#push({
			type: 'unreadable',
			kinds: unit?.kinds.map(({ kind }) => kind) ?? [],
			start: this.#at,
			end: unit === null ? end : this.#skipBlanks(end) + unit.length,
		});
	}

	/** "6+9 ft", "2*(3+4) m": only where a plus or a star is there and a unit follows. */
	#sum(): boolean {
		const match = this.#match(/^\(?\d[\d.\s()]*[+*][\d.\s()+*]*[\d)]/);
		if (match === null) return false;
		const value = evaluateSum(match[0]);
		const end = this.#at + match[0].length;
		const unit = unitAt(this.#text, this.#message, this.#skipBlanks(end));
		if (value === null || unit === null) return false;
		return this.#quantity(value, end, unit, null);
	}

	/** "25er kabel", "100er batterie", "200er modul", "40er sicherung": German names a thing by its figure. */
	#ofKind(): boolean {
		const match = this.#match(/^(\d+(?:,\d+)?)\s?er(?!\p{L})/u);
		if (match === null) return false;
		const [whole, digits = ''] = match;
		const end = this.#at + whole.length;
		const value = toNumber(digits);
		const thing = /^\s+(\p{L}+)/u.exec(this.#rest(end))?.[1] ?? '';
		const quantity = (kind: KindName, symbol: string) =>
			this.#push({
				type: 'quantity',
				readings: [{ kind, symbol, value }],
				range: false,
				low: [],
				...this.#takeCount(),
				end,
			});
		if (/^(?:batterien?|akkus?|bleiakku|agm|gel|li|lithium|lifepo4?|lfp|zellen?)$/.test(thing))
			return quantity('charge', 'Ah');
		if (/^(?:module?|solarmodule?|panels?|platten?|solarplatten?)$/.test(thing))
			return quantity('power', 'W');
		if (/^(?:\p{L}*sicherung(?:en)?|automat|fuse)$/u.test(thing)) return quantity('current', 'A');
		// Of conductors it is the section, whether the cable is named or not: "1,5 m 35er".
		const isCable = /(?:kabel|leitung|leitungen|litze|ader|adern|draht|strippe)$/.test(thing);
		if (!isCable && !metricSections.has(value)) return false;
		return this.#size(`${value} mm²`, whole.length);
	}

	/** "4 AWG", "awg 4", "#4", "4 gauge", "2/0", "35mm2", "12/2 cable". */
	#conductor(): boolean {
		const cable = this.#match(
			/^(6|8|10|12|14|16|18)\s?\/\s?([2-5])(?:\s*-?(?:awg|gauge|ga))?(?![\d\p{L}/.,"'])/u,
		);
		// "12/2": two conductors of 12 AWG in one jacket; a measure that ends in such a fraction has its unit behind it.
		if (cable !== null && this.#unitAfter(this.#at + cable[0].length) === null)
			return this.#push({
				type: 'conductor',
				name: `${cable[1]} AWG`,
				count: null,
				start: this.#at,
				end: this.#at + cable[0].length,
			});
		const gauge =
			this.#match(/^(?:#\s?)?([1-4])\/0(?:\s*-?(?:awg|gauge|ga|aught))?(?![\d\p{L}])/u) ??
			this.#match(/^(?:#\s?)?(0{2,4})\s*-?(?:awg|gauge|ga)(?![\p{L}\d])/u);
		if (gauge !== null) {
			const zeros = gauge[1] as string;
			const name = `${zeros.startsWith('0') ? zeros.length : zeros}/0 AWG`;
			return this.#size(name, gauge[0].length);
		}
		const plainGauge =
			this.#match(/^(?:#\s?)?(\d{1,2})\s*-?(?:awg|gauge|guage|gague|gage|ga)(?![\p{L}\d])/u) ??
			this.#gaugeBefore() ??
			this.#match(/^#\s?(\d{1,2})(?![\d\p{L}])/u);
		if (plainGauge !== null) return this.#size(`${Number(plainGauge[1])} AWG`, plainGauge[0].length);
		const metric = this.#match(
			/^(\d+(?:[.,]\d+)?)\s*(?:mm2|mm²|mm\^2|sq\.?\s?mm|sqmm|qmm|mmq|quadrat|er quadrat|square mm|square millimet(?:er|re)s?|quadratmillimeter)(?![\p{L}\d])/u,
		);
		if (metric !== null) return this.#size(`${toNumber(metric[1] as string)} mm²`, metric[0].length);
		return false;
	}

	/** "awg 4", "gauge 10"; in "gauge 90 amps" and "awg 4A" the figure is a current. */
	#gaugeBefore(): RegExpExecArray | null {
		const match = this.#match(/^(?:awg|gauge|guage|gague|gage)\s*#?(\d{1,2})(?![\d/])/);
		if (match === null) return null;
		const end = this.#at + match[0].length;
		const unit = this.#unitAfter(end);
		// "awg 4 a 12 V": a letter that stands by itself is a word of its language as well.
		return unit === null || (unit.at > end && unit.word.length === 1) ? match : null;
	}

	#size(name: string, length: number): boolean {
		const end = this.#at + length;
		return this.#push({ type: 'conductor', name, ...this.#takeCount(), end });
	}

	/** 12' 6", 12 ft 6 in, 12'-6 1/2". */
	#feetAndInches(): boolean {
		const match = this.#match(
			/^(\d+(?:\.\d+)?)\s*(?:'|ft\.?|feet|foot)\s*-?\s*(\d+(?:\.\d+)?)?(?:\s*-?\s*(\d{1,2})\/(\d{1,2}))?\s*(?:"|''|in\b|inch(?:es)?\b)/,
		);
		if (match === null || (match[2] === undefined && match[3] === undefined)) return false;
		const inches = Number(match[2] ?? 0) + (match[3] === undefined ? 0 : Number(match[3]) / Number(match[4]));
		const metres = Number(match[1]) * 0.3048 + inches * 0.0254;
		if (!Number.isFinite(metres)) return false;
		return this.#push({
			type: 'quantity',
			readings: [
				{ kind: 'length', value: metres, symbol: 'ft' },
				{ kind: 'thickness', value: metres * 1000, symbol: 'in' },
			],
			...this.#takeCount(),
			range: false,
			low: [],
			end: this.#at + match[0].length,
		});
	}

	#number(): boolean {
		const start = this.#at;
		// "minus 15 Grad" is said as it is written with a sign.
		const minus = this.#match(/^minus\s+(?=\d)/)?.[0].length ?? 1;
		const negative =
			(minus > 1 || this.#text[start] === '-') &&
			/\d|[.,]\d/.test(this.#text.slice(start + minus, start + minus + 2)) &&
			!this.#followsNumber();
		const first = this.#plainNumber(negative ? start + minus : start);
		if (first === null) return false;
		let { value, end } = first;
		let low: number | null = null;
		// "10-12 ft", "10 to 12 ft": the larger end is the safe one for what is sized here, and the range is said back.
		const to = this.#match(/^\s*(?:-|to|up to|bis|auf|hasta|a)\s*(?=\d)/, end);
		if (to !== null && !negative && (to[0].includes('-') || /^\s/.test(to[0]))) {
			const second = this.#plainNumber(end + to[0].length);
			if (
				second !== null &&
				second.value > value &&
				this.#unitAfter(second.end) !== null &&
				this.#unitAfter(end) === null
			) {
				// "from 20 to 80 %" names two values, each in the unit at the end.
				if (this.#follows(/^(?:from|von|de|desde)$/)) return this.#lent(value, end, second.end);
				low = value;
				value = second.value;
				end = second.end;
			}
		}
		if (negative) value = -value;
		const label = this.#isLabelled ? this.#unitOfLabel() : null;
		if (label !== null) {
			return this.#push({
				type: 'quantity',
				readings: this.#readings(value, label.kinds, label.word),
				count: null,
				range: false,
				low: [],
				start,
				end,
			});
		}
		if (this.#isLabelled) return this.#push({ type: 'number', value, start, end });
		// "20 below", "20 Grad unter null", "20 grados bajo cero" say the sign behind the figure.
		const bare = negative ? null : this.#match(belowZero, end);
		if (bare !== null) return this.#push({ type: 'number', value: -value, start, end: end + bare[0].length });
		const thousand = /^k(?![\p{L}])/u.test(this.#rest(end));
		const unit = this.#unitAfter(end);
		if (unit !== null) {
			const unitEnd = (unit.at ?? this.#skipBlanks(end)) + unit.length;
			const isTemperature = unit.kinds.some(({ kind }) => kind === 'temperature' || kind === 'angle');
			const below = negative || !isTemperature ? null : this.#match(belowZero, unitEnd);
			if (below !== null) {
				this.#quantity(-value, end, unit, low === null ? null : -low);
				this.#at = unitEnd + below[0].length;
				return true;
			}
			return this.#quantity(value, end, unit, low);
		}
		if (thousand) {
			const thousands = this.#unitAfter(end + 1);
			if (thousands !== null)
				return this.#quantity(value * 1000, end + 1, thousands, low === null ? null : low * 1000);
			return this.#push({ type: 'number', value: value * 1000, start, end: end + 1 });
		}
		return this.#push({ type: 'number', value, start, end });
	}

	/** "amps 22": the unit stands before the figure, where the whole message is written so. */
	#unitOfLabel(): UnitMatch | null {
		const last = this.#tokens.at(-1);
		if (last?.type !== 'word') return null;
		const unit = unitAt(this.#text, this.#message, last.start);
		return unit !== null && last.start + unit.length === last.end ? unit : null;
	}

	/** "for 3 nights" is as many days and nights, and said so. */
	#nights(): boolean {
		const match = this.#match(/^(\d{1,2}|\p{L}+)\s+(?:nights?|noches?|nächten?|nacht)(?!\p{L})/u);
		const digits = match?.[1] ?? '';
		const count = /^\d/.test(digits) ? Number(digits) : spelledNumber(digits);
		// "una noche" and "night 2" count nothing.
		if (match === null || count === null || count < 1 || /^un[oa]$/.test(digits)) return false;
		return this.#push({
			type: 'quantity',
			readings: [{ kind: 'duration', symbol: 'd', value: 24 * count }],
			count: null,
			range: false,
			low: [],
			taken: count === 1 ? '1 day' : `${count} days`,
			start: this.#at,
			end: this.#at + match[0].length,
		});
	}

	/** "2 cloudy days", "3 full days": a word between does not part them. */
	#days(): boolean {
		const match = this.#match(
			/^(\d{1,2}|\p{L}+)\s+(?:cloudy|rainy|overcast|sunless|dark|gr[ae]y|stormy|full|whole|straight|solid|trüben?|dunklen?|graue?n?|volle?n?|ganze?n?)\s+(?:days?|tagen?|tage)(?!\p{L})/u,
		);
		const digits = match?.[1] ?? '';
		const count = /^\d/.test(digits) ? Number(digits) : spelledNumber(digits);
		if (match === null || count === null || count < 1) return false;
		return this.#taken('duration', 'd', 24 * count, null, match[0].length);
	}

	/** "half the time", "a third of the time": the share of it that something runs. */
	#shareOfTime(): boolean {
		const match = this.#match(
			/^(?:(half|die hälfte|la mitad|(?:a|one) third|(?:a|one) quarter|ein drittel|un tercio|ein viertel|un cuarto)\s+(?:of\s+)?(?:the time|der zeit|del tiempo)|halftime|(?:on )?half time|halbe zeit)(?!\p{L})/u,
		);
		if (match === null) return false;
		const words = match[1] ?? 'half';
		const share = /third|drittel|tercio/.test(words)
			? 1 / 3
			: /quarter|viertel|cuarto/.test(words)
				? 0.25
				: 0.5;
		return this.#taken('fraction', '%', share, `${Math.round(share * 100)} %`, match[0].length);
	}

	/** "from flat", "dead flat to full", "half charged": states of charge in words. */
	#chargeState(): boolean {
		const empty = this.#match(
			/^(?:dead[- ]flat|stone dead|completely (?:flat|empty|dead)|totally (?:flat|empty|dead)|tiefentladen|ganz leer|totalmente (?:vacía|descargada))(?!\p{L})/u,
		);
		if (empty !== null && this.#isCharging()) return this.#stateOfCharge(0, empty[0].length);
		const half = this.#match(
			/^(?:half[- ](?:full|empty|charged|flat|dead)|halb ?(?:voll|leer)|medio (?:llena|vacía|cargada)|a media carga)(?!\p{L})/u,
		);
		if (half !== null && this.#isCharging()) return this.#stateOfCharge(0.5, half[0].length);
		const ends = this.#match(/^(empty|flat|dead|leer|vacía|vacia|cero|full|voll|llena|lleno)(?!\p{L})/u);
		const word = ends?.[1] ?? '';
		const isFull = /^(?:full|voll|llena|lleno)$/.test(word);
		const points = isFull
			? this.#follows(/^(?:to|till|til|until|from|bis|auf|von|hasta|a|desde)$/)
			: this.#follows(/^(?:from|von|ab|desde|de)$/) && this.#isCharging();
		if (ends === null || !points || !this.#isCharging()) return false;
		return this.#stateOfCharge(isFull ? 1 : 0, word.length);
	}

	#stateOfCharge(value: number, length: number): true {
		return this.#push({
			type: 'quantity',
			readings: [{ kind: 'fraction', symbol: '%', value }],
			count: null,
			range: false,
			low: [],
			taken: `${100 * value} %`,
			of: 'bank',
			start: this.#at,
			end: this.#at + length,
		});
	}

	/** A state of charge is meant only where a battery is spoken of. */
	#isCharging(): boolean {
		return /\bah\b|\d\s?ah|batt|bank|akku|bater|charg|lade|carg|dcdc|dc-dc|lithium|lifepo|lfp|agm/.test(
			this.#text,
		);
	}

	/** "2k inverter", "3000 inverter": it is named by its watts. */
	#inverterRating(): boolean {
		const match = this.#match(
			/^(\d+(?:[.,]\d+)?)\s?(k?)(?=\s+(?:pure sine |sine |hybrid )?(?:inverter|invertor|inv|wechselrichter|wr|inversor)(?!\p{L}))/u,
		);
		if (match === null) return false;
		const value = toNumber(match[1] as string) * (match[2] === 'k' ? 1000 : 1);
		if (value < leastInverterW || value > mostInverterW) return false;
		return this.#taken('power', 'W', value, `${value} W`, match[0].length);
	}

	/** Words, or figures without their unit, that stand for a value; where it is not plain, it is said what they were taken as. */
	#taken(kind: KindName, symbol: string, value: number, as: string | null, length: number): true {
		return this.#push({
			type: 'quantity',
			readings: [{ kind, symbol, value }],
			count: null,
			range: false,
			low: [],
			...(as === null ? {} : { taken: as }),
			start: this.#at,
			end: this.#at + length,
		});
	}

	/** "-5 to -15 °C", "20-10F", "between -5 and 10 C": of a temperature either end may come first. */
	#temperatureRange(): boolean {
		if (!/[-m\d]/.test(this.#text[this.#at] as string) || this.#followsNumber()) return false;
		const match = this.#match(this.#follows(/^(?:between|entre|zwischen)$/) ? rangeBetween : range);
		// "from 55 to 125 F" names two values.
		if (match === null || this.#follows(/^(?:from|von|de|desde)$/)) return false;
		const end = this.#at + match[0].length;
		const unit = this.#unitAfter(end);
		if (unit === null || !unit.kinds.some(({ kind }) => kind === 'temperature' || kind === 'angle'))
			return false;
		const signed = (sign: string | undefined, digits = '') =>
			sign === undefined ? toNumber(digits) : -toNumber(digits);
		const ends = [signed(match[1], match[2]), signed(match[3], match[4])];
		return this.#quantity(Math.max(...ends), end, unit, Math.min(...ends));
	}

	#follows(word: RegExp): boolean {
		const last = this.#tokens.at(-1);
		return last?.type === 'word' && word.test(last.word);
	}

	/** A number whose unit stands behind the next one. */
	#lent(value: number, end: number, unitEnd: number): boolean {
		const unit = this.#unitAfter(unitEnd);
		if (unit === null) return false;
		return this.#push({
			type: 'quantity',
			readings: this.#readings(value, unit.kinds, unit.word),
			...this.#takeCount(),
			range: false,
			low: [],
			end,
		});
	}

	/** "half the night" is taken as six hours, and said so. */
	#halfNight(): boolean {
		const match = this.#match(
			/^(?:half\s+(?:of\s+)?(?:the\s+|a\s+)?night|(?:die\s+|eine\s+)?halbe\s+nacht|(?:la\s+)?mitad\s+de\s+la\s+noche|media\s+noche)(?!\p{L})/u,
		);
		if (match === null) return false;
		const readings = [{ kind: 'duration', symbol: 'h', value: 6 }] as const;
		const end = this.#at + match[0].length;
		return this.#push({
			type: 'quantity',
			readings,
			count: null,
			range: false,
			low: [],
			taken: '6 h',
			start: this.#at,
			end,
		});
	}

	/** "at half load", "half the time", "half full" are 50 %, and said so. */
	#halfShare(): boolean {
		const match =
			this.#match(
				/^(?:half\s+(?:load|power|output|burn|throttle|the\s+time|of\s+the\s+time)|(?:mit\s+)?halber?\s+(?:last|leistung|kraft|stufe)|(?:die\s+)?hälfte\s+der\s+zeit|media\s+(?:carga|potencia)|(?:la\s+)?mitad\s+del\s+tiempo)(?!\p{L})/u,
			) ??
			this.#match(
				/^(?:half|halb|medio|media)(?=[\s-]+(?:full|empty|voll|leer|llen[oa]|vac[ií][oa])(?!\p{L}))/u,
			);
		if (match === null) return false;
		const readings = [{ kind: 'fraction', symbol: '%', value: 0.5 }] as const;
		const end = this.#at + match[0].length;
		return this.#push({
			type: 'quantity',
			readings,
			count: null,
			range: false,
			low: [],
			taken: '50 %',
			start: this.#at,
			end,
		});
	}

	/** "half inch", "half an hour", "half a gallon". */
	#half(): boolean {
		const match = this.#match(/^(?:half|medio|media|halbe?r?)(?:\s+(?:an?|de))?[\s-]+/u);
		if (match === null) return false;
		const at = this.#at + match[0].length;
		const unit = unitAt(this.#text, this.#message, at);
		return unit === null ? false : this.#quantity(0.5, at, { ...unit, at }, null);
	}

	#plainNumber(at: number): { value: number; end: number } | null {
		const mixed = this.#match(/^(\d+)(?:\s+|-)(\d{1,2})\/(\d{1,2})(?!\d|\/)/, at) ?? null;
		if (mixed !== null && Number(mixed[3]) > 0) {
			return { value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), end: at + mixed[0].length };
		}
		const fraction = this.#match(/^(\d{1,2})\/(\d{1,3})(?![\d/])/, at);
		if (fraction !== null && Number(fraction[2]) > 0) {
			return { value: Number(fraction[1]) / Number(fraction[2]), end: at + fraction[0].length };
		}
		const sign = fractions[this.#text[at] ?? ''];
		if (sign !== undefined) return { value: sign, end: at + 1 };
		const match = this.#match(numberPattern, at);
		if (match === null) return null;
		const value = toNumber(match[0]);
		const end = at + match[0].length;
		const tail = fractions[this.#text[end] ?? ''];
		if (!Number.isFinite(value)) return null;
		return tail === undefined ? { value, end } : { value: value + tail, end: end + 1 };
	}

	#followsNumber(): boolean {
		const last = this.#tokens.at(-1);
		return (
			last !== undefined && (last.type === 'number' || last.type === 'quantity') && last.end === this.#at
		);
	}

	#skipBlanks(at: number): number {
		let next = at;
		while (this.#text[next] === ' ') next += 1;
		return next;
	}

	#unitAfter(end: number): (UnitMatch & { at: number }) | null {
		const at =
			this.#text[end] === '-' && /\p{L}/u.test(this.#text[end + 1] ?? '') ? end + 1 : this.#skipBlanks(end);
		const unit = unitAt(this.#text, this.#message, at);
		if (unit !== null && !this.#isOtherWord(unit, end, at)) return { ...unit, at };
		const prefix = at === end ? unitPrefixAt(this.#text, at, this.#isWord) : null;
		return prefix === null ? null : { ...prefix, at };
	}

	/** "6 in the van", "4 in series", "3 a day", "2 d printers": a short word that is no unit here. */
	#isOtherWord(unit: UnitMatch, end: number, at: number): boolean {
		const after = this.#text.slice(at + unit.length, at + unit.length + 24);
		if (unit.word === 'in') {
			return (
				at > end &&
				(this.#isPlace(at + unit.length) ||
					/^\s+(?:the|a|an|my|our|series|serie|reihe|parallel|total|all|one|each|january|february|march|april|may|june|july|august|september|october|november|december|summer|winter|engine)\b/.test(
						after,
					))
			);
		}
		// "four 6 volt 225s", "two 100s": so many of that size, not seconds.
		if (unit.word === 's')
			return (
				at === end &&
				/(?:\bvolts?|\dv|\b(?:two|three|four|six|eight|both|the|my|\d{1,2}))\s+\d{2,3}$/.test(
					this.#text.slice(0, end),
				)
			);
		if (unit.word === 'a')
			return /^\s+(?:day|night|week|month|year|time|piece|person|side|row)\b/.test(after);
		return false;
	}

	#quantity(value: number, end: number, unit: UnitMatch & { at?: number }, low: number | null): true {
		const at = unit.at ?? this.#skipBlanks(end);
		const word = this.#message.slice(at, at + unit.length);
		// "49V x2" is "2 x 49V", unless what follows is a measure of its own ("2 in x 4 in").
		const times = /^\s*x\s?([2-9]|[1-5]\d)(?![\d.,/])/.exec(this.#rest(at + unit.length));
		const behind =
			times !== null && this.#unitAfter(at + unit.length + times[0].length) === null ? times : null;
		const kinds = word === 'mW' ? [{ kind: 'power' as const, symbol: 'mW' }] : unit.kinds;
		return this.#push({
			type: 'quantity',
			readings: this.#readings(value, kinds, unit.word),
			...(behind === null ? this.#takeCount() : { count: Number(behind[1]), start: this.#at }),
			range: low !== null,
			low: low === null ? [] : this.#readings(low, kinds, unit.word),
			end: at + unit.length + (behind === null ? 0 : behind[0].length),
		});
	}

	/** Degrees are an angle or, of the message's habit, a temperature; "Grad" and "grados" are always of Celsius. */
	#readings(value: number, kinds: UnitMatch['kinds'], word: string): UnitReading[] {
		const readings: UnitReading[] = kinds.map(({ kind, symbol }) => ({
			kind,
			symbol,
			value: toBase(kind, value, symbol),
		}));
		if (!kinds.some(({ kind }) => kind === 'angle')) return readings;
		const symbol = word.startsWith('gra') ? '°C' : this.#degrees;
		return [...readings, { kind: 'temperature', symbol, value: toBase('temperature', value, symbol) }];
	}

	/** "2 x 200W", "2x200W", "three 100ah": the number before a quantity tells how many, and joins it. */
	#takeCount(): { count: number | null; start: number } {
		const last = this.#tokens.at(-1);
		const before = this.#tokens.at(-2);
		if (
			last?.type === 'word' &&
			/^(?:x|times|mal|veces)$/.test(last.word) &&
			before?.type === 'number' &&
			isCount(before.value)
		) {
			this.#tokens.splice(-2);
			return { count: before.value, start: before.start };
		}
		if (
			last?.type === 'number' &&
			isCount(last.value) &&
			last.value > 1 &&
			/^\s+$/.test(this.#text.slice(last.end, this.#at))
		) {
			this.#tokens.pop();
			return { count: last.value, start: last.start };
		}
		return { count: null, start: this.#at };
	}

	/** "37.2 in Denver": the "in" before a place is no inch. */
	#isPlace(at: number): boolean {
		const next = /^\s+(\p{L}{3,})/u.exec(this.#text.slice(at, at + 40));
		if (next === null || this.#isWord(next[1] as string)) return false;
		const start = at + next[0].length - (next[1] as string).length;
		return findPlaces(this.#message.slice(at, at + 80)).some((place) => place.start === start - at);
	}

	/** "howlong", "kabelquerschnitt": where a word that nobody knows falls into known ones; 0 where it does not. */
	#joint(word: string): number {
		if (word.length < 2 * shortestPart || this.#isWord(word) || /[\d']/.test(word)) return 0;
		if (this.#isOther(word) || spelledNumber(word) !== null) return 0;
		for (let at = word.length - shortestPart; at >= shortestPart; at -= 1) {
			const rest = word.slice(at);
			if (this.#isWord(word.slice(0, at)) && (this.#isWord(rest) || this.#joint(rest) > 0)) return at;
		}
		return 0;
	}

	/** "batts" are batteries, unless insulation is spoken of. */
	#isBattery(word: string): boolean {
		return /^batts?$/.test(word) && !/insul|glass|wool|foam|r-?\d|lana|dämm/.test(this.#text);
	}

	#word(): boolean {
		const match = this.#match(/^[\p{L}][\p{L}\p{N}]*(?:'(?=[\p{L}])[\p{L}]+)?/u);
		if (match === null) return false;
		const word = match[0];
		const multiplied = /^x(\d)/.exec(word);
		if (multiplied !== null && this.#tokens.at(-1)?.type === 'number') {
			// "2x200w": the x belongs to the count.
			return this.#push({ type: 'word', word: 'x', start: this.#at, end: this.#at + 1 });
		}
		const letters = /^\p{L}{2,}(?=\d+$)/u.exec(word)?.[0];
		if (letters !== undefined && !this.#isWord(word) && this.#isWord(letters)) {
			// "voc24", "li118": the word names the figure that is glued to it.
			return this.#push({ type: 'word', word: letters, start: this.#at, end: this.#at + letters.length });
		}
		const joint = this.#joint(word);
		if (joint > 0)
			return this.#push({
				type: 'word',
				word: word.slice(0, joint),
				start: this.#at,
				end: this.#at + joint,
			});
		const several = spelledCompound(this.#rest());
		if (several !== null) {
			const end = this.#at + several.length;
			const unit = this.#text[end] === ' ' ? this.#unitAfter(end) : null;
			// "two hundred amp" is a quantity, and "two two hundred watt" two of it.
			if (unit !== null && unit.word.length > 2) return this.#quantity(several.value, end, unit, null);
			return this.#push({ type: 'number', value: several.value, start: this.#at, end });
		}
		const isPhrase = word === 'one' && /^[\s-]+(?:way|size|step|more)\b/.test(this.#rest(this.#at + 3));
		const spelled = isPhrase ? null : spelledNumber(word);
		if (spelled !== null) {
			const end = this.#at + word.length;
			// "two kilowatts" is a quantity as "2 kW" is; "one in the back" is not.
			const unit = this.#text[end] === ' ' ? this.#unitAfter(end) : null;
			if (unit !== null && unit.word.length > 2) return this.#quantity(spelled, end, unit, null);
			// "una batería" is a battery, not one of something.
			if (/^un[oa]$/.test(word)) return this.#push({ type: 'word', word, start: this.#at, end });
			return this.#push({ type: 'number', value: spelled, start: this.#at, end });
		}
		const whole = this.#isWord(word) && !this.#isBattery(word) ? word : lengthened(word);
		return this.#push({ type: 'word', word: whole, start: this.#at, end: this.#at + word.length });
	}
}

/** A gas furnace of fewer thousands of Btu/h is not sold; "2k" of a heater are watts. */
const leastThousandBtu = 5;
/** Sections in which metric conductors are made [mm²] (IEC 60228). */
const metricSections: ReadonlySet<number> = new Set([0.75, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120]);
/** Inverters between these are named by a bare figure [W]. */
const leastInverterW = 150;
const mostInverterW = 12_000;

/** Shortest part of two words that were typed as one. */
const shortestPart = 3;

function isCount(value: number): boolean {
	return Number.isInteger(value) && value >= 1 && value <= 100;
}
