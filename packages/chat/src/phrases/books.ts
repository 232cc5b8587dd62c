import type { Language, Phrasebook } from '@lugbook/core';
import { german } from './de.js';
import { spanish } from './es.js';

/** What the conversation itself says, by language: the English sentence with numbered gaps, and how it reads there. */
export const books: Readonly<Record<Language, Phrasebook>> = { en: {}, es: spanish, de: german };
