using Longrail.Coaching.Trials;
using Longrail.Drawing.Svg;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>The rows to fill in, one for each shot.</summary>
internal static class TrialRows
{
    // Room for a number written by hand.
    private const double Row = 68;
    private const double Head = 84;

    /// <summary>How many rows a height has room for, in whole blocks where one fits.</summary>
    internal static int Room(double height, int block)
    {
        int rows = Math.Max(1, (int)Math.Floor((height - Head) / Row));
        return rows >= block ? rows - rows % block : rows;
    }

    internal static void Draw(
        SvgWriter svg, TrialPlan plan, IReadOnlyList<TrialTurn> turns, double x, double y, double width)
    {
        if (turns.Count == 0) return;
        (string Name, string Unit, double Width)[] columns = [.. Columns(plan, width)];
        double bottom = y + Head + turns.Count * Row;
        svg.Begin("rows");
        DrawHead(svg, columns, x, y);
        var fine = new SvgPath();
        var thick = new SvgPath();
        for (int k = 0; k < turns.Count; k++)
        {
            double line = y + Head + (k + 1) * Row;
            bool endsBlock = k == turns.Count - 1 || turns[k + 1].Block != turns[k].Block;
            (endsBlock ? thick : fine).Move(new SvgPoint(x, line)).Line(new SvgPoint(x + width, line));
            DrawTurn(svg, plan, turns[k], columns, x, line - Row / 2);
        }

        thick.Move(new SvgPoint(x, y + Head)).Line(new SvgPoint(x + width, y + Head));
        double at = x;
        foreach ((_, _, double columnWidth) in columns)
        {
            fine.Move(new SvgPoint(at, y + Head)).Line(new SvgPoint(at, bottom));
            at += columnWidth;
        }

        fine.Move(new SvgPoint(x + width, y + Head)).Line(new SvgPoint(x + width, bottom));
        svg.Path(fine, null, new Pen(Ink.Soft, Ink.Fine));
        svg.Path(thick, null, new Pen(Ink.Graphite, Ink.Medium));
        for (int k = 0; k < turns.Count; k++)
        {
            if (LookAfter(plan, turns[k]) is { } look) DrawLook(svg, x, y + Head + (k + 1) * Row, width, look);
        }

        svg.End();
    }

    private static IEnumerable<(string Name, string Unit, double Width)> Columns(TrialPlan plan, double width)
    {
        yield return ("shot", "", 84);
        yield return ("play", "", 92);
        double rest = width - 176;
        bool hasLanding = plan.Target is not null;
        bool hasMade = plan.Pocket is not null;
        double made = hasMade ? 104 : 0;
        double each = (rest - made) / (hasLanding ? 3 : 2);
        if (hasLanding) yield return ("landing", "mm", each);
        yield return ("speed", "m/s", each);
        if (hasMade) yield return ("in?", "", made);
        yield return ("note", "", each);
    }

    private static void DrawHead(
        SvgWriter svg, (string Name, string Unit, double Width)[] columns, double x, double y)
    {
        foreach ((string name, string unit, double width) in columns)
        {
            var middle = new TextStyle(Ink.Body, Ink.Graphite, false, TextAnchor.Middle);
            svg.Text(new SvgPoint(x + width / 2, y + Head - 42), name, middle);
            TextStyle small = middle with { Size = Ink.Small, Colour = Ink.Soft };
            svg.Text(new SvgPoint(x + width / 2, y + Head - 14), unit, small);
            x += width;
        }
    }

    private static void DrawTurn(
        SvgWriter svg, TrialPlan plan, TrialTurn turn, (string Name, string Unit, double Width)[] columns,
        double x, double middle)
    {
        svg.Text(
            new SvgPoint(x + columns[0].Width - 16, middle + Ink.Body * Ink.HalfCapital), Invariant($"{turn.Shot}"),
            new TextStyle(Ink.Body, Ink.Soft, Anchor: TextAnchor.End));
        // The letter alone tells the condition; the other conditions' boxes are shaded, so that a change catches the
        // eye.
        double left = x + columns[0].Width;
        if (turn.Condition > 0)
            svg.Rectangle(left + 3, middle - Row / 2 + 3, columns[1].Width - 6, Row - 6, "#dddddd");
        svg.Text(
            new SvgPoint(left + columns[1].Width / 2, middle + 38 * Ink.HalfCapital),
            plan.Conditions[turn.Condition].Label,
            new TextStyle(38, Ink.Graphite, Bold: true, TextAnchor.Middle));
    }

    private static string? LookAfter(TrialPlan plan, TrialTurn turn)
    {
        if (turn.Shot % plan.Conditions.Count != 0) return null;
        int each = turn.Shot / plan.Conditions.Count;
        int look = plan.Looks.ToList().IndexOf(each);
        return look < 0 || look == plan.Looks.Count - 1 ? null : Invariant($"look {look + 1} of {plan.Looks.Count}");
    }

    private static void DrawLook(SvgWriter svg, double x, double line, double width, string words)
    {
        double half = TextWidth.Of(words, Ink.Body, bold: true) / 2 + 12;
        svg.Line(new SvgPoint(x, line), new SvgPoint(x + width, line), new Pen(Ink.Graphite, 9));
        svg.Rectangle(x + width - 2 * half, line - 22, 2 * half, 44, "#ffffff", new Pen(Ink.Graphite, Ink.Thin));
        svg.Text(
            new SvgPoint(x + width - half, line + Ink.Body * Ink.HalfCapital), words,
            new TextStyle(Ink.Body, Ink.Graphite, Bold: true, TextAnchor.Middle));
    }
}
