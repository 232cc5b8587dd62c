import type { Phrasebook } from '../phrasebook.js';

export const german: Phrasebook = {};
