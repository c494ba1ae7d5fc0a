import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import solid from "vite-plugin-solid";

export default defineConfig({
  root: "client",
  plugins: [
    solid(),
    VitePWA({
      // A new version waits until somebody wants it: a reload by itself would throw away what is being typed.
      registerType: "prompt",
      injectRegister: false,
      manifest: {
        name: "Pitslate",
        short_name: "Pitslate",
        description: "Race-weekend planner for a bicycle race team",
        start_url: "/",
        display: "standalone",
        background_color: "#ffffff",
        theme_color: "#000000",
        icons: [
          { src: "/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
          { src: "/icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
          { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
          { src: "/icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,wasm,json}"],
        navigateFallback: "/index.html",
        navigateFallbackDenylist: [/^\/sync\//, /^\/health/, /^\/metrics/],
        cleanupOutdatedCaches: true,
      },
    }),
  ],
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2022",
    // Which plugin took how long says nothing to whom `npm start` builds for.
    rolldownOptions: { checks: { pluginTimings: false } },
  },
  server: { proxy: { "/sync": { target: "ws://127.0.0.1:4680", ws: true } } },
});
