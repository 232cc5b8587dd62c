/** What supervisors and monitoring ask of a running bot. */

import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';

export const HEALTH_PATH = '/healthz';
export const READY_PATH = '/readyz';
export const METRICS_PATH = '/metrics';

export interface Service {
	/** is the connection to the platform up? */
	isConnected(): boolean;
	/** can an answer be kept and shown right now? */
	isReady(): Promise<boolean>;
	metrics(): Promise<string>;
}

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** The handlers by path. */
export function serviceRoutes(service: Service): Readonly<Record<string, Handler>> {
	const status = (response: ServerResponse, isGood: boolean, otherwise: string) => {
		response.writeHead(isGood ? 200 : 503, { 'content-type': 'application/json' });
		response.end(JSON.stringify({ status: isGood ? 'ok' : otherwise }));
	};
	return {
		[HEALTH_PATH]: (_, response) => status(response, service.isConnected(), 'not connected'),
		[READY_PATH]: (_, response) => {
			service
				.isReady()
				.catch(() => false)
				.then((isReady) => status(response, isReady, 'not ready'));
		},
		[METRICS_PATH]: (_, response) => {
			service.metrics().then(
				(text) => {
					response.writeHead(200, { 'content-type': 'text/plain; version=0.0.4; charset=utf-8' });
					response.end(text);
				},
				() => response.writeHead(503).end(),
			);
		},
	};
}

/** A server of its own for these paths, where the bot has none. */
export function serveService(
	service: Service,
	at: { readonly host: string; readonly port: number },
): Promise<Server> {
	const routes = serviceRoutes(service);
	const server = createServer((request, response) => {
		const handler = routes[request.url ?? ''];
		if (handler === undefined || request.method !== 'GET') response.writeHead(404).end();
		else handler(request, response);
	});
	return new Promise((resolve, reject) => {
		server.once('error', reject).listen(at, () => resolve(server));
	});
}

export function closedServer(server: Server): Promise<void> {
	return new Promise((resolve) => {
		server.close(() => resolve());
		server.closeAllConnections();
	});
}
