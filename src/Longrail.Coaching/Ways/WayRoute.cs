using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways;

/// <summary>A route: the cushions before the cue ball meets the object ball, the object ball's own, and the
/// pocket.</summary>
/// <param name="CueBall">Cushions of the cue ball before it meets the object ball, in order; none for a direct
/// hit, one or two for a kick.</param>
/// <param name="ObjectBall">Cushions of the object ball, in order; none for a straight pot, up to three for a
/// bank.</param>
/// <param name="Pocket">Where the object ball goes down; jaws of that pocket may be touched.</param>
public sealed record WayRoute(
    IReadOnlyList<CushionName> CueBall, IReadOnlyList<CushionName> ObjectBall, PocketName Pocket)
{
    /// <inheritdoc/>
    public bool Equals(WayRoute? other) =>
        other is not null && Pocket == other.Pocket && CueBall.SequenceEqual(other.CueBall)
        && ObjectBall.SequenceEqual(other.ObjectBall);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.Add(Pocket);
        foreach (CushionName cushion in CueBall) hash.Add((int)cushion);
        hash.Add(-1);
        foreach (CushionName cushion in ObjectBall) hash.Add((int)cushion);
        return hash.ToHashCode();
    }
}
