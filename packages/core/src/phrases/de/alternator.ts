import type { Phrasebook } from '../phrasebook.js';

export const alternator: Phrasebook = {
	'driving time': 'Fahrzeit',
	'What is the capacity of the bank, in ampere-hours?':
		'Welche Kapazität hat die Batteriebank, in Amperestunden?',
	'{0} is not enough; {1}': '{0} reicht nicht; {1}',
	'{0} is enough; {1}': '{0} reicht; {1}',
	'output of the DC-DC charger': 'Ausgang des Ladewandlers (DC-DC)',
	'alternator rating': 'Nennstrom der Lichtmaschine',
	'load of the vehicle itself': 'Eigenverbrauch des Fahrzeugs',
	'house loads while driving': 'Bordverbraucher während der Fahrt',
	'state of charge to reach': 'zu erreichender Ladezustand',
	'hot output at idle': 'Abgabe heiß im Leerlauf',
	'about half the rating, hot and at idle (practice)':
		'etwa die Hälfte des Nennstroms, heiß und im Leerlauf (Praxis)',
	'voltage of the vehicle': 'Spannung des Fahrzeugs',
	'a van; heavy trucks have 24 V': 'ein Transporter; schwere Lastwagen haben 24 V',
	'efficiency of the DC-DC charger': 'Wirkungsgrad des Ladewandlers (DC-DC)',
	'usual for DC-DC chargers (practice)': 'üblich für Ladewandler (DC-DC) (Praxis)',
	'battery heated': 'Batterie beheizt',
	'DC-DC charger': 'Ladewandler (DC-DC)',
	isolator: 'Trennrelais',
	'how the bank is joined to the alternator': 'wie die Batteriebank mit der Lichtmaschine verbunden ist',
	'Which DC-DC charger (amps), or which alternator rating?':
		'Welcher Ladewandler (DC-DC, Ampere), oder welcher Nennstrom der Lichtmaschine?',
	'largest charge current of the bank': 'größter Ladestrom der Batteriebank',
	'Shorten the run or take a smaller charger.': 'Den Weg kürzen oder ein kleineres Ladegerät nehmen.',
	'No cable in my tables carries {0} that far.': 'Keine Leitung in meinen Tabellen trägt {0} so weit.',
	'Take a larger bank, or a charger that can be set so low, and name it.':
		'Eine größere Batteriebank nehmen oder ein Ladegerät, das sich so niedrig einstellen lässt, und es angeben.',
	'The bank bears {0} of charging; DC-DC chargers begin at {1}.':
		'Die Batteriebank verträgt {0} Ladestrom; Ladewandler (DC-DC) beginnen bei {1}.',
	'Fit a larger alternator, or charge by sun and shore power.':
		'Eine größere Lichtmaschine einbauen oder mit Sonne und Landanschluss laden.',
	"An alternator of {0} spares too little for charging beside the vehicle's own loads; DC-DC chargers begin at {1}.":
		'Eine Lichtmaschine mit {0} lässt neben den eigenen Verbrauchern des Fahrzeugs zu wenig zum Laden übrig; Ladewandler (DC-DC) beginnen bei {1}.',
	'engine, lights and blower of a van (practice)': 'Motor, Licht und Gebläse eines Transporters (Praxis)',
	'to spare while driving': 'übrig während der Fahrt',
	'to spare hot, at idle': 'übrig heiß im Leerlauf',
	'alternator current to spare while driving': 'übriger Strom der Lichtmaschine während der Fahrt',
	'alternator current to spare at idle': 'übriger Strom der Lichtmaschine im Leerlauf',
	'charging current at idle': 'Ladestrom im Leerlauf',
	'largest DC-DC charger': 'größter Ladewandler (DC-DC)',
	'lowest voltage at the charger input': 'niedrigste Spannung am Eingang des Ladegeräts',
	'with the engine on and the drop of the cable (practice)':
		'mit laufendem Motor und dem Spannungsfall der Leitung (Praxis)',
	'input of the charger': 'Eingang des Ladegeräts',
	'current the charger takes': 'Strom, den das Ladegerät zieht',
	'A lithium bank joined to the alternator by a relay or directly draws all the alternator gives: it overheats and can burn. Put a DC-DC charger between.':
		'Eine Lithiumbank, die über ein Relais oder direkt an der Lichtmaschine hängt, zieht alles, was diese gibt: sie überhitzt und kann brennen. Einen Ladewandler (DC-DC) dazwischen setzen.',
	'The charger takes {0}; beside the vehicle the alternator can spare {1} for hours on end. It would run too hot.':
		'Das Ladegerät zieht {0}; neben dem Fahrzeug kann die Lichtmaschine stundenlang {1} geben. Sie würde zu heiß.',
	'Hot and at idle the alternator spares only {0}; the charger takes {1}. Do not charge for long at idle, or set the charger lower: the alternator overheats and the starter battery drains.':
		'Heiß und im Leerlauf lässt die Lichtmaschine nur {0} übrig; das Ladegerät zieht {1}. Nicht lange im Leerlauf laden oder das Ladegerät niedriger einstellen: die Lichtmaschine überhitzt, und die Starterbatterie entlädt sich.',
	'Name a state of charge to start at and a higher one to reach.':
		'Einen Ladezustand zu Beginn und einen höheren als Ziel angeben.',
	'From {0} to {1} there is nothing to charge.': 'Von {0} bis {1} gibt es nichts zu laden.',
	'Switch loads off while driving, or take a larger charger.':
		'Während der Fahrt Verbraucher abschalten oder ein größeres Ladegerät nehmen.',
	'Nothing is left to charge with: {0} from the charger, {1} for the loads.':
		'Zum Laden bleibt nichts: {0} vom Ladegerät, {1} für die Verbraucher.',
	'drawn down as far as is usual (practice)': 'so weit entladen, wie es üblich ist (Praxis)',
	full: 'voll',
	'into the bank': 'in die Batteriebank',
	'state of charge where the current begins to fall': 'Ladezustand, ab dem der Strom zu sinken beginnt',
	'at constant current': 'bei konstantem Strom',
	'at constant voltage': 'bei konstanter Spannung',
	'hours of driving': 'Stunden Fahrt',
	'current into the bank': 'Strom in die Batteriebank',
	'up to {0} at full current': 'bis {0} bei vollem Strom',
	'from the starter battery under the bonnet to a bank behind the seats, along the cable':
		'von der Starterbatterie unter der Haube zu einer Bank hinter den Sitzen, entlang der Leitung',
	'takes {0}': 'zieht {0}',
	', more than the alternator can spare': ', mehr als die Lichtmaschine übrig hat',
	', more than the bank may be charged with': ', mehr als die Batteriebank beim Laden verträgt',
	'{0} at {1} up to {2}, then {3} with a falling current.':
		'{0} bei {1} bis {2}, danach {3} mit sinkendem Strom.',
	'At {0} all the way; the current begins to fall only at {1}.':
		'Durchgehend mit {0}; der Strom beginnt erst bei {1} zu sinken.',
	'Do not charge it at {0}; warm, it takes {1} of driving': 'Nicht bei {0} laden; warm braucht es {1} Fahrt',
	temperature: 'Temperatur',
	'{0} of driving: {1} to {2} of {3} at {4}': '{0} Fahrt: {1} bis {2} von {3} mit {4}',
	', {0}, {1} A fuse': ', {0}, Sicherung {1} A',
	'{0} DC-DC charger takes {1}{2}': 'Ladewandler (DC-DC) mit {0} zieht {1}{2}',
	"Name the alternator's rating to see whether it bears that.":
		'Den Nennstrom der Lichtmaschine angeben, um zu sehen, ob sie das trägt.',
	'It takes {0}; the alternator spares {1} while driving and {2} hot at idle.':
		'Er zieht {0}; die Lichtmaschine hat {1} während der Fahrt und {2} heiß im Leerlauf übrig.',
	'{0} DC-DC charger at most on {1}{2}': 'Ladewandler (DC-DC) mit höchstens {0} an {1}{2}',
	'Not directly: {0}': 'Nicht direkt: {0}',
	alternator: 'Lichtmaschine',
	'{0} suits a {1} alternator{2}': '{0} passt zu einer Lichtmaschine mit {1}{2}',
	'{0} is too much for a {1} alternator': '{0} ist zu viel für eine Lichtmaschine mit {1}',
};
