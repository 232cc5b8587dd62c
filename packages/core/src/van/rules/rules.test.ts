import { describe, expect, test } from 'vitest';
import type { Context, Region } from '../../topic/context.js';
import { checkVan } from '../check.js';
import type { Values } from '../equipment/declare.js';
import { equipment } from '../equipment/index.js';
import { changed, emptyVan, freeId, settled, type Van } from '../van.js';
import { vanRules } from './index.js';

type Told = readonly (string | readonly [kind: string, values: Values])[];

/** A van from kinds with their values; "!kind" is said not to be there. */
function van(...told: Told): Van {
	return told.reduce<Van>((so, one) => {
		if (typeof one === 'string' && one.startsWith('!')) {
			return changed(so, [{ change: 'absent', kind: one.slice(1) }]);
		}
		const [kind, values] = typeof one === 'string' ? [one, {}] : one;
		const fields = settled(kind, values, us).values;
		return changed(so, [{ change: 'add', id: freeId(so, kind), kind, values: { ...fields } }]);
	}, emptyVan);
}

const us: Context = { region: 'us', units: 'us', language: 'en' };

const lithium = { unitAh: 200, bankV: 12, chemistry: 'lifepo4', protectionA: 200 };
const bank: [string, Values] = ['battery', lithium];
const inverter: [string, Values] = ['inverter', { ratedW: 2000 }];
const propane: [string, Values] = ['propane', { contentKg: 5, place: 'locker' }];
const stove: [string, Values] = ['cooktop', { fuel: 'gas' }];
const induction: [string, Values] = ['cooktop', { fuel: 'induction', powerW: 1800 }];
const diesel: [string, Values] = ['heater', { fuel: 'diesel', outputW: 2000 }];
const bozeman: [string, Values] = ['place', { place: 'Bozeman, MT' }];
const winter: [string, Values] = ['trip', { season: 'winter' }];
const two: [string, Values] = ['people', { people: 2 }];
const longVan = { wheelbase: 'long', roof: 'high' };

interface Case {
	/** vans in which it must be found, with the severity */
	readonly found: readonly (readonly ['danger' | 'warning' | 'note', Told])[];
	/** vans of which it has nothing to say */
	readonly fine: readonly Told[];
	/** what is not told, and the fact that is listed as not known; null where such a van is none of its concern */
	readonly silent: readonly [Told, string | null];
	readonly region?: Region;
}

