using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Kisses;

/// <summary>Finds the ways round a double kiss: the smallest change of one thing that still makes the ball and leaves
/// the gap that is wanted.</summary>
/// <remarks>
/// Speed, side and height are changed in fifths of the steps that a student is told (a quarter of the speed, a quarter
/// of a tip), either way. At each the aim is looked for anew around the old one, as far as the hit stays the same to a
/// sixteenth of a ball, and set to the middle of the range that clears; what the hit changes is added to the cost, and
/// the change that costs least is taken. Where the hit alone would clear as well the change is left out. For the cut
/// the aims at the old speed and tip are looked through up to half a ball to either side, and the range nearest in the
/// hit is taken. Steps and costs are a convention of this project; common practice, no source.
/// </remarks>
public static class KissEscapes
{
    private const double Degree = Math.PI / 180;

    /// <summary>A step of speed: a quarter of it.</summary>
    private const double SpeedStep = 0.25;

    /// <summary>A step of the tip: a quarter of its width, as the shaft is moved.</summary>
    private const double TipStep = 0.25;

    /// <summary>A step of the cut: an eighth of a ball in the hit fraction.</summary>
    private const double HitStep = 0.125;

    /// <summary>Another route counts as much as three steps.</summary>
    private const double RouteCost = 3;

    /// <summary>A step is tried in so many parts.</summary>
    private const int PartsOfAStep = 5;

    /// <summary>Changes beyond so many steps are another shot.</summary>
    private const int MostSteps = 3;

    /// <summary>To aim anew the hit may change by half a step: it is the same hit to the eye.</summary>
    private const double SameHit = 0.5 * HitStep;

    /// <summary>A change of the hit of this part of what would do alone is not merely along with another
    /// change.</summary>
    private const double AllButTheHit = 0.9;

    /// <summary>The hit is varied this far to change the cut: half a ball.</summary>
    private const double OtherHit = 0.5;

    /// <summary>The hit from one trial to the next: a quarter of a degree of the object ball's way on a full
    /// hit.</summary>
    private const double HitTrial = 0.25 * Degree;

    /// <summary>Looks for ways round.</summary>
    /// <param name="question">The stroke, and the gap that is wanted.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap that is wanted is not positive.</exception>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static KissAnswer Find(KissQuestion question, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.Clearance, nameof(question));
        var trials = new KissTrials(question);
        KissTrial before = trials.Play(question.Stroke, question.Route);
        if (before.Gap is null || before.Clears(question.Clearance)) return new KissAnswer(before.Gap, false, []);

        Stroke stroke = question.Stroke;
        CueSpec cue = question.Setup.Equipment.Cue;
        double radius = question.Setup.Balls[question.CueBall].Radius;
        double tip = TipContact.ContactOffset(TipStep * cue.TipDiameter, radius, cue);
        KissEscape? cut = ByCut(question, trials, before.Cut, stop);
        KissEscape?[] found =
        [
            cut,
            ByStep(KissChange.Speed, SpeedStep * stroke.Speed, by => stroke with { Speed = stroke.Speed + by }),
            ByStep(KissChange.Side, tip, by => stroke with { OffsetRight = stroke.OffsetRight + by }),
            ByStep(KissChange.Height, tip, by => stroke with { OffsetAbove = stroke.OffsetAbove + by }),
            ByRoute(question, trials),
        ];
        return new KissAnswer(
            before.Gap, before.Kisses,
            [.. found.OfType<KissEscape>().OrderBy(escape => escape.Cost).ThenBy(escape => escape.Change)]);

