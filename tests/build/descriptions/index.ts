import type { DescriptionCase } from './case.js';
import { german } from './german.js';
import { later } from './later.js';
import { metric } from './metric.js';
import { shorthand } from './shorthand.js';
import { sloppy } from './sloppy.js';
import { spanish } from './spanish.js';
import { tidy } from './tidy.js';

export const descriptionCases: readonly DescriptionCase[] = [
	...tidy,
	...sloppy,
	...shorthand,
	...spanish,
	...german,
	...metric,
	...later,
];
