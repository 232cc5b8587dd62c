import { type Budget, dailyBudget } from '../../energy/budget.js';
import { usualIdleW } from '../../energy/inverter-use.js';
import { unknownInverterEfficiency } from '../../tables/batteries.js';
import { type Facts, isNo, type isYes, num } from './facts.js';
import { dailyLoads } from './loads.js';

/** What an ordinary day takes from the bank, or null where no load was told. */
export function budgetOf(facts: Facts): Budget | null {
	return facts.once('budget', () => {
		const loads = dailyLoads(facts).map(({ load }) => load);
		return loads.length === 0 ? null : dailyBudget(loads, inverterUseOf(facts));
	});
}

/** The inverter's losses as told; switched on as long as its loads run unless it was told to stay on. */
export function inverterUseOf(facts: Facts) {
	const inverter = facts.first('inverter');
	return {
		efficiency: (inverter === null ? undefined : num(inverter, 'efficiency')) ?? unknownInverterEfficiency,
		idleW: (inverter === null ? undefined : num(inverter, 'idleW')) ?? usualIdleW,
		onH: inverter === null ? 0 : hoursOn(inverter),
	};
}

/** Hours a day an inverter is on [h]: all where told so or not told, since few switch it off. */
function hoursOn(inverter: Parameters<typeof isYes>[0]): number {
	return isNo(inverter, 'alwaysOn') ? 4 : 24;
}
