/** Set when the package is bundled: the wasm file's address as seen from the module. */
declare const WASM_FILE: string | undefined;
