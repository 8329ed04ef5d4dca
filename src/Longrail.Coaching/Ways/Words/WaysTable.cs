using Longrail.Coaching.Contrasts;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using static System.FormattableString;

namespace Longrail.Coaching.Ways.Words;

/// <summary>An answer as a table of words and numbers for people: the same on the terminal and in a picture.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The cells, one row for each way.</param>
public sealed record WaysTable(IReadOnlyList<ContrastColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>The name of the column with the place where the cue ball stops.</summary>
    public const string Rests = "cue ball rests";

    private const string Nothing = "-";
    private const double Degrees = 180 / Math.PI;

    /// <summary>The table of an answer.</summary>
    /// <param name="request">The question.</param>
    /// <param name="ways">Its ways, best first.</param>
    public static WaysTable Of(WaysRequest request, IReadOnlyList<Way> ways)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(ways);
        bool plans = request.NextBall is not null;
        var columns = new List<ContrastColumn> { new("", "", false) };
        if (plans)
            columns.Add(new("plan", "%", true));
        columns.AddRange(
        [
            new("made", "%", false), new("scratch", "%", true), new("way", "", false), new("speed", "m/s", true),
            new("tip", "tips", false), new("aim at", "diamonds", false), new("leeway", "deg left, right", false),
            new("kiss gap", "mm", true), new(Rests, "along, across", false),
        ]);
        if (plans)
            columns.Add(new($"then {request.NextBall}", "pocket, cut, made", false));
        return new WaysTable(columns, [.. ways.Select((way, k) => Cells(request, way, VariantLetter.Of(k)))]);
    }

    /// <summary>A share with its interval, in per cent: "62 (58 to 66)".</summary>
    /// <param name="odds">The chance.</param>
    public static string Percent(Statistics.Odds odds) =>
        Invariant($"{100 * odds.Share:0} ({100 * odds.Low:0} to {100 * odds.High:0})");

    private static List<string> Cells(WaysRequest request, Way way, string letter)
    {
        EquipmentSpec equipment = request.Scene.Setup.Equipment;
        double radius = request.Scene.Setup.Balls[request.Scene.IndexOf(request.CueBall!)].Radius;
        Stroke stroke = way.Stroke.Stroke;
        Leeway leeway = way.Stroke.Leeway;
        var cells = new List<string> { letter };
        if (request.NextBall is not null)
            cells.Add(Invariant($"{100 * way.Plan:0}"));
        cells.AddRange(
        [
            Percent(way.Made), Invariant($"{100 * way.Scratch.Share:0}"), way.Words,
            Invariant($"{stroke.Speed:0.00}"), StrokeWords.TipInTips(stroke, radius, equipment.Cue),
            StrokeWords.Aim(way.AimPoint),
            Invariant($"{leeway.AimLeft.Amount * Degrees:0.00}, {leeway.AimRight.Amount * Degrees:0.00}"),
            way.Kiss is { } kiss ? Invariant($"{1000 * kiss.Gap:0}") : Nothing,
            way.Rest is { } rest ? Place(rest, equipment.Table) : Nothing,
        ]);
        if (request.NextBall is not null)
            cells.Add(Then(way.Next));
        return cells;
    }

    private static string Place(RestRegion rest, TableSpec table) =>
        Invariant($"{rest.Mean.X / table.DiamondAlong:0.0}, {rest.Mean.Y / table.DiamondAcross:0.0}");

    private static string Then(NextShot? next) => next switch
    {
        null => Nothing,
        { Pocket: { } pocket, Cut: { } cut } => Invariant(
            $"{TableWords.Of(pocket)}, {CutWords(cut)}, {100 * next.Odds.Share:0} %"),
        _ => Invariant($"{100 * next.Odds.Share:0} %"),
    };

    private static string CutWords(double cut) => Math.Abs(cut) < WayWords.Straight
        ? "straight"
        : Invariant($"{Math.Abs(cut) * Degrees:0} deg {(cut > 0 ? "left" : "right")}");
}
