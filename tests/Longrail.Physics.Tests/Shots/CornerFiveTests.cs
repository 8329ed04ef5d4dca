using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>The three-rail track from the corner: a model's cross-check with the trade's system (Alciatore TP 7.2;
/// Jewett).</summary>
public class CornerFiveTests
{
    private const double Diamond = 0.3175;

    private static readonly EquipmentSpec _table = Plain with { Cushion = Mathavan(R) };

    [Fact]
    public void The_track_touches_where_another_program_with_the_same_equations_says()
    {
        // That program turned the ball a whole radius before the nose; it turns R cos t before it, 2.4 mm less. At
        // each rail that moves the way by 2.4 mm (tan in + tan out), some 0.02 diamond, and the unknown start by as
        // much again.
        foreach (GoldenRow row in GoldenTable.Load("corner-five").Rows)
        {
            (double first, double second, double third) = Track(_table, row["speed"].Value, row["side"].Value);
            Expect.Near(row["first"].Value, first, 0.02, $"{row}: first rail");
            Expect.Near(row["second"].Value, second, 0.04, $"{row}: second rail");
            Expect.Near(row["third"].Value, third, 0.1, $"{row}: third rail");
        }
    }

    [Fact]
    public void Without_side_the_track_ends_within_half_a_diamond_of_the_systems_three()
    {
        foreach (double speed in new[] { 2.0, 3.0, 4.0 })
            Expect.Near(3, Track(_table, speed, 0).Third, 0.5, $"at {speed} m/s");
    }

    [Fact]
    public void More_speed_and_more_running_side_bring_the_third_touch_nearer_to_the_second_rail()
    {
        // Running side widens the rebound off the short rail, so the ball crosses in less of the table's length.
        Expect.Less(Track(_table, 4, 0).Third, Track(_table, 2, 0).Third, "speed");
        Expect.Less(Track(_table, 3, 0.5).Third, Track(_table, 3, 0).Third, "running side");
        Expect.Less(Track(_table, 3, 0).Third, Track(_table, 3, -0.5).Third, "reverse side");
    }

    [Fact]
    public void The_yielding_law_keeps_the_same_track_within_half_a_diamond()
    {
        EquipmentSpec yielding = _table.WithCushion(c => c with { Law = CushionLaw.Yielding });
        Expect.Near(Track(_table, 3, 0).Third, Track(yielding, 3, 0).Third, 0.5, "third rail");
    }

    /// <summary>From the corner sight at the head's right through the foot-left sight 2: touches in diamonds.</summary>
    private static (double First, double Second, double Third) Track(EquipmentSpec equipment, double speed, double side)
    {
        double setback = equipment.Table.SightSetback;
        Vec2 corner = new(0, -setback), sight = new(2.54 - 2 * Diamond, 1.27 + setback);
        Vec2 way = (sight - corner).Normalized(), start = corner + (0.03 + setback) / way.Y * way;
        // It goes along +x into the left cushion: running side turns counter-clockwise.
        Trace trace = equipment.With(Moving(start.X, start.Y, speed, way.Angle, 1, side)).Play();
        ShotEvent[] t = [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion).Take(3)];
        Assert.Equal([CushionName.Left, CushionName.Foot, CushionName.Right], t.Select(e => e.Cushion!.Value));
        return (
            (2.54 - t[0].BeforeA.Position.X) / Diamond,
            t[1].BeforeA.Position.Y / Diamond,
            (2.54 - t[2].BeforeA.Position.X) / Diamond);
    }
}
