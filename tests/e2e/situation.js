// What a page that does not come to what is waited for tells of itself, for `browser.rs`.
const { serviceWorker } = navigator;
const registration = await serviceWorker?.getRegistration().catch(String);
const workers = ['installing', 'waiting', 'active'].map((name) => `${name}: ${registration?.[name]?.state}`);
return {
    stopped: document.getElementById('fault')?.report,
    text: document.body.innerText.slice(0, 300),
    since: performance.now(),
    seen: document.visibilityState,
    worker: [...workers, `in charge: ${serviceWorker?.controller?.state}`],
    fetched: performance.getEntriesByType('resource').map((entry) =>
      `${entry.name.split('/').pop()} ${Math.round(entry.startTime)} to ${Math.round(entry.responseEnd)}`),
};
