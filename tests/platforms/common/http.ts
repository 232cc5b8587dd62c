/** A loopback HTTP server whose closing leaves no handle behind, and the few things done with its requests. */

import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Loopback {
	readonly server: Server;
	readonly port: number;
	/** `http://127.0.0.1:PORT` */
	readonly origin: string;
	close(): Promise<void>;
}

/** What the stand-in answers: a status, headers and a body that is sent as JSON unless it is a string. */
export interface Answer {
	readonly status: number;
	readonly body?: unknown;
	readonly headers?: Record<string, string>;
}

export async function listenOnLoopback(
	handle: (request: IncomingMessage, response: ServerResponse) => Promise<void>,
): Promise<Loopback> {
	const server = createServer((request, response) => {
		handle(request, response).catch((error: unknown) => {
			// A fault of the stand-in itself must be seen by the test's author, not be taken for the platform's.
			const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
			if (!response.headersSent) response.writeHead(599, { 'content-type': 'text/plain' });
			response.end(`the stand-in failed: ${text}`);
		});
	});
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	const { port } = server.address() as AddressInfo;
	return {
		server,
		port,
		origin: `http://127.0.0.1:${port}`,
		close: () =>
			new Promise((resolve) => {
				server.close(() => resolve());
				server.closeAllConnections();
			}),
	};
}

export async function readBody(request: IncomingMessage): Promise<Buffer> {
	const chunks: Buffer[] = [];
	for await (const chunk of request) chunks.push(chunk as Buffer);
	return Buffer.concat(chunks);
}

function encode(answer: Answer): { text: string; type: string } {
	if (answer.body === undefined) return { text: '', type: 'text/plain' };
	if (typeof answer.body === 'string') return { text: answer.body, type: 'text/html' };
	return { text: JSON.stringify(answer.body), type: 'application/json; charset=utf-8' };
}

export function send(response: ServerResponse, answer: Answer): void {
	const { text, type } = encode(answer);
	response.writeHead(answer.status, { 'content-type': type, ...answer.headers });
	response.end(text);
}

/** Announces the whole answer, sends half of it and cuts the connection. */
export function sendHalf(response: ServerResponse, answer: Answer): void {
	const { text, type } = encode(answer);
	const bytes = Buffer.from(text);
	response.writeHead(answer.status, {
		'content-type': type,
		'content-length': String(Math.max(bytes.length, 2)),
		...answer.headers,
	});
	response.write(bytes.subarray(0, Math.floor(bytes.length / 2)), () => response.socket?.destroy());
	response.flushHeaders();
}

export interface Part {
	readonly name: string;
	readonly filename?: string;
	readonly contentType?: string;
	readonly bytes: Buffer;
}

/** Parts of a `multipart/form-data` body (RFC 7578), read by the platform's own parser. */
export async function readMultipart(contentType: string, body: Buffer): Promise<Part[]> {
	const form = await new Response(new Uint8Array(body), {
		headers: { 'content-type': contentType },
	}).formData();
	const parts: Part[] = [];
	for (const [name, value] of form.entries()) {
		if (typeof value === 'string') {
			parts.push({ name, bytes: Buffer.from(value) });
		} else {
			const bytes = Buffer.from(await value.arrayBuffer());
			parts.push({ name, filename: value.name, contentType: value.type, bytes });
		}
	}
	return parts;
}
