using System.Globalization;
using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Puts ways in order, and says in a sentence why the first comes before the second.</summary>
public static class WayRanking
{
    private const double Degree = Math.PI / 180;

    /// <summary>A cut below this is called straight.</summary>
    private const double Straight = 5 * Degree;

    /// <summary>The ways in order, best first. Equal ones by the plan, then by leeway of aim, then by route: the same
    /// ways come in the same order however they stood.</summary>
    /// <param name="ways">The ways.</param>
    /// <param name="order">By what.</param>
    public static IReadOnlyList<Way> Ranked(IEnumerable<Way> ways, WaysOrder order)
    {
        ArgumentNullException.ThrowIfNull(ways);
        return
        [
            .. ways.OrderBy(way => order switch
            {
                WaysOrder.Plan => -way.Plan,
                WaysOrder.Odds => -way.Made.Share,
                WaysOrder.Leeway => -AimLeeway(way),
                WaysOrder.Kiss => -(way.Kiss?.Gap ?? double.NegativeInfinity),
                WaysOrder.Speed => way.Stroke.Stroke.Speed,
                _ => Rails(way),
            })
            .ThenByDescending(way => way.Plan)
            .ThenByDescending(AimLeeway)
            .ThenBy(Rails)
            .ThenBy(way => way.Route.Pocket)
            .ThenBy(way => string.Join('-', way.Route.CueBall.Concat(way.Route.ObjectBall).Select(c => (int)c))),
        ];
    }

    /// <summary>Why the first is better than the second: how much likelier it is, as far as the intervals bear it out,
    /// and what sets the two apart.</summary>
    /// <param name="first">The better way.</param>
    /// <param name="second">The next.</param>
    /// <param name="request">The question that they answer.</param>
    /// <returns>A short sentence without capital and full stop.</returns>
    public static string Reason(Way first, Way second, WaysRequest request)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(request);
        string likelihood = request.Order == WaysOrder.Odds
            ? Likelihood(Interval.Of(first.Made), Interval.Of(second.Made))
            : Likelihood(Interval.OfPlan(first), Interval.OfPlan(second));
        var merits = new List<string>();
        var drawbacks = new List<string>();
        Compare(first, second, request, merits);
        Compare(second, first, request, drawbacks);

        string sentence = likelihood;
        if (Leading(first, second, request.Order) is { } leading) sentence = $"{leading}; {likelihood}";
        string colon = likelihood == AboutAsLikely ? "; " : ": ";
        if (merits.Count > 0) sentence += colon + string.Join(", ", merits.Take(3));
        // One thing that speaks for the other is enough to be fair.
        if (drawbacks.Count > 0) sentence += $"; for the other: {drawbacks[0]}";
        return sentence;
    }

    private const string AboutAsLikely = "about as likely";

    /// <summary>What the order itself asked for; null where it asked for the chance.</summary>
    private static string? Leading(Way first, Way second, WaysOrder order) => order switch
    {
        WaysOrder.Leeway =>
            Text($"more leeway ({AimLeeway(first) / Degree:0.00} against {AimLeeway(second) / Degree:0.00} deg)"),
        WaysOrder.Kiss when first.Kiss is { } one && second.Kiss is { } two =>
            Text($"farther from a kiss ({1000 * one.Gap:0} against {1000 * two.Gap:0} mm)"),
        WaysOrder.Speed =>
            Text($"softer ({first.Stroke.Stroke.Speed:0.0} against {second.Stroke.Stroke.Speed:0.0} m/s)"),
        WaysOrder.Rails when Rails(first) < Rails(second) => "fewer cushions",
        _ => null,
    };

    private static string Likelihood(Interval first, Interval second)
    {
        string shares = Text($"({100 * first.Share:0} against {100 * second.Share:0} %)");
        if (first.Low > second.High) return $"likelier {shares}";
        if (first.High < second.Low) return $"less likely {shares}";
        // Each share lies within the other's bounds: nothing is claimed.
        (Interval more, Interval less) = first.Share >= second.Share ? (first, second) : (second, first);
        if (more.Share <= less.High && less.Share >= more.Low) return AboutAsLikely;
        return first.Share > second.Share ? "probably likelier" : "probably less likely";
    }

    /// <summary>What one way has over the other, the weightiest first.</summary>
    private static void Compare(Way one, Way other, WaysRequest request, List<string> found)
    {
        if (request.Order != WaysOrder.Leeway && Times(AimLeeway(one) / AimLeeway(other)) is { } times)
            found.Add(times);
        if (Rarer(one.Kiss?.Kisses, other.Kiss?.Kisses) is { } kiss) found.Add($"{kiss} kiss");
        if (Rarer(one.Scratch, other.Scratch) is { } scratch) found.Add($"{scratch} scratch");
        if (request.NextBall is { } ball && Next(one, other, ball) is { } next) found.Add(next);
        if (request.Order != WaysOrder.Rails && Rails(one) < Rails(other)) found.Add("fewer cushions");
        if (request.Order != WaysOrder.Speed && one.Stroke.Stroke.Speed < 0.7 * other.Stroke.Stroke.Speed)
            found.Add("a softer stroke");
    }

    private static string? Next(Way one, Way other, string ball)
    {
        if (one.Next is not { } here || other.Next is not { } there) return null;
        if (here.Cut is not { } cut) return null;
        if (there.Cut is not { } otherCut) return $"a shot on the {ball}";
        if (Math.Abs(cut) < Straight && Math.Abs(otherCut) >= Straight) return $"straight on the {ball}";
        return here.Odds.Low > there.Odds.High ? $"an easier shot on the {ball}" : null;
    }

    /// <summary>"no" or "less risk of a" where the counts bear it out.</summary>
    private static string? Rarer(Odds? one, Odds? other)
    {
        if (one is not { Trials: > 0 } here || other is not { Trials: > 0 } there) return null;
        if (here.High >= there.Low) return null;
        return here.Made == 0 ? "no" : "less risk of a";
    }

    private static string? Times(double ratio) => ratio switch
    {
        >= 3.5 when double.IsFinite(ratio) => Text($"{Math.Round(ratio):0} times the leeway"),
        >= 2.5 => "three times the leeway",
        >= 1.75 => "twice the leeway",
        >= 1.35 => "half as much leeway again",
        _ => null,
    };

    private static double AimLeeway(Way way) => way.Stroke.Leeway.AimLeft.Amount + way.Stroke.Leeway.AimRight.Amount;

    private static int Rails(Way way) => way.Route.CueBall.Count + way.Route.ObjectBall.Count;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A share with bounds.</summary>
    private readonly record struct Interval(double Share, double Low, double High)
    {
        public static Interval Of(Odds odds) => new(odds.Share, odds.Low, odds.High);

        /// <summary>Of the whole plan: the product of its parts, and of their bounds, which is a little wider than 95
        /// %.</summary>
        public static Interval OfPlan(Way way)
        {
            Interval made = Of(way.Made);
            return way.Next is { } next
                ? new Interval(way.Plan, made.Low * next.Odds.Low, made.High * next.Odds.High)
                : made;
        }
    }
}
