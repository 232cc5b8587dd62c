/** Corrections of a van as people type them at the end of a day, in three languages. */

import { openChat, plainText } from '@lugbook/chat';
import { afterAll, expect, test } from 'vitest';

const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });
afterAll(() => chat.close());

type Line = readonly [text: string, sees: RegExp, not?: RegExp];

const talks: readonly (readonly [described: string, ...lines: Line[]])[] = [
	[
		'long van, 2x100ah lithium, fridge 45W, induction cooktop 1800W, roof fan 30W',
		['the fridge is 60 W', /fridge: power 60 W/],
		['no 2 of them', /fridge: power 60 W, how many 2/],
		['drop the cooktop', /Taken out: cooktop/],
	],
	[
		'furgoneta larga, 2 baterías de 100Ah litio, nevera 45W, placa de inducción 1800W',
		['la nevera es de 60 W', /nevera: potencia 60 W/],
		['no, son dos', /how many 2|cantidad 2/],
		['quita la placa de inducción', /Quitado: cooktop/],
	],
	[
		'langer radstand, 2 batterien 100Ah lithium, kühlschrank 45W, induktionskochfeld 1800W',
		['der kühlschrank hat 60 W', /Kühlschrank: Leistung 60 W/],
		['nein 2 davon', /Anzahl 2/],
		['das kochfeld fliegt raus', /Taken out: cooktop|Entfernt: /],
	],
	[
		'fridge 45W, roof fan 30W',
		['the fan is 25 W', /fan: .*power 25 W/],
		['sorry the fridge 55w', /fridge: power 55 W/, /fan: .*55 W/],
		['24v for the whole van', /24 V/],
	],
	[
		'fridge 45W, 200ah lithium',
		['fridge 55w sorry', /fridge: power 55 W/],
		['nope 2 of em', /how many 2/],
		['no fridge', /Taken out: fridge/],
	],
	[
		'nevera 45W, batería 200Ah litio',
		['perdón la nevera 55w', /nevera: potencia 55 W/],
		['sin microondas', /No he entendido/],
		['nevera fuera', /Quitado: nevera/],
	],
	[
		'kühlschrank 45W, batterie 200Ah lithium',
		['kühlschrank doch 55w', /Kühlschrank: Leistung 55 W/],
		['ohne mikrowelle', /nicht erkennen/],
		['kühlschrank weg', /Kühlschrank/],
	],
	[
		'2 paneles de 200 W, nevera 45 W',
		['los paneles son de 175 W', /175 W/],
		['son 3 paneles', /how many 3|cantidad 3/],
		['sin nevera', /Quitado: nevera/],
	],
];

test.each(talks.map((talk, index) => [talk[0], talk, index] as const))('%s', async (_, talk, index) => {
	let count = 0;
	const say = async (command: 'ask' | 'build', text: string) => {
		count += 1;
		const reply = await chat.handle({
			platform: 'test',
			shop: 's',
			channel: `c${index}`,
			thread: null,
			delivery: `${index}-${count}`,
			person: { id: 'u', name: 'u', lead: false },
			command,
			text,
		});
		return plainText(reply, { folded: false });
	};
	const [described, ...lines] = talk;
	await say('build', `use van-${index}`);
	await say('build', `describe ${described}`);
	for (const [text, sees, not] of lines) {
		const told = await say('ask', text);
		expect(told, text).toMatch(sees);
		if (not !== undefined) expect(told, text).not.toMatch(not);
	}
});