const cases: Readonly<Record<string, Case>> = {
	'carbon-monoxide-alarm-missing': {
		found: [
			['danger', [diesel, '!co-alarm']],
			['danger', [stove, '!co-alarm']],
			['danger', [['water-heater', { fuel: 'propane' }], '!co-alarm']],
			['danger', ['generator', '!co-alarm']],
		],
		fine: [
			[diesel, 'co-alarm'],
			[induction, ['heater', { fuel: 'electric' }], '!co-alarm'],
		],
		silent: [[diesel], 'co-alarm'],
	},
	'gas-alarm-missing': {
		found: [
			['danger', [propane, '!gas-alarm']],
			['danger', [stove, '!gas-alarm', 'co-alarm']],
		],
		fine: [
			[propane, 'gas-alarm'],
			[propane, '!gas-alarm', ['co-alarm', { combined: true }]],
			[diesel, '!gas-alarm'],
		],
		silent: [[propane], 'gas-alarm'],
	},
	'gas-bottle-inside': {
		found: [
			['danger', [['propane', { place: 'inside' }]]],
			['danger', [['propane', { sealed: false }]]],
		],
		fine: [[propane], [['propane', { place: 'outside' }]], [['propane', { place: 'inside', sealed: true }]]],
		silent: [[['propane', { contentKg: 5 }]], 'propane.place'],
	},
	'unvented-heater': {
		found: [['danger', [['heater', { fuel: 'propane', unvented: true }]]]],
		fine: [[diesel], [['heater', { fuel: 'propane', unvented: false }]], [['heater', { fuel: 'electric' }]]],
		silent: [[['heater', { fuel: 'propane' }]], 'heater.unvented'],
	},
	'cooking-without-ventilation': {
		found: [['warning', [stove, '!fan']]],
		fine: [
			[stove, ['fan', { extracts: true }]],
			[stove, '!fan', 'windows'],
			[induction, '!fan'],
		],
		silent: [[stove], 'fan'],
	},
	'smoke-alarm-missing': {
		found: [['warning', ['bed', '!smoke-alarm']]],
		fine: [
			['bed', 'smoke-alarm'],
			['bed', '!smoke-alarm', ['co-alarm', { smoke: true }]],
		],
		silent: [['bed'], 'smoke-alarm'],
	},
	'fire-extinguisher-missing': {
		found: [['warning', ['bed', '!extinguisher']]],
		fine: [['bed', 'extinguisher']],
		silent: [['bed'], 'extinguisher'],
	},
	'main-fuse-missing': {
		found: [['danger', [bank, '!main-fuse']]],
		fine: [[bank, 'main-fuse'], [['battery', { ...lithium, fuseA: 200 }], '!main-fuse'], ['!main-fuse']],
		silent: [[bank], 'main-fuse'],
	},
	'main-fuse-cannot-break': {
		found: [
			['danger', [bank, ['main-fuse', { fuseClass: 'strip', ratingA: 250 }]]],
			['danger', [bank, ['main-fuse', { fuseClass: 'blade', ratingA: 100 }]]],
			[
				'danger',
				[
					['battery', { unitAh: 100, bankV: 48 }],
					['main-fuse', { fuseClass: 'strip', ratingA: 100 }],
				],
			],
			['danger', [bank, ['main-fuse', { fuseClass: 'household', ratingA: 100 }]]],
			[
				'warning',
				[
					['battery', { unitAh: 100, chemistry: 'agm' }],
					['main-fuse', { fuseClass: 'strip', ratingA: 100 }],
				],
			],
			[
				'note',
				[
					['battery', { ...lithium, unitCount: 4 }],
					['main-fuse', { fuseClass: 'classT', ratingA: 300 }],
				],
			],
		],
		fine: [
			[bank, ['main-fuse', { fuseClass: 'classT', ratingA: 250 }]],
			[bank, ['main-fuse', { fuseClass: 'strip', ratingA: 250, breaksA: 20_000 }]],
		],
		silent: [[bank, ['main-fuse', { ratingA: 250 }]], 'main-fuse.fuseClass'],
	},
	'main-fuse-under-inverter': {
		found: [['warning', [bank, inverter, ['main-fuse', { ratingA: 150, fuseClass: 'classT' }]]]],
		fine: [[bank, inverter, ['main-fuse', { ratingA: 300, fuseClass: 'classT' }]]],
		silent: [[bank, inverter, ['main-fuse', { fuseClass: 'classT' }]], null],
	},
	'protection-not-named': {
		found: [['warning', [bank, inverter]]],
		fine: [[bank, ['inverter', { ratedW: 2000, fuseA: 250 }]]],
		silent: [[bank], null],
	},
	'loads-on-no-circuit': {
		found: [
			['warning', ['fridge']],
			['danger', ['fridge', '!fuse-block']],
		],
		fine: [['fridge', 'fuse-block'], [['fridge', { fuseA: 10 }], '!fuse-block'], ['kettle']],
		silent: [[bank], null],
	},
	'conductor-overloaded': {
		found: [
			['danger', [bank, ['inverter', { ratedW: 2000, wireSize: '4 AWG' }]]],
			['danger', [['dcdc', { chargeA: 60, wireSize: '12 AWG' }]]],
			['warning', [bank, ['inverter', { ratedW: 3000, wireSize: '4/0 AWG' }]]],
		],
		fine: [[['dcdc', { chargeA: 40, wireSize: '6 AWG' }]], [['fridge', { powerW: 60, wireSize: '14 AWG' }]]],
		silent: [[['fridge', { wireSize: '14 AWG' }]], null],
	},
	'drop-too-large': {
		found: [['warning', [['fridge', { powerW: 60, wireSize: '16 AWG', runM: 6 }]]]],
		fine: [[['fridge', { powerW: 60, wireSize: '10 AWG', runM: 6 }]]],
		silent: [[['fridge', { powerW: 60, wireSize: '16 AWG' }]], null],
	},
	'fuse-over-conductor': {
		found: [['danger', [['heater', { fuel: 'diesel', wireSize: '16 AWG', fuseA: 30 }]]]],
		fine: [[['heater', { fuel: 'diesel', wireSize: '12 AWG', fuseA: 15 }]]],
		silent: [[['heater', { fuel: 'diesel', fuseA: 30 }]], null],
	},
	'fuse-under-load': {
		found: [
			['warning', [['water-pump', { currentA: 10, fuseA: 7.5 }]]],
			['note', [['fridge', { currentA: 9, fuseA: 10 }]]],
		],
		fine: [[['water-pump', { currentA: 7, fuseA: 10 }]]],
		silent: [[['water-pump', { fuseA: 7.5 }]], null],
	},
	'mains-without-residual-current': {
		found: [
			['danger', ['shore-inlet', '!gfci']],
			['danger', [inverter, '!gfci']],
		],
		fine: [
			['shore-inlet', 'gfci'],
			[bank, '!gfci'],
		],
		silent: [['shore-inlet'], 'gfci'],
	},
	'mains-without-breakers': {
		found: [['danger', [['shore-inlet', { ratingA: 30 }], '!mains-panel']]],
		fine: [
			['shore-inlet', 'mains-panel'],
			[['shore-inlet', { ratingA: 30, fuseA: 30 }], '!mains-panel'],
		],
		silent: [['shore-inlet'], 'mains-panel'],
	},
	'no-disconnect': {
		found: [['warning', [bank, '!disconnect']]],
		fine: [[bank, 'disconnect'], ['!disconnect']],
		silent: [[bank], 'disconnect'],
	},
	'bank-cannot-be-built': {
		found: [['warning', [['battery', { unitAh: 100, unitCount: 3, unitV: 12, bankV: 24 }]]]],
		fine: [[bank], [['battery', { unitAh: 100, unitCount: 4, unitV: 12, bankV: 24 }]]],
		silent: [[['battery', { bankV: 12 }]], 'battery.unitAh'],
	},
	'charge-over-limit': {
		found: [
			[
				'danger',
				[
					['battery', { ...lithium, chargeLimitA: 80 }],
					['charger', { chargeA: 100 }],
				],
			],
			[
				'warning',
				[
					['battery', { ...lithium, chargeLimitA: 80 }],
					['charger', { chargeA: 60 }],
					['dcdc', { chargeA: 40 }],
				],
			],
			['warning', [bank, ['charger', { chargeA: 120 }]]],
		],
		fine: [
			[
				['battery', { ...lithium, chargeLimitA: 100 }],
				['charger', { chargeA: 40 }],
				['dcdc', { chargeA: 40 }],
			],
			[['charger', { chargeA: 100 }]],
		],
		silent: [[['battery', { ...lithium, chargeLimitA: 80 }], 'charger'], 'charger.chargeA'],
	},
	'lithium-charge-below-freezing': {
		found: [
			['danger', [['battery', { ...lithium, coldCutOff: false }], bozeman]],
			['danger', [['battery', { ...lithium, heated: false }], winter]],
		],
		fine: [
			[['battery', { ...lithium, coldCutOff: true }], bozeman],
			[['battery', { ...lithium, heated: true }], bozeman],
			[
				['battery', { ...lithium, coldCutOff: false }],
				['place', { lowC: 5 }],
			],
			[['battery', { unitAh: 100, chemistry: 'agm', coldCutOff: false }], bozeman],
		],
		silent: [[bank, bozeman], 'battery.coldCutOff'],
	},
	'alternator-without-isolation': {
		found: [
			['danger', [bank, ['alternator', { link: 'direct' }]]],
			[
				'warning',
				[
					['battery', { unitAh: 100, chemistry: 'agm' }],
					['alternator', { link: 'direct' }],
				],
			],
		],
		fine: [
			[bank, ['alternator', { link: 'direct' }], 'dcdc'],
			[bank, 'alternator'],
		],
		silent: [[bank, 'alternator'], null],
	},
	'relay-to-lithium': {
		found: [['danger', [bank, 'isolator']]],
		fine: [
			[['battery', { unitAh: 100, chemistry: 'agm' }], 'isolator'],
			[bank, 'isolator', 'dcdc'],
		],
		silent: [[bank], null],
	},
	'dcdc-over-alternator': {
		found: [
			['danger', [bank, ['alternator', { ratingA: 120 }], ['dcdc', { chargeA: 80 }]]],
			['warning', [bank, ['alternator', { ratingA: 150 }], ['dcdc', { chargeA: 60 }]]],
			['note', [bank, ['alternator', { ratingA: 180 }], ['dcdc', { chargeA: 40 }]]],
			[
				'danger',
				[
					['battery', { unitAh: 100, bankV: 24 }],
					['alternator', { ratingA: 150 }],
					['dcdc', { chargeA: 50 }],
				],
			],
		],
		fine: [[bank, ['alternator', { ratingA: 220 }], ['dcdc', { chargeA: 30 }]]],
		silent: [[bank, ['dcdc', { chargeA: 40 }]], 'alternator.ratingA'],
	},
	'lead-acid-unvented': {
		found: [
			['danger', [['battery', { unitAh: 100, chemistry: 'flooded', vented: false }]]],
			['warning', [['battery', { unitAh: 100, chemistry: 'agm', vented: false }]]],
		],
		fine: [
			[['battery', { unitAh: 100, chemistry: 'flooded', vented: true }]],
			[['battery', { ...lithium, vented: false }]],
		],
		silent: [[['battery', { unitAh: 100, chemistry: 'flooded' }]], 'battery.vented'],
	},
	'no-charging-source': {
		found: [['warning', [bank, '!charger', '!dcdc', '!solar']]],
		fine: [
			[bank, 'charger'],
			[bank, ['solar', { panelW: 100 }]],
		],
		silent: [[bank], 'charger'],
	},
	'solar-alone-in-winter': {
		found: [['warning', [bank, winter, ['solar', { panelW: 200 }], '!dcdc', '!charger']]],
		fine: [
			[bank, winter, ['solar', { panelW: 200 }], ['dcdc', { chargeA: 30 }]],
			[bank, ['solar', { panelW: 200 }], '!dcdc'],
		],
		silent: [[bank, winter, ['solar', { panelW: 200 }]], 'dcdc'],
	},
	'inverter-over-protection': {
		found: [
			['danger', [['battery', { ...lithium, protectionA: 100 }], inverter]],
			['warning', [bank, inverter]],
			['warning', [['battery', { unitAh: 100, chemistry: 'agm' }], inverter]],
		],
		fine: [
			[['battery', { ...lithium, unitCount: 2 }], inverter],
			[['battery', { ...lithium, bankV: 24 }], inverter],
		],
		silent: [[['battery', { unitAh: 300 }], inverter], 'battery.protectionA'],
	},
	'inverter-surge-over-protection': {
		found: [
			['note', [bank, ['inverter', { ratedW: 2000 }], ['air-conditioner', { powerW: 1000, voltageV: 120 }]]],
			[
				'warning',
				[
					['battery', { ...lithium, protectionA: 100 }],
					inverter,
					['air-conditioner', { powerW: 1000, voltageV: 120 }],
				],
			],
		],
		fine: [[bank, inverter, ['kettle', { powerW: 1200 }]]],
		silent: [[['battery', { unitAh: 200 }], inverter, 'air-conditioner'], null],
	},
	'load-over-inverter': {
		found: [
			[
				'warning',
				[
					['inverter', { ratedW: 1000 }],
					['kettle', { powerW: 1500 }],
				],
			],
		],
		fine: [
			[inverter, ['kettle', { powerW: 1500 }]],
			[['inverter', { ratedW: 1000 }], 'fridge'],
		],
		silent: [['inverter', ['kettle', { powerW: 1500 }]], null],
	},
	'loads-over-inverter-together': {
		found: [['warning', [inverter, induction, ['kettle', { powerW: 1500 }]]]],
		fine: [
			[['inverter', { ratedW: 5000 }], induction, ['kettle', { powerW: 1500 }]],
			[inverter, induction],
		],
		silent: [['inverter', induction, 'kettle'], null],
	},
	'mains-load-without-source': {
		found: [['warning', ['kettle', '!inverter']]],
		fine: [
			['kettle', 'inverter'],
			['fridge', '!inverter'],
			['kettle', 'shore-inlet', '!inverter'],
		],
		silent: [['kettle'], 'inverter'],
	},
	'inverter-idle': {
		found: [
			['warning', [bank, ['inverter', { ratedW: 2000, alwaysOn: true, idleW: 20 }]]],
			['note', [bank, ['inverter', { ratedW: 2000, idleW: 20 }]]],
		],
		fine: [
			[
				['battery', { ...lithium, unitCount: 4 }],
				['inverter', { ratedW: 2000, idleW: 20 }],
			],
			[bank, ['inverter', { ratedW: 2000, alwaysOn: false }]],
		],
		silent: [[['inverter', { ratedW: 2000, idleW: 20 }]], null],
	},
	'inverter-voltage-low': {
		found: [['note', [bank, ['inverter', { ratedW: 3000 }]]]],
		fine: [
			[bank, inverter],
			[
				['battery', { unitAh: 100, bankV: 24 }],
				['inverter', { ratedW: 3000 }],
			],
		],
		silent: [[bank, 'inverter'], 'inverter.ratedW'],
	},
	'inverter-enclosed': {
		found: [['warning', [['inverter', { ratedW: 2000, enclosed: true }]]]],
		fine: [[inverter]],
		silent: [[inverter], null],
	},
	'two-neutral-bonds': {
		found: [
			['danger', [['neutral-bond', { inPanel: true, inInverter: true }]]],
			['danger', [['neutral-bond', { inPanel: true }], 'shore-inlet']],
		],
		fine: [
			[['neutral-bond', { inInverter: true }], 'shore-inlet', inverter],
			[['neutral-bond', { inPanel: true, inInverter: true, switched: true }]],
		],
		silent: [['shore-inlet', inverter], 'neutral-bond'],
	},
	'string-over-controller': {
		found: [
			[
				'danger',
				[
					['solar', { panelW: 200, count: 4, wiring: 'series', vocV: 24.3 }],
					['solar-controller', { controllerV: 100 }],
					bozeman,
				],
			],
			[
				'warning',
				[
					['solar', { panelW: 200, count: 4, wiring: 'series' }],
					['solar-controller', { controllerV: 60 }],
					bozeman,
				],
			],
		],
		fine: [
			[
				['solar', { panelW: 200, count: 4, series: 2, vocV: 24.3 }],
				['solar-controller', { controllerV: 100 }],
				bozeman,
			],
		],
		silent: [
			[['solar', { panelW: 200, count: 4, vocV: 24.3 }], ['solar-controller', { controllerV: 100 }], bozeman],
			'solar.series',
		],
	},
	'controller-overloaded': {
		found: [
			[
				'danger',
				[
					['solar', { panelW: 100, count: 4, wiring: 'parallel' }],
					['solar-controller', { type: 'pwm', controllerA: 10 }],
				],
			],
		],
		fine: [
			[
				['solar', { panelW: 100 }],
				['solar-controller', { type: 'pwm', controllerA: 30 }],
			],
		],
		silent: [
			[
				['solar', { panelW: 100, count: 4 }],
				['solar-controller', { type: 'pwm' }],
			],
			null,
		],
	},
	'controller-limits': {
		found: [
			[
				'note',
				[
					['solar', { panelW: 200, count: 4, wiring: 'parallel' }],
					['solar-controller', { type: 'mppt', controllerA: 30 }],
				],
			],
		],
		fine: [
			[
				['solar', { panelW: 200 }],
				['solar-controller', { type: 'mppt', controllerA: 30 }],
			],
		],
		silent: [
			[
				['solar', { panelW: 200, count: 4 }],
				['solar-controller', { type: 'mppt' }],
			],
			null,
		],
	},
	'pwm-wastes': {
		found: [
			[
				'warning',
				[
					['solar', { panelW: 200, count: 2, wiring: 'series' }],
					['solar-controller', { type: 'pwm', controllerA: 30 }],
				],
			],
		],
		fine: [
			[
				['solar', { panelW: 200, count: 2, wiring: 'series' }],
				['solar-controller', { type: 'mppt', controllerA: 30 }],
			],
		],
		silent: [[['solar', { panelW: 200 }]], null],
	},
	'string-fuses-needed': {
		found: [
			[
				'warning',
				[
					['solar', { panelW: 100, count: 4, wiring: 'parallel' }],
					['solar-controller', { type: 'mppt', controllerA: 30 }],
				],
			],
		],
		fine: [
			[
				['solar', { panelW: 100, count: 2, wiring: 'parallel' }],
				['solar-controller', { type: 'mppt', controllerA: 30 }],
			],
			[
				['solar', { panelW: 100, count: 4, wiring: 'parallel', fuseA: 15 }],
				['solar-controller', { type: 'mppt', controllerA: 30 }],
			],
		],
		silent: [
			[
				['solar', { panelW: 100, count: 4 }],
				['solar-controller', { type: 'mppt', controllerA: 30 }],
			],
			null,
		],
	},
	'solar-without-controller': {
		found: [['danger', [['solar', { panelW: 100 }], '!solar-controller']]],
		fine: [[['solar', { panelW: 100 }], 'solar-controller'], ['!solar-controller']],
		silent: [[['solar', { panelW: 100 }]], 'solar-controller.controllerV'],
	},
	'solar-below-budget': {
		found: [
			['warning', [bozeman, winter, ['solar', { panelW: 200 }], ['fridge', { powerW: 60 }], diesel]],
			['note', [bozeman, winter, ['solar', { panelW: 200 }], ['fridge', { powerW: 60 }], diesel, 'dcdc']],
		],
		fine: [
			[
				['place', { place: 'Phoenix, AZ', month: 6 }],
				['solar', { panelW: 200, count: 2 }],
				['fridge', { powerW: 40 }],
			],
		],
		silent: [[['solar', { panelW: 200 }], 'fridge'], 'place.place'],
	},
	'panels-larger-than-roof': {
		found: [
			[
				'warning',
				[
					['van', { wheelbase: 'short', roof: 'low' }],
					['solar', { panelW: 200, count: 6 }],
				],
			],
		],
		fine: [
			[
				['van', { wheelbase: 'extra-long', roof: 'high' }],
				['solar', { panelW: 200, count: 2 }],
			],
			[
				['van', { wheelbase: 'short' }],
				['solar', { panelW: 200, count: 6, portable: true }],
			],
		],
		silent: [[['solar', { panelW: 200, count: 6 }]], null],
	},
	'controller-below-bank': {
		found: [
			[
				'warning',
				[
					['battery', { unitAh: 100, bankV: 48 }],
					['solar', { panelW: 200, count: 2, wiring: 'series' }],
					'solar-controller',
				],
			],
		],
		fine: [
			[
				['battery', { unitAh: 100, bankV: 24 }],
				['solar', { panelW: 200, count: 4, wiring: 'series' }],
				'solar-controller',
			],
			[bank, ['solar', { panelW: 200 }]],
		],
		silent: [
			[
				['battery', { unitAh: 100, bankV: 48 }],
				['solar', { panelW: 200, count: 2 }],
			],
			null,
		],
	},
	'shore-loads-over-supply': {
		found: [
			[
				'warning',
				[['shore-inlet', { ratingA: 15 }], induction, ['water-heater', { fuel: 'electric', powerW: 1440 }]],
			],
		],
		fine: [
			[
				['shore-inlet', { ratingA: 30 }],
				['kettle', { powerW: 1200 }],
			],
		],
		silent: [['shore-inlet', induction], 'shore-inlet.ratingA'],
	},
	'inlet-on-household-adapter': {
		found: [
			['warning', [['shore-inlet', { ratingA: 30, outletA: 15 }]]],
			['warning', [['shore-inlet', { ratingA: 30, household: true }]]],
		],
		fine: [[['shore-inlet', { ratingA: 30 }]], [['shore-inlet', { ratingA: 30, outletA: 30 }]]],
		silent: [['shore-inlet'], null],
	},
	'cord-below-supply': {
		found: [['danger', [['shore-inlet', { ratingA: 30, cordA: 15 }]]]],
		fine: [[['shore-inlet', { ratingA: 30, cordA: 30 }]]],
		silent: [[['shore-inlet', { ratingA: 30 }]], null],
	},
	'generator-too-small': {
		found: [
			[
				'warning',
				[
					['generator', { powerW: 2000 }],
					['air-conditioner', { powerW: 1500, voltageV: 120 }],
				],
			],
		],
		fine: [
			[
				['generator', { powerW: 2000 }],
				['microwave', { powerW: 1000 }],
			],
		],
		silent: [['generator', 'air-conditioner'], 'generator.powerW'],
	},
	'generator-neutral': {
		found: [
			[
				'danger',
				[
					['generator', { neutralBonded: true }],
					['neutral-bond', { inPanel: true }],
				],
			],
		],
		fine: [
			[
				['generator', { neutralBonded: false }],
				['neutral-bond', { inPanel: true }],
			],
		],
		silent: [['generator', ['neutral-bond', { inPanel: true }]], null],
	},
	'bank-below-budget': {
		found: [
			[
				'warning',
				[
					['battery', { unitAh: 50 }],
					'fridge',
					['appliance', { name: 'laptop' }],
					'lights',
					inverter,
					induction,
				],
			],
		],
		fine: [[['battery', { unitAh: 400 }], 'fridge', 'lights']],
		silent: [['battery', 'fridge'], 'battery.unitAh'],
	},
	'autonomy-short': {
		found: [
			[
				'warning',
				[['battery', { unitAh: 100 }], ['fridge', { powerW: 60 }], 'lights', ['trip', { offGridH: 120 }]],
			],
		],
		fine: [
			[
				['battery', { unitAh: 400 }],
				['fridge', { powerW: 40 }],
				['trip', { offGridH: 48 }],
			],
		],
		silent: [
			[['battery', { unitAh: 100 }], 'fridge', ['solar', { panelW: 200 }], ['trip', { offGridH: 120 }]],
			'place.place',
		],
	},
	'winter-night-drains-bank': {
		found: [
			[
				'warning',
				[['battery', { unitAh: 60 }], diesel, ['heating-pad', { powerW: 75, count: 2 }], 'fridge', bozeman],
			],
			['note', [['battery', { unitAh: 100 }], diesel, ['heating-pad', { powerW: 20 }], 'fridge', bozeman]],
		],
		fine: [
			[['battery', { unitAh: 400 }], diesel, bozeman],
			[
				['battery', { unitAh: 60 }],
				['heating-pad', { powerW: 150 }],
				['trip', { season: 'summer' }],
			],
		],
		silent: [['battery', diesel], null],
	},
	'water-heater-left-on': {
		found: [
			[
				'warning',
				[
					['battery', { unitAh: 100 }],
					inverter,
					['water-heater', { fuel: 'electric', volumeL: 15, leftOn: true }],
				],
			],
		],
		fine: [
			[
				['battery', { unitAh: 100 }],
				inverter,
				['water-heater', { fuel: 'electric', volumeL: 15, leftOn: false }],
			],
			[
				['battery', { unitAh: 100 }],
				inverter,
				['water-heater', { fuel: 'electric', volumeL: 15, onBank: 'mains' }],
			],
			[['battery', { unitAh: 100 }], inverter, ['water-heater', { fuel: 'diesel', volumeL: 15 }]],
		],
		silent: [[bank, inverter, ['water-heater', { volumeL: 15 }]], 'water-heater.fuel'],
	},
	'air-conditioner-on-bank': {
		found: [
			['warning', [bank, ['air-conditioner', { powerW: 1200, voltageV: 120 }], inverter]],
			[
				'note',
				[
					['battery', { unitAh: 600 }],
					['air-conditioner', { powerW: 500, voltageV: 12 }],
				],
			],
		],
		fine: [[bank, ['air-conditioner', { powerW: 1200, voltageV: 120 }]]],
		silent: [['battery', 'air-conditioner', inverter], null],
	},
	'electric-heat-on-bank': {
		found: [['warning', [bank, inverter, ['heater', { fuel: 'electric', outputW: 1500 }]]]],
		fine: [
			[bank, inverter, diesel],
			[bank, ['heater', { fuel: 'electric', outputW: 1500 }]],
		],
		silent: [['battery', inverter, ['heater', { fuel: 'electric', outputW: 1500 }]], null],
	},
	'everything-on-over-protection': {
		found: [
			[
				'note',
				[bank, inverter, ['fridge', { powerW: 60 }], ['air-conditioner', { powerW: 400, voltageV: 12 }]],
			],
		],
		fine: [[['battery', { ...lithium, unitCount: 2 }], inverter, 'fridge']],
		silent: [[['battery', { unitAh: 200 }], inverter, 'fridge'], null],
	},
	'gray-smaller-than-fresh': {
		found: [
			[
				'warning',
				[
					['fresh-tank', { volumeL: 100 }],
					['gray-tank', { volumeL: 40 }],
				],
			],
			['warning', [['fresh-tank', { volumeL: 100 }], '!gray-tank']],
		],
		fine: [
			[
				['fresh-tank', { volumeL: 100 }],
				['gray-tank', { volumeL: 100 }],
			],
		],
		silent: [[['fresh-tank', { volumeL: 100 }]], 'gray-tank'],
	},
	'water-days-short': {
		found: [
			[
				'warning',
				[['fresh-tank', { volumeL: 80 }], ['gray-tank', { volumeL: 80 }], two, ['trip', { offGridH: 240 }]],
			],
		],
		fine: [
			[['fresh-tank', { volumeL: 200 }], ['gray-tank', { volumeL: 200 }], two, ['trip', { offGridH: 24 }]],
		],
		silent: [
			[
				['fresh-tank', { volumeL: 80 }],
				['trip', { offGridH: 240 }],
			],
			'people',
		],
	},
	'tank-freezes': {
		found: [['warning', [['fresh-tank', { volumeL: 80, outside: true }], bozeman]]],
		fine: [
			[['fresh-tank', { volumeL: 80, outside: false }], bozeman],
			[['fresh-tank', { volumeL: 80, outside: true }], 'heating-pad', bozeman],
			[
				['fresh-tank', { volumeL: 80, outside: true }],
				['trip', { season: 'summer' }],
			],
		],
		silent: [[['fresh-tank', { volumeL: 80 }], bozeman], 'fresh-tank.outside'],
	},
	'heating-pad-too-small': {
		found: [
			['warning', [['fresh-tank', { volumeL: 80, outside: true }], ['heating-pad', { powerW: 20 }], bozeman]],
		],
		fine: [
			[
				['fresh-tank', { volumeL: 80, outside: true }],
				['heating-pad', { powerW: 600 }],
				['place', { lowC: -1 }],
			],
			[['fresh-tank', { volumeL: 80, outside: false }], ['heating-pad', { powerW: 20 }], bozeman],
		],
		silent: [[['fresh-tank', { volumeL: 80, outside: true }], 'heating-pad', bozeman], null],
	},
	scald: {
		found: [['danger', [['water-heater', { fuel: 'electric', mixer: false }]]]],
		fine: [[['water-heater', { mixer: true }]], [['water-heater', { mixer: false, hotC: 45 }]]],
		silent: [['water-heater'], 'water-heater.mixer'],
	},
	'heater-too-small': {
		found: [
			[
				'warning',
				[
					['heater', { fuel: 'diesel', outputW: 1000 }],
					['van', longVan],
					['insulation', { insulationMm: 25 }],
					bozeman,
				],
			],
		],
		fine: [
			[
				['heater', { fuel: 'diesel', outputW: 8000 }],
				['van', longVan],
				['insulation', { insulationMm: 25 }],
				bozeman,
			],
		],
		silent: [[diesel, bozeman, 'insulation'], 'van.wheelbase'],
	},
	'no-heat-in-winter': {
		found: [['warning', [winter, '!heater']]],
		fine: [
			[winter, diesel],
			[['trip', { season: 'summer' }], '!heater'],
		],
		silent: [[winter], 'heater'],
	},
	'no-insulation-in-winter': {
		found: [['warning', [winter, '!insulation']]],
		fine: [
			[winter, 'insulation'],
			[['trip', { season: 'summer' }], '!insulation'],
		],
		silent: [[winter], null],
	},
	condensation: {
		found: [
			['warning', [two, ['insulation', { insulationMm: 25 }], stove, bozeman, '!fan']],
			['note', [two, ['insulation', { insulationMm: 25 }], stove, bozeman, ['fan', { extracts: true }]]],
		],
		fine: [
			[two, 'insulation', ['place', { lowC: 15 }], '!fan'],
			[two, 'insulation', ['trip', { season: 'summer' }], '!fan'],
		],
		silent: [[two, bozeman], 'insulation'],
	},
	'air-conditioner-too-small': {
		found: [
			[
				'warning',
				[
					['air-conditioner', { coolingW: 600 }],
					['van', longVan],
					['place', { place: 'Phoenix, AZ' }],
				],
			],
		],
		fine: [
			[
				['air-conditioner', { coolingW: 8000 }],
				['van', longVan],
				['place', { place: 'Phoenix, AZ' }],
			],
		],
		silent: [
			[
				['air-conditioner', { coolingW: 600 }],
				['van', longVan],
			],
			'place.place',
		],
	},
	'single-glass-in-winter': {
		found: [['note', [winter, ['windows', { windowKind: 'single' }]]]],
		fine: [
			[winter, ['windows', { windowKind: 'single', covers: true }]],
			[winter, ['windows', { windowKind: 'double' }]],
		],
		silent: [[winter, 'windows'], null],
	},
	'gvwr-exceeded': {
		found: [
			[
				'danger',
				[
					['van', { gvwrKg: 3500, emptyKg: 3200 }],
					['people', { people: 4 }],
					['fresh-tank', { volumeL: 100 }],
				],
			],
			['danger', [['van', { gvwrKg: 3500, builtKg: 3600 }]]],
			[
				'warning',
				[
					['van', { gvwrKg: 3500, emptyKg: 3150 }],
					two,
					'furniture',
					'bed',
					['battery', { unitAh: 300 }],
					'awning',
				],
			],
			['note', [['van', { gvwrKg: 3500, builtKg: 3250 }], two]],
		],
		fine: [[['van', { gvwrKg: 3500, emptyKg: 2100 }], two, 'bed']],
		silent: [[['van', { gvwrKg: 3500 }], two], 'van.emptyKg'],
	},
	'rear-axle-overloaded': {
		found: [
			[
				'danger',
				[
					[
						'van',
						{
							...longVan,
							gvwrKg: 4500,
							rearRatingKg: 2000,
							frontRatingKg: 2100,
							frontEmptyKg: 1400,
							rearEmptyKg: 1500,
						},
					],
					['cargo', { name: 'motorcycle', massKg: 500, zone: 'door' }],
				],
			],
			[
				'warning',
				[
					['van', { ...longVan, gvwrKg: 4500, rearRatingKg: 1400, frontRatingKg: 2100, emptyKg: 2600 }],
					'bed',
					'furniture',
					['cargo', { name: 'motorcycle' }],
				],
			],
		],
		fine: [
			[['van', { ...longVan, gvwrKg: 4500, rearRatingKg: 2500, frontRatingKg: 2100, emptyKg: 2100 }], 'bed'],
		],
		silent: [[['van', longVan], 'bed'], 'van.rearRatingKg'],
	},
	'front-axle-overloaded': {
		found: [
			[
				'danger',
				[
					[
						'van',
						{
							...longVan,
							gvwrKg: 4500,
							rearRatingKg: 2400,
							frontRatingKg: 1500,
							frontEmptyKg: 1480,
							rearEmptyKg: 1200,
						},
					],
					['furniture', { massKg: 300, zone: 'front' }],
				],
			],
			[
				'warning',
				[
					['van', { ...longVan, gvwrKg: 4500, rearRatingKg: 2400, frontRatingKg: 1250, emptyKg: 2200 }],
					diesel,
				],
			],
		],
		fine: [
			[['van', { ...longVan, gvwrKg: 4500, rearRatingKg: 2500, frontRatingKg: 2100, emptyKg: 2100 }], 'bed'],
		],
		silent: [[['van', longVan], 'bed'], 'van.frontRatingKg'],
	},
	'roof-overloaded': {
		found: [
			[
				'danger',
				[
					['roof-rack', { massKg: 60, limitKg: 100 }],
					['solar', { panelW: 200, count: 4, massKg: 15 }],
				],
			],
			[
				'warning',
				[
					'roof-rack',
					['solar', { panelW: 200, count: 6 }],
					'air-conditioner',
					['cargo', { name: 'roof box', massKg: 40, onRoof: true }],
				],
			],
		],
		fine: [
			[['solar', { panelW: 200 }]],
			[
				['roof-rack', { massKg: 30, limitKg: 150 }],
				['solar', { panelW: 200, count: 2 }],
			],
		],
		silent: [['fridge'], null],
	},
	'lift-without-stability': {
		found: [
			[
				'warning',
				[
					['lift', { liftM: 0.05 }],
					['van', longVan],
				],
			],
		],
		fine: [[['lift', { liftM: 0.05, checked: true }]]],
		silent: [[['van', longVan]], null],
	},
	'tires-overloaded': {
		found: [
			[
				'danger',
				[
					['tires', { loadIndex: 104 }],
					['van', { rearRatingKg: 2400 }],
				],
			],
		],
		fine: [
			[
				['tires', { loadIndex: 121 }],
				['van', { rearRatingKg: 2400 }],
			],
		],
		silent: [[['tires', { loadIndex: 104 }]], null],
	},
	'tank-behind-axle': {
		found: [['note', [['fresh-tank', { volumeL: 100, zone: 'back' }]]]],
		fine: [
			[['fresh-tank', { volumeL: 100, zone: 'middle' }]],
			[['fresh-tank', { volumeL: 30, zone: 'back' }]],
		],
		silent: [[['fresh-tank', { volumeL: 100 }]], null],
	},
};

