import type { Phrasebook } from '../phrasebook.js';

export const electricalWork: Phrasebook = {
	'internal resistance of one battery': 'Innenwiderstand einer Batterie',
	'open-circuit voltage of the bank': 'Leerlaufspannung der Batteriebank',
	"maker's short-circuit current of the bank": 'Kurzschlussstrom der Batteriebank laut Hersteller',
	"{0} can't be the open-circuit voltage of a {1} V bank.":
		'{0} kann nicht die Leerlaufspannung einer Batteriebank mit {1} V sein.',
	'Give the voltage of the full, rested bank, about {0}.':
		'Die Spannung der vollen, ruhenden Batteriebank angeben, etwa {0}.',
	'full and rested, {0} V a cell (practice)': 'voll und ruhend, {0} V je Zelle (Praxis)',
	'low end of what is usual for the chemistry and capacity: the highest current is the safe side (practice)':
		'unteres Ende des Üblichen für Zellchemie und Kapazität: der höchste Strom ist die sichere Seite (Praxis)',
	"Fuse at the source end itself; only where that can't be done, within 7 in (180 mm) of wire, or 40 in (1 m) if it is also sheathed all the way (33 CFR 183.455).":
		'Die Sicherung sitzt unmittelbar an der Quelle; nur wo das nicht geht, nach höchstens 7 in (180 mm) Leitung, oder 40 in (1 m), wenn diese zusätzlich durchgehend umhüllt ist (33 CFR 183.455).',
	'Disconnect the battery and shore power before you work; a dropped spanner across a bank welds itself on.':
		'Vor der Arbeit Batterie und Landanschluss trennen; ein Schraubenschlüssel, der über die Pole fällt, schweißt sich fest.',
	'Crimp lugs with the right die, pull-test them, and use grommets and sleeve where the cable passes metal.':
		'Kabelschuhe mit dem richtigen Presseinsatz verpressen, auf Zug prüfen und Durchführungstüllen und Schlauch verwenden, wo die Leitung durch Metall geht.',
	'Mains work belongs to a licensed electrician and the local code decides: breaker, GFCI or RCD, and one neutral-to-ground bond only, at the source.':
		'Arbeiten am Netzstrom gehören einer zugelassenen Elektrofachkraft, und die örtlichen Vorschriften entscheiden: Leitungsschutzschalter, FI-Schutzschalter (GFCI oder RCD) und nur eine Verbindung von Neutralleiter und Erde, an der Quelle.',
	'segments and loads': 'Abschnitte und Verbraucher',
	'Which conductors are there? For each: from - to, size, one-way length.':
		'Welche Leiter gibt es? Zu jedem: von - nach, Querschnitt, einfache Länge.',
	'Which loads are on, and at which node? For each: node and amperes or watts.':
		'Welche Verbraucher sind an und an welchem Knoten? Zu jedem: Knoten und Ampere oder Watt.',
	'I read a segment from {0} to itself.': 'Ich lese einen Abschnitt von {0} zu sich selbst.',
	'{0} has a resistance as well as a size or length.':
		'{0} hat einen Widerstand und zugleich einen Querschnitt oder eine Länge.',
	'What size is the conductor of {0}?': 'Welchen Querschnitt hat der Leiter von {0}?',
	'I read "{0}" as the size of {1}; no such size is in my tables.':
		'Ich lese "{0}" als Querschnitt von {1}; in meinen Tabellen gibt es ihn nicht.',
	'How long is {0}, one way?': 'Wie lang ist {0}, einfach gemessen?',
	'I read a load at "{0}", but no segment leads there.':
		'Ich lese einen Verbraucher an "{0}", aber kein Abschnitt führt dorthin.',
	'Name a segment that ends there, or put the load at one of: {0}.':
		'Einen Abschnitt angeben, der dort endet, oder den Verbraucher an einen davon legen: {0}.',
	'efficiency of the inverter': 'Wirkungsgrad des Wechselrichters',
	"the power named is the inverter's output; 85 % where its efficiency is unknown":
		'die genannte Leistung ist die Abgabe des Wechselrichters; 85 %, wo sein Wirkungsgrad nicht bekannt ist',
	'As the battery falls to {0} the inverter draws {1}; the fuse still carries that for a while. The inverter topic sizes for that worst case.':
		'Fällt die Batterie auf {0}, zieht der Wechselrichter {1}; die Sicherung trägt das noch eine Weile. Das Thema Wechselrichter bemisst für diesen ungünstigsten Fall.',
	'As the battery falls to {0} the inverter draws {1}, above the fuse: ask the inverter topic, which sizes for that worst case.':
		'Fällt die Batterie auf {0}, zieht der Wechselrichter {1}, mehr als die Sicherung: das Thema Wechselrichter fragen, es bemisst für diesen ungünstigsten Fall.',
	'{0} and {1} at {2} contradict each other: that power draws {3}.':
		'{0} und {1} bei {2} widersprechen sich: diese Leistung zieht {3}.',
	'Give the current or the power, whichever you trust.':
		'Strom oder Leistung angeben, was davon sicher stimmt.',
};
