import type { CircuitRules, RuleSet, Sourced } from '../rules/rules.js';
import { ampacityOf, bandFactor, necAmpacity, necBundleBands } from '../tables/ampacity.js';
import { awgSizes, type ConductorSize, copperResistanceAt } from '../tables/conductors.js';
import { fromMemory } from '../topic/source.js';

/** How the conductors are laid. */
type Routing = 'free' | 'enclosed' | 'insulation';

/** One run to be sized. All lengths are one way; both legs are counted here. */
export interface Run {
	readonly supply: 'dc' | 'mains';
	readonly currentA: number;
	readonly voltageV: number;
	readonly lengthM: number;
	/** largest drop as a fraction of the voltage */
	readonly dropLimit: number;
	readonly insulationC: number;
	readonly ambientC: number;
	/** current-carrying conductors lying together */
	readonly bundled: number;
	readonly routing: Routing;
	/** on for 3 h or more */
	readonly continuous: boolean;
	readonly motor: boolean;
	/** the current is the rating of the circuit or inlet, so its device has that rating too */
	readonly isRating: boolean;
	/** temperature limit of the terminals, or null where none was given [°C] */
	readonly terminalC: number | null;
	/** conductors in parallel in each leg */
	readonly parallel: number;
	readonly tinned: boolean;
}

/** What one size would do on a run. */
export interface SizeCheck {
	readonly size: ConductorSize;
	/** table value of one conductor [A] */
	readonly tableA: Sourced;
	readonly ambientFactor: Sourced;
	readonly bundleFactor: Sourced;
	readonly routingFactor: Sourced | null;
	/** all conductors of a leg after correction [A]; at this current they reach their insulation temperature */
	readonly correctedA: number;
	/** what the terminals allow all conductors of a leg [A], or null for no cap */
	readonly terminalA: Sourced | null;
	/** the lower of the two: what the run may carry [A] */
	readonly allowableA: number;
	/** the largest device the conductor may have [A] */
	readonly deviceCapA: number;
	readonly smallLimit: Sourced | null;
	/** the standard device chosen [A], or null where none both carries the load and protects the conductor */
	readonly deviceA: number | null;
	/** the largest standard device that still protects it [A] */
	readonly largestDeviceA: number | null;
	readonly conductorC: number;
	/** both legs at operating temperature [ohm] */
	readonly loopOhm: number;
	readonly dropV: number;
	readonly dropFraction: number;
	readonly lossW: number;
	readonly passes: {
		readonly heat: boolean;
		readonly protection: boolean;
		readonly drop: boolean;
		readonly minimum: boolean;
	};
}

export const smallestDevice = (run: Run, rules: CircuitRules): number =>
	run.isRating || !(run.continuous || run.motor) ? run.currentA : run.currentA * rules.continuous.value;

/**
 * Judges one size on a run.
 *
 * Resistance is taken at the operating temperature T = Ta + (Tmax - Ta)(I/Iz)², R = R20 (1 + 0.00393 (T - 20)).
 * @returns the check, or null where the rule set's table has no value for the size at this insulation class
 */
export function checkSize(run: Run, size: ConductorSize, ruleSet: RuleSet): SizeCheck | null {
	const rules = run.supply === 'dc' ? ruleSet.dc : ruleSet.mains;
	const tableA = enclosedTable(run, size, rules);
	if (tableA === null) return null;
	const ambient = rules.ambientFactor(run.insulationC, run.ambientC);
	const bundle = enclosedBundle(run, rules);
	const routing = run.routing === 'insulation' ? surrounded : null;
	const perConductor = tableA.value * ambient.value * bundle.value * (routing?.value ?? 1);
	const correctedA = perConductor * run.parallel;

	const minimumA = smallestDevice(run, rules);
	const terminalC = run.terminalC ?? rules.usualTerminalC(minimumA, size);
	const cap = terminalC === null ? null : rules.terminalCap(size, terminalC);
	const terminalA = cap === null ? null : { value: cap.value * run.parallel, source: cap.source };
	const allowableA = Math.min(correctedA, terminalA?.value ?? Number.POSITIVE_INFINITY);

	const small = rules.smallConductorLimit(size);
	const smallLimit = small === null ? null : { value: small.value * run.parallel, source: small.source };
	const deviceCapA = Math.min(allowableA, smallLimit?.value ?? Number.POSITIVE_INFINITY);
	const fitting = rules.deviceRatingsA.filter((rating) => rating >= minimumA && rating <= deviceCapA);
	const deviceA = fitting[0] ?? null;

	const share = correctedA > 0 ? run.currentA / correctedA : Number.POSITIVE_INFINITY;
	// Beyond its ampacity a size is refused anyway; the formula is not carried past the insulation's temperature.
	const conductorC = run.ambientC + Math.max(0, run.insulationC - run.ambientC) * Math.min(1, share) ** 2;
	const ohmPerM20C = run.tinned ? size.tinnedOhmPerM20C : size.bareOhmPerM20C;
	const legOhm = (copperResistanceAt(ohmPerM20C, conductorC) * run.lengthM) / run.parallel;
	const reactanceOhm = size.areaMm2 > 35 ? (rules.reactanceOhmPerM * run.lengthM) / run.parallel : 0;
	const dropV = 2 * run.currentA * Math.hypot(legOhm, reactanceOhm);
	const dropFraction = dropV / run.voltageV;
	return {
		size,
		tableA,
		ambientFactor: ambient,
		bundleFactor: bundle,
		routingFactor: routing,
		correctedA,
		terminalA,
		allowableA,
		deviceCapA,
		smallLimit,
		deviceA,
		largestDeviceA: fitting.at(-1) ?? null,
		conductorC,
		loopOhm: 2 * legOhm,
		dropV,
		dropFraction,
		lossW: 2 * run.currentA ** 2 * legOhm,
		passes: {
			heat: allowableA >= minimumA,
			protection: deviceA !== null,
			drop: dropFraction <= run.dropLimit,
			minimum: size.areaMm2 >= smallestAreaMm2(run, rules),
		},
	};
}

