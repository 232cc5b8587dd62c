import { type Incoming, openChat } from '@lugbook/chat';
import { topics } from '@lugbook/core';
import { describe, expect, test } from 'vitest';

// Each topic declares messages that it answers; they must be read so, with nothing left over.
const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });

function message(text: string): Incoming {
	const person = { id: 'u', name: 'u', lead: false };
	return {
		platform: 'test',
		shop: 's',
		channel: 'c',
		thread: null,
		delivery: null,
		person,
		command: 'ask',
		text,
		keep: false,
	};
}

describe.each(topics.map((topic) => [topic.name, topic] as const))('%s', (name, topic) => {
	test('has at least three examples', () => {
		expect(topic.examples.length).toBeGreaterThanOrEqual(3);
	});

	test.each(topic.examples)('%s', async (text) => {
		const { answer } = await chat.handle(message(text));
		expect({
			status: answer.status,
			topic: answer.topic,
			unread: answer.unread,
			headline: answer.headline,
		}).toEqual({
			status: 'answered',
			topic: name,
			unread: [],
			headline: answer.headline,
		});
		expect(answer.headline.length).toBeLessThanOrEqual(120);
	});
});