test('every rule has its cases, and there are at least forty', () => {
	expect(vanRules.length).toBeGreaterThanOrEqual(40);
	expect(Object.keys(cases).toSorted()).toEqual(vanRules.map(({ id }) => id).toSorted());
	expect(new Set(vanRules.map(({ id }) => id)).size).toBe(vanRules.length);
});

test('every kind that can clear a rule is declared', () => {
	const kinds = equipment.map(({ kind }) => kind);
	expect(vanRules.flatMap(({ clearedBy }) => clearedBy).filter((kind) => !kinds.includes(kind))).toEqual([]);
	expect(new Set(kinds).size).toBe(kinds.length);
});

describe.each(Object.entries(cases))('%s', (id, one) => {
	const context: Context = one.region === 'eu' ? { region: 'eu', units: 'metric', language: 'en' } : us;
	const check = (told: Told) => checkVan(van(...told), context);
	const of = (told: Told) => check(told).findings.filter(({ code }) => code === id);

	test.each(one.found)('%s: found', (severity, told) => {
		const findings = of(told);
		expect(findings.map((finding) => finding.severity)).toContain(severity);
		for (const finding of findings) {
			expect(finding.text.length).toBeGreaterThan(30);
			expect(finding.rests.length).toBeGreaterThan(0);
		}
	});

	test.each(one.fine.map((told) => [told] as const))('nothing to say', (told) => {
		expect(of(told)).toEqual([]);
	});

	test('silent where its needs are missing', () => {
		const [told, fact] = one.silent;
		expect(of(told)).toEqual([]);
		const waiting = check(told).notKnown.filter(({ rules }) => rules.includes(id));
		if (fact === null) return;
		expect(waiting.map((known) => known.fact)).toContain(fact);
		expect(waiting.every(({ question }) => question.endsWith('?'))).toBe(true);
	});
});

