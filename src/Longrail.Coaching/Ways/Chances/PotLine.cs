using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>The plain geometry of a straight pot: ball, pocket, and the cue ball's place at the touch.</summary>
/// <param name="Pocket">The pocket.</param>
/// <param name="Line">Direction from the ball to the pocket, radians.</param>
/// <param name="Distance">From the ball to the pocket's mouth, metres.</param>
/// <param name="Approach">Direction from the cue ball to its place at the touch, radians.</param>
/// <param name="Reach">How far that is, metres.</param>
/// <param name="Cut">Cut, radians, positive to the left.</param>
/// <param name="HalfOpening">How far off the middle of the mouth the ball may come, metres.</param>
internal readonly record struct PotLine(
    PocketName Pocket, double Line, double Distance, double Approach, double Reach, double Cut, double HalfOpening)
{
    /// <summary>Thinner cuts than this are not called a pot (assumption; common practice, no source).</summary>
    private const double ThinnestCut = 78 * Math.PI / 180;

    /// <summary>The straight pot into a pocket.</summary>
    /// <param name="setup">Equipment and sizes of the balls.</param>
    /// <param name="places">Where the balls lie; null for those that are down.</param>
    /// <param name="cueBall">Index of the cue ball.</param>
    /// <param name="ball">Index of the ball to pot.</param>
    /// <param name="pocket">The pocket.</param>
    /// <returns>Null if a ball is in the way, the cut is too thin, the pocket is closed from there, or no cue ball fits
    /// behind the ball.</returns>
    public static PotLine? To(
        ShotSetup setup, IReadOnlyList<Vec2?> places, int cueBall, int ball, PocketOutline pocket)
    {
        Vec2 from = places[cueBall]!.Value;
        Vec2 at = places[ball]!.Value;
        Vec2 way = pocket.MouthCentre - at;
        double distance = way.Length;
        Vec2 line = way.Normalized();
        double radius = setup.Balls[ball].Radius;
        double halfOpening = 0.5 * pocket.Mouth * line.Dot(pocket.Axis) - radius;
        if (!(halfOpening > 0)) return null;

        double contact = BallContact.Reach(setup.Balls[cueBall].Radius, radius);
        Vec2 touch = at - contact * line;
        TableSpec table = setup.Equipment.Table;
        double room = TableOutline.Reach(setup.Balls[cueBall].Radius, setup.Equipment.Cushion.NoseHeight) - 1e-3;
        bool fits = touch.X >= room && touch.X <= table.Length - room
            && touch.Y >= room && touch.Y <= table.Width - room;
        if (!fits) return null;

        Vec2 approach = touch - from;
        double cut = Math.Atan2(approach.Cross(line), approach.Dot(line));
        if (!(Math.Abs(cut) < ThinnestCut)) return null;
        for (int other = 0; other < places.Count; other++)
        {
            if (other == cueBall || other == ball || places[other] is not { } there) continue;
            double size = setup.Balls[other].Radius;
            if (Clearance(from, touch, there) < BallContact.Reach(setup.Balls[cueBall].Radius, size)) return null;
            if (Clearance(at, pocket.MouthCentre, there) < BallContact.Reach(radius, size)) return null;
        }

        return new PotLine(pocket.Name, line.Angle, distance, approach.Angle, approach.Length, cut, halfOpening);
    }

    /// <summary>An estimate of the chance to pot it: the error of the cue ball's direction, multiplied by distance over
    /// ball width as it is handed to the ball, against the opening.</summary>
    /// <param name="direction">Deviation of the cue ball's direction, radians.</param>
    /// <param name="contact">Distance of the centres at the touch, metres.</param>
    public double Chance(double direction, double contact)
    {
        double handedOn = direction * Math.Max(Reach, contact) / (contact * Math.Cos(Cut));
        return handedOn > 0 ? NormalLaw.Within(HalfOpening / (handedOn * Distance)) : 1;
    }

    private static double Clearance(Vec2 from, Vec2 to, Vec2 point)
    {
        Vec2 way = to - from;
        double part = way.LengthSquared > 0 ? Math.Clamp((point - from).Dot(way) / way.LengthSquared, 0, 1) : 0;
        return point.DistanceTo(from + part * way);
    }
}
