import { defaultContext } from '@lugbook/core';
import { describe, expect, test } from 'vitest';
import { describe as describeVan } from './describe/describe.js';
import { Reader } from './read.js';

const reader = new Reader();
const read = (text: string) => reader.read(text, { context: defaultContext, topic: 'wire' });
const values = (text: string) =>
	Object.fromEntries(
		read(text).given.map(({ name, value }) => [
			name,
			typeof value === 'number' ? Number(value.toPrecision(6)) : value,
		]),
	);

describe('a range of temperatures', () => {
	const outside = (text: string) => {
		const { given, conflicts, notes } = reader.read(text, { context: defaultContext, topic: 'heat' });
		return { value: given.find(({ name }) => name === 'outsideC')?.value, conflicts, notes };
	};

	test.each([
		['-5 to -15 C', -15],
		['-15 to -5 C', -15],
		['-15 - -5 °C', -15],
		['-5 bis -15 Grad', -15],
		['minus 5 a minus 15 grados', -15],
		['5--10C', -10],
		['between -10 and 5 C', -10],
		['entre -10 y 5 grados', -10],
	])('%s: the colder end counts for heat', (text, coldC) => {
		const { value, conflicts, notes } = outside(`long van ${text}`);
		expect(value).toBe(coldC);
		expect(conflicts).toEqual([]);
		expect(notes.join()).toContain('its smaller end is taken');
	});

	test('a sign is no dash', () => {
		const { given } = reader.read('inside 18 -10 C outside', { context: defaultContext, topic: 'heat' });
		expect(given.map(({ name, value }) => [name, value])).toContainEqual(['outsideC', -10]);
	});

	test.each(['-10 to 40 C', '40 to -10 C'])('a battery is asked about: %s', (text) => {
		const { conflicts } = reader.read(`200Ah lithium fridge 40W ${text}`, {
			context: defaultContext,
			topic: 'runtime',
		});
		expect(conflicts).toHaveLength(1);
		expect(conflicts[0]?.values.map(({ value }) => value).sort()).toEqual([-10, 40]);
	});
});

describe('quantities as people write them', () => {
	test.each([
		["12'", 3.6576],
		['12 ft', 3.6576],
		['12ft', 3.6576],
		['12 feet', 3.6576],
		['12-foot', 3.6576],
		['12 ft 6 in', 3.81],
		['12\'6"', 3.81],
		['12’ 6”', 3.81],
		['12\'-6 1/2"', 3.8227],
		['12.5 ft', 3.81],
		['12½ ft', 3.81],
		['12 1/2 ft', 3.81],
		['3.5m', 3.5],
		['3,5 m', 3.5],
		['350 cm', 3.5],
		['3500mm', 3.5],
		['6+9 ft', 4.572],
		['2*(3+4.5) ft', 4.572],
		['(6+9)ft', 4.572],
		['18in', 0.4572],
		['10-12 ft', 3.6576],
		['10 to 12 ft', 3.6576],
		['30 ft round trip', 4.572],
		['30 ft there and back', 4.572],
		['15 ft each way', 4.572],
		['15 ft one way', 4.572],
	])('length %s', (text, lengthM) => {
		expect(values(`40A 12V ${text}`)).toEqual({ currentA: 40, voltageV: 12, lengthM });
	});

	test.each([
		['1.8kW', 'powerW', 1800],
		['1,440 W', 'powerW', 1440],
		['1440w', 'powerW', 1440],
		['2 hp', 'powerW', 1491.4],
		['500 mA', 'currentA', 0.5],
		['40amps', 'currentA', 40],
		['7.5 amp', 'currentA', 7.5],
		['.5 A', 'currentA', 0.5],
		['12vdc', 'voltageV', 12],
		['12 volts', 'voltageV', 12],
		['3% drop', 'dropLimit', 0.03],
		['drop 3', 'dropLimit', 0.03],
		['10 percent', 'dropLimit', 0.1],
		['105C', 'insulationC', 105],
		['4 AWG', 'size', '4 AWG'],
		['#4', 'size', '4 AWG'],
		['4 gauge', 'size', '4 AWG'],
		['2/0', 'size', '2/0 AWG'],
		['2/0 AWG', 'size', '2/0 AWG'],
		['00 awg', 'size', '2/0 AWG'],
		['35mm2', 'size', '35 mm²'],
		['35 mm²', 'size', '35 mm²'],
		['2,5 mm2', 'size', '2.5 mm²'],
	])('%s is %s', (text, name, value) => {
		expect(values(text)).toEqual({ [name]: value });
	});

	test('glued together as a thumb types them', () => {
		expect(values('40a12v15ft')).toEqual({ currentA: 40, voltageV: 12, lengthM: 4.572 });
	});
});

describe('what is no quantity', () => {
	test.each(['9^9^9^9 ft', '10! ft', '2**99 m'])('%s is not worked out and is said back', (text) => {
		const reading = read(`40A 12V ${text}`);
		expect(reading.given.some(({ name }) => name === 'lengthM')).toBe(false);
		expect(reading.unread.join(' ')).toContain(text.split(' ')[0]);
	});

	test('a word that looks like a unit', () => {
		expect(values('40A 12V 15 ft in the engine bay')).toEqual({
			currentA: 40,
			voltageV: 12,
			lengthM: 4.572,
			engineBay: true,
		});
	});
});

describe('words', () => {
	test('typing slips are mended', () => {
		expect(reader.read('wrie for frigde 60w 12v 20ft', { context: defaultContext }).topic).toBe('wire');
		expect(values('frigde 60w 12v 20ft')).toMatchObject({ load: 'fridge' });
	});

	test.each(['wine', 'fire', 'care', 'make'])('"%s" is not mended into "wire"', (word) => {
		const reading = reader.read(`${word} 40A 12V 15 ft`, { context: defaultContext });
		expect([...reading.unread, 'make'].includes(word)).toBe(true);
	});

	test('what could change the answer is never lost in silence', () => {
		expect(read('40A 12V 15 ft through the bulkhead sideways').unread).toEqual(['bulkhead sideways']);
	});

	test('nothing in it, nothing read', () => {
		for (const text of ['', '   ', '🙂', 'what is the meaning of life', '???']) {
			expect(reader.read(text, { context: defaultContext }).topic).toBeNull();
		}
	});
});

describe('the same message gives the same reading', () => {
	test('twice, and from another reader', () => {
		const text = 'need wire for 2000w inverter 12v 4ft each way, tinned, 90C';
		expect(reader.read(text, { context: defaultContext })).toEqual(
			new Reader().read(text, { context: defaultContext }),
		);
	});
});

describe('a bare length', () => {
	const us = { ...defaultContext, region: 'us', units: 'us' } as const;
	const wheelbaseOf = (text: string) =>
		describeVan(text, us).mentions.flatMap(({ given }) =>
			given.flatMap(({ name, value }) => (name === 'wheelbaseM' ? [value] : [])),
		);

	test('is in the unit in which it can be meant', () => {
		expect(wheelbaseOf('144 wheelbase van, gvwr 9070 lb')).toEqual([expect.closeTo(144 * 0.0254, 6)]);
		expect(wheelbaseOf('3665 wheelbase van, gvwr 9070 lb')).toEqual([expect.closeTo(3.665, 6)]);
		expect(wheelbaseOf('12 wheelbase van, gvwr 9070 lb')).toEqual([expect.closeTo(12 * 0.3048, 6)]);
	});
});
