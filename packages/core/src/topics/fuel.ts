import { type Burner, burnerOf, isGas, unitEnergyWh } from '../climate/burning.js';
import {
	cautionCylinder,
	cautionGasDetector,
	cautionGasFitter,
	cautionHeaterFire,
	cautionLiquidFuel,
	cautionMonoxide,
} from '../climate/cautions.js';
import { askingWords, fuelFields } from '../climate/fuel-fields.js';
import { heaterTurndown } from '../climate/heater.js';
import { energyWrite } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import { typicalBurner, typicalBurnerSource } from '../tables/burners.js';
import {
	type BurnerFuel,
	butaneColdSource,
	butaneLeastC,
	cylinderSizesKg,
	cylinderSource,
	gasFillShare,
	gasFillSource,
	heatingValueSource,
	higherHeatingValueWhPerKg,
	lowerHeatingValueWhPerKg,
	lowerHeatingValueWhPerL,
} from '../tables/fuels.js';
import { declareTopic } from '../topic/declare.js';
import type { InputOf } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';

type Input = InputOf<typeof fuelFields>;

export const fuel = declareTopic({
	name: 'fuel',
	title: 'How long fuel lasts, and how much a trip takes',
	system: 'climate',
	purpose:
		'How many hours or days a store of propane, butane, diesel or gasoline feeds the burners aboard, whether it does for a trip, or which cylinder or tank the trip takes.',
	words: [
		'how long will the propane last',
		'how long does the propane last',
		'how long will the gas last',
		'how long will the diesel last',
		'propane tank',
		'propane cylinder',
		'propane bottle',
		'gas bottle',
		'gas cylinder',
		'diesel tank',
		'petrol tank',
		'gasoline tank',
		'gas last',
		'how much gas',
		'fuel last',
		'how much fuel',
		'fuel duration',
		'cylinder',
		'cylinders',
		'how many cylinders',
		'how many bottles',
		'which cylinder',
		'what cylinder',
		'what size cylinder',
		'gasflasche',
		'gasflaschen',
		'propanflasche',
		'butanflasche',
		'flasche',
		'flaschen',
		'wie viele flaschen',
		'welche flasche',
		'dieseltank',
		'bombona',
		'bombonas',
		'bombona de butano',
		'bombona de propano',
		'bombona de gas',
		'cuántas bombonas',
		'qué bombona',
		'cuánto dura una bombona',
		'cuánto dura la bombona',
		...Object.values(askingWords).flat(),
	],
	examples: [
		'how long does 20 lb of propane last with a 12,000 Btu furnace',
		'does an 11 lb cylinder do a weekend: cooktop 1 h a day, heater 8 h at 50 %',
		'how much propane for 5 days: furnace 16,000 Btu 8 h at 50 %, stove 7000 Btu 1 h',
		'how many days on a 10 L diesel tank, 5 kW heater 8 h a day at half load',
		'5 kg Gasflasche, Kocher 1 h am Tag, wie viele Tage',
		'cuánto dura una bombona de 11 kg con calefacción de 4 kW 8 horas al día',
	],
	method:
		"Energy of the fuel by its lower (net) heating value over what the burners take: a plate's input as it is, its output over the efficiency. A volume of a propane container counts to 80 %. Whether a cylinder gives its gas fast enough in the cold, and what the fans draw, is not in it.",
	fields: fuelFields,
	needs: [
		{
			anyOf: ['amountKg', 'volumeL', 'wantedH', 'stay'],
			question: 'How much fuel is there (lb, kg, gal, L), or how many days should it last?',
		},
	],
	calculate: calculateFuel,
});

const n = (value: number, decimals = 2) => writeNumber(value, decimals);
const stayH = { night: 24, weekend: 48, week: 168 } as const;
const dutyOf = { low: heaterTurndown, half: 0.5, full: 1 } as const;

/** A burner and how long it is on. */
interface Use extends Burner {
	readonly shown: string;
	/** hours a day; null where only the hours of burning are asked for */
	readonly hoursPerDay: number | null;
	/** share of full burn while it is on */
	readonly duty: number;
}

interface Store {
	/** what burns of it, by the unit of its fuel [kg of gas, L of others] */
	readonly amount: number;
	readonly energyWh: number;
}

