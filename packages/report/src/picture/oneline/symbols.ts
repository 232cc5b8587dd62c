import { circle, ink, label, line, path, polyline, rectangle, type Shape } from '../shape.js';
import type { OneLineDevice, OneLinePart } from './input.js';

/**
 * Graphical symbols of IEC 60617, drawn with the source at the top: a symbol hangs from (0, 0) and ends at
 * (0, length). [CSS px]
 */
export interface PartSymbol {
	readonly length: number;
	/** how far it reaches to either side of its line */
	readonly halfWidth: number;
	readonly shapes: readonly Shape[];
}

const thin = { strokeWidth: 1.5, stroke: ink.text } as const;

export const deviceLength = 32;

export function deviceSymbol(kind: OneLineDevice['kind']): PartSymbol {
	switch (kind) {
		case 'fuse':
			return {
				length: deviceLength,
				halfWidth: 6,
				shapes: [
					rectangle({ x: -5, y: 5, width: 10, height: 22 }, thin),
					line([0, 0], [0, deviceLength], thin),
				],
			};
		case 'switch':
			return { length: deviceLength, halfWidth: 11, shapes: contact() };
		case 'circuit breaker':
			// The cross at the fixed contact tells a circuit breaker from a plain switch.
			return {
				length: deviceLength,
				halfWidth: 11,
				shapes: [...contact(), line([-4, 3], [4, 11], thin), line([4, 3], [-4, 11], thin)],
			};
	}
}

/** A make contact: the blade hangs at the load side and stands open to the left. */
function contact(): Shape[] {
	return [
		line([0, 0], [0, 7], thin),
		line([0, 26], [0, deviceLength], thin),
		line([0, 26], [-10, 7], { ...thin, strokeWidth: 2 }),
	];
}

export function partSymbol(part: OneLinePart): PartSymbol {
	switch (part.kind) {
		case 'battery':
			return battery;
		case 'solar':
			return square(solarMarks);
		case 'converter':
			return square([
				line([-15, 30], [15, 0], thin),
				...(part.takes === 'ac' ? acMark(-7, 9) : dcMark(-7, 8)),
				...(part.gives === 'ac' ? acMark(7, 22) : dcMark(7, 21)),
			]);
		case 'alternator':
			return {
				length: 32,
				halfWidth: 16,
				shapes: [
					circle(0, 16, 16, thin),
					label('G', 0, 18, { anchor: 'middle', size: 15 }),
					...dcMark(0, 23),
				],
			};
		case 'shore':
			return {
				length: 30,
				halfWidth: 9,
				shapes: [
					path('M-9 10a9 9 0 0 1 18 0', thin),
					line([0, 0], [0, 1], thin),
					rectangle({ x: -2.5, y: 7, width: 5, height: 13 }, { fill: ink.text }),
					line([0, 20], [0, 30], thin),
				],
			};
		case 'chassis':
			return { length: 22, halfWidth: 18, shapes: chassis };
		case 'load':
			return square([]);
		case 'busbar':
			return { length: 8, halfWidth: 16, shapes: [line([-16, 4], [16, 4], { ...thin, strokeWidth: 5 })] };
	}
}

/** The long thin plate is the positive one; the line leaves from it. */
const battery: PartSymbol = {
	length: 36,
	halfWidth: 15,
	shapes: [
		line([0, 0], [0, 8], thin),
		line([-7, 8], [7, 8], { ...thin, strokeWidth: 4 }),
		line([-15, 14], [15, 14], thin),
		line([-7, 21], [7, 21], { ...thin, strokeWidth: 4 }),
		line([-15, 27], [15, 27], thin),
		line([0, 27], [0, 36], thin),
		line([7, 34], [13, 34], thin),
		line([10, 31], [10, 37], thin),
	],
};

function square(marks: readonly Shape[]): PartSymbol {
	return {
		length: 30,
		halfWidth: 15,
		shapes: [rectangle({ x: -15, y: 0, width: 30, height: 30 }, { ...thin, fill: ink.paper }), ...marks],
	};
}

/** A generator with the battery's two plates and light falling on it. */
const solarMarks: readonly Shape[] = [
	label('G', -6, 14, { anchor: 'middle', size: 12 }),
	line([-12, 22], [-2, 22], thin),
	line([-2, 18], [-2, 26], thin),
	line([2, 20], [2, 24], { ...thin, strokeWidth: 3 }),
	line([2, 22], [12, 22], thin),
	...arrow([12, 3], [5, 10]),
	...arrow([13, 8], [7, 14]),
];

function arrow(from: readonly [number, number], to: readonly [number, number]): Shape[] {
	const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
	const barb = (turn: number): [number, number] => [
		to[0] - 3.5 * Math.cos(angle + turn),
		to[1] - 3.5 * Math.sin(angle + turn),
	];
	return [
		line(from, to, { ...thin, strokeWidth: 1.2 }),
		polyline([barb(0.6), to, barb(-0.6)], { ...thin, strokeWidth: 1.2 }),
	];
}

function dcMark(x: number, y: number): Shape[] {
	return [
		line([x - 6, y - 2], [x + 6, y - 2], { ...thin, strokeWidth: 1.3 }),
		line([x - 6, y + 2], [x + 6, y + 2], { ...thin, strokeWidth: 1.3, dash: [3, 1.5] }),
	];
}

function acMark(x: number, y: number): Shape[] {
	return [path(`M${x - 6} ${y}c1.5 -6 4.5 -6 6 0s4.5 6 6 0`, { ...thin, strokeWidth: 1.4 })];
}

const chassis: readonly Shape[] = [
	line([0, 0], [0, 11], thin),
	line([-13, 11], [13, 11], thin),
	line([-13, 11], [-18, 20], thin),
	line([0, 11], [-5, 20], thin),
	line([13, 11], [8, 20], thin),
];

/** What a symbol means, for the key under the diagram. */
export function symbolName(part: OneLinePart): string {
	switch (part.kind) {
		case 'battery':
			return 'battery';
		case 'busbar':
			return 'busbar';
		case 'converter':
			return `converter, ${direction(part.takes)} to ${direction(part.gives)}`;
		case 'solar':
			return 'solar generator';
		case 'alternator':
			return 'alternator';
		case 'shore':
			return 'shore inlet';
		case 'load':
			return 'load';
		case 'chassis':
			return 'chassis';
	}
}

function direction(current: 'dc' | 'ac' | undefined): string {
	return current === 'ac' ? 'AC' : 'DC';
}
