/** A job is plain data that is replaced and never changed in place: the type says so at every depth. */
export type Immutable<T> = T extends object ? { readonly [K in keyof T]: Immutable<T[K]> } : T;
