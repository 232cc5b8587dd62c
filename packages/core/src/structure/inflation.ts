/** One point of a pump's curve: how much free air it takes in each minute against a gauge pressure. */
export interface PumpPoint {
	readonly gaugeKpa: number;
	readonly freeAirLMin: number;
}

/**
 * Air inside a tire, from its printed size: the ring between rim and tread, filled to `fill`.
 * @param size section width [mm], sidewall over width, rim [mm]
 * @returns [L]
 */
export function tireVolumeL(
	size: { readonly widthMm: number; readonly aspect: number; readonly rimMm: number },
	fill = 0.9,
): number {
	const outerMm = overallDiameterMm(size);
	return (fill * Math.PI * (outerMm ** 2 - size.rimMm ** 2) * size.widthMm) / 4 / 1e6;
}

/** Rim and two sidewalls [mm]. */
export function overallDiameterMm(size: {
	readonly widthMm: number;
	readonly aspect: number;
	readonly rimMm: number;
}): number {
	return size.rimMm + 2 * size.widthMm * size.aspect;
}

/** A tire's printed size: "LT225/75R16", "235/65 R16C", "31x10.50R15LT". */
export interface TireSize {
	readonly widthMm: number;
	readonly aspect: number;
	readonly rimMm: number;
}

/** The same, as a pattern for reading text. */
export const tireSizePattern =
	'(?<![\\w/.,])(?:LT|P|ST)?\\s?(?:\\d{3}\\s?(?:/\\s?\\d{2}\\s?(?:Z?R|-|D|\\s)|[ -]\\d{2}\\s?Z?R)|\\d{2}(?:\\.\\d{1,2})?\\s?x\\s?\\d{1,2}(?:[.,]?\\d{2}|[.,]\\d)?\\s?(?:R|-|D))\\s?\\d{2}(?:\\.5)?(?![\\d/]|[.,]\\d)(?:\\s?(?:C|LT)\\b)?';

/** @returns null where the text is no such size */
export function readTireSize(text: string): TireSize | null {
	const size = readMetricSize(text.trim()) ?? readFlotationSize(text.trim());
	if (size === null) return null;
	const { widthMm, aspect, rimMm } = size;
	const isPossible =
		widthMm >= 125 && widthMm <= 455 && aspect >= 0.25 && aspect <= 0.95 && rimMm >= 254 && rimMm <= 630;
	return isPossible ? size : null;
}

/** Width in millimetres, height over width in percent, rim in inches: "LT225/75R16". */
function readMetricSize(text: string): TireSize | null {
	const match = /^(?:LT|P|ST)?\s?(\d{3})\s?[/ -]\s?(\d{2})\s?(?:Z?R|-|D|\s)\s?(\d{2}(?:\.5)?)/i.exec(text);
	if (match === null) return null;
	return { widthMm: Number(match[1]), aspect: Number(match[2]) / 100, rimMm: Number(match[3]) * 25.4 };
}

/** Overall diameter, width and rim, all in inches: "33x12.50R15", the point often left out ("33x1250R15"). */
function readFlotationSize(text: string): TireSize | null {
	const match =
		/^(?:LT)?\s?(\d{2}(?:\.\d{1,2})?)\s?x\s?(\d{1,2}(?:[.,]?\d{2}|[.,]\d)?)\s?(?:R|-|D)\s?(\d{2}(?:\.5)?)/i.exec(
			text,
		);
	if (match === null) return null;
	const [, diameter, width = '', rim] = match;
	const widthIn = /^\d{3,4}$/.test(width) ? Number(width) / 100 : Number(width.replace(',', '.'));
	const sidewallIn = (Number(diameter) - Number(rim)) / 2;
	return { widthMm: widthIn * 25.4, aspect: sidewallIn / widthIn, rimMm: Number(rim) * 25.4 };
}

/**
 * Free air that raises a tire's pressure at one temperature: V (p2 - p1) / pa, at the air pressure of the place [L].
 * @source Boyle's law; both pressures gauge or both absolute
 */
export function freeAirL(volumeL: number, fromKpa: number, toKpa: number, ambientKpa: number): number {
	return (volumeL * (toKpa - fromKpa)) / ambientKpa;
}

/**
 * Share of its swept volume that a piston pump still takes in against a pressure: 1 + c - c r^(1/n), with c the dead
 * space over the stroke and r the ratio of absolute pressures.
 * @source textbook relation of the reciprocating compressor
 */
export function volumetricEfficiency(pressureRatio: number, deadSpace: number, exponent = 1.3): number {
	return Math.max(0, 1 + deadSpace - deadSpace * pressureRatio ** (1 / exponent));
}

