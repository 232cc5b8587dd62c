import type { Figure } from '../../picture/figure.js';
import { type Face, faceRuns, fontFiles } from '../../picture/font.js';
import type { PathShape, Shape, TextShape } from '../../picture/shape.js';
import type { LineOptions } from './paper.js';

export type Pdf = PDFKit.PDFDocument;

/** By the path of its file: the library would read the file anew at each change to a font registered by a name. */
function setFace(pdf: Pdf, face: Face): Pdf {
	return pdf.font(fontFiles[face]);
}

/** One line of text, its pieces each in the face that has them. @param baseline [pt] */
export function drawLine(pdf: Pdf, text: string, x: number, baseline: number, options: LineOptions): void {
	let at = x;
	for (const { face, text: piece } of faceRuns(text, options.bold)) {
		if (piece.trim() === '' && at === x) continue;
		setFace(pdf, face).fontSize(options.size).fillColor(options.colour);
		pdf.text(piece, at, baseline, { lineBreak: false, baseline: 'alphabetic' });
		at += pdf.widthOfString(piece);
	}
}

/** The figure's shapes as lines and letters of the page, sharp at any size. @param scale points for a CSS pixel */
export function drawFigure(pdf: Pdf, figure: Figure, place: { x: number; y: number; scale: number }): void {
	pdf.save();
	pdf.translate(place.x, place.y).scale(place.scale);
	// A piece of a longer figure shows no more than its own part.
	pdf.rect(0, 0, figure.width, figure.height).clip();
	for (const shape of figure.shapes) drawShape(pdf, shape);
	pdf.restore();
}

function drawShape(pdf: Pdf, shape: Shape): void {
	switch (shape.kind) {
		case 'path':
			drawPath(pdf, shape);
			return;
		case 'text':
			drawText(pdf, shape);
			return;
		case 'group':
			pdf.save();
			pdf.transform(...shape.transform);
			for (const inner of shape.shapes) drawShape(pdf, inner);
			pdf.restore();
	}
}

function drawPath(pdf: Pdf, { d, fill, stroke, strokeWidth, dash }: PathShape): void {
	if (fill === null && stroke === null) return;
	pdf.path(d);
	if (stroke !== null) {
		pdf.lineWidth(strokeWidth);
		// The library takes a whole pattern of dashes; its types know of one length alone.
		if (dash.length > 0) pdf.dash([...dash] as unknown as number, {});
		else pdf.undash();
	}
	if (fill !== null && stroke !== null) pdf.fillAndStroke(fill, stroke);
	else if (fill !== null) pdf.fill(fill);
	else if (stroke !== null) pdf.stroke(stroke);
}

function drawText(pdf: Pdf, { text, x, y, anchor, size, bold, fill }: TextShape): void {
	const width =
		anchor === 'start'
			? 0
			: faceRuns(text, bold).reduce(
					(sum, { face, text: piece }) => sum + setFace(pdf, face).fontSize(size).widthOfString(piece),
					0,
				);
	const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
	drawLine(pdf, text, left, y, { size, bold, colour: fill });
}
