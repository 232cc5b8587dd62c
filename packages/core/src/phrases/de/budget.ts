import type { Phrasebook } from '../phrasebook.js';

export const budget: Phrasebook = {
	'Which loads, with watts or amps and hours a day?':
		'Welche Verbraucher, mit Watt oder Ampere und Stunden am Tag?',
	'mains voltage': 'Netzspannung',
	'hours a day the inverter is on': 'Stunden am Tag, die der Wechselrichter an ist',
	'inverter switched off between uses': 'Wechselrichter zwischen den Nutzungen aus',
	'{0} a day = {1}, as far as it can be off': '{0} am Tag = {1}, soweit er aus sein kann',
	'{0} a day = {1} at {2} V': '{0} am Tag = {1} bei {2} V',
	'left on all day: the safe side': 'den ganzen Tag an: die sichere Seite',
	'lost in the inverter under load': 'im Wechselrichter unter Last verloren',
	'charge a day from the bank': 'Ladung am Tag aus der Batteriebank',
	'largest current from the bank, all on': 'größter Strom aus der Batteriebank, alles an',
	'mains loads all at once': 'alle Netzverbraucher zugleich',
	'largest mains load': 'größter Netzverbraucher',
	'The {0} is counted at full power for all its hours. If it switches on and off by itself, name its share ("40%").':
		'Für alle Stunden mit voller Leistung gezählt: {0}. Schaltet es selbst ein und aus, den Anteil angeben ("40%").',
	'The inverter alone takes {0} a day doing nothing; switch it off between uses or use its search mode.':
		'Der Wechselrichter allein zieht {0} am Tag, ohne etwas zu tun; zwischen den Nutzungen ausschalten oder seinen Suchbetrieb nutzen.',
	"All on at once draws {0} at 12 V: cables, fuses and the battery's own protection must bear it. A 24 or 48 V bank halves or quarters it.":
		'Alles zugleich zieht {0} bei 12 V: Leitungen, Sicherungen und der eigene Schutz der Batterie müssen das tragen. Eine Batteriebank mit 24 oder 48 V halbiert oder viertelt es.',
	'Direct-current loads {0}': 'Gleichstromverbraucher {0}',
	'mains loads {0}': 'Netzverbraucher {0}',
	'inverter losses and idle {0}': 'Verluste und Leerlauf des Wechselrichters {0}',
	'Most of it: {0}, {1}.': 'Das meiste davon: {0}, {1}.',
};
