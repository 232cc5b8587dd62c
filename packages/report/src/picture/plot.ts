import { writeNumber } from '@lugbook/core';
import type { EChartsCoreOption } from 'echarts/core';
import { fontFamily, textWidth } from './font.js';
import { shapesOf } from './parse.js';
import type { Scale } from './scale.js';
import { ink, label, moved, rectangle, type Shape, smallText } from './shape.js';

interface LineSeries {
	readonly points: readonly (readonly [number, number])[];
	readonly width: number;
	readonly dash: readonly number[];
	readonly colour: string;
}

interface BarSeries {
	readonly values: readonly number[];
	readonly fill: string;
	readonly edge: string;
}

interface Axis extends Scale {
	/** how a tick reads; its number unless said */
	readonly tick?: (value: number) => string;
}

export interface PlotOptions {
	/** the whole width [CSS px] */
	readonly width: number;
	/** where in the figure the plot begins [CSS px] */
	readonly top: number;
	/** height of the field inside the axes [CSS px] */
	readonly fieldHeight: number;
	/** room right of the field [CSS px] */
	readonly right: number;
	readonly x: Axis | { readonly categories: readonly string[] };
	readonly y: Axis;
	readonly xName: string;
	readonly yName: string;
	readonly lines?: readonly LineSeries[];
	readonly bars?: readonly BarSeries[];
}

export interface Plot {
	readonly shapes: readonly Shape[];
	/** the field inside the axes, in the figure's coordinates [CSS px] */
	readonly field: {
		readonly left: number;
		readonly right: number;
		readonly top: number;
		readonly bottom: number;
	};
	/** where a value stands in the figure [CSS px]; for categories x is the index */
	readonly at: (x: number, y: number) => [number, number];
	/** lower edge of the plot with its axis name [CSS px] */
	readonly bottom: number;
}

const axisText = { fontFamily, fontSize: smallText, color: ink.text };

/** Axes, grid, lines and bars by the chart library; the words in the field are the caller's. */
export async function plot(options: PlotOptions): Promise<Plot> {
	const { width, top, fieldHeight, right, x, y } = options;
	const yTick = y.tick ?? tickText;
	const yTexts = ticks(y).map(yTick);
	const left = 14 + Math.ceil(Math.max(...yTexts.map((text) => textWidth(text, smallText)))) + 8;
	const above = 24;
	const below = 46;
	const height = above + fieldHeight + below;
	const categories = 'categories' in x;
	const chart = (await library()).init(null, null, { renderer: 'svg', ssr: true, width, height });
	try {
		chart.setOption({
			animation: false,
			textStyle: { fontFamily },
			grid: { left, right, top: above, bottom: below },
			xAxis: {
				...(categories
					? { type: 'category', data: [...x.categories], axisTick: { show: false } }
					: { type: 'value', ...bounds(x), axisTick: { show: true, lineStyle: { color: ink.line } } }),
				axisLine: { show: true, onZero: false, lineStyle: { color: ink.line } },
				splitLine: { show: !categories, lineStyle: { color: ink.grid } },
				axisLabel: {
					...axisText,
					interval: 0,
					showMinLabel: true,
					showMaxLabel: true,
					hideOverlap: false,
					...(categories ? {} : { formatter: x.tick ?? tickText }),
				},
			},
			yAxis: {
				type: 'value',
				...bounds(y),
				axisLine: { show: true, lineStyle: { color: ink.line } },
				axisTick: { show: false },
				splitLine: { lineStyle: { color: ink.grid } },
				axisLabel: { ...axisText, formatter: yTick },
			},
			series: [...(options.bars ?? []).map(barSeries), ...(options.lines ?? []).map(lineSeries)],
		} satisfies EChartsCoreOption);
		const drawn = shapesOf(chart.renderToSVGString());
		const field = { left, right: width - right, top: top + above, bottom: top + above + fieldHeight };
		const names = [
			label(options.yName, 14, top + 13, { fill: ink.quiet, size: 13 }),
			label(options.xName, (field.left + field.right) / 2, top + height - 6, {
				fill: ink.quiet,
				size: 13,
				anchor: 'middle',
			}),
		];
		const at = (xValue: number, yValue: number): [number, number] => {
			const [pixelX, pixelY] = chart.convertToPixel({ gridIndex: 0 }, [xValue, yValue]) as [number, number];
			return [pixelX, pixelY + top];
		};
		// The positions are asked for after the chart is gone; two points fix both straight scales.
		const [x0, y0] = at(0, y.min);
		const [x1, y1] = at(1, y.max);
		return {
			shapes: [moved(0, top, drawn), ...names],
			field,
			at: (xValue, yValue) => [
				x0 + (x1 - x0) * xValue,
				y0 + ((y1 - y0) * (yValue - y.min)) / (y.max - y.min),
			],
			bottom: top + height,
		};
	} finally {
		chart.dispose();
	}
}

