using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>One speed and tip position of the grid.</summary>
/// <param name="SpeedIndex">Which speed.</param>
/// <param name="TipIndex">Which tip position; 0 is the centre.</param>
/// <param name="Speed">Cue ball's speed, m/s.</param>
/// <param name="TipRight">Offset to the right, metres.</param>
/// <param name="TipAbove">Offset above, metres.</param>
internal readonly record struct GridNode(int SpeedIndex, int TipIndex, double Speed, double TipRight, double TipAbove)
{
    internal Stroke Stroke(double aim, double elevation) => new(aim, Speed, TipRight, TipAbove, elevation);
}
