import { borrowFrom, type Rest, topicNamed } from '@lugbook/core';
import type { Given, Reading } from '@lugbook/language';
import type { Log } from '@lugbook/log';
import { valuesOf } from '../question.js';
import { vanOf } from './van.js';

const words = 'from build ';

export function isFromBuild({ said }: Pick<Given, 'said'>): boolean {
	return said.startsWith(words);
}

/** A reading with what it leaves out and the build knows, and the values of the build that this rests on. */
export async function withBuild(
	log: Log,
	shop: string,
	build: string | null,
	reading: Reading,
	named: readonly string[],
): Promise<{ readonly reading: Reading; readonly rests: readonly Rest[] }> {
	const topic = reading.topic === null ? null : topicNamed(reading.topic);
	if (build === null || topic === null || reading.conflicts.length > 0) return { reading, rests: [] };
	const van = await vanOf(log, shop, build);
	if (van.pieces.length === 0) return { reading, rests: [] };
	const borrowed = borrowFrom(van, topic, valuesOf(reading.given), named, reading.context);
	const said = `${words}"${build}"`;
	return {
		reading: {
			...reading,
			given: [
				...reading.given,
				...borrowed.map(({ name, value }) => ({ name, value: value as Given['value'], said })),
			],
		},
		rests: borrowed.flatMap(({ rests }) => rests),
	};
}
