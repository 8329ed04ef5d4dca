using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Sheets;

/// <summary>How an A4 sheet is divided: frame, table on top, key and title block below. All in tenths of a
/// millimetre.</summary>
internal static class Sheet
{
    internal const double Width = 2970;
    internal const double Height = 2100;

    /// <summary>Distance of the frame from the edge: more than printers leave white.</summary>
    internal const double Frame = 70;

    /// <summary>Top of the strip under the table.</summary>
    internal const double StripTop = 1580;

    /// <summary>Bottom of the strip.</summary>
    internal const double StripBottom = Height - Frame;

    /// <summary>Width of a sheet that shows the table alone: on a screen of 390 pixels the smallest type is then 9
    /// pixels high.</summary>
    internal const double PlanWidth = 960;

    /// <summary>Left edge of the title block.</summary>
    internal const double BlockLeft = 2150;

    /// <summary>The largest scale 1 : n with a whole n at which the table fits, and where it then lies.</summary>
    internal static Viewport Place(TableSpec table)
    {
        const double Pad = 20;
        double room = Width - 2 * (Frame + TablePlan.Margin);
        // Numbers only above the table, numbers and a dimension below it.
        double above = Frame + 60;
        double below = StripTop - Pad - TablePlan.Margin;
        double scale = Math.Min(
            room / (table.Length + 2 * TablePlan.RailWidth), (below - above) / (table.Width + 2 * TablePlan.RailWidth));
        double reduction = Viewport.UnitsPerMetre / scale;
        double whole = Viewport.UnitsPerMetre / (reduction < 1 ? reduction : Math.Ceiling(reduction));
        double left = (Width - whole * table.Length) / 2;
        double middle = (above + below) / 2;
        return new Viewport(left, middle + whole * table.Width / 2, whole);
    }

    /// <summary>The table alone on a small sheet with type as large as on a big one, and where it lies there.</summary>
    internal static SvgWriter BeginPlan(TableSpec table, string title, string description, out Viewport view)
    {
        (view, double height) = PlacePlan(table, PlanWidth);
        var svg = new SvgWriter(PlanWidth, height, title, description);
        svg.Rectangle(0, 0, PlanWidth, height, Ink.Paper);
        return svg;
    }

    /// <summary>Where the table lies on a sheet of its own, and how high that sheet is.</summary>
    internal static (Viewport View, double Height) PlacePlan(TableSpec table, double width)
    {
        const double Margin = 46;
        double scale = (width - 2 * Margin) / (table.Length + 2 * TablePlan.RailWidth);
        double height = 2 * Margin + scale * (table.Width + 2 * TablePlan.RailWidth);
        return (
            new Viewport(Margin + scale * TablePlan.RailWidth, height - Margin - scale * TablePlan.RailWidth, scale),
            height);
    }

    internal static SvgWriter Begin(string title, string description)
    {
        var svg = new SvgWriter(Width, Height, title, description);
        svg.Rectangle(0, 0, Width, Height, Ink.Paper);
        svg.Rectangle(Frame, Frame, Width - 2 * Frame, Height - 2 * Frame, null, new Pen(Ink.Graphite, Ink.Medium));
        return svg;
    }
}