        KissEscape? ByStep(KissChange change, double step, Func<double, Stroke> changed) =>
            KissEscapes.ByStep(question, trials, before.Cut, cut, change, step, changed, stop);
    }

    private static KissEscape? ByStep(
        KissQuestion question, KissTrials trials, double cutBefore, KissEscape? byCut, KissChange change, double step,
        Func<double, Stroke> changed, CancellationToken stop)
    {
        // Where the hit alone would do as well, it is the hit that clears, and this change only comes with it.
        double hitAlone = byCut?.Cost ?? double.PositiveInfinity;
        KissEscape? best = null;
        for (int part = 1; part <= MostSteps * PartsOfAStep; part++)
        {
            double cost = (double)part / PartsOfAStep;
            if (best is not null && cost >= best.Cost) break;
            foreach (int sign in (ReadOnlySpan<int>)[1, -1])
            {
                stop.ThrowIfCancellationRequested();
                double by = sign * cost * step;
                Stroke stroke = changed(by);
                double offset = Math.Sqrt(
                    stroke.OffsetRight * stroke.OffsetRight + stroke.OffsetAbove * stroke.OffsetAbove);
                if (stroke.Speed <= 0 || offset >= trials.Grip) continue;
                if (Nearest(question, trials, stroke, cutBefore, SameHit) is not { } aims) continue;
                if (aims.HitCost >= AllButTheHit * hitAlone || cost + aims.HitCost >= best?.Cost) continue;
                best = new KissEscape(change, by, cost + aims.HitCost, aims.Stroke, question.Route, aims.Gap);
            }
        }

        return best;
    }

    private static KissEscape? ByCut(KissQuestion question, KissTrials trials, double cutBefore, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        return Nearest(question, trials, question.Stroke, cutBefore, OtherHit) is { } aims
            ? new KissEscape(
                KissChange.Cut, aims.Cut - cutBefore, aims.HitCost, aims.Stroke, question.Route, aims.Gap)
            : null;
    }

    private static KissEscape? ByRoute(KissQuestion question, KissTrials trials)
    {
        KissEscape? best = null;
        double most = -1;
        foreach (FoundWay way in question.Others)
        {
            if (way.Route.Equals(question.Route)) continue;
            foreach (FoundStroke stroke in way.Strokes)
            {
                double leeway = Math.Min(stroke.Leeway.AimLeft.Amount, stroke.Leeway.AimRight.Amount);
                if (leeway <= most) continue;
                KissTrial trial = trials.Play(stroke.Stroke, way.Route);
                if (!trial.Clears(question.Clearance)) continue;
                most = leeway;
                best = new KissEscape(KissChange.Route, 0, RouteCost, stroke.Stroke, way.Route, trial.Gap!.Value);
            }
        }

        return best;
    }

    /// <summary>Of the ranges of aim about a stroke's own in which it clears, the one with the least change of the
    /// hit.</summary>
    /// <param name="question">The question.</param>
    /// <param name="trials">Plays the strokes.</param>
    /// <param name="stroke">The stroke.</param>
    /// <param name="cutBefore">The cut that the hit is compared with, radians.</param>
    /// <param name="far">How far the hit is changed either way, as a part of a ball.</param>
    private static AimRange? Nearest(
        KissQuestion question, KissTrials trials, Stroke stroke, double cutBefore, double far)
    {
        double step = HitTrial / trials.Handed;
        int count = (int)(far / HitTrial);
        AimRange? nearest = null;
        var run = new List<(Stroke Stroke, KissTrial Trial)>();
        for (int i = -count; i <= count + 1; i++)
        {
            Stroke there = stroke with { Aim = stroke.Aim + i * step };
            KissTrial trial = i <= count ? trials.Play(there, question.Route) : default;
            if (trial.Clears(question.Clearance))
            {
                run.Add((there, trial));
                continue;
            }

            if (run.Count == 0) continue;
            (Stroke middle, KissTrial seen) = run[run.Count / 2];
            double hit = Math.Abs(Math.Sin(seen.Cut) - Math.Sin(cutBefore)) / HitStep;
            if (nearest is null || hit < nearest.HitCost)
                nearest = new AimRange(middle, seen.Cut, seen.Gap!.Value, hit);
            run.Clear();
        }

        return nearest;
    }

    /// <summary>A range of neighbouring aims that clear, by its middle.</summary>
    /// <param name="Stroke">The stroke in the middle.</param>
    /// <param name="Cut">Its cut, radians.</param>
    /// <param name="Gap">Its kiss gap, metres.</param>
    /// <param name="HitCost">The change of the hit, in steps.</param>
    private sealed record AimRange(Stroke Stroke, double Cut, double Gap, double HitCost);
}
