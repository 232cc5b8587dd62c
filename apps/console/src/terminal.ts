import { randomUUID } from 'node:crypto';
import { type CommandName, commandNames, type Incoming } from '@lugbook/chat';

export interface Speaker {
	readonly name: string;
	readonly lead: boolean;
}

/** The shop, channel and speaker of the terminal; the rest of a message is what was typed. */
export interface Place {
	readonly shop: string;
	readonly channel: string;
	readonly thread: string | null;
	readonly speaker: Speaker;
}

/** A typed line as a message: "/size wire ..." is the command, anything else is /ask. */
export function incomingFrom(line: string, place: Place, options: Partial<Incoming> = {}): Incoming {
	const match = /^\/([a-z]+)(?:\s+|$)/i.exec(line.trim());
	const named = match?.[1]?.toLowerCase();
	const command = commandNames.find((name): name is CommandName => name === named);
	const text = command === undefined ? line : line.trim().slice((match?.[0] ?? '').length);
	return {
		platform: 'terminal',
		shop: place.shop,
		channel: place.channel,
		thread: place.thread,
		// Nothing redelivers in a terminal: each line is its own delivery.
		delivery: `terminal:${randomUUID()}`,
		person: { id: place.speaker.name, name: place.speaker.name, lead: place.speaker.lead },
		command: command ?? 'ask',
		text,
		...options,
	};
}

/** Breaks lines at words so that nothing runs past the screen's edge. */
export function wrapped(text: string, columns: number): string {
	const width = Math.max(20, Math.min(columns, 100));
	return text
		.split('\n')
		.map((line) => wrapLine(line, width))
		.join('\n');
}

function wrapLine(line: string, width: number): string {
	const indent = /^\s*/.exec(line)?.[0] ?? '';
	const rows: string[] = [];
	let row = indent;
	for (const word of line.trim().split(/\s+/)) {
		if (row.trim() !== '' && row.length + 1 + word.length > width) {
			rows.push(row);
			row = `${indent}  ${word}`;
		} else row = row.trim() === '' ? indent + word : `${row} ${word}`;
	}
	return [...rows, row].join('\n');
}
