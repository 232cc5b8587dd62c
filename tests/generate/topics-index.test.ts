import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

// `pnpm generate` writes what these tests compare with; a stale file fails here.
const folder = fileURLToPath(new URL('../../packages/core/src/topics/', import.meta.url));

function constantName(topic: string): string {
	return topic.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

test('the list of topics holds every topic file', async () => {
	const names = readdirSync(folder)
		.filter((file) => file.endsWith('.ts') && file !== 'index.ts' && !file.endsWith('.test.ts'))
		.map((file) => file.replace(/\.ts$/, ''))
		.sort();
	const imports = names.map((name) => `import { ${constantName(name)} } from './${name}.js';`);
	const list = `[${names.map(constantName).join(', ')}]`;
	const flat = `export const topics: readonly AnyTopic[] = ${list};`;
	// Written as the formatter would, so that generating and formatting agree.
	const topics =
		flat.length <= 110
			? flat
			: `export const topics: readonly AnyTopic[] = [\n${names.map((name) => `\t${constantName(name)},\n`).join('')}];`;
	const text = `// Written by \`pnpm generate\` from the files of this folder: one topic a file.
import type { AnyTopic } from '../topic/declare.js';
${imports.join('\n')}

${topics}

export function topicNamed(name: string): AnyTopic | null {
	return topics.find((topic) => topic.name === name) ?? null;
}
`;
	await expect(text).toMatchFileSnapshot(`${folder}index.ts`);
});
