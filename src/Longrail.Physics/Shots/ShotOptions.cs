namespace Longrail.Physics.Shots;

/// <summary>Limits of a run.</summary>
/// <param name="MaxTime">Longest time to follow the shot, seconds, positive.</param>
/// <param name="MaxEvents">Largest number of events before the run ends with
/// <see cref="StopReason.EventLimit"/>.</param>
public sealed record ShotOptions(double MaxTime = 120.0, int MaxEvents = 100_000)
{
    /// <summary>The usual limits: two minutes, a hundred thousand events.</summary>
    public static ShotOptions Default { get; } = new();
}
