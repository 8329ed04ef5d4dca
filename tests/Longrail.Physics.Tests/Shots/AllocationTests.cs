using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Physics.Tests.Shots;

/// <summary>A search plays shots by the hundred thousand: the loop must not allocate.</summary>
public class AllocationTests
{
    [Theory]
    [InlineData(CushionLaw.Yielding)]
    [InlineData(CushionLaw.Impulse)]
    public void A_shot_played_to_its_end_allocates_nothing_once_the_buffers_have_grown(CushionLaw law)
    {
        EquipmentSpec neutral = EquipmentPresets.With(EquipmentPresets.DefaultTable);
        EquipmentSpec equipment = neutral with { Cushion = neutral.Cushion with { Law = law } };
        double radius = equipment.BallSet.Diameter / 2;
        var cue = new ShotBall(radius, equipment.BallSet.Mass, new BallState(new Vec2(0.8, 0.5), 3 * Vec2.FromAngle(0.55), Vec3.Zero));
        var balls = new ShotBall[4];
        balls[0] = cue;
        for (int i = 1; i < 4; i++)
            balls[i] = new ShotBall(radius, equipment.BallSet.Mass, BallState.AtRest(new Vec2(1.4 + 2 * radius * i, 0.88)));
        var setup = new ShotSetup(equipment, balls);
        var ends = new BallEnd[4];
        for (int i = 0; i < 50; i++) ShotRunner.RunToEnd(setup, ShotOptions.Default, ends);

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++) ShotRunner.RunToEnd(setup, ShotOptions.Default, ends);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
