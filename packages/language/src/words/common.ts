function set(words: string): ReadonlySet<string> {
	return new Set(words.split(/\s+/).filter((word) => word !== ''));
}

/** Words that carry nothing a sizing could depend on. What is neither here nor in a topic's vocabulary is said back. */
export const fillers: ReadonlySet<string> = set(`
	i im i'm we we're you he she it its it's they me my mine our us your the a an this that these those there here
	is are was be been being am do does did done doing don don't doesn't have has had having can could will would should shall may might must
	what what's whats which who how when where why much many and or but so if then than as at by for from in into of off on onto out over to up with without about around under
	need needs needed want wants wanted like give gimme tell show get gets got getting make makes take takes use uses using used run runs running put putting go goes going come
	please pls plz thanks thank thx hi hey hello ok okay yes yeah yep just only also too very really quite pretty bit some any all both each every other another
	right wrong safe good best better enough big bigger small smaller long longer short thick thin exact correct proper new old
	through until till during while day days hour hours minute minutes
	size sizing sized calc calculate calculation work works question answer check help know thing things guys folks boss mate quick quickly asap now today tomorrow tonight overnight night nights noche noches nacht nächte later again still
	w wat wot wut ppl bout abt cuz coz lol fyi rn
	van rig truck camper build shop customer customer's client said says say thinking planning plan let let's lets wondering supposed gonna wanna trying install installing installed hook hooking hooked connect connecting connected between
	n frm hrs hr std stdn pa d q em nah wat wit ya yall gonna
	fürn nen ne ner nem aufm vom mim ob isn ins noch da
	start starts starting handle handles feed feeds feeding
	add adding added amp amps pull pulls pulling draw draws drawing
	x via per total totally approx approximately roughly maybe probably exactly almost nearly least most max maximum min minimum up down
	y el la los las un una unos unas de del al en con para por que qué cual cuál cuanto cuánto cuanta cuántos cuántas cuanta necesito necesita quiero es son está tengo tiene hay mi mis su se lo le me como cómo o si sí hasta desde entre favor gracias hola puedo puede aguanta
	der die das den dem des ein eine einen einem einer und oder aber ich wir du er sie es ist sind war habe hat haben brauche brauchen braucht will möchte welche welcher welches wie was wo wann warum viel viele mit ohne für von vom zu zum zur im in an am auf aus bei bis nach über unter mein meine unser bitte danke hallo kann muss soll reicht lange
`);
