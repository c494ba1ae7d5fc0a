/** Lets the browser paint, and take in what has arrived. */
export function pause(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 30);
  });
}
