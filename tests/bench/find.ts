/**
 * Finding among many entries, on both databases: full text and pages by cursor. The entries come in as an export whose
 * chain is computed here, so `verify` would pass; `LUGBOOK_FIND_ENTRIES=1000000 pnpm bench finding` tries the million.
 */

import { createHash, createHmac } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type FindOptions, type Log, openLog } from '@lugbook/log';
import pg from 'pg';
import { Cluster } from '../log/postgres.js';
import { type Bench, leastTimes, ownCpuMs } from './bench.js';

const ENTRIES = Number(process.env.LUGBOOK_FIND_ENTRIES ?? 20_000);
const SHOP = 'bench';
const TOPICS = ['wire', 'fuse', 'battery', 'solar', 'tank', 'axle', 'heat', 'inverter', 'shore', 'beam'];
const THINGS = ['fridge', 'pump', 'roof fan', 'heater', 'lights', 'inverter', 'outlet', 'compressor'];
const PEOPLE = 20;
const BUILDS = 50;
const START_MS = Date.UTC(2024, 0, 1);

type Flat = Readonly<Record<string, unknown>>;

/** RFC 8785 for what is written here: plain objects, whose keys are sorted. */
function canonical(value: unknown): string {
	if (typeof value !== 'object' || value === null) return JSON.stringify(value);
	const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonical(member)}`).join(',')}}`;
}

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

/** The last of them asks once in twenty thousand times. */
const people = Array.from({ length: PEOPLE + 1 }, (_, at) => {
	const id = `U${at}`;
	const tagSalt = sha256(`key ${at}`);
	const tag = createHmac('sha256', tagSalt)
		.update(JSON.stringify([SHOP, id]))
		.digest('hex')
		.slice(0, 32);
	return { id, name: `Person ${at}`, tagSalt, tag };
});

/** Entry `number`: words that all have, that some have, and one that it has alone. */
function fieldsOf(number: number): { chained: Flat; erasable: Flat } {
	const person = people[number % 20_011 === 5 ? PEOPLE : number % PEOPLE] as (typeof people)[number];
	const topic = TOPICS[number % TOPICS.length] as string;
	const thing = THINGS[number % THINGS.length] as string;
	const salt = sha256(`salt ${number}`);
	const words = [
		`${topic} for the ${thing}, ${number % 97} A at 12 V over ${number % 41} ft, job ${wordOf(number)}`,
		number % 9 === 4 ? 'Kühlschrankleitung verlängert' : '',
		number % 9 === 7 ? 'batería de la nevera' : '',
		number <= ENTRIES / 20 ? 'osprey' : '',
	];
	const text = words.join(' ').trim();
	const part = { personId: person.id, personName: person.name, text, salt };
	const chained = {
		...{ shop: SHOP, number, kind: 'exchange', delivery: `d${number}`, platform: 'terminal' },
		...{ channel: `c${number % 7}`, thread: null, build: `van ${number % BUILDS}`, topic },
		...{ at: new Date(START_MS + number * 60_000).toISOString(), follows: null, replaces: null },
		...{ state: number % 11 === 0 ? 'needs-input' : 'answered', personTag: person.tag },
		commitment: sha256(canonical(part)),
		body: {
			version: '1',
			answer: {
				status: 'answered',
				headline: `${number % 20} AWG copper, ${number % 90} A fuse`,
				because: 'x'.repeat(300),
			},
		},
	};
	return { chained, erasable: { ...part, tagSalt: person.tagSalt } };
}

/** A word of letters that one entry alone has. */
function wordOf(number: number): string {
	return `q${[...String(number)].map((digit) => 'abcdefghij'[Number(digit)]).join('')}q`;
}

