import { type Answer, bareAnswer } from './answer.js';
import type { Audience, Button, Part, Reply } from './message.js';
import { buttonsOf, partsOf } from './render/parts.js';

/** An answer or a question goes to the channel; a correction or a failure to the asker alone. */
export function audienceOf(answer: Answer): Audience {
	return answer.status === 'not-understood' || answer.status === 'refused' ? 'asker' : 'channel';
}

export function replyWith(answer: Answer, build: string | null, audience: Audience): Reply {
	const parts = partsOf(answer, build);
	return { answer, audience, parts, buttons: buttonsOf(answer), build, repeated: false };
}

export function withExtras(reply: Reply, parts: readonly Part[], choices: readonly Button[]): Reply {
	if (parts.length === 0 && choices.length === 0) return reply;
	return { ...reply, parts: [...reply.parts, ...parts], buttons: [...choices, ...reply.buttons] };
}

/** A reply that lists or says something about the log or a build; its first line is the headline. */
export function listed(text: string, audience: Audience, answer: Partial<Answer> = {}): Reply {
	const [headline = '', ...lines] = text.split('\n');
	return {
		answer: bareAnswer('listed', headline, answer),
		audience,
		parts: [
			{ kind: 'headline', text: headline, fold: false },
			...lines.map((line) => ({ kind: 'list' as const, text: line, fold: false })),
		],
		buttons: [],
		repeated: false,
	};
}
