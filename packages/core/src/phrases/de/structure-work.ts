import type { Phrasebook } from '../phrasebook.js';

export const structureWork: Phrasebook = {
	'Joints usually give before members: screws, rivet nuts, welds and the wall they sit in need their own check.':
		'Verbindungen versagen meist vor den Trägern: Schrauben, Einnietmuttern, Schweißnähte und die Wand, in der sie sitzen, brauchen ihren eigenen Nachweis.',
	'This is for fixed furniture and racks. Lifting gear, hoists, jacks and anything over people are certified work.':
		'Das gilt für feste Möbel und Regale. Hebezeug, Winden, Wagenheber und alles über Menschen sind zertifizierte Arbeit.',
	'Nobody lies or sits on it while the van moves; what it carries is held against braking by itself.':
		'Niemand liegt oder sitzt darauf, während das Fahrzeug fährt; was es trägt, ist für sich gegen Bremsen gesichert.',
	'A gas spring holds pressure even when worn out: never open, heat, drill or clamp it by the rod. Prop the lid before you unhook one.':
		'Eine Gasdruckfeder steht auch verbraucht unter Druck: nie öffnen, erhitzen, anbohren oder an der Kolbenstange einspannen. Die Klappe abstützen, bevor eine ausgehängt wird.',
	'Prop the lid while you work under it, and keep hands off the hinge side; a second spring on the other side keeps it from twisting.':
		'Die Klappe abstützen, während darunter gearbeitet wird, und die Hände von der Scharnierseite fernhalten; eine zweite Feder auf der anderen Seite verhindert das Verwinden.',
	'Stand beside the tread, clear of the sidewall, use a clip-on chuck with a gauge, and stop at once at a bulge or a crackle. A tire run flat or far down is looked at by a tire shop before it is filled.':
		'Neben der Lauffläche stehen, nicht vor der Flanke, ein Klemmfüllstück mit Manometer verwenden und bei einer Beule oder einem Knistern sofort aufhören. Einen platt oder mit sehr wenig Luft gefahrenen Reifen prüft eine Reifenwerkstatt, bevor er befüllt wird.',
	"Never go above the pressure on the sidewall or the rim's limit.":
		'Nie über den Druck auf der Flanke oder die Grenze der Felge gehen.',
	'Pump and hose get hot enough to burn; let the pump rest as its maker says.':
		'Kompressor und Schlauch werden so heiß, dass man sich verbrennt; den Kompressor ruhen lassen, wie es der Hersteller sagt.',
	'{0} solid': '{0} massiv',
	'{0} tube': 'Rohr {0}',
	'{0} angle': 'Winkel {0}',
	'{0} round bar': 'Rundstab {0}',
	'{0} round tube': 'Rundrohr {0}',
};
