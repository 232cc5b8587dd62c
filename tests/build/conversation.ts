/**
 * One van from the first description to the signed sheets, as a shop would type it; an invented shop, its van "heron",
 * Robin the installer and Kim the lead. Data alone: each app replays it in its own way.
 */

export interface Line {
	readonly by: 'Robin' | 'Kim';
	/** lines under one answer share a name; the first of them stands in the channel */
	readonly thread?: string;
	readonly text: string;
	/** each must be seen in what comes back */
	readonly sees: readonly RegExp[];
	/** none may be seen */
	readonly not?: readonly RegExp[];
}

export const conversation: readonly Line[] = [
	{ by: 'Kim', text: '/build use heron', sees: [/works on build "heron"/] },
	{
		by: 'Robin',
		text: '/build describe long wheelbase high roof van. Two 100 Ah 12 V lifepo4 batteries, each can charge at 50 A and its protection switches off at 100 A. 2000 W inverter, 30 A dc-dc charger on a 180 A alternator, 2 x 200 W panels with a 100/30 mppt. Compressor fridge 45 W, roof fan 30 W, LED lights 20 W, water pump 7 A, diesel heater 2 kW. 25 gal fresh tank and 12 gal gray tank. No CO alarm yet.',
		sees: [
			/Build "heron" as understood: 1\d pieces/,
			/fridge: .*45 W/,
			/fresh tank: volume 25 gal/,
			/Said not to be there: carbon-monoxide alarm/,
		],
	},
	{ by: 'Robin', text: '/build check', sees: [/DANGER: .*carbon.monoxide/i, /Not known: /] },
	{
		by: 'Robin',
		text: 'we fitted a CO alarm and a smoke alarm',
		sees: [/carbon-monoxide alarm/, /smoke alarm/],
	},
	{
		by: 'Robin',
		text: '/build check',
		sees: [/Since No\. \d+: \d+ cleared/, /Better, no longer so: .*carbon/i],
	},
	{ by: 'Robin', thread: 'fridge', text: 'wire for the fridge', sees: [/how long is the run/i] },
	{
		by: 'Robin',
		thread: 'fridge',
		text: '18 ft',
		sees: [/AWG copper/, /Read: .*18 ft one way/, /From build "heron": 45 W, 12 V/],
	},
	{ by: 'Robin', thread: 'fridge', text: 'why', sees: [/governs|decides/] },
	{ by: 'Robin', thread: 'fridge', text: 'show the working', sees: [/Working of No\. \d+/, /V/] },
	{ by: 'Robin', thread: 'fridge', text: 'and at 25 ft?', sees: [/25 ft one way/] },
	{ by: 'Robin', thread: 'fridge', text: '10% is fine', sees: [/limit 10 %/] },
	{ by: 'Robin', thread: 'fridge', text: 'one size up?', sees: [/would do too/] },
	{ by: 'Robin', thread: 'fridge', text: 'same for the water pump', sees: [/water pump/, /7 A/] },
	{
		by: 'Robin',
		thread: 'dcdc',
		text: 'wire and fuse for the dc-dc charger, 20 ft',
		sees: [/AWG copper/, /30 A/],
	},
	{
		by: 'Kim',
		thread: 'inverter',
		text: 'cable for the inverter 4 ft each way',
		sees: [/2000 W is too much for this bank: 236 A, it gives 200 A/, /300 A fuse, 2\/0 AWG/, /DANGER/],
	},
	{ by: 'Kim', thread: 'own', text: '40A 12V 15 ft', sees: [/4 AWG copper, 50 A fuse/] },
	{
		by: 'Robin',
		thread: 'runtime',
		text: 'how long will the bank run a 1500 W induction cooktop',
		sees: [/\d+ (?:min|h)/, /From build "heron"/],
	},
	{ by: 'Robin', text: 'the fridge is 60 W', sees: [/fridge: .*60 W/, /Out of date now: No\. \d+/] },
	{ by: 'Robin', text: 'no, two of them', sees: [/fridge: .*how many 2/] },
	{ by: 'Robin', text: 'no, one of them', sees: [/fridge: .*60 W/] },
	{ by: 'Kim', text: '/build show', sees: [/Out of date: No\. \d+.*fridge: power was 45 W, is 60 W/] },
	{
		by: 'Kim',
		text: '/build rerun',
		sees: [/Worked out again: \d+ answers? of build "heron"/, /No\. \d+ replaces No\. \d+/],
	},
	{ by: 'Kim', text: '/build show', sees: [/Build "heron": 1\d pieces$/m], not: [/Out of date/] },
	{ by: 'Robin', text: 'add a propane stove with a 20 lb bottle', sees: [/cooktop/, /gas bottle/] },
	{
		by: 'Robin',
		text: '/build check',
		sees: [/Since No. \d+: .*2 more questions open/, /Not known: Is a gas alarm fitted/],
	},
	{
		by: 'Robin',
		text: 'drop the propane stove and the gas bottle',
		sees: [/Said not to be there: .*cooktop/],
	},
	{ by: 'Robin', text: 'add an induction cooktop 1800 W', sees: [/cooktop: .*1800 W/] },
	{
		by: 'Robin',
		text: '/build check',
		sees: [/2 questions settled/, /Worse, new: A day takes/],
		not: [/gas alarm/],
	},
	{
		by: 'Robin',
		thread: 'tank',
		text: 'how long do the tanks last 2 people',
		sees: [/the gray tank is full first/, /From build "heron": 25 gal, 12 gal/],
	},
	{ by: 'Robin', thread: 'tank', text: 'and 1 person?', sees: [/1\.6 days/, /people 1/] },
	{
		by: 'Robin',
		text: 'use 24 V for the whole van',
		sees: [/bank voltage 24 V/, /Out of date now: No\. \d+/],
	},
	{ by: 'Kim', text: '/build rerun', sees: [/replaces No\. \d+/, /bank voltage was 12 V, is 24 V/] },
	{ by: 'Kim', text: '/build rerun', sees: [/No answer of build "heron" is out of date/] },
	{
		by: 'Robin',
		thread: 'fridge24',
		text: 'wire for the fridge 18 ft',
		sees: [/AWG copper/, /From build "heron": 60 W, 24 V/],
	},
	{ by: 'Robin', thread: 'fridge24', text: 'what about 30 ft', sees: [/30 ft one way/, /24 V/] },
	{
		by: 'Robin',
		thread: 'no',
		text: 'can I bridge the fuse of the fridge to get home',
		sees: [/protective device/i],
	},
	{ by: 'Robin', text: 'thanks!', sees: [/Happy to help/] },
	{ by: 'Robin', text: '/log show wire', sees: [/Answers: wire, build "heron"/, /wire/] },
	{ by: 'Kim', text: '/log review', sees: [/unsigned/i] },
	{ by: 'Robin', text: '/log sign 7', sees: [/Signing is for the leads/] },
	{ by: 'Kim', text: '/build list', sees: [/heron \(this channel\)/] },
	{ by: 'Kim', text: '/log verify', sees: [/The log is unbroken: \d+ entries/] },
];
