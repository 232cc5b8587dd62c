import type { Phrasebook } from '../phrasebook.js';

export const tire: Phrasebook = {
	'axle load': 'Achslast',
	'load index': 'Lastindex',
	'load index in twins': 'Lastindex bei Zwillingsreifen',
	'marking on the sidewall': 'Angabe auf der Flanke',
	'two single tires': 'zwei Einzelreifen',
	'twin tires': 'Zwillingsreifen',
	'tires on the axle': 'Reifen an der Achse',
	'one tire a side; say twins where there are two': 'ein Reifen je Seite; Zwillinge angeben, wo es zwei sind',
	'speed symbol': 'Geschwindigkeitssymbol',
	'top speed': 'Höchstgeschwindigkeit',
	'LT or C tire': 'LT- oder C-Reifen',
	'passenger car tire': 'Pkw-Reifen',
	'kind of tire': 'Art des Reifens',
	'LT or C marking, as vans carry': 'Kennzeichnung LT oder C, wie Transporter sie haben',
	'cold pressure': 'Kaltdruck',
	'pressure at the full load': 'Druck bei voller Last',
	'pressure on the door label': 'Druck laut Türschild',
	'temperature now': 'Temperatur jetzt',
	'temperature when it was set': 'Temperatur beim Einstellen',
	'a shop at 20 °C': 'eine Werkstatt mit 20 °C',
	'altitude now': 'Höhe jetzt',
	'altitude where it was set': 'Höhe beim Einstellen',
	'sea level': 'Meereshöhe',
	'What load index is on the sidewall (as 121/120R), or what is the pressure?':
		'Welcher Lastindex steht auf der Flanke (wie 121/120R), oder wie hoch ist der Druck?',
	'I read "{0}" as the marking on the sidewall; that is no load index.':
		'Ich lese "{0}" als Angabe auf der Flanke; das ist kein Lastindex.',
	'Give it as printed, such as 121/120R.': 'Wie aufgedruckt angeben, etwa 121/120R.',
	'pressure now': 'Druck jetzt',
	'What load index is on the sidewall and what does the axle carry (or how cold, how high is it now)?':
		'Welcher Lastindex steht auf der Flanke und was trägt die Achse (oder wie kalt und wie hoch ist es jetzt)?',
	'From {0} nothing would be left.': 'Von {0} bliebe nichts übrig.',
	'Check the pressure and both temperatures.': 'Den Druck und beide Temperaturen prüfen.',
	change: 'Änderung',
	'set there, to have as much now': 'dort einzustellen, um jetzt ebenso viel zu haben',
	'{0} becomes {1}: add air in the cold': 'aus {0} werden {1}: in der Kälte Luft nachfüllen',
	'{0} becomes {1}': 'aus {0} werden {1}',
	'The air in the tire keeps its amount: its absolute pressure goes with the absolute temperature, and the gauge reads against the air around.':
		'Die Luftmenge im Reifen bleibt: ihr absoluter Druck folgt der absoluten Temperatur, und das Manometer misst gegen die Luft ringsum.',
	'{0} is below the {1} of the door label: add {2}.':
		'{0} liegt unter den {1} des Türschilds: {2} nachfüllen.',
	'What stands on the axle, loaded?': 'Was lastet auf der Achse, beladen?',
	'What is the second load index on the sidewall, for twin tires?':
		'Wie lautet der zweite Lastindex auf der Flanke, für Zwillingsreifen?',
	'I read {0} for single tires and {1} for twins; in twins a tire carries less.':
		'Ich lese {0} für Einzelreifen und {1} für Zwillinge; als Zwilling trägt ein Reifen weniger.',
	'Give the first number on the sidewall for single tires, the second for twins.':
		'Die erste Zahl der Flanke für Einzelreifen angeben, die zweite für Zwillinge.',
	'I read {0} as the load index.': 'Ich lese {0} als Lastindex.',
	'Load indices from {0} to {1} are in my table.': 'Meine Tabelle enthält Lastindizes von {0} bis {1}.',
	'the axle’s tires carry': 'die Reifen der Achse tragen',
	reserve: 'Reserve',
	'Passenger car tires on a van count for their rating divided by 1.10.':
		'Pkw-Reifen an einem Transporter zählen mit ihrem Wert geteilt durch 1.10.',
	'the tires carry': 'die Reifen tragen',
	'reserve over the load': 'Reserve über der Last',
	'smallest load index that carries it': 'kleinster Lastindex, der sie trägt',
	'Twins share only when both have the same size and pressure; with one flat the other carries all, more than it may.':
		'Zwillinge teilen sich die Last nur bei gleicher Größe und gleichem Druck; ist einer platt, trägt der andere alles, mehr als er darf.',
	'The tires carry {0}, the axle has {1}: {2} too much. Take that off the axle; no load index in my table carries it.':
		'Die Reifen tragen {0}, auf der Achse sind {1}: {2} zu viel. Das von der Achse nehmen; kein Lastindex meiner Tabelle trägt es.',
	"The tires carry {0}, the axle has {1}: {2} too much. Take that off the axle or fit tires of load index {3} or more, if the axle's rating allows the load.":
		'Die Reifen tragen {0}, auf der Achse sind {1}: {2} zu viel. Das von der Achse nehmen oder Reifen mit Lastindex {3} oder mehr montieren, wenn die zulässige Achslast es erlaubt.',
	'Too weak: the axle is {0} over what its tires carry':
		'Zu schwach: die Achse liegt {0} über dem, was ihre Reifen tragen',
	'{0} tires of load index {1} carry {2}; {3} stand on the axle.':
		'{0} Reifen mit Lastindex {1} tragen {2}; auf der Achse lasten {3}.',
	'Only {0} in hand. Sides are never loaded alike: weigh each wheel, or take the next load index.':
		'Nur {0} Reserve. Die Seiten sind nie gleich beladen: jedes Rad wiegen oder den nächsten Lastindex nehmen.',
	'Enough: the tires carry {0}, {1} more than the axle has':
		'Reicht: die Reifen tragen {0}, {1} mehr, als auf der Achse lastet',
	'{0} tires of load index {1} at {2} kg each; {3} stand on the axle.':
		'{0} Reifen mit Lastindex {1} zu je {2} kg; auf der Achse lasten {3}.',
	'load index {0}': 'Lastindex {0}',
	'carries {0}': 'trägt {0}',
	'highest speed of the symbol': 'Höchstgeschwindigkeit des Symbols',
	'Symbol {0} ends at {1} km/h; the load index does not hold above it. Drive slower or fit a faster symbol.':
		'Das Symbol {0} endet bei {1} km/h; darüber gilt der Lastindex nicht. Langsamer fahren oder ein höheres Symbol montieren.',
	'{0} is above the {1} printed on the sidewall.': '{0} liegt über den {1}, die auf der Flanke stehen.',
	'pressure for this load': 'Druck für diese Last',
	'for comparison, with exponent 0.8': 'zum Vergleich, mit Exponent 0.8',
	'cold pressure at least': 'Kaltdruck mindestens',
	'{0} is too little for this load: set at least {1} cold.':
		'{0} ist für diese Last zu wenig: kalt mindestens {1} einstellen.',
	'load on one tire': 'Last auf einem Reifen',
	'size on the sidewall': 'Größe auf der Flanke',
	'load on the axle': 'Last auf der Achse',
};
