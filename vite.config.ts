import { defineConfig } from "vite";
import solid from "vite-plugin-solid";

export default defineConfig({
  root: "client",
  plugins: [solid()],
  build: { outDir: "dist", emptyOutDir: true, target: "es2022" },
  server: { proxy: { "/sync": { target: "ws://127.0.0.1:4680", ws: true } } },
});
