import type { UnitHabit } from '@lugbook/core';
import { fittedLines } from '../figure.js';
import { textWidth } from '../font.js';
import {
	type GroupShape,
	ink,
	label,
	line,
	moved,
	n,
	path,
	rectangle,
	type Shape,
	smallText,
} from '../shape.js';
import type { Branch } from './fold.js';
import type { OneLineDevice, OneLineRun } from './input.js';
import { deviceLength, deviceSymbol, partSymbol } from './symbols.js';
import { conductorText, isBare, lengthText, partText, ratingText } from './words.js';

/** A chain beside its busbar, drawn from (0, 0) on the bar to the right along y = 0. */
export interface Row {
	readonly width: number;
	/** room over and under the line [CSS px] */
	readonly above: number;
	readonly below: number;
	readonly shapes: readonly Shape[];
}

const lineHeight = 14;
const wire = { stroke: ink.text, strokeWidth: 1.5 } as const;
const nameWidth = 78;

export interface RowOptions {
	readonly units: UnitHabit;
	/** what the row may use; a chain with long names still takes what it needs [CSS px] */
	readonly width: number;
	/** least room of the first run, so that rows line up [CSS px] */
	readonly first: FirstRoom;
}

export function drawRow(chain: readonly Branch[], { units, width, first }: RowOptions): Row {
	const shapes: Shape[] = [];
	let x = 0;
	let below = 20;
	let above = 20;
	chain.forEach(({ run, feeds, part }, index) => {
		// Looking outwards from the busbar, the near end of a run that feeds it is its "to" end.
		const near = nearDevices({ run, feeds });
		const far = run.devices.filter((device) => !near.includes(device));
		step(8);
		const begin = x;
		if (isBare(run)) warn();
		for (const device of near) place(device);
		if (index === 0) step(first.devices - (x - begin));
		runLabel(run, part.kind === 'chassis' ? null : feeds, index === 0 ? first.words : 0);
		for (const device of far.toReversed()) place(device);
		const last = index === chain.length - 1;
		if (part.kind === 'load') box(partText(part), last);
		else symbolAndName(partText(part), last);

		function symbolAndName(text: string, end: boolean): void {
			const { length, halfWidth, shapes: drawn } = partSymbol(part);
			const turned = part.kind === 'shore';
			// A chassis hangs from the end of the line; the others stand in it.
			const hanging = part.kind === 'chassis';
			const across = turned ? length : 2 * halfWidth;
			const down = turned ? halfWidth : hanging ? length : length / 2;
			const beside = end && width - x - across > 70;
			const lines = fittedLines(text, beside ? width - x - across - 8 : nameWidth, 3, smallText);
			// A name under a middle symbol may be wider than the symbol: the line is lengthened to make room.
			const widest = Math.max(...lines.map((one) => textWidth(one, smallText)));
			// Behind a device its rating stands as low as the name: there the name keeps clear of it.
			const clear = far.length > 0 ? 5 : 2;
			const lead = beside ? 0 : Math.max(0, (widest - across) / 2 + clear);
			step(lead);
			if (hanging) shapes.push(line([x, 0], [x + halfWidth, 0], wire));
			shapes.push(turned ? outwards(x, drawn) : moved(x + halfWidth, hanging ? 0 : -down, drawn));
			if (beside) {
				const first = -((lines.length - 1) * lineHeight) / 2;
				lines.forEach((one, row) => {
					shapes.push(label(one, x + across + 7, first + row * lineHeight + 4.3));
				});
				x += across + 7 + widest;
				below = Math.max(below, down + 6, (lines.length * lineHeight) / 2 + 6);
				above = Math.max(above, down + 4, (lines.length * lineHeight) / 2 + 4);
			} else {
				lines.forEach((one, row) => {
					shapes.push(label(one, x + across / 2, down + 13 + row * lineHeight, { anchor: 'middle' }));
				});
				x += across;
				if (!end) step(lead);
				else x += lead;
				below = Math.max(below, down + 8 + lines.length * lineHeight);
				above = Math.max(above, down + 4);
			}
		}
	});
	return { width: x, above, below, shapes };

	function step(length: number): void {
		if (length <= 0) return;
		shapes.push(line([x, 0], [x + length, 0], wire));
		x += length;
	}

	function place(device: OneLineDevice): void {
		const text = ratingText(device);
		const room = deviceRoom(device);
		step((room - deviceLength) / 2);
		shapes.push(
			outwards(x, deviceSymbol(device.kind).shapes),
			label(text, x + deviceLength / 2, 22, { anchor: 'middle', bold: true }),
		);
		x += deviceLength;
		step((room - deviceLength) / 2);
		below = Math.max(below, 28);
	}

	function warn(): void {
		shapes.push(
			label(warning[0], x + warningRoom / 2, -7, { anchor: 'middle', bold: true }),
			label(warning[1], x + warningRoom / 2, 16, { anchor: 'middle', bold: true }),
		);
		step(warningRoom);
	}

	/** @param feeds which way the energy goes, or null where no arrow is due */
	function runLabel(run: OneLineRun, feeds: boolean | null, least: number): void {
		const room = Math.max(wordsRoom(run, units), least);
		shapes.push(
			label(conductorText(run), x + room / 2, -7, { anchor: 'middle' }),
			label(lengthText(run, units), x + room / 2, 16, { anchor: 'middle' }),
		);
		if (feeds !== null) {
			const tip = feeds ? x + room / 2 - 5 : x + room / 2 + 5;
			const tail = feeds ? tip + 10 : tip - 10;
			shapes.push(path(`M${n(tip)} 0L${n(tail)} -4L${n(tail)} 4Z`, { fill: ink.text }));
		}
		step(room);
	}

	function box(text: string, end: boolean): void {
		const free = end ? Math.max(nameWidth, width - x) : nameWidth;
		const lines = fittedLines(text, free - 12, 3, smallText);
		const room = end ? free : Math.max(...lines.map((one) => textWidth(one, smallText))) + 12;
		const height = Math.max(26, lines.length * lineHeight + 8);
		shapes.push(
			rectangle(
				{ x, y: -height / 2, width: room, height },
				{ fill: ink.paper, stroke: ink.text, strokeWidth: 1.5 },
			),
		);
		lines.forEach((one, row) => {
			const middle = (row - (lines.length - 1) / 2) * lineHeight;
			shapes.push(label(one, x + room / 2, middle + 4.3, { anchor: 'middle' }));
		});
		x += room;
		above = Math.max(above, height / 2 + 4);
		below = Math.max(below, height / 2 + 6);
	}
}

