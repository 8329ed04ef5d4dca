using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>Follows a banked ball off its cushion and ends the shot as soon as its fate is decided.</summary>
/// <param name="ball">Index of the banked ball.</param>
/// <param name="off">The cushion that it is to come off.</param>
/// <param name="pocket">The pocket that it is to go into; null for a kick.</param>
/// <param name="toTheEnd">Whether it is followed through the jaws into the pocket, or up to the first thing that it
/// meets after the cushion.</param>
internal struct ArrivalWatch(int ball, CushionName off, PocketName? pocket, bool toTheEnd) : IShotWatch
{
    private readonly bool _followed = toTheEnd;

    /// <summary>Whether another ball met it before that.</summary>
    internal bool Met { get; private set; }

    /// <summary>Whether it came off the cushion first.</summary>
    internal bool Touched { get; private set; }

    /// <summary>When it met something after that, seconds.</summary>
    internal double Until { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether a ball met it after that.</summary>
    internal bool Kissed { get; private set; }

    /// <summary>Whether it dropped where it was to.</summary>
    internal bool Dropped { get; private set; }

    /// <summary>Whether it stopped on the way.</summary>
    internal bool Stopped { get; private set; }

    /// <summary>Whether it met another cushion, a jaw or a pocket before its cushion.</summary>
    internal bool WentElsewhere { get; private set; }

    /// <summary>Whether that was a jaw or a pocket.</summary>
    internal bool MetMouth { get; private set; }

    /// <inheritdoc/>
    public bool GoesOn(ShotMoment moment)
    {
        if (!moment.Involves(ball) || moment.Kind is ShotEventKind.Tip or ShotEventKind.SlideEnds)
            return true;
        return Touched ? AfterTouch(moment) : BeforeTouch(moment);
    }

    private bool BeforeTouch(ShotMoment moment)
    {
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet:
                Met = true;
                return true;
            case ShotEventKind.Cushion when moment.Cushion == off:
                Touched = true;
                return true;
            case ShotEventKind.Stops:
                Stopped = true;
                return false;
            default:
                WentElsewhere = true;
                MetMouth = moment.Kind is ShotEventKind.Jaw or ShotEventKind.Pocketed;
                return false;
        }
    }

    private bool AfterTouch(ShotMoment moment)
    {
        Until = Math.Min(Until, moment.Time);
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet:
                Kissed = true;
                return false;
            case ShotEventKind.Pocketed:
                Dropped = moment.Pocket == pocket;
                return false;
            case ShotEventKind.Jaw:
                return _followed && moment.Pocket == pocket;
            case ShotEventKind.Stops:
                Stopped = true;
                return false;
            default:
                return false;
        }
    }
}
