import { inEnglish, type Say } from '../topic/translate.js';
/** A cross-section as bending about its level axis sees it. */
export interface Section {
	readonly areaMm2: number;
	/** second moment of area about the level axis, for a beam held upright [mm⁴] */
	readonly secondMomentMm4: number;
	/**
	 * The second moment that counts for the sag of a beam left free to move sideways [mm⁴]. Below `secondMomentMm4`
	 * only where the level axis is no principal axis.
	 */
	readonly freeSecondMomentMm4: number;
	/** elastic modulus at the farther edge [mm³] */
	readonly modulusMm3: number;
	/** the widest flat part over its wall, or null where it is solid or round */
	readonly slenderness: number | null;
}

/** The shapes a section may have; sizes outside to outside [mm]. */
export type Shape =
	| { readonly shape: 'rectangle'; readonly widthMm: number; readonly heightMm: number }
	| {
			readonly shape: 'tube';
			readonly widthMm: number;
			readonly heightMm: number;
			readonly wallMm: number;
	  }
	| {
			readonly shape: 'angle';
			readonly widthMm: number;
			readonly heightMm: number;
			readonly wallMm: number;
	  }
	| { readonly shape: 'round'; readonly diameterMm: number }
	| { readonly shape: 'pipe'; readonly diameterMm: number; readonly wallMm: number };

/** True where the wall leaves a hollow (or, for an angle, a leg beside the heel). */
export function isPossible(shape: Shape): boolean {
	switch (shape.shape) {
		case 'rectangle':
		case 'round':
			return true;
		case 'tube':
			return 2 * shape.wallMm < Math.min(shape.widthMm, shape.heightMm);
		case 'angle':
			return shape.wallMm < Math.min(shape.widthMm, shape.heightMm);
		case 'pipe':
			return 2 * shape.wallMm < shape.diameterMm;
	}
}

/**
 * Area, second moment and elastic modulus of a shape with sharp corners: b h³/12 and its sums and differences.
 * Real extrusions have rounded corners; within 3 % for walls up to a tenth of the width.
 *
 * @throws where the wall leaves no such shape; ask `isPossible` first
 */
export function sectionOf(shape: Shape): Section {
	if (!isPossible(shape)) throw new Error(`no such section: ${shapeName(shape, 'mm')}`);
	switch (shape.shape) {
		case 'rectangle': {
			const { widthMm: b, heightMm: h } = shape;
			return symmetric(b * h, (b * h ** 3) / 12, h, null);
		}
		case 'tube': {
			const { widthMm: b, heightMm: h, wallMm: t } = shape;
			const insideB = b - 2 * t;
			const insideH = h - 2 * t;
			const second = (b * h ** 3 - insideB * insideH ** 3) / 12;
			return symmetric(b * h - insideB * insideH, second, h, Math.max(insideB, insideH) / t);
		}
		case 'round': {
			const d = shape.diameterMm;
			return symmetric((Math.PI * d ** 2) / 4, (Math.PI * d ** 4) / 64, d, null);
		}
		case 'pipe': {
			const outer = shape.diameterMm;
			const inner = outer - 2 * shape.wallMm;
			const area = (Math.PI * (outer ** 2 - inner ** 2)) / 4;
			return symmetric(area, (Math.PI * (outer ** 4 - inner ** 4)) / 64, outer, null);
		}
		case 'angle':
			return angle(shape.widthMm, shape.heightMm, shape.wallMm);
	}
}

function symmetric(
	areaMm2: number,
	secondMomentMm4: number,
	heightMm: number,
	slenderness: number | null,
): Section {
	return {
		areaMm2,
		secondMomentMm4,
		freeSecondMomentMm4: secondMomentMm4,
		modulusMm3: secondMomentMm4 / (heightMm / 2),
		slenderness,
	};
}

/** One leg of width b lies level, one of height h stands; both of wall t, heel at the corner. */
function angle(b: number, h: number, t: number): Section {
	const parts = [
		{ width: b, height: t, x: b / 2, y: t / 2 },
		{ width: t, height: h - t, x: t / 2, y: t + (h - t) / 2 },
	];
	const area = parts.reduce((sum, one) => sum + one.width * one.height, 0);
	const x = parts.reduce((sum, one) => sum + one.width * one.height * one.x, 0) / area;
	const y = parts.reduce((sum, one) => sum + one.width * one.height * one.y, 0) / area;
	let aboutX = 0;
	let aboutY = 0;
	let product = 0;
	for (const one of parts) {
		const partArea = one.width * one.height;
		aboutX += (one.width * one.height ** 3) / 12 + partArea * (one.y - y) ** 2;
		aboutY += (one.height * one.width ** 3) / 12 + partArea * (one.x - x) ** 2;
		product += partArea * (one.x - x) * (one.y - y);
	}
	// Unsymmetric bending under a plumb load: curvature in the plane of the load is M Iy / (Ix Iy - Ixy²).
	const free = aboutX - product ** 2 / aboutY;
	return {
		areaMm2: area,
		secondMomentMm4: aboutX,
		freeSecondMomentMm4: free,
		modulusMm3: unsymmetricModulus({ b, h, t, x, y, aboutX, aboutY, product }),
		slenderness: (Math.max(b, h) - t) / t,
	};
}

interface AngleProperties {
	readonly b: number;
	readonly h: number;
	readonly t: number;
	readonly x: number;
	readonly y: number;
	readonly aboutX: number;
	readonly aboutY: number;
	readonly product: number;
}

/** M / σ at the most stressed corner: σ = M (Iy y - Ixy x) / (Ix Iy - Ixy²) for a moment about the level axis. */
function unsymmetricModulus(p: AngleProperties): number {
	const determinant = p.aboutX * p.aboutY - p.product ** 2;
	const corners: readonly (readonly [number, number])[] = [
		[0, 0],
		[p.b, 0],
		[p.b, p.t],
		[p.t, p.h],
		[0, p.h],
	];
	const stresses = corners.map(([x, y]) =>
		Math.abs((p.aboutY * (y - p.y) - p.product * (x - p.x)) / determinant),
	);
	return 1 / Math.max(...stresses);
}

/** A shape as the trade says it: "40 × 40 × 2 mm tube", "1.5 × 1.5 × 0.125 in tube". */
export function shapeName(shape: Shape, unit: 'mm' | 'in', say: Say = inEnglish): string {
	const size = (...figures: readonly number[]) => {
		const shown = figures.map((one) => (unit === 'in' ? (one / 25.4).toFixed(3) : one.toFixed(2)));
		return `${shown.map((one) => String(Number(one))).join(' × ')} ${unit}`;
	};
	switch (shape.shape) {
		case 'rectangle':
			return say`${size(shape.widthMm, shape.heightMm)} solid`;
		case 'tube':
			return say`${size(shape.widthMm, shape.heightMm, shape.wallMm)} tube`;
		case 'angle':
			return say`${size(shape.widthMm, shape.heightMm, shape.wallMm)} angle`;
		case 'round':
			return say`${size(shape.diameterMm)} round bar`;
		case 'pipe':
			return say`${size(shape.diameterMm, shape.wallMm)} round tube`;
	}
}
