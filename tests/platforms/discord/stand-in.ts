/** One server with one app in it: what a test drives, and what the bot talks to. */

import { randomBytes } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { type Fault, Faults } from '../common/faults.js';
import {
	type Answer,
	type Loopback,
	listenOnLoopback,
	readBody,
	readMultipart,
	send,
	sendHalf,
} from '../common/http.js';
import { arrayOf, type JsonObject, objectOf, parseJson, stringOf } from '../common/json.js';
import { PATIENCE_MS, pause, Watch } from '../common/watch.js';
import { refusals } from './errors.js';
import type { Problem } from './form-errors.js';
import { Gateway, type GatewayEvent, Intent } from './gateway.js';
import {
	type DiscordInteraction,
	FIRST_RESPONSE_WITHIN_MS,
	Interactions,
	InteractionType,
} from './interactions.js';
import {
	type DiscordChannel,
	type DiscordMessage,
	type DiscordUser,
	Guild,
	messageObject,
	readable,
	userObject,
} from './model.js';
import {
	type Chosen,
	channelObject,
	commandData,
	findComponent,
	guildObject,
	interactionBase,
	memberObject,
	modalData,
	type OptionValue,
} from './payloads.js';
import { Posting, type UploadedFile } from './posting.js';
import { matchRoute, Rest, type RestCall } from './rest.js';
import { Snowflakes } from './snowflake.js';

export interface DiscordOptions {
	/** the platform's clock [ms since 1970]; the machine's when absent */
	readonly nowMs?: () => number;
	/** heartbeat interval given in hello [ms] */
	readonly heartbeatMs?: number;
	/** shards that the platform advises; 1 when absent */
	readonly shards?: number;
	/** privileged intents switched on in the developer portal; none when absent */
	readonly privilegedIntents?: number;
}

export interface Violation {
	/** the route, then the place in the payload */
	readonly where: string;
	readonly rule: string;
	/** the code the platform refuses with; absent for what it takes but a bot must not send */
	readonly code?: number;
	readonly payload: JsonObject;
}

export interface From {
	readonly user?: string;
	readonly channel?: string;
	/** permissions of the person, as the platform's decimal string */
	readonly permissions?: string;
	readonly locale?: string;
}

export class DiscordStandIn {
	readonly applicationId = '100000000000000001';
	readonly guildId = '100000000000000002';
	readonly channelId = '100000000000000003';
	readonly people = { one: '100000000000000011', two: '100000000000000012' } as const;
	readonly botToken = 'stand-in.bot.token';
	readonly bot: DiscordUser = { id: '100000000000000001', username: 'lugbook', bot: true };

	/** a role of the server, held by those in `roleHolders` */
	readonly roleId = '100000000000000021';
	readonly roleHolders = new Set<string>();
	readonly faults = new Faults();
	readonly violations: Violation[] = [];
	readonly guild = new Guild();
	/** servers beside the one that most tests are about */
	readonly otherGuilds = new Set<string>();
	readonly gateway: Gateway;
	readonly restCalls: RestCall[] = [];
	/** starts left in the session_start_limit */
	sessionsRemaining = 1000;
	private readonly watch = new Watch();
	private readonly nowMs: () => number;
	private readonly ids: Snowflakes;
	private readonly posting: Posting;
	private readonly interactions: Interactions;
	private readonly rest: Rest;
	private loopback: Loopback | undefined;

