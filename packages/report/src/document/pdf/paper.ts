import type { Figure } from '../../picture/figure.js';

/** What a document is written on, a page at a time. Lengths in points, downwards from the top left corner. */
export interface Paper {
	readonly width: number;
	readonly height: number;
	newPage(): void;
	/** One line of text. */
	line(text: string, x: number, baseline: number, options: LineOptions): void;
	/** @param place.scale points for a CSS pixel */
	figure(figure: Figure, place: { readonly x: number; readonly y: number; readonly scale: number }): void;
	rule(left: number, right: number, y: number, stroke: Stroke): void;
	frame(x: number, y: number, width: number, height: number, stroke: Stroke): void;
	/** Draws something that belongs to the page, not to the text. */
	artifact(type: 'Pagination' | 'Layout', draw: () => void): void;
	/** Begins a part of the text that is marked with what it is. */
	element(type: string, options?: ElementOptions): Element;
	/** Where links to an id lead: here, on the page in hand. */
	place(id: string, x: number, y: number): void;
	link(x: number, y: number, width: number, height: number, id: string): void;
	/** A line of the outline; a chapter holds those behind it that are none. */
	bookmark(text: string, isChapter: boolean): void;
	end(): void;
}

export interface LineOptions {
	readonly size: number;
	readonly bold?: boolean;
	readonly colour: string;
}

interface Stroke {
	readonly width: number;
	readonly colour: string;
}

export interface ElementOptions {
	/** what stands in for it where it can't be seen */
	readonly alt?: string;
	readonly title?: string;
}

/** A paragraph, a table, a row, a cell ... It has to be ended. */
export interface Element {
	add(draw: () => void): void;
	child(type: string): Element;
	end(): void;
}

const unseen: Element = { add: () => {}, child: () => unseen, end: () => {} };

/** Nothing stays on it: for finding out on which page what comes to stand. */
export class BlankPaper implements Paper {
	readonly width: number;
	readonly height: number;

	constructor([width, height]: readonly [width: number, height: number]) {
		this.width = width;
		this.height = height;
	}

	newPage(): void {}
	line(): void {}
	figure(): void {}
	rule(): void {}
	frame(): void {}
	artifact(): void {}
	place(): void {}
	link(): void {}
	bookmark(): void {}
	end(): void {}

	element(): Element {
		return unseen;
	}
}
