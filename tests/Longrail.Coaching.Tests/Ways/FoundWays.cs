using Longrail.Coaching.Ways;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Aims;

namespace Longrail.Coaching.Tests.Ways;

/// <summary>Layouts and ways made by hand, so that the odds are tested without the search.</summary>
internal static class FoundWays
{
    private static readonly LeewaySide _open = new(0, LeewayLimit.NotReached);

    internal static EquipmentSpec Pool { get; } = EquipmentPresets.With(EquipmentPresets.DefaultTable);

    internal static ShotSetup Layout(EquipmentSpec equipment, params Vec2[] places) => new(
        equipment,
        [.. places.Select(place => new ShotBall(
            equipment.BallSet.Diameter / 2, equipment.BallSet.Mass, BallState.AtRest(place)))]);

    /// <summary>A way of one stroke, whose leeway nobody looks at.</summary>
    internal static FoundWay Of(WayRoute route, params Stroke[] strokes) => new(
        route,
        [.. strokes.Select(stroke => new FoundStroke(
            stroke, new Leeway(_open, _open, _open, _open, _open, _open, _open, _open)))],
        []);

    internal static WayRoute Pot(PocketName pocket) => new([], [], pocket);

    internal static WayRoute Bank(PocketName pocket, params CushionName[] off) => new([], off, pocket);

    internal static Stroke BankStroke(ShotSetup setup, WayRoute route, double speed, double right = 0, double above = 0)
    {
        var template = new Stroke(0, speed, right, above, 0);
        AimSolution aim = AimSolver.SolveBank(setup, 0, 1, route.Pocket, route.ObjectBall, template);
        Assert.True(aim.Found, $"{route.Pocket}: {aim.Failure}");
        return template with { Aim = aim.Aim };
    }

    /// <summary>A stroke, played to the end.</summary>
    internal static Trace Play(ShotSetup setup, Stroke stroke)
    {
        ShotBall cue = setup.Balls[0];
        TipResult struck = TipContact.Strike(stroke, cue.Radius, cue.Mass, setup.Equipment.Cue);
        ShotBall[] balls = [.. setup.Balls];
        balls[0] = cue with { Start = new BallState(cue.Start.Position, struck.Velocity, struck.Spin) };
        return ShotRunner.Run(setup with { Balls = balls, Stroke = new StrokeRecord(0, stroke, struck) });
    }
}
