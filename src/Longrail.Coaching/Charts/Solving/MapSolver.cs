using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>Solves the cells of a map one after another. Belongs to one thread.</summary>
internal sealed class MapSolver
{
    private const double Degree = Math.PI / 180;

    /// <summary>The thinnest cut that is aimed at, radians.</summary>
    private const double Thinnest = 80 * Degree;

    /// <summary>How far from the mirror line the object ball is sent in the search: steps of half a degree.</summary>
    private const double BankStep = 0.5 * Degree;

    private const int BankSteps = 40;

    /// <summary>Where speeds compete, those with the most leeway are first tried with so many strokes each, of a stream
    /// of their own: the odds that are shown come from other strokes, or the luckiest speed would look better than it
    /// is.</summary>
    private const int PilotShots = 64;

    private const int PilotSpeeds = 3;

    /// <summary>An edge of what makes the bank is found to this part of the first step.</summary>
    private const int Halvings = 12;

    private const int MostEdgeSteps = 24;

    private readonly MapRequest _request;
    private readonly EquipmentSpec _equipment;
    private readonly ChartRoute _route;
    private readonly PocketOutline _pocket;
    private readonly ShotPlayer _shots = new();
    private readonly double _radius;
    private readonly double _reach;
    private readonly Vec2 _cue;

    internal MapSolver(MapRequest request)
    {
        _request = request;
        _equipment = request.Equipment;
        _route = request.Route;
        _pocket = new TableOutline(_equipment.Table).Pockets[(int)_route.Pocket!.Value];
        _radius = 0.5 * _equipment.BallSet.Diameter;
        _reach = request.Reach;
        _cue = Metres(request.CueBall);
    }

    /// <summary>How many of the player's strokes have been played.</summary>
    internal long ShotsPlayed { get; private set; }

    /// <summary>A cell of the map.</summary>
    internal MapCell Solve(int column, int row, CancellationToken stop)
    {
        Vec2 place = _request.Place(column, row);
        var failed = new MapCell { Place = place, Failure = NoBank.TooNear };
        Vec2 ball = Metres(place);
        if (ball.DistanceTo(_cue) <= 2 * _radius || ball.DistanceTo(_route.Target) < 2 * _radius)
            return failed;
        if (MirrorBank.Touches(ball, [_route.Off], _route.Target, _equipment.Table, _reach)?[0] is not { } mirror
            || ball.DistanceTo(mirror) < 1e-9)
        {
            return failed;
        }

        double mass = _equipment.BallSet.Mass;
        ShotBall[] balls =
        [
            new(_radius, mass, BallState.AtRest(_cue)), new(_radius, mass, BallState.AtRest(ball)),
        ];
        var player = new LayoutPlayer(new ShotSetup(_equipment, balls), 0, _shots);
        MapAim[] aims = [.. _request.Speeds.Select(speed => Aim(player, ball, mirror, speed))];
        stop.ThrowIfCancellationRequested();
        if (aims.All(aim => aim.Failure != NoBank.None))
            return failed with { Failure = Commonest(aims) };
        return _request.Measure == MapMeasure.Leeway
            ? Cell(place, aims.MaxBy(aim => aim.Leeway), null)
            : WithOdds(player, place, aims, column, row, stop);
    }

    // Speeds fail for different reasons. That the slow ones stop short says little if the fast ones fail too; of the
    // rest the commonest is told, of equals the first.
    private static NoBank Commonest(MapAim[] aims) => aims
        .GroupBy(aim => aim.Failure)
        .OrderBy(group => group.Key == NoBank.RunsOutOfSpeed)
        .ThenByDescending(group => group.Count())
        .ThenBy(group => group.Key)
        .First().Key;

    private MapCell WithOdds(
        LayoutPlayer player, Vec2 place, MapAim[] aims, int column, int row, CancellationToken stop)
    {
        ulong key = RandomNumbers.Mixed(RandomNumbers.Mixed(_request.Seed, (ulong)column), (ulong)row);
        MapAim[] possible =
        [
            .. aims.Where(aim => aim.Failure == NoBank.None).OrderByDescending(aim => aim.Leeway).Take(PilotSpeeds),
        ];
        MapAim best = possible[0];
        if (possible.Length > 1)
        {
            var pilot = new StrokeErrors(_request.Player!, new RandomNumbers(key, 0));
            best = possible.MaxBy(aim => (Count(player, aim.Stroke, pilot, PilotShots, stop), aim.Leeway));
        }

        var errors = new StrokeErrors(_request.Player!, new RandomNumbers(key, 1));
        int made = Count(player, best.Stroke, errors, _request.Shots, stop);
        return Cell(place, best, Odds.Of(made, _request.Shots));
    }

    private static MapCell Cell(Vec2 place, MapAim aim, Odds? made) => new()
    {
        Place = place,
        Failure = NoBank.None,
        Speed = aim.Stroke.Speed,
        Aim = Math.IEEERemainder(aim.Stroke.Aim, 2 * Math.PI),
        Leeway = aim.Leeway,
        Made = made,
    };