describe('no equipment hides a danger but what clears it', () => {
	const dangers = Object.entries(cases).flatMap(([id, { found }]) =>
		found.filter(([severity]) => severity === 'danger').map(([, told]) => [id, told] as const),
	);

	test.each(dangers)('%s', (id, told) => {
		const clearedBy = vanRules.find((rule) => rule.id === id)?.clearedBy ?? [];
		const before = van(...told);
		for (const { kind, single } of equipment) {
			if (clearedBy.includes(kind) || (single && before.pieces.some((piece) => piece.kind === kind)))
				continue;
			const added = changed(before, [{ change: 'add', id: freeId(before, kind), kind, values: {} }]);
			const codes = checkVan(added, us).findings.map(({ code }) => code);
			expect({ kind, isFound: codes.includes(id) }).toEqual({ kind, isFound: true });
		}
	});

	test.each(dangers)('%s is cleared by something', (id, told) => {
		const clearedBy = vanRules.find((rule) => rule.id === id)?.clearedBy ?? [];
		if (clearedBy.length === 0) return;
		const before = van(...told);
		// Something whose mere presence clears: an alarm, not a bank whose figures would have to change.
		const isAlarm = clearedBy.every((kind) => !equipment.find((one) => one.kind === kind)?.single);
		const after = clearedBy.reduce(
			(so, kind) => changed(so, [{ change: 'add', id: freeId(so, kind), kind, values: {} }]),
			before,
		);
		const isStill = checkVan(after, us).findings.some(
			({ code, severity }) => code === id && severity === 'danger',
		);
		if (isAlarm) expect(isStill).toBe(false);
	});
});
