/**
 * What the platform takes in one message, as published in its Block Kit reference
 * (docs.slack.dev/reference/block-kit) unless said otherwise. Lengths in UTF-16 code units.
 */

export const HEADER_CHARACTERS_MAX = 150;
export const BUTTON_LABEL_CHARACTERS_MAX = 75;
export const BUTTON_VALUE_CHARACTERS_MAX = 2000;
export const BUTTONS_PER_ROW_MAX = 25;
export const BLOCKS_MAX = 50;

/** the published limit of a section's text; we hold every block of text to it */
export const BLOCK_CHARACTERS_MAX = 3000;

/**
 * An undocumented cap on all blocks of a message, measured at about 13,200 characters (issue 2509 of the platform's
 * own client library); we stay well below it.
 */
export const MESSAGE_CHARACTERS_MAX = 11_000;

/** the length to which docs.slack.dev recommends to keep the text beside the blocks; from memory */
export const FALLBACK_CHARACTERS_MAX = 4000;

/** a response_url takes five posts in 30 minutes (docs.slack.dev/interactivity/handling-user-interaction) */
export const POSTS_PER_RESPONSE_URL_MAX = 5;

/** a signed request is refused when its time is further off than this (docs.slack.dev/authentication) [s] */
export const TIMESTAMP_TOLERANCE_S = 300;

export const MODAL_TITLE_CHARACTERS_MAX = 24;
export const PLACEHOLDER_CHARACTERS_MAX = 150;
export const OPTION_CHARACTERS_MAX = 75;
export const SELECT_OPTIONS_MAX = 100;
export const INPUT_LABEL_CHARACTERS_MAX = 2000;
export const MODAL_BLOCKS_MAX = 100;

/** a file's description (docs.slack.dev/reference/methods/files.getUploadURLExternal) */
export const ALT_TEXT_CHARACTERS_MAX = 1000;
/** the platform takes 1 GB (from memory); what is held in memory to be sent is kept far below [bytes] */
export const FILE_BYTES_MAX = 50 * 1024 * 1024;
/** a request's body; the platform sends far less [bytes] */
export const BODY_BYTES_MAX = 1024 * 1024;
export const PRIVATE_METADATA_CHARACTERS_MAX = 3000;
/** no limit is published for the text under a field of a form; longer ones would hide the form */
export const FIELD_ERROR_CHARACTERS_MAX = 300;
