import { middleToBase, path, type Shape, type TextShape } from './shape.js';

interface Element {
	readonly tag: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: Element[];
	text: string;
}

/**
 * The shapes in the SVG that the chart library writes. It reads what that library writes and no more: an element or a
 * unit it doesn't know is an error, so that nothing of a chart is lost without notice.
 */
export function shapesOf(svg: string): Shape[] {
	return treeOf(svg).children.flatMap(toShapes);
}

const token = /<!\[CDATA\[[\s\S]*?\]\]>|<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)/gy;

function treeOf(svg: string): Element {
	const root: Element = { tag: 'root', attributes: {}, children: [], text: '' };
	const open: Element[] = [root];
	for (const [whole, closing, tag, attributes, selfClosing, text] of svg.matchAll(token)) {
		const parent = open.at(-1) as Element;
		if (tag === undefined) {
			parent.text += text === undefined ? whole : unescaped(text);
		} else if (closing === '/') {
			if (open.pop()?.tag !== tag) throw new Error(`the chart's SVG closes "${tag}" out of turn`);
		} else {
			const element: Element = { tag, attributes: attributesOf(attributes ?? ''), children: [], text: '' };
			parent.children.push(element);
			if (selfClosing !== '/') open.push(element);
		}
	}
	const [picture] = root.children;
	if (open.length !== 1 || picture?.tag !== 'svg') throw new Error("the chart's SVG could not be read");
	return picture;
}

function attributesOf(text: string): Record<string, string> {
	const attributes: Record<string, string> = {};
	for (const [, name, value] of text.matchAll(/([\w:-]+)="([^"]*)"/g)) {
		if (name === 'style') Object.assign(attributes, styleOf(unescaped(value ?? '')));
		else if (name !== undefined) attributes[name] = unescaped(value ?? '');
	}
	return attributes;
}

function styleOf(style: string): Record<string, string> {
	return Object.fromEntries(
		style
			.split(';')
			.map((one) => one.split(':').map((part) => part.trim()))
			.filter((pair): pair is [string, string] => pair.length === 2 && pair[0] !== ''),
	);
}

const named: Readonly<Record<string, string>> = {
	amp: '&',
	lt: '<',
	gt: '>',
	quot: '"',
	apos: "'",
	'#39': "'",
	'#160': ' ',
};

function unescaped(text: string): string {
	return text.replace(/&(#?\w+);/g, (whole, name: string) => named[name] ?? whole);
}

function toShapes(element: Element): Shape[] {
	const { tag, attributes } = element;
	const own = drawn(element);
	if (own.length === 0 || attributes.transform === undefined) return own;
	return [{ kind: 'group', transform: transformOf(attributes.transform), shapes: own }];

	function drawn({ children }: Element): Shape[] {
		switch (tag) {
			case 'g':
				return children.flatMap(toShapes);
			case 'path':
				return inked(attributes) ? [path(attributes.d ?? '', paintOf(attributes))] : [];
			case 'rect':
				return inked(attributes) ? [path(rectanglePath(attributes), paintOf(attributes))] : [];
			case 'text':
				return [textOf(element)];
			case 'style':
			case 'defs':
				return [];
			default:
				throw new Error(`the chart's SVG holds an element "${tag}" that is not drawn here`);
		}
	}
}

function inked({ fill, stroke }: Readonly<Record<string, string>>): boolean {
	return (fill !== undefined && fill !== 'none') || (stroke !== undefined && stroke !== 'none');
}

function paintOf(attributes: Readonly<Record<string, string>>) {
	const colour = (value: string | undefined) => (value === undefined || value === 'none' ? null : value);
	return {
		fill: attributes.fill === undefined ? '#000000' : colour(attributes.fill),
		stroke: colour(attributes.stroke),
		strokeWidth: Number(attributes['stroke-width'] ?? 1),
		dash: (attributes['stroke-dasharray'] ?? '')
			.split(/[ ,]+/)
			.filter((part) => part !== '' && part !== 'none')
			.map(Number),
	};
}

function rectanglePath({
	x = '0',
	y = '0',
	width = '0',
	height = '0',
}: Readonly<Record<string, string>>): string {
	return `M${x} ${y}h${width}v${height}h-${width}Z`;
}

function textOf({ attributes, text }: Element): TextShape {
	const size = Number.parseFloat(attributes['font-size'] ?? '12');
	const baseline = attributes['dominant-baseline'] ?? 'alphabetic';
	if (baseline !== 'central' && baseline !== 'alphabetic')
		throw new Error(`the chart's SVG sets text on a base line "${baseline}" that is not drawn here`);
	const anchor = attributes['text-anchor'] ?? 'start';
	return {
		kind: 'text',
		text,
		x: Number(attributes.x ?? 0),
		y: Number(attributes.y ?? 0) + (baseline === 'central' ? middleToBase * size : 0),
		anchor: anchor === 'middle' || anchor === 'end' ? anchor : 'start',
		size,
		bold: attributes['font-weight'] === 'bold' || Number(attributes['font-weight']) >= 600,
		fill: attributes.fill ?? '#000000',
	};
}

function transformOf(text: string): [number, number, number, number, number, number] {
	const [, name, list] = /^(matrix|translate)\(([^)]*)\)$/.exec(text.trim()) ?? [];
	const values = (list ?? '').split(/[ ,]+/).map(Number);
	const [a, b, c = 0, d = 0, e = 0, f = 0] = values;
	if (values.some(Number.isNaN) || a === undefined)
		throw new Error(`the chart's SVG moves by "${text}", which is not drawn here`);
	return name === 'translate' ? [1, 0, 0, 1, a, b ?? 0] : [a, b ?? 0, c, d, e, f];
}
