import { type AnyTopic, type Context, topicNamed, topics } from '@lugbook/core';
import type { Given, Reader, Reading } from '@lugbook/language';
import { bareAnswer } from '../answer.js';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { answerReading } from './ask.js';

export function sizeHelp(): string {
	return [
		'One topic with named inputs: topic, then the inputs in words.',
		'  wire 40A 12V 15 ft drop 3%',
		`Topics: ${topics.map(({ name }) => name).join(', ')}.`,
	].join('\n');
}

/** One topic, with its inputs as words or as the typed fields of a form. */
export async function size(turn: Turn): Promise<Reply> {
	const { text, reader, incoming } = turn;
	const [name = ''] = text.split(/\s+/, 1);
	const topic = topicNamed(name.toLowerCase());
	if (topic === null) {
		const headline =
			name === '' ? 'Name a topic, then its inputs.' : `"${name.slice(0, 40)}" is no topic of mine.`;
		return listed(`${headline}\n${topics.map((one) => `${one.name}: ${one.title}`).join('\n')}`, 'asker');
	}
	const build = await turn.build();
	const context = turn.context();
	if (incoming.fields === undefined) {
		const reading = reader.read(text.slice(name.length).trim(), { context, topic: topic.name });
		return await answerReading(turn, build, reading, null, text);
	}
	const { given, errors } = readFields(reader, topic, incoming.fields, context);
	if (errors.size > 0) {
		const answer = bareAnswer('refused', [...errors.values()].join(' '), { topic: topic.name });
		return await turn.keep(build, { answer, request: null });
	}
	const reading: Reading = {
		topic: topic.name,
		given,
		conflicts: [],
		notes: [],
		unread: [],
		unplaced: [],
		said: [],
		context,
		rival: null,
		followsUp: false,
		tooLong: false,
		smallTalk: false,
	};
	return await answerReading(turn, build, reading, null, Object.values(incoming.fields).join(' '));
}

/** The typed fields of a form as values; and of those that can't be read, by field, what was read and what would be right. */
export function readFields(
	reader: Reader,
	topic: AnyTopic,
	fields: Readonly<Record<string, string>>,
	context: Context,
): { readonly given: Given[]; readonly errors: ReadonlyMap<string, string> } {
	const given: Given[] = [];
	const errors = new Map<string, string>();
	for (const [field, typed] of Object.entries(fields)) {
		if (typed.trim() === '') continue;
		const read = reader.readField(topic, field, typed, context);
		if (read.ok) given.push({ name: field, value: read.value, said: typed });
		else errors.set(field, read.error);
	}
	return { given, errors };
}
