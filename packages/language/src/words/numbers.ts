const numbers: Readonly<Record<string, number>> = {
	one: 1,
	two: 2,
	three: 3,
	four: 4,
	five: 5,
	six: 6,
	seven: 7,
	eight: 8,
	nine: 9,
	ten: 10,
	eleven: 11,
	twelve: 12,
	twenty: 20,
	thirty: 30,
	forty: 40,
	fifty: 50,
	sixty: 60,
	hundred: 100,
	couple: 2,
	pair: 2,
	uno: 1,
	una: 1,
	dos: 2,
	tres: 3,
	cuatro: 4,
	cinco: 5,
	seis: 6,
	siete: 7,
	ocho: 8,
	nueve: 9,
	diez: 10,
	zwei: 2,
	drei: 3,
	vier: 4,
	fünf: 5,
	sechs: 6,
	sieben: 7,
	acht: 8,
	neun: 9,
	zehn: 10,
};

/** The value of a number written as a word, or null. "one" before "way" or "size" is no number: the caller's phrases come first. */
export function spelledNumber(word: string): number | null {
	return Object.hasOwn(numbers, word) ? (numbers[word] as number) : null;
}

const tens = 'twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety';
const ones = 'one|two|three|four|five|six|seven|eight|nine';
/** "two hundred", "a hundred and fifty", "twenty five": a number of more than one word. */
const compound = new RegExp(
	`^(?:(${ones}|a)[ -]hundred(?:(?: and)? (?:(${tens})(?:[ -](${ones}))?|(${ones}|ten)))?|(${tens})[ -](${ones}))(?![\\p{L}])`,
	'u',
);
const tensValue: Readonly<Record<string, number>> = {
	twenty: 20,
	thirty: 30,
	forty: 40,
	fifty: 50,
	sixty: 60,
	seventy: 70,
	eighty: 80,
	ninety: 90,
};

/** The value and length of a number written in several words at the beginning of a text, or null. */
export function spelledCompound(text: string): { readonly value: number; readonly length: number } | null {
	const match = compound.exec(text);
	if (match === null) return null;
	const [whole, hundreds, ten, one, small, aloneTen, aloneOne] = match;
	const of = (word: string | undefined) =>
		word === undefined ? 0 : (tensValue[word] ?? (word === 'a' ? 1 : (numbers[word] ?? 0)));
	const value = 100 * of(hundreds) + of(ten) + of(one) + of(small) + of(aloneTen) + of(aloneOne);
	return { value, length: whole.length };
}
