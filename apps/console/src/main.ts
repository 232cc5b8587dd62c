import { createInterface } from 'node:readline/promises';
import { openChat, plainText } from '@lugbook/chat';
import { playDemo } from './demo.js';
import { writeFiles } from './files.js';
import { filesFolder, localFile, readSettings } from './settings.js';
import { incomingFrom, type Place, wrapped } from './terminal.js';

const settings = readSettings(process.env);
if ('error' in settings) {
	console.error(settings.error);
	process.exit(2);
}
const columns = process.stdout.columns ?? 80;

if (process.stdin.isTTY) await openChannel(settings.region);
else await showDemo(settings.region);

/** Without a terminal nobody can type: the demo conversation is played and nothing is kept. */
async function showDemo(region: 'us' | 'eu'): Promise<void> {
	const chat = await openChat({ databaseUrl: 'sqlite::memory:', region });
	console.log('Lugbook: the demo conversation of an invented shop (nothing is kept)');
	await playDemo(chat, (text) => process.stdout.write(text), columns);
	await chat.close();
}

/** The local channel: type as in the shop's chat; a line that begins with ">" goes on with your last question. */
async function openChannel(region: 'us' | 'eu'): Promise<void> {
	const chat = await openChat({ databaseUrl: `sqlite:${localFile('demo.sqlite')}`, region });
	const place: Place = {
		shop: 'demo',
		channel: 'van-heron',
		thread: null,
		speaker: { name: 'you', lead: true },
	};
	const screen = createInterface({ input: process.stdin, output: process.stdout, prompt: 'van-heron> ' });
	console.log(
		wrapped(
			'Lugbook, the local channel of the demo shop. What you ask here is kept in data/demo.sqlite. Ask a sizing question such as 40A 12V 15 ft; go on with "and at 20 ft?"; help, /size help, /build help, /log help; Ctrl-D ends.',
			columns,
		),
	);
	screen.prompt();
	for await (const line of screen) {
		if (line.trim() !== '') {
			const reply = await chat.handle(incomingFrom(line, place));
			console.log(wrapped(plainText({ ...reply, buttons: [] }), columns));
			for (const { path } of await writeFiles(reply.files ?? [], filesFolder())) {
				console.log(`Written to ${path}`);
			}
			console.log('');
		}
		screen.prompt();
	}
	await chat.close();
}
