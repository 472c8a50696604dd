// Loads the app, or says in the page why it could not. A file of its own, since the page's policy allows
// no script inside the page. The build adds offline.js to it in a release build.

/** What is wrong and what to do, for someone who only wants to open the page. */
function explain(error) {
  if (typeof WebAssembly !== "object") {
    return "This browser cannot run WebAssembly, which Stringloft is made of. Open it in a current Firefox, Chrome, Edge or Safari.";
  }
  if (error instanceof WebAssembly.CompileError) {
    return "This browser is too old for Stringloft, or forbids WebAssembly. Update it, or open the page in another one.";
  }
  if (error instanceof WebAssembly.RuntimeError) {
    return "Stringloft stopped while opening. Your saved designs are untouched. Reload the page; if it stops again, please report it.";
  }
  return "A part of Stringloft did not arrive. Check the connection, then reload the page.";
}

const { js, wasm, link } = document.querySelector("script[data-wasm]").dataset;
// Whoever comes with a link needs what reads it at once; it would be asked for only when the program runs.
if (location.hash.length > 1) {
  for (const href of link ? link.split(" ") : []) {
    const early = Object.assign(document.createElement("link"), { rel: "preload", as: "fetch", crossOrigin: "anonymous", href });
    document.head.append(early);
  }
}
try {
  const { default: init } = await import(js);
  await init({ module_or_path: wasm });
} catch (error) {
  const state = document.getElementById("shell-state");
  if (state) {
    state.textContent = explain(error);
    state.setAttribute("role", "alert");
  }
  throw error; // for the console
}
