/** Who may sign: people and roles of the platform that the shop's settings name. Asked anew at each message. */
export interface Leads {
	readonly people: ReadonlySet<string>;
	/** roles or groups of the platform */
	readonly roles: ReadonlySet<string>;
}

export function isLead(
	leads: Leads,
	user: { readonly id: string; readonly roles?: readonly string[] },
): boolean {
	return leads.people.has(user.id) || (user.roles ?? []).some((role) => leads.roles.has(role));
}

/** Ids separated by commas. */
export function idsIn(list: string | undefined): ReadonlySet<string> {
	return new Set(
		(list ?? '')
			.split(',')
			.map((id) => id.trim())
			.filter((id) => id !== ''),
	);
}
