/** Conversations of a thread: what is said, and what it changes among the inputs. */

export type Value = number | string | boolean | readonly Record<string, number | string>[];
type Changes = Record<string, Value | null>;
/** about the answer before: nothing changes */
type About = 'about';
type Step = readonly [text: string, changes: Changes | About];

export interface Chain {
	readonly topic: string;
	readonly steps: readonly Step[];
	readonly region?: 'us' | 'eu';
}

export const chain = (topic: string, ...steps: Step[]): Chain => ({ topic, steps });
export const eu = (topic: string, ...steps: Step[]): Chain => ({ topic, steps, region: 'eu' });
