import { plain } from './message.js';

/** A request that is not answered with a size, why in a sentence, and the safe way. */
export interface Decline {
	readonly code: 'defeats-protection' | 'second-neutral-bond' | 'seats-and-belts' | 'fuel-gas';
	readonly why: string;
	readonly instead: string;
}

const protection =
	'(?:main )?(?:fuse|fuses|breaker|breakers|circuit breaker|gfci|gfi|rcd|rcbo|bms|battery protection|cell protection|low[- ]?voltage (?:cut ?-?off|disconnect)|low[- ]?temp(?:erature)? (?:cut ?-?off|protection)|thermal (?:cut ?-?off|fuse)|pressure relief(?: valve)?|relief valve|co alarm|co detector|carbon monoxide (?:alarm|detector)|gas alarm|interlock|sicherung|fi|fi-schalter|schutzschalter|fusible|diferencial|disyuntor|magnetotermico)';
const small = '(?:(?:the|my|our|a|an|that|this|its|el|la|los|un|una|die|den|der|das|eine?n?) ){0,2}';

const defeats: readonly RegExp[] = [
	new RegExp(
		`\\b(?:bypass(?:ing)?|by-pass|jumper(?:ing)?|jump out|defeat(?:ing)?|disable|disabling|get around|getting around|work around|override|overriding|short out|bridge out|bridge|fool|cheat|trick|tape over|wedge|hold in|puentear|anular|saltar(?:me)?|uberbrucken|brucken|umgehen|aushebeln|deaktivieren)\\b[^.?!;]{0,12}?\\b${small}${protection}\\b`,
		'u',
	),
	new RegExp(
		`\\b${protection}\\b[^.?!;]{0,20}\\b(?:bypassed|jumpered|uberbrucken|umgehen|brucken|puentear|deaktivieren)\\b`,
		'u',
	),
	new RegExp(
		`\\b(?:run(?:ning)?|wire|leave|go|do|connect(?:ing)?|hook up|get away)\\b[^.?!;]{0,30}\\b(?:without|with no)\\b ${small}(?:any )?${protection}\\b`,
		'u',
	),
	new RegExp(
		`\\b(?:skip|leave out|omit|ditch|delete|remove permanently|permanently remove)\\b ${small}${protection}\\b`,
		'u',
	),
	/\b(?:bigger|larger|higher|stronger|heavier)\b[^.?!;]{0,20}\b(?:fuse|breaker)\b[^.?!]{0,60}\b(?:blow|blows|blowing|trip|trips|tripping|popping|pops)\b/u,
	/\b(?:fuse|breaker)\b[^.?!]{0,40}\b(?:blow|blows|blowing|trip|trips|tripping|popping|pops)\b[^?!]{0,60}\b(?:bigger|larger|higher|stronger)\b/u,
	/\b(?:foil|nail|wire|penny|coin|screw|bolt)\b[^.?!;]{0,20}\b(?:instead of|in place of|for) (?:a |the )?fuse\b/u,
];

const neutral: readonly RegExp[] = [
	/\b(?:second|two|both|another|extra|double|additional)\b[^.?!;]{0,25}\b(?:neutral|n-g|ng)\b[^.?!;]{0,20}\bbond/u,
	/\bbond\w*\b[^.?!;]{0,25}\bneutral\b[^.?!;]{0,30}\b(?:as well|too|twice|also|in the panel and|at both|both ends)/u,
];

const seats: readonly RegExp[] = [
	/\b(?:seat ?belt|safety belt|belt anchor\w*|seat anchor\w*|belt anchorage|child seat|isofix|sicherheitsgurt|gurt(?:befestigung|bock|verankerung)|cinturon(?:es)?(?: de seguridad)?)\b/u,
	/\b(?:mount|bolt|fix|anchor|fasten|install|einbau|montar)\w*\b[^.?!;]{0,25}\b(?:passenger seat|travel seat|rear seat|bench seat|jump seat|swivel seat|rock ?and ?roll bed|sitzbank|fahrersitz|asiento)\w*/u,
	/\b(?:passenger seat|travel seat|rear seat|jump seat|seat)\b[^.?!;]{0,20}\b(?:bolt|mount|anchor|fastener)\w*/u,
];

const gas: readonly RegExp[] = [
	/\b(?:propane|lpg|lp gas|butane|gas|autogas|propan|butan)\b[^.?!;]{0,25}\b(?:pipe|line|piping|plumb\w*|hose|manifold|regulator|tubing|rohr|leitung|schlauch|tuberia|manguera)\b[^.?!;]{0,40}\b(?:size|sized|sizing|diameter|what|which|how|design|run|route|split|tee|dimension\w*)\b/u,
	/\b(?:size|sizing|diameter|design|run|route|plumb|tee|split)\w*\b[^.?!;]{0,30}\b(?:propane|lpg|lp gas|butane|gas)\b (?:pipe|line|piping|hose|manifold|tubing|system)\b/u,
	/\b(?:what|which)\b[^.?!;]{0,15}\b(?:propane|lpg|lp gas|butane|gas)\b (?:pipe|line|piping|hose|manifold|tubing)\b/u,
];

/** What is declined whatever the numbers say, or null. */
export function declineOf(message: string): Decline | null {
	// Accents off: a word boundary of a regular expression knows plain letters only.
	const text = plain(message).normalize('NFD').replace(/\p{M}/gu, '').replace(/\s+/g, ' ').slice(0, 2000);
	const asks = (patterns: readonly RegExp[]) => patterns.some((pattern) => pattern.test(text));
	if (asks(defeats)) {
		return {
			code: 'defeats-protection',
			why: 'I will not help to defeat a protective device: it is there because what it protects can burn or kill.',
			instead:
				'Find out why it opens: measure the current, look for a short or a loose lug, and ask me for the right conductor and device together.',
		};
	}
	if (asks(neutral)) {
		return {
			code: 'second-neutral-bond',
			why: 'Neutral and ground are joined at one place only, at the source that feeds the van at that moment; a second bond puts current on the metal of the van.',
			instead:
				'Use an inverter or transfer switch that makes and breaks the bond by itself, and have a licensed electrician test it.',
		};
	}
	if (asks(seats)) {
		return {
			code: 'seats-and-belts',
			why: 'Seats, belts and their anchorages are safety equipment of the vehicle: they are tested as a whole and not sized from a chat.',
			instead:
				'Use a certified seat and anchorage kit for that van, fitted as its approval says, or a certified engineer.',
		};
	}
	if (asks(gas)) {
		return {
			code: 'fuel-gas',
			why: 'I do not design fuel-gas piping: a wrong joint or size leaks or starves a burner.',
			instead:
				'Have a licensed gas fitter design, fit and pressure-test it under the local code, with a gas and a carbon-monoxide alarm.',
		};
	}
	return null;
}
