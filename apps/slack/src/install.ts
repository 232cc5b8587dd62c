/**
 * Installing the app into a workspace by the platform's OAuth 2.0 flow (RFC 6749, section 4.1; the state as its section
 * 10.12 asks): a person of the workspace opens INSTALL_PATH, allows it on the platform's page, and comes back to
 * REDIRECT_PATH with a code that is good for a token once.
 */

import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { errorFacts, type Handler, type Log, type ProgramLog } from '@lugbook/chat';
import { webApi } from '@slack/bolt';
import type { Installations } from './installations.js';
import { botScopes } from './scopes.js';
import type { InstallSettings } from './settings.js';

export const INSTALL_PATH = '/slack/install';
export const REDIRECT_PATH = '/slack/oauth_redirect';

const AUTHORIZE_URL = 'https://slack.com/oauth/v2/authorize';
const COOKIE = 'lugbook_install';
const STATE_BYTES = 32;
/** how long somebody may take on the platform's page [ms] */
const STATE_MS = 10 * 60 * 1000;
/** people on their way at once; more is somebody who fills the database */
const STATES_MAX = 500;
/** the shop under which the states lie */
const SHELF = 'installing slack';

export interface InstallOptions {
	readonly settings: InstallSettings;
	readonly installations: Installations;
	readonly log: Log;
	readonly programLog: ProgramLog;
	readonly clientOptions: webApi.WebClientOptions;
	readonly nowMs: () => number;
}

/** A step that ends in a page for the person; the sentence says what to do. */
class Refused extends Error {
	constructor(
		readonly status: number,
		message: string,
	) {
		super(message);
	}
}

export class Install {
	constructor(private readonly options: InstallOptions) {}

	routes(): Readonly<Record<string, Handler>> {
		return {
			[INSTALL_PATH]: (_, response) => this.#guarded(response, () => this.#begin(response)),
			[REDIRECT_PATH]: (request, response) => this.#guarded(response, () => this.#end(request, response)),
		};
	}

