/**
 * Delivery by signed HTTP POST to the app's request URL: slash commands as a form, interactions as a form with
 * one field `payload`, events as JSON (docs.slack.dev/apis/events-api/using-http-request-urls). The platform
 * waits three seconds for the acknowledgement (docs.slack.dev/interactivity/handling-user-interaction).
 */

import { request } from 'node:http';
import { parseJson } from '../common/json.js';
import type { Delivery } from './payloads.js';
import { type SigningOptions, signatureHeaders } from './signing.js';

export const ACK_WITHIN_MS = 3000;

export interface DeliveryOptions extends SigningOptions {
	/** marks the delivery as the n-th repetition (`X-Slack-Retry-Num`, or `retry_attempt` on a socket) */
	readonly retryNum?: number;
	readonly retryReason?: string;
}

export interface DeliveryResult {
	readonly delivery: Delivery;
	/** HTTP status; 200 for an acknowledgement on a socket; null when none came in time */
	readonly ackStatus: number | null;
	/** the parsed JSON, the text, or undefined for an empty body */
	readonly ackBody: unknown;
	readonly ackMs: number;
	readonly ackHeaders: Record<string, string>;
	readonly failure?: 'timeout' | 'connection' | 'no-connection';
}

function encode({ type, payload }: Delivery): { contentType: string; body: string } {
	if (type === 'events_api') return { contentType: 'application/json', body: JSON.stringify(payload) };
	const form = new URLSearchParams();
	if (type === 'slash_commands')
		for (const [name, value] of Object.entries(payload)) form.set(name, String(value));
	else form.set('payload', JSON.stringify(payload));
	return { contentType: 'application/x-www-form-urlencoded', body: form.toString() };
}

export interface RawAnswer {
	readonly status: number | null;
	readonly text: string;
	readonly headers: Record<string, string>;
	readonly ms: number;
	readonly failure?: 'timeout' | 'connection';
}

/** Posts anything at all, so that a test can also send what the platform never would. */
export function postRaw(
	url: string,
	body: string,
	headers: Record<string, string>,
	timeoutMs = ACK_WITHIN_MS,
): Promise<RawAnswer> {
	const startedMs = performance.now();
	return new Promise((resolve) => {
		const done = (answer: Pick<RawAnswer, 'status' | 'text' | 'headers' | 'failure'>) =>
			resolve({ ...answer, ms: performance.now() - startedMs });
		const outgoing = request(
			url,
			{ method: 'POST', agent: false, headers: { ...headers, 'content-length': Buffer.byteLength(body) } },
			(incoming) => {
				const chunks: Buffer[] = [];
				incoming.on('data', (chunk: Buffer) => chunks.push(chunk));
				incoming.on('end', () => {
					const answered = Object.entries(incoming.headers).map(([name, value]) => [name, String(value)]);
					const text = Buffer.concat(chunks).toString('utf8');
					done({ status: incoming.statusCode ?? null, text, headers: Object.fromEntries(answered) });
				});
			},
		);
		const timer = setTimeout(() => {
			done({ status: null, text: '', headers: {}, failure: 'timeout' });
			outgoing.destroy();
		}, timeoutMs);
		outgoing.on('close', () => clearTimeout(timer));
		outgoing.on('error', () => done({ status: null, text: '', headers: {}, failure: 'connection' }));
		outgoing.end(body);
	});
}

export class HttpDelivery {
	constructor(
		readonly requestUrl: string,
		private readonly signingSecret: string,
		private readonly nowMs: () => number,
	) {}

	async deliver(delivery: Delivery, options: DeliveryOptions = {}): Promise<DeliveryResult> {
		const { contentType, body } = encode(delivery);
		const headers: Record<string, string> = {
			'content-type': contentType,
			...signatureHeaders(this.signingSecret, body, this.nowMs(), options),
		};
		if (options.retryNum !== undefined) {
			headers['x-slack-retry-num'] = String(options.retryNum);
			headers['x-slack-retry-reason'] = options.retryReason ?? 'http_timeout';
		}
		const answer = await postRaw(this.requestUrl, body, headers);
		return {
			delivery,
			ackStatus: answer.status,
			ackBody: answer.text === '' ? undefined : (parseJson(answer.text) ?? answer.text),
			ackMs: answer.ms,
			ackHeaders: answer.headers,
			...(answer.failure === undefined ? {} : { failure: answer.failure }),
		};
	}
}
