import { describe, expect, test } from 'vitest';
import { defaultContext } from './context.js';
import { type AnyTopic, declareTopic } from './declare.js';
import { choice, conductor, count, flag, list, month, number, place, quantity, text } from './field.js';
import { runTopic } from './run.js';
import { sizingSchema } from './sizing.js';
import { fromMemory, physics, practice, published } from './source.js';

const metric = { ...defaultContext, units: 'metric' } as const;

const trial = declareTopic({
	name: 'trial',
	title: 'Trial',
	system: 'wiring',
	purpose: 'To be run by its tests.',
	words: ['trial'],
	examples: [],
	method: 'None.',
	fields: {
		lengthM: quantity({ label: 'length', kind: 'length', min: 0.3048, max: 30, required: 'How long is it?' }),
		currentA: quantity({ label: 'current', kind: 'current', min: 0.1, max: 100 }),
		powerW: quantity({ label: 'power', kind: 'power', min: 1, max: 1000 }),
		voltageV: quantity({
			label: 'voltage',
			kind: 'voltage',
			min: 5,
			max: 60,
			fallback: {
				value: (given, context) => (given.motor === true || context.region === 'eu' ? 24 : 12),
				why: 'usual',
				confirm: true,
			},
		}),
		people: count({ label: 'people', min: 1, max: 12 }),
		factor: number({ label: 'factor', min: 0.5, max: 2 }),
		kind: choice({ label: 'kind', options: { one: ['the first'], two: ['the second'] } }),
		motor: flag({ label: 'motor', yes: ['motor'] }),
		size: conductor({ label: 'size' }),
		where: place({ label: 'place' }),
		when: month({ label: 'month' }),
		what: text({ label: 'name' }),
		loads: list({
			label: 'loads',
			max: 3,
			item: {
				name: text({ label: 'name of the load', required: 'Which load?' }),
				powerW: quantity({
					label: 'power of the load',
					kind: 'power',
					min: 1,
					max: 500,
					required: 'How much?',
				}),
				hours: quantity({ label: 'hours of the load', kind: 'duration', min: 0.1, max: 24 }),
			},
		}),
	},
	needs: [{ anyOf: ['currentA', 'powerW'], question: 'Which current or power?' }],
	calculate: (input, sheet) => {
		if (input.kind === 'one') return sheet.refuse('unsafe', 'Not this.', 'Take the second.', 'kind');
		if (input.kind === 'two') {
			return sheet.ask({ name: 'people', label: 'people', question: 'How many people?' });
		}
		sheet.result('length', 'length', input.lengthM, { kind: 'length', write: { round: 'up' } });
		sheet.result('share', 'share', 0.25, { kind: 'fraction' });
		sheet.result('days', 'days', 2.345, { unit: 'd', write: { decimals: 1, round: 'down' } });
		sheet.result('plain', 'plain', 7);
		sheet.result('word', 'word', 'enough');
		sheet.step('voltage', 'U', `${input.voltageV}`, input.voltageV, {
			kind: 'voltage',
			source: physics('law'),
		});
		sheet.assume('guess', 'guess', true, 'why not');
		sheet.assume('no', 'no', false, 'why not', { confirm: true });
		sheet.finding('note', 'third', 'c', practice());
		sheet.finding('danger', 'first', 'a', published('Document', 'clause'));
		sheet.finding('warning', 'second', 'b', fromMemory('Document'));
		sheet.caution('Care.', 'Care.');
		sheet.neighbour('other', false, 'too small');
		sheet.tipping('lengthM', 'length', 4, 'up to 4 m', { kind: 'length' });
		const said = sheet.say`Given ${sheet.isGiven('voltageV') ? 'yes' : 'no'}, ${sheet.show('length', input.lengthM)}.`;
		return sheet.answer(said, { because: 'so', governedBy: 'rule' });
	},
});

function refusalsOf(given: Readonly<Record<string, unknown>>, context = defaultContext) {
	const outcome = runTopic(trial, given, context);
	return outcome.status === 'refused' ? outcome.refusals : [];
}

const complete = { lengthM: 3.048, currentA: 5 };

