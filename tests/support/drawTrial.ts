import { driveTrial, failed, ok, type Result, type TrialPicture, trialOf } from "../../engine/index.ts";

type Request = Parameters<typeof trialOf>[0];

/** A trial run to its end: the picture of the request's own kind. */
export function drawTrial<K extends Request["kind"]>(
  request: Extract<Request, { readonly kind: K }>,
): Result<Extract<TrialPicture, { readonly kind: K }>> {
  const trial = trialOf(request);
  if (!trial.ok) return trial;
  const picture = driveTrial(trial.value);
  if (!picture.ok) return picture;
  const { value } = picture;
  const isOwn = (one: TrialPicture): one is Extract<TrialPicture, { readonly kind: K }> => one.kind === request.kind;
  return isOwn(value)
    ? ok(value)
    : failed({ code: "other-kind", where: "", message: `A picture of kind ${value.kind}.` });
}
