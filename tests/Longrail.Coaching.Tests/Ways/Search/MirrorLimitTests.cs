using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;

namespace Longrail.Coaching.Tests.Ways.Search;

/// <summary>With lossless balls and cushions and no friction the found aims are those of the mirror construction, and
/// the margins those of half an opening over the length of the way (plain geometry: reflection, similar triangles).</summary>
public class MirrorLimitTests
{
    private const double R = TestEquipment.R;

    private static readonly EquipmentSpec _lossless = TestEquipment.Lossless with { Table = TestEquipment.Pocketed.Table };

    [Theory]
    [InlineData(PocketName.RightSide, new CushionName[0], 1.05, 0.62)]
    [InlineData(PocketName.FootLeft, new CushionName[0], 1.7, 0.75)]
    [InlineData(PocketName.RightSide, new[] { CushionName.Left }, 0.9, 0.8)]
    [InlineData(PocketName.FootRight, new[] { CushionName.Left }, 1.5, 0.5)]
    [InlineData(PocketName.RightSide, new[] { CushionName.Left, CushionName.Foot }, 0.6, 0.5)]
    public void A_full_hit_along_the_mirror_line_is_found_with_the_margin_of_plain_geometry(
        PocketName pocket, CushionName[] rails, double x, double y)
    {
        var objectBall = new Vec2(x, y);
        PocketOutline outline = new TableOutline(_lossless.Table).Pockets[(int)pocket];
        // The nose is at the height of the centre, so the ball turns round one radius from it.
        Vec2 image = outline.MouthCentre;
        foreach (CushionName cushion in rails.Reverse()) image = Mirror(image, cushion);
        Vec2 line = (image - objectBall).Normalized();
        const double Behind = 0.4;
        Vec2 cueBall = objectBall - Behind * line;
        var setup = new ShotSetup(_lossless, [TestEquipment.Ball(cueBall.X, cueBall.Y), TestEquipment.Ball(x, y)]);
        var request = new WaySearchRequest(
            setup, 0, 1, ["cue", "1"], rails.Length, rails.Length, 0, pocket, 0, SearchLayouts.Club, 2);
        FoundWay way = Assert.Single(SearchLayouts.Run(request).Ways, w => w.Route.ObjectBall.SequenceEqual(rails));
        // Centre ball is squirt-free: its aim is the ball's way. A ball that is hit a little off full leaves a cue ball
        // that never stops here and may go down in the end, which cuts pieces off a window but not its middle.
        Assert.Contains(way.Windows, w => w is { TipRight: 0, TipAbove: 0 } && Holds(w, line.Angle));

        // Clean through the mouth: half of it, seen along the way, less the ball. At most: the ball's centre between the
        // jaw points, and a radius more that a jaw or the end of a cushion may lead in.
        double length = image.DistanceTo(objectBall);
        double slant = LastLeg(line, rails).Dot(outline.Axis);
        double least = Math.Atan((0.5 * outline.Mouth * slant - R) / length);
        double most = Math.Atan((0.5 * outline.Mouth + R) / length);
        Assert.True(least > 0, "a layout that leaves no clean way in says nothing");
        Assert.InRange(ObjectBallTurn(Margin(1)), least - WindowEnd, most);
        Assert.InRange(ObjectBallTurn(Margin(-1)), least - WindowEnd, most);

        // How far the aim may turn before the object ball no longer goes down.
        double Margin(int side)
        {
            var player = new StrokePlayer(request, new RouteRules(request));
            RouteKey route = RouteKey.Of(way.Route);
            double aim = 0;
            while (Drops(aim + Step)) aim += Step;
            return aim;

            bool Drops(double turned) =>
                player.PlayToTheDrop(new Stroke(line.Angle + side * turned, 2, 0, 0, 0)).Drops(route);
        }

        // How far the object ball's way turns when the aim turns: the ghost ball's law of sines.
        double ObjectBallTurn(double aim) => Math.Asin(Behind / (2 * R) * Math.Sin(aim)) - aim;
    }

    private static bool Holds(AimWindow window, double aim) =>
        Math.Abs(Math.IEEERemainder(aim - window.Middle, 2 * Math.PI)) <= 0.5 * window.Width;

    /// <summary>Step of the aim, radians.</summary>
    private const double Step = 1e-5;

    /// <summary>One step of the aim, turned into the object ball's way at 0.4 m: 0.4/2R - 1 times as much.</summary>
    private const double WindowEnd = 7 * Step;

    private static Vec2 Mirror(Vec2 p, CushionName cushion) => cushion switch
    {
        CushionName.Head => new Vec2(2 * R - p.X, p.Y),
        CushionName.Foot => new Vec2(2 * (_lossless.Table.Length - R) - p.X, p.Y),
        CushionName.Left => new Vec2(p.X, 2 * (_lossless.Table.Width - R) - p.Y),
        _ => new Vec2(p.X, 2 * R - p.Y),
    };

    private static Vec2 LastLeg(Vec2 way, CushionName[] rails)
    {
        foreach (CushionName cushion in rails)
            way = cushion is CushionName.Head or CushionName.Foot ? way with { X = -way.X } : way with { Y = -way.Y };
        return way;
    }
}
