/**
 * What the platform takes, as published in discord-api-docs: `resources/message.mdx`,
 * `interactions/application-commands.mdx`, `components/reference.mdx`, `interactions/receiving-and-responding.mdx`.
 * Lengths in UTF-16 code units.
 */

export const CONTENT_CHARACTERS_MAX = 2000;
export const BUTTONS_PER_ROW_MAX = 5;
export const ROWS_MAX = 5;
export const BUTTON_LABEL_CHARACTERS_MAX = 80;
export const CUSTOM_ID_CHARACTERS_MAX = 100;

export const NAME_CHARACTERS_MAX = 32;
export const DESCRIPTION_CHARACTERS_MAX = 100;
export const OPTIONS_MAX = 25;
export const CHOICES_MAX = 25;
export const CHOICE_CHARACTERS_MAX = 100;
/** names, descriptions and values of a command and everything in it: 8000, of which we leave a little unused */
export const COMMAND_CHARACTERS_MAX = 7900;

export const MODAL_TITLE_CHARACTERS_MAX = 45;
export const MODAL_INPUTS_MAX = 5;
export const INPUT_LABEL_CHARACTERS_MAX = 45;
export const INPUT_VALUE_CHARACTERS_MAX = 4000;
export const PLACEHOLDER_CHARACTERS_MAX = 100;

/** the first response to an interaction has to come within this [ms] */
export const FIRST_RESPONSE_WITHIN_MS = 3000;

export const SELECT_OPTIONS_MAX = 25;
export const SELECT_CHARACTERS_MAX = 100;
export const FILES_MAX = 10;
export const ATTACHMENT_DESCRIPTION_CHARACTERS_MAX = 1024;
/** of a file where the place says no other (reference.mdx, "Uploading Files") [bytes] */
export const FILE_BYTES_MAX = 10 * 1024 * 1024;
/** of a whole request with its files: 25 MiB, of which some is left for the rest [bytes] */
export const REQUEST_BYTES_MAX = 24 * 1024 * 1024;
