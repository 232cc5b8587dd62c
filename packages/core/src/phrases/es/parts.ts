import type { Phrasebook } from '../phrasebook.js';

export const parts: Phrasebook = {
	LiFePO4: 'LiFePO4',
	'AGM lead-acid': 'plomo-ácido AGM',
	'gel lead-acid': 'plomo-ácido de gel',
	'flooded lead-acid': 'plomo-ácido abierta',
	'lithium-ion (NMC or NCA)': 'iones de litio (NMC o NCA)',
	'blade fuse': 'fusible de cuchilla',
	'sub-miniature blade fuse': 'fusible de cuchilla subminiatura',
	'cartridge fuse with female contacts': 'fusible de cartucho con contactos hembra',
	'strip fuse': 'fusible de lámina atornillado',
	'single-bolt fuse': 'fusible de un solo perno',
	'class T fuse': 'fusible de clase T',
	'class J fuse': 'fusible de clase J',
	'36 cells, "12 V" class': '36 celdas, clase "12 V"',
	'60 cells (or 120 halves)': '60 celdas (o 120 medias)',
	'72 cells (or 144 halves)': '72 celdas (o 144 medias)',
};
