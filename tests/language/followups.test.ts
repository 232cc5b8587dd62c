import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Chat, openChat, type Reply } from '@lugbook/chat';
import { afterAll, describe, expect, test } from 'vitest';
import { type Chain, chain, eu, type Value } from './chain.js';
import { fahrenheit, ft, gal, inchMm, lb, min, psi } from './corpus/phrasing.js';
import { tiredChains } from './tired-chains.js';

// A question and what people add to it in its thread (common practice; the conversations are our own). After each
// message the inputs must be those from before with just the change, whatever was asked in between.

const chains: readonly Chain[] = [
	// wire
	chain(
		'wire',
		['40A 12V 15 ft', { currentA: 40, voltageV: 12, lengthM: ft(15) }],
		['and at 20 ft?', { lengthM: ft(20) }],
		['make that 24 V', { voltageV: 24 }],
		['10% is fine', { dropLimit: 0.1 }],
		['one size up?', 'about'],
		['why', 'about'],
		['show the working', 'about'],
		['and 60 A?', { currentA: 60 }],
	),
	chain(
		'wire',
		['20A 12V 10ft', { currentA: 20, voltageV: 12, lengthM: ft(10) }],
		['what about 25 feet', { lengthM: ft(25) }],
		['one size down?', 'about'],
	),
	chain(
		'wire',
		['30 amps 24v 5 m', { currentA: 30, voltageV: 24, lengthM: 5 }],
		['what if its 8m', { lengthM: 8 }],
		['in the engine bay', { engineBay: true }],
	),
	chain(
		'wire',
		['fridge 5A 12V 20ft', { currentA: 5, voltageV: 12, lengthM: ft(20), load: 'fridge' }],
		['8 amps instead', { currentA: 8 }],
		['why?', 'about'],
	),
	chain(
		'wire',
		['fridge 5A 12V 20ft', { currentA: 5, voltageV: 12, lengthM: ft(20), load: 'fridge' }],
		['same for the water pump', { load: 'water pump', currentA: null }],
		['8A', { currentA: 8 }],
	),
	chain('wire', ['what wire 25A 12V', { currentA: 25, voltageV: 12 }], ['14', { lengthM: ft(14) }]),
	chain(
		'wire',
		['wire 600W 12V 8ft', { powerW: 600, voltageV: 12, lengthM: ft(8) }],
		['at 24v', { voltageV: 24 }],
		['make it 800W', { powerW: 800 }],
	),
	chain(
		'wire',
		['wire 600W 12V 8ft', { powerW: 600, voltageV: 12, lengthM: ft(8) }],
		['it draws 45A', { currentA: 45, powerW: null }],
	),
	chain(
		'wire',
		['50A 12V 12 ft', { currentA: 50, voltageV: 12, lengthM: ft(12) }],
		['would 6 awg do?', { size: '6 AWG' }],
		['and 4 awg', { size: '4 AWG' }],
	),
	chain(
		'wire',
		['50A 12V 24 ft round trip', { currentA: 50, voltageV: 12, lengthM: ft(12) }],
		['how about 15 ft', { lengthM: ft(15) }],
		['3 wires bundled', { bundled: 3 }],
	),
	chain(
		'wire',
		['15A 120V 30ft', { currentA: 15, voltageV: 120, lengthM: ft(30) }],
		['20A', { currentA: 20 }],
		['why', 'about'],
		['50 ft', { lengthM: ft(50) }],
	),
	chain(
		'wire',
		['40A 12V 15 ft', { currentA: 40, voltageV: 12, lengthM: ft(15) }],
		['drop 5%', { dropLimit: 0.05 }],
		['ok 3% then', { dropLimit: 0.03 }],
	),
	chain(
		'wire',
		['30A AC 25 ft', { currentA: 30, lengthM: ft(25), load: 'air conditioner' }],
		['12 V', { voltageV: 12 }],
		['20 ft', { lengthM: ft(20) }],
	),
	// fuse, short circuit
	chain(
		'fuse',
		['fuse for 10 awg 25A 12v', { size: '10 AWG', currentA: 25, bankV: 12 }],
		['and 8 awg?', { size: '8 AWG' }],
		['30A', { currentA: 30 }],
	),
	chain(
		'fuse',
		['60A fuse on 10 awg ok?', { ratingA: 60, size: '10 AWG' }],
		['on 6 awg?', { size: '6 AWG' }],
		['why', 'about'],
	),
	chain(
		'fuse',
		['what size fuse for 10 awg', { size: '10 AWG' }],
		['20A', { currentA: 20 }],
		['24 v', { bankV: 24 }],
	),
	chain(
		'short-circuit',
		['fault current 300Ah lithium 12v', { unitAh: 300, chemistry: 'lifepo4', bankV: 12 }],
		['with 5 ft of 2/0', { lengthM: ft(5), size: '2/0 AWG' }],
		['400 Ah', { unitAh: 400 }],
	),
	// energy
	chain(
		'battery',
		[
			'battery for 100 Ah a day, 2 days, lithium',
			{ chargePerDayAh: 100, autonomyH: 48, chemistry: 'lifepo4' },
		],
		['what about agm', { chemistry: 'agm' }],
		['3 days', { autonomyH: 72 }],
	),
	chain(
		'battery',
		['battery for 1.5 kWh a day', { energyPerDayWh: 1500 }],
		['24v', { bankV: 24 }],
		['4 days off grid', { autonomyH: 96 }],
		['why', 'about'],
	),
	chain(
		'runtime',
		['200ah agm how long 8A', { unitAh: 200, chemistry: 'agm', loads: [{ currentA: 8 }] }],
		['and 12 A?', { loads: [{ currentA: 12 }] }],
		['300 Ah', { unitAh: 300 }],
		['lithium instead', { chemistry: 'lifepo4' }],
	),
	chain(
		'runtime',
		[
			'how long will 100ah lithium run a 45w fridge',
			{ unitAh: 100, chemistry: 'lifepo4', loads: [{ powerW: 45 }] },
		],
		['and a fan 20w', { loads: [{ powerW: 45 }, { powerW: 20 }] }],
		['down to 20%', { toSoc: 0.2 }],
	),
	chain(
		'runtime',
		['how long will 100ah last', { unitAh: 100 }],
		['60W', { loads: [{ powerW: 60 }] }],
		['200ah', { unitAh: 200 }],
	),
	chain(
		'solar',
		['solar 600w moab april', { panelW: 600, place: 'Moab', month: 4 }],
		['june?', { month: 6 }],
		['in Denver', { place: 'Denver' }],
	),
	chain(
		'solar',
		['400W in Tucson december', { panelW: 400, place: 'Tucson', month: 12 }],
		['tilted 30 degrees south', { tiltDeg: 30, facing: 'south' }],
		['and march', { month: 3 }],
	),
	chain(
		'solar',
		['how much solar from 400w in july', { panelW: 400, month: 7 }],
		['Phoenix', { place: 'Phoenix' }],
		['800 w', { panelW: 800 }],
	),
	chain(
		'array',
		[
			'2 panels 200W in series voc 24V in Boise',
			{ panels: 2, panelW: 200, joined: 'series', vocV: 24, place: 'Boise' },
		],
		['3 panels', { panels: 3 }],
		['in parallel', { joined: 'parallel' }],
	),
	chain(
		'alternator',
		['30A dc-dc on a 150A alternator ok?', { chargerA: 30, alternatorA: 150, link: 'converter' }],
		['50A charger', { chargerA: 50 }],
		['220A alternator', { alternatorA: 220 }],
	),
	chain(
		'alternator',
		[
			'how many hours driving 40A dcdc from 30% to 90% 200ah',
			{ chargerA: 40, fromSoc: 0.3, toSoc: 0.9, unitAh: 200, link: 'converter' },
		],
		['from 50%', { fromSoc: 0.5 }],
		['300 ah', { unitAh: 300 }],
	),
	chain(
		'shore',
		['15a outlet charger 60A, microwave 1500w', { outletA: 15, chargerA: 60, loads: [{}, { powerW: 1500 }] }],
		['20a outlet', { outletA: 20 }],
		['charger 30A', { chargerA: 30 }],
	),
	chain(
		'inverter',
		['inverter for a 1500w induction 12v', { loads: [{ powerW: 1500 }], bankV: 12 }],
		['at 24 V', { bankV: 24 }],
		['and a blender 800w', { loads: [{ powerW: 1500 }, { powerW: 800 }] }],
	),
	chain(
		'simulate',
		[
			'simulate 200Ah 400W solar Denver june 1 kWh a day',
			{ unitAh: 200, panelW: 400, place: 'Denver', month: 6, needWh: 1000 },
		],
		['december', { month: 12 }],
		['600W solar', { panelW: 600 }],
	),
	// water
	chain(
		'tank',
		['30 gal fresh, 20 gal gray, 2 people', { freshL: gal(30), grayL: gal(20), people: 2 }],
		['3 people instead', { people: 3 }],
		['what about 40 gal gray', { grayL: gal(40) }],
		['no showers', { showers: false }],
	),
	chain(
		'tank',
		['fresh 100 L 2 people', { freshL: 100, people: 2 }],
		['4 minute showers', { showerH: min(4) }],
		['150 L', { freshL: 150 }],
	),
	chain(
		'tank',
		['how many days of water for 2 people', { people: 2 }],
		['25', { freshL: gal(25) }],
		['and 4 people', { people: 4 }],
	),
	chain(
		'pipe',
		[
			'2 gpm through 20 ft of 1/2 pex, 45 psi pump',
			{ flowLMin: gal(2), lengthM: ft(20), pipe: '1/2 pex', pumpKPa: psi(45) },
		],
		['3 gpm', { flowLMin: gal(3) }],
		['30 ft', { lengthM: ft(30) }],
		['4 elbows', { elbows: 4 }],
	),
	chain(
		'accumulator',
		['accumulator 1 L on at 30 psi off at 50 psi', { volumeL: 1, cutInKPa: psi(30), cutOutKPa: psi(50) }],
		['2 L', { volumeL: 2 }],
		['precharge 28 psi', { prechargeKPa: psi(28) }],
	),
	chain(
		'hot-water',
		['hot water 6 gal 1440W', { volumeL: gal(6), powerW: 1440 }],
		['4 gal', { volumeL: gal(4) }],
		['to 120F', { hotC: fahrenheit(120) }],
	),
	chain(
		'drain',
		['drain 30 gal through a 1.5 in valve', { volumeL: gal(30), valveMm: inchMm(1.5) }],
		['2 in valve', { valveMm: inchMm(2) }],
		['40 gal', { volumeL: gal(40) }],
	),
	chain(
		'freeze',
		['will a 30 gal tank freeze at 10 F', { volumeL: gal(30), outsideC: fahrenheit(10), what: 'tank' }],
		['at 0 F?', { outsideC: fahrenheit(0) }],
		['with 2 in of foam', { insulationMm: inchMm(2) }],
	),
	// climate
	chain(
		'heat',
		[
			'heater for a long high roof van at 0 F, 1 in foam board',
			{ wheelbase: 'long', roof: 'high', outsideC: fahrenheit(0), insulationMm: inchMm(1), material: 'xps' },
		],
		['2 in foam', { insulationMm: inchMm(2) }],
		['at -20 F?', { outsideC: fahrenheit(-20) }],
		['why', 'about'],
	),
	chain(
		'heat',
		['heater for my van at 0F', { outsideC: fahrenheit(0) }],
		['medium wheelbase', { wheelbase: 'medium' }],
		['10F', { outsideC: fahrenheit(10) }],
	),
	chain(
		'cool',
		['aircon for a black lwb van at 100F', { paint: 'black', wheelbase: 'long', outsideC: fahrenheit(100) }],
		['white', { paint: 'white' }],
		['2 people', { people: 2 }],
		['110 F', { outsideC: fahrenheit(110) }],
	),
	chain(
		'moisture',
		['condensation 2 people 20F outside', { people: 2, outsideC: fahrenheit(20) }],
		['4 people', { people: 4 }],
		['at 40F', { outsideC: fahrenheit(40) }],
	),
	chain(
		'vent',
		['air changes 300 cfm fan medium wheelbase', { airM3H: 509.703, wheelbase: 'medium' }],
		['600 cfm', { airM3H: 1019.406 }],
		['long wheelbase', { wheelbase: 'long' }],
	),
	// weight and structure
	chain(
		'payload',
		[
			'payload long wheelbase gvwr 9350 lb, bed 200 lb in the back',
			{ wheelbase: 'long', gvwrKg: lb(9350), items: [{ massKg: lb(200), zone: 'back' }] },
		],
		['3 people', { people: 3 }],
		['gvwr 11000 lb', { gvwrKg: lb(11000) }],
	),
	chain(
		'tire',
		['load index 115 rear axle 5100 lb', { loadIndex: 115, axleLoadKg: lb(5100) }],
		['load index 121', { loadIndex: 121 }],
		['4800 lb', { axleLoadKg: lb(4800) }],
	),
	chain(
		'restraint',
		[
			'bolts for a 55 lb battery 9 in tall, 12 in along 7 in across',
			{ massKg: lb(55), heightM: 0.2286, alongM: 0.3048, acrossM: 0.1778, item: 'battery' },
		],
		['M8', { boltSize: 'M8' }],
		['80 lb', { massKg: lb(80) }],
	),
	chain(
		'beam',
		[
			'bed rail 40x40x2 span 1.2 m, 120 kg spread',
			{ section: '40x40x2', spanM: 1.2, loads: [{ massKg: 120, spread: 'true' }], moving: false },
		],
		['span 1.5 m', { spanM: 1.5 }],
		['steel', { material: 'steel' }],
	),
	chain(
		'strut',
		['gas strut lid 20 kg 1 m long, on the lid 0.3 m', { massKg: 20, lidLengthM: 1, lidMountM: 0.3 }],
		['25 kg', { massKg: 25 }],
		['opens 80 degrees', { openingDeg: 80 }],
	),
	chain(
		'inflate',
		[
			'air up 4 tires 62 L from 25 psi to 65 psi, pump 72 L/min',
			{ tires: 4, volumeL: 62, fromKpa: psi(25), toKpa: psi(65), pumpFlowLMin: 72 },
		],
		['from 35 psi', { fromKpa: psi(35) }],
		['pump 160 L/min', { pumpFlowLMin: 160 }],
	),
	// Spanish and German
	eu(
		'wire',
		['qué cable 25A 12V', { currentA: 25, voltageV: 12 }],
		['5 m', { lengthM: 5 }],
		['y con 40 A?', { currentA: 40 }],
		['por qué', 'about'],
	),
	eu(
		'wire',
		['cable 30A 12V 4 metros', { currentA: 30, voltageV: 12, lengthM: 4 }],
		['qué tal 6 m', { lengthM: 6 }],
		['y a 24 V', { voltageV: 24 }],
	),
	eu(
		'tank',
		['agua limpia 100 l 3 personas', { freshL: 100, people: 3 }],
		['grises 80 l', { grayL: 80 }],
		['4 personas', { people: 4 }],
	),
	eu(
		'battery',
		[
			'batería para 100 Ah al día, 3 días, litio',
			{ chargePerDayAh: 100, autonomyH: 72, chemistry: 'lifepo4' },
		],
		['2 días', { autonomyH: 48 }],
		['80 Ah al día', { chargePerDayAh: 80 }],
	),
	eu(
		'heat',
		['calefacción furgoneta larga -10 C', { wheelbase: 'long', outsideC: -10 }],
		['a -20 C', { outsideC: -20 }],
		['40 mm de aislamiento', { insulationMm: 40 }],
	),
	eu(
		'wire',
		['welches kabel 25A 12V 4m', { currentA: 25, voltageV: 12, lengthM: 4 }],
		['und bei 6 m?', { lengthM: 6 }],
		['warum', 'about'],
		['rechenweg', 'about'],
	),
	eu(
		'runtime',
		['wie lange hält 100Ah agm mit 5A', { unitAh: 100, chemistry: 'agm', loads: [{ currentA: 5 }] }],
		['und mit 8 A', { loads: [{ currentA: 8 }] }],
		['200 Ah', { unitAh: 200 }],
	),
	eu(
		'heat',
		[
			'standheizung langer radstand -10 C 20 mm dämmung',
			{ wheelbase: 'long', outsideC: -10, insulationMm: 20 },
		],
		['40 mm dämmung', { insulationMm: 40 }],
		['bei -20 C', { outsideC: -20 }],
	),
	eu(
		'tank',
		['frischwasser 90 L 2 personen', { freshL: 90, people: 2 }],
		['3 personen', { people: 3 }],
		['grauwasser 60 L', { grayL: 60 }],
	),
	eu(
		'solar',
		['solarertrag 400W Berlin dezember', { panelW: 400, place: 'Berlin', month: 12 }],
		['juni?', { month: 6 }],
		['600 W', { panelW: 600 }],
	),
	eu(
		'wire',
		['35mm2 100A 12V 2 m ok?', { size: '35 mm²', currentA: 100, voltageV: 12, lengthM: 2 }],
		['50 mm2?', { size: '50 mm²' }],
		['3 m', { lengthM: 3 }],
	),
	// a value that has no place is left out by its button
	chain(
		'wire',
		['40A 12V 15 ft 3 kg', { currentA: 40, voltageV: 12, lengthM: ft(15) }],
		['leave it out', {}],
		['20 ft', { lengthM: ft(20) }],
	),
];

