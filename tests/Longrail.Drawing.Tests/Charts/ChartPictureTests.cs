using System.Xml.Linq;
using Longrail.Coaching.Charts;
using Longrail.Drawing.Sheets;
using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests.Charts;

public class ChartPictureTests
{
    private static readonly DateOnly _date = new(2026, 11, 25);

    [Fact]
    public void A_chart_over_a_line_looks_as_approved() => Snapshot.Matches(ChartPicture.Draw(HandMadeChart.Line()));

    [Fact]
    public void A_chart_over_a_grid_looks_as_approved() => Snapshot.Matches(ChartPicture.Draw(HandMadeChart.Grid()));

    [Fact]
    public void A_map_of_odds_looks_as_approved() =>
        Snapshot.Matches(MapPicture.Draw(HandMadeChart.Map(MapMeasure.Odds)));

    [Fact]
    public void A_map_of_leeway_looks_as_approved() =>
        Snapshot.Matches(MapPicture.Draw(HandMadeChart.Map(MapMeasure.Leeway)));

    [Fact]
    public void The_date_is_printed_only_when_it_is_given()
    {
        Assert.DoesNotContain("2026", ChartPicture.Draw(HandMadeChart.Line()), StringComparison.Ordinal);
        Assert.Contains("2026-11-25", ChartPicture.Draw(HandMadeChart.Line(), _date), StringComparison.Ordinal);
        Assert.Contains(
            "2026-11-25", MapPicture.Draw(HandMadeChart.Map(MapMeasure.Odds), _date), StringComparison.Ordinal);
    }

    [Fact]
    public void There_is_a_panel_for_each_tip_and_all_have_the_same_ticks()
    {
        XElement root = SvgReading.Sound(ChartPicture.Draw(HandMadeChart.Line()));
        XElement[] panels = [.. SvgReading.All(root, "g").Where(g => (string?)g.Attribute("class") == "panel")];
        Assert.Equal(3, panels.Length);
        // The mirror's line lies at one height in all of them: one scale.
        double[] heights =
        [
            .. panels.Select(panel => SvgReading.All(panel, "line").First())
                .Select(line => SvgReading.Value(line, "y1")),
        ];
        Assert.All(heights, height => Assert.Equal(heights[0], height));
    }

    [Fact]
    public void A_cell_without_an_answer_shows_its_sign_in_the_panel_the_table_and_the_key()
    {
        XElement root = SvgReading.Sound(ChartPicture.Draw(HandMadeChart.Line()));
        Assert.Single(SvgReading.Within(root, "panel", "text"), t => t.Value == "k");
        Assert.Single(SvgReading.Within(root, "numbers", "text"), t => t.Value == "k");
        Assert.Contains(
            SvgReading.Within(root, "notes", "text"), t => t.Value.Contains("k double kiss", StringComparison.Ordinal));
    }

    [Fact]
    public void Places_without_room_in_the_table_are_counted()
    {
        XElement root = SvgReading.Sound(ChartPicture.Draw(HandMadeChart.Long()));
        Assert.Contains(
            SvgReading.Within(root, "numbers", "text"), t =>
                t.Value.EndsWith("more places, in the table of numbers", StringComparison.Ordinal));
    }

    [Fact]
    public void Everything_stays_on_the_sheet()
    {
        string[] pictures =
        [
            ChartPicture.Draw(HandMadeChart.Line()), ChartPicture.Draw(HandMadeChart.Grid()),
            ChartPicture.Draw(HandMadeChart.Long()), MapPicture.Draw(HandMadeChart.Map(MapMeasure.Odds)),
        ];
        foreach (string picture in pictures)
        {
            XElement root = SvgReading.Sound(picture);
            Assert.All(SvgReading.All(root, "text"), text =>
            {
                Assert.InRange(SvgReading.Value(text, "x"), Sheet.Frame, Sheet.Width - Sheet.Frame);
                Assert.InRange(SvgReading.Value(text, "y"), Sheet.Frame, Sheet.Height - Sheet.Frame);
            });
        }

        SvgReading.Sound(ChartPicture.DrawPanels(HandMadeChart.Line()));
        SvgReading.Sound(MapPicture.DrawPlan(HandMadeChart.Map(MapMeasure.Leeway)));
    }

    [Fact]
    public void A_players_name_cannot_break_the_picture() =>
        Assert.Contains(
            "A &amp; &lt;B&gt;", MapPicture.Draw(HandMadeChart.Map(MapMeasure.Odds)), StringComparison.Ordinal);
}
