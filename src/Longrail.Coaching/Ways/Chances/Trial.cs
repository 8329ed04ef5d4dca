using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>How one of the player's strokes turned out.</summary>
/// <param name="Made">The ball was met first and went down in its pocket, and the cue ball did not.</param>
/// <param name="Scratched">The cue ball went down, as far as the shot was followed.</param>
/// <param name="Met">The cue ball met the object ball before any other.</param>
/// <param name="Kissed">The two met again.</param>
/// <param name="Gap">How near they came to that, metres; 0 if they did; null if they never met, or never
/// parted.</param>
/// <param name="Places">Where the balls lie afterwards, metres, null for those that went down; null unless the ball was
/// made.</param>
internal readonly record struct Trial(
    bool Made, bool Scratched, bool Met, bool Kissed, double? Gap, IReadOnlyList<Vec2?>? Places)
{
    /// <summary>The tip slipped off: nothing came of it.</summary>
    public static Trial Miscue => default;
}
