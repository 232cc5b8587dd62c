import { readFileSync } from 'node:fs';
import { PermissionFlagsBits } from 'discord.js';
import { expect, test } from 'vitest';

test('the address of the README asks for the permissions that its table explains, and no others', () => {
	const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
	const address = new URL(/`(https:\/\/discord\.com\/oauth2\/authorize\S+)`/.exec(readme)?.[1] ?? '');
	expect(address.searchParams.get('scope')).toBe('bot applications.commands');
	const asked = BigInt(address.searchParams.get('permissions') ?? '');
	const named = Object.entries(PermissionFlagsBits)
		.filter(([name]) => readme.includes(name.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').replace(' In ', ' in ')))
		.reduce((bits, [, bit]) => bits | bit, 0n);
	expect(asked).toBe(named);
});
