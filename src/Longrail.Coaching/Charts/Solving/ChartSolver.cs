using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>Solves the cells of a chart one after another. Belongs to one thread.</summary>
/// <remarks>First the object ball alone, from the state that the hit gives it, which is quick and knows no kiss; then
/// the whole shot with the cue ball from that line on, which is what the cell says.</remarks>
internal sealed class ChartSolver
{
    private const double Degree = Math.PI / 180;

    /// <summary>How far from the mirror line an aim is looked for: degrees, in steps of half a degree. The trade's
    /// corrections are a few degrees.</summary>
    private const int Steps = 50;

    private const double Step = 0.5 * Degree;

    /// <summary>A pocket's mouth that is met this near the mirror line is why there is no bank, radians.</summary>
    private const double Beside = 6 * Degree;

    /// <summary>The whole shot may be turned this far from what the object ball alone told, radians: it differs only
    /// where the balls touch while the object ball is in the rubber already.</summary>
    private const double FineStep = 0.02 * Degree;

    private const int FineSteps = 100;

    private static readonly ShotOptions _options = new(MaxTime: 60, MaxEvents: 2_000);

    private readonly ShotPlayer _player = new();
    private readonly ChartRequest _request;
    private readonly ChartRoute _route;
    private readonly EquipmentSpec _equipment;
    private readonly TableOutline _outline;
    private readonly double _radius;
    private readonly double _reach;
    private readonly ShotBall[] _one = new ShotBall[1];
    private readonly ShotBall[] _two = new ShotBall[2];
    private readonly ShotSetup _alone;
    private readonly ShotSetup _whole;

    internal ChartSolver(ChartRequest request)
    {
        _request = request;
        _route = request.Route;
        _equipment = request.Equipment;
        _outline = new TableOutline(_equipment.Table);
        _radius = 0.5 * _equipment.BallSet.Diameter;
        _reach = request.Reach;
        _alone = new ShotSetup(_equipment, _one);
        _whole = new ShotSetup(_equipment, _two);
    }

    /// <summary>The mirror bank of a place.</summary>
    /// <param name="place">The ball's centre, metres.</param>
    internal Vec2? Mirror(Vec2 place) =>
        MirrorBank.Touches(place, [_route.Off], _route.Target, _equipment.Table, _reach)?[0];

    /// <summary>The cell of a place and a stroke.</summary>
    /// <param name="place">The banked ball's centre, metres.</param>
    /// <param name="launch">What the stroke gives it.</param>
    internal ChartCell Solve(Vec2 place, Launch launch)
    {
        if (launch.Failure != NoBank.None)
            return Without(launch.Failure);
        if (place.DistanceTo(_route.Target) < 2 * _radius)
            return Without(NoBank.TooNear);
        if (Mirror(place) is not { } mirror || place.DistanceTo(mirror) < 1e-9)
            return Without(NoBank.TooNear);
        ArrivalLine line = LineOf(mirror);
        double guess = (mirror - place).Angle - launch.Velocity.Angle;
        NoBank seen = NoBank.None;
        bool mouth = InMouth(mirror);
        double? alone = ArrivalRoot.Near(
            direction =>
            {
                Arrival trial = PlayAlone(place, launch, direction, line);
                seen = Worse(seen, trial.Failure);
                mouth |= trial.Failure == NoBank.TouchInMouth && Math.Abs(direction - guess) < Beside;
                return trial.Offset;
            },
            guess, Step, Steps);
        if (alone is not { } found)
            return Without(mouth ? NoBank.TouchInMouth : seen == NoBank.None ? NoBank.DoesNotLeadThere : seen);
        return _route.IsKick
            ? Finish(place, mirror, launch, found, PlayAlone(place, launch, found, line))
            : SolveWhole(place, mirror, launch, found, line);
    }

    private ChartCell SolveWhole(Vec2 place, Vec2 mirror, Launch launch, double alone, ArrivalLine line)
    {
        if (!HasRoom(Behind(place, alone)))
            return Without(NoBank.NoRoomBehind);
        Arrival first = PlayWhole(place, launch, alone, line);
        if (first.Offset is { } offset && Math.Abs(offset) <= 10 * ArrivalRoot.CloseEnough)
            return Finish(place, mirror, launch, alone, first);
        NoBank seen = first.Failure;
        double? whole = first.Failure == NoBank.DoubleKiss
            ? null
            : ArrivalRoot.Near(
                direction =>
                {
                    Arrival trial = PlayWhole(place, launch, direction, line);
                    seen = Worse(seen, trial.Failure);
                    return trial.Offset;
                },
                alone, FineStep, FineSteps);
        if (whole is not { } found)
            return Without(seen == NoBank.None ? NoBank.DoesNotLeadThere : seen);
        return Finish(place, mirror, launch, found, PlayWhole(place, launch, found, line));
    }

