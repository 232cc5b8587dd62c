import type { Phrasebook } from '../phrasebook.js';

export const accumulator: Phrasebook = {
	accumulator: 'Druckspeicher',
	'water wanted without the pump': 'gewünschtes Wasser ohne Pumpe',
	'pressure switch': 'Druckschalter',
	'cut-in pressure': 'Einschaltdruck',
	'cut-out pressure': 'Ausschaltdruck',
	'pre-charge': 'Vordruck',
	'2 psi below the cut-in pressure (practice); set it with the water side open':
		'2 psi unter dem Einschaltdruck (Praxis); bei offener Wasserseite einstellen',
	'flow of the pump': 'Förderstrom der Pumpe',
	'3 gpm, the usual 12 V pump (practice)': '3 gpm, die übliche 12-V-Pumpe (Praxis)',
	'flow drawn': 'entnommener Durchfluss',
	'sea level; thinner air changes it by a few percent':
		'Meereshöhe; dünnere Luft ändert es um wenige Prozent',
	'At what pressure does the pump start?': 'Bei welchem Druck schaltet die Pumpe ein?',
	'At what pressure does the pump stop?': 'Bei welchem Druck schaltet die Pumpe aus?',
	'How big is the accumulator (or how much water is wanted from it)?':
		'Wie groß ist der Druckspeicher (oder wie viel Wasser soll er geben)?',
	'I can\'t use "{0}" as the pressure switch.': 'Ich kann "{0}" nicht als Druckschalter verwenden.',
	'It is written as cut-in and cut-out in psi: 30/50.':
		'Er wird als Ein- und Ausschaltdruck in psi geschrieben: 30/50.',
	"The pump can't stop at {0} and start at {1}.":
		'Die Pumpe kann nicht bei {0} ausschalten und bei {1} einschalten.',
	'The cut-out pressure lies at least {0} above the cut-in pressure.':
		'Der Ausschaltdruck liegt mindestens {0} über dem Einschaltdruck.',
	'With a pre-charge of {0} no water gets in before the pump stops at {1}.':
		'Bei einem Vordruck von {0} kommt kein Wasser hinein, bevor die Pumpe bei {1} ausschaltet.',
	'Set the pre-charge just below the cut-in pressure.':
		'Den Vordruck knapp unter den Einschaltdruck einstellen.',
	'water without the pump': 'Wasser ohne Pumpe',
	'water in it at cut-out': 'Wasser darin beim Ausschalten',
	'most pump starts an hour, at half its flow': 'die meisten Starts je Stunde, beim halben Förderstrom',
	'accumulator for {0} starts an hour at most': 'Druckspeicher für höchstens {0} Starts je Stunde',
	'best pre-charge': 'bester Vordruck',
	'water without the pump at the best pre-charge': 'Wasser ohne Pumpe beim besten Vordruck',
	'pump starts an hour at the flow drawn': 'Pumpenstarts je Stunde beim entnommenen Durchfluss',
	'pump off in each turn': 'Pumpe aus in jedem Spiel',
	'pump on in each turn': 'Pumpe an in jedem Spiel',
	'{0}, up to {1} starts an hour': '{0}, bis {1} Starts je Stunde',
	'Check the pre-charge with the water side open and the pump off; a gauge on a full accumulator reads the water.':
		'Den Vordruck bei offener Wasserseite und ausgeschalteter Pumpe prüfen; ein Manometer an einem gefüllten Druckspeicher zeigt den Wasserdruck.',
	'{0} accumulator for {1} without the pump': 'Druckspeicher mit {0} für {1} ohne Pumpe',
	'{0} without the pump; up to {1} starts an hour': '{0} ohne Pumpe; bis {1} Starts je Stunde',
	'gas pressure': 'Gasdruck',
	'Between {0} and {1}, gas set to {2}.': 'Zwischen {0} und {1}, Gas auf {2} eingestellt.',
	'air pressure around': 'Luftdruck der Umgebung',
	'most pump starts an hour': 'die meisten Pumpenstarts je Stunde',
	'down to {0} of gas, where it gives {1}, a tenth less':
		'hinab bis {0} Gasdruck, wo er {1} gibt, ein Zehntel weniger',
	'The gas is set above the cut-in: the accumulator is empty before the pump starts and the tap stutters. Set it to {0}.':
		'Das Gas steht über dem Einschaltdruck: der Druckspeicher ist leer, bevor die Pumpe anläuft, und der Hahn stottert. Auf {0} einstellen.',
	'The gas is set low; at {0} the same accumulator gives more.':
		'Das Gas ist niedrig eingestellt; bei {0} gibt derselbe Druckspeicher mehr.',
	'A slow tap can start the pump {0} times an hour; an accumulator of {1} keeps it to {2}.':
		'Ein langsamer Hahn kann die Pumpe {0}-mal je Stunde starten; ein Druckspeicher mit {1} hält es bei {2}.',
	'This tap starts the pump {0} times an hour; an accumulator of {1} keeps any tap to {2}.':
		'Dieser Hahn startet die Pumpe {0}-mal je Stunde; ein Druckspeicher mit {1} hält jeden Hahn bei {2}.',
	'The tap takes all the pump gives: once started it runs on and the pressure falls.':
		'Der Hahn nimmt alles, was die Pumpe gibt: einmal gestartet läuft sie durch, und der Druck fällt.',
};
