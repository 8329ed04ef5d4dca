using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>A line without ends that a ball's centre crosses one way.</summary>
/// <param name="Point">A point of it, metres.</param>
/// <param name="Across">Unit vector across it, the way it is crossed.</param>
internal readonly record struct StraightLine(Vec2 Point, Vec2 Across);
