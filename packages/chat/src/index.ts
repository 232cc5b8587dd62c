export { type AnyTopic, type Field, type Language, languages, topicNamed, topics } from '@lugbook/core';
export type { Log } from '@lugbook/log';
export { type Answer, type AnswerStatus, answerSchema, answerStatuses } from './answer.js';
export * from './bot/index.js';
export { Chat, type ChatOptions, type Conversation, openChat } from './chat.js';
export { forgetPerson } from './forget.js';
export {
	aboutFormat,
	type BookFormat,
	bookFiles,
	bookFormats,
	copyLog,
	importLog,
	openLog,
	partIn,
	recompute,
	restoreLog,
	sheetFile,
	TooManySheets,
} from './keeping.js';
export { placeOf, type Shown } from './memory.js';
export {
	type Audience,
	type Button,
	type CommandName,
	commandNames,
	type Incoming,
	type Mark,
	type Part,
	type Person,
	type Reply,
	type ReplyFile,
} from './message.js';
export { workingParts } from './render/parts.js';
export { partText, plainText, shortText } from './render/plain.js';
export { digestGiven, dueDigests } from './review/digest.js';
export type { Progress } from './turn.js';