	constructor(options: DiscordOptions) {
		this.nowMs = options.nowMs ?? Date.now;
		this.ids = new Snowflakes(this.nowMs);
		const judged = (where: string, problems: readonly Problem[], payload: JsonObject, code?: number) => {
			for (const problem of problems) {
				const place = { where: `${where} ${problem.where}`, rule: problem.rule, payload };
				this.violations.push(code === undefined ? place : { ...place, code });
			}
		};
		const published = (message: DiscordMessage) => this.publish(message);
		const origin = () => this.origin;
		this.posting = new Posting(this.guild, this.ids, this.nowMs, judged);
		this.interactions = new Interactions(
			this.posting,
			this.bot,
			this.applicationId,
			this.nowMs,
			origin,
			judged,
			published,
		);
		const gatewayUrl = () => `ws://127.0.0.1:${this.opened.port}`;
		this.gateway = new Gateway({
			token: this.botToken,
			heartbeatMs: options.heartbeatMs ?? 5000,
			privilegedIntents: options.privilegedIntents ?? 0,
			url: gatewayUrl,
			ready: (isOfShard) => {
				const guilds = [this.guildId, ...this.otherGuilds].filter(isOfShard);
				return {
					data: {
						user: { ...userObject(this.bot), verified: true, mfa_enabled: false },
						application: { id: this.applicationId, flags: 0 },
						guilds: guilds.map((id) => ({ id, unavailable: true })),
					},
					after: guilds.map((id) => this.guildCreate(id)),
				};
			},
		});
		this.rest = new Rest({
			applicationId: this.applicationId,
			botToken: this.botToken,
			bot: this.bot,
			guild: this.guild,
			guildId: this.guildId,
			ids: this.ids,
			posting: this.posting,
			interactions: this.interactions,
			origin,
			gatewayUrl,
			sessionsRemaining: () => this.sessionsRemaining,
			shards: options.shards ?? 1,
			judged,
			published,
			dispatch: (event) => this.gateway.dispatch(event),
		});
		this.addChannel({ id: this.channelId, name: 'van-one' });
		this.addUser(this.people.one, 'person-one');
		this.addUser(this.people.two, 'person-two');
		this.guild.users.set(this.bot.id, this.bot);
	}

	// --- the server ---------------------------------------------------------------------------------------

	async listen(): Promise<void> {
		this.loopback = await listenOnLoopback((request, response) => this.handle(request, response));
		this.loopback.server.on('upgrade', (request, socket, head) =>
			this.gateway.upgrade(request, socket, head),
		);
	}

	async close(): Promise<void> {
		this.gateway.close();
		await this.loopback?.close();
		this.loopback = undefined;
	}

	private get opened(): Loopback {
		if (!this.loopback) throw new Error('the stand-in is not listening');
		return this.loopback;
	}

	get origin(): string {
		return this.opened.origin;
	}

	/** for the client's option `rest.api` */
	get apiUrl(): string {
		return `${this.origin}/api`;
	}

