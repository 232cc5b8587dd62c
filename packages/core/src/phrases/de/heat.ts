import type { Phrasebook } from '../phrasebook.js';

export const heat: Phrasebook = {
	'outside temperature': 'Außentemperatur',
	'a comfortable evening (practice)': 'ein behaglicher Abend (Praxis)',
	'vents cracked open for two people (practice)': 'Lüftungen für zwei Personen einen Spalt offen (Praxis)',
	heater: 'Heizgerät',
	diesel: 'Diesel',
	propane: 'Propan',
	gasoline: 'Benzin',
	electric: 'elektrisch',
	fuel: 'Brennstoff',
	'the usual fuel of van heaters': 'der übliche Brennstoff für Fahrzeugheizungen',
	'heater without a flue': 'Heizgerät ohne Abgasrohr',
	'carbon-monoxide alarm': 'Kohlenmonoxid-Warner',
	'efficiency of the heater': 'Wirkungsgrad des Heizgeräts',
	'burner heaters turn about 80 % of the lower heating value into heat; an inverter passes 85 % (practice)':
		'Brennerheizungen machen rund 80 % des Heizwerts zu Wärme; ein Wechselrichter lässt 85 % durch (Praxis)',
	'hours heated': 'geheizte Stunden',
	'electric draw of the heater': 'elektrische Aufnahme des Heizgeräts',
	'fan and fuel pump, running (practice)': 'Gebläse und Brennstoffpumpe im Betrieb (Praxis)',
	'How cold does it get outside (or where)?': 'Wie kalt wird es draußen (oder wo)?',
	'I size no heater that burns fuel without a flue for a van people sleep in: it fills the air with carbon monoxide and water and uses up the oxygen.':
		'Ich bemesse kein Heizgerät, das ohne Abgasrohr Brennstoff verbrennt, für ein Fahrzeug, in dem Menschen schlafen: es füllt die Luft mit Kohlenmonoxid und Wasser und verbraucht den Sauerstoff.',
	'Use a heater with a sealed burner: combustion air from outside, exhaust to outside; and a carbon-monoxide alarm.':
		'Ein Heizgerät mit geschlossenem Brenner verwenden: Verbrennungsluft von außen, Abgas nach außen; und einen Kohlenmonoxid-Warner.',
	'Give an outside temperature below the inside one; for the opposite ask the cool topic.':
		'Eine Außentemperatur unter der Innentemperatur angeben; für das Gegenteil das Thema Kühlung fragen.',
	'It is {0} outside and {1} is wanted inside: no heat is lost.':
		'Draußen sind {0}, innen {1} gewünscht: es geht keine Wärme verloren.',
	'The van loses {0} at {1}; most of it through: {2} ({3}).':
		'Das Fahrzeug verliert {0} bei {1}; das meiste durch: {2} ({3}).',
	'{0} of heat needed: more than one heater, or insulate':
		'{0} Wärme nötig: mehr als ein Heizgerät, oder dämmen',
	'{0} heater; {1}': 'Heizgerät mit {0}; {1}',
	'{0} will do; {1}': '{0} reicht; {1}',
	'{0} a night': '{0} je Nacht',
	'{0} for {1} nights': '{0} für {1} Nächte',
	'time to provide for': 'Zeit, für die es reichen soll',
	'fuel for the stay': 'Brennstoff für den Aufenthalt',
	'battery for the stay': 'Batterie für den Aufenthalt',
	'{0} is too small: {1} needed': '{0} ist zu klein: {1} nötig',
	'heat loss of the shell': 'Wärmeverlust der Hülle',
	'that of {0}': 'die von {0}',
	'sea level, as none was named': 'Meereshöhe, da keine genannt wurde',
	'heat lost per kelvin: air': 'Wärmeverlust je Kelvin: Luft',
	'rated output needed': 'nötige Nennleistung',
	'fuel a night': 'Brennstoff je Nacht',
	'battery a night': 'Batterie je Nacht',
	'heat loss if heat spreads freely to the ribs': 'Wärmeverlust, wenn Wärme frei zu den Spanten fließt',
	'heat loss if it does not': 'Wärmeverlust, wenn nicht',
	'through: {0}': 'durch: {0}',
	'through: air': 'durch: Luft',
	'U of the walls': 'U-Wert der Wände',
	'its output at this altitude': 'seine Leistung in dieser Höhe',
	'output kept at this altitude': 'Leistung, die in dieser Höhe bleibt',
	'loses {0}': 'verliert {0}',
	'{0} over the ribs': '{0} über den Spanten',
	'A fuel-burning heater without a carbon-monoxide alarm can kill people in their sleep. Fit an alarm at sleeping height first.':
		'Ein Brennstoff-Heizgerät ohne Kohlenmonoxid-Warner kann Menschen im Schlaf töten. Zuerst einen Warner in Schlafhöhe einbauen.',
	'It gives {0} here and the van needs more in reserve; {1}, or better insulation, clears it.':
		'Hier gibt es {0}, und das Fahrzeug braucht mehr als Reserve; {1} oder bessere Dämmung hilft ab.',
	'Even at its lowest (about {0}) it gives more than the van loses: it will cycle and soot up.':
		'Selbst auf kleinster Stufe (etwa {0}) gibt es mehr, als das Fahrzeug verliert: es taktet und verrußt.',
	'At {0} the burner keeps about {1} % of its output; it needs a high-altitude setting or it burns rich and soots.':
		'Auf {0} behält der Brenner etwa {1} % seiner Leistung; er braucht eine Höheneinstellung, sonst brennt er fett und rußt.',
	'Fan and pump take {0} a night and the bank gives {1}; a bank of {2} clears it.':
		'Gebläse und Pumpe ziehen {0} je Nacht, und die Batteriebank gibt {1}; eine Bank mit {2} hilft ab.',
	'Heating takes {0} a night and the bank gives {1}; it takes {2} of bank, or a heater that burns fuel.':
		'Heizen zieht {0} je Nacht, und die Batteriebank gibt {1}; nötig sind {2} Batteriebank oder ein Brennstoff-Heizgerät.',
	'The ribs cost about {0}; if heat spreads freely to them the loss is {1}. Insulation over the ribs helps more than thicker insulation between them.':
		'Die Spanten kosten etwa {0}; fließt Wärme frei zu ihnen, ist der Verlust {1}. Dämmung über den Spanten hilft mehr als dickere Dämmung dazwischen.',
};
