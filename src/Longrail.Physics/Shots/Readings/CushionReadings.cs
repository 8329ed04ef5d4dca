using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Takes the reading of a rebound.</summary>
internal static class CushionReadings
{
    internal static CushionReading Of(Trace trace, TableOutline outline, int index, Vec3? stripeAxis)
    {
        ShotEvent e = trace.Events[index];
        TableSpec table = outline.Table;
        double radius = trace.Setup.Balls[e.BallA].Radius;
        double reach = TableOutline.Reach(radius, trace.Setup.Equipment.Cushion.NoseHeight);
        CushionName cushion = e.Cushion!.Value;
        Vec2 into = Into(outline, e, reach);
        Vec2 along = into.Right;

        // The sense of travel along the cushion: that of arrival, or of leaving for a ball that came straight in.
        double alongIn = e.BeforeA.Velocity.Dot(along);
        double sense = Math.Abs(alongIn) > 1e-9 ? Math.Sign(alongIn) : Math.Sign(e.AfterA.Velocity.Dot(along));
        if (sense == 0) sense = 1;
        double angleIn = Math.Atan2(Math.Abs(alongIn), e.BeforeA.Velocity.Dot(into));
        Vec2 final = FreeMotion.FinalVelocity(e.AfterA, radius);
        double AngleOut(Vec2 v) => Angles.Degrees(Math.Atan2(sense * v.Dot(along), -v.Dot(into)));

        BallWay arrival = BallWay.Of(e.BeforeA, radius);
        BallWay leaving = BallWay.Of(e.AfterA, radius);
        // After a jaw there is no mirror to speak of: the ball is at the pocket already.
        Landing? landing = e.Kind == ShotEventKind.Cushion ? Landing.After(trace, index, table, reach) : null;
        double? mirror = landing?.Mirror(e.BeforeA.Position, e.BeforeA.Velocity, into, table, reach);
        double? longOf = landing is { } l && mirror is { } m
            ? l.LongOf(m, sense * along, into)
            : null;
        StripeReading stripe = StripeReading.At(trace, index, stripeAxis);
        return new CushionReading(
            Angles.Degrees(angleIn), AngleOut(e.AfterA.Velocity), AngleOut(final),
            arrival.Speed, leaving.Speed, final.Length,
            Diamonds.Along(cushion, e.BeforeA.Position, table), Diamonds.Along(cushion, e.AfterA.Position, table),
            landing is { } here ? Diamonds.Word(here.Cushion) : null, landing?.Diamond, mirror, longOf,
            arrival.RollRatio, sense * arrival.SideOffset, sense * leaving.SideOffset, 1000 * e.Depth,
            stripe.TurnDegrees, stripe.OffSlideDegrees, stripe.OffRollDegrees);
    }

    /// <summary>The direction into the rubber at the touch.</summary>
    private static Vec2 Into(TableOutline outline, ShotEvent e, double reach)
    {
        Vec2 best = Vec2.Zero;
        double least = double.PositiveInfinity;
        foreach (ref readonly RubberPiece piece in outline.Pieces.AsSpan())
        {
            if (piece.Cushion != e.Cushion) continue;
            double gap = Math.Abs(piece.Gap(e.BeforeA.Position, reach, out Vec2 into));
            if (gap >= least) continue;
            least = gap;
            best = into;
        }

        return best;
    }
}
