/** Set when the package is bundled: the wasm file's address as seen from the module. */
declare const WASM_FILE: string;
/** The same, of the full module's wasm file. */
declare const FULL_WASM_FILE: string;
/** The same, of what comes after the first picture. */
declare const LATE_FILE: string;
/** The same, of the words in Spanish. */
declare const SPANISH_FILE: string;
/** The same, of what sharing needs. */
declare const SHARING_FILE: string;
/** The same, of the modes that teach. */
declare const TEACHING_FILE: string;
/** Set when the package is bundled: the full module's address as seen from the first one. */
declare const FULL_FILE: string;
