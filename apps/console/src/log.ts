import { writeFileSync } from 'node:fs';
import { copyLog, openLog, sheetFile } from '@lugbook/chat';
import { readSettings } from './settings.js';

const usage = `pnpm log verify                      walks every shop's chain and names the first bad entry
pnpm log backup FILE                 copies the SQLite log while bots write
pnpm log move URL                    carries the log to another database, its chains intact
pnpm log sheet NUMBER FILE [SHOP]    one answer's calculation sheet, FILE.html or FILE.pdf (shop: local)`;

async function verify(url: string): Promise<number> {
	const log = await openLog(url);
	try {
		const report = await log.verify();
		for (const shop of report.shops) {
			console.log(
				`${shop.shop}: ${shop.problem === null ? `unbroken, ${shop.entries} entries` : shop.problem.message}`,
			);
		}
		if (report.damage !== null) console.log(`The database file itself is damaged: ${report.damage}`);
		if (report.shops.length === 0) console.log('The log has no entries yet.');
		return report.ok ? 0 : 1;
	} finally {
		await log.close();
	}
}

async function backup(url: string, file: string): Promise<number> {
	const log = await openLog(url);
	try {
		await log.backup(file);
		console.log(`The log is copied to ${file}.`);
		return 0;
	} finally {
		await log.close();
	}
}

async function move(from: string, to: string): Promise<number> {
	const source = await openLog(from);
	const target = await openLog(to);
	try {
		await copyLog(source, target);
		const report = await target.verify();
		console.log(
			report.ok
				? 'Every shop is carried over and its chain verifies.'
				: (report.problem?.message ?? 'The copy does not verify.'),
		);
		return report.ok ? 0 : 1;
	} finally {
		await source.close();
		await target.close();
	}
}

async function sheet(url: string, number: string, file: string, shop: string): Promise<number> {
	const format = /\.(html|pdf)$/.exec(file)?.[1];
	if (!/^\d{1,9}$/.test(number) || (format !== 'html' && format !== 'pdf')) return wrong();
	const log = await openLog(url);
	try {
		const bytes = await sheetFile(log, shop, Number(number), format);
		if (bytes === null) {
			console.error(`There is no answer No. ${number} of shop "${shop}".`);
			return 1;
		}
		writeFileSync(file, bytes);
		console.log(`${file} is written.`);
		return 0;
	} finally {
		await log.close();
	}
}

function wrong(): number {
	console.error(usage);
	return 2;
}

async function main(): Promise<number> {
	const [command, first, second, third] = process.argv.slice(2);
	const settings = readSettings(process.env);
	if ('error' in settings) {
		console.error(settings.error);
		return 2;
	}
	const url = settings.databaseUrl;
	if (command === 'verify') return await verify(url);
	if (command === 'backup' && first !== undefined) return await backup(url, first);
	if (command === 'move' && first !== undefined) return await move(url, first);
	if (command === 'sheet' && first !== undefined && second !== undefined)
		return await sheet(url, first, second, third ?? 'local');
	return wrong();
}

try {
	process.exitCode = await main();
} catch (error) {
	console.error(error instanceof Error ? error.message : error);
	process.exitCode = 1;
}
