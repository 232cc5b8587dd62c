/** The standing cautions of structure and shop work. */
export const cautionJoints =
	'Joints usually give before members: screws, rivet nuts, welds and the wall they sit in need their own check.';
export const cautionLifting =
	'This is for fixed furniture and racks. Lifting gear, hoists, jacks and anything over people are certified work.';
export const cautionMoving =
	'Nobody lies or sits on it while the van moves; what it carries is held against braking by itself.';
export const cautionGasSpring =
	'A gas spring holds pressure even when worn out: never open, heat, drill or clamp it by the rod. Prop the lid before you unhook one.';
export const cautionLid =
	'Prop the lid while you work under it, and keep hands off the hinge side; a second spring on the other side keeps it from twisting.';
export const cautionInflating =
	'Stand beside the tread, clear of the sidewall, use a clip-on chuck with a gauge, and stop at once at a bulge or a crackle. A tire run flat or far down is looked at by a tire shop before it is filled.';
export const cautionSidewall = "Never go above the pressure on the sidewall or the rim's limit.";
export const cautionHotPump = 'Pump and hose get hot enough to burn; let the pump rest as its maker says.';
