import type { Phrasebook } from '../phrasebook.js';

export const battery: Phrasebook = {
	'time between charges': 'Zeit zwischen zwei Ladungen',
	'depth of discharge': 'Entladetiefe',
	'lowest temperature of the battery': 'tiefste Temperatur der Batterie',
	'ageing factor': 'Alterungsfaktor',
	'design margin': 'Bemessungszuschlag',
	'Peukert exponent': 'Peukert-Exponent',
	'charge current': 'Ladestrom',
	'steady discharge current': 'Dauerentladestrom',
	'inverter power': 'Leistung des Wechselrichters',
	'How much is used a day (Ah or Wh), or which loads?':
		'Wie viel wird am Tag gebraucht (Ah oder Wh), oder welche Verbraucher?',
	'What capacity has one battery (Ah)?': 'Welche Kapazität hat eine Batterie (Ah)?',
	'Keep the battery inside or heat it, and name the temperature it then has.':
		'Die Batterie innen unterbringen oder heizen und die Temperatur angeben, die sie dann hat.',
	'At {0} my tables for {1} end: hardly any capacity is left and it may freeze.':
		'Bei {0} enden meine Tabellen für {1}: es bleibt kaum Kapazität, und sie kann gefrieren.',
	'capacity needed': 'nötige Kapazität',
	'temperature factor': 'Temperaturfaktor',
	'days it lasts': 'Tage, die es reicht',
	'inside the heated living space, where the capacity is rated':
		'im beheizten Wohnraum, wo die Kapazität gilt',
	'usual for {0} that shall last (practice)': 'üblich für {0}, wenn sie lange halten soll (Praxis)',
	'so that it still serves at 80 % of its capacity, the end of its life':
		'damit sie bei 80 % ihrer Kapazität, dem Ende ihrer Lebensdauer, noch genügt',
	'Give one of them, whichever you trust.': 'Eines davon angeben, was sicher stimmt.',
	'{0} and {1} a day contradict each other at {2} V.': '{0} und {1} am Tag widersprechen sich bei {2} V.',
	'I read both a daily figure and a list of loads.':
		'Ich lese sowohl einen Tageswert als auch eine Liste von Verbrauchern.',
	'Give one of them: the daily figure, or all loads.':
		'Eines davon angeben: den Tageswert oder alle Verbraucher.',
	'charged every day; name the days it must last without':
		'täglich geladen; die Tage angeben, die es ohne Laden reichen muss',
	'1 day': '1 Tag',
	'{0}: {1} at {2} V, {3}': '{0}: {1} bei {2} V, {3}',
	'Do not charge it at {0}': 'Nicht bei {0} laden',
	'It must be warmer than freezing before any charge.':
		'Vor jedem Laden muss sie über dem Gefrierpunkt sein.',
	'Joined as {0}. Name what is used a day to see how long it lasts.':
		'So verbunden: {0}. Den Tagesverbrauch angeben, um zu sehen, wie lange es reicht.',
	'too small': 'zu klein',
	'{0} of {1} need {2} at {3} V; it has {4}, which lasts {5}.':
		'{0} mit {1} brauchen {2} bei {3} V; sie hat {4}, das reicht {5}.',
	'The bank has {0}; {1} are needed.': 'Die Batteriebank hat {0}; nötig sind {1}.',
	'{0} is enough: {1} of {2}': '{0} reicht: {1} von {2}',
	'{0} is too small: {1} of {2}': '{0} ist zu klein: {1} von {2}',
	capacity: 'Kapazität',
	'{0} of {1}, with depth of discharge, cold and ageing counted. {2} gives {3}, joined as {4}.':
		'{0} mit {1}, Entladetiefe, Kälte und Alterung mitgezählt. {2} gibt {3}, so verbunden: {4}.',
	'{0} at {1} V for {2} of {3} ({4} needed)': '{0} bei {1} V für {2} mit {3} ({4} nötig)',
	'{0} of {1} at {2} V for {3} of {4}': '{0} {1} bei {2} V für {3} mit {4}',
	'charge between two full charges': 'Ladung zwischen zwei Vollladungen',
	'capacity at the rated current': 'Kapazität beim Nennstrom',
	'capacity at the current drawn': 'Kapazität beim entnommenen Strom',
	'capacity of the bank': 'Kapazität der Batteriebank',
	'energy of the bank': 'Energie der Batteriebank',
	'rated voltage': 'Nennspannung',
	batteries: 'Batterien',
	'largest charge current': 'größter Ladestrom',
	'largest steady discharge current': 'größter Dauerentladestrom',
	'Charge it with {0} at most; {1} is too much': 'Mit höchstens {0} laden; {1} ist zu viel',
	'It gives {0} at most; {1} is too much': 'Sie gibt höchstens {0}; {1} ist zu viel',
	'current of the inverter at the end of discharge': 'Strom des Wechselrichters am Ende der Entladung',
	'current of the inverter at low battery': 'Strom des Wechselrichters bei leerer Batterie',
	'energy to put back for each day': 'Energie, die je Tag nachzuladen ist',
	'up to {0} a day': 'bis {0} am Tag',
	'about {0}': 'etwa {0}',
	'about {0}, too little for {1}': 'etwa {0}, zu wenig für {1}',
};
