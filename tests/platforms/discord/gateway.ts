/**
 * The Gateway, by discord-api-docs `events/gateway.mdx` and `topics/opcodes-and-status-codes.mdx`: hello,
 * identify, heartbeat, dispatch, resume with replay of what was missed, reconnect (op 7), invalid session (op 9),
 * and the close codes. Events are filtered by the session's intents; without the message-content intent a
 * message's content comes empty, but for direct messages and messages that mention the bot.
 */

import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import { isObject, type JsonObject, parseJson, stringOf } from '../common/json.js';
import { Watch } from '../common/watch.js';

export const Intent = {
	guilds: 1 << 0,
	guildMembers: 1 << 1,
	guildPresences: 1 << 8,
	guildMessages: 1 << 9,
	directMessages: 1 << 12,
	messageContent: 1 << 15,
} as const;

const PRIVILEGED = Intent.guildMembers | Intent.guildPresences | Intent.messageContent;
/** bits 0-16, 20, 21, 24, 25 are the intents of API version 10 */
const KNOWN = 0x1ffff | (1 << 20) | (1 << 21) | (1 << 24) | (1 << 25);
const PAYLOAD_BYTES_MAX = 4096;
const SENDS_PER_MINUTE_MAX = 120;

interface Dispatched {
	readonly seq: number;
	readonly text: string;
}

interface Session {
	readonly id: string;
	readonly intents: number;
	/** the shard's number and how many there are */
	readonly shard: readonly [number, number];
	readonly sent: Dispatched[];
	seq: number;
	socket: WebSocket | undefined;
}

export interface GatewayEvent {
	readonly name: string;
	readonly data: JsonObject;
	/** the intent a session needs to get it; 0 for what everyone gets */
	readonly intent: number;
	/** the data for sessions without the message-content intent, when it differs */
	readonly withoutContent?: JsonObject;
}

export interface GatewaySetting {
	readonly token: string;
	readonly heartbeatMs: number;
	/** privileged intents switched on for the app in the developer portal */
	readonly privilegedIntents: number;
	readonly url: () => string;
	/** READY's data but for the session's own parts, and the events right after it */
	readonly ready: (isOfShard: (guildId: string) => boolean) => {
		data: JsonObject;
		after: readonly GatewayEvent[];
	};
}

/** Which shard hears of a server (events/gateway, "Sharding"); what happens in private goes to shard 0. */
function isOfShard(guildId: string | null, [number, count]: readonly [number, number]): boolean {
	return number === (guildId === null ? 0 : Number((BigInt(guildId) >> 22n) % BigInt(count)));
}

export class Gateway {
	private readonly server = new WebSocketServer({ noServer: true });
	/** with what each stands on */
	private readonly sockets = new Map<WebSocket, Duplex>();
	private readonly sessions = new Map<string, Session>();
	private readonly watch = new Watch();
	/** payloads the client sent, but for heartbeats */
	readonly received: JsonObject[] = [];
	heartbeats = 0;
	identifies = 0;
	resumes = 0;
	/** when set, heartbeats are not answered: a connection that died without closing */
	deaf = false;

	constructor(private readonly at: GatewaySetting) {}

	upgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
		this.server.handleUpgrade(request, socket, head, (connected) => this.accept(connected, socket));
	}

	private accept(socket: WebSocket, stream: Duplex): void {
		this.sockets.set(socket, stream);
		let session: Session | undefined;
		const stamps: number[] = [];
		socket.on('error', () => socket.terminate());
		socket.on('close', () => {
			this.sockets.delete(socket);
			if (session?.socket === socket) session.socket = undefined;
			this.watch.changed();
		});
		socket.on('message', (raw) => {
			const text = String(raw);
			const nowMs = performance.now();
			stamps.push(nowMs);
			while (stamps[0] !== undefined && nowMs - stamps[0] > 60_000) stamps.shift();
			if (stamps.length > SENDS_PER_MINUTE_MAX) return socket.close(4008, 'You are being rate limited.');
			if (Buffer.byteLength(text) > PAYLOAD_BYTES_MAX)
				return socket.close(4002, 'Error while decoding payload.');
			const message = parseJson(text);
			if (!isObject(message)) return socket.close(4002, 'Error while decoding payload.');
			if (message.op !== 1) this.received.push(message);
			const data = isObject(message.d) ? message.d : {};
			switch (message.op) {
				case 1:
					this.heartbeats += 1;
					if (!this.deaf) socket.send(JSON.stringify({ op: 11, d: null, s: null, t: null }));
					break;
				case 2:
					if (session) return socket.close(4005, 'Already authenticated.');
					session = this.identify(socket, data);
					break;
				case 6:
					session = this.resume(socket, data);
					break;
				case 3:
				case 4:
				case 8:
					if (!session) return socket.close(4003, 'Not authenticated.');
					break;
				default:
					return socket.close(4001, 'Unknown opcode.');
			}
			this.watch.changed();
		});
		socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: this.at.heartbeatMs }, t: null, s: null }));
	}

	private identify(socket: WebSocket, data: JsonObject): Session | undefined {
		this.identifies += 1;
		const intents = Number(data.intents);
		if (data.token !== this.at.token) {
			socket.close(4004, 'Authentication failed.');
			return undefined;
		}
		if (!Number.isInteger(intents) || (intents & ~KNOWN) !== 0) {
			socket.close(4013, 'Invalid intent(s).');
			return undefined;
		}
		if ((intents & PRIVILEGED & ~this.at.privilegedIntents) !== 0) {
			socket.close(4014, 'Disallowed intent(s).');
			return undefined;
		}
		const [number = 0, count = 1] = Array.isArray(data.shard) ? data.shard.map(Number) : [];
		if (!Number.isInteger(number) || !Number.isInteger(count) || number < 0 || number >= count) {
			socket.close(4010, 'Invalid shard.');
			return undefined;
		}
		const id = `session-${this.identifies}`;
		const session: Session = { id, intents, shard: [number, count], sent: [], seq: 0, socket };
		this.sessions.set(id, session);
		const { data: ready, after } = this.at.ready((guildId) => isOfShard(guildId, session.shard));
		this.send(session, 'READY', {
			v: 10,
			session_id: id,
			resume_gateway_url: this.at.url(),
			...(data.shard === undefined ? {} : { shard: data.shard }),
			...ready,
		});
		for (const event of after) this.sendFiltered(session, event);
		return session;
	}

	private resume(socket: WebSocket, data: JsonObject): Session | undefined {
		this.resumes += 1;
		const session = this.sessions.get(stringOf(data.session_id));
		if (data.token !== this.at.token) {
			socket.close(4004, 'Authentication failed.');
			return undefined;
		}
		if (!session) {
			socket.send(JSON.stringify({ op: 9, d: false, s: null, t: null }));
			return undefined;
		}
		const seen = Number(data.seq);
		if (!Number.isInteger(seen) || seen > session.seq) {
			socket.close(4007, 'Invalid seq.');
			return undefined;
		}
		session.socket = socket;
		for (const missed of session.sent) if (missed.seq > seen) socket.send(missed.text);
		this.send(session, 'RESUMED', {});
		return session;
	}

	private send(session: Session, name: string, data: JsonObject): void {
		session.seq += 1;
		const text = JSON.stringify({ op: 0, s: session.seq, t: name, d: data });
		session.sent.push({ seq: session.seq, text });
		session.socket?.send(text);
	}

	private sendFiltered(session: Session, event: GatewayEvent): void {
		if (event.intent !== 0 && (session.intents & event.intent) === 0) return;
		const hasContent = (session.intents & Intent.messageContent) !== 0;
		this.send(session, event.name, hasContent ? event.data : (event.withoutContent ?? event.data));
	}

	/** Tells every session that has the intent; a session without a connection gets it when it resumes. */
	dispatch(event: GatewayEvent): void {
		const guildId = event.data.guild_id === undefined ? null : stringOf(event.data.guild_id);
		for (const session of this.sessions.values()) {
			if (isOfShard(guildId, session.shard)) this.sendFiltered(session, event);
		}
	}

	/** The shards that are connected, by their numbers. */
	get shards(): number[] {
		const connected = [...this.sessions.values()].filter(({ socket }) => socket !== undefined);
		return connected.map(({ shard }) => shard[0]).sort((a, b) => a - b);
	}

	get connected(): boolean {
		return [...this.sessions.values()].some((session) => session.socket !== undefined);
	}

	/** Whether an event told now reaches the client: at once, or when it resumes. */
	get hasSession(): boolean {
		return this.sessions.size > 0;
	}

	waitForIdentifies(count: number, timeoutMs = 10_000): Promise<number> {
		return this.watch.until(
			`identify no. ${count}`,
			() => (this.identifies >= count && this.connected ? this.identifies : undefined),
			timeoutMs,
		);
	}

	waitForResumes(count: number, timeoutMs = 10_000): Promise<number> {
		return this.watch.until(
			`resume no. ${count}`,
			() => (this.resumes >= count && this.connected ? this.resumes : undefined),
			timeoutMs,
		);
	}

	waitForHeartbeats(count: number, timeoutMs = 10_000): Promise<number> {
		return this.watch.until(
			`heartbeat no. ${count}`,
			() => (this.heartbeats >= count ? this.heartbeats : undefined),
			timeoutMs,
		);
	}

	/** The client reads all that is told within `tell` at once. */
	atOnce(tell: () => void): void {
		const streams = [...this.sockets.values()];
		for (const stream of streams) stream.cork();
		tell();
		for (const stream of streams) stream.uncork();
	}

	/** Asks the client to reconnect and resume (op 7). */
	requestReconnect(): void {
		for (const socket of this.sockets.keys())
			socket.send(JSON.stringify({ op: 7, d: null, s: null, t: null }));
	}

	/** Declares the sessions invalid (op 9); they can be resumed or are forgotten. */
	invalidate(isResumable: boolean): void {
		if (!isResumable) this.sessions.clear();
		for (const socket of this.sockets.keys())
			socket.send(JSON.stringify({ op: 9, d: isResumable, s: null, t: null }));
	}

	/** Forgets the sessions without a word, so that a later resume is refused. */
	forgetSessions(): void {
		this.sessions.clear();
	}

	/** Any text at all, to see that the client survives it. */
	sendRaw(text: string): void {
		for (const socket of this.sockets.keys()) socket.send(text);
	}

	closeWith(code: number, reason = ''): void {
		for (const socket of this.sockets.keys()) socket.close(code, reason);
	}

	/** Cuts every connection without a word. */
	drop(): void {
		for (const socket of this.sockets.keys()) socket.terminate();
	}

	close(): void {
		this.drop();
		this.server.close();
	}
}
