/** The workspaces that installed the app, with their tokens: in the log's database, encrypted under the shop's key. */

import { errorFacts, type Log, type ProgramLog, sealed, unsealed } from '@lugbook/chat';
import { webApi } from '@slack/bolt';
import { z } from 'zod';

/** the shop under which they lie: no workspace is named so */
const SHELF = 'installations of slack';

const installationSchema = z.object({
	teamName: z.string(),
	botToken: z.string(),
	botUserId: z.string(),
	botId: z.string(),
	/** who installed it, and when [ISO 8601] */
	installedBy: z.string(),
	at: z.string(),
});
export type Installation = z.infer<typeof installationSchema>;

export class Installations {
	readonly #clients = new Map<string, { readonly token: string; readonly client: webApi.WebClient }>();

	constructor(
		private readonly log: Log,
		private readonly key: Buffer,
		private readonly clientOptions: webApi.WebClientOptions,
		private readonly programLog: ProgramLog,
	) {}

	async keep(teamId: string, installation: Installation): Promise<void> {
		const text = sealed(JSON.stringify(installation), this.key, aboutOf(teamId));
		await this.log.setSetting(SHELF, teamId, text);
	}

	async remove(teamId: string): Promise<void> {
		this.#clients.delete(teamId);
		await this.log.setSetting(SHELF, teamId, null);
	}

	/** @returns null for a workspace that has not installed the app, or whose token does not open */
	async of(teamId: string): Promise<Installation | null> {
		const text = await this.log.getSetting(SHELF, teamId);
		if (text === null) return null;
		try {
			return installationSchema.parse(JSON.parse(unsealed(text, this.key, aboutOf(teamId))));
		} catch (error) {
			this.programLog.error({ teamId, ...errorFacts(error) }, 'the token of a workspace does not open');
			return null;
		}
	}

	async teams(): Promise<string[]> {
		return (await this.log.settingsOf(SHELF)).map(({ key }) => key);
	}

	/** The platform's client for a workspace; null where the app is not installed. */
	async clientOf(teamId: string): Promise<webApi.WebClient | null> {
		const installation = await this.of(teamId);
		if (installation === null) return null;
		const { botToken: token } = installation;
		const known = this.#clients.get(teamId);
		if (known?.token === token) return known.client;
		const client = new webApi.WebClient(token, { ...this.clientOptions, teamId });
		this.#clients.set(teamId, { token, client });
		return client;
	}
}

/** A token opens for its own workspace alone. */
const aboutOf = (teamId: string): string => `slack ${teamId}`;
