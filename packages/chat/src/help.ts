import { topics } from '@lugbook/core';
import type { CommandName } from './message.js';

/** Each command's help, at most ten lines with one worked example. */
export function helpFor(command: CommandName): string {
	switch (command) {
		case 'ask':
			return [
				'Ask in words, as you would ask across the shop:',
				"  40A 12V 15 ft          fridge 5 amps 22' run 12v",
				"Lengths are one way unless you say round trip. Units as you like: 12', 3.5m, 2/0, 35mm2.",
				'In the thread go on: "and at 20 ft?", "10% is fine", "what about 24 V", "why", "show the working".',
			].join('\n');
		case 'size':
			return [
				'One topic with named inputs: topic, then the inputs in words.',
				'  wire 40A 12V 15 ft drop 3%',
				`Topics: ${topics.map(({ name }) => name).join(', ')}.`,
			].join('\n');
		case 'build':
			return [
				'use NAME   this channel works on that build (the van); its answers are kept under that name',
				'show       the build of this channel and its newest answers',
				'Example: use heron',
			].join('\n');
		case 'log':
			return [
				"show          the newest answers of this channel's build",
				'show 128      one answer with its working',
				'show wire     the newest answers on a topic',
				'verify        walks the whole log and says whether it is unbroken',
			].join('\n');
	}
}
