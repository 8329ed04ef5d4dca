using Longrail.Drawing.Sheets;

namespace Longrail.Drawing.Tests;

public class ViewportTests
{
    [Fact]
    public void The_head_is_on_the_left_and_the_right_cushion_below()
    {
        var view = new Viewport(Left: 400, Bottom: 1300, Scale: 1000);

        Assert.Equal(new SvgPoint(400, 1300), view.ToSheet(new TablePoint(0, 0)));
        Assert.Equal(new SvgPoint(2400, 1300), view.ToSheet(new TablePoint(2, 0)));
        Assert.Equal(new SvgPoint(400, 300), view.ToSheet(new TablePoint(0, 1)));
        Assert.Equal(10.0, view.Reduction);
    }

    // Presets' sizes nose to nose: WPA rules for 9 ft, UMB rules for 10 ft, 12 ft as in snooker.
    [Theory]
    [InlineData(2.54, 1.27, 12)]
    [InlineData(2.84, 1.42, 13)]
    [InlineData(3.569, 1.778, 16)]
    [InlineData(1.0, 3.0, 25)]
    public void A_table_is_placed_whole_on_the_sheet_at_a_whole_scale(double length, double width, double reduction)
    {
        Viewport view = Sheet.Place(SyntheticShot.Carom with { Length = length, Width = width });

        Assert.Equal(reduction, view.Reduction, 9);
        SvgPoint headRight = view.ToSheet(new TablePoint(-0.14, -0.14));
        SvgPoint footLeft = view.ToSheet(new TablePoint(length + 0.14, width + 0.14));
        Assert.InRange(headRight.X, Sheet.Frame, Sheet.Width - Sheet.Frame);
        Assert.InRange(footLeft.X, Sheet.Frame, Sheet.Width - Sheet.Frame);
        Assert.InRange(footLeft.Y, Sheet.Frame, Sheet.StripTop);
        Assert.InRange(headRight.Y, Sheet.Frame, Sheet.StripTop);
    }
}
