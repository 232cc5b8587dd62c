/**
 * Interactions, by discord-api-docs `interactions/receiving-and-responding.mdx`: the first response within three
 * seconds, once; the token then good for 15 minutes for edits and follow-ups; which kinds of response fit which
 * kinds of interaction; a deferred answer keeps the visibility chosen when it was deferred.
 */

import type { Answer } from '../common/http.js';
import { arrayOf, type JsonObject, objectOf } from '../common/json.js';
import { checkModal } from './component-limits.js';
import { refusals } from './errors.js';
import { FormErrors } from './form-errors.js';
import { Flag } from './message-limits.js';
import { type DiscordMessage, type DiscordUser, messageObject } from './model.js';
import type { Judged, Posting, UploadedFile } from './posting.js';

export const FIRST_RESPONSE_WITHIN_MS = 3000;
const TOKEN_LIFETIME_MS = 15 * 60 * 1000;

export const InteractionType = { command: 2, component: 3, autocomplete: 4, modalSubmit: 5 } as const;
export const ResponseType = {
	message: 4,
	deferMessage: 5,
	deferUpdate: 6,
	update: 7,
	choices: 8,
	modal: 9,
} as const;

const FITTING: Record<number, readonly number[]> = {
	[InteractionType.command]: [4, 5, 9],
	[InteractionType.component]: [4, 5, 6, 7, 9],
	[InteractionType.autocomplete]: [8],
	[InteractionType.modalSubmit]: [4, 5, 6, 7],
};

export interface DiscordInteraction {
	readonly id: string;
	readonly token: string;
	readonly type: number;
	/** the `d` of INTERACTION_CREATE */
	readonly payload: JsonObject;
	readonly user: string;
	readonly channelId: string;
	readonly guildId?: string;
	/** the message whose button or menu was used */
	readonly source?: DiscordMessage;
	readonly createdMs: number;
	readonly createdAt: number;
	responseType: number | null;
	/** from the dispatch to the first response [ms] */
	responseMs: number | null;
	original?: DiscordMessage;
	readonly followUps: DiscordMessage[];
	choices?: JsonObject[];
	modal?: JsonObject;
}

export class Interactions {
	readonly all: DiscordInteraction[] = [];

	constructor(
		private readonly posting: Posting,
		private readonly bot: DiscordUser,
		private readonly applicationId: string,
		private readonly nowMs: () => number,
		private readonly origin: () => string,
		private readonly judged: Judged,
		private readonly published: (message: DiscordMessage) => void,
	) {}

	private target(interaction: DiscordInteraction, isEphemeral: boolean) {
		return {
			channelId: interaction.channelId,
			guildId: interaction.guildId,
			author: this.bot,
			origin: 'interaction' as const,
			visibleTo: isEphemeral ? interaction.user : undefined,
			interaction: { id: interaction.id, type: interaction.type, user: interaction.user },
		};
	}

	private misfit(interaction: DiscordInteraction, type: number, body: JsonObject): Answer {
		const errors = new FormErrors();
		errors.add('type', `Response type ${type} does not fit interaction type ${interaction.type}`);
		this.judged('interaction.callback', errors.problems, body, 50035);
		return refusals.invalidForm(errors.body());
	}

	callback(
		path: { id: string; token: string; withResponse: boolean },
		body: JsonObject,
		files: UploadedFile[],
	): Answer {
		const interaction = this.all.find((one) => one.id === path.id && one.token === path.token);
		if (!interaction) return refusals.unknownInteraction;
		if (interaction.responseType !== null) return refusals.alreadyAcknowledged;
		const waitedMs = this.nowMs() - interaction.createdMs;
		if (waitedMs > FIRST_RESPONSE_WITHIN_MS) return refusals.unknownInteraction;
		const type = Number(body.type);
		if (!FITTING[interaction.type]?.includes(type)) return this.misfit(interaction, type, body);
		const data = objectOf(body.data);
		const refused = this.respond(interaction, type, data, files);
		if (refused) return refused;
		interaction.responseType = type;
		interaction.responseMs = performance.now() - interaction.createdAt;
		if (!path.withResponse) return { status: 204 };
		const { original } = interaction;
		const about = { id: interaction.id, type: interaction.type, response_message_id: original?.id };
		const resource = original === undefined ? { type } : { type, message: this.api(original) };
		return { status: 200, body: { interaction: about, resource } };
	}