/** What the calculation works with once all is known. */
interface Case {
	readonly fuel: BurnerFuel;
	readonly uses: readonly Use[];
	/** null where the amount is what is asked for */
	readonly store: Store | null;
	/** the days it has to last; null where nobody said */
	readonly wantedD: number | null;
}

function calculateFuel(input: Input, sheet: Sheet) {
	const fuel = fuelOf(input, sheet);
	if (fuel === null) {
		return sheet.ask({
			name: 'fuel',
			label: 'fuel',
			question: 'Which fuel: propane, butane, diesel or gasoline?',
		});
	}
	const store = storeOf(input, fuel, sheet);
	if (store !== null && 'kind' in store) return store;
	const wantedD = wantedOf(input, sheet);
	const uses = usesOf(input, fuel, wantedD, sheet);
	if ('kind' in uses) return uses;
	const known: Case = { fuel, uses, store, wantedD };

	writeUse(sheet, input, known);
	addFindings(sheet, input, known);
	addCautions(sheet, fuel);
	if (store === null) return answerNeed(sheet, input, known, wantedD as number);
	return uses.every(({ hoursPerDay }) => hoursPerDay !== null)
		? answerDays(sheet, input, known, store)
		: answerHours(sheet, known, store);
}

function wantedOf(input: Input, sheet: Sheet): number | null {
	if (input.wantedH !== undefined) return input.wantedH / 24;
	if (input.stay === undefined) return null;
	const hours = stayH[input.stay];
	if (input.stay === 'weekend') {
		sheet.assume('wantedH', 'days wanted', hours, 'a weekend of two days and nights', {
			kind: 'duration',
			confirm: true,
		});
	}
	return hours / 24;
}

/** Burners that burn gas where nothing else is said. */
const gasOnly: ReadonlySet<string> = new Set([
	'furnace',
	'cooktop',
	'oven',
	'grill',
	'absorption fridge',
	'fire pit',
	'lantern',
]);

/** The fuel as said, or propane where only gas is sold or burned so; null where it has to be asked. */
function fuelOf(input: Input, sheet: Sheet): BurnerFuel | null {
	if (input.fuel !== undefined) return input.fuel;
	const burnsGas = input.burners.some(
		({ name, burnKgH }) =>
			burnKgH !== undefined || (name !== undefined && gasOnly.has(typicalBurner(name)?.name ?? '')),
	);
	if (input.amountKg === undefined && input.inCylinder !== true && !burnsGas) return null;
	sheet.assume('fuel', 'fuel', 'propane', 'the usual gas of cylinders; butane gives a little less', {
		confirm: true,
	});
	return 'propane';
}

function storeOf(input: Input, fuel: BurnerFuel, sheet: Sheet): Store | ReturnType<Sheet['ask']> | null {
	const many = input.containers * input.level;
	const stores: Store[] = [];
	if (input.amountKg !== undefined) {
		const massKg = input.amountKg * many;
		const energyWh = massKg * lowerHeatingValueWhPerKg(fuel);
		stores.push({ amount: energyWh / unitEnergyWh(fuel), energyWh });
		sheet.step(
			'energy of the fuel',
			'E = m · LHV',
			`${n(massKg)} kg × ${n(lowerHeatingValueWhPerKg(fuel), 0)} Wh/kg`,
			energyWh,
			{ kind: 'energy', source: heatingValueSource(fuel) },
		);
	}
	if (input.volumeL !== undefined) {
		if (fuel === 'butane') {
			if (input.amountKg === undefined) {
				return sheet.ask({
					name: 'amountKg',
					label: 'filling of one container',
					question: 'Butane is sold by its mass: how many kg (or lb) does the container hold?',
				});
			}
		} else {
			const share = usableShare(input, fuel, sheet);
			const volumeL = input.volumeL * many * share;
			const energyWh = volumeL * lowerHeatingValueWhPerL(fuel);
			stores.push({ amount: energyWh / unitEnergyWh(fuel), energyWh });
			sheet.step(
				'energy of the fuel',
				'E = V · u · LHV',
				`${n(input.volumeL * many)} L × ${n(share)} × ${n(lowerHeatingValueWhPerL(fuel), 0)} Wh/L`,
				energyWh,
				{ kind: 'energy', source: heatingValueSource(fuel) },
			);
		}
	}
	// "20 lb (4.7 gal)" names one container twice: the smaller counts.
	return stores.toSorted((a, b) => a.energyWh - b.energyWh)[0] ?? null;
}