const folder = mkdtempSync(join(tmpdir(), 'followups-'));
let chat: Chat | null = null;
let opened = '';
async function chatOn(file: string): Promise<Chat> {
	if (chat !== null && opened === file) return chat;
	await chat?.close();
	chat = await openChat({ databaseUrl: `sqlite:${join(folder, file)}`, region: 'us' });
	opened = file;
	return chat;
}
async function restart(): Promise<void> {
	await chat?.close();
	chat = null;
}
afterAll(async () => {
	await restart();
	rmSync(folder, { recursive: true, force: true });
});

let deliveries = 0;
async function say(file: string, thread: string, text: string, region: 'us' | 'eu'): Promise<Reply> {
	const here = await chatOn(file);
	deliveries += 1;
	return here.handle({
		platform: 'test',
		shop: 's',
		channel: `c-${region}`,
		thread,
		delivery: `d${deliveries}`,
		person: { id: 'u', name: 'u', lead: false },
		command: 'ask',
		text,
		region,
	});
}

/** What may be read beside: names that the words carry either way. */
const beside = new Set([
	'supply',
	'motor',
	'what',
	'load',
	'item',
	'household',
	'fuel',
	'isRating',
	'lid',
	'shape',
]);

function differences(state: ReadonlyMap<string, Value>, { answer }: Reply): string[] {
	const understood = new Map(answer.understood.map(({ name, value }) => [name, value]));
	const found: string[] = [];
	for (const [name, value] of state) {
		const now = understood.get(name);
		if (!same(value, now)) found.push(`${name} is ${JSON.stringify(now)}, meant ${JSON.stringify(value)}`);
	}
	for (const [name, value] of understood) {
		if (!state.has(name) && !beside.has(name)) found.push(`${name}=${JSON.stringify(value)} was never said`);
	}
	return found;
}

