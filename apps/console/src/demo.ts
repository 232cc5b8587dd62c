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
	{
		speaker: lead,
		thread: null,
		text: 'The van has a long wheelbase and a high roof, two 100 Ah 12 V lifepo4 batteries, a 2000 W inverter, a 30 A dc-dc charger, 2 x 200 W panels with a 100/30 mppt, a 45 W compressor fridge, a diesel heater, a 25 gal fresh tank and a 12 gal gray tank, no CO alarm yet',
	},
	{ speaker: installer, thread: 1, text: 'wire for the fridge' },
	{ speaker: installer, thread: 1, text: '18 ft' },
	{ speaker: installer, thread: 1, text: '10% is fine' },
	{ speaker: installer, thread: 2, text: '40A 12V 15 ft' },
	{ speaker: installer, thread: 2, text: 'and at 20 ft?' },
	{ speaker: installer, thread: 2, text: 'why' },
	{ speaker: installer, thread: 3, text: '3.5m 20A 24v 35mm2 ok?' },
	{ speaker: installer, thread: 4, text: '40 A and 100 W at 12 V' },
	{ speaker: installer, thread: 5, text: 'how long will the bank run a 1500 W induction cooktop' },
	{ speaker: lead, thread: null, text: '/build check' },
	{ speaker: installer, thread: null, text: 'add a CO alarm' },
	{ speaker: installer, thread: null, text: 'the fridge is 60 W' },
	{ speaker: lead, thread: null, text: '/build rerun' },
	{ speaker: lead, thread: null, text: '/log review' },
	{ speaker: lead, thread: null, text: '/log sign 7' },
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