    private int Count(LayoutPlayer player, Stroke meant, StrokeErrors errors, int shots, CancellationToken stop)
    {
        int made = 0;
        for (int k = 0; k < shots; k++)
        {
            if (k % 256 == 0)
                stop.ThrowIfCancellationRequested();
            if (errors.Played(meant, (ulong)k, player.Grip) is { } stroke && IsMade(player, stroke, out _))
                made++;
        }

        ShotsPlayed += shots;
        return made;
    }

    private MapAim Aim(LayoutPlayer player, Vec2 ball, Vec2 mirror, double speed)
    {
        Vec2 bank = (mirror - ball).Normalized();
        Vec2 way = ball - 2 * _radius * bank - _cue;
        double cut = Math.Atan2(way.Cross(bank), way.Dot(bank));
        if (Math.Abs(cut) > Thinnest)
            return MapAim.Failed(NoBank.TooThin);
        if (!HasRoom(_cue + way))
            return MapAim.Failed(NoBank.NoRoomBehind);
        Stroke level = CueBallStroke.Of(
            _equipment, _request.Height, _request.Tip.Right, speed, way.Length, out NoBank failure);
        if (failure != NoBank.None)
            return MapAim.Failed(failure);
        double squirt = TipContact.Strike(level, _radius, _equipment.BallSet.Mass, _equipment.Cue).Squirt;

        // A turn of the stick turns the object ball's way by the cue ball's way over the width of a ball, and more for
        // a cut.
        double turn = 2 * _radius * Math.Cos(cut) / Math.Max(way.Length, 2 * _radius);
        var line = new ArrivalLine(_pocket.MouthCentre, _pocket.Axis);
        NoBank seen = NoBank.None;
        double? found = ArrivalRoot.Near(
            aim =>
            {
                Arrival trial = Play(player, level with { Aim = aim }, line);
                seen = (NoBank)Math.Max((int)seen, (int)trial.Failure);
                return trial.Offset;
            },
            way.Angle - squirt, BankStep * turn, BankSteps);
        if (found is not { } middle)
            return MapAim.Failed(seen == NoBank.None ? NoBank.DoesNotLeadThere : seen);
        if (!Play(player, level with { Aim = middle }, line).Reached)
            return MapAim.Failed(NoBank.RunsOutOfSpeed);
        double path = ball.DistanceTo(mirror) + mirror.DistanceTo(_route.Target);
        return Window(player, level with { Aim = middle }, 0.125 * _pocket.Mouth / path * turn);
    }

    private Arrival Play(LayoutPlayer player, Stroke stroke, ArrivalLine line)
    {
        var watch = new ArrivalWatch(1, _route.Off, _route.Pocket, toTheEnd: false);
        player.Play(stroke, ref watch);
        return watch.Met ? Arrivals.Read(player.Shot, 1, watch, line) : Arrival.Failed(NoBank.TooThin);
    }

    /// <summary>The aims next to each other that make the bank, around the one that goes to the middle.</summary>
    private MapAim Window(LayoutPlayer player, Stroke middle, double step)
    {
        NoBank why = NoBank.None;
        for (int k = 0; k <= 6; k++)
        {
            foreach (int side in k == 0 ? (int[])[1] : [-1, 1])
            {
                Stroke stroke = middle with { Aim = middle.Aim + side * k * step };
                if (!IsMade(player, stroke, out NoBank failure))
                {
                    why = k == 0 ? failure : why;
                    continue;
                }

                double low = Edge(player, stroke, -step);
                double high = Edge(player, stroke, step);
                return new MapAim(NoBank.None, stroke with { Aim = 0.5 * (low + high) }, 0.5 * (high - low));
            }
        }

        return MapAim.Failed(why);
    }

    private double Edge(LayoutPlayer player, Stroke made, double step)
    {
        double inside = made.Aim;
        double outside = inside + step;
        for (int k = 0; k < MostEdgeSteps && IsMade(player, made with { Aim = outside }, out _); k++)
            (inside, outside) = (outside, outside + step);
        for (int k = 0; k < Halvings; k++)
        {
            double middle = 0.5 * (inside + outside);
            if (IsMade(player, made with { Aim = middle }, out _))
                inside = middle;
            else
                outside = middle;
        }

        return inside;
    }

    // What counts as made is what counts in the odds of a way.
    private bool IsMade(LayoutPlayer player, Stroke stroke, out NoBank failure)
    {
        var watch = new FateWatch(0, 1, _route.Pocket!.Value, mostCushions: 2, endsOnMiss: true);
        StopReason ended = player.Play(stroke, ref watch);
        bool made = watch.Made && ended == StopReason.AtRest;
        failure = made ? NoBank.None
            : watch.Kissed ? NoBank.DoubleKiss
            : watch.Scratched ? NoBank.Scratch
            : NoBank.JawTurnsAway;
        return made;
    }

    private bool HasRoom(Vec2 centre) =>
        Math.Min(centre.X, _equipment.Table.Length - centre.X) >= _reach
        && Math.Min(centre.Y, _equipment.Table.Width - centre.Y) >= _reach;

    private Vec2 Metres(Vec2 diamonds) =>
        new(diamonds.X * _equipment.Table.DiamondAlong, diamonds.Y * _equipment.Table.DiamondAcross);
}
