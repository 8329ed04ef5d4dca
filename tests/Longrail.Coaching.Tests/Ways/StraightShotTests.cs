using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

/// <summary>The odds in the limit in which a straight shot is pure geometry: balls without friction that give back all,
/// a slick cloth, no error but of aim.</summary>
public class StraightShotTests
{
    private const double Degree = Math.PI / 180;
    private const double Diameter = 0.05715;

    // On so slick a cloth a ball struck in the centre arrives without roll, and stays where it hits another full.
    private static readonly EquipmentSpec _plain = FoundWays.Pool with
    {
        Cloth = FoundWays.Pool.Cloth with { SlidingFriction = 0.02 },
        BallSet = FoundWays.Pool.BallSet with { Restitution = 1, Friction = new BallFriction(0, 0, 0) },
    };

    // Rigid-body geometry: a full hit from centres D apart hands an error of aim on multiplied by D / 2R - 1 (the law
    // of sines in the triangle of the two centres at the touch; first order in the error).
    [Theory]
    [InlineData(6, 1.667)]
    [InlineData(12, 4.333)]
    [InlineData(20, 7.889)]
    [InlineData(30, 12.333)]
    public void An_error_of_aim_is_multiplied_by_distance_over_ball_width_less_one(double inches, double times)
    {
        var cueBall = new Vec2(0.6, 0.6);
        ShotSetup setup = FoundWays.Layout(_plain, cueBall, cueBall + new Vec2(inches * 0.0254, 0));
        const double Error = 1e-4;

        ShotEvent meeting = FoundWays.Play(setup, new Stroke(Error, 2, 0, 0, 0)).Events
            .First(e => e.Kind == ShotEventKind.BallsMeet);

        // Three decimals are given; the second order is the error's square times the cube of the factor, a millionth.
        Assert.Equal(-times, meeting.AfterB!.Value.Velocity.Angle / Error, 0.0005 + 0.001);
    }

    // Margins into a 4.5 in mouth by the same geometry: half the room beside the ball over the distance, and for the
    // cue ball over its distance to the touch in ball widths.
    [Theory]
    [InlineData(0.3, 0.3, 0, 5.44, 1.037)]
    [InlineData(1.0, 1.0, 0, 1.64, 0.094)]
    [InlineData(0.6, 1.0, 30, 1.64, 0.135)]
    [InlineData(1.0, 1.5, 60, 1.09, 0.031)]
    public void The_estimate_of_a_pot_knows_the_margins_of_plain_geometry(
        double reach, double distance, double cutDegrees, double ballDegrees, double cueBallDegrees)
    {
        const double HalfRoom = (4.5 * 0.0254 - Diameter) / 2;
        var pot = new PotLine(PocketName.FootLeft, 0, distance, 0, reach, cutDegrees * Degree, HalfRoom);

        Assert.Equal(ballDegrees, Math.Atan(HalfRoom / distance) / Degree, 0.005001);
        // A deviation as large as the margin is kept within it 68.27 times in a hundred (normal law). The margins are
        // given to three decimals, and as angles, not tangents: that is the last term.
        double within = pot.Chance(cueBallDegrees * Degree, Diameter);
        Assert.Equal(0.6827, within, 0.4 * (0.0005 / cueBallDegrees) + 0.002);
    }

    // D. Alciatore, TP 3.4: the product of the two distances sets how hard a straight shot is. Distances from the cue
    // ball to the touch and from the ball to the pocket, with equal products, along the line into a corner.
    [Fact]
    public void Straight_shots_with_equal_products_of_distances_are_made_equally_often()
    {
        double[] shares = [.. new[] { (0.4, 0.9), (0.6, 0.6), (0.9, 0.4) }.Select(d => Share(d.Item1, d.Item2).Share)];

        // 1600 strokes each: the difference of two shares near one half has a deviation of 0.018; the same errors are
        // played, so that four of them are far more than chance needs. The second order of the handing on adds 0.01.
        Assert.InRange(shares[0], 0.3, 0.8);
        Assert.Equal(shares[1], shares[0], 0.07);
        Assert.Equal(shares[1], shares[2], 0.07);
    }

    // The same source: at one distance from cue ball to pocket the shot is hardest with the ball half way.
    [Fact]
    public void A_straight_shot_is_hardest_with_the_ball_half_way()
    {
        Odds near = Share(0.25, 1.05);
        Odds half = Share(0.65, 0.65);
        Odds far = Share(1.05, 0.25);

        Assert.True(half.High < near.Low, $"{half} {near}");
        Assert.True(half.High < far.Low, $"{half} {far}");
    }

    /// <summary>The odds of a straight shot into the foot-left corner along its axis, for a deviation of 0.35
    /// degrees.</summary>
    /// <param name="reach">From the cue ball to the touch, metres.</param>
    /// <param name="distance">From the ball to the mouth, metres.</param>
    private static Odds Share(double reach, double distance)
    {
        PocketOutline pocket = new TableOutline(_plain.Table).Pockets[(int)PocketName.FootLeft];
        Vec2 ball = pocket.MouthCentre - distance * pocket.Axis;
        ShotSetup setup = FoundWays.Layout(_plain, ball - (reach + Diameter) * pocket.Axis, ball);
        var stroke = new Stroke(pocket.Axis.Angle, 2.5, 0, 0, 0);
        Player player = new("aim only", 0.35 * Degree, 0, 0, 0, 0, double.PositiveInfinity);
        Way way = WayOddsTests.Of(
            setup, FoundWays.Of(FoundWays.Pot(PocketName.FootLeft), stroke), player, shots: 1600);
        return way.Made;
    }
}
