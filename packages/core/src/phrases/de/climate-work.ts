import type { Phrasebook } from '../phrasebook.js';

export const climateWork: Phrasebook = {
	'bank capacity': 'Kapazität der Batteriebank',
	'bank energy': 'Energie der Batteriebank',
	'usable share of the bank': 'nutzbarer Anteil der Batteriebank',
	'the usual house bank': 'die übliche Bordbatterie',
	'lithium iron phosphate down to 20 % (practice); lead-acid gives about 50 %':
		'Lithium-Eisenphosphat bis hinab zu 20 % (Praxis); Blei-Säure gibt rund 50 %',
	'Anything that burns fuel aboard: combustion air from outside, exhaust led outside and away from windows, intakes and the underbody, and a carbon-monoxide alarm at sleeping height, tested.':
		'Alles, was an Bord Brennstoff verbrennt: Verbrennungsluft von außen, Abgas nach außen geführt und fern von Fenstern, Ansaugöffnungen und Unterboden, und ein Kohlenmonoxid-Warner in Schlafhöhe, geprüft.',
	'Keep the distances to what can burn that the heater asks for, seal the exhaust where it passes the floor, and switch off before refuelling.':
		'Die Abstände zu Brennbarem einhalten, die das Heizgerät verlangt, das Abgasrohr am Bodendurchgang abdichten und vor dem Tanken abschalten.',
	'Fuel gas is work for the licensed trade: vented locker, regulator, leak test and gas alarm as the local code asks.':
		'Brenngas ist Arbeit für den zugelassenen Fachbetrieb: belüfteter Gaskasten, Regler, Dichtheitsprüfung und Gaswarner, wie es die örtlichen Vorschriften verlangen.',
	'Refrigerant is under pressure, and opening the circuit needs a certified technician; do not drill or bend its pipes.':
		'Kältemittel steht unter Druck, und den Kreis darf nur eine zertifizierte Fachkraft öffnen; seine Rohre nicht anbohren oder biegen.',
	'A unit on the roof adds weight up high: check the roof, the payload and where its condensate runs.':
		'Ein Gerät auf dem Dach bringt Gewicht nach oben: Dach und Zuladung prüfen und wohin das Kondenswasser läuft.',
	'A parked van in the sun can reach deadly heat when the cooling stops: never rely on it alone for a child, a pet or a sick person.':
		'Ein in der Sonne stehendes Fahrzeug kann tödlich heiß werden, wenn die Kühlung ausfällt: sich für ein Kind, ein Tier oder einen kranken Menschen nie auf sie allein verlassen.',
	'Never close the vents to save heat: people need fresh air to sleep, and stoves and heaters use it up.':
		'Nie die Lüftungen schließen, um Wärme zu halten: Menschen brauchen zum Schlafen frische Luft, und Kocher und Heizgeräte verbrauchen sie.',
	'A fan that draws air out pulls fumes back down a flue: open a window before the fan while anything burns.':
		'Ein Lüfter, der Luft absaugt, zieht Abgase durch das Abgasrohr zurück: ein Fenster öffnen, bevor der Lüfter läuft, solange etwas brennt.',
	'size of the van': 'Größe des Fahrzeugs',
	wheelbase: 'Radstand',
	'the usual roof of a camper van; the safe side': 'das übliche Dach eines Campers; die sichere Seite',
	'inside length': 'Innenlänge',
	'inside width': 'Innenbreite',
	'inside height': 'Innenhöhe',
	'insulation of the walls': 'Dämmung der Wände',
	'what most fitted vans get, or none where it is said so (practice); name yours':
		'was die meisten ausgebauten Fahrzeuge haben, oder keine, wo es so gesagt wird (Praxis); die eigene angeben',
	'insulation of the roof': 'Dämmung des Dachs',
	'as the walls': 'wie die Wände',
	'insulation of the floor': 'Dämmung des Bodens',
	'a thin board under the floor, never more than the walls (practice)':
		'eine dünne Platte unter dem Boden, nie mehr als an den Wänden (Praxis)',
	'insulation material': 'Dämmstoff',
	'the safe side: the poorest of the usual materials, 0.045 W/mK; name yours':
		'die sichere Seite: der schlechteste der üblichen Stoffe, 0.045 W/mK; den eigenen angeben',
	'insulation over the ribs': 'Dämmung über den Spanten',
	'the safe side: nothing said of covered ribs':
		'die sichere Seite: von überdeckten Spanten wurde nichts gesagt',
	'share of the shell over ribs': 'Anteil der Hülle über Spanten',
	'ribs and frames of a panel van (practice)': 'Spanten und Rahmen eines Kastenwagens (Praxis)',
	'windows of the living space': 'Fenster des Wohnraums',
	'two side windows and a roof hatch (practice)': 'zwei Seitenfenster und eine Dachhaube (Praxis)',
	'single glass': 'Einfachglas',
	'double acrylic': 'doppeltes Acrylglas',
	'kind of windows': 'Art der Fenster',
	'the safe side: one pane of glass': 'die sichere Seite: eine Glasscheibe',
	'insulated window covers': 'gedämmte Fensterabdeckungen',
	'the safe side: bare glass': 'die sichere Seite: unbedecktes Glas',
	'cab closed off': 'Fahrerhaus abgetrennt',
	'the safe side: the cab is open to the living space':
		'die sichere Seite: das Fahrerhaus ist zum Wohnraum offen',
	'How big is the van: short, medium, long or extra-long wheelbase (or its inside length)?':
		'Wie groß ist das Fahrzeug: kurzer, mittlerer, langer oder extralanger Radstand (oder seine Innenlänge)?',
	'typical of the size class (practice); measure yours':
		'typisch für diese Größe (Praxis); selbst nachmessen',
};
