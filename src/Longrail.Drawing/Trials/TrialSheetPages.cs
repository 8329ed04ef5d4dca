using Longrail.Coaching.Trials;
using Longrail.Drawing.Svg;
using Longrail.Scenes.Compiling;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>Lays the sheet of a trial out on pages.</summary>
internal sealed class TrialSheetPages
{
    private const double Frame = 90;
    private const double Pad = 24;
    private const double HeadHeight = 150;
    private const double FootHeight = 90;
    private const double SetUpHeight = 960;
    private const double Gutter = 40;

    private readonly TrialPlan _plan;
    private readonly ReadyScene _scene;
    private readonly double _width;
    private readonly double _height;

    internal TrialSheetPages(TrialPlan plan, ReadyScene scene, Paper paper)
    {
        _plan = plan;
        _scene = scene;
        (_width, _height) = paper == Paper.Letter ? (2159.0, 2794.0) : (2100.0, 2970.0);
    }

    private string Title => _plan.Title.Length > 0 ? _plan.Title : "Trial";

    internal IReadOnlyList<string> Draw()
    {
        IReadOnlyList<TrialTurn> turns = TrialSchedule.Of(_plan);
        double top = Frame + HeadHeight;
        double bottom = _height - Frame - FootHeight;
        double below = top + SetUpHeight;
        int block = 2 * _plan.Conditions.Count;
        int first = 2 * TrialRows.Room(bottom - below, block);
        int other = 2 * TrialRows.Room(bottom - top, block);
        int pages = 1 + (int)Math.Ceiling(Math.Max(0, turns.Count - first) / (double)other);
        var drawn = new List<string>(pages);
        int from = 0;
        for (int page = 1; page <= pages; page++)
        {
            SvgWriter svg = Begin(page, pages);
            double start = page == 1 ? below : top;
            if (page == 1)
                new TrialSetUp(_plan, _scene).Draw(svg, Frame + Pad, top, _width - 2 * (Frame + Pad), SetUpHeight);
            int room = page == 1 ? first : other;
            // What is left is shared out evenly over the two columns.
            int left = Math.Min(room, turns.Count - from);
            int half = Math.Min(room / 2, WholeBlocks((left + 1) / 2));
            double columnWidth = (_width - 2 * (Frame + Pad) - Gutter) / 2;
            TrialRows.Draw(svg, _plan, [.. turns.Skip(from).Take(half)], Frame + Pad, start, columnWidth);
            TrialRows.Draw(
                svg, _plan, [.. turns.Skip(from + half).Take(left - half)], Frame + Pad + columnWidth + Gutter, start,
                columnWidth);
            from += left;
            drawn.Add(svg.Finish());
        }

        return drawn;
    }

    // A block of the order is not torn over two columns where it need not be.
    private int WholeBlocks(int rows)
    {
        int block = 2 * _plan.Conditions.Count;
        return (rows + block - 1) / block * block;
    }

    private SvgWriter Begin(int page, int pages)
    {
        string description = Invariant($"Sheet of a trial: {_plan.Shots} shots of each of ")
            + Invariant($"{_plan.Conditions.Count} conditions, page {page} of {pages}.");
        var svg = new SvgWriter(_width, _height, Title, description);
        svg.Rectangle(0, 0, _width, _height, "#ffffff");
        svg.Rectangle(Frame, Frame, _width - 2 * Frame, _height - 2 * Frame, null, new Pen(Ink.Graphite, Ink.Medium));
        DrawHead(svg, page, pages);
        DrawFoot(svg);
        return svg;
    }

    private void DrawHead(SvgWriter svg, int page, int pages)
    {
        svg.Begin("head");
        double right = _width - Frame - Pad;
        string number = Invariant($"page {page} of {pages}");
        double room = right - Frame - Pad - TextWidth.Of(number, Ink.Body) - Pad;
        svg.Text(
            new SvgPoint(Frame + Pad, Frame + 62), TextWidth.Fit(SvgText.Clean(Title), room, 44, bold: true),
            new TextStyle(44, Ink.Graphite, Bold: true));
        svg.Text(
            new SvgPoint(right, Frame + 62), number, new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.End));
        string conditions = string.Join(", ", _plan.Conditions.Select(c => $"{c.Label} = {c.Value}"));
        string line = $"{_plan.Path}: {conditions}";
        svg.Text(
            new SvgPoint(Frame + Pad, Frame + 116),
            TextWidth.Fit(SvgText.Clean(line), right - Frame - Pad, 34, bold: true),
            new TextStyle(34, Ink.Graphite, Bold: true));
        double rule = Frame + HeadHeight - 12;
        svg.Line(new SvgPoint(Frame, rule), new SvgPoint(_width - Frame, rule), new Pen(Ink.Graphite, Ink.Thin));
        svg.End();
    }

    private void DrawFoot(SvgWriter svg)
    {
        svg.Begin("foot");
        double line = _height - Frame - 28;
        string[] blanks = ["date", "table", "player", "written by"];
        double step = (_width - 2 * (Frame + Pad)) / (blanks.Length + 0.55);
        for (int k = 0; k < blanks.Length; k++)
        {
            double x = Frame + Pad + k * step;
            double after = x + TextWidth.Of(blanks[k], Ink.Body) + 10;
            svg.Text(new SvgPoint(x, line), blanks[k], new TextStyle(Ink.Body, Ink.Graphite));
            svg.Line(
                new SvgPoint(after, line + 4), new SvgPoint(x + step - 20, line + 4), new Pen(Ink.Graphite, Ink.Fine));
        }

        svg.Text(
            new SvgPoint(_width - Frame - Pad, line), Invariant($"lot {_plan.Seed}"),
            new TextStyle(Ink.Body, Ink.Soft, Anchor: TextAnchor.End));
        svg.End();
    }
}
