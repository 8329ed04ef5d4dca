using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;

namespace Longrail.Coaching.Ways;

/// <summary>What a run puts together; checks hand in parts of their own.</summary>
/// <param name="Search">Finds the ways. Calls back for each as it turns up, one call at a time.</param>
/// <param name="Odds">Fills in one way's odds from so many strokes. The same question, way and number give the same
/// odds.</param>
internal sealed record WaysParts(
    Func<WaysQuestion, Action<FoundWay>, IProgress<double>, CancellationToken, WaysFound> Search,
    Func<WaysQuestion, FoundWay, int, CancellationToken, Way> Odds)
{
    /// <summary>The parts that answer users.</summary>
    internal static WaysParts Usual { get; } = new(StandIn, OddsOf);

    private static Way OddsOf(WaysQuestion question, FoundWay way, int strokes, CancellationToken stop)
    {
        WaysRequest request = question.Request;
        var odds = new WayOddsRequest(
            question.Setup, question.CueBall, question.ObjectBall, question.NextBall, request.Scene.BallIds,
            request.Player, request.Seed, strokes, question.Elevation);
        return WayOdds.Of(odds, way, stop);
    }

    private static WaysFound StandIn(WaysQuestion q, Action<FoundWay> found, IProgress<double> p, CancellationToken stop)
    {
        var ways = new List<FoundWay>(); var no = new List<NoWay>();
        foreach (string to in TableWords.Pockets)
        foreach (string off in (string[])["", .. TableWords.Cushions])
        {
            var route = new WayRoute([], off == "" ? [] : [TableWords.Cushion(off)], TableWords.Pocket(to));
            if (off == "") { no.Add(new NoWay(route, NoWayReason.TooThin)); continue; }
            var strokes = new List<FoundStroke>();
            foreach (string speed in (string[])["1.6", "2.4"])
            {
                if (stop.IsCancellationRequested) return new WaysFound(ways, no, true, 0);
                var s = SceneSetting.With(q.Request.Scene.Asked.WithStroke("cue", new Stroke(0, 2, 0, 0, 0)), "stroke.speed", speed).Scene!;
                s = SceneSetting.With(s, "stroke.aim", $$"""{"bank":"{{q.Request.Ball}}","to":"{{to}}","off":["{{off}}"]}""").Scene!;
                var c = SceneCompiler.Compile(s);
                if (c.Ready is null) continue;
                var side = new LeewaySide(0.006, LeewayLimit.FarJaw);
                strokes.Add(new FoundStroke(c.Ready.Setup.Stroke!.Stroke, new Leeway(side, side with { Amount = 0.009, Limit = LeewayLimit.NearJaw }, side with { Amount = 0.3, Limit = LeewayLimit.TooSlow }, side with { Amount = 0.5, Limit = LeewayLimit.OtherBall, Ball = "8" }, side with { Amount = 0.002 }, side, side, side with { Limit = LeewayLimit.NotReached })));
            }
            if (strokes.Count == 0) { no.Add(new NoWay(route, NoWayReason.DoesNotLeadThere)); continue; }
            var way = new FoundWay(route, strokes, [.. strokes.Select(x => new AimWindow(x.Stroke.Speed, 0, 0, x.Stroke.Aim - 0.005, x.Stroke.Aim + 0.008))]);
            ways.Add(way); found(way); p.Report(0.1 * ways.Count);
        }
        return new WaysFound(ways, no, false, 1234);
    }
}
