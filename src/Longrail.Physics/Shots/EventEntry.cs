using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>An event as the loop writes it: a value in a reused buffer, so that the loop allocates nothing.</summary>
internal struct EventEntry
{
    internal double Time, Duration, Depth, HopHeight;
    internal ShotEventKind Kind;
    internal int A, B;
    internal CushionName Cushion;
    internal PocketName Pocket;
    internal bool HasCushion, HasPocket;
    internal BallState BeforeA, AfterA, BeforeB, AfterB;

    internal readonly ShotEvent ToEvent() => new()
    {
        Time = Time,
        Duration = Duration,
        Kind = Kind,
        BallA = A,
        BallB = B >= 0 ? B : null,
        Cushion = HasCushion ? Cushion : null,
        Pocket = HasPocket ? Pocket : null,
        BeforeA = BeforeA,
        AfterA = AfterA,
        BeforeB = B >= 0 ? BeforeB : null,
        AfterB = B >= 0 ? AfterB : null,
        Depth = Depth,
        HopHeight = HopHeight,
    };
}
