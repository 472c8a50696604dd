// Runs axe on the page and gives a few lines for each thing found, for `browser.rs`.
return axe.run(document).then((result) => ({
  passes: result.passes.length,
  found: result.violations.map((found) => [
    `${found.impact}, ${found.id}: ${found.help}`,
    ...found.nodes.map((node) => `    ${node.target}: ${node.failureSummary.replaceAll('\n', ' ')}`),
  ].join('\n')),
}));
