import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { errorFacts, keepHeapSmall, openChat } from '@lugbook/chat';
import { type SlackBot, startSlackBot } from './bot.js';
import { openProgramLog } from './log.js';
import { defaultLogPath, readSettings } from './settings.js';

const settings = readSettings(process.env);
if ('errors' in settings) {
	for (const error of settings.errors) console.error(error);
	process.exit(2);
}
const log = openProgramLog(settings.logLevel);

// A promise that nobody waits for has failed, as when the platform's socket can't be found again: whoever
// supervises this program starts it anew.
process.on('unhandledRejection', (reason) => {
	log.fatal(errorFacts(reason), 'unhandled');
	process.exit(1);
});

keepHeapSmall();
mkdirSync(dirname(defaultLogPath), { recursive: true });
const chat = await openChat({
	databaseUrl: settings.databaseUrl,
	ownThread: true,
	region: settings.region,
	waiting: (sentence) => log.warn({}, sentence),
});

async function end(exitCode: number, bot?: SlackBot): Promise<void> {
	process.exitCode = exitCode;
	await bot?.stop();
	await chat.close();
}

try {
	await chat.prepare();
	const bot = await startSlackBot({ settings, chat, log });
	for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void end(0, bot));
} catch (error) {
	log.fatal(errorFacts(error), 'could not start');
	await end(1);
}
