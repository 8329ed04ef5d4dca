using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Effects;

/// <summary>A way made of straight pieces, as the plain mirror bank has it.</summary>
/// <param name="Striker">The striker's way to the touch; empty if the measured ball is struck by the tip
/// itself.</param>
/// <param name="Ball">The measured ball's way: its start, each touch of a cushion, its arrival.</param>
public sealed record EffectPath(IReadOnlyList<Vec2> Striker, IReadOnlyList<Vec2> Ball);
