import type { Language } from '../topic/context.js';
import { van as german } from './de/van.js';
import { van as spanish } from './es/van.js';
import type { Phrasebook } from './phrasebook.js';

/** What the cross-checks of a van find and ask, by language: for findings that were kept in English and are shown again. */
export const vanPhrases: Readonly<Record<Language, Phrasebook>> = { en: {}, es: spanish, de: german };
