using System.Globalization;
using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Charts;

/// <summary>One panel: corrections over the places for one tip.</summary>
internal sealed class LinePanel(
    SvgWriter svg, BankChart chart, int tip, ValueScale scale, double left, double top, double width, double height)
{
    private const double LabelRoom = 112;
    private const double Inset = 26;
    private const double LeastGap = 25;

    private static readonly string?[] _dashes = [null, "28 10", "5 8", "30 8 5 8", "14 10", "30 8 5 8 5 8", "44 14"];

    private readonly ChartRequest _request = chart.Request;
    private readonly bool _along = LinePanels.SpreadsAlong(chart.Request.Places);

    private double Bottom => top + height;

    internal void Draw(bool isFirst, double signs)
    {
        svg.Begin("panel");
        svg.Text(
            new SvgPoint(left + 2, top - 14), ChartNumbers.Tip(_request.Tips[tip]),
            new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
        DrawGrid(isFirst);
        DrawPlaces(signs);
        DrawLines();
        if (signs > 0)
            DrawSigns();
        svg.Rectangle(left, top, width, height + signs, null, new Pen(Ink.Graphite, Ink.Thin));
        svg.End();
    }

    private static string Colour(int speed) => Ink.Colours[speed % Ink.Colours.Count];

    private double X(int place)
    {
        int count = _request.Places.Diamonds.Count;
        double first = Coordinate(0);
        double last = Coordinate(count - 1);
        double part = count == 1 || last == first ? 0.5 : (Coordinate(place) - first) / (last - first);
        return left + Inset + part * (width - Inset - LabelRoom);
    }

    private double Y(double value) => Bottom - (value - scale.Low) / (scale.High - scale.Low) * height;

    private double Coordinate(int place) =>
        _along ? _request.Places.Diamonds[place].X : _request.Places.Diamonds[place].Y;

    private void DrawGrid(bool isFirst)
    {
        var lines = new SvgPath();
        foreach (double tick in scale.Ticks())
        {
            double y = Y(tick);
            if (Math.Abs(tick) > 1e-9 && y > top + 1 && y < Bottom - 1)
                lines.Move(new SvgPoint(left, y)).Line(new SvgPoint(left + width, y));
            if (!isFirst)
                continue;
            string text = Math.Abs(tick) < 1e-9 ? "mirror" : Signed(tick);
            svg.Text(
                new SvgPoint(left - 10, y + Ink.Small * Ink.HalfCapital), text,
                new TextStyle(Ink.Small, Ink.Soft, Math.Abs(tick) < 1e-9, TextAnchor.End));
        }

        svg.Path(lines, null, new Pen(Ink.Ghost, 0.9));
        svg.Line(new SvgPoint(left, Y(0)), new SvgPoint(left + width, Y(0)), new Pen(Ink.Graphite, Ink.Thin));
        if (!isFirst)
            return;
        var style = new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle);
        if (scale.High > 0)
            svg.Text(new SvgPoint(left + 22, (top + Y(0)) / 2), "longer", style, turned: true);
        if (scale.Low < 0)
            svg.Text(new SvgPoint(left + 22, (Y(0) + Bottom) / 2), "shorter", style, turned: true);
    }

    // A tick's text needs no more digits than its step.
    private string Signed(double tick)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(scale.Step) - 1e-9), 0, 3);
        string digits = Math.Abs(tick).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return (tick > 0 ? "+" : "-") + digits;
    }

    private void DrawPlaces(double signs)
    {
        var ticks = new SvgPath();
        double line = Bottom + signs;
        double taken = double.NegativeInfinity;
        for (int k = 0; k < _request.Places.Diamonds.Count; k++)
        {
            double x = X(k);
            ticks.Move(new SvgPoint(x, line)).Line(new SvgPoint(x, line + 9));
            string text = ChartNumbers.Diamond(Math.Round(Coordinate(k), 2));
            double half = TextWidth.Of(text, Ink.Small) / 2;
            if (Math.Abs(x - taken) < half + 22)
                continue;
            svg.Text(
                new SvgPoint(x, line + 14 + Ink.Small), text,
                new TextStyle(Ink.Small, Ink.Graphite, false, TextAnchor.Middle));
            taken = x;
        }

        svg.Path(ticks, null, new Pen(Ink.Graphite, Ink.Fine));
        string name = _along ? "ball, diamonds along" : "ball, diamonds across";
        svg.Text(
            new SvgPoint((X(0) + X(_request.Places.Diamonds.Count - 1)) / 2, line + 24 + 2.2 * Ink.Small), name,
            new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle));
    }

    private void DrawLines()
    {
        var ends = new List<(int Speed, double X, double Y)>();
        for (int speed = 0; speed < _request.Speeds.Count; speed++)
        {
            var path = new SvgPath();
            var dots = new SvgPath();
            SvgPoint? last = null;
            for (int k = 0; k < chart.Rows.Count; k++)
            {
                if (ChartNumbers.Correction(_request, chart[k, tip, speed]) is not { } value)
                {
                    last = null;
                    continue;
                }

                var at = new SvgPoint(X(k), Y(value));
                _ = last is null ? path.Move(at) : path.Line(at);
                dots.Circle(at, 6);
                last = at;
                ends.RemoveAll(end => end.Speed == speed);
                ends.Add((speed, at.X, at.Y));
            }

            svg.Path(path, null, new Pen(Colour(speed), Ink.Medium, _dashes[speed % _dashes.Length]));
            svg.Path(dots, Colour(speed));
        }

        DrawLabels(ends);
    }

    // Words at the ends of the lines, kept apart from each other.
    private void DrawLabels(List<(int Speed, double X, double Y)> ends)
    {
        double above = top + 4;
        foreach ((int speed, double x, double y) in ends.OrderBy(end => end.Y))
        {
            double at = Math.Max(y, above + LeastGap / 2);
            above = at + LeastGap / 2;
            double start = left + width - LabelRoom + 20;
            if (x + 12 < start - 4)
                svg.Line(new SvgPoint(x + 10, y), new SvgPoint(start - 4, at), new Pen(Colour(speed), 0.8));
            string text = ChartNumbers.Speed(_request.Speeds[speed]);
            // No line runs through a word.
            svg.Rectangle(
                start - 3, at - 0.55 * Ink.Small, TextWidth.Of(text, Ink.Small) + 6, 1.1 * Ink.Small, Ink.Paper);
            svg.Text(
                new SvgPoint(start, at + Ink.Small * Ink.HalfCapital), text, new TextStyle(Ink.Small, Ink.Graphite));
        }
    }

    private void DrawSigns()
    {
        svg.Line(new SvgPoint(left, Bottom), new SvgPoint(left + width, Bottom), new Pen(Ink.Soft, Ink.Fine));
        for (int speed = 0; speed < _request.Speeds.Count; speed++)
        {
            double line = Bottom + 8 + 27 * (speed + 0.5) + Ink.Small * Ink.HalfCapital;
            bool any = false;
            for (int k = 0; k < chart.Rows.Count; k++)
            {
                string sign = ChartWords.Sign(chart[k, tip, speed].Failure);
                any |= sign.Length > 0;
                svg.Text(
                    new SvgPoint(X(k), line), sign.Length > 0 ? sign : "·",
                    new TextStyle(Ink.Small, sign.Length > 0 ? Ink.Graphite : Ink.Faint, false, TextAnchor.Middle));
            }

            svg.Text(
                new SvgPoint(left + width - LabelRoom + 20, line), ChartNumbers.Speed(_request.Speeds[speed]),
                new TextStyle(Ink.Small, any ? Ink.Graphite : Ink.Faint));
        }
    }
}
