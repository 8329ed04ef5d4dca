using Longrail.Drawing;

namespace Longrail.Workbench.Components.Stage;

/// <summary>Something that moves on a drawing and can be played.</summary>
/// <param name="Key">What it comes from; a new object means a new shot.</param>
/// <param name="Duration">How long it takes, seconds.</param>
/// <param name="Balls">The names of the balls that the lens can follow.</param>
/// <param name="Events">The times of the events, seconds, in order.</param>
/// <param name="Motion">The motion on a sheet of a width.</param>
public sealed record Played(
    object Key, double Duration, IReadOnlyList<string> Balls, double[] Events, Func<double, ShotMotion> Motion);
