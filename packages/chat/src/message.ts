import type { Language, Region, UnitHabit } from '@lugbook/core';
import type { Answer } from './answer.js';

export const commandNames = ['ask', 'size', 'build', 'log'] as const;
export type CommandName = (typeof commandNames)[number];

/** Somebody on a platform. `lead` is decided by the shop's configuration, at the moment of the message. */
export interface Person {
	readonly id: string;
	readonly name: string;
	readonly lead: boolean;
}

/** A message to the bot, whatever platform it came from. */
export interface Incoming {
	readonly platform: string;
	/** the shop, as the log knows it: "slack:T024BE7LD", "local" */
	readonly shop: string;
	readonly channel: string;
	/** the thread it stands in, or null for the channel itself */
	readonly thread: string | null;
	/** the platform's own id of this delivery; the same one is answered once */
	readonly delivery: string | null;
	readonly person: Person;
	readonly command: CommandName;
	/** what stands after the command, or the whole message to the bot */
	readonly text: string;
	/** typed fields of a form or of /size, by field name, as typed */
	readonly fields?: Readonly<Record<string, string>>;
	/** what the caller says beforehand, as the options of `ask` do */
	readonly region?: Region;
	readonly units?: UnitHabit;
	readonly language?: Language;
	readonly build?: string;
	/** false keeps nothing */
	readonly keep?: boolean;
}

/** Who sees a reply: the channel, or the asker alone. */
export type Audience = 'channel' | 'asker';

/**
 * One piece of a reply, in the order it is read. `fold` pieces may go behind a button or into the thread where space
 * is short; the others, and every danger, stay in sight.
 */
export interface Part {
	readonly kind:
		| 'headline'
		| 'read'
		| 'because'
		| 'danger'
		| 'warning'
		| 'note'
		| 'neighbours'
		| 'results'
		| 'assumed'
		| 'caution'
		| 'unread'
		| 'kept'
		| 'working'
		| 'list';
	readonly text: string;
	readonly fold: boolean;
	/** how grave it is, in the reply's own language; English where it is not given */
	readonly severity?: string;
	/** of an answer that no longer stands: shown struck through, which words say as well */
	readonly struck?: boolean;
	/** a piece of a paper, which is English whatever the channel speaks */
	readonly isPaper?: boolean;
}

/** A button under a reply; `value` comes back as the text of the action. */
export interface Button {
	readonly action:
		| 'working'
		| 'answer'
		| 'change'
		| 'ask-lead'
		| 'sign'
		| 'reject'
		| 'more'
		| 'save'
		| 'share'
		| 'assume'
		| 'forget'
		| 'comment';
	readonly label: string;
	readonly value: string;
}

/** What the platform is to show. */
export interface Reply {
	readonly answer: Answer;
	readonly audience: Audience;
	/** what it is said in; English where it is not given */
	readonly language?: Language;
	readonly parts: readonly Part[];
	readonly buttons: readonly Button[];
	/** the build that the answer is kept under, null for none; left out where only the log tells */
	readonly build?: string | null;
	/** the same delivery had been answered before: show nothing new */
	readonly repeated: boolean;
	/** what goes along as a file */
	readonly files?: readonly ReplyFile[];
	/** earlier answers whose messages are to be marked, as those that were replaced */
	readonly marks?: readonly Mark[];
}

/** A file under a reply. */
export interface ReplyFile {
	/** "heron.pdf" */
	readonly name: string;
	/** "application/pdf" */
	readonly mediaType: string;
	/** what it shows, for those who do not see it */
	readonly alternativeText: string;
	readonly bytes: Uint8Array | AsyncIterable<Uint8Array>;
}

/** What became of an earlier answer, to be shown with its message. */
export interface Mark {
	readonly entry: number;
	readonly channel: string;
	readonly thread: string | null;
	/** what became of it, as a sentence */
	readonly text: string;
	/** false for an answer that no longer stands: it is shown struck through, with the text before it */
	readonly stands: boolean;
	/** number of the answer that holds in its place; the text names it as "No. 129", or as its language does */
	readonly instead?: number | null;
}
