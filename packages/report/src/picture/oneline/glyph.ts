import type { UnitHabit } from '@lugbook/core';
import { plainLine } from '../../plain.js';
import { fittedLines } from '../figure.js';
import { textWidth } from '../font.js';
import { ink, label, line, moved, type Shape, smallText } from '../shape.js';
import type { Branch, CoreRun } from './fold.js';
import type { OneLinePart, OneLineRun } from './input.js';
import { drawRow, type FirstRoom, firstRoom, noRoom } from './row.js';
import { deviceLength, deviceSymbol, partSymbol } from './symbols.js';
import { conductorText, isBare, lengthText, partText, ratingText } from './words.js';

/**
 * A part of the core with everything that hangs from it: devices and words of its runs at this end, and for a busbar
 * its rows. The graph's layout sees it as a box with ports.
 */
export interface Glyph {
	readonly id: string;
	readonly width: number;
	readonly height: number;
	readonly shapes: readonly Shape[];
	/** from where to where it must not be cut by the end of a page */
	readonly solid: readonly (readonly [from: number, to: number])[];
	/** where the runs leave the box: at its top edge for those from above, at its bottom edge for those going down */
	readonly ports: readonly {
		readonly run: OneLineRun;
		readonly side: 'top' | 'bottom';
		readonly x: number;
	}[];
}

const wire = { stroke: ink.text, strokeWidth: 1.5 } as const;
const barStroke = { stroke: ink.text, strokeWidth: 5 } as const;
const lineHeight = 14;
/** room between a run's words and the next run [CSS px] */
const portGap = 14;
const nameSize = 13;
const nameLine = 16;
/** room of a name beside its symbol [CSS px] */
const nameRoom = 130;
const firstPort = 20;

export interface GlyphOptions {
	readonly part: OneLinePart;
	readonly runs: readonly CoreRun[];
	readonly rows: readonly (readonly Branch[])[];
	readonly units: UnitHabit;
	/** room of the whole picture [CSS px] */
	readonly width: number;
}

