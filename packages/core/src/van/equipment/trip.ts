import { choice, flag, month, place, quantity } from '../../topic/field.js';
import { declareEquipment, words } from './declare.js';

export const where = declareEquipment({
	kind: 'place',
	label: 'place',
	system: 'climate',
	single: true,
	words: words('home base|standort|lugar'),
	fields: {
		place: place({ label: 'place', required: 'Where will the van be used (the coldest place, a town)?' }),
		month: month({ label: 'month' }),
		lowC: quantity({
			label: 'lowest temperature',
			kind: 'temperature',
			min: -60,
			max: 20,
			aliases: words(
				'down to|as low as|lows of|low of|nights of|below|coldest|bis|bis zu|hasta|mínimas de|nachts',
			),
		}),
		highC: quantity({
			label: 'highest temperature',
			kind: 'temperature',
			min: 21,
			max: 60,
			aliases: words('up to|highs of|high of|as hot as|hottest|máximas de|höchsttemperatur'),
		}),
	},
});

export const trip = declareEquipment({
	kind: 'trip',
	label: 'use',
	system: 'energy',
	single: true,
	words: words(
		'off grid|off-grid|boondocking|boondock|dry camping|without hookups|autonomy|between charges|driving|drive|drives|on shore power every|plugged in every|full time|full-time|fulltime|weekends|weekend|weekender|winter|winters|winter camping|ski trips|summer|summers|all year|year round|year-round|four season|four-season|autonomía|sin conexión|sin enchufar|conducir|conduciendo|todo el año|invierno|verano|fines de semana|autark|autarkie|ohne landstrom|fahren|fahrt|ganzjährig|wintercamping|sommer|wochenenden|wintertauglich|freistehen|frei stehen',
	),
	fields: {
		offGridH: quantity({
			label: 'time off grid',
			kind: 'duration',
			min: 1,
			max: 24 * 60,
			aliases: words(
				'off grid|off-grid|boondocking|autonomy|without hookups|without shore|between charges|dry camping|autonomía|sin conexión|sin enchufar|autark|autarkie|ohne landstrom|frei stehen',
			),
		}),
		driveH: quantity({
			label: 'driving a day',
			kind: 'duration',
			min: 0,
			max: 23,
			aliases: words(
				'driving|drive|drives|of driving|a day driving|conducir|conduciendo|de conducción|fahren|fahrt|fahrzeit',
			),
		}),
		shoreH: quantity({
			label: 'hours a day on shore power',
			kind: 'duration',
			min: 0,
			max: 24,
			aliases: words('on shore|plugged in|on hookup|am landstrom|enchufado'),
		}),
		season: choice({
			label: 'season',
			options: {
				winter: words(
					'winter|winters|winter camping|ski trips|skiing|snow|four season|four-season|all year|year round|year-round|freezing|invierno|nieve|todo el año|esquiar|ganzjährig|wintercamping|wintertauglich|schnee|skifahren|im winter',
				),
				summer: words(
					'summer only|summers only|only in summer|summer|summers|verano|solo en verano|sommer|nur im sommer',
				),
			},
		}),
		fullTime: flag({
			label: 'full time',
			yes: words('full time|full-time|fulltime|live in it|dauerhaft|a tiempo completo'),
		}),
	},
});
