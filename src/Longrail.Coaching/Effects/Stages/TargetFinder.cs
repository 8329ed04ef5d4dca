using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>Finds the line on which a shot's arrival is measured.</summary>
internal static class TargetFinder
{
    // Below this a rebound counts as straight off its cushion, where long and short have no meaning: half a degree, as
    // for contrasts.
    private const double StraightOff = 0.0087;

    // Cosine of 70 degrees: a way more aslant than that to a pocket's axis does not lead into it.
    private const double Entering = 0.34;

    /// <summary>The target of a chain; null if the ball's way after its last contact leads to no line.</summary>
    /// <param name="chain">The contacts.</param>
    /// <param name="staged">The same shot, to ask where its plain mirror bank goes.</param>
    /// <param name="aimed">The pocket that the scene's aim names for this ball, or null.</param>
    internal static EffectTarget? Of(ShotChain chain, StagedShot staged, PocketName? aimed)
    {
        BallState leaves = Leaving(chain);
        if (chain.Cushions.Count == 0)
            return Mouth(chain, leaves);
        return chain.Striker is null && chain.Next is { Kind: ShotEventKind.BallsMeet } meets
            ? BesideBall(chain, meets)
            : Rail(chain, staged, leaves, aimed);
    }

    /// <summary>The measured ball as it leaves its last counted contact.</summary>
    internal static BallState Leaving(ShotChain chain)
    {
        ShotEvent last = chain.Trace.Events[chain.LastContact];
        return last.BallA == chain.Ball ? last.AfterA : last.AfterB!.Value;
    }

    internal static StraightLine LineOf(EffectTarget target) => new(target.Origin, target.Across);

    private static EffectTarget? Mouth(ShotChain chain, BallState leaves)
    {
        if (chain.Next?.Pocket is not { } name)
            return null;
        TableSpec table = chain.Trace.Setup.Equipment.Table;
        PocketOutline pocket = new TableOutline(table).Pockets[(int)name];
        var bare = new EffectTarget
        {
            Kind = EffectTargetKind.Mouth,
            Origin = pocket.MouthCentre,
            Along = pocket.Axis.Right,
            Across = pocket.Axis,
            Diamond = table.DiamondAlong,
            Sense = 1,
            PositiveWord = "to the right",
            NegativeWord = "to the left",
        };
        return WithOpening(bare, chain, leaves, pocket) with { Pocket = name };
    }

    private static EffectTarget BesideBall(ShotChain chain, ShotEvent meets)
    {
        CountedCushion last = chain.Cushions[^1];
        Vec2 place = meets.BallA == chain.Ball ? meets.BeforeA.Position : meets.BeforeB!.Value.Position;
        EffectTarget line = OnCushion(chain, last.Name, -last.TouchLine.Across);
        return Named(chain, line with
        {
            Kind = EffectTargetKind.Ball,
            Met = meets.BallA == chain.Ball ? meets.BallB : meets.BallA,
            Origin = place - place.Dot(line.Along) * line.Along,
        });
    }

    private static EffectTarget? Rail(ShotChain chain, StagedShot staged, BallState leaves, PocketName? aimed)
    {
        Trace trace = chain.Trace;
        TableSpec table = trace.Setup.Equipment.Table;
        double radius = trace.Setup.Balls[chain.Ball].Radius;
        double reach = TableOutline.Reach(radius, trace.Setup.Equipment.Cushion.NoseHeight);
        var way = new FreeWay(radius, trace.Setup.Equipment.Cloth, table.Gravity);
        PocketName? entered = chain.Next?.Pocket;
        CushionName? best = null;
        var least = (Beyond: double.PositiveInfinity, Order: double.PositiveInfinity);
        foreach (CushionName name in Enum.GetValues<CushionName>())
        {
            StraightLine line = CountedCushion.LineOf(name, table, reach);
            if (name == chain.Cushions[^1].Name || way.Arrival(line, leaves) is not { } there)
                continue;
            // Shot and mirror are both to arrive on the table, if there is such a cushion: a way that runs along a line
            // crosses it anywhere. Among those the first that the shot crosses; in a corner, where it crosses two close
            // together, the one that it crosses more squarely.
            double beyond = Beyond(name, table, there);
            if (staged.Arrival(Switches.AllOff, line) is { } mirror)
                beyond = Math.Max(beyond, Beyond(name, table, mirror));
            double order = entered is { } pocket && Borders(table, pocket, name)
                ? -(there - leaves.Position).Normalized().Dot(line.Across)
                : (there - leaves.Position).Length;
            if (beyond > least.Beyond || (beyond == least.Beyond && order >= least.Order))
                continue;
            least = (beyond, order);
            best = name;
        }

        if (best is not { } target)
            return null;
        StraightLine at = CountedCushion.LineOf(target, table, reach);
        EffectTarget onRail = Named(chain, OnCushion(chain, target, at.Across) with { Origin = at.Point });
        return way.Arrival(at, leaves) is { } arrival && Yardstick(table, target, entered ?? aimed, arrival) is { } near
            ? WithOpening(onRail, chain, leaves, near)
            : onRail;
    }

