using Longrail.Coaching.Charts;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Charts;

/// <summary>Plays a cell of a chart from what the chart says of it, and nothing else.</summary>
internal static class PlayedShot
{
    /// <summary>The whole shot of the first place, first tip and first speed.</summary>
    internal static Trace Of(BankChart chart, ChartCell cell)
    {
        ChartRequest request = chart.Request;
        EquipmentSpec e = request.Equipment;
        double radius = 0.5 * e.BallSet.Diameter;
        Vec2 diamonds = chart.Rows[0].Place;
        var ball = new Vec2(diamonds.X * e.Table.DiamondAlong, diamonds.Y * e.Table.DiamondAcross);
        TipResult struck = TipContact.Strike(cell.Stroke!.Value, radius, e.BallSet.Mass, e.Cue);
        return ShotRunner.Run(new ShotSetup(
            e,
            [
                new ShotBall(radius, e.BallSet.Mass, new BallState(cell.CueBall!.Value, struck.Velocity, struck.Spin)),
                new ShotBall(radius, e.BallSet.Mass, BallState.AtRest(ball)),
            ]));
    }
}
