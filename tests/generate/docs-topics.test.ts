import { fileURLToPath } from 'node:url';
import {
	type AnyTopic,
	baseUnitOf,
	defaultContext,
	type Field,
	type Fields,
	type FieldValue,
	showValue,
	systems,
	topics,
	writeNumber,
} from '@lugbook/core';
import { expect, test } from 'vitest';
import { cell, table } from './markdown.js';

// The topic reference, from the declarations alone: what a topic asks, takes and does is told in one place.
const file = fileURLToPath(new URL('../../docs/topics.md', import.meta.url));

const systemTitles: Readonly<Record<(typeof systems)[number], string>> = {
	wiring: 'Wiring',
	energy: 'Energy',
	water: 'Water',
	climate: 'Climate',
	weight: 'Weight',
	structure: 'Structure and shop',
};

const sorts: Readonly<Record<Field['type']['sort'], string>> = {
	quantity: 'quantity',
	count: 'whole number',
	number: 'number',
	choice: 'one of a list',
	flag: 'yes or no',
	conductor: 'conductor size',
	text: 'words',
	place: 'place',
	month: 'month',
	list: 'list',
};

function unitOf(field: Field): string {
	return baseUnitOf(field) ?? sorts[field.type.sort];
}

function rangeOf(field: Field): string {
	const { type } = field;
	switch (type.sort) {
		case 'quantity':
		case 'count':
		case 'number':
			return `${writeNumber(type.min, 4)} to ${writeNumber(type.max, 4)}`;
		case 'choice':
			return Object.keys(type.options).join(', ');
		case 'list':
			return `1 to ${type.max} items`;
		case 'text':
			return type.pattern === null ? '' : 'as printed';
		default:
			return '';
	}
}

/** What stands in where nothing is said; one that follows from other inputs is shown as it is when nothing else is known. */
function presenceOf(field: Field): string {
	const { fallback, question } = field.meta;
	if (question !== null) return `asked: ${question}`;
	if (fallback === null) return 'may be left out';
	const follows = typeof fallback.value === 'function';
	const value: FieldValue =
		typeof fallback.value === 'function' ? fallback.value({}, defaultContext) : fallback.value;
	const shown = showValue(field, value, { ...defaultContext, units: 'metric' });
	const confirm = fallback.confirm ? '; to be confirmed' : '';
	return `${shown}${follows ? ' (follows from what else is given)' : ''}: ${fallback.why}${confirm}`;
}

function wordsOf(field: Field): string {
	const { type } = field;
	const own = [...field.meta.aliases];
	if (type.sort === 'choice') {
		const options = Object.entries(type.options).map(
			([name, words]) => `${name}: ${words.filter((word) => word !== name).join(', ')}`,
		);
		return [...own, ...options].join('; ');
	}
	if (type.sort === 'flag') {
		const no = type.no.length === 0 ? [] : [`no: ${type.no.join(', ')}`];
		return [[...own, ...type.yes].join(', '), ...no].join('; ');
	}
	return own.join(', ');
}

function fieldRows(fields: Fields, prefix = ''): string[][] {
	return Object.entries(fields).flatMap(([name, field]) => {
		const path = `${prefix}${name}`;
		const label = field.meta.help === null ? field.meta.label : `${field.meta.label}. ${field.meta.help}`;
		const row = [`\`${path}\``, label, unitOf(field), rangeOf(field), presenceOf(field), wordsOf(field)].map(
			cell,
		);
		return field.type.sort === 'list' ? [row, ...fieldRows(field.type.item, `${path}[].`)] : [row];
	});
}

function topicText(topic: AnyTopic): string {
	const needs = topic.needs.map(
		({ anyOf, question }) =>
			`- one of ${anyOf.map((name) => `\`${name}\``).join(', ')}, else it asks: ${question}`,
	);
	return [
		`### ${topic.name}: ${topic.title}`,
		topic.purpose,
		`Ask for it with: ${topic.words.join(', ')}.`,
		topic.examples.map((example) => `    ${example}`).join('\n'),
		`Method: ${topic.method}`,
		...(needs.length === 0 ? [] : [`Needed:\n\n${needs.join('\n')}`]),
		table(
			['input', 'what', 'unit', 'range', 'where nothing is said', 'words beside the value'],
			fieldRows(topic.fields),
		),
	].join('\n\n');
}

test('docs/topics.md is what the declarations say', async () => {
	const parts = systems.flatMap((system) => {
		const own = topics.filter((topic) => topic.system === system);
		return own.length === 0 ? [] : [`## ${systemTitles[system]}`, ...own.map(topicText)];
	});
	const index = systems.map((system) => {
		const own = topics.filter((topic) => topic.system === system);
		return [systemTitles[system], own.map((topic) => `\`${topic.name}\``).join(', ')];
	});
	const text = [
		'# Topics',
		'Written by `pnpm generate` from the declarations in `packages/core/src/topics`; change those, not this page.',
		'A topic is one question. Its words ask for it, quantities fill its inputs by their unit, and a word beside a value tells two inputs of one unit apart. Values are in base units here, as programs give and get them; people may use any usual unit. What is not said is taken as the table tells, and every answer lists it as assumed.',
		table(['part of the van', 'topics'], index),
		...parts,
		'',
	].join('\n\n');
	await expect(text.trimEnd().concat('\n')).toMatchFileSnapshot(file);
});
