import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

describe.each(DIALECTS)('what is kept about oneself ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '40A 12V 15 ft for the pump behind the shower', { build: 'heron' });
		await shop.say(robin, '5A 12V 10 ft', { channel: 'c2' });
		await shop.say(sam, '20A 12V 10 ft');
	});
	afterEach(async () => {
		await shop.close();
	});

	test.each([
		['/log me', '2 entries of yours', '2 questions, 0 signatures, in 2 channels. Builds: heron'],
		['what do you keep about me?', '2 entries of yours', '2 questions, 0 signatures, in 2 channels.'],
		['What do you know about me', '2 entries of yours', '2 questions, 0 signatures, in 2 channels.'],
		[
			'was speicherst du über mich?',
			'2 Einträge von dir',
			'2 Fragen, 0 Unterschriften, in 2 Kanälen. Ausbauten: heron',
		],
		['¿qué guardas de mí?', '2 entradas tuyas', '2 preguntas, 0 firmas, en 2 canales. Proyectos: heron'],
	])(
		'%s: counts and places, to the asker alone, and nothing is kept of asking',
		async (text, entries, counts) => {
			const reply = await shop.tell(robin, text);
			expect(reply.audience).toBe('asker');
			expect(reply.answer.headline).toContain(entries);
			const words = reply.parts.map((part) => part.text).join('\n');
			expect(words).toContain(counts);
			expect(words).toContain('Robin');
			expect(words).toContain('/log forget-me');
			expect(await shop.kinds()).toHaveLength(3);
		},
	);

	test('nobody asks about somebody else, or in another shop', async () => {
		expect(await shop.say(kim, '/log me')).toContain('no entry of yours');
		expect(await shop.say(robin, '/log me', { shop: 'other' })).toContain('no entry of yours');
		expect(await shop.say(robin, '/log me', { shop: 'other' })).not.toContain('heron');
	});

	test.each(['/log forget-me', 'forget me', 'Please forget me.', 'vergiss mich', 'olvídame'])(
		'%s asks first, and erases nothing yet',
		async (text) => {
			const reply = await shop.tell(robin, text);
			expect(reply.audience).toBe('asker');
			expect(reply.buttons).toEqual([{ action: 'forget', label: 'Yes, forget me', value: 'confirm' }]);
			const { entries } = await shop.chat.log.find('demo', { personId: robin.id });
			expect(entries).toHaveLength(2);
		},
	);

	test('confirmed, name and words are gone everywhere, the answers stay, the chain verifies', async () => {
		await shop.say(kim, '/log sign 1');
		const before = await shop.chat.log.head('demo');
		const reply = await shop.tell(robin, '/log forget-me confirm');
		expect(reply.audience).toBe('asker');
		expect(reply.answer.headline).toContain('erased from 2 entries');
		const { entries } = await shop.chat.log.find('demo', { order: 'oldest', limit: 100 });
		expect(entries.map(({ erased }) => erased)).toEqual([true, true, false, false, false]);
		expect(JSON.stringify(entries)).not.toMatch(/Robin|U0000001|behind the shower/);
		expect(entries.at(-1)).toMatchObject({ kind: 'forgotten', text: '', body: { entries: 2 } });
		const report = await shop.chat.log.verify('demo', before ?? undefined);
		expect(report.ok).toBe(true);
		expect(await shop.say(sam, '/log show 1')).toContain('4 AWG');
		expect(await shop.say(sam, '/log show 1')).toContain('Signed by Kim');
		expect(await shop.say(sam, '/log show shower', { build: 'heron' })).toContain('none');
		expect(await shop.say(robin, '/log me')).toContain('no entry of yours');
		expect(await shop.say(kim, '/log leads add Robin')).toContain('nobody called "Robin"');
		expect(JSON.stringify(await shop.chat.log.settingsOf('demo'))).not.toMatch(/Robin|U0000001/);
	});

	test('the same delivery again, and saying it once more, erase nothing of others', async () => {
		await shop.say(robin, '/log forget-me confirm', { delivery: 'once' });
		expect(await shop.say(robin, '/log forget-me confirm', { delivery: 'once' })).toContain('Done already');
		expect(await shop.say(robin, '/log forget-me confirm')).toContain('0 entries');
		const { entries } = await shop.chat.log.find('demo', { personId: sam.id });
		expect(entries).toHaveLength(1);
		expect((await shop.chat.log.verify()).ok).toBe(true);
	});

	test('a lead who is forgotten is none any more; one whose right was taken away does not get it back', async () => {
		await shop.say(kim, '/log leads add Sam');
		await shop.say(sam, '/log sign 1');
		await shop.say(sam, '/log forget-me confirm');
		expect(await shop.say(sam, '/log sign 2')).toContain('for the leads');
		expect(await shop.say(kim, '/log show 1')).toContain('Signed by somebody who was forgotten');
		const alex = { id: 'U0000004', name: 'Alex', lead: true };
		await shop.say(alex, '5A 12V 10 ft');
		await shop.say(kim, '/log leads remove Alex');
		expect(await shop.say(alex, '/log forget-me confirm')).toContain('your id alone');
		expect(await shop.say(alex, '/log sign 2')).toContain('for the leads');
		expect(JSON.stringify(await shop.chat.log.settingsOf('demo'))).not.toMatch(/Alex|Sam/);
	});

	test('sizing questions that only sound alike are still sizing questions', async () => {
		const reply = await shop.tell(robin, 'what do you keep about me: 40A 12V 15 ft');
		expect(reply.answer.headline).not.toContain('entries of yours');
		expect(await shop.kinds()).toHaveLength(4);
	});
});
