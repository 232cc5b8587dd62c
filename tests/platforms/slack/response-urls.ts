/**
 * `response_url`: posts back to where a command or an interaction came from, up to 5 times within 30 minutes
 * (docs.slack.dev/interactivity/handling-user-interaction#message_responses). The codes `used_url` and
 * `expired_url` with status 404 are from memory; a refused message is answered as the page on incoming
 * webhooks says (status 400 and the code as text). What replaces or deletes the original means the message whose button
 * was pressed, and after a command what this address showed last (from memory); whoever sees it stays the
 * same.
 */

import type { Answer } from '../common/http.js';
import { arrayOf, isObject, type JsonObject, objectOf, stringOf } from '../common/json.js';
import { judgeMessage, type Verdict } from './limits.js';
import type { SlackMessage, Workspace } from './model.js';

const USES_MAX = 5;
const LIFETIME_MS = 30 * 60 * 1000;

interface Issued {
	readonly channel: string;
	readonly user: string;
	readonly isCommand: boolean;
	/** the message whose button was pressed, or the last one this address showed */
	source?: SlackMessage;
	readonly issuedMs: number;
	uses: number;
}

export class ResponseUrls {
	private readonly issued = new Map<string, Issued>();

	constructor(
		private readonly workspace: Workspace,
		private readonly botUserId: string,
		private readonly nowMs: () => number,
		private readonly judged: (verdict: Verdict, where: string, payload: JsonObject) => void,
	) {}

	/** @returns the path of a new response_url */
	issue(place: { channel: string; user: string; source?: SlackMessage }): string {
		const id = `r${this.issued.size + 1}`;
		const isCommand = place.source === undefined;
		this.issued.set(id, { ...place, isCommand, issuedMs: this.nowMs(), uses: 0 });
		return `/response/${id}`;
	}

	post(path: string, body: unknown): Answer {
		const place = this.issued.get(path.replace('/response/', ''));
		if (!place) return { status: 404, body: { ok: false, error: 'invalid_url' } };
		if (this.nowMs() - place.issuedMs > LIFETIME_MS)
			return { status: 404, body: { ok: false, error: 'expired_url' } };
		if (place.uses >= USES_MAX) return { status: 404, body: { ok: false, error: 'used_url' } };
		if (!isObject(body)) return { status: 400, body: 'invalid_payload' };
		place.uses += 1;
		if (body.delete_original === true) {
			if (place.source) place.source.deleted = true;
			return { status: 200, body: 'ok' };
		}
		const verdict = judgeMessage(body);
		this.judged(verdict, 'response_url', body);
		if (verdict.error) return { status: 400, body: verdict.error };
		this.show(place, body);
		return { status: 200, body: 'ok' };
	}

	private show(place: Issued, body: JsonObject): void {
		const text = stringOf(body.text);
		const blocks = arrayOf(body.blocks).map(objectOf);
		if (body.replace_original === true && place.source) {
			this.workspace.edit(place.source, text, blocks);
			return;
		}
		const shown = this.workspace.post({
			channel: place.channel,
			user: this.botUserId,
			fromBot: true,
			via: 'response_url',
			text,
			blocks,
			threadTs: typeof body.thread_ts === 'string' ? body.thread_ts : undefined,
			visibleTo: body.response_type === 'in_channel' ? undefined : place.user,
		});
		if (place.isCommand) place.source = shown;
	}
}