/** Share of a container's volume that is liquid and can be drawn. */
function usableShare(input: Input, fuel: BurnerFuel, sheet: Sheet): number {
	if (input.usable !== undefined) return input.usable;
	if (input.isContent === true) return 1;
	const assume = (value: number, why: string) =>
		sheet.assume('usable', 'usable share of the tank', value, why, { kind: 'fraction', confirm: true });
	if (isGas(fuel)) {
		sheet.source(gasFillSource);
		assume(gasFillShare, 'liquid gas may fill 80 % of its container; say "of propane" for liquid');
		return gasFillShare;
	}
	const pickUp = input.mainTank === true ? 0.75 : 0.95;
	assume(
		pickUp,
		input.mainTank === true
			? 'the pick-up of a heater ends about a quarter above the floor, so that the engine starts (practice)'
			: 'the pick-up leaves about 5 % (practice)',
	);
	return pickUp;
}

function usesOf(
	input: Input,
	fuel: BurnerFuel,
	wantedD: number | null,
	sheet: Sheet,
): readonly Use[] | ReturnType<Sheet['ask']> {
	const { region } = sheet.context;
	const options = { fuel, region, efficiency: input.efficiency, rating: input.rating, basis: input.basis };
	const uses: Use[] = [];
	let fromTable = false;
	for (const [index, item] of input.burners.entries()) {
		const burner = burnerOf(item, options);
		const known = burner?.typical ?? null;
		const name = item.name ?? sheet.say`burner ${index + 1}`;
		if (burner === null) {
			return sheet.ask({
				name: 'burners',
				label: sheet.say`power of the ${name}`,
				question: sheet.say`How much does the ${name} burn or give (Btu/h or kW)?`,
			});
		}
		const assume = (
			field: string,
			label: string,
			value: number | string,
			kind?: 'power' | 'duration' | 'fraction',
		) =>
			sheet.assume(
				`burners.${name}.${field}`,
				label,
				value,
				'typical burner (practice); the plate decides',
				kind === undefined ? { confirm: true } : { kind, confirm: true },
			);
		if (burner.plateW !== null) {
			if (item.powerW === undefined) {
				fromTable = true;
				assume('powerW', sheet.say`power of the ${name}`, burner.plateW, 'power');
			}
			if (item.rating === undefined && input.rating === undefined) {
				assume('rating', sheet.say`what the plate of the ${name} rates`, burner.rating);
			}
			if (burner.rating === 'output' && input.efficiency === undefined) {
				assume('efficiency', sheet.say`efficiency of the ${name}`, burner.efficiency, 'fraction');
			}
		}
		const said = item.duty ?? (item.setting === undefined ? undefined : dutyOf[item.setting]);
		const alone = input.burners.length === 1 && wantedD === null && (known?.hoursVary ?? true);
		let hoursPerDay = item.durationH ?? input.hoursPerDayH ?? null;
		let duty = said ?? 1;
		if (hoursPerDay === null && !alone) {
			if (known === null) {
				return sheet.ask({
					name: 'burners',
					label: sheet.say`hours a day of the ${name}`,
					question: sheet.say`How many hours a day is the ${name} on?`,
				});
			}
			fromTable = true;
			hoursPerDay = known.hoursPerDay;
			assume('durationH', sheet.say`hours a day of the ${name}`, hoursPerDay, 'duration');
			if (said === undefined && known.duty < 1) {
				duty = known.duty;
				assume('duty', sheet.say`share of full burn of the ${name}`, duty, 'fraction');
			}
		}
		const shown = burner.count > 1 ? sheet.say`${burner.count} × ${name}` : name;
		uses.push({ ...burner, shown, hoursPerDay, duty });
	}
	if (fromTable) sheet.source(typicalBurnerSource);
	return uses;
}

function dailyWh(use: Use): number {
	return use.inputW * (use.hoursPerDay ?? 0) * use.duty;
}

function sumOf(uses: readonly Use[], of: (use: Use) => number): number {
	return uses.reduce((sum, use) => sum + of(use), 0);
}