export function drawGlyph({ part, runs, rows, units, width }: GlyphOptions): Glyph {
	const incoming = runs.filter(({ lower }) => lower === part.id);
	const outgoing = runs.filter(({ upper }) => upper === part.id);
	const shapes: Shape[] = [];
	const ports: Glyph['ports'][number][] = [];
	const solid: [number, number][] = [];
	let solidFrom = 0;
	let right = 0;
	// Devices at the lower end of the runs from above hang over the part, level with one another.
	const stubs = incoming.map((one) => drawStub(one, part.id, units));
	const stubHeight = Math.max(0, ...stubs.map(({ height }) => height));
	const places = portsOf(stubs);
	const lastIn = places.at(-1) ?? firstPort;
	stubs.forEach((stub, index) => {
		const x = places[index] as number;
		shapes.push(
			line([x, 0], [x, stubHeight - stub.height], wire),
			moved(x, stubHeight - stub.height, stub.shapes),
		);
		ports.push({ run: (incoming[index] as CoreRun).run, side: 'top', x });
		right = Math.max(right, x + stub.width);
	});
	let y = stubHeight + (incoming.length > 0 ? 8 : 0);
	if (incoming.length > 0) {
		places.forEach((x) => {
			shapes.push(line([x, stubHeight], [x, y], wire));
		});
	}
	if (part.kind === 'busbar') drawBus();
	else drawPart();
	drawOutgoing();
	solid.push([solidFrom, y]);
	return { id: part.id, width: right, height: y, shapes, ports, solid };

	function drawBus(): void {
		const barRight = Math.max(lastIn + 20, 60);
		shapes.push(line([firstPort - 2.5, y], [barRight, y], barStroke));
		right = Math.max(right, barRight);
		const barTop = y;
		// The name stands in the corner of the bar: over it there may be the words of a run that comes in.
		for (const one of fittedLines(partText(part), width - firstPort - 12, 2, nameSize, true)) {
			y += 17;
			shapes.push(label(one, firstPort + 11, y, { bold: true, size: nameSize }));
			right = Math.max(right, firstPort + 11 + textWidth(one, nameSize, true));
		}
		y += 10;
		let lastRow = barTop;
		// What comes in and what goes out line up, each among its own.
		const roomOf = ([first]: readonly Branch[]): FirstRoom => {
			const alike = rows.flatMap(([other]) =>
				other !== undefined && other.feeds === first?.feeds ? [firstRoom(other, units)] : [],
			);
			return {
				devices: Math.max(...alike.map(({ devices }) => devices)),
				words: Math.max(...alike.map(({ words }) => words)),
			};
		};
		for (const chain of rows) {
			const row = drawRow(chain, { units, width: width - firstPort, first: roomOf(chain) });
			// The name of a busbar stays with its first row.
			if (chain !== rows[0]) {
				solid.push([solidFrom, y]);
				solidFrom = y;
			}
			y += row.above;
			shapes.push(moved(firstPort, y, row.shapes));
			lastRow = y;
			y += row.below;
			right = Math.max(right, firstPort + row.width);
		}
		const end = outgoing.length > 0 ? y : lastRow;
		shapes.push(line([firstPort, barTop], [firstPort, Math.max(end, barTop + 12) + 2.5], barStroke));
		y = Math.max(y, barTop + 14);
	}

	function drawPart(): void {
		const symbol = partSymbol(part);
		const x = Math.max(firstPort, symbol.halfWidth + 2);
		if (incoming.length > 1) {
			shapes.push(line([firstPort, y], [lastIn, y], wire), line([firstPort, y], [firstPort, y + 8], wire));
			y += 8;
		}
		if (rows.length > 0) drawBonds(x);
		const lines = [
			...fittedLines(plainLine(part.name), nameRoom, 2, nameSize, true).map((text) => ({ text, bold: true })),
			...fittedLines(plainLine(part.detail ?? ''), nameRoom, 1, nameSize).map((text) => ({
				text,
				bold: false,
			})),
		].filter(({ text }) => text !== '');
		// A name taller than its symbol lengthens the line over and under it.
		const lead = Math.max(0, (lines.length * nameLine - symbol.length) / 2);
		if (lead > 0) {
			if (incoming.length > 0) shapes.push(line([x, y], [x, y + lead], wire));
			if (outgoing.length > 0) {
				shapes.push(line([x, y + lead + symbol.length], [x, y + 2 * lead + symbol.length], wire));
			}
		}
		shapes.push(moved(x, y + lead, symbol.shapes));
		const textX = x + symbol.halfWidth + 8;
		lines.forEach(({ text, bold }, row) => {
			const middle = y + lead + symbol.length / 2 + (row - (lines.length - 1) / 2) * nameLine;
			shapes.push(label(text, textX, middle + 4.6, { bold, size: nameSize }));
			right = Math.max(right, textX + textWidth(text, nameSize, bold));
		});
		y += symbol.length + 2 * lead;
		right = Math.max(right, x + symbol.halfWidth);
	}

	/** The negative pole of a battery, at its top. */
	function drawBonds(x: number): void {
		const begin = y + 20;
		for (const chain of rows) {
			const row = drawRow(chain, { units, width: width - x, first: noRoom });
			y += row.above;
			shapes.push(moved(x, y, row.shapes));
			y += row.below;
			right = Math.max(right, x + row.width);
		}
		shapes.push(line([x, begin], [x, y], wire));
	}

	function drawOutgoing(): void {
		if (outgoing.length === 0) return;
		const drawn = outgoing.map((one) => drawStub(one, part.id, units));
		const placesOut = portsOf(drawn);
		const lastOut = placesOut.at(-1) ?? firstPort;
		const stroke = part.kind === 'busbar' ? barStroke : wire;
		if (outgoing.length > 1) shapes.push(line([firstPort - stroke.strokeWidth / 2, y], [lastOut, y], stroke));
		const tallest = Math.max(...drawn.map(({ height }) => height));
		drawn.forEach((stub, index) => {
			const x = placesOut[index] as number;
			shapes.push(moved(x, y, stub.shapes), line([x, y + stub.height], [x, y + tallest], wire));
			ports.push({ run: (outgoing[index] as CoreRun).run, side: 'bottom', x });
			right = Math.max(right, x + stub.width);
		});
		y += tallest;
	}
}

/** Where runs beside one another leave a part, so that the words of one clear the next. */
function portsOf(stubs: readonly { readonly width: number }[]): number[] {
	const places: number[] = [];
	let x = firstPort;
	for (const { width } of stubs) {
		places.push(x);
		x += Math.max(60, width + portGap);
	}
	return places;
}

/**
 * One end of a run in the core, from (0, 0) down: at its upper end the devices and then the words of the run, at its
 * lower end only the devices that stand there.
 */
function drawStub(
	{ run, upper, lower }: CoreRun,
	partId: string,
	units: UnitHabit,
): { readonly width: number; readonly height: number; readonly shapes: readonly Shape[] } {
	const isUpper = partId === upper;
	const end = run.from === (isUpper ? upper : lower) ? 'from' : 'to';
	const devices = run.devices.filter(({ at }) => at === end);
	const shapes: Shape[] = [];
	let y = 0;
	let width = 16;
	for (const device of isUpper ? devices : devices.toReversed()) {
		const text = [device.kind, ratingText(device)].filter((one) => one !== '').join(' ');
		shapes.push(moved(0, y, deviceSymbol(device.kind).shapes), label(text, 14, y + 20.3, { bold: true }));
		width = Math.max(width, 14 + textWidth(text, smallText, true));
		y += deviceLength;
	}
	if (isUpper) {
		const words = [
			...(isBare(run) ? [{ text: 'no fuse named', bold: true }] : []),
			{ text: conductorText(run), bold: false },
			{ text: lengthText(run, units), bold: false },
		];
		words.forEach(({ text, bold }, row) => {
			shapes.push(label(text, 14, y + 14 + row * lineHeight, { bold }));
			width = Math.max(width, 14 + textWidth(text, smallText, bold));
		});
		const height = words.length * lineHeight + 8;
		shapes.push(line([0, y], [0, y + height], wire));
		y += height;
	}
	return { width, height: y, shapes };
}
