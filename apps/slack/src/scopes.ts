/** What the app asks a workspace for, and why: the manifest, the install address and the README hold the same list. */

export const botScopes = {
	commands: 'the four slash commands',
	'chat:write': 'answers, in channels the bot was invited to and in direct messages',
	'app_mentions:read': 'questions that mention the bot',
	'im:history': 'questions sent to it directly',
	'users:read': 'the name of who asked, for the record',
	'files:write': 'calculation sheets and pictures as files',
} as const;

/** Only where LUGBOOK_LEAD_GROUPS names user groups. */
export const LEAD_GROUPS_SCOPE = 'usergroups:read';