/** An amount of the fuel: gas by its mass, others by their volume. */
function amountText(
	sheet: Sheet,
	fuel: BurnerFuel,
	amount: number,
	round: 'up' | 'down' | 'nearest',
): string {
	const decimals = amount < 1 ? 2 : 1;
	return sheet.show(isGas(fuel) ? 'mass' : 'volume', amount, { decimals, round });
}

/** A power as the plate of such a burner says it. */
function powerText(sheet: Sheet, fuel: BurnerFuel, powerW: number): string {
	return isGas(fuel) && sheet.context.units === 'us'
		? sheet.show('power', powerW, { unit: 'Btu/h', decimals: 0 })
		: sheet.show('power', powerW, { unit: 'kW', decimals: 2 });
}

function hoursText(sheet: Sheet, hours: number): string {
	if (hours < 1) return sheet.show('duration', hours, { unit: 'min', decimals: 0, round: 'down' });
	return sheet.say`${writeNumber(hours, hours < 100 ? 1 : 0, 'down')} h`;
}

function daysText(sheet: Sheet, days: number, round: 'down' | 'nearest' = 'down'): string {
	const figure = writeNumber(days, days < 1 ? 2 : 1, round);
	return figure === '1' ? sheet.say`${figure} day` : sheet.say`${figure} days`;
}

function writeUse(sheet: Sheet, input: Input, { fuel, uses, store }: Case): void {
	for (const use of uses) {
		const plate =
			use.plateW === null
				? `${n(use.inputW, 0)} W`
				: `${use.count} × ${n(use.plateW, 0)} W${use.rating === 'output' ? ` / ${n(use.efficiency)}` : ''}`;
		const isHigher = use.rating === 'input' && use.plateW !== null && input.basis === 'higher';
		sheet.step(
			sheet.say`fuel of the ${use.shown} at full burn`,
			use.rating === 'output' ? 'P = n · Po / η' : isHigher ? 'P = n · Pi · LHV / HHV' : 'P = n · Pi',
			plate,
			use.inputW,
			{
				kind: 'power',
				source:
					use.rating === 'output'
						? practice('burners turn about 80 % of the lower heating value into heat')
						: heatingValueSource(fuel),
			},
		);
		if (use.hoursPerDay === null) continue;
		sheet.step(
			sheet.say`energy a day: ${use.shown}`,
			'E = P · t · share',
			`${n(use.inputW, 0)} W × ${n(use.hoursPerDay)} h × ${n(use.duty)}`,
			dailyWh(use),
			{ kind: 'energy', source: physics('energy is power times time') },
		);
	}
	const fullW = sumOf(uses, ({ inputW }) => inputW);
	sheet.result('fullBurnPower', 'fuel at full burn, by lower heating value', fullW, {
		kind: 'power',
		write: { round: 'up' },
	});
	const day = sumOf(uses, dailyWh);
	if (day > 0) {
		sheet.result('fuelPerDay', 'fuel a day', day / unitEnergyWh(fuel), {
			kind: isGas(fuel) ? 'mass' : 'volume',
			write: { round: 'up', decimals: 2 },
		});
	}
	if (store === null) return;
	sheet.result('fuelThere', 'fuel that can be burned', store.amount, {
		kind: isGas(fuel) ? 'mass' : 'volume',
		write: { round: 'down' },
	});
	sheet.result('energy', 'its energy, by lower heating value', store.energyWh, {
		kind: 'energy',
		write: energyWrite(store.energyWh, 'down'),
	});
	sheet.step(
		'hours at full burn',
		't = E / ΣP',
		`${n(store.energyWh, 0)} Wh / ${n(fullW, 0)} W`,
		store.energyWh / fullW,
		{ kind: 'duration', source: physics('energy over power') },
	);
	sheet.result('fullBurnTime', 'hours at full burn, all on', store.energyWh / fullW, {
		kind: 'duration',
		write: { round: 'down' },
	});
}

/** Hours a day a heater is commonly on, for those who named none [h]. */
const usualHours = [8, 12, 24] as const;

