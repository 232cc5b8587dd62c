/** Plays the conversation of one van through an app and gathers what was not seen. */

import { conversation, type Line } from './conversation.js';

/**
 * @param say sends a line as its speaker would and resolves with all that the speaker then reads of the answer
 * @returns a line for each expectation that was not met, with what was read instead
 */
export async function misses(say: (line: Line) => Promise<string>): Promise<string[]> {
	const missed: string[] = [];
	for (const line of conversation) {
		const read = await say(line);
		const lacking = line.sees.filter((one) => !one.test(read)).map((one) => `lacks ${one}`);
		const unwanted = (line.not ?? []).filter((one) => one.test(read)).map((one) => `has ${one}`);
		for (const what of [...lacking, ...unwanted])
			missed.push(`${line.by}: ${line.text}\n  ${what} in\n${read}`);
	}
	return missed;
}

/** "/build check" as the command and what stands after it; anything else is asked in words. */
export function commandOf({ text }: Line): { command: 'ask' | 'build' | 'log'; rest: string } {
	const match = /^\/(build|log)\s+([\s\S]*)$/.exec(text);
	return match === null
		? { command: 'ask', rest: text }
		: { command: match[1] as 'build' | 'log', rest: match[2] as string };
}
