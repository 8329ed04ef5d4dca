using System.Globalization;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Words;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing;

/// <summary>Draws the ways to play a ball as one sheet: the first with its leeway, kiss gap and rest region on the
/// table, the others small beside it, all of them in a table.</summary>
public static class WaysPicture
{
    // The edge itself misses; what is drawn is just inside.
    private const double InsideTheEdge = 0.98;

    // What a sheet has room for.
    private const int MostWays = 9;

    // A kiss that far away is nobody's worry.
    private const double KissWorthAMark = 0.25;

    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <param name="answer">The answer to a question in which nothing was wrong.</param>
    /// <param name="date">A date to print, or null: a picture never takes one from the clock.</param>
    public static string Draw(WaysAnswer answer, DateOnly? date = null) => WaysSheet.Draw(Reduce(answer, date));

    /// <summary>The table alone with the first way, for a small screen or a page that has its own words around
    /// it.</summary>
    /// <param name="answer">The answer to a question in which nothing was wrong.</param>
    public static string DrawPlan(WaysAnswer answer) => WaysSheet.DrawPlan(Reduce(answer, null));

    private static WaysDrawing Reduce(WaysAnswer answer, DateOnly? date)
    {
        ArgumentNullException.ThrowIfNull(answer);
        WaysRequest request = answer.Request;
        ShotSetup setup = request.Scene.Setup;
        WaysTable table = WaysTable.Of(request, answer.Ways);
        string then = request.NextBall is { } next ? $", then {next}" : "";
        return new WaysDrawing
        {
            Title = request.Scene.AsUsed.Title ?? "",
            Asked = request.Ball + then,
            Player = request.Player.Name,
            Equipment = setup.Equipment,
            Names = request.Scene.BallIds,
            StripeAxes = request.Scene.StripeAxes ?? new Vec3?[setup.Balls.Count],
            Radii = [.. setup.Balls.Select(ball => ball.Radius)],
            Starts = [.. setup.Balls.Select(ball => TablePoint.From(ball.Start.Position))],
            CueBall = request.Scene.IndexOf(request.CueBall!),
            ObjectBall = request.Scene.IndexOf(request.Ball),
            NextBall = request.NextBall is { } ball ? request.Scene.IndexOf(ball) : null,
            Ways = [.. answer.Ways.Take(MostWays).Select((way, k) => Reduce(request, way, k, table.Rows[k]))],
            MoreWays = Math.Max(answer.Ways.Count - MostWays, 0),
            Columns = table.Columns,
            Details = answer.Ways.Count > 0 ? WayDetails.Of(request, answer.Ways[0]) : [],
            Reason = answer.Reason,
            NotPlayable = WaysNotes.NotPlayable(answer),
            Notes = answer.IsPartial ? [WaysNotes.PartialMark, .. Cautions(answer)] : Cautions(answer),
            TableName = request.Scene.AsUsed.Table?.Preset,
            Date = date,
        };
    }

    private static IReadOnlyList<string> Cautions(WaysAnswer answer) => WaysNotes.Cautions(answer, MostWays);

    private static WayDrawing Reduce(WaysRequest request, Way way, int index, IReadOnlyList<string> cells)
    {
        Trace trace = WayShot.Of(request, way.Stroke.Stroke);
        TraceReadings readings = TraceReadings.Of(trace, request.Scene.StripeAxes);
        int cue = request.Scene.IndexOf(request.CueBall!);
        int ball = request.Scene.IndexOf(request.Ball);
        ShotEvent? hit = trace.Events.FirstOrDefault(e =>
            e.Kind == ShotEventKind.BallsMeet && (e.BallA == ball || e.BallB == ball));
        bool isFirst = index == 0;
        return new WayDrawing
        {
            Mark = VariantMark.Of(index),
            Words = way.Words,
            Cells = cells,
            Odds = string.Create(CultureInfo.InvariantCulture, $"{100 * way.Plan:0} %"),
            Cue = BallTrack.Of(trace, cue),
            Ball = BallTrack.Of(trace, ball),
            Contact = hit is null ? null : Contact(hit, cue),
            Meets = hit?.Time ?? double.PositiveInfinity,
            Fan = isFirst ? Fan(request, way, cue, ball) : [],
            Kiss = isFirst ? Kiss(trace, readings.Shot, cue, ball) : null,
            Rest = way.Rest,
            Next = isFirst ? NextLine(request, way, trace) : [],
            Tip = isFirst && readings.Events.OfType<TipReading>().FirstOrDefault() is { } tip
                ? new TipView(tip, trace.Setup.Equipment.Cue, trace.Setup.Balls[cue].Radius)
                : null,
        };
    }

    private static GhostBall Contact(ShotEvent hit, int cue) => hit.BallA == cue
        ? new GhostBall(
            hit.BallA, TablePoint.From(hit.BeforeA.Position), hit.BallB!.Value,
            TablePoint.From(hit.BeforeB!.Value.Position))
        : new GhostBall(
            hit.BallB!.Value, TablePoint.From(hit.BeforeB!.Value.Position), hit.BallA,
            TablePoint.From(hit.BeforeA.Position));

    private static IReadOnlyList<FanLeg> Fan(WaysRequest request, Way way, int cue, int ball)
    {
        Stroke stroke = way.Stroke.Stroke;
        double left = InsideTheEdge * way.Stroke.Leeway.AimLeft.Amount;
        double right = InsideTheEdge * way.Stroke.Leeway.AimRight.Amount;
        return WayDrawing.FanBetween(
            WayShot.Of(request, stroke with { Aim = stroke.Aim + left }),
            WayShot.Of(request, stroke with { Aim = stroke.Aim - right }), cue, ball);
    }

    private static KissMark? Kiss(Trace trace, ShotReading shot, int cue, int ball)
    {
        if (shot is not { KissGapMillimetres: { } gap, KissGapTime: { } time } || gap > 1000 * KissWorthAMark)
            return null;
        string words = shot.DoubleKiss
            ? "double kiss"
            : string.Create(CultureInfo.InvariantCulture, $"kiss gap {gap:0} mm");
        return new KissMark(
            TablePoint.From(trace.StateAt(cue, time).Position),
            TablePoint.From(trace.StateAt(ball, time).Position), words);
    }

    private static IReadOnlyList<TablePoint> NextLine(WaysRequest request, Way way, Trace trace)
    {
        if (way is not { Rest: { } rest, Next: { Pocket: { } pocket, Cut: not null } }
            || request.NextBall is not { } name)
            return [];
        int next = request.Scene.IndexOf(name);
        int cue = request.Scene.IndexOf(request.CueBall!);
        Vec2 at = trace.Balls[next].State.Position;
        PocketOutline outline =
            new TableOutline(trace.Setup.Equipment.Table).Pockets.First(one => one.Name == pocket);
        Vec2 goal = outline.MouthCentre;
        double reach = trace.Setup.Balls[next].Radius + trace.Setup.Balls[cue].Radius;
        Vec2 ghost = at - reach * (goal - at).Normalized();
        return [.. ((Vec2[])[rest.Mean, ghost, at, goal]).Select(TablePoint.From)];
    }
}
