using System.Diagnostics;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

public class WayOddsTests
{
    [Fact]
    public void Smoke()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(0.6985, 0.28575), new Vec2(1.016, 0.762), new Vec2(1.9, 0.3), new Vec2(0.4, 0.9), new Vec2(2.2, 0.8));
        WayRoute route = FoundWays.Bank(PocketName.RightSide, CushionName.Left);
        Stroke[] strokes = [.. new[] { 1.6, 2, 2.4, 2.8, 3.2, 3.6 }.Select(v => { var t = new Stroke(0, v, 0, 0, 0); var a = Longrail.Physics.Shots.Aims.AimSolver.SolveBank(setup, 0, 1, route.Pocket, route.ObjectBall, t); TestContext.Current.TestOutputHelper!.WriteLine($"{v} {a}"); return (a, t with { Aim = a.Aim }); }).Where(x => x.a.Found).Select(x => x.Item2)];
        FoundWay way = FoundWays.Of(route, strokes);
        foreach (Player p in PlayerPresets.All)
        {
            var request = new WayOddsRequest(setup, 0, 1, 2, ["cue", "9", "8", "1", "2"], p, 1, 400, 0);
            for (int k = 0; k < 3; k++)
            {
                var clock = Stopwatch.StartNew();
                Way w = WayOdds.Of(request, way, TestContext.Current.CancellationToken);
                TestContext.Current.TestOutputHelper!.WriteLine($"{p.Name} {clock.Elapsed.TotalMilliseconds:0.0} ms {w.Stroke.Stroke.Speed} made {w.Made} scratch {w.Scratch} cut {w.Cut * 57.3:0.0} {w.AimPoint} kiss {w.Kiss} rest {w.Rest?.Mean} {w.Rest?.HalfLength:0.00} {w.Rest?.HalfWidth:0.00} next {w.Next}");
                clock.Restart();
                w = WayOdds.Of(request with { NextBall = null }, way, TestContext.Current.CancellationToken);
                TestContext.Current.TestOutputHelper!.WriteLine($"{p.Name} {clock.Elapsed.TotalMilliseconds:0.0} ms {w.Stroke.Stroke.Speed} without next");
            }
        }
    }
}
