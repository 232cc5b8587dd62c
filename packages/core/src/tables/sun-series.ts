/**
 * Series of the solar position algorithm, NREL/TP-560-34302 (Reda and Andreas), Tables A4.2 and A4.3, written down
 * from memory and cut off where a term moves the sun by less than 0.1 arc second: amplitude (1e-8 rad or 1e-8 au),
 * phase (rad), speed (rad per thousand years). Checked against the report's example and against a full
 * implementation row by row.
 */
export type Term = readonly [amplitude: number, phase: number, speed: number];

/** heliocentric longitude of the earth, by powers of the time */
export const longitudeTerms: readonly (readonly Term[])[] = [
	[
		[175347046, 0, 0],
		[3341656, 4.6692568, 6283.07585],
		[34894, 4.6261, 12566.1517],
		[3497, 2.7441, 5753.3849],
		[3418, 2.8289, 3.5231],
		[3136, 3.6277, 77713.7715],
		[2676, 4.4181, 7860.4194],
		[2343, 6.1352, 3930.2097],
		[1324, 0.7425, 11506.7698],
		[1273, 2.0371, 529.691],
		[1199, 1.1096, 1577.3435],
		[990, 5.233, 5884.927],
		[902, 2.045, 26.298],
		[857, 3.508, 398.149],
		[780, 1.179, 5223.694],
		[753, 2.533, 5507.553],
		[505, 4.583, 18849.228],
		[492, 4.205, 775.523],
		[357, 2.92, 0.067],
		[317, 5.849, 11790.629],
		[284, 1.899, 796.298],
		[271, 0.315, 10977.079],
		[243, 0.345, 5486.778],
		[206, 4.806, 2544.314],
		[205, 1.869, 5573.143],
		[202, 2.458, 6069.777],
		[156, 0.833, 213.299],
		[132, 3.411, 2942.463],
		[126, 1.083, 20.775],
		[115, 0.645, 0.98],
		[103, 0.636, 4694.003],
		[102, 0.976, 15720.839],
		[102, 4.267, 7.114],
		[99, 6.21, 2146.17],
		[98, 0.68, 155.42],
		[86, 5.98, 161000.69],
		[85, 1.3, 6275.96],
		[85, 3.67, 71430.7],
		[80, 1.81, 17260.15],
		[79, 3.04, 12036.46],
		[75, 1.76, 5088.63],
		[74, 3.5, 3154.69],
		[74, 4.68, 801.82],
		[70, 0.83, 9437.76],
		[62, 3.98, 8827.39],
		[61, 1.82, 7084.9],
		[57, 2.78, 6286.6],
		[56, 4.39, 14143.5],
		[56, 3.47, 6279.55],
		[52, 0.19, 12139.55],
		[52, 1.33, 1748.02],
		[51, 0.28, 5856.48],
		[49, 0.49, 1194.45],
	],
	[
		[628331966747, 0, 0],
		[206059, 2.678235, 6283.07585],
		[4303, 2.6351, 12566.1517],
		[425, 1.59, 3.523],
		[119, 5.796, 26.298],
		[109, 2.966, 1577.344],
		[93, 2.59, 18849.23],
		[72, 1.14, 529.69],
		[68, 1.87, 398.15],
		[67, 4.41, 5507.55],
		[59, 2.89, 5223.69],
		[56, 2.17, 155.42],
	],
	[
		[52919, 0, 0],
		[8720, 1.0721, 6283.0758],
		[309, 0.867, 12566.152],
	],
	[
		[289, 5.844, 6283.076],
		[35, 0, 0],
	],
	// biome-ignore lint/suspicious/noApproximativeNumericConstant: as the series prints it
	[[114, 3.142, 0]],
];

/** heliocentric latitude of the earth */
export const latitudeTerms: readonly (readonly Term[])[] = [
	[
		[280, 3.199, 84334.662],
		[102, 5.422, 5507.553],
		[80, 3.88, 5223.69],
		[44, 3.7, 2352.87],
		[32, 4, 1577.34],
	],
	[
		[9, 3.9, 5507.55],
		[6, 1.73, 5223.69],
	],
];

/** distance of the earth from the sun */
export const radiusTerms: readonly (readonly Term[])[] = [
	[
		[100013989, 0, 0],
		[1670700, 3.0984635, 6283.07585],
		[13956, 3.05525, 12566.1517],
		[3084, 5.1985, 77713.7715],
		[1628, 1.1739, 5753.3849],
		[1576, 2.8469, 7860.4194],
		[925, 5.453, 11506.77],
		[542, 4.564, 3930.21],
		[472, 3.661, 5884.927],
		[346, 0.964, 5507.553],
		[329, 5.9, 5223.694],
		[307, 0.299, 5573.143],
		[243, 4.273, 11790.629],
		[212, 5.847, 1577.344],
		[186, 5.022, 10977.079],
		[175, 3.012, 18849.228],
	],
	[
		[103019, 1.10749, 6283.07585],
		[1721, 1.0644, 12566.1517],
		// biome-ignore lint/suspicious/noApproximativeNumericConstant: as the series prints it
		[702, 3.142, 0],
	],
	[
		[4359, 5.7846, 6283.0758],
		[124, 5.579, 12566.152],
	],
];

/**
 * The largest terms of the nutation: multiples of D, M, M', F and the node; in longitude (sine) and obliquity
 * (cosine), each constant and per century [0.0001 arc second].
 */
export const nutationTerms: readonly {
	readonly multiples: readonly [number, number, number, number, number];
	readonly longitude: readonly [number, number];
	readonly obliquity: readonly [number, number];
}[] = [
	{ multiples: [0, 0, 0, 0, 1], longitude: [-171996, -174.2], obliquity: [92025, 8.9] },
	{ multiples: [-2, 0, 0, 2, 2], longitude: [-13187, -1.6], obliquity: [5736, -3.1] },
	{ multiples: [0, 0, 0, 2, 2], longitude: [-2274, -0.2], obliquity: [977, -0.5] },
	{ multiples: [0, 0, 0, 0, 2], longitude: [2062, 0.2], obliquity: [-895, 0.5] },
	{ multiples: [0, 1, 0, 0, 0], longitude: [1426, -3.4], obliquity: [54, -0.1] },
	{ multiples: [0, 0, 1, 0, 0], longitude: [712, 0.1], obliquity: [-7, 0] },
	{ multiples: [-2, 1, 0, 2, 2], longitude: [-517, 1.2], obliquity: [224, -0.6] },
	{ multiples: [0, 0, 0, 2, 1], longitude: [-386, -0.4], obliquity: [200, 0] },
	{ multiples: [0, 0, 1, 2, 2], longitude: [-301, 0], obliquity: [129, -0.1] },
	{ multiples: [-2, -1, 0, 2, 2], longitude: [217, -0.5], obliquity: [-95, 0.3] },
	{ multiples: [-2, 0, 1, 0, 0], longitude: [-158, 0], obliquity: [0, 0] },
	{ multiples: [-2, 0, 0, 2, 1], longitude: [129, 0.1], obliquity: [-70, 0] },
	{ multiples: [0, 0, -1, 2, 2], longitude: [123, 0], obliquity: [-53, 0] },
];
