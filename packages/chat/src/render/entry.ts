import type { Entry } from '@lugbook/log';
import { exchangeOf } from '../memory.js';

/** An entry in a list: number, topic, decision. */
export function entryLine(
	entry: Entry,
	number = `No. ${entry.number}`,
	headline = exchangeOf(entry)?.answer.headline ?? '',
): string {
	return `${number}  ${entry.topic ?? entry.state ?? ''}  ${headline}`;
}

/** Who an entry is by; in words where the name was erased. */
export function nameOf({ erased, personName }: Entry): string {
	return erased ? 'somebody who was forgotten' : personName;
}

/** "2026-05-04 12:00 UTC" */
export function instantText(at: string): string {
	return `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`;
}
