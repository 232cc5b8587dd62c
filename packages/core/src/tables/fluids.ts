import { fromMemory, physics, published, type Source } from '../topic/source.js';

/** What stands in tanks; the heavy end of each, so that a full tank is never taken too light. */
export const tankFluids = {
	water: { kgPerL: 1.0, source: physics('water, at most 1 kg/L') },
	diesel: { kgPerL: 0.85, source: fromMemory('EN 590', 'diesel, up to 0.845 kg/L') },
	gasoline: { kgPerL: 0.78, source: fromMemory('EN 228', 'gasoline, up to 0.775 kg/L') },
	propane: { kgPerL: 0.51, source: published('propane, liquid at 15 °C', '0.508 kg/L') },
} as const satisfies Record<string, { readonly kgPerL: number; readonly source: Source }>;

export type TankFluid = keyof typeof tankFluids;
