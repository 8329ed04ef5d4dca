using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways.Kisses;

namespace Longrail.Coaching.Ways;

/// <summary>One way to play the ball, with everything needed to choose it.</summary>
public sealed record Way
{
    /// <summary>The route.</summary>
    public required WayRoute Route { get; init; }

    /// <summary>The route in the trade's words: "cross-side bank off the left cushion into the right side
    /// pocket".</summary>
    public required string Words { get; init; }

    /// <summary>The stroke that is advised, and how far it may be off.</summary>
    public required FoundStroke Stroke { get; init; }

    /// <summary>The making region, at the grid's speeds and tip positions.</summary>
    public required IReadOnlyList<AimWindow> Windows { get; init; }

    /// <summary>Cut angle at the contact, radians, positive to the left.</summary>
    public required double Cut { get; init; }

    /// <summary>How full the hit is: 1 is full, 0 a miss by nothing.</summary>
    public required double HitFraction { get; init; }

    /// <summary>Where the line of the stick reaches a cushion: the point to aim at.</summary>
    public required AimPoint AimPoint { get; init; }

    /// <summary>The chance that the ball, met first, goes down in the route's pocket, and the cue ball does not, for
    /// the player. It may touch one cushion more than the route names; longer travels are luck and do not
    /// count.</summary>
    public required Odds Made { get; init; }

    /// <summary>The chance that the cue ball goes down, whether the ball is made or missed. Counted on fewer strokes
    /// than <see cref="Made"/>.</summary>
    public required Odds Scratch { get; init; }

    /// <summary>How near the two balls come to a second meeting; null if they never part (a frozen ball).</summary>
    public required KissSpread? Kiss { get; init; }

    /// <summary>Where the cue ball stops when the ball is made; null if it never was.</summary>
    public required RestRegion? Rest { get; init; }

    /// <summary>The next shot, when one was asked for.</summary>
    public NextShot? Next { get; init; }

    /// <summary>How to get round a double kiss, the smallest change first; empty where none threatens, or nothing
    /// helps, or the way is not one of the first few.</summary>
    public IReadOnlyList<KissEscape> RoundTheKiss { get; init; } = [];

    /// <summary>The chance by which ways are ranked: of the whole plan, or of this ball where no next one was
    /// asked for.</summary>
    public double Plan => Next?.Plan ?? Made.Share;
}
