/**
 * The bot in shards, for more servers than one connection may serve (the platform asks for it from 2,500 on): a process
 * for each shard, as many as the platform advises, all on one log. Each answers /healthz and the like on a port of its
 * own, counted up from PORT. A shard that ends is started again after a pause; a stop ends them all, each with what it
 * has in hand.
 */

import { fileURLToPath } from 'node:url';
import { errorFacts } from '@lugbook/chat';
import { REST, Routes, type Shard, ShardingManager } from 'discord.js';
import { openProgramLog } from './log.js';
import { readSettings } from './settings.js';

/** Starts are counted by the platform, a thousand a day [ms]. */
const START_AGAIN_AFTER_MS = 10_000;

const settings = readSettings(process.env);
if ('errors' in settings) {
	for (const error of settings.errors) console.error(error);
	process.exit(2);
}
const { token, apiUrl, shards } = settings;
const log = openProgramLog(settings.logLevel);
let isEnding = false;

/** The library asks the platform's own address alone; ours may be another. */
async function advisedShards(): Promise<number> {
	const rest = new REST({ ...(apiUrl === null ? {} : { api: apiUrl }) }).setToken(token);
	const advised = (await rest.get(Routes.gatewayBot())) as { shards: number };
	return advised.shards;
}

async function start(shard: Shard): Promise<void> {
	try {
		await shard.spawn();
	} catch (error) {
		// A shard that ended before it was ready is started again by its 'death'.
		log.error({ shard: shard.id, ...errorFacts(error) }, 'a shard did not come up');
	}
}

try {
	const totalShards = shards ?? (await advisedShards());
	const manager = new ShardingManager(fileURLToPath(new URL('./main.js', import.meta.url)), {
		token,
		totalShards,
		respawn: false,
	});
	manager.on('shardCreate', (shard) => {
		shard.on('ready', () => log.info({ shard: shard.id }, 'a shard is ready'));
		shard.on('death', () => {
			if (isEnding) return;
			log.warn({ shard: shard.id }, 'a shard ended; it is started again after a pause');
			setTimeout(() => void (isEnding || start(shard)), START_AGAIN_AFTER_MS);
		});
	});
	const end = async () => {
		if (isEnding) return;
		isEnding = true;
		const running = [...manager.shards.values()].filter(({ process: child }) => child !== null);
		await Promise.all(
			running.map(
				(shard) =>
					new Promise<void>((resolve) => {
						shard.once('death', () => resolve());
						shard.kill();
					}),
			),
		);
		log.info('stopped');
		process.exit(0);
	};
	for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void end());
	await manager.spawn();
	log.info({ shards: totalShards }, 'started in shards');
} catch (error) {
	log.fatal(errorFacts(error), 'could not start');
	process.exitCode = 1;
}
