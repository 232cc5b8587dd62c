import { existsSync } from 'node:fs';
import { diagnose, told } from './diagnosis.js';
import { envFile } from './settings.js';

// The bots are started with this file; what stands in the environment already goes before it.
if (existsSync(envFile)) process.loadEnvFile(envFile);
else console.log('There is no .env: the settings are those of the environment.');

const found = await diagnose(process.env);
console.log(told(found));
process.exitCode = found.some(({ state }) => state === 'wrong') ? 1 : 0;
