import { airDensityKgM3, airHeatWK, openingLossPa } from '../climate/air.js';
import { cautionBackdraft, cautionBreathing } from '../climate/cautions.js';
import { airVolumeM3 } from '../climate/shell.js';
import { boxOf, sizeFields, sizeNeed } from '../climate/van.js';
import {
	airChangesPerH,
	deliveredM3H,
	faceVelocityMS,
	flowNoiseDb,
	openingCoefficient,
} from '../climate/ventilation.js';
import { writeNumber } from '../quantity/write.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, number, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';

/** An opening as people measure it: "6x10 in", "20 x 30 cm". */
const openingPattern = String.raw`(?<![\d.])\d+(?:\.\d+)? ?[x×] ?\d+(?:\.\d+)? ?(?:in(?:ch(?:es)?)?|"|cm|mm)(?![a-z])`;

/** Area of an opening written as width by height [m²]. */
function openingM2(written: string): number {
	const [width = 0, height = 0] = (written.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
	const metre = /mm/.test(written) ? 0.001 : /cm/.test(written) ? 0.01 : 0.0254;
	return width * height * metre ** 2;
}

const fields = {
	airM3H: quantity({
		label: 'flow of the fan',
		kind: 'airflow',
		min: 1,
		max: 20_000,
		aliases: [
			'fan',
			'roof fan',
			'what fan',
			'fan size',
			'cfm',
			'airflow',
			'air flow',
			'flow',
			'exhaust',
			'ventilador',
			'extractor',
			'lüfter',
			'luftstrom',
		],
		help: 'At free flow, as the maker rates it.',
	}),
	airChanges: number({
		label: 'air changes wanted an hour',
		min: 0.1,
		max: 200,
		aliases: [
			'air changes',
			'air changes an hour',
			'air changes per hour',
			'ach',
			'renovaciones',
			'luftwechsel',
		],
	}),
	...sizeFields,
	volumeL: quantity({
		label: 'air inside',
		kind: 'volume',
		min: 500,
		max: 60_000,
		aliases: [
			'volume',
			'inside volume',
			'interior volume',
			'air volume',
			'volumen',
			'rauminhalt',
			'luftvolumen',
		],
	}),
	intakeM2: quantity({
		label: 'intake opening',
		kind: 'area',
		min: 0.0001,
		max: 3,
		aliases: [
			'intake',
			'inlet',
			'opening',
			'window',
			'open window',
			'vent',
			'grille',
			'floor vent',
			'entrada',
			'ventana',
			'zuluft',
			'fenster',
			'öffnung',
		],
	}),
	opening: text({
		label: 'intake, width by height',
		pattern: openingPattern,
		help: 'Such as 6x10 in or 20x30 cm.',
	}),
	fanMm: quantity({
		label: 'diameter of the fan',
		kind: 'thickness',
		min: 60,
		max: 700,
		aliases: ['fan', 'roof fan', 'fan diameter', 'diameter', 'ventilador', 'lüfter'],
	}),
	freeShare: quantity({
		label: 'free share of the opening',
		kind: 'fraction',
		min: 0.1,
		max: 1,
		aliases: [
			'free area',
			'free',
			'screen',
			'mesh',
			'screened',
			'malla',
			'fliegengitter',
			'freier querschnitt',
		],
		fallback: { value: 0.6, why: 'behind an insect screen (practice)', confirm: true },
	}),
	stallPa: quantity({
		label: 'pressure of the fan at no flow',
		kind: 'pressure',
		min: 0.002,
		max: 2,
		aliases: ['static', 'static pressure', 'stall', 'presión estática', 'statischer druck'],
		fallback: { value: 0.04, why: '40 Pa, a low-voltage axial roof fan (practice)' },
	}),
	altitudeM: quantity({
		label: 'altitude',
		kind: 'length',
		min: -400,
		max: 5500,
		aliases: ['altitude', 'elevation', 'above sea level', 'at', 'up at', 'altitud', 'höhe', 'meereshöhe'],
		fallback: { value: 0, why: 'sea level, as none was named' },
	}),
	airC: quantity({
		label: 'air temperature',
		kind: 'temperature',
		min: -40,
		max: 60,
		aliases: ['air', 'temperature', 'outside', 'temperatura', 'lufttemperatur'],
		fallback: { value: 25, why: 'a summer evening' },
	}),
	heatW: quantity({
		label: 'heat to be carried off',
		kind: 'power',
		min: 1,
		max: 20_000,
		aliases: ['heat', 'heat load', 'gain', 'calor', 'wärme'],
	}),
	burning: flag({
		label: 'something burns inside',
		yes: [
			'stove',
			'gas stove',
			'wood stove',
			'wood burner',
			'propane',
			'burner',
			'open flame',
			'open-flued',
			'estufa',
			'gaskocher',
			'holzofen',
		],
	}),
};

type Input = InputOf<typeof fields>;

export const vent = declareTopic({
	name: 'vent',
	title: 'Fan, air changes and the intake they need',
	system: 'climate',
	purpose: 'How often a fan renews the air, how large the intake must be, and what a small one does.',
	words: [
		'ventilation',
		'roof fan',
		'air changes',
		'lüftung',
		'ventilación',
		'vent',
		'exhaust fan',
		'intake area',
		'airflow',
		'air changes per hour',
		'dachlüfter',
		'ventilador',
		'luftwechsel',
	],
	examples: [
		'900 cfm roof fan in a long high roof van, how big an intake',
		'air changes with 300 cfm fan, medium wheelbase, window 60 in2',
		'fan for 20 air changes in an extended van',
		'dachlüfter 500 m3/h langer radstand fenster 400 cm2',
	],
	method:
		'Flow over the air inside; intake by velocity through its free area; the fan meets the opening where its falling pressure equals the opening loss (discharge coefficient 0.6). Density by the standard atmosphere. Wind and other leaks are not counted.',
	fields,
	needs: [
		{
			anyOf: ['airM3H', 'airChanges'],
			question: 'What flow has the fan (or how many air changes are wanted)?',
		},
	],
	calculate: calculateVent,
});

/** Air through an intake slower than this is not heard and hardly felt [m/s]. */
const quietMS = 2.5;
const quietSource = practice('2.5 m/s through the free area of an intake');
/** Faster than this it whistles and whips [m/s] (common practice). */
const loudMS = 5;

interface Air {
	/** null where the size of the van was not named */
	readonly volumeM3: number | null;
	readonly fanM3H: number;
	readonly density: number;
	/** opening for quiet flow, as measured, screen and all [m²] */
	readonly neededM2: number;
	/** null where no intake was named */
	readonly intake: {
		readonly freeM2: number;
		readonly deliveredM3H: number;
		readonly velocityMS: number;
		readonly lossPa: number;
		readonly noiseDb: number;
	} | null;
}

/** Free area of the intake that was named, behind its screen [m²]. */
function freeAreaM2(input: Input): number | null {
	const areaM2 = input.intakeM2 ?? (input.opening === undefined ? null : openingM2(input.opening));
	return areaM2 === null ? null : areaM2 * input.freeShare;
}

function airOf(input: Input, volumeM3: number | null, fanM3H: number): Air {
	const density = airDensityKgM3(input.airC, standardPressureKpa(input.altitudeM));
	const neededM2 = fanM3H / 3600 / quietMS / input.freeShare;
	const freeM2 = freeAreaM2(input);
	if (freeM2 === null) return { volumeM3, fanM3H, density, neededM2, intake: null };
	const delivered = deliveredM3H(fanM3H, input.stallPa * 1000, { areaM2: freeM2, densityKgM3: density });
	const velocityMS = faceVelocityMS(delivered, freeM2);
	return {
		volumeM3,
		fanM3H,
		density,
		neededM2,
		intake: {
			freeM2,
			deliveredM3H: delivered,
			velocityMS,
			lossPa: openingLossPa(delivered, freeM2, openingCoefficient, density),
			noiseDb: flowNoiseDb(velocityMS, freeM2),
		},
	};
}

/** Air inside [m³], or null where nothing tells the size of the van. */
function volumeOf(input: Input, sheet: Sheet): number | null {
	if (input.volumeL !== undefined) return input.volumeL / 1000;
	const sized =
		input.wheelbase !== undefined || input.wheelbaseM !== undefined || input.insideLengthM !== undefined;
	return sized ? airVolumeM3(boxOf(input, sheet), false) : null;
}

function calculateVent(input: Input, sheet: Sheet) {
	const freeM2 = freeAreaM2(input);
	if (freeM2 !== null && (freeM2 < 1e-5 || freeM2 > 5)) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read an intake of ${areaText(sheet, freeM2 / input.freeShare, 'nearest')}; that can't be.`,
			'Name the opening as width by height, such as 6x10 in or 20x30 cm, or its area.',
			'opening',
		);
	}
	const volumeM3 = volumeOf(input, sheet);
	if (volumeM3 === null && input.airM3H === undefined) {
		return sheet.ask({ name: 'wheelbase', label: fields.wheelbase.meta.label, question: sizeNeed.question });
	}
	const fanM3H = input.airM3H ?? fanFor(input, (input.airChanges ?? 0) * (volumeM3 ?? 0), freeM2);
	if (fanM3H === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`No such fan draws that much air through an opening of ${areaText(sheet, (freeM2 ?? 0) / input.freeShare, 'nearest')}.`,
			'Name a larger opening, fewer air changes or a fan with more pressure.',
			'intakeM2',
		);
	}
	const air = airOf(input, volumeM3, fanM3H);
	const real = air.intake?.deliveredM3H ?? fanM3H;
	const changes = volumeM3 === null ? null : airChangesPerH(real, volumeM3);

	writeWorking(sheet, input, air, changes);
	writeResults(sheet, input, air, real, changes);
	writeNeighbours(sheet, input, air);
	writeTipping(sheet, input, air);
	writeFindings(sheet, input, air, changes);
	sheet.caution(cautionBackdraft, cautionBreathing);

	const area = areaText(sheet, air.neededM2, 'up');
	const fan = sheet.show('airflow', fanM3H, { round: input.airM3H === undefined ? 'up' : 'nearest' });
	const through = sheet.show('airflow', real, { round: 'down' });
	const times = changes === null ? null : writeNumber(changes, changes < 10 ? 1 : 0, 'down');
	const wanted = writeNumber(input.airChanges ?? 0, 1);
	const headline =
		input.airM3H === undefined
			? sheet.say`${fan} fan for ${wanted} air changes an hour; intake ${area}`
			: times === null
				? air.intake === null
					? sheet.say`Intake of ${area} for a ${fan} fan`
					: sheet.say`The fan moves ${through} through this intake`
				: air.intake === null
					? sheet.say`${times} air changes an hour; intake of ${area}`
					: sheet.say`${times} air changes an hour through this intake`;
	const quiet = sheet.show('speed', quietMS);
	const because =
		air.intake === null
			? sheet.say`Through that intake the air stays below ${quiet}.`
			: sheet.say`The fan moves ${through} of its ${fan}; the air enters at ${sheet.show('speed', air.intake.velocityMS)}.`;
	return sheet.answer(headline, { governedBy: air.intake === null ? 'fan' : 'intake', because });
}

