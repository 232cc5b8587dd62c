import { buildExample, buildVerbs } from './build/verbs.js';
import { askHelp } from './commands/ask.js';
import { logExample, logVerbs } from './commands/log.js';
import { sizeHelp } from './commands/size.js';
import type { CommandName } from './message.js';
import { helpOf } from './verb.js';

/** Each command's help, at most ten lines with one worked example. */
export function helpFor(command: CommandName): string {
	switch (command) {
		case 'ask':
			return askHelp;
		case 'size':
			return sizeHelp();
		case 'build':
			return helpOf(buildVerbs, buildExample);
		case 'log':
			return helpOf(logVerbs, logExample);
	}
}
