import { createReadStream, existsSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { copyLog, importLog, openLog, recompute, restoreLog, sheetFile } from '@lugbook/chat';
import { writeWhole } from './files.js';
import { readSettings } from './settings.js';

const usage = `pnpm log verify                       walks every shop's chain and names the first bad entry
pnpm log root                         number of entries, last hash and Merkle root of every shop, to be kept elsewhere
pnpm log proof NUMBER [FILE]          proves by the Merkle tree that an answer is in the log
pnpm log recompute                    every logged answer again with today's code: the same, or what differs
pnpm log sheet NUMBER FILE            one answer's calculation sheet, FILE.html or FILE.pdf
pnpm log export FILE [--no-names]     everything of a shop, a line of JSON an entry
pnpm log import FILE                  takes an export in, each entry checked; --shop NAME: under another name
pnpm log backup FILE                  copies the SQLite log while bots write
pnpm log restore FILE                 brings what a backup has into the log that DATABASE_URL names
pnpm log move URL                     carries the log to another database, its chains intact
--shop NAME: which shop (local unless said; with verify, root and recompute all of them)`;

/** What was asked for can't be asked for so. */
class WrongUse extends Error {}

type Log = Awaited<ReturnType<typeof openLog>>;

interface Asked {
	readonly log: Log;
	/** null where none was named */
	readonly shop: string | null;
	readonly names: boolean;
	/** what stands behind the command */
	readonly rest: readonly string[];
}

async function verify({ log, shop }: Asked): Promise<number> {
	const report = await log.verify(shop ?? undefined);
	for (const one of report.shops) {
		console.log(
			`${one.shop}: ${one.problem === null ? `unbroken, ${one.entries} entries` : one.problem.message}`,
		);
	}
	if (report.damage !== null) console.log(`The database file itself is damaged: ${report.damage}`);
	if (report.shops.length === 0) console.log('The log has no entries yet.');
	return report.ok ? 0 : 1;
}

async function root({ log, shop }: Asked): Promise<number> {
	const shops = shop === null ? await log.shops() : [shop];
	for (const one of shops) {
		const head = await log.head(one);
		if (head === null) {
			console.error(`Shop "${one}" has no entries.`);
			return 1;
		}
		const tree = await log.tree(one, head.number);
		console.log(`${one}: head ${head.number}:${head.hash} root ${tree.root}`);
	}
	if (shops.length === 0) console.log('The log has no entries yet.');
	return 0;
}

async function proof({ log, shop, rest: [number, file] }: Asked): Promise<number> {
	const text = `${JSON.stringify(await log.inclusion(shop ?? 'local', numberIn(number)), null, 1)}\n`;
	if (file === undefined) console.log(text.trimEnd());
	else {
		writeNew(file, text);
		console.log(`${file} is written.`);
	}
	return 0;
}

async function recomputeAll({ log, shop }: Asked): Promise<number> {
	let count = 0;
	let differing = 0;
	for (const one of shop === null ? await log.shops() : [shop]) {
		for await (const { number, version, differences } of recompute(log, one)) {
			count += 1;
			if (differences.length === 0) continue;
			differing += 1;
			console.log(`${one} No. ${number} (worked out by version ${version}):`);
			for (const difference of differences) console.log(`  ${difference}`);
		}
	}
	console.log(
		differing === 0
			? `${count} answers worked out again: all the same.`
			: `${count} answers worked out again: ${differing} differ.`,
	);
	return differing === 0 ? 0 : 1;
}

async function sheet({ log, shop, rest: [number, file = ''] }: Asked): Promise<number> {
	const format = /\.(html|pdf)$/.exec(file)?.[1];
	if (format !== 'html' && format !== 'pdf')
		throw new WrongUse(`"${file}" ends neither in .html nor in .pdf.`);
	const bytes = await sheetFile(log, shop ?? 'local', numberIn(number), format);
	if (bytes === null) {
		console.error(`There is no answer No. ${number} of shop "${shop ?? 'local'}".`);
		return 1;
	}
	writeFileSync(file, bytes);
	console.log(`${file} is written.`);
	return 0;
}

async function exportAll({ log, shop, names, rest: [file] }: Asked): Promise<number> {
	const path = fileIn(file);
	const lines = log.export(shop ?? 'local', { persons: names });
	await writeWhole(path, withEnds(lines));
	console.log(
		`${path} is written.${names ? ' It holds names and texts as typed: keep it as the log itself.' : ''}`,
	);
	return 0;
}

async function* withEnds(lines: AsyncIterable<string>): AsyncGenerator<string> {
	for await (const line of lines) yield `${line}\n`;
}

async function importAll({ log, shop, rest: [file] }: Asked): Promise<number> {
	const path = existing(file);
	const open = () =>
		createInterface({ input: createReadStream(path, 'utf8'), crlfDelay: Number.POSITIVE_INFINITY });
	const result = await importLog(log, open, shop);
	const report = await log.verify(result.shop);
	console.log(
		`Shop "${result.shop}": ${result.written} entries taken in, ${result.present} were there already.`,
	);
	console.log(report.ok ? 'Its chain verifies.' : (report.problem?.message ?? 'It does not verify.'));
	console.log(
		'Settings (leads, who is none any more, digest) do not come along in an export: see docs/keeping.md.',
	);
	return report.ok ? 0 : 1;
}

async function backup({ log, rest: [file] }: Asked): Promise<number> {
	const path = fileIn(file);
	await log.backup(path);
	console.log(`The log is copied to ${path}.`);
	return 0;
}

async function restore({ log, rest: [file] }: Asked): Promise<number> {
	const source = await openLog(`sqlite:${existing(file)}`, { waiting: console.error });
	try {
		const checked = await source.verify();
		if (!checked.ok) {
			console.error(
				`The backup does not verify, nothing is brought in: ${checked.problem?.message ?? checked.damage}`,
			);
			return 1;
		}
		return await told(await restoreLog(source, log), log);
	} finally {
		await source.close();
	}
}

async function move({ log, rest: [to = ''] }: Asked): Promise<number> {
	const target = await openLog(to, { waiting: console.error });
	try {
		const { shops } = await copyLog(log, target);
		return await told(shops, target);
	} finally {
		await target.close();
	}
}

/** Says what was brought in, and whether the log is right with it. */
async function told(
	shops: readonly { readonly shop: string; readonly written: number; readonly present: number }[],
	log: Log,
): Promise<number> {
	for (const { shop, written, present } of shops) {
		console.log(`${shop}: ${written} entries brought in, ${present} were there already.`);
	}
	const report = await log.verify();
	console.log(
		report.ok
			? 'Every shop is carried over and its chain verifies.'
			: (report.problem?.message ?? 'The copy does not verify.'),
	);
	return report.ok ? 0 : 1;
}

function numberIn(text: string | undefined): number {
	if (text === undefined || !/^[1-9]\d{0,8}$/.test(text)) {
		throw new WrongUse(`"${text ?? ''}" is no number of an entry, such as 128.`);
	}
	return Number(text);
}

function fileIn(path: string | undefined): string {
	if (path === undefined || path === '') throw new WrongUse('The name of the file is missing.');
	return path;
}

function existing(path: string | undefined): string {
	const file = fileIn(path);
	if (!existsSync(file)) throw new WrongUse(`There is no file ${file}.`);
	return file;
}

function writeNew(path: string, text: string): void {
	writeFileSync(path, text, { flag: 'wx' });
}

const commands: Readonly<Record<string, (asked: Asked) => Promise<number>>> = {
	verify,
	root,
	proof,
	recompute: recomputeAll,
	sheet,
	export: exportAll,
	import: importAll,
	backup,
	restore,
	move,
};

async function main(): Promise<number> {
	const { values, positionals } = readArguments();
	const [name = '', ...rest] = positionals;
	if (values.help === true) {
		console.log(usage);
		return 0;
	}
	const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
	if (command === undefined)
		throw new WrongUse(name === '' ? 'Say what to do.' : `"${name}" is nothing I can do.`);
	const settings = readSettings(process.env);
	if ('error' in settings) throw new WrongUse(settings.error);
	const log = await openLog(settings.databaseUrl, { waiting: console.error });
	try {
		return await command({ log, shop: values.shop ?? null, names: values['no-names'] !== true, rest });
	} finally {
		await log.close();
	}
}

function readArguments() {
	try {
		return parseArgs({
			allowPositionals: true,
			options: { shop: { type: 'string' }, 'no-names': { type: 'boolean' }, help: { type: 'boolean' } },
		});
	} catch (error) {
		throw new WrongUse(error instanceof Error ? error.message : String(error));
	}
}

try {
	process.exitCode = await main();
} catch (error) {
	const isWrongUse = error instanceof WrongUse;
	console.error(error instanceof Error ? error.message : error);
	if (isWrongUse) console.error(`\n${usage}`);
	process.exitCode = isWrongUse ? 2 : 1;
}
