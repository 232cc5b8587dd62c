/**
 * True for the failure that the client library leaves unhandled where the platform asks twice in a row to connect anew:
 * the second attempt finds the shard connecting already. The first one stands, so there is nothing to mend.
 */
export function isSecondReconnect(reason: unknown): boolean {
	const message =
		typeof reason === 'object' && reason !== null && 'message' in reason ? reason.message : null;
	return message === "Tried to connect a shard that wasn't idle";
}
