import type { Reply } from './message.js';
import { listed } from './reply.js';
import type { Turn } from './turn.js';

/** One thing a command can do: "/build use NAME". A file each, gathered by its command. */
export interface Verb {
	/** as in help: "use NAME" */
	readonly usage: string;
	/** null where help has no room for it and docs name it */
	readonly help: string | null;
	/** what must stand after the command */
	readonly pattern: RegExp;
	readonly run: (turn: Turn, match: RegExpExecArray) => Promise<Reply>;
}

/** Help of a command made of verbs: a line each and one worked example. */
export function helpOf(verbs: readonly Verb[], example: string): string {
	const told = verbs.flatMap(({ usage, help }) => (help === null ? [] : [{ usage, help }]));
	const width = Math.max(...told.map(({ usage }) => usage.length)) + 2;
	return [...told.map(({ usage, help }) => usage.padEnd(width) + help), `Example: ${example}`].join('\n');
}

/**
 * Runs the first verb that fits, or says what there is.
 * @param meant the verb in words that use none
 */
export async function runVerb(
	turn: Turn,
	command: string,
	verbs: readonly Verb[],
	example: string,
	meant: (text: string) => string = (text) => text,
): Promise<Reply> {
	const said = meant(turn.text);
	for (const verb of verbs) {
		const match = verb.pattern.exec(said);
		if (match !== null) return await verb.run(turn, match);
	}
	return listed(`I don't know "/${command} ${turn.text.slice(0, 40)}".\n${helpOf(verbs, example)}`, 'asker');
}