function smallestAreaMm2(run: Run, rules: CircuitRules): number {
	const parallel = run.parallel > 1 ? (rules.minimumParallelAreaMm2?.value ?? 0) : 0;
	return Math.max(rules.minimumAreaMm2.value, parallel);
}

const surrounded: Sourced = {
	value: 0.5,
	source: fromMemory('IEC 60364-5-52', 'cable wholly in thermal insulation for more than 0.5 m: half'),
};

/** In a loom, conduit or wall the free-air table is too kind: the lower of it and the table for cable counts. */
function enclosedTable(run: Run, size: ConductorSize, rules: CircuitRules): Sourced | null {
	const free = rules.ampacity(size, run.insulationC);
	if (free === null || run.supply === 'mains' || run.routing === 'free') return free;
	const cable = ampacityOf(necAmpacity, awgSizes, size, Math.min(run.insulationC, 90));
	return cable === null || free.value <= cable ? free : { value: cable, source: necAmpacity.source };
}

function enclosedBundle(run: Run, rules: CircuitRules): Sourced {
	const own = rules.bundleFactor(run.bundled);
	if (run.supply === 'mains' || run.routing === 'free') return own;
	const cable = bandFactor(necBundleBands, run.bundled);
	return cable < own.value ? { value: cable, source: own.source } : own;
}

export function passesAll(check: SizeCheck): boolean {
	const { heat, protection, drop, minimum } = check.passes;
	return heat && protection && drop && minimum;
}

/** Every size of the rule set that the shop may be offered, thinnest first, judged on the run. */
export function checkSizes(run: Run, ruleSet: RuleSet): SizeCheck[] {
	return ruleSet.sizes
		.filter((size) => size.proposed)
		.map((size) => checkSize(run, size, ruleSet))
		.filter((check) => check !== null);
}

export type Rule = keyof SizeCheck['passes'];

/**
 * The smallest size that passes everything, and the rule that kept the next smaller one out.
 * @returns null where no size passes
 */
export function chooseSize(
	checks: readonly SizeCheck[],
): { readonly index: number; readonly governedBy: Rule } | null {
	const index = checks.findIndex(passesAll);
	if (index < 0) return null;
	const smaller = checks[index - 1]?.passes;
	const failed = (['drop', 'protection', 'heat', 'minimum'] as const).find(
		(rule) => smaller?.[rule] === false,
	);
	return { index, governedBy: onlyWhere(checks, index, failed ?? 'minimum') };
}

/** Heat comes before protection where both fail: the device fails because the conductor is too thin. */
function onlyWhere(checks: readonly SizeCheck[], index: number, rule: Rule): Rule {
	const smaller = checks[index - 1];
	return rule === 'protection' && smaller !== undefined && !smaller.passes.heat ? 'heat' : rule;
}

/** The first size from which on this one rule is met, or null. */
export function firstPassing(checks: readonly SizeCheck[], rule: Rule): SizeCheck | null {
	return checks.find((check) => check.passes[rule]) ?? null;
}

/** The largest value from `known` up to `most` for which `holds` stays true; `holds(known)` must be true. */
export function largestHolding(known: number, most: number, holds: (value: number) => boolean): number {
	if (holds(most)) return most;
	let low = known;
	let high = most;
	for (let step = 0; step < 50; step += 1) {
		const middle = (low + high) / 2;
		if (holds(middle)) low = middle;
		else high = middle;
	}
	return low;
}
