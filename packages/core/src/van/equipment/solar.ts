import { choice, count, flag, quantity, text } from '../../topic/field.js';
import { circuitFields, howMany, placingFields } from './common.js';
import { declareEquipment, ofOne, words } from './declare.js';

export const solar = declareEquipment({
	kind: 'solar',
	label: 'solar panels',
	system: 'energy',
	words: words(
		'solar|solar panel|solar panels|solar array|panels|panel|array|pv|pv panels|photovoltaic|rooftop solar|roof solar|portable panel|folding panel|placa solar|placas solares|placa|panel solar|paneles solares|placas|paneles|módulo solar|módulos solares|solarmodul|solarmodule|solarpanel|solarpanels|solaranlage|solarzellen|photovoltaik|module|modul',
	),
	fields: {
		count: howMany,
		panelW: quantity({
			label: 'power of one panel',
			kind: 'power',
			min: 5,
			max: 5000,
			aliases: words('each|apiece|cada una|cada uno|je'),
			required: 'How large are the solar panels (W, and how many)?',
		}),
		totalW: quantity({
			label: 'power of the whole array',
			kind: 'power',
			min: 5,
			max: 20_000,
			aliases: words('total|in total|altogether|insgesamt|gesamt|zusammen|en total'),
		}),
		series: count({
			label: 'panels in series',
			min: 1,
			max: 60,
			aliases: words('in series|series|in reihe|en serie|per string|s'),
		}),
		strings: count({
			label: 'strings in parallel',
			min: 1,
			max: 30,
			aliases: words('strings|strings in parallel|parallel strings|p|stränge|cadenas'),
		}),
		wiring: choice({
			label: 'how they are joined',
			options: {
				series: words(
					'all in series|in series|wired in series|series|series string|one string|in reihe|reihenschaltung|en serie',
				),
				parallel: words(
					'all in parallel|in parallel|wired in parallel|parallel|paralel|in paralel|parallelgeschaltet|en paralelo|paralelo',
				),
			},
		}),
		vocV: quantity({
			label: 'open-circuit voltage of a panel',
			kind: 'voltage',
			min: 0.5,
			max: 150,
			aliases: words('voc|open circuit|open-circuit|leerlaufspannung|leerlauf|circuito abierto'),
			required: 'What open-circuit voltage (Voc) does the label of a panel show?',
		}),
		iscA: quantity({
			label: 'short-circuit current of a panel',
			kind: 'current',
			min: 0.05,
			max: 50,
			aliases: words('isc|short circuit|kurzschlussstrom|cortocircuito'),
		}),
		vocPerK: quantity({
			label: 'temperature coefficient of the open-circuit voltage',
			kind: 'voltagePerDegree',
			min: -0.01,
			max: 0.01,
		}),
		glued: flag({
			label: 'glued flat to the roof',
			yes: words(
				'glued|glued down|flexible|flexibles|flexible panels|stuck down|geklebt|pegado|pegados|pegadas',
			),
			no: words('on rails|on brackets|on a rack|aufgeständert'),
		}),
		portable: flag({
			label: 'portable',
			yes: words('portable|folding|suitcase|portable panel|folding panel|portátil|plegable|tragbar|faltbar'),
		}),
		tiltDeg: quantity({
			label: 'tilt',
			kind: 'angle',
			min: 0,
			max: 90,
			aliases: words('tilt|tilted|geneigt|inclinación'),
		}),
		...circuitFields,
		...placingFields,
	},
	settle: ({ totalW, panelW, strings, ...rest }) => {
		const made = rest.series === undefined || strings === undefined ? undefined : rest.series * strings;
		const many = rest.count ?? made;
		const all = many === undefined ? rest : { ...rest, count: many };
		const each = ofOne(panelW, totalW, many ?? 1);
		return each === undefined ? all : { ...all, panelW: each };
	},
	// 11 kg for a framed panel of 200 W with its feet; a flexible one a third.
	usualKg: ({ count: many = 1, panelW, glued }) =>
		panelW === undefined ? null : many * panelW * (glued === true ? 0.02 : 0.06),
	usualZone: 'middle',
});

export const solarController = declareEquipment({
	kind: 'solar-controller',
	label: 'solar charge controller',
	system: 'energy',
	words: words(
		'solar controller|charge controller|solar charge controller|solar charger|mppt|mppt controller|mppt charge controller|pwm|pwm controller|controller|regulador|regulador solar|regulador mppt|controlador de carga|solarregler|laderegler|solarladeregler|mppt-regler|mppt regler|mppt-laderegler|pwm-regler|regler',
	),
	fields: {
		count: howMany,
		rating: text({
			label: 'marking, volts and amps',
			// "100/30": so many volts at its input, so many amps at its output.
			pattern:
				'(?<![\\d/.])(?:60|75|80|95|100|120|140|145|150|160|200|250|300|450|600)\\s?v?\\s?[/|]\\s?\\d{2,3}\\s?a?(?![\\d/])',
		}),
		controllerA: quantity({
			label: 'rated output current',
			kind: 'current',
			min: 1,
			max: 300,
			aliases: words('output|rated|charging'),
			required: 'What output current is the solar controller rated for?',
		}),
		controllerV: quantity({
			label: 'largest input voltage',
			kind: 'voltage',
			min: 10,
			max: 1000,
			aliases: words(
				'max voltage|maximum voltage|max input|input|max pv|pv input|voc max|max voc|entrada|tensión máxima|eingang|max eingangsspannung',
			),
			required: 'What is the largest panel voltage the solar controller bears?',
		}),
		type: choice({
			label: 'kind of controller',
			options: {
				mppt: words(
					'MPPT|mppt controller|mppt charge controller|regulador mppt|mppt-regler|mppt regler|mppt-laderegler',
				),
				pwm: words('PWM|pwm controller|pwm-regler|regulador pwm'),
			},
		}),
		...circuitFields,
	},
	settle: ({ rating, ...rest }) => {
		const [volts, amps] = (rating ?? '').match(/\d+/g)?.map(Number) ?? [];
		if (volts === undefined || amps === undefined) return rest;
		return { controllerV: volts, controllerA: amps, ...rest };
	},
	usualKg: () => 1.5,
	usualZone: 'middle',
});
