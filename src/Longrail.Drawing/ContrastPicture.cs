using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Drawing;

/// <summary>Draws a comparison as one sheet: the base as a ghost, the variants over it, and how far apart they
/// land.</summary>
public static class ContrastPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <remarks>Each variant has a letter, a colour and a dash pattern of its own, any of which is enough to tell it. A
    /// bank is drawn as far as its landing; the table and the shots have the rest.</remarks>
    /// <param name="contrast">The comparison.</param>
    /// <param name="tableName">What the table is called, or null.</param>
    /// <param name="date">A date to print, or null: a picture never takes one from the clock.</param>
    public static string Draw(Contrast contrast, string? tableName = null, DateOnly? date = null) =>
        ContrastSheet.Draw(Reduce(contrast, tableName, date));

    /// <summary>The table alone, for a small screen or a page that has its own words around it: no frame, no table of
    /// numbers, no title block; the type is larger against the table.</summary>
    /// <param name="contrast">The comparison.</param>
    public static string DrawPlan(Contrast contrast) => ContrastSheet.DrawPlan(Reduce(contrast, null, null));

    /// <summary>The table alone in two parts without a sheet around them, for a page; each row's paths are a group of
    /// class "variant" with the row's index.</summary>
    /// <param name="contrast">The comparison.</param>
    /// <param name="width">Width of the sheet, tenths of a millimetre, from 400 to 10000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range.</exception>
    public static Plan DrawParts(Contrast contrast, double width)
    {
        if (width is not (>= 400 and <= 10000))
            throw new ArgumentOutOfRangeException(nameof(width), width, "A plan is 400 to 10000 units wide.");
        return ContrastSheet.DrawParts(Reduce(contrast, null, null), width);
    }

    private static ContrastDrawing Reduce(Contrast contrast, string? tableName, DateOnly? date)
    {
        Trace trace = contrast.Base.Trace;
        ContrastTable table = ContrastTable.Of(contrast);
        return new ContrastDrawing
        {
            Title = contrast.Title,
            Varied = string.Join(" and ", contrast.Request.Variations.Select(v => v.Path)),
            Held = contrast.Request.Hold == Hold.Path ? "the cue ball's path, squirt taken out" : "the stick's line",
            VariesTwoThings = contrast.VariesTwoThings,
            Equipment = trace.Setup.Equipment,
            Names = contrast.Names,
            StripeAxes = contrast.StripeAxes ?? new Vec3?[contrast.Names.Count],
            Radii = [.. trace.Setup.Balls.Select(ball => ball.Radius)],
            Struck = contrast.Base.Readings.Shot.StruckBall,
            Variants = [.. contrast.Rows.Select((row, k) => Reduce(contrast, row, k, table.Rows[k]))],
            Columns = table.Columns,
            Notes = ContrastNotes.Of(contrast),
            Target = contrast.Base.Bank?.Target,
            TableName = tableName,
            Date = date,
        };
    }

    private static VariantDrawing Reduce(Contrast contrast, ContrastRow row, int index, IReadOnlyList<string> cells)
    {
        Trace trace = row.Trace;
        int? cue = row.Readings.Shot.StruckBall;
        int? bank = row.Bank?.Ball;
        ShotEvent? hit = trace.Events.FirstOrDefault(
            e => e.Kind == ShotEventKind.BallsMeet && (e.BallA == cue || e.BallB == cue));
        CushionName? target = contrast.Base.Bank?.Target;
        return new VariantDrawing
        {
            Label = row.Label,
            Mark = row.IsBase ? null : VariantMark.Of(index - 1),
            Cells = cells,
            TwoThingsChanged = row.TwoThingsChanged,
            Bank = bank is null ? null : BallTrack.Of(trace, bank.Value).Until(row.Bank!.Next?.Time ?? trace.Duration),
            BankRests = row.Bank?.Next?.Kind == ShotEventKind.Stops,
            Cue = cue is null || cue == bank ? null : BallTrack.Of(trace, cue.Value),
            CueMeets = hit?.Time ?? double.PositiveInfinity,
            Starts = [.. trace.Setup.Balls.Select(ball => TablePoint.From(ball.Start.Position))],
            Landing = target is not null && row.Bank?.Target == target ? row.Bank!.LandingMetres : null,
            Difference = Difference(row),
        };
    }

    private static string Difference(ContrastRow row)
    {
        if (row.IsBase || row.Change is not { } change)
            return "";
        string side = change.IsLonger switch { true => " longer", false => " shorter", _ => "" };
        string sign = change.IsLonger is null && change.Diamonds != 0 ? (change.Diamonds > 0 ? "+" : "-") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{Math.Abs(change.Diamonds):0.00}{side}");
    }
}
