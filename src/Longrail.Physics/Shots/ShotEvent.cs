using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>One event of a shot, with the states of the balls before and after.</summary>
/// <remarks>A contact with yielding rubber begins at <see cref="Time"/> and ends <see cref="Duration"/> later;
/// <see cref="BeforeA"/> is the state at the touch, <see cref="AfterA"/> the state as the ball leaves the rubber.
/// Events stand in order of their <see cref="Time"/>.</remarks>
public sealed record ShotEvent
{
    /// <summary>Time since the tip left the ball, seconds.</summary>
    public required double Time { get; init; }

    /// <summary>How long the contact lasted, seconds; 0 for all that happens at an instant.</summary>
    public double Duration { get; init; }

    /// <summary>What happened.</summary>
    public required ShotEventKind Kind { get; init; }

    /// <summary>Index of the ball; when two balls meet, of the one that closed faster along the line of centres (the
    /// striker).</summary>
    public required int BallA { get; init; }

    /// <summary>Index of the other ball when two balls meet (the struck one); otherwise null.</summary>
    public int? BallB { get; init; }

    /// <summary>The cushion of a <see cref="ShotEventKind.Cushion"/> event, or the cushion to which a jaw
    /// belongs.</summary>
    public CushionName? Cushion { get; init; }

    /// <summary>The pocket of a <see cref="ShotEventKind.Pocketed"/> or <see cref="ShotEventKind.Jaw"/>
    /// event.</summary>
    public PocketName? Pocket { get; init; }

    /// <summary>Ball A just before.</summary>
    public required BallState BeforeA { get; init; }

    /// <summary>Ball A just after.</summary>
    public required BallState AfterA { get; init; }

    /// <summary>Ball B just before; null when there is none.</summary>
    public BallState? BeforeB { get; init; }

    /// <summary>Ball B just after; null when there is none.</summary>
    public BallState? AfterB { get; init; }

    /// <summary>How deep the ball sank into the rubber, metres; 0 under the impulse law.</summary>
    public double Depth { get; init; }

    /// <summary>How high a real ball would likely hop at this event, metres (an estimate, see
    /// docs/physics.md).</summary>
    public double HopHeight { get; init; }
}