    private ChartCell Finish(Vec2 place, Vec2 mirror, Launch launch, double direction, Arrival arrival)
    {
        if (arrival.Failure != NoBank.None)
            return Without(arrival.Failure);
        if (!arrival.Reached)
            return Without(NoBank.RunsOutOfSpeed);
        if (_route.Pocket is not null && !arrival.Dropped)
            return Without(NoBank.JawTurnsAway);
        double sense = Sense(place, mirror);
        double touched = Diamonds.Along(_route.Off, arrival.Touch, _equipment.Table);
        double mirrored = Diamonds.Along(_route.Off, mirror, _equipment.Table);
        double number = DiamondNumbers.Of(
            _request.Numbering, _route.Off, arrival.Touch, arrival.Incoming, _reach, _equipment.Table);
        double mirrorNumber = MirrorNumber(place, mirror);
        return new ChartCell
        {
            Failure = NoBank.None,
            Touch = arrival.Touch,
            Arrival = arrival.Incoming.Angle,
            CorrectionDiamonds = sense * (touched - mirrored),
            Number = number,
            Correction = sense * (number - mirrorNumber),
            Stroke = launch.Stroke with { Aim = Math.IEEERemainder(direction + launch.Stroke.Aim, 2 * Math.PI) },
            CueBall = _route.IsKick ? place : Behind(place, direction),
        };
    }

    /// <summary>The number of a mirror touch.</summary>
    internal double MirrorNumber(Vec2 place, Vec2 mirror) => DiamondNumbers.Of(
        _request.Numbering, _route.Off, mirror, mirror - place, _reach, _equipment.Table);

    /// <summary>Which way longer is, along the cushion: the way the mirror ball travels.</summary>
    private double Sense(Vec2 place, Vec2 mirror)
    {
        double way = Diamonds.IsLong(_route.Off) ? mirror.X - place.X : mirror.Y - place.Y;
        return way < -1e-9 ? -1 : 1;
    }

    private ArrivalLine LineOf(Vec2 mirror) => new(
        _route.Target,
        _route.Pocket is { } pocket ? _outline.Pockets[(int)pocket].Axis : (_route.Target - mirror).Normalized());

    private Arrival PlayAlone(Vec2 place, Launch launch, double direction, ArrivalLine line)
    {
        var state = new BallState(place, launch.Velocity.Rotated(direction), launch.SpinAt(direction));
        _one[0] = new ShotBall(_radius, _equipment.BallSet.Mass, state);
        return Play(_alone, 0, line, toTheEnd: false);
    }

    private Arrival PlayWhole(Vec2 place, Launch launch, double direction, ArrivalLine line)
    {
        double mass = _equipment.BallSet.Mass;
        Stroke stroke = launch.Stroke with { Aim = direction + launch.Stroke.Aim };
        TipResult struck = TipContact.Strike(stroke, _radius, mass, _equipment.Cue);
        Vec2 behind = Behind(place, direction);
        if (!HasRoom(behind))
            return Arrival.Failed(NoBank.NoRoomBehind);
        _two[0] = new ShotBall(_radius, mass, new BallState(behind, struck.Velocity, struck.Spin));
        _two[1] = new ShotBall(_radius, mass, BallState.AtRest(place));
        return Play(_whole, 1, line, toTheEnd: true);
    }

    private Arrival Play(ShotSetup setup, int ball, ArrivalLine line, bool toTheEnd)
    {
        var watch = new ArrivalWatch(ball, _route.Off, _route.Pocket, toTheEnd);
        _player.Play(setup, _options, ref watch);
        return Arrivals.Read(_player, ball, watch, line);
    }

    private Vec2 Behind(Vec2 place, double direction) => place - _request.Distance * Vec2.FromAngle(direction);

    private bool HasRoom(Vec2 centre) =>
        Math.Min(centre.X, _equipment.Table.Length - centre.X) >= _reach
        && Math.Min(centre.Y, _equipment.Table.Width - centre.Y) >= _reach;

    private bool InMouth(Vec2 mirror)
    {
        double along = Diamonds.IsLong(_route.Off) ? mirror.X : mirror.Y;
        return !_outline.Pieces.Any(piece =>
        {
            if (piece.Cushion != _route.Off)
                return false;
            double start = Diamonds.IsLong(_route.Off) ? piece.Start.X : piece.Start.Y;
            return along >= start && along <= start + piece.Length;
        });
    }

    // What says most about a search that found nothing.
    private static NoBank Worse(NoBank a, NoBank b) => (NoBank)Math.Max((int)a, (int)b);

    private static ChartCell Without(NoBank failure) => new() { Failure = failure };
}
