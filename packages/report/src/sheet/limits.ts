/** Which value of an answer is held against which limit, by topic: names of results, inputs or assumptions. */

interface Limit {
	readonly value: string;
	/** another value of the sheet, or a share that is the whole */
	readonly limit: string | 1;
	readonly sense: 'at most' | 'at least';
}

const most = (value: string, limit: Limit['limit']): Limit => ({ value, limit, sense: 'at most' });
const least = (value: string, limit: Limit['limit']): Limit => ({ value, limit, sense: 'at least' });

/** Topics that are not here have no limit but those that their working shows as inequalities. */
export const limitsByTopic: Readonly<Record<string, readonly Limit[]>> = {
	alternator: [most('chargeCurrent', 'chargeLimit')],
	array: [
		most('coldVoltage', 'controllerV'),
		most('series', 'mostInSeries'),
		least('series', 'fewestInSeries'),
	],
	battery: [least('bankCapacity', 'requiredCapacity')],
	beam: [least('deflectionRatio', 'limitRatio'), most('spanM', 'spanLimit')],
	charge: [most('charger', 'chargeLimit')],
	cool: [least('unit', 'heatGain')],
	freeze: [least('pad', 'padPower')],
	fuse: [least('ratedVoltage', 'systemVoltage')],
	heat: [least('heaterOutput', 'heaterNeeded')],
	'hot-water': [most('dayShare', 1), most('timerShare', 1)],
	inverter: [least('device', 'designCurrent')],
	network: [most('worstDropPercent', 'dropLimit')],
	pipe: [least('pressureAtFixture', 'fixtureKPa')],
	restraint: [
		most('shearPerBolt', 'allowedShear'),
		most('tensionPerBolt', 'allowedTension'),
		most('utilisation', 1),
	],
	shore: [most('chargerInput', 'usableCurrent'), most('allTogether', 'supplyLimit')],
	'short-circuit': [least('breakingCapacity', 'prospectiveCurrent')],
	simulate: [least('lowestCharge', 'reserve')],
	solar: [least('energyPerDay', 'needWh'), least('chargePerDay', 'needAh')],
	strut: [least('force', 'forceNeeded')],
	tank: [least('grayL', 'matchingGray')],
	tire: [least('capacity', 'axleLoadKg')],
	vent: [least('intakeM2', 'intakeNeeded')],
};
