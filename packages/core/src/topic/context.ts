import type { UnitHabit } from '../quantity/kinds.js';

export const regions = ['us', 'eu'] as const;
/** Which rule set and which sizes are meant. */
export type Region = (typeof regions)[number];

export const languages = ['en', 'es', 'de'] as const;
export type Language = (typeof languages)[number];

/** Everything besides the inputs that an answer depends on. No clock, no chance, no file. */
export interface Context {
	readonly region: Region;
	readonly units: UnitHabit;
	readonly language: Language;
}

export const defaultContext: Context = { region: 'us', units: 'us', language: 'en' };
