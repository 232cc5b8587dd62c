export type {
	BuildBook,
	EnergyPart,
	EquipmentItem,
	FactsPart,
	Handover,
	LoadRow,
	OpenFinding,
	OwnerLimit,
	RunRow,
	Sheets,
	Signer,
	Signing,
	WeightRow,
	WeightsPart,
	WholeSignature,
} from './book/book.js';
export { type Schedule, scheduleCsv, scheduleCsvLines } from './book/csv.js';
export { bookHtml, bookHtmlChunks } from './book/html.js';
export { bookJson, bookJsonAbout, bookJsonChunks, bookJsonFormat } from './book/json.js';
export { type BookPdfOptions, bookPdf, bookPdfChunks } from './book/pdf.js';
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
export { type Computed, picturesOf } from './sheet/pictures.js';
export {
	type InputOrigin,
	type Recomputed,
	type Revision,
	type SheetCheck,
	type SheetInput,
	type SheetRecord,
	type SheetSignature,
	type SheetState,
	sheetStates,
} from './sheet/record.js';
export { drawPictures, sheetHtml, sheetPage, sheetPdf, sheetText } from './sheet/sheet.js';
