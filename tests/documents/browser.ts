import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium, type Page } from 'playwright-core';

/** Debian's browser, without anything that calls home. */
export function startBrowser(): Promise<Browser> {
	return chromium.launch({
		executablePath: '/usr/bin/chromium',
		headless: true,
		args: [
			'--no-sandbox',
			'--disable-gpu',
			'--disable-quic',
			'--no-first-run',
			'--disable-background-networking',
			'--disable-component-update',
			'--disable-sync',
		],
	});
}

export interface Served extends AsyncDisposable {
	readonly address: string;
	/** the paths that were asked for */
	readonly asked: readonly string[];
}

/** One page of HTML on loopback. */
export async function serve(html: string): Promise<Served> {
	const asked: string[] = [];
	const server = createServer((request, response) => {
		asked.push(request.url ?? '');
		response.writeHead(request.url === '/book' ? 200 : 404, { 'content-type': 'text/html; charset=utf-8' });
		response.end(request.url === '/book' ? html : '');
	});
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	const { port } = server.address() as AddressInfo;
	return {
		address: `http://127.0.0.1:${port}/book`,
		asked,
		[Symbol.asyncDispose]: async () => {
			server.closeAllConnections();
			await new Promise((resolve) => server.close(resolve));
		},
	};
}

/** Whatever a page says or asks for: its console, its errors, its requests. */
export function listen(page: Page): { readonly said: string[]; readonly requests: string[] } {
	const said: string[] = [];
	const requests: string[] = [];
	page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
	page.on('pageerror', (error) => said.push(error.message));
	page.on('request', (request) => requests.push(request.url()));
	return { said, requests };
}
