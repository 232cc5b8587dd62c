/** Which value of an answer is held against which limit, by topic: names of results, inputs or assumptions. */

interface Limit {
	readonly value: string;
	/** another value of the sheet, or a share: 1 is all of it */
	readonly limit: string | number;
	readonly sense: 'at most' | 'at least';
}

const most = (value: string, limit: Limit['limit']): Limit => ({ value, limit, sense: 'at most' });
const least = (value: string, limit: Limit['limit']): Limit => ({ value, limit, sense: 'at least' });

/** Topics that are not here have no limit but those that their working shows as inequalities. */
export const limitsByTopic: Readonly<Record<string, readonly Limit[]>> = {
	accumulator: [most('prechargeKPa', 'cutInKPa')],
	// What the charger can give counts, not what reaches the bank beside the loads of the day.
	alternator: [most('chargerA', 'chargeLimit'), most('recommendedCharger', 'chargeLimit')],
	array: [
		most('coldVoltage', 'controllerV'),
		most('series', 'mostInSeries'),
		least('series', 'fewestInSeries'),
	],
	battery: [least('bankCapacity', 'requiredCapacity')],
	beam: [least('deflectionRatio', 'limitRatio'), most('spanM', 'spanLimit')],
	charge: [most('charger', 'chargeLimit')],
	cool: [least('unit', 'heatGain')],
	drain: [most('time', 'wantedH'), least('ventMm', 'vent')],
	freeze: [least('pad', 'padPower')],
	fuel: [least('fuelThere', 'fuelNeeded')],
	fuse: [least('ratedVoltage', 'systemVoltage')],
	heat: [least('heaterOutput', 'heaterNeeded')],
	'hot-water': [most('dayShare', 1), most('timerShare', 1)],
	// Common practice: one task takes no more than half the bank.
	inflate: [most('bankShare', 0.5)],
	inverter: [least('device', 'designCurrent')],
	moisture: [least('airM3H', 'airflow')],
	network: [most('worstDropPercent', 'dropLimit')],
	pipe: [least('pressureAtFixture', 'fixtureKPa')],
	restraint: [
		most('shearPerBolt', 'allowedShear'),
		most('tensionPerBolt', 'allowedTension'),
		most('utilisation', 1),
	],
	runtime: [least('runtime', 'wantedH')],
	shore: [most('chargerInput', 'usableCurrent'), most('allTogether', 'supplyLimit')],
	'short-circuit': [least('breakingCapacity', 'prospectiveCurrent')],
	simulate: [least('lowestCharge', 'reserve')],
	solar: [least('energyPerDay', 'needWh'), least('chargePerDay', 'needAh')],
	strut: [least('force', 'forceNeeded')],
	tank: [least('grayL', 'matchingGray')],
	tire: [least('capacity', 'axleLoadKg')],
	vent: [least('intakeM2', 'intakeNeeded')],
};

/** Why a sheet of a topic has no check where it has none, and what would give it one. */
export const noLimitByTopic: Readonly<Record<string, string>> = {
	budget:
		'No limit: a budget adds up what is used. Whether a bank or an array carries it is a question of its own, for which its energy a day is the need.',
	drain:
		'No limit was told: neither in what time the tank has to be empty nor how large its vent is. The vent it needs is among the results.',
	fuel: 'No limit was told: the days the fuel has to last, once said, are held against what is there; or the store in hand, where the days alone were said.',
	inflate:
		'No limit was told: with the current of the pump and the bank, the share of the bank is held against half of it. How long the pump may run before it rests is on its plate.',
	moisture:
		'No limit was told: the air flow found is the least that keeps the surface dry. A fan or vent of known flow, once said, is held against it.',
	runtime:
		'No limit was told: a time the bank has to last, once said, is held against the time found. The charge kept in reserve is taken off already.',
	solar: 'No limit was told: a need for each day, once said, is held against the yield found.',
	vent: 'No limit was told: the free area of the intake, once said, is held against the area found, which is the least.',
};
