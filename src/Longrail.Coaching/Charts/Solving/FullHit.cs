using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>Plays the stroke of a chart once, far from any cushion: what the banked ball gets from it.</summary>
internal static class FullHit
{
    /// <summary>The hit is full to this, radians.</summary>
    private const double Full = 1e-13;

    /// <summary>The cue ball's stroke, or what it gives an object ball that it hits full.</summary>
    /// <param name="request">The chart.</param>
    /// <param name="isKick">Whether the cue ball is banked itself.</param>
    /// <param name="speed">Speed of the cue ball as it leaves the tip, m/s.</param>
    /// <param name="right">Place of the tip to the right, metres.</param>
    internal static Launch Of(ChartRequest request, bool isKick, double speed, double right)
    {
        EquipmentSpec equipment = request.Equipment;
        double radius = 0.5 * equipment.BallSet.Diameter;
        double way = request.Distance - BallContact.Reach(radius, radius);
        Stroke stroke = CueBallStroke.Of(equipment, request.Height, right, speed, way, out NoBank failure);
        if (failure != NoBank.None)
            return Launch.Failed(failure);
        TipResult level = TipContact.Strike(stroke, radius, equipment.BallSet.Mass, equipment.Cue);
        stroke = stroke with { Aim = -level.Squirt };
        if (!isKick)
            return Hit(equipment, stroke, request.Distance);
        TipResult struck = TipContact.Strike(stroke, radius, equipment.BallSet.Mass, equipment.Cue);
        return new Launch(NoBank.None, stroke, struck.Velocity, struck.Spin);
    }

    private static Launch Hit(EquipmentSpec equipment, Stroke stroke, double distance)
    {
        // A cloth on which neither ball meets a cushion before they meet each other.
        double size = 8 * distance + 4;
        EquipmentSpec wide = equipment with
        {
            Table = new TableSpec(size, size, null, null, Gravity: equipment.Table.Gravity),
        };
        var player = new ShotPlayer();
        // With side the stick stands at the squirt's angle to the way, so that draw or follow bends it a little: turn
        // the stick until the hit is full. Each step leaves some hundredths of the error.
        for (int i = 0; i < 30; i++)
        {
            if (Meeting(player, wide, stroke, size / 2, distance) is not { } moment)
                return Launch.Failed(NoBank.RunsOutOfSpeed);
            if (Math.Abs(moment.Cut) <= Full || i == 29)
                return new Launch(NoBank.None, stroke, moment.Struck.Velocity, moment.Struck.Spin);
            double reach = equipment.BallSet.Diameter;
            stroke = stroke with { Aim = stroke.Aim + moment.Cut * reach / distance };
        }

        return Launch.Failed(NoBank.RunsOutOfSpeed);
    }

    private static (double Cut, BallState Struck)? Meeting(
        ShotPlayer player, EquipmentSpec equipment, Stroke stroke, double middle, double distance)
    {
        BallSetSpec set = equipment.BallSet;
        TipResult struck = TipContact.Strike(stroke, 0.5 * set.Diameter, set.Mass, equipment.Cue);
        var cue = new BallState(new Vec2(middle - distance, middle), struck.Velocity, struck.Spin);
        ShotBall[] balls =
        [
            new(0.5 * set.Diameter, set.Mass, cue),
            new(0.5 * set.Diameter, set.Mass, BallState.AtRest(new Vec2(middle, middle))),
        ];
        var watch = default(MeetingWatch);
        player.Play(new ShotSetup(equipment, balls), ShotOptions.Default, ref watch);
        if (!watch.Met)
            return null;
        ShotMoment meeting = player[player.EventCount - 1];
        Vec2 line = meeting.BeforeB.Position - meeting.BeforeA.Position;
        Vec2 way = meeting.BeforeA.Velocity;
        return (Math.Atan2(way.Cross(line), way.Dot(line)), meeting.AfterB);
    }

    private struct MeetingWatch : IShotWatch
    {
        internal bool Met { get; private set; }

        public bool GoesOn(ShotMoment moment)
        {
            Met = moment.Kind == ShotEventKind.BallsMeet;
            return !Met;
        }
    }
}
