/**
 * Which deliveries this process is answering or has answered. The platform may deliver the same thing again while
 * the first is still being worked on, marked as a retry or not. The log keeps answers apart for good; this keeps them
 * apart where nothing is logged, and knows of answers that were kept but could not be shown.
 */
type State = 'working' | 'shown' | 'unshown';

/** deliveries of some days in a busy shop */
const REMEMBERED_MAX = 50_000;

export class Deliveries {
	readonly #states = new Map<string, State>();

	/**
	 * Takes a delivery on.
	 * @returns `new`; `unshown` when it was answered before but the answer never reached the platform; or `done`
	 */
	begin(id: string): 'new' | 'unshown' | 'done' {
		const before = this.#states.get(id);
		if (before === 'working' || before === 'shown') return 'done';
		this.#set(id, 'working');
		return before === 'unshown' ? 'unshown' : 'new';
	}

	end(id: string, wasShown: boolean): void {
		this.#set(id, wasShown ? 'shown' : 'unshown');
	}

	#set(id: string, state: State): void {
		this.#states.delete(id);
		this.#states.set(id, state);
		if (this.#states.size <= REMEMBERED_MAX) return;
		const [oldest] = this.#states.keys();
		if (oldest !== undefined) this.#states.delete(oldest);
	}
}
