using Longrail.Coaching.Players;
using Longrail.Physics.Equipment;
using Longrail.Scenes.Compiling;

namespace Longrail.Coaching.Ways;

/// <summary>The question: how can this ball be played?</summary>
public sealed record WaysRequest
{
    /// <summary>The layout. Its stroke, if any, names the cue ball and the elevation; its aim, speed and tip are not
    /// used.</summary>
    public required ReadyScene Scene { get; init; }

    /// <summary>The ball that is struck: the one that the stroke names, else the one called "cue"; null if there is
    /// neither.</summary>
    public string? CueBall => Scene.Asked.Stroke?.Ball ?? (Scene.IndexOf("cue") >= 0 ? "cue" : null);

    /// <summary>The ball to make.</summary>
    public required string Ball { get; init; }

    /// <summary>The ball to play next, or null.</summary>
    public string? NextBall { get; init; }

    /// <summary>The fewest cushions of the object ball, from 0 to 3.</summary>
    public int FewestRails { get; init; }

    /// <summary>The most cushions of the object ball, from 0 to 3.</summary>
    public int MostRails { get; init; } = 2;

    /// <summary>The most cushions of the cue ball before it meets the object ball, from 0 to 2.</summary>
    public int MostKickRails { get; init; } = 2;

    /// <summary>Only this pocket; null for all.</summary>
    public PocketName? Pocket { get; init; }

    /// <summary>Whose errors the odds are for.</summary>
    public required Player Player { get; init; }

    /// <summary>Seed of the random strokes: same seed, same answer.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>By what the ways are ranked.</summary>
    public WaysOrder Order { get; init; } = WaysOrder.Plan;

    /// <summary>After this much time the search stops with what it has; null for none. Zero is refused.</summary>
    public TimeSpan? TimeBudget { get; init; }

    /// <summary>Number of threads; the answer does not depend on it.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;
}
