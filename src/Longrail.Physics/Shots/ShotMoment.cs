using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>One event of a shot, seen in place without a copy: what a search reads of the thousands of shots that it
/// plays. <see cref="ShotEvent"/> is the same event to keep.</summary>
/// <remarks>Valid until the <see cref="ShotPlayer"/> plays again. A cushion contact that takes time is first seen at
/// its touch; its <see cref="Duration"/> and <see cref="AfterA"/> stand once the ball has left the rubber.</remarks>
public readonly ref struct ShotMoment
{
    private readonly ref readonly EventEntry _entry;

    internal ShotMoment(ref readonly EventEntry entry) => _entry = ref entry;

    /// <summary>Time since the tip left the ball, seconds.</summary>
    public double Time => _entry.Time;

    /// <summary>How long a contact lasted, seconds; 0 for all that happens at an instant.</summary>
    public double Duration => _entry.Duration;

    /// <summary>What happened.</summary>
    public ShotEventKind Kind => _entry.Kind;

    /// <summary>Index of the ball; when two balls meet, of the striker.</summary>
    public int BallA => _entry.A;

    /// <summary>Index of the struck ball when two balls meet; otherwise -1.</summary>
    public int BallB => _entry.B;

    /// <summary>The cushion of a cushion or jaw event; meaningless for other kinds.</summary>
    public CushionName Cushion => _entry.Cushion;

    /// <summary>The pocket of a pocketed or jaw event; meaningless for other kinds.</summary>
    public PocketName Pocket => _entry.Pocket;

    /// <summary>Ball A just before.</summary>
    public ref readonly BallState BeforeA => ref _entry.BeforeA;

    /// <summary>Ball A just after.</summary>
    public ref readonly BallState AfterA => ref _entry.AfterA;

    /// <summary>Ball B just before; meaningful when two balls meet.</summary>
    public ref readonly BallState BeforeB => ref _entry.BeforeB;

    /// <summary>Ball B just after; meaningful when two balls meet.</summary>
    public ref readonly BallState AfterB => ref _entry.AfterB;

    /// <summary>Whether a ball takes part.</summary>
    /// <param name="ball">Index of the ball.</param>
    public bool Involves(int ball) => _entry.A == ball || _entry.B == ball;

    /// <summary>The other ball of a meeting.</summary>
    /// <param name="ball">Index of one of the two that meet.</param>
    public int Partner(int ball) => _entry.A == ball ? _entry.B : _entry.A;
}
