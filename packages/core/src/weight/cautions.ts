/** The standing cautions of work on loads, tires and fixings. */
export const cautionScales =
	'A sum is no scale: weigh the finished van with full tanks and people aboard, each axle and each side, before it goes out.';
export const cautionAxle =
	'An overloaded axle or tire fails without warning. Ratings on the door label bind; stiffer springs do not raise them.';
export const cautionTireMaker =
	"The tire maker's load and inflation table and the door label decide; never go below the label's pressure.";
export const cautionTireBurst =
	"Stand beside the tread, not before the sidewall, while you inflate; never go above the pressure on the sidewall or the rim's limit.";
export const cautionCold = 'Set and check pressure cold, after three hours at rest.';
export const cautionCrash =
	'In a crash everything aboard becomes a missile. This sizes fixings of equipment only; seats, belts and their anchorages are certified parts for licensed engineering.';
export const cautionStructure =
	'A bolt is no better than what it holds: fix into ribs or plates, not bare skin, and have unusual mountings checked by a structural engineer.';
