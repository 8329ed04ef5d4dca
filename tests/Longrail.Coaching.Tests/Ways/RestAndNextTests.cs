using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

public class RestAndNextTests
{
    private const double Degree = Math.PI / 180;

    // Places made from a known law are found back: axes to the error of a deviation, 1 / sqrt(2 n), four times over;
    // and nine places in ten lie within.
    [Fact]
    public void The_ellipse_holds_nine_places_in_ten_of_a_normal_law()
    {
        const int Count = 4000;
        double direction = 25 * Degree;
        var places = new List<Vec2>();
        for (int i = 0; i < Count; i++)
        {
            double[] z = new double[2];
            new RandomNumbers(3, 1).Normals((ulong)i, z);
            places.Add(new Vec2(1.2, 0.6) + new Vec2(0.3 * z[0], 0.1 * z[1]).Rotated(direction));
        }

        RestRegion region = RestEllipse.Of(places)!;

        // Chi-square with two degrees of freedom has its 90 % point at 4.605 (any table).
        double tolerance = 4 / Math.Sqrt(2 * Count);
        Assert.Equal(0.3 * Math.Sqrt(4.605), region.HalfLength, tolerance * region.HalfLength);
        Assert.Equal(0.1 * Math.Sqrt(4.605), region.HalfWidth, tolerance * region.HalfWidth);
        Assert.Equal(direction, region.Direction, 0.02);
        Assert.Equal(1.2, region.Mean.X, 4 * 0.3 / Math.Sqrt(Count));
        int within = places.Count(place =>
        {
            Vec2 d = (place - region.Mean).Rotated(-region.Direction);
            return Square(d.X / region.HalfLength) + Square(d.Y / region.HalfWidth) <= 1;
        });
        // Four deviations of the count: 4 sqrt(0.9 0.1 / n).
        Assert.Equal(0.9, (double)within / Count, 4 * Math.Sqrt(0.09 / Count));
    }

    [Fact]
    public void No_place_gives_no_region_and_one_place_a_point()
    {
        Assert.Null(RestEllipse.Of([]));
        RestRegion one = RestEllipse.Of([new Vec2(1, 0.5)])!;
        Assert.Equal((new Vec2(1, 0.5), 0.0, 0.0), (one.Mean, one.HalfLength, one.HalfWidth));
    }

    [Fact]
    public void A_ball_that_hangs_in_front_of_a_pocket_is_the_easy_next_one()
    {
        Way way = Stopped(new Vec2(2.43, 0.11));

        Assert.Equal(PocketName.FootRight, way.Next!.Pocket);
        Assert.NotNull(way.Next.Cut);
        Assert.True(way.Next.Odds.Share > 0.95, $"{way.Next}");
        Assert.Equal(way.Made.Share * way.Next.Odds.Share, way.Next.Plan, 12);
        Assert.Equal(way.Next.Plan, way.Plan);
    }

    // Two balls touching each other and the cushion between cue ball and the next one hide it from everywhere.
    [Fact]
    public void A_hidden_next_ball_has_no_chance()
    {
        Way way = Stopped(new Vec2(0.04, 0.635), new Vec2(0.10, 0.61), new Vec2(0.10, 0.67));

        Assert.True(way.Made.Share > 0.5);
        Assert.Null(way.Next!.Pocket);
        Assert.Null(way.Next.Cut);
        Assert.Equal(0, way.Next.Odds.Made);
        Assert.Equal(0, way.Plan);
    }

    [Fact]
    public void A_farther_next_ball_is_the_harder_one()
    {
        // Both into the same pocket on the same line.
        Odds near = Stopped(new Vec2(2.35, 0.19)).Next!.Odds;
        Odds far = Stopped(new Vec2(0.9, 0.75)).Next!.Odds;

        Assert.True(near.Low > far.High, $"{near} {far}");
    }

    // The cue ball runs into the next ball after the cut: what counts is where the two lie then.
    [Fact]
    public void The_next_ball_counts_from_where_the_first_shot_leaves_it()
    {
        WayRoute route = FoundWays.Pot(PocketName.FootLeft);
        ShotSetup two = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75));
        Stroke stroke = FoundWays.BankStroke(two, route, 1.8);
        Vec2 inTheWay = FoundWays.Play(two, stroke).Balls[0].State.Position;
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75), inTheWay);
        Trace trace = FoundWays.Play(setup, stroke);
        Assert.Equal(PocketName.FootLeft, trace.Balls[1].Pocket);
        Assert.NotEqual(setup.Balls[2].Start.Position, trace.Balls[2].State.Position);

        Way way = WayOddsTests.Of(
            setup, FoundWays.Of(route, stroke), new Player("machine", 0, 0, 0, 0, 0),
            next: 2, shots: 4);

        // Without errors all four are the one shot, and the cut is that from where the two balls came to lie.
        Vec2?[] places = [trace.Balls[0].State.Position, null, trace.Balls[2].State.Position];
        PocketOutline next = new TableOutline(FoundWays.Pool.Table).Pockets[(int)way.Next!.Pocket!.Value];
        Assert.Equal(PotLine.To(setup, places, 0, 2, next)!.Value.Cut, way.Next.Cut!.Value, 9);
        Assert.Equal(4, way.Next.Odds.Made);
    }

    /// <summary>A straight pot after which the cue ball stays about where it met the ball, in the middle of the foot
    /// half, for a county player.</summary>
    private static Way Stopped(params Vec2[] next)
    {
        PocketOutline pocket = new TableOutline(FoundWays.Pool.Table).Pockets[(int)PocketName.FootLeft];
        Vec2 ball = pocket.MouthCentre - 0.6 * pocket.Axis;
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, [ball - 0.3 * pocket.Axis, ball, .. next]);
        var stroke = new Stroke(pocket.Axis.Angle, 2.0, 0, -0.004, 0);
        return WayOddsTests.Of(
            setup, FoundWays.Of(FoundWays.Pot(PocketName.FootLeft), stroke), PlayerPresets.Named("county")!, next: 2);
    }

    private static double Square(double x) => x * x;
}
