using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Watches what becomes of cue ball and object ball.</summary>
/// <param name="cueBall">Index of the cue ball.</param>
/// <param name="objectBall">Index of the ball to make.</param>
/// <param name="pocket">Where it shall go down.</param>
/// <param name="endsOnMiss">Whether the shot may end as soon as the ball cannot count as made any more; the cue ball's
/// end is then not known.</param>
internal struct FateWatch(int cueBall, int objectBall, PocketName pocket, bool endsOnMiss) : IShotWatch
{
    /// <summary>Two balls that meet again slower than this only lean on each other, m/s; that is no double
    /// kiss.</summary>
    private const double KissSpeed = 0.01;

    private bool _potted;
    private bool _foul;

    /// <summary>When the cue ball met the object ball, before any other ball; NaN if it did not.</summary>
    public double Met { get; private set; } = double.NaN;

    /// <summary>The cut at that meeting, radians, positive to the left.</summary>
    public double Cut { get; private set; }

    /// <summary>Whether the two met again.</summary>
    public bool Kissed { get; private set; }

    /// <summary>Whether the cue ball went down.</summary>
    public bool Scratched { get; private set; }

    /// <summary>Whether the ball was made: met first, down in its pocket, and the cue ball not.</summary>
    public readonly bool Made => _potted && !Scratched && !_foul;

    /// <inheritdoc/>
    public bool GoesOn(ShotMoment moment)
    {
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet when moment.Involves(cueBall):
                Meet(moment);
                break;
            case ShotEventKind.Pocketed when moment.BallA == cueBall:
                Scratched = true;
                return false;
            case ShotEventKind.Pocketed when moment.BallA == objectBall:
                _potted = moment.Pocket == pocket;
                _foul |= !_potted;
                break;
        }

        return !(endsOnMiss && _foul);
    }

    private void Meet(ShotMoment moment)
    {
        bool isObject = moment.Involves(objectBall);
        if (!double.IsNaN(Met))
        {
            Kissed |= isObject && ClosingSpeed(moment) > KissSpeed;
        }
        else if (!isObject)
        {
            _foul = true;
        }
        else if (!_foul)
        {
            Met = moment.Time;
            Cut = CutOf(moment);
        }
    }

    private static double ClosingSpeed(ShotMoment moment)
    {
        Vec2 normal = (moment.BeforeB.Position - moment.BeforeA.Position).Normalized();
        return (moment.BeforeA.Velocity - moment.BeforeB.Velocity).Dot(normal);
    }

    private readonly double CutOf(ShotMoment moment)
    {
        double sign = moment.BallA == cueBall ? 1 : -1;
        Vec2 normal = (moment.BeforeB.Position - moment.BeforeA.Position) * sign;
        Vec2 approach = (moment.BeforeA.Velocity - moment.BeforeB.Velocity) * sign;
        return Math.Atan2(approach.Cross(normal), approach.Dot(normal));
    }
}
