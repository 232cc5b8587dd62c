export { type BotOptions, type DiscordBot, startDiscordBot } from './bot.js';
export { charactersOf, commands, optionNames } from './commands.js';
export { diagnoseDiscord } from './diagnosis.js';
export { openProgramLog } from './log.js';
export { asBody, type Page, pagesOf } from './render.js';
export { readSettings, type Settings } from './settings.js';
