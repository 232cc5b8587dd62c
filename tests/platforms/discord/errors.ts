/** Answers of refusal, by the codes of discord-api-docs `topics/opcodes-and-status-codes.mdx`. */

import type { Answer } from '../common/http.js';

const refusal = (status: number, code: number, message: string): Answer => ({
	status,
	body: { message, code },
});

export const refusals = {
	unauthorized: refusal(401, 0, '401: Unauthorized'),
	notFound: refusal(404, 0, '404: Not Found'),
	unknownChannel: refusal(404, 10003, 'Unknown Channel'),
	unknownMessage: refusal(404, 10008, 'Unknown Message'),
	unknownWebhook: refusal(404, 10015, 'Unknown Webhook'),
	unknownInteraction: refusal(404, 10062, 'Unknown interaction'),
	tooLarge: refusal(413, 40005, 'Request entity too large'),
	alreadyAcknowledged: refusal(400, 40060, 'Interaction has already been acknowledged.'),
	missingAccess: refusal(403, 50001, 'Missing Access'),
	cannotEditOther: refusal(403, 50005, 'Cannot edit a message authored by another user'),
	emptyMessage: refusal(400, 50006, 'Cannot send an empty message'),
	missingPermissions: refusal(403, 50013, 'Missing Permissions'),
	invalidWebhookToken: refusal(401, 50027, 'Invalid Webhook Token'),
	threadArchived: refusal(400, 50083, 'Thread is archived'),
	invalidForm: (body: unknown): Answer => ({ status: 400, body }),
} as const;
