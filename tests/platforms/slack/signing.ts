/**
 * Request signatures, version v0: HMAC-SHA256 with the app's signing secret over `v0:TIMESTAMP:RAW BODY`, in
 * hexadecimal, in `X-Slack-Signature`; the time in seconds in `X-Slack-Request-Timestamp`. Receivers refuse a
 * time more than five minutes off (docs.slack.dev/authentication/verifying-requests-from-slack).
 */

import { createHmac } from 'node:crypto';

export interface SigningOptions {
	/** how the signature is spoiled; the right one when absent */
	readonly signature?: 'wrong-secret' | 'missing' | 'unknown-version' | 'garbage' | 'of-other-body';
	/** shifts the timestamp (which is signed as shifted) [s] */
	readonly timestampOffsetS?: number;
}

export function signatureHeaders(
	secret: string,
	body: string,
	nowMs: number,
	{ signature, timestampOffsetS = 0 }: SigningOptions = {},
): Record<string, string> {
	const timestamp = String(Math.floor(nowMs / 1000) + timestampOffsetS);
	const key = signature === 'wrong-secret' ? `${secret}x` : secret;
	const signed = signature === 'of-other-body' ? `${body} ` : body;
	const digest = createHmac('sha256', key).update(`v0:${timestamp}:${signed}`).digest('hex');
	const headers: Record<string, string> = { 'x-slack-request-timestamp': timestamp };
	if (signature === 'garbage') headers['x-slack-signature'] = 'v0=zz';
	else if (signature === 'unknown-version') headers['x-slack-signature'] = `v9=${digest}`;
	else if (signature !== 'missing') headers['x-slack-signature'] = `v0=${digest}`;
	return headers;
}
