/** Words as they are cut short on a phone, with the word they stand for. Where a word is known as it is, it stays. */
const short: Readonly<Record<string, string>> = {
	inv: 'inverter',
	invs: 'inverters',
	invtr: 'inverter',
	bat: 'battery',
	bats: 'batteries',
	batt: 'battery',
	batts: 'batteries',
	ckt: 'circuit',
	brkr: 'breaker',
	brkrs: 'breakers',
	bkr: 'breaker',
	micro: 'microwave',
	chgr: 'charger',
	chrgr: 'charger',
	compu: 'laptop',
	wr: 'wechselrichter',
	akkus: 'batterien',
	sich: 'sicherung',
};

/** The word meant by one that was cut short, or the word itself. */
export function lengthened(word: string): string {
	return Object.hasOwn(short, word) ? (short[word] as string) : word;
}
