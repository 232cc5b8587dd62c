import type * as Report from '@lugbook/report';

/** The drawing of sheets and pictures, loaded when the first is asked for: it takes half a second that most starts don't need. */
export function report(): Promise<typeof Report> {
	return import('@lugbook/report');
}
