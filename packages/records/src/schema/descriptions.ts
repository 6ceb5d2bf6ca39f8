import * as z from 'zod/mini';

/** What the published JSON Schema calls a part that is used in several places, and says in words beside it. */
export const descriptions = z.registry<{ id?: string; description?: string }>();
