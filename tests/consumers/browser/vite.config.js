export default { base: "./", worker: { format: "es" }, build: { outDir: "out", assetsInlineLimit: 0 }, logLevel: "warn" };