describe('inputs that are missing', () => {
	test('the required field is asked for with its question', () => {
		expect(runTopic(trial, { currentA: 5 }, defaultContext)).toEqual({
			status: 'needs-input',
			topic: 'trial',
			missing: [{ name: 'lengthM', label: 'length', question: 'How long is it?' }],
		});
	});

	test('one of several is asked for once; any of them will do', () => {
		const outcome = runTopic(trial, { lengthM: 3 }, defaultContext);
		expect(outcome.status === 'needs-input' && outcome.missing).toEqual([
			{ name: 'currentA', label: 'current', question: 'Which current or power?' },
		]);
		expect(runTopic(trial, { lengthM: 3, powerW: 60 }, defaultContext).status).toBe('answered');
	});

	test('undefined is the same as absent', () => {
		expect(runTopic(trial, { lengthM: undefined, currentA: 5 }, defaultContext).status).toBe('needs-input');
	});

	test('the calculation may ask too', () => {
		const outcome = runTopic(trial, { ...complete, kind: 'two' }, defaultContext);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe('people');
	});
});

describe('fallbacks', () => {
	test.each([
		[{}, defaultContext, 12],
		[{ motor: true }, defaultContext, 24],
		[{}, { ...metric, region: 'eu' as const }, 24],
	])('%j', (given, context, volts) => {
		const outcome = runTopic(trial, { ...complete, ...given }, context);
		if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
		expect(outcome.sizing.assumed[0]).toEqual({
			name: 'voltageV',
			label: 'voltage',
			value: volts,
			unit: 'V',
			text: `${volts} V`,
			why: 'usual',
			confirm: true,
		});
		expect(outcome.sizing.headline).toMatch(/^Given no/);
	});

	test('a given value is not assumed', () => {
		const outcome = runTopic(trial, { ...complete, voltageV: 48 }, defaultContext);
		if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
		expect(outcome.sizing.assumed.map((one) => one.name)).toEqual(['guess', 'no']);
		expect(outcome.sizing.headline).toBe('Given yes, 10 ft.');
	});
});

describe('values that can’t be', () => {
	test.each([
		['lengthM', 0, "I read 0 ft as the length; that can't be.", 'The length must be from 1 ft to 98.4 ft.'],
		[
			'lengthM',
			-3.048,
			"I read -10 ft as the length; that can't be.",
			'The length must be from 1 ft to 98.4 ft.',
		],
		[
			'lengthM',
			Number.NaN,
			"I can't use no number as the length.",
			'The length must be from 1 ft to 98.4 ft.',
		],
		['lengthM', Number.POSITIVE_INFINITY, 'without limit', 'The length must be from 1 ft to 98.4 ft.'],
		['lengthM', '10', 'I can\'t use "10" as the length.', 'The length must be from 1 ft to 98.4 ft.'],
		['voltageV', 900, "I read 900 V as the voltage; that can't be.", 'The voltage must be from 5 V to 60 V.'],
		['people', 2.5, "I can't use 2.5 as the people.", 'The people must be a whole number from 1 to 12.'],
		[
			'people',
			40,
			"I read 40 as the people; that can't be.",
			'The people must be a whole number from 1 to 12.',
		],
		['factor', 3, "I read 3 as the factor; that can't be.", 'The factor must be from 0.5 to 2.'],
		['kind', 'three', 'I can\'t use "three" as the kind.', 'The kind is one of: the first, the second.'],
		['motor', 'perhaps', 'I can\'t use "perhaps" as the motor.', 'The motor is yes or no.'],
		['size', '', 'as the size', 'The size is a size such as 4 AWG, 2/0 AWG or 35 mm².'],
		['where', 7, "I can't use 7 as the place.", 'The place is the name of a place, such as "Flagstaff".'],
		['when', 13, "I read 13 as the month; that can't be.", 'The month is a month, such as "March".'],
		['what', 'x'.repeat(300), `"${'x'.repeat(60)}"`, 'The name is a name of up to 200 characters.'],
		['loads', [], 'a list of 0', 'The loads holds 1 to 3 items.'],
		['loads', 'none', '"none"', 'The loads holds 1 to 3 items.'],
	])('%s: %j', (name, value, read, accepted) => {
		const refusals = refusalsOf({ ...complete, [name]: value });
		expect(refusals).toHaveLength(1);
		expect(refusals[0]).toMatchObject({ code: 'out-of-range', field: name });
		expect(refusals[0]?.text).toContain(read);
		expect(refusals[0]?.instead).toBe(accepted);
	});

	test('bounds are said in the asker’s units', () => {
		expect(refusalsOf({ ...complete, lengthM: 50 }, metric)[0]).toMatchObject({
			text: "I read 50 m as the length; that can't be.",
			instead: 'The length must be from 0.3 m to 30 m.',
		});
	});

	test('every bad value is named, not only the first', () => {
		expect(refusalsOf({ lengthM: 0, currentA: 900 }).map((one) => one.field)).toEqual([
			'lengthM',
			'currentA',
		]);
	});

	test('inside a list the item’s own field is named', () => {
		const refusals = refusalsOf({ ...complete, loads: [{ name: 'fan', powerW: 9000 }, { name: 'fridge' }] });
		expect(refusals.map((one) => one.text)).toEqual([
			"I read 9000 W as the power of the load; that can't be.",
			'The power of the load is missing.',
		]);
		expect(refusals[0]?.instead).toBe('The power of the load must be from 1 W to 500 W.');
	});

	test('an optional field of an item may be left out', () => {
		const outcome = runTopic(trial, { ...complete, loads: [{ name: 'fan', powerW: 20 }] }, defaultContext);
		expect(outcome.status).toBe('answered');
	});

	test('a field that the topic lacks is a programming error', () => {
		expect(() => runTopic(trial, { ...complete, colour: 'red' }, defaultContext)).toThrow(
			'trial has no field "colour"',
		);
	});
});

