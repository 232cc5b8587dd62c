import { batteryPracticeSource, type Chemistry } from '../tables/batteries.js';
import type { Sheet } from '../topic/sheet.js';
import { practice, published, type Source } from '../topic/source.js';
import { type Bank, type CurrentLimit, capacityAh } from './bank.js';

const makerSource: Source = practice("the maker's limit as given");

/**
 * A current against what the bank bears. Over the maker's limit, or over twice the usual rate, is a danger; over the
 * usual rate alone is a warning.
 * @returns true where it is within the limit
 */
export function addLimitFinding(
	sheet: Sheet,
	way: 'charge' | 'discharge',
	currentA: number,
	limit: CurrentLimit,
): boolean {
	if (currentA <= limit.limitA) return true;
	const severe = limit.given || currentA > 2 * limit.limitA;
	const current = sheet.show('current', currentA, { round: 'up' });
	const most = sheet.show('current', limit.limitA, { round: 'down' });
	const source = limit.given ? makerSource : batteryPracticeSource;
	if (way === 'charge') {
		sheet.finding(
			severe ? 'danger' : 'warning',
			'charge-over-limit',
			limit.given
				? sheet.say`Charging with ${current} is over the bank's limit of ${most}: set the chargers lower, together.`
				: sheet.say`Charging with ${current} is over the usual ${most} for this bank: set the chargers lower, or confirm the maker's limit.`,
			source,
		);
		return false;
	}
	sheet.finding(
		severe ? 'danger' : 'warning',
		'draw-over-protection',
		limit.given
			? sheet.say`A draw of ${current} is over the ${most} at which the battery's own protection switches off: everything goes dark under load. Add batteries in parallel, raise the voltage or limit the inverter.`
			: sheet.say`A draw of ${current} is over the usual ${most} for this bank: its voltage may collapse, or its own protection switch it off. Confirm the maker's limit, or add batteries.`,
		source,
	);
	return false;
}

/** What the temperature of a bank forbids. */
export function addTemperatureFindings(
	sheet: Sheet,
	chemistry: Chemistry,
	temperatureC: number,
	heated: boolean,
): void {
	const at = sheet.show('temperature', temperatureC);
	if (!chemistry.leadAcid && temperatureC < chemistry.chargeMinC) {
		const least = sheet.show('temperature', chemistry.chargeMinC);
		if (heated) {
			sheet.finding(
				'warning',
				'lithium-heater-first',
				sheet.say`At ${at} a heated lithium battery must be warmed above ${least} before any charge reaches it, and the heater is a load of its own.`,
				chemistry.temperatureSource,
			);
		} else {
			sheet.finding(
				'danger',
				'lithium-charge-below-freezing',
				sheet.say`At ${at} this battery must not be charged: below ${least} lithium plates in the cells, which ruins them and can start a fire. Stop every charger by a cold cut-off, or heat the battery.`,
				chemistry.temperatureSource,
			);
		}
	}
	if (temperatureC > chemistry.chargeMaxC) {
		sheet.finding(
			'danger',
			'charge-too-hot',
			sheet.say`At ${at} this battery must not be charged: ${sheet.show('temperature', chemistry.chargeMaxC)} is the most.`,
			chemistry.temperatureSource,
		);
	} else if (temperatureC > 45) {
		sheet.finding(
			'warning',
			'bank-hot',
			sheet.say`At ${at} the bank ages fast, and many batteries stop charging at ${sheet.show('temperature', 45)}.`,
			practice('many packs limit charging to 45 °C'),
		);
	}
	if (chemistry.leadAcid && temperatureC < -7) {
		sheet.finding(
			'warning',
			'lead-acid-may-freeze',
			sheet.say`At ${at} a discharged lead-acid battery freezes and bursts: keep it charged.`,
			practice('a discharged lead-acid battery freezes at about −7 to −10 °C'),
		);
	}
}

/** What the make-up of a bank calls for. */
export function addBankFindings(sheet: Sheet, bank: Bank): void {
	if (bank.parallel > 4) {
		sheet.finding(
			'note',
			'many-parallel-strings',
			sheet.say`${bank.parallel} strings in parallel share badly; four are a usual limit. Use larger batteries or a higher voltage, and busbars with equal cables.`,
			practice('at most four strings in parallel'),
		);
	}
	if (!bank.chemistry.leadAcid && bank.series > 1) {
		sheet.finding(
			'note',
			'lithium-series',
			sheet.say`Lithium batteries in series must be of a kind whose maker allows ${bank.series} in series, and brought to equal charge first.`,
			practice("each battery's own protection is made for a limited voltage"),
		);
	}
	if (bank.chemistry.leadAcid) {
		sheet.finding(
			'note',
			'lead-acid-vent',
			sheet.say`The compartment needs openings of at least 1100 mm² (1.7 in²), one within 50 mm (2 in) of the top and one of the bottom, and none into the living space.`,
			published('NFPA 70 (NEC)', '552.10(D)'),
		);
	}
	if (sheet.context.region === 'eu' && bank.classV === 12 && capacityAh(bank) < 60) {
		sheet.finding(
			'note',
			'below-auxiliary-minimum',
			sheet.say`A living-area battery has at least 60 Ah at the 20 h rate.`,
			published('EN 1648-2:2018', '4.3.2'),
		);
	}
}
