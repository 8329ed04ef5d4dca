using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Roots;

namespace Longrail.Physics.Shots;

/// <summary>Where a ball on a parabola meets the table: cushions, jaws, drops.</summary>
/// <remarks>
/// Roundings and facings lie behind the nose lines, so a ball can touch them only once its centre is behind a touch
/// line within a mouth. Away from the mouths four straight lines are all there is; crossing one of them within a mouth
/// is an internal event, after which that pocket's jaws and drop are looked at.
/// </remarks>
internal sealed class Playfield
{
    private const int NoPocket = -1;
    private readonly double _length;
    private readonly double _width;
    private readonly bool _hasPockets;
    private readonly double _cornerSolid;
    private readonly double _sideSolid;

    internal Playfield(TableSpec table)
    {
        Outline = new TableOutline(table);
        _length = table.Length;
        _width = table.Width;
        _hasPockets = Outline.Pockets.Length > 0;
        if (!_hasPockets) return;
        RubberPiece right = Outline.Pieces[4];
        _cornerSolid = right.Start.X + right.SolidFrom;
        _sideSolid = right.Start.X + right.SolidTo;
    }

    internal TableOutline Outline { get; }

    /// <summary>What a ball meets first on its parabola.</summary>
    /// <param name="p">Position now, metres.</param>
    /// <param name="v">Velocity now, m/s.</param>
    /// <param name="a">Acceleration, m/s^2.</param>
    /// <param name="reach">Touching distance in plan, metres.</param>
    /// <param name="limit">Last time of interest, seconds from now.</param>
    /// <param name="first">A piece of cushion that the ball is pressed into already, or -1.</param>
    /// <param name="second">Another one, or -1.</param>
    /// <returns>The forecast, its time counted from now.</returns>
    internal Forecast Next(Vec2 p, Vec2 v, Vec2 a, double reach, double limit, int first, int second)
    {
        int pocket = _hasPockets ? MouthAt(p, v, reach) : NoPocket;
        return pocket == NoPocket
            ? NextInside(p, v, a, reach, limit, first, second)
            : NextInMouth(pocket, p, v, a, reach, limit, first, second);
    }

    private Forecast NextInside(Vec2 p, Vec2 v, Vec2 a, double reach, double limit, int first, int second)
    {
        double best = double.PositiveInfinity;
        var cushion = CushionName.Head;
        Line(p.X - reach, v.X, a.X, CushionName.Head, limit, first, second, ref best, ref cushion);
        Line(_length - reach - p.X, -v.X, -a.X, CushionName.Foot, limit, first, second, ref best, ref cushion);
        Line(_width - reach - p.Y, -v.Y, -a.Y, CushionName.Left, limit, first, second, ref best, ref cushion);
        Line(p.Y - reach, v.Y, a.Y, CushionName.Right, limit, first, second, ref best, ref cushion);
        if (double.IsPositiveInfinity(best)) return Forecast.Never;
        if (!_hasPockets) return new Forecast(best, ForecastKind.Touch, (int)cushion);
        Vec2 there = p + best * (v + (0.5 * best) * a);
        int piece = PieceAt(cushion, there);
        return piece >= 0
            ? new Forecast(best, ForecastKind.Touch, piece)
            : new Forecast(best, ForecastKind.MouthCrossed, -1);
    }

    private void Line(
        double gap, double speed, double acceleration, CushionName cushion, double limit, int first, int second,
        ref double best, ref CushionName bestCushion)
    {
        if (speed >= 0 && acceleration >= 0) return;
        if (first >= 0 && Outline.Pieces[first].Cushion == cushion) return;
        if (second >= 0 && Outline.Pieces[second].Cushion == cushion) return;
        double time = FirstCrossing.Quadratic(
            gap, speed, 0.5 * acceleration, Math.Min(limit, best), LoopLimits.SlowestTouch);
        if (time < best)
        {
            best = time;
            bestCushion = cushion;
        }
    }

    private Forecast NextInMouth(
        int pocketIndex, Vec2 p, Vec2 v, Vec2 a, double reach, double limit, int first, int second)
    {
        ref readonly PocketOutline pocket = ref Outline.Pockets[pocketIndex];
        double best = limit;
        Forecast next = Forecast.Never;
        // A ball that comes out of a jaw with its centre over the drop is down, whichever way it was going.
        bool over = (p - pocket.DropCentre).Length < pocket.DropRadius - LoopLimits.FrozenGap;
        double drop = over ? 0 : CircleTime(p - pocket.DropCentre, v, a, pocket.DropRadius, best, 0);
        if (drop <= best)
        {
            best = drop;
            next = new Forecast(drop, ForecastKind.Drop, pocketIndex);
        }

        if (pocket.PieceA != first && pocket.PieceA != second) Jaw(pocket.JawA, pocket.PieceA, p, v, a, reach, ref best, ref next);
        if (pocket.PieceB != first && pocket.PieceB != second) Jaw(pocket.JawB, pocket.PieceB, p, v, a, reach, ref best, ref next);

        // Out of the mouth again: any touch line that the centre is behind, crossed back.
        Back(p.X - reach, v.X, a.X, ref best, ref next);
        Back(_length - reach - p.X, -v.X, -a.X, ref best, ref next);
        Back(_width - reach - p.Y, -v.Y, -a.Y, ref best, ref next);
        Back(p.Y - reach, v.Y, a.Y, ref best, ref next);
        return next;
    }