/** The lines of an export, each with the hash of the one before. */
function* lines(): Generator<string> {
	let previousHash = '0'.repeat(64);
	// The header names the last hash, so a first walk through the chain finds it.
	for (let number = 1; number <= ENTRIES; number += 1) {
		previousHash = sha256(canonical({ ...fieldsOf(number).chained, format: 1, previousHash }));
	}
	yield canonical({ format: 'lugbook-log-1', shop: SHOP, head: { number: ENTRIES, hash: previousHash } });
	previousHash = '0'.repeat(64);
	for (let number = 1; number <= ENTRIES; number += 1) {
		const { chained, erasable } = fieldsOf(number);
		const hash = sha256(canonical({ ...chained, format: 1, previousHash }));
		const { shop: _, ...fields } = chained;
		yield JSON.stringify({ ...fields, previousHash, hash, erasable });
		previousHash = hash;
	}
}

const middle = Math.ceil(ENTRIES / 2);
const answers = { kinds: ['exchange'], states: ['answered'], limit: 8 } as const satisfies FindOptions;
const day = (offset: number) => new Date(START_MS + middle * 60_000 + offset * 86_400_000).toISOString();

const searches: Readonly<Record<string, FindOptions>> = {
	'a word of one entry': { words: wordOf(middle) },
	'a word of none': { words: 'zzzz' },
	'a word of every tenth': { words: 'battery' },
	'a word of all': { words: 'job' },
	'two common words': { words: 'fridge wire' },
	'the beginning of a word': { words: 'compr' },
	'the beginning of every third word': { words: 'in' },
	'words and a build': { words: 'pump', build: 'van 9' },
	'words and a person': { words: 'battery', personId: 'U2' },
	'words and a day': { words: 'fuse', from: day(0), to: day(1) },
	'a rare word and a state': { words: wordOf(11), states: ['needs-input'] },
	'words together that none has': { words: 'battery wire' },
	'a common word that the build has not': { words: 'fridge', build: 'van 1' },
	'a common word that the person has not': { words: 'battery', personId: 'U1' },
	'beginnings together that none has': { words: 'batt wir' },
	'six common words that the person has not': { words: 'awg copper job v battery fu', personId: 'U1' },
	'twelve words that none has': { words: 'awg copper a v over ft for the wire fridge battery job' },
	'a common word in a channel that has none': { words: 'job', channel: 'c99' },
	'words together that none has, in a rare state': { words: 'battery wire', states: ['needs-input'] },
	'words together that none has, a year': { words: 'battery wire', from: day(-200), to: day(100) },
	'words together that none has, oldest first': { words: 'battery wire', order: 'oldest' },
	'words together that none has, deep': { words: 'battery wire', cursor: `newest:${middle}` },
	'a word, a build and days': { words: 'pump', build: 'van 9', from: day(0), to: day(3) },
	'a word that the build has not, and days': {
		words: 'fridge',
		build: 'van 1',
		from: day(-200),
		to: day(100),
	},
	'a word of the last page': { words: 'battery', cursor: 'newest:50' },
	'a word of the oldest twentieth alone': { words: 'osprey' },
	'words and somebody who seldom asks': { words: 'job', personId: `U${PEOPLE}` },
	'a German word by its beginning': { words: 'KÜHLSCHR' },
	'a German and a Spanish word that never meet': { words: 'kühlschrankleitung batería' },
};
const pages: Readonly<Record<string, FindOptions>> = {
	'newest of the shop': {},
	'in the middle of the shop': { cursor: `newest:${middle}` },
	'last of the shop': { cursor: 'newest:9' },
	'newest of a build': { build: 'van 7' },
	'in the middle of a topic': { topic: 'solar', cursor: `newest:${middle}` },
	'a person on a day': { personId: 'U3', from: day(0), to: day(1) },
	'a topic of a build last year': { topic: 'fuse', build: 'van 1', to: day(-100) },
	'in the middle of a channel': { channel: 'c3', cursor: `newest:${middle}` },
	'somebody who seldom asks': { personId: `U${PEOPLE}` },
	'a person who was never on the build': { personId: 'U3', build: 'van 4' },
	'a topic that the build has not': { topic: 'solar', build: 'van 1' },
	'a channel in which nobody has asked': { channel: 'c99' },
	'what follows any of many': { follows: Array.from({ length: 100 }, (_, at) => 1 + at * 7) },
	'signatures of the shop': { kinds: ['signed'], states: undefined },
	'a state that none of the build has': { states: ['rejected'], build: 'van 1' },
};

