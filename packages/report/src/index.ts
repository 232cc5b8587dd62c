export type { AxleRow, AxlesPicture } from './picture/axles.js';
export type { ChargeCase, ChargePicture } from './picture/charge.js';
export { drawPicture, type Picture } from './picture/draw.js';
export type { DropPicture, DropSize } from './picture/drop.js';
export { type Figure, figureSvg } from './picture/figure.js';
export type { MonthsPicture } from './picture/months.js';
export {
	type OneLineDevice,
	type OneLinePart,
	type OneLinePicture,
	type OneLineRun,
	oneLineProblems,
} from './picture/oneline/input.js';
export { figurePng, type PngOptions } from './picture/png.js';
export type { SwingCurve, SwingPicture } from './picture/swing.js';
