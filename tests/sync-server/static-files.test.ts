import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { type IncomingHttpHeaders, request } from "node:http";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { freshFolder, serve } from "./server-fixture.ts";

type Answer = { readonly status: number | undefined; readonly headers: IncomingHttpHeaders; readonly body: string };

/** Asks for exactly this path: `fetch` would tidy the dots away. */
function ask(port: number, path: string, method = "GET"): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request({ host: "127.0.0.1", port, path, method }, (response) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("end", () => {
        const body = Buffer.concat(parts).toString();
        resolve({ status: response.statusCode, headers: response.headers, body });
      });
    })
      .on("error", reject)
      .end();
  });
}

async function serveClient() {
  const outside = freshFolder();
  const folder = join(outside, "dist");
  mkdirSync(join(folder, "assets"), { recursive: true });
  writeFileSync(join(outside, "secret.txt"), "secret");
  mkdirSync(join(outside, "dist-secret"));
  writeFileSync(join(outside, "dist-secret", "secret.txt"), "secret");
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Home</title>");
  writeFileSync(join(folder, "assets", "index-BX3kq_9d.js"), "export {};");
  writeFileSync(join(folder, "assets", "style-a1B2c3D4.css"), "body {}");
  writeFileSync(join(folder, "assets", "reader-a1B2c3D4.wasm"), "wasm");
  writeFileSync(join(folder, "manifest.webmanifest"), "{}");
  writeFileSync(join(folder, "name with space.svg"), "<svg/>");
  writeFileSync(join(folder, ".hidden.txt"), "secret");
  symlinkSync(join(outside, "secret.txt"), join(folder, "link.txt"));
  return serve({ clientFolder: folder });
}

describe("the built client", () => {
  it.each([
    ["/", "text/html; charset=utf-8", "no-cache"],
    ["/index.html", "text/html; charset=utf-8", "no-cache"],
    ["/pit/bench?rider=anna", "text/html; charset=utf-8", "no-cache"],
    ["/assets/index-BX3kq_9d.js", "text/javascript; charset=utf-8", "public, max-age=31536000, immutable"],
    ["/assets/style-a1B2c3D4.css", "text/css; charset=utf-8", "public, max-age=31536000, immutable"],
    ["/assets/reader-a1B2c3D4.wasm", "application/wasm", "public, max-age=31536000, immutable"],
    ["/manifest.webmanifest", "application/manifest+json; charset=utf-8", "no-cache"],
    ["/name%20with%20space.svg", "image/svg+xml; charset=utf-8", "no-cache"],
  ])("serves %s as %s with caching %s", async (path, type, caching) => {
    const { port } = await serveClient();
    const { status, headers, body } = await ask(port, path);
    expect({ status, type: headers["content-type"], caching: headers["cache-control"] }).toEqual({
      status: 200,
      type,
      caching,
    });
    expect(Number(headers["content-length"])).toBe(body.length);
    if (type.startsWith("text/html")) expect(body).toContain("Home");
  });

  it.each([
    "/missing.js",
    "/assets/index-00000000.js",
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/..%5csecret.txt",
    "/assets/../../secret.txt",
    "/assets/%2e%2e/%2e%2e/secret.txt",
    "/....//secret.txt",
    "/../dist-secret/secret.txt",
    "//etc/passwd.txt",
    "/link.txt",
    "/.hidden.txt",
    "/%00.txt",
    "/secret.txt%00.js",
    "/%",
    "/C:/secret.txt",
  ])("has nothing at %s", async (path) => {
    const { port } = await serveClient();
    const { status, body } = await ask(port, path);
    expect(status).toBe(404);
    expect(body).toBe("There is no such file.\n");
  });

  it.each(["/../", "/../..", "/%2e%2e/etc/passwd"])("gives nothing from outside for the page %s", async (path) => {
    const { port } = await serveClient();
    const { body } = await ask(port, path);
    expect(body).toBe("There is no such file.\n");
  });

  it("answers HEAD without a body, and no other method", async () => {
    const { port } = await serveClient();
    const head = await ask(port, "/index.html", "HEAD");
    expect(head).toMatchObject({ status: 200, body: "" });
    expect(Number(head.headers["content-length"])).toBeGreaterThan(0);
    for (const method of ["POST", "PUT", "DELETE", "OPTIONS"]) {
      const answer = await ask(port, "/index.html", method);
      expect(answer).toMatchObject({ status: 405, headers: { allow: "GET, HEAD" } });
    }
  });

  it("carries headers that let in nothing from elsewhere", async () => {
    const { port } = await serveClient();
    for (const path of ["/", "/health", "/missing.js"]) {
      const { headers } = await ask(port, path);
      expect(headers["x-content-type-options"]).toBe("nosniff");
      const policy = String(headers["content-security-policy"]);
      expect(policy.split("; ")).toEqual(
        expect.arrayContaining([
          "default-src 'self'",
          `connect-src 'self' ws://127.0.0.1:${port} wss://127.0.0.1:${port}`,
          "script-src 'self' 'wasm-unsafe-eval'",
          "object-src 'none'",
          "frame-ancestors 'none'",
        ]),
      );
    }
  });

  it("says in a sentence that it is not built", async () => {
    const { port } = await serve({ clientFolder: join(freshFolder(), "nothing") });
    expect(await ask(port, "/")).toMatchObject({
      status: 503,
      body: "The client is not built yet: npm start builds it.\n",
    });
  });
});

it("tells its health as JSON", async () => {
  const { port } = await serveClient();
  const { status, headers, body } = await ask(port, "/health");
  expect(status).toBe(200);
  expect(headers).toMatchObject({ "content-type": "application/json; charset=utf-8", "cache-control": "no-store" });
  expect(JSON.parse(body)).toEqual({
    status: "ok",
    protocolVersion: 4,
    connections: 0,
    documents: 0,
    refusedUpdates: 0,
    upstream: null,
  });
});
