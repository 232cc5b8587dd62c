/**
 * Over a socket the library acknowledges an event before anybody has looked at it, and a command as soon as its
 * listener says so: a process that dies right then has lost it for good. Here the acknowledgement waits until the
 * listener is through, which is when the message is noted, as `processBeforeResponse` makes it over HTTP.
 */

import { App, type ReceiverEvent } from '@slack/bolt';

/** The platform waits three seconds; it gets its acknowledgement by then also while something hangs [ms]. */
const PATIENCE_MS = 2500;

export class LateAckApp extends App {
	override async processEvent(event: ReceiverEvent): Promise<void> {
		let isSent = false;
		let response: { readonly value: unknown } | null = null;
		const send = async () => {
			if (isSent || response === null) return;
			isSent = true;
			await event.ack(response.value);
		};
		const timer = setTimeout(() => void send().catch(() => undefined), PATIENCE_MS);
		try {
			await super.processEvent({
				...event,
				ack: async (value?: unknown) => {
					response = { value };
				},
			});
		} finally {
			clearTimeout(timer);
			await send();
		}
	}
}
