import { fromBase } from './convert.js';
import { type KindName, kindOf, type UnitHabit } from './kinds.js';

export interface WriteOptions {
	/** which way the shown figure is rounded: to the nearest, or to the safe side */
	readonly round?: 'nearest' | 'up' | 'down';
	readonly decimals?: number;
	/** one of the kind's units, where the habit's own would read oddly */
	readonly unit?: string;
}

/** A number with at most so many decimals and no needless zeros. Never "-0". */
export function writeNumber(
	value: number,
	decimals: number,
	round: WriteOptions['round'] = 'nearest',
): string {
	const scale = 10 ** decimals;
	const scaled = value * scale;
	// A hair of floating point must not push 2.0 up to 2.1 or down to 1.9.
	const slack = Math.max(1, Math.abs(scaled)) * 1e-9;
	const whole =
		round === 'up'
			? Math.ceil(scaled - slack)
			: round === 'down'
				? Math.floor(scaled + slack)
				: Math.round(scaled);
	const text = (whole / scale).toFixed(decimals);
	const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
	return trimmed === '-0' ? '0' : trimmed;
}

/** The unit symbol and the figure in which a value is shown to somebody with this habit. */
export function shownIn(
	kind: KindName,
	value: number,
	habit: UnitHabit,
	unit?: string,
): { value: number; symbol: string } {
	const symbols = unit === undefined ? kindOf(kind).shown[habit] : [unit];
	for (const symbol of symbols) {
		const converted = fromBase(kind, value, symbol);
		if (Math.abs(converted) >= 1 || value === 0 || symbol === symbols.at(-1)) {
			// A small value is shown in the small unit only where that makes it readable.
			return { value: converted, symbol };
		}
	}
	throw new Error(`no unit to show ${kind}`);
}

/** A value in the kind's base unit, as a person of this habit reads it: "12.5 ft", "2.7 %". */
export function write(kind: KindName, value: number, habit: UnitHabit, options: WriteOptions = {}): string {
	if (Number.isNaN(value)) return 'no number';
	if (!Number.isFinite(value)) return value > 0 ? 'without limit' : 'none';
	const shown = shownIn(kind, value, habit, options.unit);
	// Below ten times the last decimal a figure would lose its meaning: keep two figures.
	const wanted = options.decimals ?? kindOf(kind).decimals;
	const magnitude = shown.value === 0 ? 0 : Math.floor(Math.log10(Math.abs(shown.value)));
	const decimals = options.decimals ?? (magnitude < -wanted ? Math.min(6, 1 - magnitude) : wanted);
	const figure = writeNumber(shown.value, decimals, options.round);
	return shown.symbol === '°' ? `${figure}°` : `${figure} ${shown.symbol}`;
}
