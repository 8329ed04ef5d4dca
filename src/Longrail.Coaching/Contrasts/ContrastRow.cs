using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;

namespace Longrail.Coaching.Contrasts;

/// <summary>One row of a comparison: a scene that was played, and how it differs from the base.</summary>
public sealed record ContrastRow
{
    /// <summary>"base", or the variant's letter: A, B, ... Z, AA, ...</summary>
    public required string Label { get; init; }

    /// <summary>The varied fields with their values here, in the order of the request.</summary>
    public required IReadOnlyList<VariedValue> Values { get; init; }

    /// <summary>The scene that was played: the base's with the varied fields changed and, under
    /// <see cref="Hold.Path"/>, re-aimed.</summary>
    public required Scene Scene { get; init; }

    /// <summary>The same scene as it was used, every number in SI and nothing left to defaults.</summary>
    public required Scene AsUsed { get; init; }

    /// <summary>The shot.</summary>
    public required Trace Trace { get; init; }

    /// <summary>Its readings.</summary>
    public required TraceReadings Readings { get; init; }

    /// <summary>The bank; null if neither ball touches a cushion.</summary>
    public required BankReading? Bank { get; init; }

    /// <summary>How far it lands from the base; null if it does not reach the same cushion.</summary>
    public required LandingChange? Change { get; init; }

    /// <summary>Whether this is the base.</summary>
    public bool IsBase => Label == BaseLabel;

    /// <summary>Whether two fields differ from the base: what comes out then has no single cause.</summary>
    public bool TwoThingsChanged => Values.Count(value => value.IsChanged) > 1;

    /// <summary>Where the cue ball comes to rest; null if it is pocketed, still moving, or if nothing was
    /// struck.</summary>
    public Vec2? CueBallRest =>
        Readings.Shot.StruckBall is { } cue && Trace.Balls[cue].Phase == Physics.Motion.MotionPhase.AtRest
        ? Trace.Balls[cue].State.Position
        : null;

    internal const string BaseLabel = "base";
}
