/**
 * Socket Mode (docs.slack.dev/apis/events-api/using-socket-mode): a WebSocket address from
 * apps.connections.open, `hello`, envelopes that the app acknowledges by `envelope_id`, and `disconnect`
 * when the platform wants the connection renewed. What was not acknowledged is sent again by the platform.
 */

import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import { type JsonObject, objectOf, parseJson, stringOf } from '../common/json.js';
import { Watch } from '../common/watch.js';
import { ACK_WITHIN_MS, type DeliveryOptions, type DeliveryResult } from './http-delivery.js';
import type { Delivery } from './payloads.js';

interface Pending {
	readonly envelopeId: string;
	readonly socket: WebSocket;
	settle(payload: unknown): void;
	lost(): void;
}

export class SocketMode {
	private readonly server = new WebSocketServer({ noServer: true });
	private readonly tickets = new Set<string>();
	private readonly pending = new Map<string, Pending>();
	private readonly sockets: WebSocket[] = [];
	private readonly watch = new Watch();
	private counter = 0;
	/** connections opened so far */
	opened = 0;
	/** texts from the app that were no acknowledgement of a pending envelope, late ones included */
	readonly strays: string[] = [];

	constructor(private readonly appId: string) {}

	/** The address to give for apps.connections.open; a ticket is good for one connection. */
	issueUrl(port: number): string {
		const ticket = `t${++this.counter}`;
		this.tickets.add(ticket);
		return `ws://127.0.0.1:${port}/link/?ticket=${ticket}&app_id=${this.appId}`;
	}

	upgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
		const ticket = new URL(request.url ?? '/', 'http://127.0.0.1').searchParams.get('ticket') ?? '';
		if (!this.tickets.delete(ticket)) {
			socket.end('HTTP/1.1 401 Unauthorized\r\nconnection: close\r\n\r\n');
			return;
		}
		this.server.handleUpgrade(request, socket, head, (connected) => this.accept(connected));
	}

	private accept(socket: WebSocket): void {
		this.sockets.push(socket);
		this.opened += 1;
		socket.on('message', (data) => this.receive(String(data)));
		socket.on('error', () => socket.terminate());
		socket.on('close', () => {
			this.sockets.splice(this.sockets.indexOf(socket), 1);
			for (const one of [...this.pending.values()]) if (one.socket === socket) one.lost();
			this.watch.changed();
		});
		socket.send(
			JSON.stringify({
				type: 'hello',
				num_connections: this.sockets.length,
				debug_info: { host: 'loopback', build_number: 1, approximate_connection_time: 18_060 },
				connection_info: { app_id: this.appId },
			}),
		);
		this.watch.changed();
	}

	private receive(text: string): void {
		const message = objectOf(parseJson(text));
		const pending = this.pending.get(stringOf(message.envelope_id));
		if (pending) pending.settle(message.payload);
		else this.strays.push(text);
		this.watch.changed();
	}

	get connections(): number {
		return this.sockets.length;
	}

	/** Resolves when this many connections have been opened in all. */
	waitForOpened(count: number, timeoutMs = 10_000): Promise<number> {
		const look = () => (this.opened >= count && this.sockets.length > 0 ? this.opened : undefined);
		return this.watch.until(`socket connection no. ${count}`, look, timeoutMs);
	}

	/** Sends one envelope over one of the connections, each in its turn, and waits for its acknowledgement. */
	deliver(delivery: Delivery, options: DeliveryOptions = {}): Promise<DeliveryResult> {
		const socket = this.sockets[this.counter % Math.max(1, this.sockets.length)];
		const startedMs = performance.now();
		const result = (rest: Pick<DeliveryResult, 'ackStatus' | 'ackBody' | 'failure'>): DeliveryResult => ({
			delivery,
			ackMs: performance.now() - startedMs,
			ackHeaders: {},
			...rest,
		});
		if (!socket)
			return Promise.resolve(result({ ackStatus: null, ackBody: undefined, failure: 'no-connection' }));
		const envelopeId = `e${++this.counter}`;
		const envelope: JsonObject = {
			envelope_id: envelopeId,
			type: delivery.type,
			payload: delivery.payload,
			accepts_response_payload: delivery.type !== 'events_api',
		};
		if (delivery.type === 'events_api') {
			envelope.retry_attempt = options.retryNum ?? 0;
			envelope.retry_reason = options.retryReason ?? (options.retryNum ? 'timeout' : '');
		}
		return new Promise((resolve) => {
			const finish = (rest: Pick<DeliveryResult, 'ackStatus' | 'ackBody' | 'failure'>) => {
				clearTimeout(timer);
				this.pending.delete(envelopeId);
				resolve(result(rest));
			};
			const timer = setTimeout(
				() => finish({ ackStatus: null, ackBody: undefined, failure: 'timeout' }),
				ACK_WITHIN_MS,
			);
			this.pending.set(envelopeId, {
				envelopeId,
				socket,
				settle: (payload) => {
					const empty = payload === undefined || Object.keys(objectOf(payload)).length === 0;
					finish({ ackStatus: 200, ackBody: empty ? undefined : payload });
				},
				lost: () => finish({ ackStatus: null, ackBody: undefined, failure: 'connection' }),
			});
			socket.send(JSON.stringify(envelope));
		});
	}

	/** Any text at all, to see that the app survives it. */
	sendRaw(text: string): void {
		for (const socket of this.sockets) socket.send(text);
	}

	/** Asks the app to renew its connections. */
	refresh(reason: 'refresh_requested' | 'warning' | 'link_disabled' = 'refresh_requested'): void {
		this.sendRaw(JSON.stringify({ type: 'disconnect', reason, debug_info: { host: 'loopback' } }));
	}

	/** Cuts every connection without a word. */
	drop(): void {
		for (const socket of [...this.sockets]) socket.terminate();
	}

	close(): void {
		this.drop();
		this.server.close();
	}
}
