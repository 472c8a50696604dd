
// Keeps the app for use without a network. The page works without it too, so a refusal is no more than a note.
navigator.serviceWorker?.register("sw.js").catch((error) => console.info(`not kept for use offline: ${error}`));
