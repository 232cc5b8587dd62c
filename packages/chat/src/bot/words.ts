/** What the bots say by themselves, the same whatever was asked: sentences of the phrasebooks. */

import { type Language, type Say, sayFor } from '@lugbook/core';
import { books } from '../phrases/books.js';

export const TOO_FAST = 'That is faster than I can follow. Give me a moment, then ask again.';
export const TOO_LONG =
	'That message is too long for me. Send the question alone, or the description in parts.';
export const FAILED = 'Something failed on my side, and I gave no answer. Please ask again.';
export const SHARED_ALREADY = 'That stands in the channel already.';
export const NOT_KEPT_UNSHOWN =
	'Something failed on my side: I could not show the answer. I will try again by myself.';
export const UNKNOWN_BUTTON = 'That button leads nowhere any more. Please type it instead.';
export const PART_UNSHOWN = 'Part of the answer could not be shown: ask for it again by its number.';
export const SENT_AGAIN = 'Sent again, as it was not certain that it had arrived: you may have it twice.';
export const IN_THE_FILE = 'The whole answer is in the file below.';
export const MORE_THAN_FITS = 'There is more than fits here: ask for less at once.';
export const FILE_FOR_ONE = 'The file is for you alone: ask me in a direct message, and I send it there.';
export const CHANGE_AN_ASSUMPTION = 'Change an assumption';
export const NOTICE_OF_WHAT_IS_KEPT =
	'I keep what is addressed to me here, with the name of who asked, in the log of this shop. I read nothing else. Your name and words can be erased on request; the calculation stays.';

/** Nothing in these is measured: the units say nothing here. */
const sayIn = (language: Language): Say => sayFor({ language, units: 'metric' }, books[language]);

/** A sentence without gaps in another language; words that the phrasebook has not stay as they are. */
export function inLanguage(language: Language, sentence: string): string {
	return sayIn(language)([sentence]);
}

/** What the bot's own page says around the answers it names. */
export function pageWords(language: Language) {
	const say = sayIn(language);
	return {
		welcome: say`Welcome`,
		howToBegin: say`Nothing has been asked here yet. Invite me into the channel of a van with /invite @Lugbook, name the van with "/build use heron", then ask as you would ask somebody: "/ask 40A 12V 15 ft". A mention works as well, and so does a message to me alone.`,
		vans: say`Vans`,
		noVans: say`No channel has named its van yet: "/build use heron" does.`,
		/** between a van and its channel */
		inChannel: say` in `,
		also: (builds: string) => say`Also: ${builds}`,
	};
}

/** Title of a form with one line of words about an answer, and what stands above the line. */
export function aboutAnswer(
	language: Language,
	form: 'reject' | 'comment' | 'save',
	entry: number,
): { readonly title: string; readonly label: string } {
	const say = sayIn(language);
	// The number is written as people type it.
	const number = String(entry);
	switch (form) {
		case 'reject':
			return { title: say`Reject No. ${number}`, label: say`Why is it rejected?` };
		case 'comment':
			return { title: say`A word on No. ${number}`, label: say`What is to be said?` };
		case 'save':
			return { title: say`No. ${number} to a build`, label: say`Name of the build` };
	}
}

/** @param entry where the answer is kept that could not be shown */
export function keptUnshown(language: Language, entry: number): string {
	const say = sayIn(language);
	// The number is written as people type it after the command.
	const number = String(entry);
	return say`Something failed on my side: the answer is kept as No. ${number}, but I could not show it. I will try again by myself; "/log resend ${number}" shows it at once.`;
}

/** @param why the platform's name for it */
export function fileNotSent(language: Language, name: string, why: string): string {
	const say = sayIn(language);
	return say`${name} could not be sent (${why}): the app needs the scope files:write and has to be in the channel.`;
}

export function fileTooLarge(language: Language, name: string): string {
	const say = sayIn(language);
	return say`${name} is larger than may be sent here; "pnpm export" writes it to a disk.`;
}