/** One burner with no hours: how long it burns. */
function answerHours(sheet: Sheet, known: Case, store: Store) {
	const { fuel, uses } = known;
	const [use] = uses as [Use];
	const hours = store.energyWh / (use.inputW * use.duty);
	sheet.result('burnTime', 'hours it burns', hours, { kind: 'duration', write: { round: 'down' } });
	for (const each of usualHours) {
		sheet.neighbour(sheet.say`on ${each} h a day`, true, daysText(sheet, hours / each));
	}
	if (use.typical?.cycles === true && use.duty === 1) {
		sheet.neighbour(
			sheet.say`at half of full burn`,
			true,
			sheet.say`${hoursText(sheet, 2 * hours)} of burning`,
		);
	}
	addBasis(sheet, known, (factor) => hoursText(sheet, hours * factor));
	const there = amountText(sheet, fuel, store.amount, 'down');
	const each = powerText(sheet, fuel, (use.plateW ?? use.inputW / use.count) * use.count);
	const power = use.duty < 1 ? sheet.say`${sheet.show('fraction', use.duty)} of ${each}` : each;
	const eight = daysText(sheet, hours / 8);
	const nonstop = daysText(sheet, hours / 24);
	return sheet.answer(sheet.say`${hoursText(sheet, hours)} of burning: ${there} of ${fuel} at ${power}`, {
		because: sheet.say`At 8 h a day that is ${eight}; without a stop, ${nonstop}.`,
		governedBy: 'energy of the fuel',
	});
}

/** What plates by the higher heating value would give, where all of them rate the gas they burn. */
function addBasis(sheet: Sheet, { fuel, uses }: Case, lasts: (factor: number) => string): void {
	if (sheet.isGiven('basis') || !isGas(fuel)) return;
	if (!uses.every(({ rating, plateW }) => rating === 'input' && plateW !== null)) return;
	const factor = higherHeatingValueWhPerKg(fuel) / lowerHeatingValueWhPerKg(fuel);
	sheet.neighbour(sheet.say`plates by the higher heating value`, true, lasts(factor));
}

function answerDays(sheet: Sheet, input: Input, known: Case, store: Store) {
	const { fuel, uses, wantedD } = known;
	const dayWh = sumOf(uses, dailyWh);
	const days = store.energyWh / dayWh;
	const there = amountText(sheet, fuel, store.amount, 'down');
	const perDay = amountText(sheet, fuel, dayWh / unitEnergyWh(fuel), 'up');
	sheet.step('days it lasts', 'd = E / ΣE', `${n(store.energyWh, 0)} Wh / ${n(dayWh, 0)} Wh`, days, {
		unit: 'days',
		source: physics('energy balance'),
	});
	sheet.result('days', 'days it lasts', days, { unit: 'days', write: { decimals: 1, round: 'down' } });
	if (input.containers < 20) {
		const more = (days * (input.containers + 1)) / input.containers;
		sheet.neighbour(
			sheet.say`${input.containers + 1} such containers`,
			wantedD === null || more >= wantedD,
			daysText(sheet, more),
		);
	}
	writeHalf(sheet, known, store);
	addBasis(sheet, known, (factor) => daysText(sheet, days * factor));
	const because = `${mostOf(sheet, known)}${sheet.say`All at full burn it lasts ${hoursText(sheet, store.energyWh / sumOf(uses, ({ inputW }) => inputW))}.`}`;
	if (wantedD === null) {
		return sheet.answer(sheet.say`${daysText(sheet, days)}: ${there} of ${fuel}, ${perDay} a day`, {
			because,
			governedBy: 'energy of the fuel',
		});
	}
	const neededAmount = writeNeeded(sheet, known, wantedD);
	const needed = amountText(sheet, fuel, neededAmount, 'up');
	const span = daysText(sheet, wantedD, 'nearest');
	const lasts = sheet.say`It lasts ${daysText(sheet, days)} at ${perDay} a day.`;
	if (days >= wantedD * (1 - 1e-9)) {
		writeTipping(sheet, known, store, wantedD);
		return sheet.answer(sheet.say`Enough for ${span}: ${needed} of ${there} of ${fuel}`, {
			because: `${lasts} ${because}`,
			governedBy: 'energy of the fuel',
		});
	}
	const lacking = amountText(sheet, fuel, neededAmount - store.amount, 'up');
	sheet.finding(
		'warning',
		'fuel-too-little',
		sheet.say`${needed} of ${fuel} are needed for ${span} and ${there} can be burned: ${lacking} more, or fewer hours.`,
		heatingValueSource(fuel),
	);
	return sheet.answer(sheet.say`Not enough for ${span}: ${there} of ${fuel} last ${daysText(sheet, days)}`, {
		because: `${sheet.say`${needed} needed at ${perDay} a day.`} ${because}`,
		governedBy: 'energy of the fuel',
	});
}

