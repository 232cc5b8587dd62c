import type { Phrasebook } from '../phrasebook.js';

export const spanish: Phrasebook = {};