	async #guarded(response: ServerResponse, step: () => Promise<void>): Promise<void> {
		try {
			await step();
		} catch (error) {
			if (error instanceof Refused) return page(response, error.status, error.message);
			this.options.programLog.error(errorFacts(error), 'an installation failed');
			page(
				response,
				502,
				'Something failed on our side or on the platform. Nothing was installed: try again.',
			);
		}
	}

	async #begin(response: ServerResponse): Promise<void> {
		const { log, nowMs, settings } = this.options;
		const states = await log.settingsOf(SHELF);
		const old = states.filter(({ value }) => Number(value) <= nowMs());
		for (const { key, value } of old) await log.swapSetting(SHELF, key, value, null);
		if (states.length - old.length >= STATES_MAX) {
			throw new Refused(429, 'Too many people are installing at this moment. Try again in ten minutes.');
		}
		const state = randomBytes(STATE_BYTES).toString('base64url');
		await log.setSetting(SHELF, hashOf(state), String(nowMs() + STATE_MS));
		const address = new URL(AUTHORIZE_URL);
		address.searchParams.set('client_id', settings.clientId);
		address.searchParams.set('scope', Object.keys(botScopes).join(','));
		address.searchParams.set('redirect_uri', this.#redirectUri);
		address.searchParams.set('state', state);
		response.writeHead(302, {
			location: address.href,
			// The browser that began is the one that may end it.
			'set-cookie': `${COOKIE}=${state}; Path=${REDIRECT_PATH}; Max-Age=${STATE_MS / 1000}; HttpOnly; Secure; SameSite=Lax`,
			'cache-control': 'no-store',
		});
		response.end();
	}

	async #end(request: IncomingMessage, response: ServerResponse): Promise<void> {
		const { settings, installations, programLog, nowMs } = this.options;
		const given = new URL(request.url ?? '', settings.publicUrl).searchParams;
		await this.#checkState(given.get('state') ?? '', cookieOf(request));
		const declined = given.get('error');
		if (declined !== null) {
			throw new Refused(
				403,
				`Nothing was installed: the platform says "${declined.slice(0, 40)}". To begin again, open ${INSTALL_PATH}.`,
			);
		}
		const { teamId, ...installation } = await this.#exchanged(given.get('code') ?? '');
		await installations.keep(teamId, { ...installation, at: new Date(nowMs()).toISOString() });
		programLog.info({ teamId }, 'installed');
		page(
			response,
			200,
			`Lugbook is installed in "${installation.teamName}". Invite it into a channel with /invite @Lugbook, then ask: /ask 40A 12V 15 ft. Its Home tab says more.`,
		);
	}

	/** The state is one we gave, to this browser, not long ago, and comes back for the first time. */
	async #checkState(state: string, cookie: string): Promise<void> {
		const { log, nowMs } = this.options;
		const isSame =
			state !== '' &&
			state.length === cookie.length &&
			timingSafeEqual(Buffer.from(state), Buffer.from(cookie));
		const untilMs = isSame ? await log.getSetting(SHELF, hashOf(state)) : null;
		const isOurs = untilMs !== null && (await log.swapSetting(SHELF, hashOf(state), untilMs, null));
		if (isOurs && Number(untilMs) > nowMs()) return;
		throw new Refused(
			400,
			`This address has been used, is older than ten minutes, or was begun in another browser. Nothing was installed; to begin again, open ${INSTALL_PATH}.`,
		);
	}

	async #exchanged(code: string) {
		const { settings, clientOptions } = this.options;
		const answer = await new webApi.WebClient(undefined, clientOptions).oauth.v2
			.access({
				client_id: settings.clientId,
				client_secret: settings.clientSecret,
				code,
				redirect_uri: this.#redirectUri,
			})
			.catch((error: unknown) => {
				this.options.programLog.warn(errorFacts(error), 'the platform did not take a code');
				throw new Refused(400, `The platform did not take the code. To begin again, open ${INSTALL_PATH}.`);
			});
		const { team, access_token: botToken, bot_user_id: botUserId, authed_user: person } = answer;
		if (team?.id === undefined || botToken === undefined || botUserId === undefined) {
			throw new Refused(400, 'Only a single workspace can install it, not a whole organisation.');
		}
		if (settings.teams.size > 0 && !settings.teams.has(team.id)) {
			throw new Refused(403, `Workspace ${team.id} is not among those that may install it.`);
		}
		const { bot_id: botId } = await new webApi.WebClient(botToken, clientOptions).auth.test();
		if (botId === undefined) throw new Error('the platform did not tell the id of the bot');
		return {
			teamId: team.id,
			teamName: team.name ?? team.id,
			botToken,
			botUserId,
			botId,
			installedBy: person?.id ?? '',
		};
	}

	get #redirectUri(): string {
		return new URL(REDIRECT_PATH, this.options.settings.publicUrl).href;
	}
}

/** The database holds no state that somebody who reads it could use. */
const hashOf = (state: string): string => createHash('sha256').update(state).digest('hex');

function cookieOf(request: IncomingMessage): string {
	const found = (request.headers.cookie ?? '')
		.split(';')
		.map((one) => one.trim().split('='))
		.find(([name]) => name === COOKIE);
	return found?.[1] ?? '';
}

function page(response: ServerResponse, status: number, sentence: string): void {
	const text = sentence.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
	response.writeHead(status, {
		'content-type': 'text/html; charset=utf-8',
		'content-security-policy': "default-src 'none'",
		'cache-control': 'no-store',
		'referrer-policy': 'no-referrer',
		'x-content-type-options': 'nosniff',
	});
	response.end(`<!doctype html><html lang="en"><title>Lugbook</title><h1>Lugbook</h1><p>${text}</p></html>`);
}
