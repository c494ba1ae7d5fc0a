/** Runs in the page: what of a page to be printed would need a background, a colour or a grey, or is cut off. */

export interface PrintedLook {
  /** How many elements were looked at. */
  readonly seen: number;
  /** One line for each thing that is neither black nor white, or stands on a background. */
  readonly wrong: readonly string[];
  /** Buttons, links and fields that would be printed. */
  readonly visibleControls: number;
}

export function colouredOrGrey(): PrintedLook {
  const clear = ["rgba(0, 0, 0, 0)", "rgb(255, 255, 255)"];
  const black = "rgb(0, 0, 0)";
  const wrong: string[] = [];
  let seen = 0;
  const isShown = (element: Element) => element.getClientRects().length > 0;
  const article = document.querySelector("article");
  if (!article) throw new Error("There is no page to be printed.");
  for (const element of [document.documentElement, document.body, article, ...article.querySelectorAll("*")]) {
    if (!isShown(element)) continue;
    seen += 1;
    const style = getComputedStyle(element);
    const name = `${element.tagName.toLowerCase()}.${element.getAttribute("class") ?? ""}`;
    if (!clear.includes(style.backgroundColor)) wrong.push(`${name} on ${style.backgroundColor}`);
    if (style.backgroundImage !== "none") wrong.push(`${name} on a picture`);
    if (style.opacity !== "1") wrong.push(`${name} at opacity ${style.opacity}`);
    if (article.contains(element) && style.color !== black) wrong.push(`${name} in ${style.color}`);
    for (const side of ["Top", "Right", "Bottom", "Left"] as const) {
      const hasLine = style[`border${side}Width`] !== "0px" && style[`border${side}Style`] !== "none";
      if (hasLine && style[`border${side}Color`] !== black) wrong.push(`${name} edged ${style[`border${side}Color`]}`);
    }
    if (element instanceof SVGElement) {
      for (const paint of [style.fill, style.stroke]) {
        if (!["none", black, "rgb(255, 255, 255)"].includes(paint)) wrong.push(`${name} painted ${paint}`);
      }
    }
    const { left, right } = element.getBoundingClientRect();
    if (left < -1 || right > document.documentElement.clientWidth + 1) wrong.push(`${name} is wider than the page`);
  }
  const controls = [...document.querySelectorAll("button, a, input, select")];
  return { seen, wrong, visibleControls: controls.filter(isShown).length };
}
