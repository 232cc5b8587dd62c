/** How far a build is checked: what stands in which state, who signed what, and what is still to be confirmed. */

import type { SheetState, Signer, Signing } from '@lugbook/report';
import { counts, type Reviewed } from './answers.js';

type Open<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

/** Gathers it from the answers, oldest first. */
export class SigningSoFar {
	readonly #answers: Partial<Record<SheetState, number[]>> = {};
	/** by name; those whose names were erased stand together */
	readonly #signers = new Map<string, Open<Signer>>();
	#values = 0;
	#unconfirmed = 0;

	add(reviewed: Reviewed): void {
		const { entry, exchange, review } = reviewed;
		const { state, signatures } = review;
		const same = this.#answers[state];
		if (same === undefined) this.#answers[state] = [entry.number];
		else same.push(entry.number);
		const signature = state === 'signed' ? signatures.findLast(({ act }) => act === 'signed') : undefined;
		if (signature !== undefined) {
			const { name, at, ownQuestion } = signature;
			const own = ownQuestion ? 1 : 0;
			const known = this.#signers.get(name ?? '');
			if (known === undefined)
				this.#signers.set(name ?? '', { name, answers: [entry.number], first: at, last: at, own });
			else {
				known.answers.push(entry.number);
				// Written alike, instants sort as texts.
				if (at < known.first) known.first = at;
				if (at > known.last) known.last = at;
				known.own += own;
			}
		}
		const open = counts(reviewed) ? exchange.answer.assumed.filter(({ confirm }) => confirm).length : 0;
		this.#values += open;
		if (open > 0) this.#unconfirmed += 1;
	}

	signing(): Omit<Signing, 'whole'> {
		return {
			answers: this.#answers,
			signers: [...this.#signers.values()],
			toConfirm: { values: this.#values, answers: this.#unconfirmed },
		};
	}
}