/** Free flow of the fan that moves so much air through the opening there is [m³/h], or null where none does. */
function fanFor(input: Input, wantedM3H: number, freeM2: number | null): number | null {
	if (freeM2 === null) return wantedM3H;
	const stallPa = input.stallPa * 1000;
	const density = airDensityKgM3(input.airC, standardPressureKpa(input.altitudeM));
	const lossPa = openingLossPa(wantedM3H, freeM2, openingCoefficient, density);
	// The fan's curve and the opening's meet at the wanted flow: Qf = Q / sqrt(1 - p/p0).
	return lossPa > 0.9 * stallPa ? null : wantedM3H / Math.sqrt(1 - lossPa / stallPa);
}

/** Openings are measured in square inches or square centimetres. */
function areaText(sheet: Sheet, areaM2: number, round: 'up' | 'down' | 'nearest'): string {
	return sheet.show('area', areaM2, {
		unit: sheet.context.units === 'us' ? 'in²' : 'cm²',
		decimals: 0,
		round,
	});
}

function writeWorking(sheet: Sheet, input: Input, air: Air, changes: number | null): void {
	const n = (value: number, decimals = 2) => writeNumber(value, decimals);
	sheet.step(
		'density of the air',
		'ρ = p / (R T)',
		`${n(input.altitudeM, 0)} m, ${n(input.airC, 0)} °C`,
		air.density,
		{
			kind: 'density',
			source: atmosphereSource,
		},
	);
	if (air.intake !== null) {
		sheet.step(
			'flow against the intake',
			'Q = Qf · √(p0 / (p0 + ρ/2 · (Qf / (Cd A))²))',
			`${n(air.fanM3H, 0)} m³/h, ${n(input.stallPa * 1000, 0)} Pa, free ${n(air.intake.freeM2 * 10_000, 0)} cm²`,
			air.intake.deliveredM3H,
			{
				kind: 'airflow',
				source: fromMemory('textbook fluid mechanics', 'discharge coefficient 0.6 of an opening'),
			},
		);
	}
	if (changes !== null) {
		sheet.step(
			'air changes an hour',
			'n = Q / V',
			`${n(air.intake?.deliveredM3H ?? air.fanM3H, 0)} m³/h / ${n(air.volumeM3 ?? 0, 1)} m³`,
			changes,
			{ unit: '1/h', source: physics('air balance') },
		);
	}
	sheet.step(
		'intake for quiet flow',
		'A = Q / (v · free share)',
		`${n(air.fanM3H, 0)} m³/h / (3600 × ${quietMS} m/s × ${n(input.freeShare)})`,
		air.neededM2,
		{ kind: 'area', source: quietSource },
	);
}