/** The burner that takes most, where there are several. */
function mostOf(sheet: Sheet, { fuel, uses }: Case): string {
	const [largestUse] = uses.toSorted((a, b) => dailyWh(b) - dailyWh(a));
	if (largestUse === undefined || uses.length < 2) return '';
	const most = amountText(sheet, fuel, dailyWh(largestUse) / unitEnergyWh(fuel), 'up');
	return `${sheet.say`Most of it: ${largestUse.shown}, ${most} a day.`} `;
}

function writeNeeded(sheet: Sheet, { fuel, uses }: Case, wantedD: number): number {
	const dayWh = sumOf(uses, dailyWh);
	const unit = isGas(fuel) ? 'kg' : 'L';
	const amount = (dayWh * wantedD) / unitEnergyWh(fuel);
	sheet.step(
		'fuel for the days wanted',
		isGas(fuel) ? 'm = ΣE · d / LHV' : 'V = ΣE · d / LHV',
		`${n(dayWh, 0)} Wh × ${n(wantedD)} / ${n(unitEnergyWh(fuel), 0)} Wh/${unit}`,
		amount,
		{ kind: isGas(fuel) ? 'mass' : 'volume', source: heatingValueSource(fuel) },
	);
	sheet.result('fuelNeeded', 'fuel for the days wanted', amount, {
		kind: isGas(fuel) ? 'mass' : 'volume',
		write: { round: 'up' },
	});
	return amount;
}

/** A heater counted at full burn all its hours, at half of it. */
function writeHalf(sheet: Sheet, { uses, wantedD }: Case, store: Store): void {
	const cycling = uses.filter((use) => use.typical?.cycles === true && use.duty === 1);
	if (cycling.length === 0) return;
	const half = uses.map((use) => (cycling.includes(use) ? { ...use, duty: 0.5 } : use));
	const days = store.energyWh / sumOf(half, dailyWh);
	const names = cycling.map(({ shown }) => shown).join(', ');
	sheet.neighbour(
		sheet.say`${names} at half of full burn`,
		wantedD === null || days >= wantedD,
		daysText(sheet, days),
	);
}

/** How long the largest burner may be on for the days wanted. */
function writeTipping(sheet: Sheet, { uses }: Case, store: Store, wantedD: number): void {
	const [most] = uses.toSorted((a, b) => dailyWh(b) - dailyWh(a));
	if (most === undefined) return;
	const others = sumOf(uses, dailyWh) - dailyWh(most);
	const hours = (store.energyWh / wantedD - others) / (most.inputW * most.duty);
	if (hours >= 24) return;
	const shown = hoursText(sheet, hours);
	sheet.tipping(
		'durationH',
		sheet.say`hours a day of the ${most.shown}`,
		hours,
		sheet.say`${most.shown} up to ${shown} a day`,
		{ kind: 'duration' },
	);
}

