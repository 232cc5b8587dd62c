import type { Figure } from '../../picture/figure.js';
import type { Element, ElementOptions, LineOptions, Paper } from './paper.js';
import { drawFigure, drawLine, type Pdf } from './shapes.js';

/** The pages of a PDF, with the marks by which its text is read out, its outline and its links. */
export class PdfPaper implements Paper {
	readonly width: number;
	readonly height: number;
	readonly #pdf: Pdf;
	readonly #root: PDFKit.PDFStructureElement;
	#chapter: PDFKit.PDFOutline;

	constructor(pdf: Pdf, [width, height]: readonly [width: number, height: number]) {
		this.width = width;
		this.height = height;
		this.#pdf = pdf;
		this.#chapter = pdf.outline;
		this.#root = pdf.struct('Document');
		pdf.addStructure(this.#root);
	}

	newPage(): void {
		this.#pdf.addPage();
	}

	line(text: string, x: number, baseline: number, options: LineOptions): void {
		drawLine(this.#pdf, text, x, baseline, options);
	}

	figure(figure: Figure, place: { readonly x: number; readonly y: number; readonly scale: number }): void {
		drawFigure(this.#pdf, figure, place);
	}

	rule(left: number, right: number, y: number, { width, colour }: { width: number; colour: string }): void {
		this.#pdf.undash().lineWidth(width).moveTo(left, y).lineTo(right, y).stroke(colour);
	}

	frame(
		x: number,
		y: number,
		width: number,
		height: number,
		stroke: { readonly width: number; readonly colour: string },
	): void {
		this.#pdf.undash().lineWidth(stroke.width).rect(x, y, width, height).stroke(stroke.colour);
	}

	artifact(type: 'Pagination' | 'Layout', draw: () => void): void {
		this.#pdf.markContent('Artifact', { type });
		draw();
		this.#pdf.endMarkedContent();
	}

	element(type: string, options: ElementOptions = {}): Element {
		return this.#below(this.#root, type, options);
	}

	#below(parent: PDFKit.PDFStructureElement, type: string, options: ElementOptions): Element {
		const own = this.#pdf.struct(type, options);
		parent.add(own);
		return {
			add: (draw) => {
				own.add(draw);
			},
			child: (inner) => this.#below(own, inner, {}),
			end: () => own.end(),
		};
	}

	place(id: string, x: number, y: number): void {
		this.#pdf.addNamedDestination(id, 'XYZ', x, y, null);
	}

	link(x: number, y: number, width: number, height: number, id: string): void {
		this.#pdf.goTo(x, y, width, height, id);
	}

	bookmark(text: string, isChapter: boolean): void {
		const parent = isChapter ? this.#pdf.outline : this.#chapter;
		const item = parent.addItem(text);
		if (isChapter) this.#chapter = item;
	}

	end(): void {
		this.#root.end();
		this.#pdf.end();
	}
}
