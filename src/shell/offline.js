
// What can wait until the first screen stands: the service worker, which keeps the app for use without a network,
// and then the word to the app that it may fetch its parts. Fetched twice at once they would take the line from
// what is seen, so the parts come after the worker has what it wants.
const quiet = globalThis.requestIdleCallback ?? ((then) => setTimeout(then, 200));
const goOn = () => quiet(() => dispatchEvent(new Event("stringloft-idle")));
// With a link the first screen waits for what reads it, and nobody would hear the word before that.
const stands = (then) => (document.getElementById("shell") ? setTimeout(stands, 50, then) : quiet(then));
stands(async () => {
  const { connection, serviceWorker } = navigator;
  try {
    const controlled = serviceWorker?.controller;
    const found = await serviceWorker?.register("sw.js");
    // The page stands, so its build is good.
    serviceWorker?.ready.then(({ active }) => active?.postMessage({ build, started: true }));
    if (controlled) {
      serviceWorker.addEventListener("controllerchange", () => dispatchEvent(new Event("stringloft-newer")), { once: true });
    }
    // Whoever pays for each byte gets only what is asked for.
    if (connection?.saveData || connection?.type === "cellular") return;
    // A first worker may fail, as amid an upload or where there is no room: the parts come all the same.
    const first = found?.installing;
    const failed = new Promise((then) => first?.addEventListener("statechange", () => first.state === "redundant" && then()));
    await Promise.race([serviceWorker?.ready, failed]);
  } catch (error) {
    // The page works without it too, so a refusal is no more than a note.
    console.info(`not kept for use offline: ${error}`);
  }
  goOn();
});
