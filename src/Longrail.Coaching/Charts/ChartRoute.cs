using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>The bank of a chart: off which cushion, to where.</summary>
/// <param name="Kind">Which bank.</param>
/// <param name="Off">The cushion.</param>
/// <param name="Pocket">The pocket; null for a kick.</param>
/// <param name="Target">Where the ball's centre is to go, metres: the middle of the pocket's mouth, or the place that a
/// kick is played to.</param>
/// <param name="Words">In the trade's words: "cross-side bank off the right cushion into left-side".</param>
public sealed record ChartRoute(BankKind Kind, CushionName Off, PocketName? Pocket, Vec2 Target, string Words)
{
    /// <summary>Whether the cue ball is banked itself.</summary>
    public bool IsKick => Kind == BankKind.Kick;
}
