using System.Net;
using System.Text;
using Longrail.Drawing;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Outcomes;
using Longrail.Workbench.Tables;
using static System.FormattableString;

namespace Longrail.Workbench.Sheets;

/// <summary>The sheet that one prints and takes to the table: the plan, where the balls stand to the millimetre, the
/// stroke, the equipment, the numbering and the date, on one page.</summary>
internal static class PrintSheet
{
    // A plan this wide has its type at 2.3 mm when it is printed across A4.
    private const double PlanWidth = 2550;

    /// <summary>The page as HTML.</summary>
    public static string Of(ShotPictureInput input, Outcome outcome, BenchView view)
    {
        Plan plan = ShotPicture.DrawParts(input, PlanWidth);
        Scene used = outcome.Scene.AsUsed;
        var html = new StringBuilder();
        string title = Text(input.Title.Length > 0 ? input.Title : "A shot");
        html.Append(
            $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{title}</title><link rel="stylesheet" href="/sheet.css"><link rel="icon" href="/mark.svg"></head>
            <body class="print"><main><h1>{title}</h1>
            <svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="{Text(plan.Description)}"
            font-family="'DejaVu Sans', sans-serif"
            """);
        html.Append(Invariant($" viewBox=\"0 0 {plan.Width:0.###} {plan.Height:0.###}\">")).Append(plan.Table)
            .Append(plan.Shot).Append("</svg>");
        html.Append("<div class=\"foot\"><table><caption>Where the balls stand (centres)</caption><thead><tr>"
            + "<th>ball</th><th>from the head</th>"
            + "<th>from the right</th><th>along, across</th></tr></thead><tbody>");
        for (int k = 0; k < outcome.Scene.BallIds.Count; k++)
        {
            Vec2 at = outcome.Trace.Setup.Balls[k].Start.Position;
            Physics.Equipment.TableSpec table = outcome.Trace.Setup.Equipment.Table;
            html.Append(
                $"<tr><th>{Text(outcome.Scene.BallIds[k])}</th>"
                + Invariant($"<td>{1000 * at.X:0} mm</td><td>{1000 * at.Y:0} mm</td>")
                + $"<td>{DiamondCount.Text(view.Numbering, at.X / table.DiamondAlong)}, "
                + $"{DiamondCount.Text(view.Numbering, at.Y / table.DiamondAcross)}</td></tr>");
        }

        html.Append("</tbody></table><dl>");
        foreach ((string name, string value) in Rows(outcome, used, view))
            html.Append($"<div><dt>{name}</dt><dd>{Text(value)}</dd></div>");
        html.Append("</dl></div>");
        string date = input.Date is { } d ? Invariant($"{d:yyyy-MM-dd}. ") : "";
        html.Append($"<p class=\"small\">{date}{Text(DiamondCount.Words(view.Numbering))}. "
            + $"Circled numbers: the events in order. Longrail {Text(SceneLink.Version)}.</p>");
        html.Append("<button type=\"button\" id=\"print\">Print</button></main>"
            + "<script type=\"module\" src=\"/print.js\"></script></body></html>");
        return html.ToString();
    }

    private static IEnumerable<(string, string)> Rows(Outcome outcome, Scene used, BenchView view)
    {
        if (outcome.Readings.Events.OfType<Physics.Shots.Readings.TipReading>().FirstOrDefault() is { } tip)
        {
            string speed = $"{Shown.Speed(tip.BallSpeed, view.Speed)} {view.Speed}";
            yield return ("stroke", Invariant($"ball {speed}, stick at {tip.AimDegrees:0.00}°"));
            yield return (
                "tip", Invariant($"{tip.OffsetRight:0.000} R right, {tip.OffsetAbove:0.000} R above the centre"));
        }

        yield return ("table", Invariant($"{used.Table!.Preset}, cushions {used.Cushion!.Law}"));
        yield return ("cloth and balls",
            $"{used.Cloth!.State} cloth, {used.BallSet!.State} balls, {used.Cue!.Preset} cue");
        yield return ("result", Words.ShotWords.Of(outcome));
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
