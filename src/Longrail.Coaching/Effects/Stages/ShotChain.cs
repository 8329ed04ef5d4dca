using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>The contacts of a shot that lead the measured ball to its target.</summary>
internal sealed record ShotChain
{
    /// <summary>The shot.</summary>
    internal required Trace Trace { get; init; }

    /// <summary>Index of the measured ball.</summary>
    internal required int Ball { get; init; }

    /// <summary>Place of the hit that sent it off; null if it is the ball that the tip struck, or was
    /// launched.</summary>
    internal int? Hit { get; init; }

    /// <summary>Index of the ball that hit it; null with <see cref="Hit"/>.</summary>
    internal int? Striker { get; init; }

    /// <summary>Whether the ball that sets out, the striker or the measured ball itself, comes from its start without
    /// another contact: only then can its squirt and swerve be taken away.</summary>
    internal required bool SetsOutFree { get; init; }

    /// <summary>The cushions that count.</summary>
    internal required IReadOnlyList<CountedCushion> Cushions { get; init; }

    /// <summary>What the measured ball does after the last counted contact, other than that its skid ends; null if
    /// nothing is known.</summary>
    internal ShotEvent? Next { get; init; }

    /// <summary>Index of the ball that sets out.</summary>
    internal int FirstMover => Striker ?? Ball;

    /// <summary>Place of the last counted contact among the events; -1 if there is none.</summary>
    internal int LastContact => Cushions.Count > 0 ? Cushions[^1].Event : Hit ?? -1;
}
