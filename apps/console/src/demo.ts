import type { Chat } from '@lugbook/chat';
import { plainText } from '@lugbook/chat';
import { incomingFrom, type Speaker, wrapped } from './terminal.js';

interface Line {
	readonly speaker: Speaker;
	/** lines of one thread share a number; null stands in the channel itself */
	readonly thread: number | null;
	readonly text: string;
}

const installer: Speaker = { name: 'Robin (installer)', lead: false };
const lead: Speaker = { name: 'Kim (lead)', lead: true };

/** A morning in an invented shop, on its van "heron". */
export const demoConversation: readonly Line[] = [
	{ speaker: lead, thread: null, text: '/build use heron' },
	{ speaker: installer, thread: 1, text: '40A 12V 15 ft' },
	{ speaker: installer, thread: 1, text: 'and at 20 ft?' },
	{ speaker: installer, thread: 1, text: 'what about 24 V' },
	{ speaker: installer, thread: 2, text: "fridge 5 amps 22' run 12v" },
	{ speaker: installer, thread: 3, text: '12v 15 ft' },
	{ speaker: installer, thread: 3, text: '7.5A' },
	{ speaker: installer, thread: 4, text: '3.5m 20A 24v 35mm2 ok?' },
	{ speaker: installer, thread: 5, text: '40 A and 100 W at 12 V' },
	{ speaker: lead, thread: null, text: '/log show' },
	{ speaker: lead, thread: null, text: '/log verify' },
];

/** Plays the conversation as if it were typed, and prints both sides. */
export async function playDemo(chat: Chat, write: (text: string) => void, columns: number): Promise<void> {
	for (const { speaker, thread, text } of demoConversation) {
		write(`\n${speaker.name}: ${text}\n`);
		const place = {
			shop: 'demo',
			channel: 'van-heron',
			thread: thread === null ? null : `demo:${thread}`,
			speaker,
		};
		const reply = await chat.handle(incomingFrom(text, place));
		write(`${wrapped(plainText(reply), columns - 2).replace(/^/gm, '  ')}\n`);
	}
}
