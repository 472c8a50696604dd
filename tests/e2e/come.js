// Whether the module of every part was fetched, for `browser.rs`.
const parts = ['drawing', 'windows', 'files', 'choosing', 'stock', 'papers', 'numbers', 'help'];
const fetched = performance.getEntriesByType('resource').filter((entry) => entry.responseEnd > 0);
return parts.every((part) => fetched.some((entry) => entry.name.includes(`/${part}-`)));