/**
 * @param settle what the database does by itself after a while
 * @param cpuMs processor time of everybody who works on a search [ms]
 */
async function measured(
	url: string,
	{ settle, cpuMs }: { settle: () => Promise<unknown>; cpuMs: () => number },
): Promise<string> {
	const log = await openLog(url, { searchable: ['answer', 'headline'] });
	try {
		const [startMs, startCpuMs] = [performance.now(), cpuMs()];
		await log.import(lines());
		await settle();
		const seconds = (performance.now() - startMs) / 1000;
		const cpuSeconds = (cpuMs() - startCpuMs) / 1000;
		const figures = [
			`${ENTRIES} entries taken in within ${seconds.toFixed(0)} s (${cpuSeconds.toFixed(0)} s of a processor)`,
		];
		figures.push(await slowest('full text', log, searches, cpuMs));
		figures.push(await slowest('page by cursor', log, pages, cpuMs));
		return figures.join('; ');
	} finally {
		await log.close();
	}
}

/** The slowest of several questions, each the least of seven runs; the others stand behind it. */
async function slowest(
	what: string,
	log: Log,
	questions: Readonly<Record<string, FindOptions>>,
	cpuMs: () => number,
): Promise<string> {
	const times: { name: string; wallMs: number; cpuMs: number; count: number }[] = [];
	for (const [name, options] of Object.entries(questions)) {
		let count = 0;
		const least = await leastTimes(async () => {
			count = (await log.find(SHOP, { ...answers, ...options })).entries.length;
		}, cpuMs);
		times.push({ name, ...least, count });
	}
	times.sort((a, b) => b.cpuMs - a.cpuMs);
	const figure = (one: { wallMs: number; cpuMs: number }) =>
		`${one.wallMs.toFixed(1)} ms (processor ${one.cpuMs.toFixed(1)} ms)`;
	const list = times.map((one) => `${one.name} ${figure(one)}, ${one.count} found`).join('; ');
	const most = {
		wallMs: Math.max(...times.map(({ wallMs }) => wallMs)),
		cpuMs: Math.max(...times.map((one) => one.cpuMs)),
	};
	return `${what} at most ${figure(most)}: ${list}`;
}

/** Processor time of a server and of this process [ms]. */
function cpuMsWith(cluster: Cluster): number {
	const serverPid = readFileSync(join(cluster.folder, 'data', 'postmaster.pid'), 'utf8').split('\n')[0];
	const workers = readFileSync(`/proc/${serverPid}/task/${serverPid}/children`, 'utf8').trim().split(' ');
	const serverMs = workers.map((pid) => {
		try {
			return Number(readFileSync(`/proc/${pid}/schedstat`, 'utf8').split(' ')[0]) / 1e6;
		} catch {
			// Gone since it was listed.
			return 0;
		}
	});
	return ownCpuMs() + serverMs.reduce((sum, ms) => sum + ms, 0);
}

/** The server gathers its statistics within a minute of many changes. */
async function analyzed(url: string): Promise<void> {
	const client = new pg.Client(url);
	await client.connect();
	await client.query('analyze');
	await client.end();
}

export const benches: readonly Bench[] = [
	{
		name: `finding among ${ENTRIES} entries on SQLite`,
		target: 'full text and page under 50 ms',
		run: async () => {
			const folder = await mkdtemp(join(tmpdir(), 'lugbook-find-'));
			try {
				return await measured(`sqlite:${join(folder, 'log.db')}`, {
					settle: async () => undefined,
					cpuMs: ownCpuMs,
				});
			} finally {
				await rm(folder, { recursive: true });
			}
		},
	},
	{
		name: `finding among ${ENTRIES} entries on PostgreSQL`,
		target: 'full text and page under 50 ms',
		run: async () => {
			const cluster = await Cluster.start();
			try {
				const url = await cluster.freshDatabase();
				return await measured(url, { settle: () => analyzed(url), cpuMs: () => cpuMsWith(cluster) });
			} finally {
				await cluster.remove();
			}
		},
	},
];