function tickText(value: number): string {
	return writeNumber(value, 3).replace('-', '−');
}

function bounds({ min, max, step }: Scale) {
	return { min, max, interval: step };
}

function ticks({ min, max, step }: Scale): number[] {
	return Array.from({ length: Math.round((max - min) / step) + 1 }, (_, index) => min + index * step);
}

function lineSeries({ points, width, dash, colour }: LineSeries) {
	return {
		type: 'line',
		data: points.map(([x, y]) => [x, y]),
		showSymbol: false,
		silent: true,
		clip: false,
		lineStyle: { width, color: colour, ...(dash.length === 0 ? {} : { type: [...dash] }) },
	};
}

function barSeries({ values, fill, edge }: BarSeries) {
	return {
		type: 'bar',
		data: [...values],
		silent: true,
		clip: false,
		barCategoryGap: '24%',
		barGap: '10%',
		itemStyle: { color: fill, borderColor: edge, borderWidth: 1.2 },
	};
}

/** A word in the field, on a white ground so that lines behind it don't cross it. */
export function tag(
	text: string,
	x: number,
	middleY: number,
	options: { anchor?: 'start' | 'middle' | 'end'; bold?: boolean; size?: number; fill?: string } = {},
): Shape[] {
	const { anchor = 'start', bold = false, size = smallText, fill = ink.text } = options;
	const width = textWidth(text, size, bold);
	const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
	return [
		rectangle(
			{ x: left - 2, y: middleY - size * 0.62, width: width + 4, height: size * 1.24 },
			{ fill: ink.paper },
		),
		label(text, x, middleY + size * 0.357, { anchor, bold, size, fill }),
	];
}

/**
 * A word in the field where it covers none of the curves, or as little of them as can be.
 * @param places middles of the left or right end of the word, the best first
 */
export function clearTag(
	text: string,
	places: readonly (readonly [x: number, middleY: number, anchor: 'start' | 'end'])[],
	curves: readonly (readonly (readonly [number, number])[])[],
): Shape[] {
	const width = textWidth(text, smallText, true);
	const covered = places.map(([x, middleY, anchor]) => {
		const middleX = anchor === 'start' ? x + width / 2 : x - width / 2;
		const size = { width: width + 6, height: smallText * 1.4 };
		return curves.reduce((sum, curve) => sum + pointsInside(curve, [middleX, middleY], size), 0);
	});
	const [x, middleY, anchor] = places[covered.indexOf(Math.min(...covered))] as (typeof places)[number];
	return tag(text, x, middleY, { anchor, bold: true });
}

/** How many points, taken every two pixels along a curve, lie in a box around a middle. */
function pointsInside(
	curve: readonly (readonly [number, number])[],
	[middleX, middleY]: readonly [number, number],
	{ width, height }: { readonly width: number; readonly height: number },
): number {
	let inside = 0;
	for (let index = 1; index < curve.length; index += 1) {
		const [x0, y0] = curve[index - 1] as readonly [number, number];
		const [x1, y1] = curve[index] as readonly [number, number];
		const pieces = Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / 2));
		for (let piece = 0; piece <= pieces; piece += 1) {
			const x = x0 + ((x1 - x0) * piece) / pieces;
			const y = y0 + ((y1 - y0) * piece) / pieces;
			if (Math.abs(x - middleX) < width / 2 && Math.abs(y - middleY) < height / 2) inside += 1;
		}
	}
	return inside;
}

type Library = typeof import('echarts/core');
let loaded: Promise<Library> | null = null;

/** The chart library, loaded with the first chart: a bot that draws none need not wait for it. */
function library(): Promise<Library> {
	loaded ??= load();
	return loaded;
}

async function load(): Promise<Library> {
	const [core, charts, components, renderers] = await Promise.all([
		import('echarts/core'),
		import('echarts/charts'),
		import('echarts/components'),
		import('echarts/renderers'),
	]);
	core.use([charts.LineChart, charts.BarChart, components.GridComponent, renderers.SVGRenderer]);
	core.setPlatformAPI({
		measureText: (text: string, font?: string) => {
			const size = Number(/([\d.]+)px/.exec(font ?? '')?.[1] ?? smallText);
			return { width: textWidth(text, size, /bold|[6-9]00/.test(font ?? '')) };
		},
	});
	return core;
}
