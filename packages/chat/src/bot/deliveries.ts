/**
 * Which deliveries this process is answering or has answered. The platform may deliver the same thing again while
 * the first is still being worked on, marked as a retry or not. The log and the outbox keep answers apart across
 * processes; this keeps them apart where nothing is logged and while the log does not answer.
 */
type State = 'working' | 'shown' | 'unshown';

/** enough for an hour of a busy platform: one publishes a ceiling of 30,000 events an hour for a workspace */
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
