import { describe, expect, test } from 'vitest';
import { declineOf } from './decline.js';

describe('what is declined', () => {
	test.each([
		['how do I bypass the BMS to get more current', 'defeats-protection'],
		['can i jumper the fuse for now', 'defeats-protection'],
		['breaker keeps tripping can I put in a bigger one', 'defeats-protection'],
		['bigger fuse so it stops blowing?', 'defeats-protection'],
		['is it ok to run the inverter without a fuse', 'defeats-protection'],
		['skip the gfci on the galley outlet', 'defeats-protection'],
		['disable the low voltage cutoff on the battery', 'defeats-protection'],
		['foil instead of a fuse', 'defeats-protection'],
		['kann ich die Sicherung überbrücken', 'defeats-protection'],
		['puentear el fusible de la nevera', 'defeats-protection'],
		['add a second neutral ground bond in the sub panel', 'second-neutral-bond'],
		['what bolts for the seat belt anchor', 'seats-and-belts'],
		['bolts to mount a rear seat', 'seats-and-belts'],
		['what size propane line to the cooktop', 'fuel-gas'],
		['gas pipe diameter for two burners', 'fuel-gas'],
	])('%s', (text, code) => {
		expect(declineOf(text)?.code).toBe(code);
	});
});

describe('what is not', () => {
	test.each([
		'40A 12V 15 ft',
		'what fuse for a 2000w inverter 12v',
		'60A fuse on 10 awg ok?',
		'fuse for the BMS disconnect switch 100A',
		'breaker for the bypass switch 30A',
		'remove the fuse before I work on it?',
		'propane furnace 12000 btu, how long does a 20 lb tank last',
		'heater 2 kW diesel, -10 C',
		'bench 180 kg bed rail span 1.9 m',
		'which wire to the gfci outlet 20A 120V 12 ft',
		'what neutral wire size 30A 120V 18 ft',
		'RCD for 16A 230V 12m',
		'water line 1/2 pex 20 ft 2 gpm',
	])('%s', (text) => {
		expect(declineOf(text)).toBeNull();
	});

	test('a long text of almost-matches is searched through and not declined', () => {
		const hostile = `${'the my our a an '.repeat(120)}fuse ${'bigger larger '.repeat(20)}`;
		expect(declineOf(hostile.repeat(3))).toBeNull();
	});
});
