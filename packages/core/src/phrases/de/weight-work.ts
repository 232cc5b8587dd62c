import type { Phrasebook } from '../phrasebook.js';

export const weightWork: Phrasebook = {
	'A sum is no scale: weigh the finished van with full tanks and people aboard, each axle and each side, before it goes out.':
		'Eine Rechnung ist keine Waage: das fertige Fahrzeug mit vollen Tanks und Personen an Bord wiegen, jede Achse und jede Seite, bevor es hinausgeht.',
	'An overloaded axle or tire fails without warning. Ratings on the door label bind; stiffer springs do not raise them.':
		'Eine überladene Achse oder ein überladener Reifen versagt ohne Warnung. Die Werte auf dem Türschild sind verbindlich; härtere Federn erhöhen sie nicht.',
	"The tire maker's load and inflation table and the door label decide; never go below the label's pressure.":
		'Die Last- und Drucktabelle des Reifenherstellers und das Türschild entscheiden; nie unter den Druck des Schilds gehen.',
	"Stand beside the tread, not before the sidewall, while you inflate; never go above the pressure on the sidewall or the rim's limit.":
		'Beim Füllen neben der Lauffläche stehen, nicht vor der Flanke; nie über den Druck auf der Flanke oder die Grenze der Felge gehen.',
	'Set and check pressure cold, after three hours at rest.':
		'Den Druck kalt einstellen und prüfen, nach drei Stunden Stand.',
	'In a crash everything aboard becomes a missile. This sizes fixings of equipment only; seats, belts and their anchorages are certified parts for licensed engineering.':
		'Beim Aufprall wird alles an Bord zum Geschoss. Dies bemisst nur Befestigungen von Ausrüstung; Sitze, Gurte und ihre Verankerungen sind zertifizierte Teile und Sache zugelassener Ingenieure.',
	'A bolt is no better than what it holds: fix into ribs or plates, not bare skin, and have unusual mountings checked by a structural engineer.':
		'Eine Schraube ist nicht besser als das, worin sie hält: an Spanten oder Platten befestigen, nicht am bloßen Blech, und ungewöhnliche Befestigungen von einem Statiker prüfen lassen.',
};
