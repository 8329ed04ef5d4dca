using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Follows a shot at the object ball and sorts it, ending it as soon as its fate is decided.</summary>
/// <param name="rules">The layout.</param>
/// <param name="toTheEnd">Whether the cue ball is followed to the end once the object ball is down.</param>
/// <remarks>
/// A ball is <em>made by a route</em> when
/// <list type="bullet">
/// <item>the cue ball touches the route's cushions, no jaw and no other ball, and then meets the object ball;</item>
/// <item>the object ball touches the route's cushions, no other ball and no jaw but the pocket's own, and goes down
/// there after its last cushion; it meets the cue ball once, where touches before it has gone half its width are one
/// meeting (frozen balls press on each other more than once);</item>
/// <item>the cue ball does not go down, to the end of the shot.</item>
/// </list>
/// One cushion touched twice in a row counts once. Cushions that run into the pocket do not count when they are the
/// last that the object ball touches and only lead it in: touched at less than <see cref="Glancing"/>, or within a
/// ball's width of the jaw. So a ball along the rail is a straight pot, and a ball on a cushion that is driven into it
/// and across is a bank.
/// </remarks>
internal struct RouteWatch(RouteRules rules, bool toTheEnd) : IShotWatch
{
    /// <summary>Sine of the angle to the cushion below which a touch only leads along: 25 degrees.</summary>
    internal const double Glancing = 0.42;

    private readonly RouteRules _rules = rules;
    private readonly bool _toTheEnd = toTheEnd;
    private Vec2 _legStart = rules.CueBallStart;
    private int _legs;
    private TailOfTouches _tail;
    private bool _inJaws;
    private PocketName _jaws;
    private bool _decided;
    private bool _scratched;

    /// <summary>What has been seen.</summary>
    internal SeenShot Seen = new() { Other = -1, Fate = ShotFate.CueBallStops };

    /// <inheritdoc/>
    public bool GoesOn(ShotMoment moment)
    {
        if (_decided) return StaysUp(moment);
        return Seen.Met ? UnderWay(moment) : BeforeMeeting(moment);
    }

