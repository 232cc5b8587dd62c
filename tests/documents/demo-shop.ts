/** The shop and van of the demo, as its conversation and some more questions leave them in the log. */

import { type Chat, openChat, type Reply, type ReplyFile } from '@lugbook/chat';
import { playDemo } from '../../apps/console/src/demo.js';
import { incomingFrom, type Speaker } from '../../apps/console/src/terminal.js';

const robin: Speaker = { name: 'Robin (installer)', lead: false };
const kim: Speaker = { name: 'Kim (lead)', lead: true };

/** What is said after the demo's morning: more of the van, a question of each part of the book, and the lead's side. */
const afternoon: readonly (readonly [Speaker, string])[] = [
	[
		kim,
		'/build describe GVWR 9350 lb, front axle rating 4130 lb, rear axle rating 5500 lb. Main fuse 300 A, battery disconnect 350 A, fuse block, 30 A shore inlet, 40 A charger, 180 A alternator, water pump 7 A, roof fan 30 W 8 h, 6 lights 3 W 5 h, induction cooktop 1800 W 20 min, the batteries under the bench, 2 people',
	],
	[robin, '/size wire current: 7 A, voltage: 12 V, length: 9 ft, load: water pump'],
	[robin, 'wire for the inverter 4 ft'],
	[robin, '30A 12V 10 ft 14 awg ok?'],
	[robin, '20A 120V 25 ft'],
	[robin, 'payload'],
	[robin, 'how does the bank do in december in Tucson, hour by hour'],
	[robin, '400W solar in Tucson in december, 1500 Wh a day'],
	[robin, 'budget: fridge 60W 24h 40%, laptop 65W 3h'],
	[robin, '2 people 25 gal fresh 12 gal gray how many days'],
	[robin, 'heater size at 0 F for a high roof van'],
	[robin, 'restraint for a 60 lb battery'],
	[robin, 'gas spring for a 30 lb lid 40 in deep'],
	[robin, '/log comment 19 the pump stands further back than drawn'],
	[robin, '/log ask-lead 22'],
	[kim, '/log reject 21 far too thin, take what the answer names'],
	[kim, '/log replace 22 and at 30 ft'],
	[kim, '/log sign 24'],
	[kim, '/log sign 26'],
	[robin, 'the roof fan is 40 W'],
	[robin, '/build check'],
];

export interface DemoShop extends AsyncDisposable {
	readonly chat: Chat;
	say(speaker: Speaker, text: string): Promise<Reply>;
	/** the files that "/log export" gives */
	exported(format: string): Promise<Map<string, Uint8Array>>;
}

async function whole({ bytes }: ReplyFile): Promise<Uint8Array> {
	if (bytes instanceof Uint8Array) return bytes;
	const pieces: Uint8Array[] = [];
	for await (const piece of bytes) pieces.push(piece);
	return Buffer.concat(pieces);
}

export async function openDemoShop(region: 'us' | 'eu' = 'us'): Promise<DemoShop> {
	const chat = await openChat({
		databaseUrl: 'sqlite::memory:',
		region,
		now: () => new Date('2026-05-04T12:00:00.000Z'),
	});
	const say: DemoShop['say'] = (speaker, text) =>
		chat.handle(incomingFrom(text, { shop: 'demo', channel: 'van-heron', thread: null, speaker }));
	await playDemo(chat, () => {}, 100);
	for (const [speaker, text] of afternoon) await say(speaker, text);
	return {
		chat,
		say,
		exported: async (format) => {
			const { files = [] } = await say(kim, `/log export ${format}`);
			return new Map(await Promise.all(files.map(async (file) => [file.name, await whole(file)] as const)));
		},
		[Symbol.asyncDispose]: () => chat.close(),
	};
}
