// Talks to the bot without end and prints the number of each entry whose reply it got; killed from outside.
import { openChat } from '@lugbook/chat';

const [databaseUrl, round] = process.argv.slice(2);
const chat = await openChat({ databaseUrl, region: 'us' });
const person = { id: 'u', name: 'Robin', lead: false };
const lines = ['40A 12V 15 ft', 'and at 20 ft?', '10% is fine', 'what about 24 V', '12v 15 ft', '7.5A'];
for (let index = 0; ; index += 1) {
	const reply = await chat.handle({
		platform: 'test',
		shop: 'demo',
		channel: 'c',
		thread: `t${round}`,
		delivery: `${round}:${index}`,
		person,
		command: 'ask',
		text: lines[index % lines.length],
	});
	process.stdout.write(`${JSON.stringify([reply.answer.entry, reply.answer.headline])}\n`);
}
