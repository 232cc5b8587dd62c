/**
 * Faults a test orders from a stand-in server: what happens to the next N requests of one route.
 *
 * `drop-request` and `drop-answer` differ in what the server did: the first cuts the connection before
 * anything happened, the second does what was asked and cuts the connection in the middle of the answer, so
 * that the client can't know. A client that repeats must not do harm in either case. After `late` the connection is cut
 * at once and what was asked is done when `until` resolves, as behind a slow queue.
 */
export type Fault =
	| { readonly kind: 'rate-limit'; readonly retryAfterS: number; readonly global?: boolean }
	| { readonly kind: 'status'; readonly status: number; readonly body?: string }
	| { readonly kind: 'error'; readonly error: string }
	| { readonly kind: 'slow'; readonly delayMs: number }
	| { readonly kind: 'drop-request' }
	| { readonly kind: 'drop-answer' }
	| { readonly kind: 'late'; readonly until: Promise<void> }
	| { readonly kind: 'malformed-answer' };

interface Order {
	readonly route: string;
	readonly fault: Fault;
	left: number;
}

export class Faults {
	private orders: Order[] = [];

	/** @param route the route's name, or `*` for every route */
	order(route: string, fault: Fault, times = 1): void {
		this.orders.push({ route, fault, left: times });
	}

	/** Takes the first fault ordered for this route, counting it off. */
	take(route: string): Fault | undefined {
		const order = this.orders.find((one) => one.route === route || one.route === '*');
		if (!order) return undefined;
		order.left -= 1;
		if (order.left <= 0) this.orders = this.orders.filter((one) => one !== order);
		return order.fault;
	}

	clear(): void {
		this.orders = [];
	}

	/** Faults ordered and not yet used, so a test can see that its fault did happen. */
	get pending(): number {
		return this.orders.reduce((sum, one) => sum + one.left, 0);
	}
}
