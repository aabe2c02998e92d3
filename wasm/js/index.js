export {default as init} from "../pkg/raw/backcut.js"; console.log(new URL(WASM_FILE, import.meta.url));
