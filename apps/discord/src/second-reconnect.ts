/**
 * True for the failure that the client library leaves unhandled where it ends a connection twice at once, as when the
 * platform tells it twice that its session is over and closes: it connects anew for each, and the second attempt finds
 * the shard connecting already. The first one stands, so there is nothing to mend.
 */
export function isSecondReconnect(reason: unknown): boolean {
	const message =
		typeof reason === 'object' && reason !== null && 'message' in reason ? reason.message : null;
	return message === "Tried to connect a shard that wasn't idle";
}
