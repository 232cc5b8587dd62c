/** Looks at what the bots need before they run: settings, database, and what the platforms answer. */

import { type Diagnosis, databaseDiagnosis, wrong } from '@lugbook/chat';
// biome-ignore lint/style/noRestrictedImports: the doctor asks each bot what it sees of its platform
import { diagnoseDiscord } from '@lugbook/discord';
// biome-ignore lint/style/noRestrictedImports: the doctor asks each bot what it sees of its platform
import { diagnoseSlack } from '@lugbook/slack';
import { readSettings } from './settings.js';

const words = { good: 'good ', wrong: 'WRONG', unsure: 'look ' } as const;

export async function diagnose(environment: NodeJS.ProcessEnv): Promise<Diagnosis[]> {
	const isMeant = (prefix: string) =>
		Object.entries(environment).some(([name, value]) => name.startsWith(prefix) && value !== '');
	const found: Diagnosis[] = [];
	const settings = readSettings(environment);
	if ('error' in settings) found.push(wrong('Settings', settings.error, 'correct it in .env'));
	else found.push(await databaseDiagnosis(settings.databaseUrl));
	// SLACK_MODE has a value in the example already.
	const isSlack = ['SLACK_BOT_TOKEN', 'SLACK_APP_TOKEN', 'SLACK_SIGNING_SECRET', 'SLACK_CLIENT_ID'].some(
		isMeant,
	);
	const isDiscord = isMeant('DISCORD_');
	if (isSlack) found.push(...(await diagnoseSlack(environment)));
	if (isDiscord) found.push(...(await diagnoseDiscord(environment)));
	if (!isSlack && !isDiscord) {
		found.push(
			wrong(
				'Platforms',
				'neither Slack nor Discord is set up',
				'copy .env.example to .env and fill in the tokens of one of them (README, "Set it up for your shop")',
			),
		);
	}
	return found;
}

/** For people: a line for each thing looked at, below it what to do. */
export function told(found: readonly Diagnosis[]): string {
	const lines = found.map(
		({ about, state, found: what, fix }) =>
			`${words[state]}  ${about}: ${what}${fix === null ? '' : `\n         ${fix}`}`,
	);
	const bad = found.filter(({ state }) => state === 'wrong').length;
	const end = bad === 0 ? 'Nothing is wrong.' : `${bad} to put right.`;
	return [...lines, end].join('\n');
}
