using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Scenes.Outcomes;

/// <summary>The words of outcome files.</summary>
public static class OutcomeWords
{
    private static readonly string[] _kinds =
        ["tip", "pocketed", "balls-meet", "cushion", "jaw", "slide-ends", "stops"];

    private static readonly string[] _endings = ["at-rest", "time-limit", "event-limit", "stalled"];

    /// <summary>The kinds of events in the order of <see cref="ShotEventKind"/>.</summary>
    public static IReadOnlyList<string> Kinds => _kinds;

    /// <summary>The ways in which a shot ends, in the order of <see cref="StopReason"/>.</summary>
    public static IReadOnlyList<string> Endings => _endings;

    /// <summary>The states in which a ball may be when a shot ends.</summary>
    public static IReadOnlyList<string> BallStates { get; } = ["at-rest", "moving", "pocketed"];

    /// <summary>The word for a kind of event.</summary>
    public static string Of(ShotEventKind kind) => _kinds[(int)kind];

    /// <summary>The word for the way in which a shot ended.</summary>
    public static string Of(StopReason reason) => _endings[(int)reason];

    /// <summary>The word for the state in which a ball ended.</summary>
    public static string Of(MotionPhase phase) => phase switch
    {
        MotionPhase.AtRest => "at-rest",
        MotionPhase.Pocketed => "pocketed",
        _ => "moving",
    };
}
