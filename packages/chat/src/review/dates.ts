/** Days as people say them, in the time zone of the machine the bot runs on (the variable TZ): "yesterday", "last week". */

/** Instants from which and up to which entries count; null where that side is open. */
export interface Span {
	readonly from: string | null;
	readonly to: string | null;
}

const DAY = String.raw`(?:\d{4}-\d\d-\d\d|today|yesterday)`;
const PERIOD = String.raw`(?:today|yesterday|(?:this|last) (?:week|month)|\d{4}-\d\d-\d\d(?:\.\.\d{4}-\d\d-\d\d)?)`;
const SPOKEN = new RegExp(
	String.raw`(?<![\w-])(?:(since|from|until|till|to|before) (${DAY})|(?:on )?(${PERIOD}))(?![\w-])`,
	'gi',
);
/** "5/4" and "4.5." are two different days to two people. */
const UNCLEAR = /(?<![\w./-])(?:\d{1,2}\/\d{1,2}(?:\/\d{2,4})?|\d{1,2}\.\d{1,2}\.(?:\d{2,4})?)(?![\w/-])/;

/** A date that is no day of the calendar, or could be two of them. */
export class WrongDate extends Error {}

/**
 * @returns the days said in a text, and the text without them
 * @throws WrongDate
 */
export function datesIn(text: string, now: Date): { readonly span: Span; readonly rest: string } {
	let from: Date | null = null;
	let to: Date | null = null;
	const rest = text.replace(SPOKEN, (_, side: string | undefined, day: string, period: string) => {
		const [start, end] = periodOf((side === undefined ? period : day).toLowerCase(), now);
		const word = side?.toLowerCase();
		if (word === undefined) {
			from = start;
			to = end;
		} else if (word === 'since' || word === 'from') from = start;
		else to = word === 'before' ? start : end;
		return ' ';
	});
	const unclear = UNCLEAR.exec(rest)?.[0];
	if (unclear !== undefined) {
		throw new WrongDate(`"${unclear}" could be two days. Write the year first, such as 2026-05-04.`);
	}
	return { span: { from: instant(from), to: instant(to) }, rest };
}

const instant = (date: Date | null) => date?.toISOString() ?? null;

/** First moment of a period and first moment after it. */
function periodOf(said: string, now: Date): readonly [Date, Date] {
	const [year, month, date] = [now.getFullYear(), now.getMonth(), now.getDate()];
	const day = (offset: number) => new Date(year, month, date + offset);
	// Monday is the first day of the week: ISO 8601.
	const monday = 1 - (now.getDay() === 0 ? 7 : now.getDay());
	switch (said) {
		case 'today':
			return [day(0), day(1)];
		case 'yesterday':
			return [day(-1), day(0)];
		case 'this week':
			return [day(monday), day(monday + 7)];
		case 'last week':
			return [day(monday - 7), day(monday)];
		case 'this month':
			return [new Date(year, month, 1), new Date(year, month + 1, 1)];
		case 'last month':
			return [new Date(year, month - 1, 1), new Date(year, month, 1)];
		default: {
			const [first, last = first] = said.split('..') as [string, string?];
			return [dayOf(first, 0), dayOf(last, 1)];
		}
	}
}

function dayOf(written: string, offset: number): Date {
	const [year, month, date] = written.split('-').map(Number) as [number, number, number];
	const found = new Date(year, month - 1, date);
	if (found.getMonth() !== month - 1 || found.getDate() !== date) {
		throw new WrongDate(`"${written}" is no day of the calendar.`);
	}
	return new Date(year, month - 1, date + offset);
}

/** "2026-05-04" of an instant, in the machine's time zone. */
export function dayText(at: string): string {
	const date = new Date(at);
	const two = (part: number) => String(part).padStart(2, '0');
	return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** A span as its days are written, such that it is read as the same span again; empty for one that is open on both sides. */
export function spanText({ from, to }: Span): string {
	const last = to === null ? null : dayText(new Date(Date.parse(to) - 1).toISOString());
	if (from === null) return last === null ? '' : `until ${last}`;
	const first = dayText(from);
	if (last === null) return `since ${first}`;
	return first === last ? first : `${first}..${last}`;
}
