using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Scenes;

namespace Longrail.Coaching.Contrasts;

/// <summary>A comparison as a table of words and numbers for people: the same on the terminal and in a
/// picture.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The cells, one row for each row of the comparison.</param>
public sealed record ContrastTable(IReadOnlyList<ContrastColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private const string Nothing = "-";

    /// <summary>The table of a comparison.</summary>
    public static ContrastTable Of(Contrast contrast)
    {
        var columns = new List<ContrastColumn> { new("", "", false) };
        columns.AddRange(contrast.Request.Variations.Select(v => new ContrastColumn(v.Path, "", false)));
        columns.AddRange(
        [
            new("lands on", "diamonds", false), new("change", "diamonds", false), new("change", "mm", true),
            new("of mirror", "diamonds", false), new("goes", "", false), new("out", "deg", true),
            new("speed", "m/s", true), new("side", "b/R", false), new("roll", "%", true), new("throw", "deg", false),
            new("cue ball rests", "along, across", false),
        ]);
        return new ContrastTable(columns, [.. contrast.Rows.Select(row => Cells(contrast, row))]);
    }

    private static List<string> Cells(Contrast contrast, ContrastRow row)
    {
        var cells = new List<string> { row.TwoThingsChanged ? row.Label + " *" : row.Label };
        cells.AddRange(row.Values.Select(value => value.Text));
        BankReading? bank = row.Bank;
        cells.AddRange(
        [
            Lands(contrast, bank),
            Change(row), Millimetres(row),
            bank?.Rebound.LongOfMirrorDiamonds is { } mirror ? Long(mirror) : Nothing,
            Goes(contrast, row),
            bank is null ? Nothing : Text($"{bank.Rebound.AngleOutDegrees:0.0}"),
            bank is null ? Nothing : Text($"{bank.Rebound.SpeedOut:0.00}"),
            bank is null ? Nothing : Side(bank.Rebound.SideIn),
            bank is null
                ? Nothing
                : Text($"{100 * bank.Rebound.RollRatioIn:0}").Replace("-0", "0", StringComparison.Ordinal),
            bank?.Hit is { } hit ? Turn(hit.ThrowDegrees) : Nothing,
            row.CueBallRest is { } rest ? Rest(contrast, rest) : CueBallGone(row),
        ]);
        return cells;
    }

    private static string Change(ContrastRow row)
    {
        if (row.Change is not { } change)
            return Nothing;
        if (change.Diamonds == 0)
            return "0";
        string size = Text($"{Math.Abs(change.Diamonds):0.00}");
        return change.IsLonger switch
        {
            true => size + " longer",
            false => size + " shorter",
            _ => (change.Diamonds > 0 ? "+" : "-") + size,
        };
    }

    private static string Millimetres(ContrastRow row)
    {
        if (row.Change is not { } change)
            return Nothing;
        double millimetres = Math.Round(1000 * change.Metres, 1);
        return millimetres == 0 ? "0" : Text($"{millimetres:+0.0;-0.0}");
    }

    private static string Lands(Contrast contrast, BankReading? bank)
    {
        if (bank?.Target is { } target)
            return Text($"{TableWords.Of(target)} {bank.LandingDiamonds:0.00}");
        if (bank?.Next is not { } next)
            return Nothing;
        return next.Kind switch
        {
            ShotEventKind.BallsMeet =>
                $"meets {contrast.Names[next.BallA == bank.Ball ? next.BallB!.Value : next.BallA]} first",
            ShotEventKind.Stops => "stops before",
            ShotEventKind.Pocketed => "drops before",
            _ => Nothing,
        };
    }

    // Short and long speak of the pocket that the base makes; without one a ball just stays up.
    private static string Goes(Contrast contrast, ContrastRow row)
    {
        if (row.Bank is not { } bank)
            return "no cushion";
        if (bank.Pocket is { } pocket)
            return $"in {TableWords.Of(pocket)}";
        return (contrast.Base.Bank?.Pocket, row.Change?.IsLonger) switch
        {
            (not null, true) => "misses long",
            (not null, false) => "misses short",
            _ => "stays up",
        };
    }

    private static string Long(double diamonds) => Math.Round(diamonds, 2) switch
    {
        > 0 => Text($"{diamonds:0.00} long"),
        < 0 => Text($"{-diamonds:0.00} short"),
        _ => "0.00",
    };

    private static string Side(double side) => Math.Round(side, 3) switch
    {
        > 0 => Text($"{side:0.000} running"),
        < 0 => Text($"{-side:0.000} reverse"),
        _ => "0",
    };

    private static string Turn(double degrees) => Math.Round(degrees, 1) switch
    {
        > 0 => Text($"{degrees:0.0} left"),
        < 0 => Text($"{-degrees:0.0} right"),
        _ => "0.0",
    };

    private static string Rest(Contrast contrast, Vec2 at)
    {
        TableSpec table = contrast.Base.Trace.Setup.Equipment.Table;
        return Text($"{at.X / table.DiamondAlong:0.00}, {at.Y / table.DiamondAcross:0.00}");
    }

    private static string CueBallGone(ContrastRow row) => row.Readings.Shot.StruckBall is { } cue
        ? row.Trace.Balls[cue].Pocket is { } pocket ? $"in {TableWords.Of(pocket)}" : "still moving"
        : Nothing;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
