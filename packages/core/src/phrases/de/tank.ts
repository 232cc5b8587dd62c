import type { Phrasebook } from '../phrasebook.js';

export const tank: Phrasebook = {
	'fresh tank': 'Frischwassertank',
	'How big is the fresh tank, or how many days should the water last?':
		'Wie groß ist der Frischwassertank, oder wie viele Tage soll das Wasser reichen?',
	'{0} fresh and {1} gray': '{0} Frischwasser und {1} Abwasser',
	'The gray tank ({0}) is full before: it must hold {1}.':
		'Der Abwassertank ({0}) ist vorher voll: er muss {1} fassen.',
	'The fresh water alone weighs {0}.': 'Allein das Frischwasser wiegt {0}.',
	'{0} for {1}': '{0} für {1}',
	'gray tank': 'Abwassertank',
	'How many people live aboard?': 'Wie viele Personen leben an Bord?',
	children: 'Kinder',
	'none named besides the people': 'keine außer den Personen genannt',
	'days wanted': 'gewünschte Tage',
	'showers aboard': 'Duschen an Bord',
	'the safe side: people shower aboard': 'die sichere Seite: es wird an Bord geduscht',
	'running time of a shower': 'Laufzeit einer Dusche',
	'water running 3 min, turned off to soap (practice)':
		'Wasser läuft 3 min, beim Einseifen abgestellt (Praxis)',
	'showers a person a day': 'Duschen je Person und Tag',
	'one a day each; many vans shower less (practice)':
		'eine je Person und Tag; in vielen Fahrzeugen weniger (Praxis)',
	'flow of the shower head': 'Durchfluss des Duschkopfs',
	'dishes, all together a day': 'Geschirr, alles zusammen am Tag',
	'3 L a person a day in a basin (practice)': '3 L je Person und Tag in einer Schüssel (Praxis)',
	'hands and teeth, a person a day': 'Hände und Zähne, je Person und Tag',
	'hands, face and teeth (practice)': 'Hände, Gesicht und Zähne (Praxis)',
	'drinking and cooking, a person a day': 'Trinken und Kochen, je Person und Tag',
	'drinking and cooking (practice); more in the heat': 'Trinken und Kochen (Praxis); bei Hitze mehr',
	'drinking water in bottles': 'Trinkwasser in Flaschen',
	'drinking water comes from the tank': 'Trinkwasser kommt aus dem Tank',
	'flushing, a person a day': 'Spülen, je Person und Tag',
	'nothing said of a toilet that flushes from this tank':
		'von einer Toilette, die aus diesem Tank spült, wurde nichts gesagt',
	'usable share of the fresh tank': 'nutzbarer Anteil des Frischwassertanks',
	'the pick-up leaves about 5 % (practice)': 'der Ansaugstutzen lässt etwa 5 % zurück (Praxis)',
	'By these habits hardly any water is used at all.': 'Bei diesen Gewohnheiten wird kaum Wasser verbraucht.',
	'Give at least one use of water: drinking, dishes, washing or showers.':
		'Mindestens eine Nutzung angeben: Trinken, Geschirr, Waschen oder Duschen.',
	'{0}: the gray tank is full first; fresh lasts {1}':
		'{0}: der Abwassertank ist zuerst voll; Frischwasser reicht {1}',
	'{0} until the fresh tank is empty': '{0}, bis der Frischwassertank leer ist',
	'{0}: the fresh tank is empty first; gray lasts {1}':
		'{0}: der Frischwassertank ist zuerst leer; der Abwassertank reicht {1}',
	'The crew uses {0} a day; {1} of it runs to the gray tank.':
		'An Bord werden {0} am Tag verbraucht; {1} davon laufen in den Abwassertank.',
	'showers a day': 'Duschen am Tag',
	'water to the gray tank a day': 'Wasser in den Abwassertank am Tag',
	'fresh water a day': 'Frischwasser am Tag',
	'days of fresh water': 'Tage mit Frischwasser',
	'days until the gray tank is full': 'Tage, bis der Abwassertank voll ist',
	'days until the first tank stops you': 'Tage, bis der erste Tank die Grenze setzt',
	'days until fresh is empty': 'Tage, bis das Frischwasser leer ist',
	'days until gray is full': 'Tage, bis das Abwasser voll ist',
	'gray water a day': 'Abwasser am Tag',
	'gray tank that takes all of the fresh': 'Abwassertank, der alles Frischwasser fasst',
	'weight of the water in a full fresh tank': 'Gewicht des Wassers im vollen Frischwassertank',
	'weight of the water in a full gray tank': 'Gewicht des Wassers im vollen Abwassertank',
	'fresh tank for the days wanted': 'Frischwassertank für die gewünschten Tage',
	'gray tank for the days wanted': 'Abwassertank für die gewünschten Tage',
	'1 person': '1 Person',
	'{0} people': '{0} Personen',
	'up to {0} a shower': 'bis {0} je Dusche',
	'down to {0} a shower, below which the fresh tank is the first':
		'hinab bis {0} je Dusche, darunter ist der Frischwassertank der erste',
	'up to {0} a shower, above which the gray tank is the first':
		'bis {0} je Dusche, darüber ist der Abwassertank der erste',
	'No gray tank was named; to take all of this fresh water it must hold {0}.':
		'Kein Abwassertank genannt; um alles Frischwasser zu fassen, muss er {0} haben.',
	'The gray tank ({0}) is full while {1} of fresh water is left. A gray tank of {2} takes it all.':
		'Der Abwassertank ({0}) ist voll, während noch {1} Frischwasser da sind. Einer mit {2} fasst alles.',
	'For {0} it takes {1} fresh and {2} gray, or shorter showers.':
		'{0} Tage sind gewünscht: das braucht {1} Frischwasser und {2} Abwasser, oder kürzere Duschen.',
};
