import { createInterface } from 'node:readline/promises';
import { parseArgs } from 'node:util';
import { type Incoming, openChat, plainText, type Reply } from '@lugbook/chat';
import { writeFiles } from './files.js';
import { filesFolder, readSettings } from './settings.js';
import { incomingFrom, type Place, wrapped } from './terminal.js';

const usage = `pnpm --silent ask "40A 12V 15 ft"                the answer as the terminal shows it
pnpm --silent ask --json "40A 12V 15 ft"         one JSON object
pnpm --silent ask --json --batch < lines.txt     one JSON object a line; "> ..." follows up the line before
options: --build NAME  --region us|eu  --units us|metric  --as NAME  --thread ID  --no-log`;

class WrongOption extends Error {}

function options() {
	try {
		const { values, positionals } = parseArgs({
			// A question such as "-5A 12V 3ft" begins with a dash and is no option.
			args: process.argv.slice(2).filter((argument) => argument !== '--'),
			allowPositionals: true,
			strict: true,
			options: {
				json: { type: 'boolean', default: false },
				batch: { type: 'boolean', default: false },
				build: { type: 'string' },
				region: { type: 'string' },
				units: { type: 'string' },
				as: { type: 'string', default: 'installer' },
				thread: { type: 'string' },
				'no-log': { type: 'boolean', default: false },
				help: { type: 'boolean', default: false },
			},
		});
		return { values, positionals };
	} catch (error) {
		throw new WrongOption(error instanceof Error ? error.message : String(error));
	}
}

function oneOf<T extends string>(
	name: string,
	value: string | undefined,
	allowed: readonly T[],
): T | undefined {
	if (value === undefined) return undefined;
	const found = allowed.find((one) => one === value);
	if (found === undefined) throw new WrongOption(`--${name} is "${value}"; it is ${allowed.join(' or ')}.`);
	return found;
}

async function main(): Promise<void> {
	const dashed = dashedQuestion();
	const { values, positionals } = options();
	if (values.help) {
		console.log(usage);
		return;
	}
	const region = oneOf('region', values.region, ['us', 'eu']);
	const units = oneOf('units', values.units, ['us', 'metric']);
	const question = dashed ?? (positionals.length === 0 ? undefined : positionals.join(' '));
	if (!values.batch && question === undefined) throw new WrongOption('There is no question.');
	if (values.batch && question !== undefined)
		throw new WrongOption('With --batch the questions come from the standard input.');
	const settings = readSettings(process.env);
	if ('error' in settings) throw new WrongOption(settings.error);

	const kept = !values['no-log'];
	// Without a log the exchange lives in memory, so that follow-ups of a batch work all the same.
	const chat = await openChat({
		databaseUrl: kept ? settings.databaseUrl : 'sqlite::memory:',
		region: settings.region,
		waiting: console.error,
	});
	const place: Place = {
		shop: 'local',
		channel: 'terminal',
		thread: values.thread ?? null,
		speaker: { name: values.as, lead: false },
	};
	const extra: Partial<Incoming> = {
		...(region === undefined ? {} : { region }),
		...(units === undefined ? {} : { units }),
		...(values.build === undefined ? {} : { build: values.build }),
	};
	const show = async (reply: Reply) => {
		const answer = kept ? reply.answer : { ...reply.answer, entry: null };
		if (values.json) console.log(JSON.stringify(answer));
		else
			console.log(
				wrapped(
					plainText(
						{
							...reply,
							answer,
							parts: kept ? reply.parts : reply.parts.filter((part) => part.kind !== 'kept'),
							buttons: [],
						},
						{ folded: true },
					),
					process.stdout.columns ?? 80,
				),
			);
		for (const { path } of await writeFiles(reply.files ?? [], filesFolder())) {
			// The standard output of --json is JSON alone.
			(values.json ? console.error : console.log)(`Written to ${path}`);
		}
	};
	try {
		if (question !== undefined) await show(await chat.handle(incomingFrom(question, place, extra)));
		else {
			const run = process.pid.toString(36) + Date.now().toString(36);
			let thread = place.thread;
			let count = 0;
			for await (const line of createInterface({
				input: process.stdin,
				crlfDelay: Number.POSITIVE_INFINITY,
			})) {
				count += 1;
				const follows = line.startsWith('> ');
				if (!follows) thread = place.thread ?? `batch:${run}:${count}`;
				await show(
					await chat.handle(incomingFrom(follows ? line.slice(2) : line, { ...place, thread }, extra)),
				);
				if (!values.json) console.log('');
			}
		}
	} finally {
		await chat.close();
	}
}

/** A single question that begins with a minus sign ("-5A 12V 3ft") stands last and looks like an option. */
function dashedQuestion(): string | undefined {
	const last = process.argv.at(-1);
	if (process.argv.length < 3 || last === undefined || !/^-[\d.]/.test(last)) return undefined;
	process.argv.pop();
	return last;
}

try {
	await main();
} catch (error) {
	if (error instanceof WrongOption) {
		console.error(`${error.message}\n\n${usage}`);
		process.exitCode = 2;
	} else {
		console.error(error instanceof Error ? error.message : error);
		process.exitCode = 1;
	}
}
