import { mkdirSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
	aboutFormat,
	type BookFormat,
	bookFiles,
	bookFormats,
	keepHeapSmall,
	openLog,
	partIn,
	TooManySheets,
} from '@lugbook/chat';
import { Bar } from './bar.js';
import { writeFiles } from './files.js';
import { readSettings } from './settings.js';

const usage = `pnpm export BUILD [--format ${bookFormats.join('|')}] [--out DIR]   the book of a build as a file
options: --shop NAME (local unless said)  --region us|eu  --units us|metric
         --entries FIRST..LAST: the sheets of these answers alone`;

class WrongUse extends Error {}

function readArguments() {
	try {
		return parseArgs({
			allowPositionals: true,
			options: {
				format: { type: 'string', default: 'pdf' },
				out: { type: 'string', default: '.' },
				shop: { type: 'string', default: 'local' },
				region: { type: 'string' },
				units: { type: 'string' },
				entries: { type: 'string' },
				help: { type: 'boolean', default: false },
			},
		});
	} catch (error) {
		throw new WrongUse(error instanceof Error ? error.message : String(error));
	}
}

function oneOf<T extends string>(name: string, value: string, allowed: readonly T[]): T {
	const found = allowed.find((one) => one === value);
	if (found === undefined) throw new WrongUse(`--${name} is "${value}"; it is ${allowed.join(', ')}.`);
	return found;
}

async function main(): Promise<number> {
	const { values, positionals } = readArguments();
	if (values.help) {
		console.log(usage);
		return 0;
	}
	const [build, ...others] = positionals;
	if (build === undefined || others.length > 0) throw new WrongUse('Name one build.');
	const format: BookFormat = oneOf('format', values.format, bookFormats);
	const settings = readSettings(process.env);
	if ('error' in settings) throw new WrongUse(settings.error);
	const region = values.region === undefined ? settings.region : oneOf('region', values.region, ['us', 'eu']);
	const usual = region === 'us' ? 'us' : 'metric';
	const units = values.units === undefined ? usual : oneOf('units', values.units, ['us', 'metric']);
	const part = values.entries === undefined ? null : partIn(values.entries);
	if (values.entries !== undefined && part === null)
		throw new WrongUse(
			`--entries is "${values.entries}"; it is the first and the last number, such as 1..400.`,
		);
	const { shop, out } = values;
	const bar = new Bar(process.stderr, `Book of the build "${build}"`);
	const log = await openLog(settings.databaseUrl, { waiting: console.error });
	try {
		const files = await bookFiles(log, {
			shop,
			build: build.toLowerCase(),
			format,
			part,
			context: { region, units, language: 'en' },
			date: new Date().toISOString().slice(0, 10),
			progress: (share) => bar.show(share),
		});
		if (files === null) {
			console.error(`There is nothing of build "${build}" in the log of shop "${shop}".`);
			return 1;
		}
		mkdirSync(out, { recursive: true });
		const written = await writeFiles(files, out);
		bar.clear();
		for (const { path } of written) console.log(`Written to ${path}`);
		const about = await aboutFormat(format);
		if (about !== null) console.log(about);
		return 0;
	} finally {
		bar.clear();
		await log.close();
	}
}

keepHeapSmall();
try {
	process.exitCode = await main();
} catch (error) {
	const isWrongUse = error instanceof WrongUse;
	console.error(error instanceof Error ? error.message : error);
	if (error instanceof TooManySheets) console.error(`The first: --entries ${error.piece}`);
	if (isWrongUse) console.error(`\n${usage}`);
	process.exitCode = isWrongUse ? 2 : 1;
}
