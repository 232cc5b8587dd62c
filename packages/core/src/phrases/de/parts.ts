import type { Phrasebook } from '../phrasebook.js';

export const parts: Phrasebook = {
	LiFePO4: 'LiFePO4',
	'AGM lead-acid': 'Blei-Säure AGM',
	'gel lead-acid': 'Blei-Säure Gel',
	'flooded lead-acid': 'Blei-Säure nass',
	'lithium-ion (NMC or NCA)': 'Lithium-Ionen (NMC oder NCA)',
	'blade fuse': 'Flachsicherung',
	'sub-miniature blade fuse': 'Subminiatur-Flachsicherung',
	'cartridge fuse with female contacts': 'Blocksicherung mit Steckhülsen',
	'strip fuse': 'Streifensicherung',
	'single-bolt fuse': 'Einbolzensicherung',
	'class T fuse': 'Sicherung der Klasse T',
	'class J fuse': 'Sicherung der Klasse J',
	'36 cells, "12 V" class': '36 Zellen, Klasse "12 V"',
	'60 cells (or 120 halves)': '60 Zellen (oder 120 halbe)',
	'72 cells (or 144 halves)': '72 Zellen (oder 144 halbe)',
};
