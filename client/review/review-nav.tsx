import { A } from "@solidjs/router";
import { review } from "#client/text/english/review.ts";

/** The two places of the review. */
export function ReviewNav() {
  return (
    <nav class="tabs" aria-label={review.tabs.label}>
      <A href="/review" end>
        {review.tabs.matrix}
      </A>
      <A href="/review/changelog">{review.tabs.changelog}</A>
    </nav>
  );
}
