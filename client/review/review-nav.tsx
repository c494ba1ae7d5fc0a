import { A } from "@solidjs/router";
import { data } from "#client/text/data.ts";
import { print } from "#client/text/print.ts";
import { review } from "#client/text/review.ts";

/** The places of the review. */
export function ReviewNav() {
  return (
    <nav class="tabs" aria-label={review.tabs.label}>
      <A href="/review" end>
        {review.tabs.matrix}
      </A>
      <A href="/review/changelog">{review.tabs.changelog}</A>
      <A href="/print/weekend">{print.links.report}</A>
      <A href="/data">{data.link}</A>
    </nav>
  );
}
