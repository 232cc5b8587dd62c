import type { Context, Region } from '@lugbook/core';
import type { Element } from './elements.js';
import { languageOf } from './words/tongue.js';

/** What a message says by itself: "35 mm2" and "230 V" mean metric sizes, feet mean feet. */
export function contextOf(elements: readonly Element[], message: string, base: Context): Context {
	let region: Region = base.region;
	let us = 0;
	let metric = 0;
	for (const element of elements) {
		if (element.type === 'conductor') region = element.name.endsWith('mm²') ? 'eu' : 'us';
		if (element.type !== 'quantity') continue;
		for (const { kind, value, symbol } of element.readings) {
			if (kind === 'voltage' && value >= 220 && value <= 240 && !/\b240\b/.test(message)) region = 'eu';
			if (kind === 'voltage' && value >= 110 && value <= 127) region = 'us';
			if (['ft', 'in', 'gal', 'gpm', 'lb', 'psi', '°F', 'mi', 'cfm', 'mph', 'ft²'].includes(symbol)) us += 1;
			if (['m', 'cm', 'mm', 'L', 'L/min', 'kg', 'bar', 'km', 'km/h', 'm²', 'm³/h'].includes(symbol))
				metric += 1;
		}
	}
	const words = elements.flatMap((element) =>
		element.type === 'phrase' ? element.phrase.split(' ') : element.type === 'unknown' ? [element.word] : [],
	);
	const language = languageOf(words);
	const units =
		us > metric
			? 'us'
			: metric > us
				? 'metric'
				: region !== base.region
					? region === 'eu'
						? 'metric'
						: 'us'
					: base.units;
	return { region, units, language: language ?? base.language };
}
