// The start of a page's wasm. The tool joins three texts into one script with no global
// names: the bindings (which define wasm_bindgen), this one, and NAME.js, which calls
// startWasm once.

const ownScript = document.currentScript;

// Instantiates the wasm of this page's program ("study", "lookup") and gives its exports.
// The hosted edition fetches it from the address on the script's own element; in the
// portable edition it has come already, as base64 in a script.
async function startWasm(name) {
  const kept = globalThis.beforeTheBenchWasm?.[name];
  const source = kept
    ? Uint8Array.from(atob(kept), (letter) => letter.charCodeAt(0))
    : new URL(ownScript.dataset.wasm, document.baseURI);
  await wasm_bindgen({ module_or_path: source });
  return wasm_bindgen;
}
