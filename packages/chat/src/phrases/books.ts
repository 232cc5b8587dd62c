import { type Language, type Phrasebook, vanPhrases } from '@lugbook/core';
import { german } from './de.js';
import { spanish } from './es.js';
import { german as germanForms } from './forms/de.js';
import { spanish as spanishForms } from './forms/es.js';
import { german as germanLog } from './log/de.js';
import { spanish as spanishLog } from './log/es.js';

/**
 * What the conversation itself says, by language, and what a check of the van finds: the English sentence with numbered
 * gaps, and how it reads there.
 */
export const books: Readonly<Record<Language, Phrasebook>> = {
	en: {},
	es: { ...vanPhrases.es, ...spanishForms, ...spanishLog, ...spanish },
	de: { ...vanPhrases.de, ...germanForms, ...germanLog, ...german },
};