/**
 * The curve of a pump of which only the open flow is known: open flow times volumetric efficiency.
 * @param openLMin free air at no pressure [L/min]
 */
export function assumedCurve(
	openLMin: number,
	deadSpace: number,
	ambientKpa: number,
	uptoKpa: number,
): PumpPoint[] {
	const steps = 40;
	return Array.from({ length: steps + 1 }, (_, index) => {
		const gaugeKpa = index === steps ? uptoKpa : (uptoKpa * index) / steps;
		return {
			gaugeKpa,
			freeAirLMin: openLMin * volumetricEfficiency((gaugeKpa + ambientKpa) / ambientKpa, deadSpace),
		};
	});
}

/** Flow of a curve at a pressure, straight between points, level beyond the first and 0 beyond the last [L/min]. */
export function flowAt(curve: readonly PumpPoint[], gaugeKpa: number): number {
	const first = curve[0];
	if (first === undefined) return 0;
	if (gaugeKpa <= first.gaugeKpa) return first.freeAirLMin;
	const after = curve.findIndex((point) => point.gaugeKpa >= gaugeKpa);
	if (after < 0) return 0;
	const low = curve[after - 1] as PumpPoint;
	const high = curve[after] as PumpPoint;
	const share = (gaugeKpa - low.gaugeKpa) / (high.gaugeKpa - low.gaugeKpa);
	return low.freeAirLMin + share * (high.freeAirLMin - low.freeAirLMin);
}

/**
 * Pumping time along a curve: the integral of V / (pa Q(p)) dp, worked out exactly on each straight piece.
 * @param curve by rising pressure
 * @returns minutes, or null where the pump stalls before the pressure is reached
 */
export function pumpingMinutes(
	volumeL: number,
	fromKpa: number,
	toKpa: number,
	ambientKpa: number,
	curve: readonly PumpPoint[],
): number | null {
	const last = curve.at(-1);
	if (last === undefined || last.gaugeKpa < toKpa) return null;
	const inside = curve.map((point) => point.gaugeKpa).filter((p) => p > fromKpa && p < toKpa);
	const places = [fromKpa, ...inside, toKpa];
	let minutes = 0;
	for (let index = 1; index < places.length; index += 1) {
		const low = places[index - 1] as number;
		const high = places[index] as number;
		const flowLow = flowAt(curve, low);
		const flowHigh = flowAt(curve, high);
		if (flowLow <= 0 || flowHigh <= 0) return null;
		const ratio = flowHigh / flowLow;
		// The mean of 1/Q on a straight piece is ln(Q2/Q1) / (Q2 - Q1); at equal ends it is 1/Q.
		const meanInverse =
			Math.abs(ratio - 1) < 1e-6 ? 2 / (flowLow + flowHigh) : Math.log(ratio) / (flowHigh - flowLow);
		minutes += ((volumeL * (high - low)) / ambientKpa) * meanInverse;
	}
	return minutes;
}

/**
 * Time with the rests that a pump needs: after each full spell a rest, none after the last.
 * @returns spells, rests and the whole time [min]
 */
export function withRests(
	runMinutes: number,
	spellMinutes: number,
	restMinutes: number,
): { readonly spells: number; readonly rests: number; readonly totalMinutes: number } {
	// A hair of floating point must not add a spell.
	const spells = Math.max(1, Math.ceil(runMinutes / spellMinutes - 1e-9));
	return { spells, rests: spells - 1, totalMinutes: runMinutes + (spells - 1) * restMinutes };
}

const figure = '\\d+(?:[.,]\\d+)?';
const between = '\\s?(?:-|to|auf|bis|up to|hasta|a)\\s?';

/** "from 25 to 65 psi", "1,8-4,2 bar": both pressures with one unit. For reading text. */
export const pressureRangePattern = `${figure}${between}${figure}\\s?(?:psi|bar|kpa)\\b`;

const kpaOf: Readonly<Record<string, number>> = { psi: 6.894757293168, bar: 100, kpa: 1 };

/** @returns both pressures [kPa], or null where the text is no such pair */
export function readPressureRange(text: string): { readonly fromKpa: number; readonly toKpa: number } | null {
	const match = new RegExp(`^(${figure})${between}(${figure})\\s?(psi|bar|kpa)$`, 'i').exec(text.trim());
	const factor = kpaOf[match?.[3]?.toLowerCase() ?? ''];
	if (match === null || factor === undefined) return null;
	const number = (digits: string | undefined) => Number(digits?.replace(',', '.')) * factor;
	return { fromKpa: number(match[1]), toKpa: number(match[2]) };
}
