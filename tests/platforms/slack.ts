/**
 * A stand-in for the Slack platform on loopback: Web API, signed HTTP delivery, Socket Mode, and a model of what
 * people see. It refuses what the platform refuses, and keeps every broken limit in `violations`.
 *
 *     const slack = await startSlackStandIn();
 *     // start the bot with slack.apiUrl, slack.botToken, slack.signingSecret (or slack.appToken)
 *     slack.deliverTo('http://127.0.0.1:PORT/slack/events');     // not needed for Socket Mode
 *     const { ackStatus, ackMs } = await slack.command('/ask', '40A 12V 15 ft');
 *     const answer = await slack.waitForMessage(/AWG/);
 *     await slack.close();
 */

import { type SlackOptions, SlackStandIn } from './slack/stand-in.js';

export { postRaw } from './slack/http-delivery.js';
export { readable } from './slack/model.js';
export { signatureHeaders } from './slack/signing.js';
export type { SlackStandIn } from './slack/stand-in.js';

export async function startSlackStandIn(options: SlackOptions = {}): Promise<SlackStandIn> {
	const standIn = new SlackStandIn(options);
	await standIn.listen();
	return standIn;
}