	private async handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
		const url = new URL(request.url ?? '/', this.origin);
		const method = request.method ?? 'GET';
		const raw = await readBody(request);
		const path = decodeURIComponent(url.pathname.replace(/^\/api\/v10/, ''));
		if (path.startsWith('/attachments/')) return send(response, this.attachment(path));
		const route = matchRoute(method, path);
		const fault = this.faults.take(route?.name ?? path);
		if (fault?.kind === 'slow') await pause(fault.delayMs);
		if (fault?.kind === 'drop-request') return void request.socket.destroy();
		if (fault?.kind === 'late') {
			request.socket.destroy();
			await fault.until;
		}
		const { body, files } = await this.decode(request, raw);
		const call: RestCall = {
			route: route?.name ?? 'unknown',
			method,
			path,
			body,
			files,
			atMs: this.nowMs(),
			status: 0,
		};
		this.restCalls.push(call);
		const refused = fault && faultAnswer(fault);
		const answer =
			refused ??
			(route
				? this.rest.answer(route, {
						method,
						authorization: request.headers.authorization ?? '',
						query: url.searchParams,
						body,
						files,
					})
				: refusals.notFound);
		call.status = answer.status;
		this.watch.changed();
		if (fault?.kind === 'drop-answer') return sendHalf(response, answer);
		if (fault?.kind === 'malformed-answer') {
			const headers = { 'content-type': 'application/json' };
			return send(response, { status: 200, body: '{"id": "not JS', headers });
		}
		send(response, answer);
	}

	private async decode(
		request: IncomingMessage,
		raw: Buffer,
	): Promise<{ body: unknown; files: UploadedFile[] }> {
		const contentType = request.headers['content-type'] ?? '';
		if (!contentType.startsWith('multipart/form-data')) {
			return { body: parseJson(raw.toString('utf8')), files: [] };
		}
		const parts = await readMultipart(contentType, raw);
		const files = parts
			.filter((part) => part.filename !== undefined)
			.map((part) => ({
				index: /\[(\d+)\]/.exec(part.name)?.[1] ?? '0',
				filename: part.filename ?? 'file',
				contentType: part.contentType ?? 'application/octet-stream',
				bytes: part.bytes,
			}));
		const payload = parts.find((part) => part.name === 'payload_json')?.bytes.toString('utf8') ?? '{}';
		const body = parseJson(payload);
		return { body, files };
	}

	private attachment(path: string): Answer {
		const id = path.split('/')[2];
		const files = this.guild.messages.flatMap((message) => message.attachments);
		const file = files.find((one) => one.id === id);
		return file ? { status: 200, body: file.bytes.toString('latin1') } : refusals.notFound;
	}

	// --- the server's people and places -------------------------------------------------------------------

	/** @param channel with `guildId` in another server that has the app */
	addChannel(channel: { id: string; name?: string; botCanSend?: boolean; guildId?: string }): DiscordChannel {
		const added = this.put(channel);
		this.gateway.dispatch({ name: 'CHANNEL_CREATE', data: channelObject(added), intent: Intent.guilds });
		return added;
	}

	private put(channel: {
		id: string;
		name?: string;
		botCanSend?: boolean;
		guildId?: string;
	}): DiscordChannel {
		if (channel.guildId !== undefined) this.otherGuilds.add(channel.guildId);
		const added: DiscordChannel = {
			id: channel.id,
			name: channel.name ?? `channel-${channel.id}`,
			type: 0,
			guildId: channel.guildId ?? this.guildId,
			botCanSend: channel.botCanSend ?? true,
			botCanRead: true,
			archived: false,
			locked: false,
		};
		this.guild.channels.set(channel.id, added);
		return added;
	}

	addUser(id: string, username = `person-${id}`): DiscordUser {
		const user = { id, username, bot: false };
		this.guild.users.set(id, user);
		return user;
	}

	private rolesOf(user: string): string[] {
		return this.roleHolders.has(user) ? [this.roleId] : [];
	}

	private guildCreate(id: string): GatewayEvent {
		const data = guildObject({
			id,
			name: 'Workshop',
			ownerId: this.people.one,
			channels: [...this.guild.channels.values()].filter((channel) => channel.guildId === id),
			members: [...this.guild.users.values()],
			roles: [this.roleId],
			rolesOf: ({ id }) => this.rolesOf(id),
		});
		return { name: 'GUILD_CREATE', data, intent: Intent.guilds };
	}

	/** REST calls so far, or those of one route. */
	calls(route?: string): RestCall[] {
		return this.restCalls.filter((call) => route === undefined || call.route === route);
	}

	/** Drops what was recorded of calls, interactions and messages but the newest, for loads that would fill the memory. */
	forget(newest = 0): void {
		for (const recorded of [this.restCalls, this.interactions.all, this.guild.messages]) {
			recorded.splice(0, recorded.length - newest);
		}
	}

	/** Commands as registered, for the guild when there are any, else the global ones. */
	registered(): JsonObject[] {
		return this.rest.commands.get(this.guildId) ?? this.rest.commands.get('global') ?? [];
	}

	/** The text of each message this person sees in the channel, oldest first. */
	reading(channel = this.channelId, user: string = this.people.one): string[] {
		return this.guild.seenBy(user, channel).map(readable);
	}

	/** The bot's messages that this person sees in the channel. */
	botMessages(channel = this.channelId, user: string = this.people.one): DiscordMessage[] {
		return this.guild.seenBy(user, channel).filter((one) => one.author.id === this.bot.id);
	}

	/** The direct-message channel with a person. */
	dmChannel(user: string = this.people.one): DiscordChannel {
		return this.rest.dmChannel(user);
	}

	/** Waits for a message of the bot, anywhere, that fulfils the condition on its readable text. */
	waitForMessage(
		condition: RegExp | ((text: string, message: DiscordMessage) => boolean),
		timeoutMs = PATIENCE_MS,
	): Promise<DiscordMessage> {
		const fits = (message: DiscordMessage) => {
			const text = readable(message);
			return condition instanceof RegExp ? condition.test(text) : condition(text, message);
		};
		return this.watch.until(
			() =>
				`a message of the bot fitting ${condition}; there are: ${this.guild.messages.map(readable).join(' / ')}`,
			() => this.guild.messages.find((one) => one.author.id === this.bot.id && !one.deleted && fits(one)),
			timeoutMs,
		);
	}

	waitForCall(route: string, timeoutMs = PATIENCE_MS): Promise<RestCall> {
		return this.watch.until(`a call of ${route}`, () => this.calls(route)[0], timeoutMs);
	}

	// --- what people do -----------------------------------------------------------------------------------

	private place(from: From) {
		const user = this.guild.users.get(from.user ?? this.people.one);
		const channel = this.guild.channels.get(from.channel ?? this.channelId);
		if (!user) throw new Error(`nobody here has the id ${from.user}`);
		if (!channel) throw new Error(`no channel has the id ${from.channel}`);
		const { permissions = '2248473465835073', locale = 'en-US' } = from;
		return {
			applicationId: this.applicationId,
			user,
			channel,
			permissions,
			locale,
			roles: this.rolesOf(user.id),
		};
	}

	/** Creates an interaction, tells the bot, and waits for the first response or for three seconds. */
	private async interact(
		type: number,
		data: JsonObject,
		from: From,
		source?: DiscordMessage,
	): Promise<DiscordInteraction> {
		const place = this.place(from);
		const id = this.ids.next();
		const token = `interaction-${randomBytes(12).toString('hex')}`;
		const payload: JsonObject = {
			...interactionBase(place),
			id,
			token,
			type,
			data,
			...(source === undefined ? {} : { message: messageObject(source, this.origin) }),
		};
		const interaction: DiscordInteraction = {
			id,
			token,
			type,
			payload,
			user: place.user.id,
			channelId: place.channel.id,
			...(place.channel.guildId === undefined ? {} : { guildId: place.channel.guildId }),
			...(source === undefined ? {} : { source }),
			createdMs: this.nowMs(),
			createdAt: performance.now(),
			responseType: null,
			responseMs: null,
			followUps: [],
		};
		this.interactions.all.push(interaction);
		this.dispatchInteraction(interaction);
		await this.firstResponse(interaction);
		return interaction;
	}

	private dispatchInteraction(interaction: DiscordInteraction): void {
		// Interactions are not bound to any intent (discord-api-docs events/gateway).
		this.gateway.dispatch({ name: 'INTERACTION_CREATE', data: interaction.payload, intent: 0 });
	}

	private async firstResponse(interaction: DiscordInteraction): Promise<void> {
		const look = () => (interaction.responseType === null ? undefined : true);
		// Without a response within three seconds the person reads that the app did not respond: no error here,
		// the interaction's responseType stays null.
		await this.watch.until('a first response', look, FIRST_RESPONSE_WITHIN_MS).catch(() => undefined);
	}

	/** The interaction made last, whether or not the bot has answered it. */
	latestInteraction(): DiscordInteraction | undefined {
		return this.interactions.all.at(-1);
	}

	/** The same interaction told once more, as after a resume that went wrong. */
	redispatch(interaction: DiscordInteraction): void {
		this.dispatchInteraction(interaction);
	}

	/** Waits until the interaction's message says something other than that the bot is thinking. */
	settled(interaction: DiscordInteraction, timeoutMs = PATIENCE_MS): Promise<DiscordMessage> {
		const look = () => this.interactions.settled(interaction);
		return this.watch.until('the answer to an interaction', look, timeoutMs);
	}

	private commandNamed(name: string): JsonObject {
		const found = this.registered().find((one) => one.name === name);
		if (!found) {
			const names = this.registered().map((one) => one.name);
			throw new Error(`the app registered no command ${JSON.stringify(name)}, only: ${names.join(', ')}`);
		}
		return found;
	}

	/** A person uses a slash command. */
	async command(
		name: string,
		values: Record<string, OptionValue> = {},
		options: From & Chosen = {},
	): Promise<DiscordInteraction> {
		return this.interact(
			InteractionType.command,
			commandData(this.commandNamed(name), values, options),
			options,
		);
	}

	/** A person types into an option with autocomplete, named by `focused`. */
	async autocomplete(
		name: string,
		values: Record<string, OptionValue>,
		options: From & Chosen & { focused: string },
	): Promise<DiscordInteraction> {
		const data = commandData(this.commandNamed(name), values, options);
		return this.interact(InteractionType.autocomplete, data, options);
	}

	/** A person presses a button, named by custom_id or label. */
	async press(message: DiscordMessage, which: string, from: From = {}): Promise<DiscordInteraction> {
		const button = findComponent(message.components, which);
		const data = { custom_id: button.custom_id, component_type: button.type, id: 1 };
		return this.interact(InteractionType.component, data, { channel: message.channelId, ...from }, message);
	}

	/** A person chooses from a menu. */
	async select(
		message: DiscordMessage,
		which: string,
		values: readonly string[],
		from: From = {},
	): Promise<DiscordInteraction> {
		const menu = findComponent(message.components, which);
		const offered = arrayOf(menu.options).map((option) => stringOf(objectOf(option).value));
		const strange = values.find((value) => !offered.includes(value));
		if (strange !== undefined) throw new Error(`${which} offers no ${JSON.stringify(strange)}`);
		const data = { custom_id: menu.custom_id, component_type: menu.type, id: 1, values };
		return this.interact(InteractionType.component, data, { channel: message.channelId, ...from }, message);
	}

	/** A person fills in and submits the form that this interaction was answered with. */
	async submitModal(
		opened: DiscordInteraction,
		values: Record<string, string>,
		from: From = {},
	): Promise<DiscordInteraction> {
		if (!opened.modal) throw new Error('the interaction was not answered with a form');
		const data = modalData(opened.modal, values);
		const where = { user: opened.user, channel: opened.channelId, ...from };
		return this.interact(InteractionType.modalSubmit, data, where, opened.source);
	}

	/** A person writes a message; the bot gets it as its intents allow. */
	say(text: string, from: From & { replyTo?: DiscordMessage; pingOnReply?: boolean } = {}): DiscordMessage {
		const { user, channel } = this.place(from);
		const message: DiscordMessage = {
			id: this.ids.next(),
			channelId: channel.id,
			...(channel.guildId === undefined ? {} : { guildId: channel.guildId }),
			author: user,
			origin: 'person',
			...(from.replyTo === undefined ? {} : { replyTo: from.replyTo.id }),
			createdMs: this.nowMs(),
			content: text,
			embeds: [],
			components: [],
			flags: 0,
			attachments: [],
			pings: { everyone: false, users: [], roles: [] },
			edits: [],
			deleted: false,
		};
		this.guild.messages.push(message);
		const mentioned = new Set([...text.matchAll(/<@!?(\d+)>/g)].map((match) => match[1] as string));
		if (from.replyTo && from.pingOnReply !== false) mentioned.add(from.replyTo.author.id);
		this.tell('MESSAGE_CREATE', message, [...mentioned], from.replyTo);
		return message;
	}

	/** The same message told once more. */
	tellAgain(message: DiscordMessage): void {
		const mentioned = [...message.content.matchAll(/<@!?(\d+)>/g)].map((match) => match[1] as string);
		this.tell('MESSAGE_CREATE', message, mentioned);
	}

	/** A person mentions the bot in a channel. */
	mention(text: string, from: From & { replyTo?: DiscordMessage } = {}): DiscordMessage {
		return this.say(`<@${this.bot.id}> ${text}`, from);
	}

	/** A person writes to the bot in private. */
	dm(text: string, user: string = this.people.one): DiscordMessage {
		return this.say(text, { user, channel: this.dmChannel(user).id });
	}

	/** A person corrects an earlier message. */
	editByPerson(message: DiscordMessage, text: string): void {
		this.guild.edit(message, { content: text });
		const mentioned = [...text.matchAll(/<@!?(\d+)>/g)].map((match) => match[1] as string);
		this.tell('MESSAGE_UPDATE', message, mentioned);
	}

	private tell(
		name: string,
		message: DiscordMessage,
		mentioned: readonly string[],
		replyTo?: DiscordMessage,
	): void {
		const isDm = message.guildId === undefined;
		const mentions = mentioned.flatMap((id) => this.guild.users.get(id) ?? []).map(userObject);
		const data: JsonObject = {
			...messageObject(message, this.origin),
			mentions,
			channel_type: this.guild.channels.get(message.channelId)?.type,
			...(isDm
				? {}
				: {
						guild_id: message.guildId,
						member: memberObject(message.author, { roles: this.rolesOf(message.author.id) }),
					}),
			...(replyTo === undefined ? {} : { referenced_message: messageObject(replyTo, this.origin) }),
		};
		const isForBot = isDm || mentioned.includes(this.bot.id) || message.author.id === this.bot.id;
		const blank = { ...data, content: '', embeds: [], attachments: [], components: [] };
		const intent = isDm ? Intent.directMessages : Intent.guildMessages;
		this.gateway.dispatch({ name, data, intent, withoutContent: isForBot ? data : blank });
	}

	/** The platform tells a bot its own public messages as well. */
	private publish(message: DiscordMessage): void {
		if (message.visibleTo === undefined) this.tell('MESSAGE_CREATE', message, []);
	}

	/** A person starts a thread, from a message or from nothing. */
	startThread(name: string, from: DiscordMessage | undefined = undefined): DiscordChannel {
		const thread: DiscordChannel = {
			...this.put({ id: from?.id ?? this.ids.next(), name }),
			type: 11,
			parentId: from?.channelId ?? this.channelId,
		};
		this.guild.channels.set(thread.id, thread);
		this.gateway.dispatch({ name: 'THREAD_CREATE', data: channelObject(thread), intent: Intent.guilds });
		return thread;
	}
}

/** The answer a fault gives in place of the platform's; undefined when the fault only disturbs the way. */
function faultAnswer(fault: Fault): Answer | undefined {
	if (fault.kind === 'rate-limit') {
		// discord-api-docs topics/rate-limits: JSON with retry_after in seconds, and the headers.
		const isGlobal = fault.global === true;
		return {
			status: 429,
			body: { message: 'You are being rate limited.', retry_after: fault.retryAfterS, global: isGlobal },
			headers: {
				'retry-after': String(fault.retryAfterS),
				...(isGlobal
					? { 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' }
					: {
							'x-ratelimit-limit': '5',
							'x-ratelimit-remaining': '0',
							'x-ratelimit-reset-after': String(fault.retryAfterS),
							'x-ratelimit-bucket': 'stand-in',
							'x-ratelimit-scope': 'user',
						}),
			},
		};
	}
	if (fault.kind === 'status')
		return { status: fault.status, body: fault.body ?? { message: 'error', code: 0 } };
	if (fault.kind === 'error') {
		const known = (refusals as Record<string, unknown>)[fault.error] as Answer | undefined;
		if (!known) throw new Error(`no such refusal: ${fault.error}`);
		return known;
	}
	return undefined;
}