/** A symbol drawn for a line that goes down, laid along a line that goes to the right. */
function outwards(x: number, shapes: readonly Shape[]): GroupShape {
	return { kind: 'group', transform: [0, 1, 1, 0, x, 0], shapes };
}

/** The devices at the end of a run that is nearer to where the row begins. */
function nearDevices({ run, feeds }: Pick<Branch, 'run' | 'feeds'>): OneLineDevice[] {
	return run.devices.filter(({ at }) => (at === 'to') === feeds);
}

/** Room of a row's first run [CSS px]. */
export interface FirstRoom {
	/** for its devices, or for the words that none is named */
	readonly devices: number;
	/** for its conductor and length */
	readonly words: number;
}

export const noRoom: FirstRoom = { devices: 0, words: 0 };

export function firstRoom(branch: Branch, units: UnitHabit): FirstRoom {
	const devices = nearDevices(branch).reduce((sum, device) => sum + deviceRoom(device), 0);
	return {
		devices: devices + (isBare(branch.run) ? warningRoom : 0),
		words: wordsRoom(branch.run, units),
	};
}

function wordsRoom(run: OneLineRun, units: UnitHabit): number {
	return (
		Math.max(textWidth(conductorText(run), smallText), textWidth(lengthText(run, units), smallText)) + 10
	);
}

function deviceRoom(device: OneLineDevice): number {
	return Math.max(deviceLength, textWidth(ratingText(device), smallText, true) + 4);
}

const warning = ['no fuse', 'named'] as const;
const warningRoom = Math.max(...warning.map((word) => textWidth(word, smallText, true))) + 8;