describe('the record', () => {
	const outcome = runTopic(trial, complete, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	const { sizing } = outcome;

	test('holds to its schema', () => {
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('results carry base unit and shown text', () => {
		expect(sizing.results.map(({ name, value, unit, text: shown }) => [name, value, unit, shown])).toEqual([
			['length', 3.048, 'm', '10 ft'],
			['share', 0.25, '1', '25 %'],
			['days', 2.345, 'd', '2.3 d'],
			['plain', 7, null, '7'],
			['word', 'enough', null, 'enough'],
		]);
	});

	test('findings stand gravest first, cautions once, sources with their mark', () => {
		expect(sizing.findings.map((one) => one.code)).toEqual(['first', 'second', 'third']);
		expect(sizing.findings.map((one) => one.source)).toEqual([
			'Document, clause',
			'Document (from memory, to be checked)',
			'common practice of the trade',
		]);
		expect(sizing.cautions).toEqual(['Care.']);
		expect(sizing.sources).toEqual(['law']);
	});

	test('assumptions of the calculation are listed after those of the fields', () => {
		expect(sizing.assumed.map((one) => [one.name, one.text, one.confirm])).toEqual([
			['voltageV', '12 V', true],
			['guess', 'yes', false],
			['no', 'no', true],
		]);
	});

	test('decision, reason and rule', () => {
		expect(sizing).toMatchObject({ headline: 'Given no, 10 ft.', because: 'so', governedBy: 'rule' });
	});

	test('a refusal of the calculation is handed on', () => {
		expect(runTopic(trial, { ...complete, kind: 'one' }, defaultContext)).toEqual({
			status: 'refused',
			topic: 'trial',
			refusals: [{ code: 'unsafe', text: 'Not this.', instead: 'Take the second.', field: 'kind' }],
		});
	});
});

describe('one topic resting on another', () => {
	const outer = (given: Readonly<Record<string, unknown>>): AnyTopic =>
		declareTopic({
			name: 'outer',
			title: 'Outer',
			system: 'wiring',
			purpose: 'To call another.',
			words: ['outer'],
			examples: [],
			method: 'None.',
			fields: {},
			calculate: (_, sheet) => {
				sheet.assume('voltageV', 'voltage', 13, 'mine');
				const inner = sheet.call(trial, given);
				return sheet.answer(inner.status);
			},
		});

	test('carries its chain, findings, cautions, sources and new assumptions', () => {
		const outcome = runTopic(outer(complete), {}, defaultContext);
		if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
		const { sizing } = outcome;
		expect(sizing.chain.map((one) => one.topic)).toEqual(['trial']);
		expect(sizing.findings).toHaveLength(3);
		expect(sizing.cautions).toEqual(['Care.']);
		expect(sizing.sources).toEqual(['law']);
		expect(sizing.assumed.map((one) => [one.name, one.value])).toEqual([
			['voltageV', 13],
			['guess', true],
			['no', false],
		]);
	});

	test('an unanswered one leaves no trace', () => {
		const outcome = runTopic(outer({ lengthM: -1 }), {}, defaultContext);
		if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
		expect(outcome.sizing).toMatchObject({ headline: 'refused', chain: [], findings: [] });
	});
});
