using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Watches what becomes of cue ball and object ball.</summary>
/// <param name="cueBall">Index of the cue ball.</param>
/// <param name="objectBall">Index of the ball to make.</param>
/// <param name="pocket">Where it shall go down.</param>
/// <param name="mostCushions">After more cushions than this the ball counts as missed.</param>
/// <param name="endsOnMiss">Whether the shot may end as soon as the ball is missed; the cue ball's end is then not
/// known.</param>
internal struct FateWatch(int cueBall, int objectBall, PocketName pocket, int mostCushions, bool endsOnMiss)
    : IShotWatch
{
    /// <summary>Two balls that meet again slower than this only lean on each other, m/s; that is no double
    /// kiss.</summary>
    private const double KissSpeed = 0.01;

    private bool _potted;
    private bool _missed;
    private int _cushions;

    /// <summary>When the cue ball met the object ball, before any other ball; NaN if it did not.</summary>
    public double Met { get; private set; } = double.NaN;

    /// <summary>The cut at that meeting, radians, positive to the left.</summary>
    public double Cut { get; private set; }

    /// <summary>When the ball went down or was missed, seconds; infinity if neither.</summary>
    public double Decided { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether the two met again before that.</summary>
    public bool Kissed { get; private set; }

    /// <summary>Whether the cue ball went down.</summary>
    public bool Scratched { get; private set; }

    /// <summary>Whether the ball was made: met first, down in its pocket, and the cue ball not.</summary>
    public readonly bool Made => _potted && !Scratched;

    private readonly bool IsDecided => _potted || _missed;

    /// <inheritdoc/>
    public bool GoesOn(ShotMoment moment)
    {
        if (moment.Kind == ShotEventKind.Pocketed && moment.BallA == cueBall)
        {
            Scratched = true;
            return false;
        }

        if (IsDecided) return true;
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet when moment.Involves(cueBall):
                Meet(moment);
                break;
            case ShotEventKind.Pocketed when moment.BallA == objectBall:
                _potted = moment.Pocket == pocket && !double.IsNaN(Met);
                _missed = !_potted;
                break;
            case ShotEventKind.Cushion when moment.BallA == objectBall:
                _missed = ++_cushions > mostCushions;
                break;
            case ShotEventKind.Stops when moment.BallA == objectBall:
            case ShotEventKind.Stops when moment.BallA == cueBall && double.IsNaN(Met):
                _missed = true;
                break;
        }

        if (IsDecided) Decided = moment.Time;
        return !(endsOnMiss && _missed);
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
            _missed = true;
        }
        else
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
