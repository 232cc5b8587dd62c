// One bot as a process of its own, with short leases: says its port when it is up, ends with its standard input.
import { defaultPace, openChat } from '@lugbook/chat';
import { openProgramLog as discordLog, startDiscordBot } from '@lugbook/discord';
import { openProgramLog as slackLog, startSlackBot } from '@lugbook/slack';

const { platform, databaseUrl, settings, sweepMs, leaseMs } = JSON.parse(process.argv[2]);
const chat = await openChat({ databaseUrl, region: 'us' });
const log = (platform === 'slack' ? slackLog : discordLog)('error', {
	write: (line) => process.stderr.write(line),
});
const bot = await (platform === 'slack' ? startSlackBot : startDiscordBot)({
	settings: {
		...settings,
		host: '127.0.0.1',
		port: 0,
		databaseUrl,
		region: 'us',
		leads: { people: new Set(), roles: new Set() },
		pace: { ...defaultPace, burst: 1000 },
		logLevel: 'error',
	},
	chat,
	log,
	sweepMs,
	leaseMs,
});
process.stdout.write(`${bot.port}\n`);
// An orphan ends too.
process.stdin.on('end', async () => {
	await bot.stop();
	await chat.close();
});
process.stdin.resume();
