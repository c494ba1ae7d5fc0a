/** English names of what one did oneself and can take back, beside those at a rider's bench. */
export const ownActs = {
  run: (session: string) => `your run in ${session}`,
  course: "course and conditions",
  weekend: "the weekend and its sessions",
  rider: (name: string) => `details of ${name}`,
  noRun: (name: string) => `${name}: no run to wait for`,
};
