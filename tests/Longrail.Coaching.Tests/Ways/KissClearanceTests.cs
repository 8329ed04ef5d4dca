using Longrail.Coaching.Ways.Kisses;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

public class KissClearanceTests
{
    private const double Degree = Math.PI / 180;
    private const double Radius = 0.028575;

    // By hand from R (1 - sin 2a) / sin a with R = 1.125 in, to the digits given.
    [Theory]
    [InlineData(3, 19.25)]
    [InlineData(5, 10.67)]
    [InlineData(10, 4.26)]
    [InlineData(15, 2.17)]
    [InlineData(30, 0.30)]
    [InlineData(45, 0.0)]
    public void A_mirror_bank_needs_the_distance_of_the_short_formula(double degrees, double inches) =>
        Assert.Equal(
            inches, KissClearance.LeastDistance(Radius, degrees * Degree, degrees * Degree) / 0.0254, 0.005001);

    [Fact]
    public void A_short_rebound_needs_more_room_than_a_long_one()
    {
        double mirror = KissClearance.LeastDistance(Radius, 10 * Degree, 10 * Degree);

        Assert.True(KissClearance.LeastDistance(Radius, 10 * Degree, 7.5 * Degree) > mirror);
        Assert.True(KissClearance.LeastDistance(Radius, 10 * Degree, 12 * Degree) < mirror);
    }

    [Theory]
    [InlineData(4, 4)]
    [InlineData(12, 9)]
    [InlineData(12, 20)]
    [InlineData(40, 44)]
    public void At_the_least_distance_the_gap_is_nothing(double degreesIn, double degreesOut)
    {
        double least = KissClearance.LeastDistance(Radius, degreesIn * Degree, degreesOut * Degree);

        Assert.Equal(0, KissClearance.Gap(Radius, least, degreesIn * Degree, degreesOut * Degree), 12);
    }

    [Fact]
    public void Beyond_half_a_right_angle_nothing_is_near()
    {
        Assert.Equal(0, KissClearance.LeastDistance(Radius, 50 * Degree, 50 * Degree));
        Assert.Equal(0, KissClearance.Gap(Radius, 0, 50 * Degree, 50 * Degree), 12);
    }

    // The engine in the formula's limit: no friction anywhere, balls that give back all, a nose at the height of the
    // centre. A rubber that gives back a part e of the speed across sends the ball out at tan b = tan a / e.
    [Theory]
    [InlineData(5, 1.0)]
    [InlineData(10, 1.0)]
    [InlineData(20, 1.0)]
    [InlineData(30, 1.0)]
    [InlineData(8, 0.8)]
    [InlineData(15, 0.6)]
    [InlineData(25, 0.9)]
    public void The_engine_kisses_below_the_least_distance_and_clears_above_it(double degreesIn, double restitution)
    {
        double angleIn = degreesIn * Degree;
        double angleOut = Math.Atan(Math.Tan(angleIn) / restitution);
        double least = KissClearance.LeastDistance(Radius, angleIn, angleOut);

        Assert.Equal(0, Gap(0.99 * least, angleIn, restitution));
        Assert.True(Gap(1.01 * least, angleIn, restitution) > 0);
        foreach (double distance in new[] { 1.1 * least, 1.5 * least, least + 0.3 })
        {
            double predicted = KissClearance.Gap(Radius, distance, angleIn, angleOut);
            Assert.Equal(predicted, Gap(distance, angleIn, restitution), 0.01 * predicted);
        }
    }

    /// <summary>The gap of a full hit as the engine plays it; 0 for a kiss.</summary>
    private static double Gap(double distance, double angleIn, double restitution)
    {
        EquipmentSpec pool = EquipmentPresets.With(EquipmentPresets.DefaultTable);
        var equipment = new EquipmentSpec(
            new TableSpec(6, 3, null, null),
            new ClothSpec(1e-9, 1e-9, 1e-9),
            new CushionSpec(CushionLaw.Impulse, restitution, 0, Radius, 0.008),
            new BallSetSpec(2 * Radius, 0.17, 1, new BallFriction(0, 0, 0)),
            pool.Cue);
        var direction = new Vec2(Math.Sin(angleIn), Math.Cos(angleIn));
        var ball = new Vec2(3, 3 - Radius - distance);
        Vec2 start = ball - (2 * Radius + 0.1) * direction;
        var setup = new ShotSetup(
            equipment,
            [
                new ShotBall(Radius, 0.17, new BallState(start, 2 * direction, Vec3.Zero)),
                new ShotBall(Radius, 0.17, BallState.AtRest(ball)),
            ]);
        var player = new ShotPlayer();
        // Long enough to come back past the cue ball, too short to come back from the cushion across.
        player.Play(setup, new ShotOptions(MaxTime: 1.2));
        int meetings = 0;
        double met = 0;
        for (int i = 0; i < player.EventCount; i++)
        {
            if (player[i].Kind != ShotEventKind.BallsMeet) continue;
            if (meetings++ == 0) met = player[i].Time;
        }

        return meetings > 1 ? 0 : player.ClosestAfter(0, 1, met)!.Value;
    }
}