function writeResults(sheet: Sheet, input: Input, air: Air, real: number, changes: number | null): void {
	if (changes !== null && air.volumeM3 !== null) {
		sheet.result('airChanges', 'air changes an hour', changes, {
			unit: '1/h',
			write: { decimals: 1, round: 'down' },
		});
		sheet.result('minutesPerChange', 'time for one air change', 1 / changes, {
			kind: 'duration',
			write: { unit: 'min', round: 'up' },
		});
		sheet.result('volume', 'air inside', air.volumeM3 * 1000, {
			kind: 'volume',
			// Nobody counts air in gallons.
			write: { unit: sheet.context.units === 'us' ? 'ft³' : 'm³' },
		});
	}
	sheet.result('fanFlow', 'free flow of the fan', air.fanM3H, { kind: 'airflow', write: { round: 'up' } });
	if (input.fanMm !== undefined) {
		const faceM2 = (Math.PI / 4) * (input.fanMm / 1000) ** 2;
		sheet.result('fanVelocity', 'velocity through the fan', faceVelocityMS(real, faceM2), { kind: 'speed' });
	}
	sheet.result('intakeNeeded', 'intake opening for quiet flow', air.neededM2, {
		kind: 'area',
		write: { unit: sheet.context.units === 'us' ? 'in²' : 'cm²', decimals: 0, round: 'up' },
	});
	if (air.intake !== null) {
		sheet.result('deliveredFlow', 'flow through this intake', real, {
			kind: 'airflow',
			write: { round: 'down' },
		});
		sheet.result('intakeVelocity', 'velocity in the intake', air.intake.velocityMS, {
			kind: 'speed',
			write: { round: 'up' },
		});
		sheet.result('intakeLoss', 'pressure lost in the intake', air.intake.lossPa / 1000, {
			kind: 'pressure',
			write: { unit: 'Pa', decimals: 1, round: 'up' },
		});
		sheet.result('intakeNoise', 'noise of the intake', air.intake.noiseDb, {
			unit: 'dB(A)',
			write: { decimals: 0, round: 'up' },
		});
		sheet.source(noiseSource);
	}
	const perK = airHeatWK(real, air.density);
	sheet.result('heatPerKelvin', 'heat carried off per kelvin', perK, {
		kind: 'heatLoss',
		write: { round: 'down' },
	});
	sheet.result(
		'densityShare',
		'density of the air against sea level',
		air.density / airDensityKgM3(input.airC, 101.325),
		{
			kind: 'fraction',
			write: { round: 'down' },
		},
	);
	if (input.heatW !== undefined) {
		sheet.result('warmer', 'how much warmer than outside it stays', input.heatW / perK, {
			kind: 'temperatureDifference',
			write: { round: 'up' },
		});
	}
}

