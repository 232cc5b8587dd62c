import { choice, flag, quantity } from '../../topic/field.js';
import { howMany, placingFields } from './common.js';
import { declareEquipment, words } from './declare.js';

export const propane = declareEquipment({
	kind: 'propane',
	label: 'gas bottle or tank',
	system: 'climate',
	words: words(
		'propane|propane tank|propane tanks|propane bottle|propane bottles|propane cylinder|propane cylinders|lpg|lpg tank|lpg bottle|lp|lp tank|lp gas|gas bottle|gas bottles|gas cylinder|gas cylinders|bottle|bottles|cylinder|cylinders|flasche|flaschen|gas tank for cooking|underslung lpg tank|butane|butane bottle|butane cylinder|propano|butano|bombona|bombonas|bombona de propano|bombona de butano|bombona de gas|botella de gas|botellas de gas|propan|butan|propangas|gasflasche|gasflaschen|propanflasche|propanflaschen|gastank|lpg-tank',
	),
	fields: {
		count: howMany,
		contentKg: quantity({ label: 'gas in one', kind: 'mass', min: 0.1, max: 100 }),
		volumeL: quantity({ label: 'volume of one', kind: 'volume', min: 0.3, max: 300 }),
		place: choice({
			label: 'where it is',
			options: {
				locker: words(
					'sealed locker|vented locker|gas locker|propane locker|lpg locker|sealed and vented locker|sealed vented locker|sealed box|vapor-tight locker|vapour-tight locker|vented box|sealed box vented to outside|locker vented to outside|sealed compartment|vented compartment|gaskasten|gasflaschenkasten|gaskasten mit bodenöffnung|cofre de gas|cofre estanco|armario de gas|compartimento estanco|arcón de gas',
				),
				outside: words(
					'outside|under the van|underslung|under the chassis|under the floor|on the rear door|on the tongue|chassis mounted|frame mounted|on a rear carrier|unterflur|außen|draußen|fuera|bajo el chasis|bajo el piso',
				),
				inside: words(
					'inside|inside the van|in a cabinet|in the cabinet|in a cupboard|in the kitchen cabinet|under the sink|under the counter|in the galley|under the bed|in the garage|strapped inside|loose|im schrank|im küchenschrank|im innenraum|unter dem bett|im unterschrank|dentro|en un armario|en el armario|bajo el fregadero|debajo del fregadero|debajo de la cama|bajo la cama',
				),
			},
			required:
				'Where do the gas bottles stand: in a locker sealed from the inside and vented low to the outside?',
		}),
		sealed: flag({
			label: 'in a sealed locker vented to the outside',
			yes: words(
				'sealed|vented to outside|vented to the outside|vented through the floor|drop vent|estanco|ventilado al exterior|abgedichtet|nach außen belüftet',
			),
			no: words(
				'not sealed|no sealed locker|unsealed|no locker|without a locker|no vent|no drop vent|sin armario estanco|sin ventilación|ohne gaskasten|nicht abgedichtet',
			),
		}),
		massKg: placingFields.massKg,
		zone: placingFields.zone,
	},
	settle: ({ massKg, ...rest }) => ({
		...rest,
		// "11 kg bottle" names what it holds, as the trade does.
		...(massKg !== undefined && rest.contentKg === undefined ? { contentKg: massKg } : {}),
		...(massKg !== undefined && rest.contentKg !== undefined ? { massKg } : {}),
		...(rest.sealed === true && rest.place === undefined ? { place: 'locker' as const } : {}),
	}),
	// A steel bottle weighs about as much as the gas it holds.
	usualKg: ({ count: many = 1, contentKg, volumeL }) =>
		many * 2 * (contentKg ?? (volumeL === undefined ? 5 : volumeL * 0.42)),
	usualZone: 'back',
});
