import type { Phrasebook } from '../phrasebook.js';

export const inverter: Phrasebook = {
	'continuous power of the inverter': 'Dauerleistung des Wechselrichters',
	'surge power of the inverter': 'Spitzenleistung des Wechselrichters',
	'voltage at which it switches off': 'Spannung, bei der er abschaltet',
	'hours a day it is on': 'Stunden am Tag, die er an ist',
	'beside the bank, as short as can be': 'neben der Batteriebank, so kurz wie möglich',
	'in a closed space': 'in einem geschlossenen Raum',
	'Which inverter (watts), or what must it run?':
		'Welcher Wechselrichter (Watt), oder was soll daran laufen?',
	'Name one; size the other by itself.': 'Einen angeben; den anderen für sich bemessen.',
	'I read two inverters: {0} and {1}.': 'Ich lese zwei Wechselrichter: {0} und {1}.',
	'Leave out what need not run at the same time, or put it on shore power.':
		'Weglassen, was nicht zugleich laufen muss, oder es an den Landanschluss legen.',
	"All of it at once is {0} ({1} for a moment), more than a van's inverter gives.":
		'Alles zugleich sind {0} ({1} für einen Augenblick), mehr als ein Wechselrichter im Fahrzeug gibt.',
	'Name the cut-off at the bank, for instance 10.5 V on 12 V.':
		'Die Abschaltspannung an der Batteriebank angeben, zum Beispiel 10.5 V bei 12 V.',
	"It can't switch off at {0} on a bank of {1} V.":
		'Er kann an einer Batteriebank mit {1} V nicht bei {0} abschalten.',
	'Take a bank of 24 or 48 V, or a smaller inverter.':
		'Eine Batteriebank mit 24 oder 48 V nehmen oder einen kleineren Wechselrichter.',
	'Take a smaller inverter.': 'Einen kleineren Wechselrichter nehmen.',
	'{0} at {1} V draws {2}: no cable and fuse in my tables do that.':
		'{0} bei {1} V ziehen {2}: keine Leitung mit Sicherung in meinen Tabellen schafft das.',
	'the safe side: LiFePO4 at 2.5 V a cell is lower than lead-acid at 1.75 V a cell':
		'die sichere Seite: LiFePO4 mit 2.5 V je Zelle liegt tiefer als Blei-Säure mit 1.75 V je Zelle',
	'end of discharge of {0}': 'Entladeschluss von {0}',
	'running at once': 'zugleich in Betrieb',
	'for a moment': 'für einen Augenblick',
	'current from the bank at its lowest voltage': 'Strom aus der Batteriebank bei ihrer tiefsten Spannung',
	'for cable and fuse': 'für Leitung und Sicherung',
	'current from the bank at low battery': 'Strom aus der Batteriebank bei leerer Batterie',
	'current for cable and fuse': 'Strom für Leitung und Sicherung',
	'energy a day with nothing connected': 'Energie am Tag, ohne dass etwas angeschlossen ist',
	'heat it gives off at full load': 'Wärme, die er bei Volllast abgibt',
	"All of it at once is {0}, more than the inverter's {1}: it switches off. Run less at a time or take a larger one.":
		'Alles zugleich sind {0}, mehr als die {1} des Wechselrichters: er schaltet ab. Weniger zugleich betreiben oder einen größeren nehmen.',
	'{0} is more than 80 % of {1}: in a warm place it may cut back or switch off.':
		'{0} sind mehr als 80 % von {1}: an warmem Ort kann er drosseln oder abschalten.',
	'Starting takes {0} for a moment, more than the {1} it gives.':
		'Der Anlauf braucht für einen Augenblick {0}, mehr als die {1}, die er gibt.',
	'The bank must give {0} without switching itself off; name its batteries and their protection to have that checked.':
		'Die Batteriebank muss {0} geben, ohne abzuschalten; ihre Batterien und deren Schutz angeben, damit das geprüft wird.',
	'largest steady discharge current of the bank': 'größter Dauerentladestrom der Batteriebank',
	"For a moment it may draw {0}; see that the battery's protection bears that for some seconds.":
		'Für einen Augenblick kann er {0} ziehen; darauf achten, dass der Schutz der Batterie das einige Sekunden trägt.',
	'Over 300 A at {0} V every joint counts: at double the voltage it is half the current, cable and fuse.':
		'Über 300 A bei {0} V zählt jede Verbindung: bei doppelter Spannung ist es die Hälfte an Strom, Leitung und Sicherung.',
	'In a closed space it overheats and can start a fire: give it air in and out, and keep bedding and clothes away.':
		'In einem geschlossenen Raum überhitzt er und kann einen Brand auslösen: Luft zu- und abführen und Bettzeug und Kleidung fernhalten.',
	'too small for {0}': 'zu klein für {0}',
	'starts {0} only with luck': 'startet {0} nur mit Glück',
	'loaded to {0} %': 'zu {0} % belastet',
	'{0} from the bank': '{0} aus der Batteriebank',
	'{0} V bank': 'Batteriebank mit {0} V',
	'up to {0} on the same fuse': 'bis {0} mit derselben Sicherung',
	'At {0} and {1} % it draws {2}; 125 % of that is for cable and fuse.':
		'Bei {0} und {1} % zieht er {2}; 125 % davon gelten für Leitung und Sicherung.',
	'{0} fuse, {1}': 'Sicherung {0}, {1}',
	'{0} is too much for this bank: {1}, it gives {2}':
		'{0} ist zu viel für diese Batteriebank: {1}, sie gibt {2}',
	'{0} For the cable alone: {1}.': '{0} Nur für die Leitung: {1}.',
	'discharge limit of the bank': 'Entladegrenze der Batteriebank',
	'{0} at {1} V: {2} ({3} at low battery)': '{0} bei {1} V: {2} ({3} bei leerer Batterie)',
	'bank current at the cut-off': 'Strom aus der Batteriebank beim Abschalten',
	'{0} at once, {1} for a moment. {2}': '{0} zugleich, {1} für einen Augenblick. {2}',
	'{0} is too small for {1} at once': '{0} ist zu klein für {1} zugleich',
	'continuous power': 'Dauerleistung',
	'{0} inverter for {1}; {2} at {3} V': 'Wechselrichter mit {0} für {1}; {2} bei {3} V',
	'{0} is enough for {1}; {2} at {3} V': '{0} reicht für {1}; {2} bei {3} V',
	'{0} runs {1} but may not start it: {2} for a moment':
		'{0} versorgt {1}, startet es aber vielleicht nicht: {2} für einen Augenblick',
	'It gives {0} for a moment. {1}': 'Er gibt {0} für einen Augenblick. {1}',
	'start-up power': 'Anlaufleistung',
};
