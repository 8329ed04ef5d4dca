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

    /// <summary>The target of a chain; null if the ball's way after its last contact leads to no line.</summary>
    /// <param name="chain">The contacts.</param>
    /// <param name="aimed">The pocket that the scene's aim names for this ball, or null.</param>
    internal static EffectTarget? Of(ShotChain chain, PocketName? aimed)
    {
        BallState leaves = Leaving(chain);
        if (chain.Cushions.Count == 0)
            return Mouth(chain, leaves);
        return chain.Striker is null && chain.Next is { Kind: ShotEventKind.BallsMeet } meets
            ? BesideBall(chain, meets)
            : Rail(chain, leaves, aimed);
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
            Pocket = name,
            Origin = pocket.MouthCentre,
            Along = pocket.Axis.Left,
            Across = pocket.Axis,
            Diamond = table.DiamondAlong,
            Sense = 1,
            PositiveWord = "to the left",
            NegativeWord = "to the right",
        };
        return WithOpening(bare, chain, leaves, pocket);
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

    private static EffectTarget? Rail(ShotChain chain, BallState leaves, PocketName? aimed)
    {
        Trace trace = chain.Trace;
        TableSpec table = trace.Setup.Equipment.Table;
        double radius = trace.Setup.Balls[chain.Ball].Radius;
        double reach = TableOutline.Reach(radius, trace.Setup.Equipment.Cushion.NoseHeight);
        var way = new FreeWay(radius, trace.Setup.Equipment.Cloth, table.Gravity);
        CushionName? best = null;
        double least = double.PositiveInfinity;
        PocketName? entered = chain.Next?.Pocket;
        foreach (CushionName name in Enum.GetValues<CushionName>())
        {
            StraightLine line = CountedCushion.LineOf(name, table, reach);
            if (name == chain.Cushions[^1].Name || way.Arrival(line, leaves) is not { } there)
                continue;
            // In a corner the ball crosses two lines close together: the one that it crosses more squarely tells more.
            double order = entered is { } pocket && Borders(table, pocket, name)
                ? -(there - leaves.Position).Normalized().Dot(line.Across)
                : (there - leaves.Position).Length;
            if (order >= least)
                continue;
            least = order;
            best = name;
        }

        if (best is not { } target)
            return null;
        StraightLine at = CountedCushion.LineOf(target, table, reach);
        EffectTarget onRail = Named(chain, OnCushion(chain, target, at.Across) with { Origin = at.Point });
        if (way.Arrival(at, leaves) is not { } arrival || Yardstick(table, target, entered ?? aimed, arrival) is not { } near)
            return onRail;
        return WithOpening(onRail with { Pocket = near.Name }, chain, leaves, near);
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

    private static PocketOutline? Yardstick(TableSpec table, CushionName cushion, PocketName? wanted, Vec2 arrival)
    {
        PocketOutline[] near =
        [
            .. new TableOutline(table).Pockets.Where(p => Borders(table, p.Name, cushion))
                .OrderBy(p => p.Name == wanted ? -1 : p.MouthCentre.DistanceTo(arrival)),
        ];
        return near.Length == 0 ? null : near[0];
    }

    // A ball's centre may pass (mouth - diameter)/2 from the middle of the mouth. Along another line than the mouth's, a
    // shift of parallel ways is longer or shorter.
    private static EffectTarget WithOpening(
        EffectTarget target, ShotChain chain, BallState leaves, in PocketOutline pocket)
    {
        double radius = chain.Trace.Setup.Balls[chain.Ball].Radius;
        Vec2 way = FreeMotion.FinalVelocity(leaves, radius).Normalized();
        double perMouth = Math.Abs(way.Cross(pocket.Axis.Left)) / Math.Abs(way.Cross(target.Along));
        double half = perMouth * (pocket.Mouth - 2 * radius) / 2;
        return half > 0 && double.IsFinite(half) ? target with { HalfOpening = half } : target;
    }
}
