import { create, unitDependencies } from '../mathjs.js';
import { type KindName, kindOf } from './kinds.js';

// mathjs whole takes most of a second to load; the unit part alone is enough here.
const math = create(unitDependencies ?? {});

interface Scale {
	readonly factor: number;
	readonly offset: number;
}

const baseExpressions: Partial<Record<KindName, string>> = {
	energy: 'W hour',
	charge: 'A hour',
	duration: 'hour',
	flow: 'L/minute',
	airflow: 'm^3/hour',
	massFlow: 'kg/hour',
	area: 'm^2',
	irradiance: 'W/m^2',
	irradiation: 'kW hour/m^2',
	conductance: 'W/(m^2 K)',
	conductivity: 'W/(m K)',
	density: 'kg/m^3',
	secondMoment: 'mm^4',
	voltagePerDegree: '1/K',
	thickness: 'mm',
};

const scales = new Map<string, Scale>();

function scaleOf(kind: KindName, symbol: string): Scale {
	const key = `${kind} ${symbol}`;
	const known = scales.get(key);
	if (known !== undefined) return known;
	const unit = unitsOf(kind).find((one) => one.symbol === symbol);
	if (unit === undefined) throw new Error(`"${symbol}" is not a unit of ${kind}`);
	const scale = computeScale(kind, unit.expression);
	scales.set(key, scale);
	return scale;
}

function computeScale(kind: KindName, expression: string): Scale {
	// A percentage is a plain number: mathjs units have no dimensionless hundredth.
	if (kind === 'fraction') return { factor: Number(expression), offset: 0 };
	if (kind === 'voltagePerDegree') return { factor: 0.01, offset: 0 };
	if (kind === 'lineLoad' && expression.startsWith('kg')) return { factor: 9.80665, offset: 0 };
	const multiple = /^(\d+) (.+)$/.exec(expression);
	const times = multiple === null ? 1 : Number(multiple[1]);
	const unit = multiple === null ? expression : (multiple[2] as string);
	const base = baseExpressions[kind] ?? kindOf(kind).base;
	const zero = math.unit(0, unit).toNumber(base);
	const one = math.unit(1, unit).toNumber(base);
	return { factor: (one - zero) * times, offset: zero };
}

/** The units of a kind; a thickness is written in the units of length. */
export function unitsOf(kind: KindName) {
	return kind === 'thickness' ? kindOf('length').units : kindOf(kind).units;
}

/** A value in one of the kind's units, turned into the kind's base unit. */
export function toBase(kind: KindName, value: number, symbol: string): number {
	const { factor, offset } = scaleOf(kind, symbol);
	return value * factor + offset;
}

/** A value in the kind's base unit, turned into one of its units. */
export function fromBase(kind: KindName, value: number, symbol: string): number {
	const { factor, offset } = scaleOf(kind, symbol);
	return (value - offset) / factor;
}
