/** The mechanic's first work of a weekend: course and conditions of its four sessions. */
import { enter, type Person } from "./person.ts";

const sessions = ["Practice 1", "Practice 2", "Qualifying", "Race"];

/** From the pit's first screen, with the weekend chosen; ends on it. */
export async function enterCourse(mechanic: Person): Promise<void> {
  const { page } = mechanic;
  await page.getByRole("link", { name: "Enter course and conditions" }).click();
  await enter(page, /^Steep/, 0.6);
  await enter(page, /^Jumpy/, 0.3);
  await enter(page, /^Wet/, 0.1);
  await enter(page, /^Altitude/, 1950);
  for (const session of sessions) {
    await enter(page, `${session}: Air at the session (°C)`, 22);
    await enter(page, `${session}: Air at the bench (°C)`, 12);
    await page
      .locator("section, fieldset")
      .filter({ has: page.getByText(session, { exact: true }) })
      .getByText("dry dust", { exact: true })
      .last()
      .click();
  }
  await page.getByRole("button", { name: "Save" }).click();
  await mechanic.sees("steep 0.6, jumpy 0.3, wet 0.1");
}