const noiseSource = fromMemory('VDI 2081', 'flow noise of grilles');

function writeNeighbours(sheet: Sheet, input: Input, air: Air): void {
	for (const factor of [0.5, 2]) {
		const fan = air.fanM3H * factor;
		const other = airOf(input, air.volumeM3, fan);
		const real = other.intake?.deliveredM3H ?? fan;
		const changes = air.volumeM3 === null ? null : airChangesPerH(real, air.volumeM3);
		const passes =
			(input.airChanges === undefined || changes === null || changes >= input.airChanges) &&
			(other.intake === null || other.intake.velocityMS <= loudMS);
		sheet.neighbour(
			sheet.show('airflow', fan),
			passes,
			changes === null
				? sheet.say`intake of ${areaText(sheet, other.neededM2, 'up')}`
				: sheet.say`${writeNumber(changes, 1, 'down')} air changes an hour`,
		);
	}
}

/** The least opening through which the fan still moves nine tenths of its flow. */
function writeTipping(sheet: Sheet, input: Input, air: Air): void {
	// Q/Qf = 0.9 where the loss at free flow is p0 (1/0.81 - 1).
	const lossPa = input.stallPa * 1000 * (1 / 0.81 - 1);
	const freeM2 = air.fanM3H / 3600 / (openingCoefficient * Math.sqrt((2 * lossPa) / air.density));
	const areaM2 = freeM2 / input.freeShare;
	const shown = areaText(sheet, areaM2, 'up');
	sheet.tipping(
		'intakeM2',
		'intake opening',
		areaM2,
		sheet.say`down to ${shown} of intake, below which the fan loses more than a tenth`,
		{
			kind: 'area',
		},
	);
}

