/** Sentences of one language: the English sentence with numbered gaps, and how it reads there. */
export type Phrasebook = Readonly<Record<string, string>>;
