import { join as joinPath } from "node:path";
import { expect, it } from "vitest";
import { join } from "./raw-device.ts";
import { deviceDocument, freshFolder, numbered, numbersIn, push } from "./server-fixture.ts";
import { startProcess } from "./server-process.ts";
import { eventually, write } from "./upstream-fixture.ts";

const numbersAt = async (url: string): Promise<number[]> => {
  const device = await join({ url });
  const numbers = numbersIn(await device.everything());
  device.socket.close();
  return numbers;
};

it("P37 holds for real servers in a chain of which each is killed and started again", async () => {
  const folder = freshFolder();
  const started = (name: string, port: string, ...options: string[]) =>
    startProcess("--port", port, "--data", joinPath(folder, name), "--log-level", "silent", ...options);
  const portOf = (url: string) => url.slice(url.lastIndexOf(":") + 1);

  const home = started("home", "0");
  const homeUrl = await home.listening;
  const near = started("near", "0", "--upstream", `http://${homeUrl}`);
  const nearUrl = await near.listening;
  const far = started("far", "0", "--upstream", `ws://${nearUrl}`);
  const farUrl = await far.listening;
  const document = deviceDocument(5);

  await write({ url: farUrl }, push(document, numbered(1)));
  await eventually(async () => expect(await numbersAt(homeUrl)).toEqual([1]));

  near.child.kill("SIGKILL");
  await near.finished;
  await write({ url: farUrl }, push(document, numbered(2)));
  await write({ url: homeUrl }, push(deviceDocument(6), numbered(3)));
  const nearAgain = started("near", portOf(nearUrl), "--upstream", `http://${homeUrl}`);
  await nearAgain.listening;
  await eventually(async () => expect(await numbersAt(homeUrl)).toEqual([1, 2, 3]));
  await eventually(async () => expect(await numbersAt(farUrl)).toEqual([1, 2, 3]));

  home.child.kill("SIGKILL");
  far.child.kill("SIGKILL");
  await Promise.all([home.finished, far.finished]);
  await write({ url: nearUrl }, push(document, numbered(4)));
  const [homeAgain, farAgain] = [
    started("home", portOf(homeUrl)),
    started("far", portOf(farUrl), "--upstream", `http://${nearUrl}`),
  ];
  await Promise.all([homeAgain.listening, farAgain.listening]);
  for (const url of [homeUrl, farUrl]) {
    await eventually(async () => expect(await numbersAt(url)).toEqual([1, 2, 3, 4]));
  }
  for (const server of [homeAgain, nearAgain, farAgain]) server.child.kill("SIGTERM");
  for (const server of [homeAgain, nearAgain, farAgain]) {
    expect(await server.finished).toMatchObject({ code: 0, errors: "" });
  }
});
