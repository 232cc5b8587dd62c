/** How often a message that says how far work has come is brought up to date, and how long work takes before it is written [ms]. */
const PROGRESS_EVERY_MS = 2000;

/**
 * Words on how far long work has come, brought to people now and then: the newest words, one call at a time, and none
 * for work that is done before the first would be due.
 */
export class ProgressNews {
	#text: string | null = null;
	#timer: NodeJS.Timeout | null = null;
	#saying: Promise<void> | null = null;
	#isOver = false;

	/**
	 * @param say brings the words to the people
	 * @param failed hears why they did not get there; nothing more is said then
	 */
	constructor(
		private readonly say: (text: string) => Promise<void>,
		private readonly failed: (error: unknown) => void,
		private readonly everyMs = PROGRESS_EVERY_MS,
	) {}

	readonly hear = (text: string): void => {
		this.#text = text;
		this.#wait();
	};

	/** Says no more; resolves when nothing is on its way. */
	async end(): Promise<void> {
		this.#isOver = true;
		if (this.#timer !== null) clearTimeout(this.#timer);
		await this.#saying;
	}

	#wait(): void {
		if (this.#isOver || this.#timer !== null || this.#saying !== null) return;
		this.#timer = setTimeout(() => {
			this.#timer = null;
			this.#saying = this.#sayNewest().finally(() => {
				this.#saying = null;
				if (this.#text !== null) this.#wait();
			});
		}, this.everyMs);
	}

	async #sayNewest(): Promise<void> {
		const text = this.#text;
		this.#text = null;
		try {
			if (text !== null) await this.say(text);
		} catch (error) {
			this.#isOver = true;
			this.failed(error);
		}
	}
}
