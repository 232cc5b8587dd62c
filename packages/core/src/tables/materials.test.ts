import { expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { insulationNames, type MaterialName, materials } from './materials.js';

const names: Readonly<Record<string, MaterialName>> = {
	'expanded polystyrene EPS': 'eps',
	'extruded polystyrene XPS': 'xps',
	'polyisocyanurate faced': 'polyiso',
	'closed-cell spray polyurethane': 'closedCellSpray',
	'open-cell spray polyurethane': 'openCellSpray',
	'mineral (stone) wool batt': 'mineralWool',
	'glass wool batt': 'glassWool',
	'sheep wool': 'sheepWool',
	'cork board': 'cork',
	'elastomeric closed-cell foam sheet': 'elastomericFoam',
	'polyethylene closed-cell foam sheet': 'polyethyleneFoam',
	plywood: 'plywood',
	softwood: 'softwood',
	hardwood: 'hardwood',
	'glass soda-lime': 'glass',
	steel: 'steel',
	'stainless steel austenitic': 'stainlessSteel',
	'aluminium alloy': 'aluminium',
	'acrylic PMMA': 'acrylic',
	polycarbonate: 'polycarbonate',
	ABS: 'abs',
	'PVC rigid': 'pvc',
	'rubber EPDM': 'rubber',
	linoleum: 'linoleum',
	'PVC flooring sheet': 'vinylFloor',
	'glass-fibre reinforced polyester': 'reinforcedPolyester',
	carpet: 'carpet',
};

const printed = readTable('heat/thermal_conductivity.csv');

test('every printed material is here, and no other', () => {
	expect(printed.map((row) => names[row.material ?? '']).sort()).toEqual(Object.keys(materials).sort());
});

// Glass wool: the lists seen give R 3.2 per inch (0.045 W/mK); the better 0.042 is from memory and must not loosen.
test.each(
	printed
		.filter((row) => row.material !== 'glass wool batt')
		.map((row) => [row.material ?? '', row] as const),
)('%s conducts as printed', (material, row) => {
	expect(materials[names[material] as MaterialName].conductivityWmK).toBe(Number(row.lambda_w_mk));
});

test('glass wool conducts no less than the verified R 3.2 an inch says', () => {
	expect(0.0254 / materials.glassWool.conductivityWmK / 0.17611).toBeLessThanOrEqual(3.21);
});

test('what is sold to insulate conducts a tenth of what wood does, or less than half', () => {
	for (const name of insulationNames) {
		expect(materials[name].conductivityWmK).toBeLessThan(materials.plywood.conductivityWmK / 2);
	}
});
