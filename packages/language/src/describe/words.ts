function set(words: string): ReadonlySet<string> {
	return new Set(words.split(/\s+/).filter((word) => word !== ''));
}

/** Words that begin a new clause, as a comma does. */
export const joins = set(
	'and with plus including also then while y e con más además incluye und mit sowie dazu inkl inklusive incl',
);
/** Joins that say what belongs to the thing before: "inverter with a 100 A charger". */
export const belongings = set('with including con incluye mit inkl inklusive incl');
export const alternatives = set('or nor o u ni oder noch');

export const negations = set(
	"no not none without never neither isn't aren't wasn't lacks lacking missing sin ningún ninguna ninguno tampoco falta nada kein keine keinen keinem keiner nicht ohne fehlt fehlen weder nein nope forgot forgotten ni",
);
/** What a negation at the end of a clause may be followed by: "CO alarm not installed yet". */
export const states = set(
	'yet installed fitted there present included bought ordered done decided so far aboard in instalado instalada puesto montado montada todavía aún hay tiene lleva todavia noch eingebaut vorhanden verbaut montiert drin an bord',
);
export const definite = set('the that this its our el la los las su der die das den dem des unser unsere');
export const indefinite = set(
	'a an another second extra one un una unos unas otro otra segundo segunda ein eine einen einem einer zweite zweiter zweites zweiten noch',
);
export const another = set(
	'another second third extra additional otro otra segundo segunda zweite zweiter zweites zweiten weitere weiterer weiteres zusätzliche zusätzlicher',
);
/** A thing named after one of these is only pointed at: "runs off the inverter". */
export const pointing = set(
	'to in inside within en from off into onto via through by behind near under above beside next over on at of for between alongside around across al del desde hasta para por junto bajo sobre tras zu zum zur vom von über unter neben hinter am an für aus beim im auf',
);

/** Things that have figures of their own and are no equipment here. */
export const outlets = set(
	'outlet outlets socket sockets receptacle receptacles plug plugs enchufe enchufes steckdose steckdosen',
);

/** A clause that says one of these leaves open whether the thing is there. */
export const unsure =
	/\b(?:not sure|unsure|unknown|don't know|dont know|do not know|no idea|tbd|undecided|maybe|might|perhaps|no sé|no sabemos|no sabe|quizás|quizá|tal vez|nicht sicher|weiß nicht|wissen nicht|unklar|vielleicht|eventuell)(?![\p{L}])/u;
/** A clause that says one of these speaks of what is not there now. */
export const later =
	/\b(?:later|someday|some day|not yet|eventually|in the future|next year|down the road|to be added|más adelante|en el futuro|algún día|später|irgendwann|in zukunft|nachgerüstet|kommt noch)(?![\p{L}])/u;

/** Words that name a thing only beside a figure of it: "20 gal gray", but not "gray cabinets". */
export const weak = set(
	'gray grey fresh lift rack module modul controller solo smoke wool foam cork cocina placa limpia limpias grises frisch grau dach rear front shower bank bed regler regulador inlet shore display screen monitor kork espuma seats sleep winter winters summer summers drive drives driving invierno verano sommer hund perro wasser agua water waste alt camp monóxido spirit bottle bottles cylinder cylinders flasche flaschen',
);

/** What descriptions are full of and no calculation could depend on. */
export const narrative = set(`
	building build built builds conversion converting convert converted plan plans planned planning want wants wanted like likes love loves going travel travels travelling traveling trip trips live living lives stay stays staying
	customer customers client clients owner owners partner wife husband family friend friends they their them he she his her who we us our ours you your
	basic simple small large big huge little nice good great standard custom new old used cheap light heavy main whole full half extra single double both same different other others another more less most
	electrical electrics electric electricity power powered system systems setup side area areas section space kitchen bathroom bedroom garage floor wall walls ceiling interior exterior front rear left right driver passenger back top bottom under over above below behind
	water plumbing gas climate heating cooling hot cold warm fresh dirty clean used run runs running feed feeds feeding fed goes comes hooked mounted mounts sits sitting placed located installed install fitted fits fit wired wire connected connect attached bolted screwed
	type style kind brand model unit units piece pieces set sets kit kits total each every per about around approx roughly nearly almost some few several lot lots enough only just even still already now later first second last next once twice
	day days night nights week weeks weekend weekends month months year years time times hour hours
	think thinks thought hope hopes hoping need needs needed should would could might may maybe probably possibly
	cook cooks cooking sleep sleeps sleeping work works working drive drives driving park parks parked parking charge charges charging store storage use uses using
	rated rating made makes make come takes take keep keeps kept put puts get gets got gives give has have had there here then so too also as well etc via per x de
	hand hands look looks looked heard said asked ask wall walls hard soft part parts done find found head start started end ended
	sure electrician electricians elektriker electricista
	hi hello hey thanks thank please here's heres list listing notes note summary spec specs details description following follows
	somos vamos queremos quiere quieren vivir viajar viaje viajes montar montado montada montamos instalar instalado instalada instalados lleva llevamos llevan hemos tenemos puesto va van tipo marca equipo sistema instalación eléctrica eléctrico todo toda todos todas cada parte lado encima debajo dentro fuera atrás delante también además solo sólo cuando donde muy bien grande pequeño pequeña nuevo nueva viejo otro otra litros unas unos entre sobre hasta desde mucho poco más menos como así pero porque
	wollen möchten reisen reise leben wohnen bauen gebaut ausbau ausgebaut eingebaut einbauen montiert verbaut geplant kommt kommen gibt haben hat wird werden sind sein soll sollen noch auch nur schon dann dazu sowie außerdem insgesamt jeweils etwa circa ca rund große kleine neue alte unsere unser kunde kunden seite hinten vorne vorn links rechts oben unten innen strom elektrik anlage system typ marke stück wir uns euch ihr sie er es alles alle
`);

/** A clause with one of these speaks of the two things before it. */
export const both = set('both beides beide ambos ambas all alle todos todas');
/** "smoke yes": there it is, though the word alone says little. */
export const affirmations = set('yes ok sí si ja vorhanden fitted installed');

/** Words that are no slips of equipment words. */
export const everyday: ReadonlySet<string> = new Set([
	...narrative,
	...joins,
	...alternatives,
	...negations,
	...states,
	...definite,
	...indefinite,
	...another,
	...pointing,
	...both,
	...affirmations,
]);