function same(meant: Value, now: unknown): boolean {
	if (typeof meant === 'number')
		return typeof now === 'number' && Math.abs(now - meant) <= 1e-3 * Math.max(1, Math.abs(meant));
	if (typeof meant === 'object') {
		return (
			Array.isArray(now) &&
			now.length === meant.length &&
			meant.every((item, index) =>
				Object.entries(item).every(([name, value]) =>
					value === 'true' ? now[index][name] === true : same(value, now[index][name]),
				),
			)
		);
	}
	return typeof meant === 'string' && typeof now === 'string'
		? now.toLowerCase() === meant.toLowerCase()
		: now === meant;
}

async function run(one: Chain, file: string, thread: string, reopen: boolean): Promise<string[]> {
	const state = new Map<string, Value>();
	const wrong: string[] = [];
	for (const [text, changes] of one.steps) {
		if (reopen) await restart();
		const reply = await say(file, thread, text, one.region ?? 'us');
		const { answer } = reply;
		if (answer.topic !== one.topic) wrong.push(`"${text}": topic is ${answer.topic} (${answer.headline})`);
		if (changes === 'about') {
			if (answer.status !== 'listed') wrong.push(`"${text}": ${answer.status}, not about the answer before`);
			continue;
		}
		for (const [name, value] of Object.entries(changes)) {
			if (value === null) state.delete(name);
			else state.set(name, value);
		}
		wrong.push(...differences(state, reply).map((difference) => `"${text}": ${difference}`));
	}
	return wrong;
}

