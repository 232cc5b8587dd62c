import { topicNamed } from '@lugbook/core';
import { type Decline, declineOf, equipmentNamed, type Reading } from '@lugbook/language';
import { type Answer, bareAnswer } from '../answer.js';
import { withBuild } from '../build/borrowed.js';
import { toldInWords } from '../build/tell.js';
import type { Remembered } from '../memory.js';
import type { Button, Part, Reply } from '../message.js';
import { exampleQuestion, leaveOut, type Worked, workOut } from '../question.js';
import { workingParts } from '../render/parts.js';
import { aboutMe } from '../review/me.js';
import type { Turn } from '../turn.js';

export const askHelp = [
	'Ask in words, as you would ask across the shop:',
	`  ${exampleQuestion}`,
	"  fridge 5 amps 22' run 12v",
	"Lengths are one way unless you say round trip. Units as you like: 12', 3.5m, 2/0, 35mm2.",
	'In the thread go on: "and at 20 ft?", "10% is fine", "what about 24 V", "why", "show the working".',
].join('\n');

/** "And at 20 ft?", "y a 8 metros", "und mit 24 V": begins by joining on to what was said before. */
const joins = /^\W*(?:and|or|but|y|o|pero|und|oder|aber)\s+\S/iu;

/** Anything in words: a question, or a change to the one before it in the thread. */
export async function ask(turn: Turn): Promise<Reply> {
	const { incoming, reader } = turn;
	const aboutOneself = await aboutMe(turn);
	if (aboutOneself !== null) return aboutOneself;
	const build = await turn.build();
	const decline = declineOf(turn.text);
	if (decline !== null) return await turn.keep(build, { answer: declined(decline), request: null });
	const context = turn.context();
	const { topic, rest } = namedTopic(turn.text);
	const goesOn = /^>\s*/.exec(rest);
	const question = goesOn === null ? rest : rest.slice(goesOn[0].length);
	const fresh = reader.read(question, { context, ...(topic === null ? {} : { topic }) });
	const mayGoOn =
		incoming.thread !== null || goesOn !== null || fresh.said.length > 0 || joins.test(question);
	const remembered = incoming.keep !== false && mayGoOn ? await turn.lastQuestion() : null;
	const goesOnHere = remembered !== null && (incoming.thread !== null || goesOn !== null);
	const told = topic === null ? await toldInWords(turn, build, question, fresh, goesOnHere) : null;
	if (told !== null) return told;
	const reading =
		remembered === null || topic !== null
			? fresh
			: reader.read(question, {
					context: { ...context, region: remembered.context.region },
					previous: remembered,
				});
	return await answerReading(turn, build, reading, remembered, question);
}

function declined({ code, why, instead }: Decline): Answer {
	return bareAnswer('refused', why, {
		because: instead,
		findings: [{ code, severity: 'danger', text: why, source: 'common practice of the trade' }],
	});
}

/** Calculates what was read, or asks where the reading is in doubt. */
export async function answerReading(
	turn: Turn,
	build: string | null,
	reading: Reading,
	remembered: Remembered | null,
	text: string,
): Promise<Reply> {
	const about = remembered === null ? null : aboutPrevious(reading, remembered);
	if (about !== null && remembered !== null) {
		const { request, answer } = remembered.exchange;
		const worked = { answer: about.answer, request, about: answer };
		return await turn.keep(build, worked, { follows: remembered.entry, parts: about.parts });
	}
	if (reading.rival !== null && reading.topic !== null) {
		const choices: Button[] = [reading.topic, reading.rival].map((name) => ({
			action: 'answer',
			label: name,
			value: `${name}: ${text}`,
		}));
		return await turn.keep(build, whichTopic(reading.topic, reading.rival), { choices });
	}
	const follows = reading.followsUp && remembered !== null ? remembered : null;
	const spokenOf = build === null ? [] : equipmentNamed(text);
	const named = spokenOf.length === 0 && follows !== null ? follows.named : spokenOf;
	const known = await withBuild(turn.log, turn.incoming.shop, build, reading, named);
	const worked = { ...workOut(known.reading, named), rests: known.rests };
	return await turn.keep(build, worked, { follows: follows?.entry ?? null, choices: choicesOf(reading) });
}

/** "wire: 40A 12V 15 ft" names its topic itself. */
function namedTopic(text: string): { topic: string | null; rest: string } {
	const match = /^([a-z][a-z-]{1,30}):\s*/i.exec(text);
	const topic = match === null ? null : topicNamed((match[1] as string).toLowerCase());
	if (match === null || topic === null) return { topic: null, rest: text };
	return { topic: topic.name, rest: text.slice(match[0].length) };
}

/** "why", "show the working", "one size up": about the answer before, not a new calculation. */
function aboutPrevious(
	reading: Reading,
	remembered: Remembered,
): { readonly answer: Answer; readonly parts: readonly Part[] } | null {
	const { answer } = remembered.exchange;
	const changes = reading.given.some((given) => !remembered.given.includes(given));
	if (changes || answer.status !== 'answered') return null;
	const { topic, because, governedBy, neighbours, tipping, working, assumed, sources } = answer;
	if (asksForPart(reading, topic)) {
		const { findings, cautions } = answer;
		return {
			answer: bareAnswer('listed', answer.headline, { topic, because, findings, cautions }),
			parts: [],
		};
	}
	if (reading.said.includes('working')) {
		const headline = `Working of No. ${remembered.entry}: ${answer.headline}`;
		return {
			answer: bareAnswer('listed', headline, { topic, because, working, assumed, sources }),
			parts: workingParts(answer),
		};
	}
	if (reading.said.includes('why')) {
		const headline = governedBy === null ? answer.headline : `${answer.headline}: ${governedBy} governs`;
		return {
			answer: bareAnswer('listed', headline, { topic, because, governedBy, neighbours, tipping }),
			parts: [],
		};
	}
	const wanted = reading.said.includes('size-up')
		? neighbours.at(-1)
		: reading.said.includes('size-down')
			? neighbours[0]
			: undefined;
	if (wanted === undefined) return null;
	const verdict = wanted.passes ? 'would do too' : 'would not do';
	const headline = `${wanted.choice} ${verdict}: ${wanted.text}`;
	return { answer: bareAnswer('listed', headline, { topic, neighbours }), parts: [] };
}

/** "And the fuse?" in the thread of a wire: the answer before holds it already. */
function asksForPart(reading: Reading, topic: string | null): boolean {
	if (reading.topic === null || topic === null || reading.followsUp) return false;
	const isPart = topicNamed(topic)?.includes.includes(reading.topic) ?? false;
	return (
		isPart && reading.given.length === 0 && reading.conflicts.length === 0 && reading.unplaced.length === 0
	);
}

function whichTopic(topic: string, rival: string): Worked {
	const titles = [topic, rival].map((name) => topicNamed(name)?.title.toLowerCase() ?? name);
	return {
		answer: bareAnswer('needs-input', `Is this about ${titles.join(', or ')}?`, { missing: ['topic'] }),
		request: null,
	};
}

/** Buttons for the readings that are in doubt. */
function choicesOf(reading: Reading): Button[] {
	const [conflict] = reading.conflicts;
	if (conflict === undefined)
		return reading.unplaced.length === 0 ? [] : [{ action: 'answer', label: leaveOut, value: leaveOut }];
	return conflict.values.map(({ said }) => ({ action: 'answer', label: said.slice(0, 60), value: said }));
}
