import { For, Match, Show, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { trade } from "#client/text/trade.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import type { Approval } from "./create-approval.ts";
import type { RiderReview } from "./create-rider-review.ts";
import { ProposalTable } from "./proposal-table.tsx";
import { SendBack } from "./send-back.tsx";

/** What is on the bike against the baseline, and the acts that make it the new one or send it back. */
export function WeekendProposal(props: { rider: RiderReview; approval: Approval }) {
  const device = useDevice();
  const type = () => common.courseTypes[props.rider.type()];
  const accepted = () => {
    const result = props.rider.proposal();
    return result?.ok ? result.proposal : undefined;
  };
  const refused = () => {
    const result = props.rider.proposal();
    return result && !result.ok ? result.why : undefined;
  };
  return (
    <section class="card stack">
      <h2>{review.weekend.title}</h2>
      <WeekendChoice
        label={review.weekend.choose}
        weekends={props.rider.weekendChoices()}
        value={props.rider.plan()?.weekendId}
        onChange={(weekend) => props.rider.choose({ weekend })}
      />
      <Show when={props.rider.sessions().length > 0}>
        <Choice
          legend={review.weekend.session}
          required
          options={props.rider.sessions().map(({ id }) => id)}
          labelOf={(id) => props.rider.sessions().find((session) => session.id === id)?.session.name ?? id}
          value={props.rider.session()?.id}
          onChange={(session) => session !== undefined && props.rider.choose({ session })}
        />
      </Show>
      <Switch>
        <Match when={!props.rider.plan()}>
          <p>{review.weekend.none}</p>
        </Match>
        <Match when={!props.rider.plan()?.course}>
          <p>{review.weekend.noCourse}</p>
        </Match>
        <Match when={!props.rider.ride()}>
          <p>{review.weekend.noConditions}</p>
        </Match>
        <Match when={refused()}>
          {(why) => (
            <div>
              <p>
                <strong>{review.weekend.notYet}</strong>
              </p>
              <ul>
                <For each={why()}>{(obstacle) => <li>{trade.proposalObstacle(obstacle)}</li>}</For>
              </ul>
            </div>
          )}
        </Match>
        <Match when={accepted()}>
          {(proposal) => (
            <>
              <Show when={props.rider.holdsAt()}>{(sentence) => <p>{sentence()}</p>}</Show>
              <ProposalTable proposal={proposal()} isDisputed={props.rider.isDisputed()} />
              <button type="button" class="main" onClick={() => props.approval.approve(proposal())}>
                {review.weekend.approve(type())}
              </button>
              <SendBack ledger={device.ledger()} rider={props.rider} approval={props.approval} />
            </>
          )}
        </Match>
      </Switch>
    </section>
  );
}
