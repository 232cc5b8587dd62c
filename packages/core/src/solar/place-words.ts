/**
 * Names of towns that are first of all words of the trade: alone they are never read as a place, only next to their
 * state or country ("Van, TX").
 */
export const tradeWords: ReadonlySet<string> = new Set(
	(
		'ada as auch august bank banks basin bath battery bell bend best bra bright brush can charge coin cool cork crest ' +
		'crystal deal delta dent drain drama early energy fall fate fleet flint fountain gage gap globe go goes gore green gray ' +
		'grants grove hazard heath hel hertz home hull hurricane imperial industry iron lage lens liberal light loving manage ' +
		'manor march mason media mentor most moss mut newton noble normal of oil onda opp ord order pace page pila plano police ' +
		'post power price progress project rainbow reading rifle rota sale salt sandwich sandy savoy sells senden singen ski ' +
		'split spring springs star summit sun sunrise sunset superior surprise tela tire tome tours trail triangle tumba vale ' +
		'van vans ware wall warren water weed weiser welcome wells west white winter wise wink works worth wright young york'
	).split(' '),
);

/**
 * Names of towns that are everyday words or names of people too: without state, country or a word such as "in" or
 * "near" before them they are only perhaps a place.
 */
export const strictWords: ReadonlySet<string> = new Set(
	(
		'ajo alexandria alice allen alliance alma alpine alta alturas amos anderson andrews angola anna anthony arnold ' +
		'atlantic aurora austin avon baker barry batman beaver bear bedford bennett beverly bishop blair bradley brandon brooks bryan ' +
		'bryant buffalo burns butler cadillac cameron campbell canyon carroll casino celebration center central chandler ' +
		'charlotte chelsea chester chino clark clay clayton clinton cody commerce como concord congress craig dale davis dayton ' +
		'dexter dixon donald douglas duncan eagle eden edwards elizabeth ely emerald empire enterprise essen essex eugene evans ' +
		'fairfield florence forest francis franklin frederick friendly garfield gary gilbert golden graham greenwood griffin ' +
		'halle hamilton harbor harper harrison harvard harvest harvey hayes helena henderson highland hilton holiday holland ' +
		'holly homeland hope hopkins houston howard hudson hugo huntington huron independence jackson jefferson jordan joseph ' +
		'joshua julian justice kent king kyle lakes lancaster landing lawrence lebanon leon leland lewis liberty lincoln linda ' +
		'lindsay logan lucas lynn madison madras malta marathon marco marina marion marshall martin maxwell mercedes merlin mesa ' +
		'milan milton mission mitchell mobile monroe morgan morris murphy murray mustang nancy napoleon needles nelson newman ' +
		'nice nogales norman oasis oliver olympia oracle orange orlando pacific palestine palmer paradise paris park parker parks ' +
		'paul pearl perry peru pierre pine pioneer plains pontiac port preston princeton prospect providence pueblo queens ' +
		'quincy ray raymond reno republic reserve richardson ridge robinson rock rogers roma roman romeo ross roy ruby russell ' +
		'salem salida salmon savage scott shannon sharon shaw shelby sheridan sherman shirley sidney sisters smith spencer ' +
		'stanley stuart sullivan sydney talent taylor temple terrace thermal thompson tracy trinity troy turner tyler union ' +
		'valley vernon victor victoria vienna vincent virginia vista walker wallace walnut washington wayne webster wesley ' +
		'williams willow wilson windsor winston wyoming'
	).split(' '),
);
