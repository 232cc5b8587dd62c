import type { Phrasebook } from '../phrasebook.js';

export const shore: Phrasebook = {
	'shore inlet rating': 'Nennstrom der Einspeisung am Fahrzeug',
	'outlet rating': 'Nennstrom der Steckdose',
	'cord or adapter rating': 'Nennstrom von Kabel oder Adapter',
	'charging current of the charger': 'Ladestrom des Ladegeräts',
	'loads on the supply': 'Verbraucher am Anschluss',
	'supply voltage': 'Spannung des Anschlusses',
	'efficiency of the charger': 'Wirkungsgrad des Ladegeräts',
	'power factor of the charger': 'Leistungsfaktor des Ladegeräts',
	'household outlet': 'Haushaltssteckdose',
	'ground-fault protection present': 'Fehlerstromschutz vorhanden',
	'neutral joined to ground in the van': 'Neutralleiter im Fahrzeug mit Erde verbunden',
	'What is the supply rated: the outlet, pedestal or inlet, in amps?':
		'Für wie viel Ampere ist der Anschluss bemessen: Steckdose, Säule oder Einspeisung?',
	'The {0} runs from the bank; on shore it counts through the charger.':
		'{0}: läuft an der Batteriebank; am Landanschluss zählt es über das Ladegerät.',
	'cord or adapter made for less than the outlet':
		'Kabel oder Adapter für weniger als die Steckdose bemessen',
	'no protection against residual current': 'kein Schutz gegen Fehlerstrom',
	'Mains is 100 to 250 V; banks are 12, 24 or 48 V.':
		'Das Netz hat 100 bis 250 V; Batteriebänke haben 12, 24 oder 48 V.',
	'I read {0}, which is neither a mains nor a bank voltage.':
		'Ich lese {0}; das ist weder Netz- noch Batteriespannung.',
	'mains of the region': 'Netz der Region',
	'a rating as houses have; 80 % of it is used': 'ein Wert wie in Häusern; 80 % davon werden genutzt',
	'a supply made for vehicles': 'ein Anschluss für Fahrzeuge',
	'charging voltage': 'Ladespannung',
	'upper end for {0}, where the charger draws most': 'oberes Ende für {0}, wo das Ladegerät am meisten zieht',
	'usual for a charger of this size (practice)': 'üblich für ein Ladegerät dieser Größe (Praxis)',
	'a corrected charger; one without correction has about 0.7 and draws a quarter more (practice)':
		'ein Ladegerät mit Korrektur; eines ohne hat etwa 0.7 und zieht ein Viertel mehr (Praxis)',
	'charger at {0} A': 'Ladegerät mit {0} A',
	'limit of the supply': 'Grenze des Anschlusses',
	'for hours on end': 'über Stunden',
	'charger at full charging current': 'Ladegerät mit vollem Ladestrom',
	'to use for hours on end': 'über Stunden nutzbar',
	'power for hours on end': 'Leistung über Stunden',
	'draw of the charger at full current': 'Aufnahme des Ladegeräts bei vollem Strom',
	'smallest conductors of the supply cord': 'kleinste Leiter des Anschlusskabels',
	'protection of people': 'Schutz von Personen',
	'An adapter does not make the outlet larger: the {0} inlet gives {1} here, and the breaker in the van will not trip at that.':
		'Ein Adapter macht die Steckdose nicht größer: die Einspeisung mit {0} gibt hier {1}, und der Leitungsschutzschalter im Fahrzeug löst dabei nicht aus.',
	"The cord or adapter is made for {0}, but the breaker before it lets {1} through: it can burn. Use a cord of the outlet's rating.":
		'Kabel oder Adapter ist für {0} gemacht, aber der Leitungsschutzschalter davor lässt {1} durch: es kann brennen. Ein Kabel für den Nennstrom der Steckdose verwenden.',
	'The outlet is larger than the inlet: a main breaker of {0} must sit where the cord enters the van.':
		'Die Steckdose ist größer als die Einspeisung: wo das Kabel ins Fahrzeug kommt, muss ein Hauptschalter mit Überstromschutz für {0} sitzen.',
	'A 50 A supply of 120/240 V has two legs of 50 A; the sets here are for one leg. Spread the loads over both.':
		'Ein Anschluss mit 50 A und 120/240 V hat zwei Leiter zu je 50 A; die Gruppen hier gelten für einen. Die Verbraucher auf beide verteilen.',
	'Use one cord, no daisy chain, fully uncoiled; feel the plug after ten minutes: warm is a bad contact, stop.':
		'Ein einziges Kabel verwenden, keine Verkettung, ganz abgerollt; nach zehn Minuten den Stecker fühlen: warm heißt schlechter Kontakt, aufhören.',
	'Without it a fault can kill whoever touches the van: fit {0} before the supply is used.':
		'Ohne ihn kann ein Fehler töten, wer das Fahrzeug berührt: vor der Benutzung des Anschlusses einbauen: {0}.',
	'Nothing was said of protection against residual current; the van needs {0}.':
		'Von Schutz gegen Fehlerstrom wurde nichts gesagt; das Fahrzeug braucht: {0}.',
	'On shore power the neutral is joined to ground at the source only. A second bond in the van puts load current on the ground and the body: remove it, or switch it so that it is made only while the inverter feeds.':
		'Am Landanschluss ist der Neutralleiter nur an der Quelle mit Erde verbunden. Eine zweite Verbindung im Fahrzeug legt Laststrom auf Schutzleiter und Karosserie: entfernen oder so schalten, dass sie nur besteht, während der Wechselrichter speist.',
	'supply rating': 'Nennstrom des Anschlusses',
	'Unsafe as it stands: {0}': 'So nicht sicher: {0}',
	'Once that is put right: {0}. {1}': 'Wenn das behoben ist: {0}. {1}',
	'safety of the supply': 'Sicherheit des Anschlusses',
	'{0} to use on {1}: {2}': '{0} nutzbar an {1}: {2}',
	'80 % of the rating for what runs for hours. Name the loads to see what may run together.':
		'80 % des Nennstroms für das, was stundenlang läuft. Die Verbraucher angeben, um zu sehen, was zusammen laufen darf.',
	'all of it at once': 'alles zugleich',
	'The {0} may run: {1} on {2}': 'Darf laufen: {0} ({1} an {2})',
	'All of it may run together: {0} on {1}': 'Alles darf zusammen laufen: {0} an {1}',
	'What runs for hours counts 125 %; {0} may be used all the time.':
		'Was stundenlang läuft, zählt 125 %; {0} sind dauernd nutzbar.',
	'{0} leaves {1} for hours on end.': '{0} lässt {1} über Stunden.',
	'The {0} ({1}) is too much even alone.': 'Selbst allein zu viel: {0} ({1}).',
	'With {0} on, the charger must be off.': 'Läuft {0}, muss das Ladegerät aus sein.',
	'largest charger setting with nothing else on':
		'größte Einstellung des Ladegeräts, wenn sonst nichts an ist',
	'charging current': 'Ladestrom',
	'up to {0} alone': 'bis {0} allein',
	'Only the {0} fullest of {1} sets are shown; ask again with the loads that matter.':
		'Nur die {0} vollsten von {1} Gruppen sind gezeigt; mit den Verbrauchern, auf die es ankommt, noch einmal fragen.',
	'may run together': 'dürfen zusammen laufen',
	'charger setting with {0}': 'Einstellung des Ladegeräts mit {0}',
	'charger alone': 'Ladegerät allein',
	'set to {0} at most': 'auf höchstens {0} eingestellt',
	'charger setting with nothing else on': 'Einstellung des Ladegeräts, wenn sonst nichts an ist',
	'; charger off': '; Ladegerät aus',
	'; charger at its full {0}': '; Ladegerät mit vollen {0}',
	'; charger set to {0} at most': '; Ladegerät auf höchstens {0} eingestellt',
	'{0}, too much for {1} ({2} for hours)': '{0}, zu viel für {1} ({2} über Stunden)',
	'All of it at once is {0} on a supply of {1}: the breaker trips, or a poor outlet or cord overheats.':
		'Alles zugleich sind {0} an einem Anschluss mit {1}: der Leitungsschutzschalter löst aus, oder eine schlechte Steckdose oder ein schlechtes Kabel überhitzt.',
	'The {0} draws {1}, too much for this supply even alone: {2} is the most. Run it from the inverter, or at a lower setting if it has one.':
		'{0}: zieht {1}, zu viel für diesen Anschluss selbst allein: {2} ist das Höchste. Am Wechselrichter betreiben oder auf kleinerer Stufe, wenn es eine hat.',
	'up to {0} it may run alone': 'bis {0} darf es allein laufen',
	'switch off in this order': 'in dieser Folge abschalten',
	'{0} + charger': '{0} + Ladegerät',
	'{0} + charger at {1}': '{0} + Ladegerät mit {1}',
	'charger alone at {0}': 'Ladegerät allein mit {0}',
	'Nothing of it may run on {0}': 'Nichts davon darf an {0} laufen',
	'On {0} one at a time: {1}': 'An {0} immer nur eines: {1}',
	'On {0}: {1}': 'An {0}: {1}',
	'On {0}: {1} (+{2} more)': 'An {0}: {1} (+{2} weitere)',
	'Not all together on {0}: one of {1} sets at a time':
		'Nicht alles zusammen an {0}: immer nur eine von {1} Gruppen',
};
