import { readFileSync } from 'node:fs';
import { commandNames } from '@lugbook/chat';
import { expect, test } from 'vitest';
import { EVENTS_PATH } from './bot.js';
import { REDIRECT_PATH } from './install.js';
import { botScopes } from './scopes.js';

const textOf = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

interface Manifest {
	readonly oauth_config: { readonly scopes: { readonly bot: readonly string[] } };
	readonly settings: { readonly event_subscriptions: { readonly bot_events: readonly string[] } };
	readonly features: { readonly slash_commands: readonly { readonly command: string }[] };
}
const manifest = JSON.parse(textOf('../manifest.json')) as Manifest;

test('the manifest names the commands, the events that are listened to and the scopes that are used', () => {
	expect(manifest.features.slash_commands.map(({ command }) => command)).toEqual(
		commandNames.map((name) => `/${name}`),
	);
	expect(manifest.oauth_config.scopes.bot).toEqual(Object.keys(botScopes));
	const events = ['messages', 'home', 'installations'].flatMap((file) =>
		[...textOf(`./listeners/${file}.ts`).matchAll(/app\.event\('([a-z_]+)'/g)].map(([, name]) => name),
	);
	// Direct messages are listened to by app.message.
	expect(manifest.settings.event_subscriptions.bot_events.toSorted()).toEqual(
		[...events, 'message.im'].toSorted(),
	);
});

test('the README tells every scope with its reason', () => {
	const readme = textOf('../../../README.md');
	for (const [scope, why] of Object.entries(botScopes)) expect(readme).toContain(`| \`${scope}\` | ${why} |`);
});

test('the manifest for HTTP differs in the way of delivery alone', () => {
	const addresses = new Set<string>();
	const http = JSON.parse(textOf('../manifest-http.json'), (name, value) => {
		if (name === 'socket_mode_enabled') return !value;
		if (name === 'redirect_urls') {
			expect(value).toEqual([`https://YOUR-ADDRESS${REDIRECT_PATH}`]);
			return undefined;
		}
		if (name !== 'url' && name !== 'request_url') return value;
		addresses.add(value);
		return undefined;
	});
	expect(http).toEqual(manifest);
	expect([...addresses]).toEqual([`https://YOUR-ADDRESS${EVENTS_PATH}`]);
});