    private static void Jaw(
        in JawEnd jaw, int piece, Vec2 p, Vec2 v, Vec2 a, double reach, ref double best, ref Forecast next)
    {
        Vec2 n = jaw.FacingNormal;
        double facing = FirstCrossing.Quadratic(
            (p - jaw.FacingStart).Dot(n) - reach, v.Dot(n), 0.5 * a.Dot(n), best, LoopLimits.SlowestTouch);
        if (facing < best && (At(p, v, a, facing) - jaw.Centre).Dot(jaw.FacingDirection) > 0)
        {
            best = facing;
            next = new Forecast(facing, ForecastKind.Touch, piece);
        }

        double rounding = CircleTime(p - jaw.Centre, v, a, jaw.Radius + reach, best, LoopLimits.SlowestTouch);
        if (rounding < best)
        {
            Vec2 fromCentre = At(p, v, a, rounding) - jaw.Centre;
            bool beforeFacing = fromCentre.Dot(jaw.FacingDirection) <= LoopLimits.OnLine;
            // Past the tangent point of the nose line: on the pocket's side of the line through centre and tangent
            // point.
            bool pastNose = fromCentre.Dot(jaw.TowardPocket) >= -LoopLimits.OnLine;
            if (beforeFacing && pastNose)
            {
                best = rounding;
                next = new Forecast(rounding, ForecastKind.Touch, piece);
            }
        }
    }

    private static void Back(double gap, double speed, double acceleration, ref double best, ref Forecast next)
    {
        // A ball on the line that is already going out has just crossed it, and may still be behind the other line of a
        // corner.
        if (gap > LoopLimits.OnLine || (gap > -LoopLimits.OnLine && speed > 0)) return;
        if (speed <= 0 && acceleration <= 0) return;
        double time = FirstCrossing.Quadratic(-gap, -speed, -0.5 * acceleration, best);
        if (time < best)
        {
            best = time;
            next = new Forecast(time, ForecastKind.MouthCrossed, -1);
        }
    }

    private static Vec2 At(Vec2 p, Vec2 v, Vec2 a, double t) => p + t * (v + (0.5 * t) * a);

    /// <summary>When a point on a parabola enters a circle about the origin.</summary>
    private static double CircleTime(Vec2 p, Vec2 v, Vec2 a, double radius, double limit, double slowest)
    {
        double gap = p.Length - radius;
        if (gap > limit * (v.Length + 0.5 * limit * a.Length)) return double.PositiveInfinity;
        return FirstCrossing.Quartic(
            p.LengthSquared - radius * radius, 2 * p.Dot(v), v.LengthSquared + p.Dot(a), v.Dot(a), 0.25 * a.LengthSquared,
            limit, 2 * radius * slowest);
    }

    /// <summary>The piece of cushion whose straight part a point on a cushion's touch line faces, or -1 within a
    /// mouth.</summary>
    private int PieceAt(CushionName cushion, Vec2 p)
    {
        if (cushion is CushionName.Head or CushionName.Foot)
            return p.Y >= _cornerSolid && p.Y <= _width - _cornerSolid ? (int)cushion : -1;
        int firstPiece = cushion == CushionName.Left ? 2 : 4;
        if (p.X < _cornerSolid || p.X > _length - _cornerSolid) return -1;
        if (p.X <= _sideSolid) return firstPiece;
        return p.X >= _length - _sideSolid ? firstPiece + 1 : -1;
    }

    /// <summary>The pocket in whose mouth a ball's centre is, behind a touch line or on it and going in; -1 if
    /// none.</summary>
    private int MouthAt(Vec2 p, Vec2 v, double reach)
    {
        int across = Behind(p.X - reach, v.X, _length - reach - p.X);
        int along = Behind(p.Y - reach, v.Y, _width - reach - p.Y);
        if (across == 0 && along == 0) return NoPocket;
        bool toLeft = p.Y > 0.5 * _width;
        if (along != 0 && PieceAt(along < 0 ? CushionName.Right : CushionName.Left, p) < 0)
        {
            if (p.X > _sideSolid && p.X < _length - _sideSolid)
                return (int)(toLeft ? PocketName.LeftSide : PocketName.RightSide);
            return Corner(p.X > 0.5 * _length, toLeft);
        }

        if (across != 0 && PieceAt(across < 0 ? CushionName.Head : CushionName.Foot, p) < 0)
            return Corner(across > 0, toLeft);
        return NoPocket;
    }

    private static int Corner(bool foot, bool left) => (int)(foot
        ? left ? PocketName.FootLeft : PocketName.FootRight
        : left ? PocketName.HeadLeft : PocketName.HeadRight);

    /// <summary>-1 behind the low line, +1 behind the high line, 0 between the two.</summary>
    private static int Behind(double low, double speed, double high)
    {
        if (low < -LoopLimits.OnLine || (low <= LoopLimits.OnLine && speed < 0)) return -1;
        if (high < -LoopLimits.OnLine || (high <= LoopLimits.OnLine && speed > 0)) return 1;
        return 0;
    }
}