/** The amount that the days take, and the cylinder or tank for it. */
function answerNeed(sheet: Sheet, input: Input, known: Case, wantedD: number) {
	const { fuel } = known;
	const amount = writeNeeded(sheet, known, wantedD);
	const needed = amountText(sheet, fuel, amount, 'up');
	const span = daysText(sheet, wantedD, 'nearest');
	const perDay = amountText(sheet, fuel, amount / wantedD, 'up');
	for (const days of [wantedD - 1, wantedD + 1]) {
		if (days < 1) continue;
		sheet.neighbour(
			daysText(sheet, days, 'nearest'),
			true,
			amountText(sheet, fuel, (amount / wantedD) * days, 'up'),
		);
	}
	const because = `${mostOf(sheet, known)}${sheet.say`It takes ${perDay} a day.`}`;
	addBasis(sheet, known, (factor) => amountText(sheet, fuel, amount / factor, 'up'));
	if (isGas(fuel)) {
		const { count: many, sizeKg } = cylindersFor(sheet, amount);
		sheet.source(cylinderSource);
		sheet.result('cylinderSize', 'filling of one cylinder', sizeKg, { kind: 'mass' });
		sheet.result('cylinders', 'cylinders', many, {});
		const size = sheet.show('mass', sizeKg);
		const store = many === 1 ? sheet.say`a ${size} cylinder` : sheet.say`${many} cylinders of ${size}`;
		return sheet.answer(sheet.say`${needed} of ${fuel} for ${span}: ${store}`, {
			because,
			governedBy: 'energy of the fuel',
		});
	}
	const tankL = amount / usableShare({ ...input, isContent: undefined }, fuel, sheet);
	sheet.result('tank', 'tank for it', tankL, { kind: 'volume', write: { round: 'up' } });
	const tank = sheet.show('volume', tankL, { round: 'up' });
	return sheet.answer(sheet.say`${needed} of ${fuel} for ${span}: a tank of ${tank}`, {
		because,
		governedBy: 'energy of the fuel',
	});
}

/** The smallest cylinder that holds it, or as many of the largest as it takes. */
function cylindersFor(sheet: Sheet, massKg: number): { readonly count: number; readonly sizeKg: number } {
	const sizes = cylinderSizesKg[sheet.context.region];
	const one = sizes.find((size) => size >= massKg * (1 - 1e-9));
	if (one !== undefined) return { count: 1, sizeKg: one };
	const sizeKg = sizes.at(-1) as number;
	return { count: Math.ceil(massKg / sizeKg - 1e-9), sizeKg };
}

function addFindings(sheet: Sheet, input: Input, { fuel, uses }: Case): void {
	if (input.unvented === true) {
		sheet.finding(
			'danger',
			'unvented-heater',
			'A heater without a flue fills the van with carbon monoxide and water and takes the oxygen: never sleep with it on. Use a heater with a sealed burner, air and exhaust outside.',
			fromMemory('NFPA 1192', 'heaters vented to the outside, combustion air from the outside'),
		);
	}
	if (input.alarm === false) {
		sheet.finding(
			'danger',
			'no-carbon-monoxide-alarm',
			'Fuel burned aboard without a carbon-monoxide alarm can kill people in their sleep. Fit an alarm at sleeping height first.',
			practice('carbon-monoxide alarm wherever fuel is burned'),
		);
	}
	if (uses.some(({ typical }) => typical?.name === 'generator')) {
		sheet.finding(
			'danger',
			'generator-fumes',
			'The exhaust of a generator kills: run it outside only, far from the van, its windows and its neighbours, never in a locker or under an awning.',
			practice('generators run outside, away from openings'),
		);
	}
	const { coldC } = input;
	if (fuel === 'butane') {
		const least = sheet.show('temperature', butaneLeastC);
		const isCold = coldC !== undefined && coldC <= butaneLeastC;
		sheet.finding(
			isCold ? 'warning' : 'note',
			'butane-cold',
			sheet.say`Butane gives no gas at ${least} and below, and little just above: take propane for the cold.`,
			butaneColdSource,
		);
	} else if (fuel === 'propane' && coldC !== undefined && coldC < 0) {
		sheet.finding(
			'note',
			'cylinder-cold',
			'In the cold, and towards its end, a small cylinder gives gas more slowly than a large heater burns it: a larger one, or two together, keeps up.',
			practice('gas is drawn from cylinders no faster than they take up heat'),
		);
	}
	for (const use of uses) {
		if (use.typical?.cycles !== true || use.duty < 1 || (use.hoursPerDay ?? 0) < 4) continue;
		sheet.finding(
			'note',
			'cycling-burner',
			sheet.say`The ${use.shown} is counted at full burn for all its hours. If a thermostat turns it down, name its share ("50 %").`,
			typicalBurnerSource,
		);
	}
}

function addCautions(sheet: Sheet, fuel: BurnerFuel): void {
	sheet.caution(cautionMonoxide);
	if (isGas(fuel)) sheet.caution(cautionCylinder, cautionGasDetector, cautionGasFitter);
	else sheet.caution(cautionLiquidFuel, cautionHeaterFire);
}
