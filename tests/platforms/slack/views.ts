/**
 * Modals and Home tabs (docs.slack.dev/reference/methods/views.open and its relatives). A `trigger_id` opens one
 * modal and lives three seconds; that life and the three error codes about it are from memory.
 */

import type { JsonObject } from '../common/json.js';
import { judgeView, type Verdict } from './limits.js';

const TRIGGER_LIFETIME_MS = 3000;

export interface OpenView {
	id: string;
	/** the view as the platform keeps it: with ids for blocks that had none */
	view: JsonObject;
	readonly user: string;
	open: boolean;
	hash: string;
}

interface Trigger {
	readonly user: string;
	readonly issuedMs: number;
	used: boolean;
}

type Outcome = { readonly error: string; readonly verdict?: Verdict } | { readonly opened: OpenView };

export class Views {
	readonly modals: OpenView[] = [];
	/** user -> Home tab */
	readonly homes = new Map<string, JsonObject>();
	private readonly triggers = new Map<string, Trigger>();
	private counter = 0;

	constructor(private readonly nowMs: () => number) {}

	issueTrigger(user: string): string {
		const id = `${++this.counter}.7000.${this.counter.toString(16).padStart(8, '0')}`;
		this.triggers.set(id, { user, issuedMs: this.nowMs(), used: false });
		return id;
	}

	private redeem(triggerId: string): { error: string } | { user: string } {
		const trigger = this.triggers.get(triggerId);
		if (!trigger) return { error: 'invalid_trigger_id' };
		if (trigger.used) return { error: 'exchanged_trigger_id' };
		if (this.nowMs() - trigger.issuedMs > TRIGGER_LIFETIME_MS) return { error: 'expired_trigger_id' };
		trigger.used = true;
		return { user: trigger.user };
	}

	private keep(view: JsonObject, id: string): JsonObject {
		const blocks = Array.isArray(view.blocks) ? view.blocks : [];
		const named = blocks.map((block: JsonObject, at) => ({ block_id: `auto${at}`, ...block }));
		return { id, state: { values: {} }, private_metadata: '', callback_id: '', ...view, blocks: named };
	}

	open(triggerId: string, view: JsonObject): Outcome {
		const verdict = judgeView(view, 'modal');
		if (verdict.error) return { error: verdict.error, verdict };
		const redeemed = this.redeem(triggerId);
		if ('error' in redeemed) return redeemed;
		const id = `V${String(++this.counter).padStart(4, '0')}`;
		const opened: OpenView = {
			id,
			view: this.keep(view, id),
			user: redeemed.user,
			open: true,
			hash: `h${this.counter}`,
		};
		this.modals.push(opened);
		return { opened };
	}

	update(viewId: string, hash: string | undefined, view: JsonObject): Outcome {
		const opened = this.modals.find((one) => one.id === viewId);
		if (!opened) return { error: 'not_found' };
		if (hash !== undefined && hash !== opened.hash) return { error: 'hash_conflict' };
		const verdict = judgeView(view, 'modal');
		if (verdict.error) return { error: verdict.error, verdict };
		opened.view = this.keep(view, viewId);
		opened.hash = `h${++this.counter}`;
		return { opened };
	}

	publish(user: string, view: JsonObject): { verdict: Verdict; id: string } {
		const verdict = judgeView(view, 'home');
		const id = `VH${user}`;
		if (!verdict.error) this.homes.set(user, this.keep(view, id));
		return { verdict, id };
	}

	/** The newest modal that is open before this person. */
	current(user: string): OpenView | undefined {
		return this.modals.findLast((one) => one.user === user && one.open);
	}
}
