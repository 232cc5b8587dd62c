import type { Phrasebook } from '../phrasebook.js';

export const hotWater: Phrasebook = {
	'water heater': 'Warmwasserbereiter',
	'How much water does the heater hold?': 'Wie viel Wasser fasst der Warmwasserbereiter?',
	'heating power': 'Heizleistung',
	'voltage of the element': 'Spannung des Heizstabs',
	'a mains element unless a low-voltage one is named':
		'ein Heizstab für Netzspannung, außer es ist einer für Kleinspannung genannt',
	mains: 'Netz',
	'what feeds it': 'was ihn speist',
	'hot water': 'Warmwasser',
	'the usual thermostat (practice)': 'der übliche Thermostat (Praxis)',
	'cold water': 'Kaltwasser',
	'tank water in the cool season; colder in winter': 'Tankwasser in der kühlen Jahreszeit; im Winter kälter',
	'shower temperature': 'Duschtemperatur',
	'what most people shower at (practice)': 'womit die meisten duschen (Praxis)',
	'flow of the shower': 'Durchfluss der Dusche',
	'the most a water-saving head may pass': 'das Meiste, was ein Sparduschkopf durchlassen darf',
	'full tanks heated a day': 'volle Tanks, am Tag erwärmt',
	'one tank of hot water used a day (practice)': 'ein Tank Warmwasser am Tag (Praxis)',
	'hours a day on the timer': 'Stunden am Tag mit der Zeitschaltuhr',
	'on for 2 h before it is needed (practice)': '2 h an, bevor es gebraucht wird (Praxis)',
	'standby loss': 'Bereitschaftsverlust',
	'insulation of the heater': 'Dämmung des Warmwasserbereiters',
	'foam about the tank (practice)': 'Schaum um den Tank (Praxis)',
	'air around the heater': 'Luft um den Warmwasserbereiter',
	'a cabinet in the living space': 'ein Schrank im Wohnraum',
	'where its efficiency is unknown (practice)': 'wo sein Wirkungsgrad nicht bekannt ist (Praxis)',
	'an inverter left on for the heater (practice)':
		'ein Wechselrichter, der für den Warmwasserbereiter an bleibt (Praxis)',
	'left on': 'dauernd an',
	'thermostatic mixing valve': 'thermostatisches Mischventil',
	'The hot temperature lies above the cold one.': 'Die Warmwassertemperatur liegt über der des Kaltwassers.',
	'Hot water of {0} from cold of {1} needs no heater.':
		'Warmwasser mit {0} aus Kaltwasser mit {1} braucht keinen Warmwasserbereiter.',
	'The shower lies between cold and hot.': 'Die Dusche liegt zwischen kalt und warm.',
	'A shower of {0} needs no hot water: the cold is {1}.':
		'Eine Dusche mit {0} braucht kein Warmwasser: das kalte hat {1}.',
	'Batteries are 12, 24 or 48 V (up to 60 V); mains is 100 to 250 V.':
		'Batterien haben 12, 24 oder 48 V (bis 60 V); das Netz hat 100 bis 250 V.',
	'I read {0}, which is neither a battery nor a mains voltage.':
		'Ich lese {0}; das ist weder Batterie- noch Netzspannung.',
	'Give more power, more insulation or a lower temperature.':
		'Mehr Leistung, mehr Dämmung oder eine niedrigere Temperatur angeben.',
	'{0} never brings it to {1}: standing loss alone is {2}.':
		'{0} bringen es nie auf {1}: allein der Bereitschaftsverlust ist {2}.',
	'{0} a tank; {1} min of shower': '{0} je Tank; {1} min Dusche',
	'{0} and {1} a tank; {2} min of shower': '{0} und {1} je Tank; {2} min Dusche',
	'heat stored in the water': 'im Wasser gespeicherte Wärme',
	'Left on it takes {0} a day, on a timer {1}.': 'Dauernd an zieht er {0} am Tag, mit Zeitschaltuhr {1}.',
	'Left on it takes {0} a day ({1} of what the bank gives), on a timer {2}.':
		'Dauernd an zieht er {0} am Tag ({1} dessen, was die Batteriebank gibt), mit Zeitschaltuhr {2}.',
	'Left on it empties the bank: {0} a day, {1} there':
		'Dauernd an leert er die Batteriebank: {0} am Tag, {1} sind da',
	'Left on it takes {0} a day; the bank gives {1}':
		'Dauernd an zieht er {0} am Tag; die Batteriebank gibt {1}',
	'heat for one tank': 'Wärme für einen Tank',
	'standing loss': 'Bereitschaftsverlust',
	'time to heat': 'Aufheizzeit',
	'hot share of the shower': 'Warmanteil der Dusche',
	'minutes of shower': 'Minuten Dusche',
	'a day left on': 'ein Tag dauernd an',
	'a day on the timer': 'ein Tag mit Zeitschaltuhr',
	'current of the element': 'Strom des Heizstabs',
	'minutes of mixed shower from one tank': 'Minuten gemischte Dusche aus einem Tank',
	'mixed water from one tank': 'gemischtes Wasser aus einem Tank',
	'a day left on, from the bank': 'ein Tag dauernd an, aus der Batteriebank',
	'share of the bank for one tank': 'Anteil der Batteriebank für einen Tank',
	'share of the bank for a day left on': 'Anteil der Batteriebank für einen Tag dauernd an',
	'share of the bank for a day on the timer': 'Anteil der Batteriebank für einen Tag mit Zeitschaltuhr',
	'{0} a tank, {1} min of shower': '{0} je Tank, {1} min Dusche',
	'up to {0} tanks a day on the timer': 'bis {0} Tanks am Tag mit Zeitschaltuhr',
	'Water of {0} burns skin badly within {1} s. Fit a thermostatic mixing valve set to {2} or less.':
		'Wasser mit {0} verbrüht die Haut innerhalb von {1} s schwer. Ein thermostatisches Mischventil einbauen, auf {2} oder weniger eingestellt.',
	'Water kept below 60 °C (140 °F) can breed germs: heat it through once a week or drain it when not in use.':
		'In Wasser unter 60 °C (140 °F) können sich Keime vermehren: einmal die Woche durchheizen oder bei Nichtgebrauch entleeren.',
	'The water is cooler than the shower wanted; set it to at least {0}.':
		'Das Wasser ist kälter als die gewünschte Dusche; auf mindestens {0} einstellen.',
	'Forgotten for a day it takes {0}; the bank gives {1}. A timer, or a bank of {2} ({3}), clears it.':
		'Einen Tag vergessen zieht er {0}; die Batteriebank gibt {1}. Eine Zeitschaltuhr oder eine Bank mit {2} ({3}) hilft ab.',
	'{0} tanks a day and the standing loss empty the bank; it needs shore power or fewer tanks.':
		'{0} Tanks am Tag und der Bereitschaftsverlust leeren die Batteriebank; nötig sind Landanschluss oder weniger Tanks.',
	'The inverter must carry the element without pause: {0} from the bank; ask the inverter and wire topics for cable and fuse.':
		'Der Wechselrichter muss den Heizstab ohne Pause tragen: {0} aus der Batteriebank; die Themen Wechselrichter und Leitung nach Leitung und Sicherung fragen.',
};