    private bool BeforeMeeting(ShotMoment moment)
    {
        int cueBall = _rules.CueBall;
        if (!moment.Involves(cueBall)) return true;
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet:
                return Meets(moment);
            case ShotEventKind.Cushion:
                NoteLeg(moment.BeforeA.Position);
                if (Seen.CueBall.EndsWith(moment.Cushion)) return true;
                if (Seen.CueBall.Count == _rules.MostKickRails) return Ends(ShotFate.CueBallMisses);
                Seen.CueBall = Seen.CueBall.With(moment.Cushion);
                return true;
            case ShotEventKind.Jaw:
                NoteLeg(moment.BeforeA.Position);
                return Ends(ShotFate.CueBallInJaws);
            case ShotEventKind.Pocketed:
                NoteLeg(moment.BeforeA.Position);
                return Ends(ShotFate.CueBallDrops);
            case ShotEventKind.Stops:
                NoteLeg(moment.BeforeA.Position);
                return Ends(ShotFate.CueBallStops);
            default:
                return true;
        }
    }

    private bool Meets(ShotMoment moment)
    {
        bool strikes = moment.BallA == _rules.CueBall;
        Vec2 cueBall = (strikes ? moment.BeforeA : moment.BeforeB).Position;
        Vec2 other = (strikes ? moment.BeforeB : moment.BeforeA).Position;
        if (moment.Partner(_rules.CueBall) != _rules.ObjectBall)
        {
            NoteLeg(cueBall);
            Seen.Other = moment.Partner(_rules.CueBall);
            return Ends(ShotFate.OtherBallFirst);
        }

        Vec2 approach = (strikes ? moment.BeforeA : moment.BeforeB).Velocity;
        Seen.Met = true;
        Seen.Offset = approach.Normalized().Cross((other - cueBall).Normalized());
        Seen.Fate = ShotFate.ObjectBallStops;
        return true;
    }

    private bool UnderWay(ShotMoment moment)
    {
        int objectBall = _rules.ObjectBall;
        if (moment.Kind == ShotEventKind.Pocketed && moment.BallA == _rules.CueBall) _scratched = true;
        if (!moment.Involves(objectBall)) return true;
        switch (moment.Kind)
        {
            case ShotEventKind.BallsMeet:
                int partner = moment.Partner(objectBall);
                Vec2 place = (moment.BallA == objectBall ? moment.BeforeA : moment.BeforeB).Position;
                if (partner == _rules.CueBall && place.DistanceTo(_rules.ObjectBallStart) < _rules.ObjectBallRadius)
                    return true;
                Seen.Other = partner;
                return Ends(partner == _rules.CueBall ? ShotFate.DoubleKiss : ShotFate.ObjectBallMeetsOther);
            case ShotEventKind.Cushion:
                return TouchesCushion(moment);
            case ShotEventKind.Jaw:
                if (_inJaws && moment.Pocket != _jaws) return Ends(ShotFate.Rattles);
                if (!_inJaws) NotePlace(_rules.Edge.Place(moment.Cushion, moment.BeforeA.Position));
                _inJaws = true;
                _jaws = moment.Pocket;
                return true;
            case ShotEventKind.Pocketed:
                return Drops(moment.Pocket);
            case ShotEventKind.Stops:
                return Ends(ShotFate.ObjectBallStops);
            default:
                return true;
        }
    }

    private bool TouchesCushion(ShotMoment moment)
    {
        BallState before = moment.BeforeA;
        CushionName cushion = moment.Cushion;
        int leadsInto = _rules.LeadsInto(cushion, before);
        if (_inJaws) return (leadsInto >> (int)_jaws & 1) != 0 || Ends(ShotFate.Rattles);
        bool again = Seen.AllTouched.EndsWith(cushion);
        if (!again) NotePlace(_rules.Edge.Place(cushion, before.Position));
        if (!again) Seen.AllTouched = Seen.AllTouched.With(cushion);
        int touched = Seen.AllTouched.Count;
        _tail.Touch(leadsInto, touched);
        return (_tail.Fewest <= _rules.MostRails && touched < CushionList.Most) || Ends(ShotFate.TooManyCushions);
    }

    private bool Drops(PocketName pocket)
    {
        if (_inJaws && pocket != _jaws) return Ends(ShotFate.Rattles);
        int counted = _tail.CountedInto(pocket);
        if (counted > _rules.MostRails) return Ends(ShotFate.TooManyCushions);
        if (_inJaws) Seen.EdgeCount--;
        NotePlace(_rules.Edge.Place(pocket));
        Seen.ObjectBall = Seen.AllTouched.First(counted);
        Seen.Pocket = pocket;
        Seen.Fate = _scratched ? ShotFate.Scratch : _toTheEnd ? ShotFate.Made : ShotFate.Down;
        _decided = true;
        return Seen.Fate == ShotFate.Made;
    }

    /// <summary>The object ball is down: all that is left to see is whether the cue ball stays up.</summary>
    private bool StaysUp(ShotMoment moment)
    {
        if (moment.Kind != ShotEventKind.Pocketed || moment.BallA != _rules.CueBall) return true;
        Seen.Fate = ShotFate.Scratch;
        return false;
    }

    private bool Ends(ShotFate fate)
    {
        Seen.Fate = fate;
        Seen.ObjectBall = Seen.AllTouched;
        return false;
    }

    private void NotePlace(double place)
    {
        if (Seen.EdgeCount < SeenShot.Places) Seen.Edge[Seen.EdgeCount++] = place;
    }

    /// <summary>Notes on which side a leg of the cue ball, taken straight, passes the object ball.</summary>
    private void NoteLeg(Vec2 end)
    {
        if (_legs < 3)
        {
            Vec2 way = end - _legStart;
            Vec2 ball = _rules.ObjectBallStart - _legStart;
            double along = ball.Dot(way);
            double margin = 2 * _rules.ObjectBallRadius * way.Length;
            if (along > -margin && along < way.LengthSquared + margin)
                Seen.Sides[_legs] = (sbyte)(way.Cross(ball) >= 0 ? 1 : -1);
        }

        _legStart = end;
        _legs++;
    }
}