function writeFindings(sheet: Sheet, input: Input, air: Air, changes: number | null): void {
	if (input.burning === true) {
		sheet.finding(
			'danger',
			'backdraft',
			sheet.say`The fan can draw fumes back out of a flame or flue inside the van. Open a window of at least ${areaText(sheet, air.neededM2, 'up')} first, and have a carbon-monoxide alarm.`,
			practice('no exhaust fan against an open flame without an intake'),
		);
	}
	const { intake } = air;
	if (intake !== null && intake.velocityMS > quietMS) {
		const speed = sheet.show('speed', intake.velocityMS, { round: 'up' });
		const needed = areaText(sheet, air.neededM2, 'up');
		const noise = writeNumber(intake.noiseDb, 0, 'up');
		sheet.finding(
			intake.velocityMS > loudMS ? 'warning' : 'note',
			'intake-too-small',
			sheet.say`The air rushes in at ${speed} (about ${noise} dB(A)) and the fan loses flow; an opening of ${needed} clears it.`,
			quietSource,
		);
	}
	if (
		input.airM3H !== undefined &&
		input.airChanges !== undefined &&
		changes !== null &&
		changes < input.airChanges
	) {
		const wanted = writeNumber(input.airChanges, 1);
		const needed = sheet.show('airflow', input.airChanges * (air.volumeM3 ?? 0), { round: 'up' });
		sheet.finding(
			'warning',
			'too-few-air-changes',
			sheet.say`${wanted} air changes are wanted: that takes ${needed} through a large enough intake.`,
			physics('air balance'),
		);
	}
	if (input.altitudeM > 1000) {
		const altitude = sheet.show('length', input.altitudeM, { decimals: 0 });
		const share = writeNumber((air.density / airDensityKgM3(input.airC, 101.325)) * 100, 0, 'down');
		sheet.finding(
			'note',
			'thin-air',
			sheet.say`At ${altitude} the same air changes carry off only ${share} % of the heat.`,
			atmosphereSource,
		);
	}
}
