/** "/build check": the cross-checks on what is known of a build, and what got better or worse since the last time. */

import { type Context, checkVan, phrase, type Van, type VanCheck, type VanFinding } from '@lugbook/core';
import type { Answer } from '../answer.js';
import { bareAnswer } from '../answer.js';
import { exchangeOf } from '../memory.js';
import type { Part, Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { counted } from './lines.js';
import { noBuild } from './tell.js';
import { vanOf } from './van.js';

/** what entries of a check have for a topic */
export const wholeVan = 'whole-van';

export async function checkBuild(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const van = await vanOf(turn.log, turn.incoming.shop, build);
	if (van.pieces.length === 0)
		return listed(`Nothing is known of build "${build}" yet. Tell it with "/build describe ...".`, 'asker');
	const check = checkVan(van, turn.context());
	const before = await lastCheck(turn, build);
	const answer = bareAnswer('listed', headline(build, check), {
		topic: wholeVan,
		findings: check.findings.map(({ code, severity, text, source }) => ({ code, severity, text, source })),
		missing: check.notKnown.map(({ fact }) => fact),
	});
	const reply = await turn.keep(build, { answer, request: null });
	const [head] = reply.parts;
	const parts = [...(head === undefined ? [] : [head]), ...sinceParts(before, answer), ...checkParts(check)];
	return { ...reply, parts };
}

function headline(build: string, { findings, notKnown }: VanCheck): string {
	const count = (severity: string) => findings.filter((finding) => finding.severity === severity).length;
	const counts = [
		counted(count('danger'), 'danger'),
		counted(count('warning'), 'warning'),
		counted(count('note'), 'note'),
	];
	return `Build "${build}": ${counts.join(', ')}; ${counted(questionsOf(notKnown).length, 'thing')} not known`;
}

/** One question may settle several facts: both axle ratings stand on one label. */
function questionsOf(notKnown: VanCheck['notKnown']): string[] {
	return [...new Set(notKnown.map(({ question }) => question))];
}

function checkParts({ findings, notKnown }: VanCheck): Part[] {
	const found = findings.map(
		(finding): Part => ({
			kind: finding.severity,
			text: withRests(finding),
			fold: finding.severity === 'note',
		}),
	);
	const questions = questionsOf(notKnown).map(
		(question): Part => ({ kind: 'list', text: `Not known: ${question}`, fold: false }),
	);
	return [...found, ...questions];
}

function withRests({ text, rests }: VanFinding): string {
	return rests.length === 0 ? text : `${text} (${rests.join(', ')})`;
}

/** What a check says in English, and how the same check says it in the language of the context. */
export function checkPairs(van: Van, context: Context): Map<string, string> {
	const english = checkVan(van, { ...context, language: 'en' });
	const told = checkVan(van, context);
	const pairs = new Map<string, string>();
	for (const [index, finding] of english.findings.entries()) {
		const same = told.findings[index];
		if (same === undefined || same.code !== finding.code) continue;
		pairs.set(finding.text, same.text);
		pairs.set(withRests(finding), withRests(same));
	}
	for (const { fact, question } of english.notKnown) {
		const same = told.notKnown.find((one) => one.fact === fact);
		if (same !== undefined) pairs.set(question, phrase(context, same.question));
	}
	return pairs;
}

interface Before {
	readonly entry: number;
	readonly answer: Answer;
}

async function lastCheck({ log, incoming }: Turn, build: string): Promise<Before | null> {
	const { entries } = await log.find(incoming.shop, {
		build,
		topic: wholeVan,
		kinds: ['exchange'],
		limit: 1,
	});
	const [entry] = entries;
	const exchange = entry === undefined ? null : exchangeOf(entry);
	return entry === undefined || exchange === null ? null : { entry: entry.number, answer: exchange.answer };
}

/** What was found before and is not any more, and what is new. A figure that moved is neither. */
function sinceParts(before: Before | null, now: Answer): Part[] {
	if (before === null) return [];
	const line = (text: string): Part => ({ kind: 'list', text, fold: false });
	const isIn = (answer: Answer, { code, severity }: Answer['findings'][number]) =>
		answer.findings.some((one) => one.code === code && one.severity === severity);
	const cleared = before.answer.findings.filter((finding) => !isIn(now, finding));
	const fresh = now.findings.filter((finding) => !isIn(before.answer, finding));
	const settled = before.answer.missing.filter((fact) => !now.missing.includes(fact)).length;
	const opened = now.missing.filter((fact) => !before.answer.missing.includes(fact)).length;
	if (cleared.length + fresh.length + settled + opened === 0)
		return [line(`Since No. ${before.entry}: nothing got better, nothing worse.`)];
	const counts = [
		...(cleared.length === 0 ? [] : [`${cleared.length} cleared`]),
		...(fresh.length === 0 ? [] : [`${fresh.length} new`]),
		...(settled === 0 ? [] : [`${counted(settled, 'question')} settled`]),
		...(opened === 0 ? [] : [`${counted(opened, 'more question')} open`]),
	];
	return [
		line(`Since No. ${before.entry}: ${counts.join(', ')}.`),
		...cleared.map(({ text }) => line(`Better, no longer so: ${text}`)),
		...fresh.map(({ severity, text }) =>
			line(`Worse, new: ${severity === 'danger' ? 'DANGER, ' : ''}${text}`),
		),
	];
}