	private respond(
		interaction: DiscordInteraction,
		type: number,
		data: JsonObject,
		files: UploadedFile[],
	): Answer | undefined {
		const isEphemeral = (Number(data.flags ?? 0) & Flag.ephemeral) !== 0;
		if (type === ResponseType.message) {
			const outcome = this.posting.create(
				this.target(interaction, isEphemeral),
				data,
				files,
				'interaction.callback',
			);
			if ('refused' in outcome) return outcome.refused;
			interaction.original = outcome.message;
			this.published(outcome.message);
		} else if (type === ResponseType.deferMessage) {
			interaction.original = this.posting.placeholder(this.target(interaction, isEphemeral));
		} else if (type === ResponseType.update || type === ResponseType.deferUpdate) {
			if (!interaction.source) return this.misfit(interaction, type, data);
			interaction.original = interaction.source;
			if (type === ResponseType.update) {
				const outcome = this.posting.edit(
					interaction.source,
					data,
					files,
					'interaction.callback',
					'interaction',
				);
				if ('refused' in outcome) return outcome.refused;
			}
		} else if (type === ResponseType.choices) {
			return this.takeChoices(interaction, data);
		} else {
			const errors = new FormErrors();
			checkModal(errors, data);
			if (errors.any) {
				this.judged('interaction.callback', errors.problems, data, 50035);
				return refusals.invalidForm(errors.body());
			}
			interaction.modal = data;
		}
		return undefined;
	}

	private takeChoices(interaction: DiscordInteraction, data: JsonObject): Answer | undefined {
		const errors = new FormErrors();
		errors.list('data.choices', data.choices, 25).forEach((choice, at) => {
			errors.length(`data.choices.${at}.name`, choice.name, 100, 1);
			if (typeof choice.value === 'string') errors.length(`data.choices.${at}.value`, choice.value, 100, 1);
		});
		if (errors.any) {
			this.judged('interaction.callback', errors.problems, data, 50035);
			return refusals.invalidForm(errors.body());
		}
		interaction.choices = arrayOf(data.choices).map(objectOf);
		return undefined;
	}

	private api(message: DiscordMessage): JsonObject {
		return messageObject(message, this.origin());
	}

	/** The interaction of a webhook path, or why there is none. */
	private byToken(applicationId: string, token: string): DiscordInteraction | Answer {
		const interaction = this.all.find((one) => one.token === token);
		if (!interaction || applicationId !== this.applicationId) return refusals.unknownWebhook;
		if (this.nowMs() - interaction.createdMs > TOKEN_LIFETIME_MS) return refusals.invalidWebhookToken;
		// Until the first response the token opens nothing.
		if (interaction.responseType === null) return refusals.unknownWebhook;
		return interaction;
	}

	followUp(applicationId: string, token: string, body: JsonObject, files: UploadedFile[]): Answer {
		const interaction = this.byToken(applicationId, token);
		if (!('followUps' in interaction)) return interaction;
		const isEphemeral = (Number(body.flags ?? 0) & Flag.ephemeral) !== 0;
		const outcome = this.posting.create(
			this.target(interaction, isEphemeral),
			body,
			files,
			'webhook.followup',
		);
		if ('refused' in outcome) return outcome.refused;
		interaction.followUps.push(outcome.message);
		this.published(outcome.message);
		return { status: 200, body: this.api(outcome.message) };
	}

	webhookMessage(
		method: string,
		path: { applicationId: string; token: string; messageId: string },
		body: JsonObject,
		files: UploadedFile[],
	): Answer {
		const interaction = this.byToken(path.applicationId, path.token);
		if (!('followUps' in interaction)) return interaction;
		const message =
			path.messageId === '@original'
				? interaction.original
				: interaction.followUps.find((one) => one.id === path.messageId);
		if (!message || message.deleted) return refusals.unknownMessage;
		if (method === 'GET') return { status: 200, body: this.api(message) };
		if (method === 'DELETE') {
			message.deleted = true;
			return { status: 204 };
		}
		const outcome = this.posting.edit(message, body, files, 'webhook.edit', 'interaction');
		if ('refused' in outcome) return outcome.refused;
		return { status: 200, body: this.api(message) };
	}

	/** The message an interaction shows, once it no longer says it is thinking. */
	settled(interaction: DiscordInteraction): DiscordMessage | undefined {
		const { original } = interaction;
		return original && (original.flags & Flag.loading) === 0 ? original : undefined;
	}
}