    // How far a place on a cushion's line is beyond its ends, metres.
    private static double Beyond(CushionName name, TableSpec table, Vec2 place)
    {
        double at = Diamonds.IsLong(name) ? place.X : place.Y;
        double length = Diamonds.IsLong(name) ? table.Length : table.Width;
        return Math.Max(0, Math.Max(-at, at - length));
    }

    private static EffectTarget OnCushion(ShotChain chain, CushionName name, Vec2 across)
    {
        TableSpec table = chain.Trace.Setup.Equipment.Table;
        return new EffectTarget
        {
            Kind = EffectTargetKind.Cushion,
            Cushion = name,
            Origin = Vec2.Zero,
            Along = Diamonds.IsLong(name) ? new Vec2(1, 0) : new Vec2(0, 1),
            Across = across,
            Diamond = Diamonds.Length(name, table),
            Sense = 1,
            PositiveWord = "",
            NegativeWord = "",
        };
    }

    /// <summary>Says which way along the line is long.</summary>
    private static EffectTarget Named(ShotChain chain, EffectTarget target)
    {
        ShotEvent last = chain.Trace.Events[chain.LastContact];
        Vec2 normal = -chain.Cushions[^1].TouchLine.Across;
        Vec2 way = last.AfterA.Velocity.Normalized();
        double off = normal.Cross(way);
        if (Math.Abs(off) < StraightOff)
        {
            (string up, string down) = Diamonds.IsLong(target.Cushion!.Value)
                ? ("towards the foot", "towards the head")
                : ("towards the left", "towards the right");
            return target with { PositiveWord = up, NegativeWord = down };
        }

        // A turn further from the normal moves the crossing along u by its size times cross(way, turned)/cross(way, u).
        return target with
        {
            Sense = Math.Sign(off) * Math.Sign(way.Cross(target.Along)),
            PositiveWord = "long",
            NegativeWord = "short",
        };
    }

    private static bool Borders(TableSpec table, PocketName name, CushionName cushion)
    {
        var outline = new TableOutline(table);
        PocketOutline pocket = outline.Pockets[(int)name];
        return outline.Pieces[pocket.PieceA].Cushion == cushion || outline.Pieces[pocket.PieceB].Cushion == cushion;
    }

    // The pocket that is entered or aimed at; else one whose mouth is less than a diamond away.
    private static PocketOutline? Yardstick(TableSpec table, CushionName cushion, PocketName? wanted, Vec2 arrival)
    {
        foreach (PocketOutline pocket in new TableOutline(table).Pockets)
        {
            bool isMeant = wanted is { } name
                ? pocket.Name == name
                : pocket.MouthCentre.DistanceTo(arrival) < table.DiamondAlong;
            if (isMeant && Borders(table, pocket.Name, cushion))
                return pocket;
        }

        return null;
    }

    // A ball's centre may pass (mouth - diameter)/2 from the middle of the mouth. Along another line than the mouth's,
    // a shift of parallel ways is longer or shorter. A way that runs along the mouth has no use for its opening.
    private static EffectTarget WithOpening(
        EffectTarget target, ShotChain chain, BallState leaves, in PocketOutline pocket)
    {
        double radius = chain.Trace.Setup.Balls[chain.Ball].Radius;
        Vec2 way = FreeMotion.FinalVelocity(leaves, radius).Normalized();
        double perMouth = way.Dot(pocket.Axis) / Math.Abs(way.Cross(target.Along));
        double half = perMouth * (pocket.Mouth - 2 * radius) / 2;
        return way.Dot(pocket.Axis) > Entering && half > 0 && double.IsFinite(half)
            ? target with { Pocket = pocket.Name, HalfOpening = half }
            : target with { Pocket = null };
    }
}
