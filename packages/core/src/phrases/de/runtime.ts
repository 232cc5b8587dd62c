import type { Phrasebook } from '../phrasebook.js';

export const runtime: Phrasebook = {
	'from full, as nothing was said': 'von voll an, da nichts gesagt wurde',
	'state of charge to stop at': 'Ladezustand, bei dem Schluss ist',
	'capacity left by age': 'durch Alter verbliebene Kapazität',
	'as new; a bank at the end of its life holds 80 %':
		'wie neu; eine Batteriebank am Ende ihrer Lebensdauer hält 80 %',
	'What capacity has the bank (Ah or kWh)?': 'Welche Kapazität hat die Batteriebank (Ah oder kWh)?',
	'What is on meanwhile, with watts or amps?': 'Was ist währenddessen an, mit Watt oder Ampere?',
	'Name a state of charge to start at and a lower one to stop at.':
		'Einen Ladezustand zu Beginn und einen niedrigeren zum Schluss angeben.',
	'From {0} to {1} there is nothing to draw.': 'Von {0} bis {1} gibt es nichts zu entnehmen.',
	'{0} at {1} V on average, from {2} usable.': '{0} bei {1} V im Mittel, aus {2} nutzbar.',
	'{0}: {1} from {2} down to {3}': '{0}: {1} von {2} hinab bis {3}',
	'At this current the bank gives less than its rating (Peukert).':
		'Bei diesem Strom gibt die Batteriebank weniger als ihren Nennwert (Peukert).',
	'{0} h ({1} days)': '{0} h ({1} Tage)',
	'average current': 'mittlerer Strom',
	'capacity as it is': 'Kapazität, wie sie ist',
	'capacity at this current': 'Kapazität bei diesem Strom',
	'charge to be had': 'entnehmbare Ladung',
	time: 'Zeit',
	'time it lasts': 'Zeit, die es reicht',
	'average power from the bank': 'mittlere Leistung aus der Batteriebank',
	'average current from the bank': 'mittlerer Strom aus der Batteriebank',
	'energy to be had': 'entnehmbare Energie',
	'{0} running its usual share of the time': '{0}, den üblichen Anteil der Zeit in Betrieb',
	'{0} of these batteries': '{0} dieser Batterien',
	'average power': 'mittlere Leistung',
	'up to {0} for a full day': 'bis {0} für einen ganzen Tag',
	'time it must last': 'Zeit, die es reichen muss',
	'for a night': 'für eine Nacht',
	'a night from dusk to breakfast (practice)': 'eine Nacht von der Dämmerung bis zum Frühstück (Praxis)',
	'energy of the time asked for': 'Energie der gefragten Zeit',
	'energy needed': 'benötigte Energie',
	'state of charge afterwards': 'Ladezustand danach',
	'It lasts {0} at {1} on average.': 'Sie reicht {0} bei {1} im Mittel.',
	'Enough for {0}: {1} of {2} usable': 'Reicht für {0}: {1} von {2} nutzbar',
	'{0} is left after {1}.': '{0} bleiben nach {1} übrig.',
	'{0} are needed for {1}; the bank gives {2}.': 'Für {1} werden {0} gebraucht; die Batteriebank gibt {2}.',
	'Too small for {0}: {1} needed, {2} usable': 'Zu klein für {0}: {1} nötig, {2} nutzbar',
	'up to {0} on average for {1}': 'bis {0} im Mittel für {1}',
	'I read "{0}" as a load, but it gives current.':
		'„{0}“ habe ich als Verbraucher gelesen, doch es gibt Strom.',
	'Name what is on, or ask for the charging time: "charge time 200 Ah AGM, charger 40 A".':
		'Angeben, was eingeschaltet ist, oder nach der Ladezeit fragen: „Ladezeit 200 Ah AGM, Ladegerät 40 A“.',
};
