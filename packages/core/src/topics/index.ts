// Written by `pnpm generate` from the files of this folder: one topic a file.
import type { AnyTopic } from '../topic/declare.js';
import { wire } from './wire.js';

export const topics: readonly AnyTopic[] = [wire];

export function topicNamed(name: string): AnyTopic | null {
	return topics.find((topic) => topic.name === name) ?? null;
}
