using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>One panel of a chart over a grid.</summary>
internal sealed class GridPanel(SvgWriter svg, BankChart chart, double left, double top, double scale)
{
    private readonly ChartRequest _request = chart.Request;
    private readonly TableSpec _table = chart.Request.Equipment.Table;
    private Vec2 _corner;
    private Vec2 _span;

    internal void Draw(int tip, int speed)
    {
        _span = GridPanels.Span(chart, out _corner);
        svg.Begin("panel");
        svg.Text(
            new SvgPoint(left + 2, top - 14),
            $"{ChartNumbers.Speed(_request.Speeds[speed])}, {ChartNumbers.Tip(_request.Tips[tip])}",
            new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
        svg.Rectangle(left, top, scale * _span.X, scale * _span.Y, Ink.Bed, new Pen(Ink.Graphite, Ink.Thin));
        DrawAxes();
        double size = TypeSize();
        for (int k = 0; k < chart.Rows.Count; k++)
        {
            ChartCell cell = chart[k, tip, speed];
            bool answered = cell.Failure == NoBank.None;
            svg.Text(
                At(chart.Rows[k].Place).Moved(0, size * Ink.HalfCapital), ChartNumbers.Text(_request, cell),
                new TextStyle(size, answered ? Ink.Graphite : Ink.Soft, false, TextAnchor.Middle));
        }

        svg.End();
    }

    private void DrawAxes()
    {
        ChartPlaces places = _request.Places;
        double bottom = top + scale * _span.Y;
        var ticks = new SvgPath();
        double taken = double.NegativeInfinity;
        for (int column = 0; column < places.Columns; column++)
        {
            SvgPoint at = At(places.Diamonds[column]);
            ticks.Move(new SvgPoint(at.X, bottom)).Line(new SvgPoint(at.X, bottom + 8));
            string text = ChartNumbers.Diamond(Math.Round(places.Diamonds[column].X, 2));
            if (at.X - taken < TextWidth.Of(text, Ink.Small) + 14)
                continue;
            svg.Text(
                new SvgPoint(at.X, bottom + 12 + Ink.Small), text,
                new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle));
            taken = at.X;
        }

        taken = double.PositiveInfinity;
        for (int row = 0; row < places.Rows; row++)
        {
            SvgPoint at = At(places.Diamonds[row * places.Columns]);
            ticks.Move(new SvgPoint(left, at.Y)).Line(new SvgPoint(left - 8, at.Y));
            if (taken - at.Y < 1.2 * Ink.Small)
                continue;
            svg.Text(
                new SvgPoint(left - 12, at.Y + Ink.Small * Ink.HalfCapital),
                ChartNumbers.Diamond(Math.Round(places.Diamonds[row * places.Columns].Y, 2)),
                new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.End));
            taken = at.Y;
        }

        svg.Path(ticks, null, new Pen(Ink.Soft, Ink.Fine));
    }

    private SvgPoint At(Vec2 diamonds) => new(
        left + scale * (diamonds.X * _table.DiamondAlong - _corner.X),
        top + scale * (_corner.Y + _span.Y - diamonds.Y * _table.DiamondAcross));

    // So large that neighbours keep apart.
    private double TypeSize()
    {
        ChartPlaces places = _request.Places;
        double step = places.Columns < 2 ? scale * _span.X : At(places.Diamonds[1]).X - At(places.Diamonds[0]).X;
        double widest =
            chart.Rows.SelectMany(row => row.Cells).Max(cell => TextWidth.Of(ChartNumbers.Text(_request, cell), 1));
        return Math.Clamp(0.86 * step / Math.Max(widest, 1), 9, Ink.Body);
    }
}
