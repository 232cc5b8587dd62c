import { Resvg } from '@resvg/resvg-js';
import { type Figure, figureSvg } from './figure.js';
import { fontFamily, fontFiles } from './font.js';

export interface PngOptions {
	/** pixels of the picture for one CSS pixel; 3 unless said: sharp on a phone */
	readonly scale?: number;
}

/** The figure as PNG. Only the fonts that come with the program are used, whatever the machine has. */
export function figurePng(figure: Figure, { scale = 3 }: PngOptions = {}): Uint8Array {
	const picture = new Resvg(figureSvg(figure), {
		fitTo: { mode: 'zoom', value: scale },
		font: {
			loadSystemFonts: false,
			fontFiles: Object.values(fontFiles),
			defaultFontFamily: fontFamily,
			sansSerifFamily: fontFamily,
		},
	}).render();
	return picture.asPng();
}
