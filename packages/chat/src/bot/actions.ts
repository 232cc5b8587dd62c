/** Buttons, menus and forms under a reply: which there are, and what each asks of the conversation. */

import { type AnyTopic, type Language, topicNamed } from '@lugbook/core';
import type { Answer } from '../answer.js';
import type { Button, CommandName, Reply } from '../message.js';
import { aboutAnswer, inLanguage } from './words.js';

export const formKinds = ['change', 'assume', 'reject', 'comment', 'save'] as const;
export type FormKind = (typeof formKinds)[number];

/** What a pressed button leads to. */
export type Act =
	| { readonly kind: 'say'; readonly command: CommandName; readonly text: string }
	/** a form about an answer; `field` for the one assumed input that is to be changed */
	| { readonly kind: 'form'; readonly form: FormKind; readonly entry: number; readonly field?: string }
	/** the answer that one person sees is shown to the channel */
	| { readonly kind: 'share'; readonly entry: number };

/** The menu of assumed inputs has the values `ENTRY FIELD`. */
const ASSUMED = /^(\d{1,9}) ([A-Za-z][A-Za-z0-9]{0,60})$/;
const NUMBER = /^\d{1,9}$/;

/**
 * What a button asks for. Values come back from the platform as they were sent, or forged: null for what no button of
 * ours says. Whether the person may do it is decided by the conversation, at that moment.
 */
export function actOf(action: string, value: string): Act | null {
	if (action === 'answer') return { kind: 'say', command: 'ask', text: value };
	if (action === 'more') return { kind: 'say', command: 'log', text: `more ${value}` };
	if (action === 'forget') {
		const text = value === 'confirm' ? 'forget-me confirm' : 'forget-me';
		return { kind: 'say', command: 'log', text };
	}
	if (action === 'assume') {
		const match = ASSUMED.exec(value);
		return match === null
			? null
			: { kind: 'form', form: 'assume', entry: Number(match[1]), field: match[2] as string };
	}
	if (!NUMBER.test(value)) {
		// A forged value of a button that judges an answer goes to the conversation, which refuses it and keeps that;
		// in brackets, so that one that begins with a number is none either.
		const isJudging = ['sign', 'reject', 'comment', 'ask-lead'].includes(action) && value !== '';
		return isJudging ? { kind: 'say', command: 'log', text: `${action} (${value.slice(0, 100)})` } : null;
	}
	const entry = Number(value);
	switch (action) {
		case 'working':
			return { kind: 'say', command: 'log', text: `show ${entry}` };
		case 'ask-lead':
		case 'sign':
			return { kind: 'say', command: 'log', text: `${action} ${entry}` };
		case 'change':
		case 'reject':
		case 'comment':
		case 'save':
			return { kind: 'form', form: action, entry };
		case 'share':
			return { kind: 'share', entry };
		default:
			return null;
	}
}

/** A form with one line of words. */
export interface WordsForm {
	readonly title: string;
	readonly label: string;
	readonly maxCharacters: number;
}

export function wordsForm(
	form: Exclude<FormKind, 'change' | 'assume'>,
	entry: number,
	language: Language,
): WordsForm {
	const maxCharacters = form === 'save' ? 60 : 900;
	return { ...aboutAnswer(language, form, entry), maxCharacters };
}

/**
 * The topic of the answer that a form of inputs is about.
 * @param field the one input that is to be changed, if it is one
 * @returns null where there is no such answer, or its topic has no such input
 */
export function topicOfForm(answer: Answer | null, field: string | undefined): AnyTopic | null {
	const topic = topicNamed(answer?.topic ?? '');
	if (topic === null || (field !== undefined && !Object.hasOwn(topic.fields, field))) return null;
	return topic;
}

/** What a filled form says, as a message to the conversation; null where its answer has no topic any more. */
export function saidByForm(
	form: FormKind,
	entry: number,
	answer: Answer | null,
	entered: Readonly<Record<string, string>>,
): {
	readonly command: CommandName;
	readonly text: string;
	readonly fields?: Readonly<Record<string, string>>;
	readonly build?: string;
} | null {
	const words = (entered.words ?? '').trim();
	if (form === 'reject' || form === 'comment') return { command: 'log', text: `${form} ${entry} ${words}` };
	const topic = topicNamed(answer?.topic ?? '');
	if (answer === null || topic === null) return null;
	const before = Object.fromEntries(answer.understood.map((one) => [one.name, one.text]));
	// Asked again under the build's name: what it rests on is then kept with that van.
	if (form === 'save') {
		return { command: 'size', text: topic.name, fields: before, build: words.toLowerCase() };
	}
	const known = Object.entries(entered).filter(([name]) => Object.hasOwn(topic.fields, name));
	return { command: 'size', text: topic.name, fields: { ...before, ...Object.fromEntries(known) } };
}

/** Inputs that were assumed and can be said instead, those to be confirmed first. */
export function assumedInputs(answer: Answer): { readonly value: string; readonly label: string }[] {
	const topic = topicNamed(answer.topic ?? '');
	if (answer.status !== 'answered' || answer.entry === null || topic === null) return [];
	return answer.assumed
		.filter(({ name }) => Object.hasOwn(topic.fields, name))
		.toSorted((a, b) => Number(b.confirm) - Number(a.confirm))
		.map(({ name, label, text }) => ({ value: `${answer.entry} ${name}`, label: `${label}: ${text}` }));
}

const judging = (value: string): Button[] => [
	{ action: 'sign', label: 'Sign', value },
	{ action: 'reject', label: 'Reject', value },
	{ action: 'comment', label: 'Comment', value },
];

/**
 * The reply with the buttons that belong under it where people look at it: signing under what was asked of the lead
 * and under a single answer of the log, sharing under what one person alone sees.
 */
export function withButtons(
	reply: Reply,
	asked: { readonly command: CommandName; readonly text: string },
	build: string | null,
): Reply {
	const { entry, status } = reply.answer;
	const added: Button[] = [];
	if (asked.command === 'log' && reply.buttons.length === 0) {
		const about = /^(?:(show|ask-lead|ask)\s+)?#?(\d{1,9})$/i.exec(asked.text.trim());
		const isDone = reply.audience === 'channel' || entry !== null;
		if (about !== null && isDone) added.push(...judging(String(Number(about[2]))));
	}
	if (status === 'answered' && entry !== null && build === null && asked.command !== 'log') {
		added.push({ action: 'save', label: 'Save to a build', value: String(entry) });
	}
	if (reply.audience === 'asker' && entry !== null) {
		added.push({ action: 'share', label: 'Show to the channel', value: String(entry) });
	}
	const there = new Set(reply.buttons.map(({ action, value }) => `${action} ${value}`));
	const fresh = added
		.filter(({ action, value }) => !there.has(`${action} ${value}`))
		.map((button) => ({ ...button, label: inLanguage(reply.language ?? 'en', button.label) }));
	return fresh.length === 0 ? reply : { ...reply, buttons: [...reply.buttons, ...fresh] };
}
