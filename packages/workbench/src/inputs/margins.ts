/**
 * What must be left in hand [m]: preload at full extension, so that the spring never goes loose (2 to 5 mm, from memory), and
 * room before the coils touch at full bump (2 mm, common practice, no source).
 */
export const margins = { keepPreload: 0.003, keepFromCoilBind: 0.002 } as const;
