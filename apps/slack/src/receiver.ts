/** Signed requests over HTTP. */

import type { IncomingMessage } from 'node:http';
import { HTTPReceiver, type HTTPReceiverOptions } from '@slack/bolt';
import { TIMESTAMP_TOLERANCE_S } from './limits.js';

/**
 * The library's receiver checks the signature and refuses requests older than five minutes. It accepts any time in
 * the future, with which a request once seen could be kept and sent again later: here that is refused as well.
 */
export class SignedReceiver extends HTTPReceiver {
	constructor(options: HTTPReceiverOptions, nowMs: () => number = Date.now) {
		super(options);
		const verified = this.requestListener;
		this.requestListener = (request, response) => {
			if (request.method === 'POST' && isFromTheFuture(request, nowMs())) {
				options.logger?.warn('Refused a request whose timestamp lies in the future');
				response.writeHead(401).end();
				return;
			}
			verified(request, response);
		};
	}
}

function isFromTheFuture(request: IncomingMessage, nowMs: number): boolean {
	const timestampS = Number(request.headers['x-slack-request-timestamp']);
	// A missing or unreadable time is left to the check of the signature, which it cannot pass.
	return timestampS - nowMs / 1000 > TIMESTAMP_TOLERANCE_S;
}
