import { readdirSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Bench } from './bench.js';

// Every file of this folder may export `benches`; `pnpm bench WORD` runs those whose name has the word: not
// "loads" for "load".
const folder = fileURLToPath(new URL('.', import.meta.url));
const wanted = (process.argv[2] ?? '').toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

for (const file of readdirSync(folder).sort()) {
	if (!file.endsWith('.js') || file === 'run.js' || file === 'bench.js') continue;
	const { benches = [] } = (await import(pathToFileURL(`${folder}${file}`).href)) as {
		benches?: readonly Bench[];
	};
	for (const bench of benches) {
		const words = new Set(bench.name.toLowerCase().match(/[\p{L}\p{N}]+/gu));
		if (!wanted.every((word) => words.has(word))) continue;
		const figure = await bench.run();
		console.log(`${bench.name}: ${figure}${bench.target === null ? '' : ` (target: ${bench.target})`}`);
	}
}
