import { type AxlesPicture, drawAxles } from './axles.js';
import { type ChargePicture, drawCharge } from './charge.js';
import { type DropPicture, drawDrop } from './drop.js';
import type { Figure, FigureLayout } from './figure.js';
import { drawMonths, type MonthsPicture } from './months.js';
import { drawOneLine } from './oneline/draw.js';
import type { OneLinePicture } from './oneline/input.js';
import { drawSwing, type SwingPicture } from './swing.js';

/** What can be drawn: plain records, as they stand in a sheet or a book. */
export type Picture =
	| DropPicture
	| ChargePicture
	| MonthsPicture
	| AxlesPicture
	| OneLinePicture
	| SwingPicture;

/**
 * Draws a picture; the same record gives the same shapes.
 * @param layout the one-line diagram is laid out otherwise for a page; the rest is drawn alike
 * @throws RangeError where the record can't be drawn, naming what was read and what would be right
 */
export function drawPicture(picture: Picture, layout: FigureLayout = 'phone'): Promise<Figure> {
	switch (picture.kind) {
		case 'drop':
			return drawDrop(picture);
		case 'charge':
			return drawCharge(picture);
		case 'months':
			return drawMonths(picture);
		case 'axles':
			return drawAxles(picture);
		case 'one-line':
			return drawOneLine(picture, layout);
		case 'swing':
			return drawSwing(picture);
	}
}
