/**
 * A process that writes to a log until it is done or killed. It says each entry that the log has acknowledged in a
 * line of its own: `NUMBER HASH DELIVERY`, and at the end `done`.
 * node writer.mjs URL SHOP NAME COUNT
 */
import { writeSync } from 'node:fs';
import { openLog } from '@lugbook/log';

const [url, shop, name, count] = process.argv.slice(2);
// Synchronous: what was acknowledged must be said before anything can kill us.
const say = (line) => writeSync(1, `${line}\n`);

const log = await openLog(url, { patienceMs: 30_000 });
say('open');
for (let turn = 1; turn <= Number(count); turn += 1) {
	const delivery = `${name}-${turn}`;
	const { entry, repeated } = await log.append({
		shop,
		kind: 'exchange',
		delivery,
		platform: 'terminal',
		channel: 'C1',
		thread: null,
		build: 'heron',
		topic: 'wire',
		personId: name,
		personName: `Writer ${name}`,
		text: `question ${turn} of ${name}`,
		at: '2026-05-04T12:00:00.000Z',
		follows: null,
		replaces: null,
		state: 'answered',
		body: { turn, filling: 'x'.repeat((turn * 97) % 3000) },
	});
	if (repeated) throw new Error(`${delivery} was there before`);
	say(`${entry.number} ${entry.hash} ${delivery}`);
}
await log.close();
say('done');
