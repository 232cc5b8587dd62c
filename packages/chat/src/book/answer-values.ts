/** Values of an answer by name: its results, what was given and what was assumed, in base units. */

import type { Answer } from '../answer.js';
import type { ExchangeBody } from '../memory.js';

export function numberOf({ answer, request }: ExchangeBody, name: string): number | null {
	const value =
		answer.results.find((result) => result.name === name)?.value ??
		request?.given.find((given) => given.name === name)?.value ??
		answer.assumed.find((assumed) => assumed.name === name)?.value;
	return typeof value === 'number' ? value : null;
}

export function wordOf({ results }: Answer, name: string): string | null {
	const value = results.find((result) => result.name === name)?.value;
	return typeof value === 'string' ? value : null;
}