const all = [...chains, ...tiredChains];

describe('follow-ups in a thread', () => {
	test('there are nearly a hundred conversations', () => {
		expect(all.length).toBeGreaterThanOrEqual(94);
	});

	test.each(all.map((one, index) => [`${one.steps[0]?.[0]}, ${index + 1}`, one, index] as const))(
		'%s',
		async (_, one, index) => {
			expect(await run(one, 'open.sqlite', `t${index}`, false)).toEqual([]);
		},
	);

	test('go on after a restart on the same log', async () => {
		const wrong: string[] = [];
		for (const [index, one] of all.entries())
			wrong.push(...(await run(one, 'reopened.sqlite', `r${index}`, true)));
		expect(wrong).toEqual([]);
	});

	test('conversations of one channel that take turns do not mix', async () => {
		const two = chains.slice(0, 8);
		const longest = Math.max(...two.map(({ steps }) => steps.length));
		const states = two.map(() => new Map<string, Value>());
		for (let at = 0; at < longest; at += 1) {
			for (const [index, { steps, region }] of two.entries()) {
				const step = steps[at];
				if (step === undefined || step[1] === 'about') continue;
				for (const [name, value] of Object.entries(step[1])) {
					if (value === null) states[index]?.delete(name);
					else states[index]?.set(name, value);
				}
				const reply = await say('open.sqlite', `m${index}`, step[0], region ?? 'us');
				expect(differences(states[index] as Map<string, Value>, reply)).toEqual([]);
			}
		}
	});
});
