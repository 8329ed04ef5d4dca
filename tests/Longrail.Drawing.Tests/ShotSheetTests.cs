using System.Xml.Linq;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests;

public class ShotSheetTests
{
    [Fact]
    public void A_straight_bank_looks_as_approved() => Snapshot.Matches(ShotSheet.Draw(SyntheticShot.StraightBank()));

    [Fact]
    public void A_table_without_pockets_looks_as_approved() =>
        Snapshot.Matches(ShotSheet.Draw(SyntheticShot.StraightBank(SyntheticShot.Carom)));

    [Fact]
    public void The_table_alone_looks_as_approved() =>
        Snapshot.Matches(ShotSheet.DrawPlan(SyntheticShot.StraightBank()));

    [Fact]
    public void On_the_table_alone_the_type_can_be_read_on_a_screen_of_390_pixels()
    {
        XElement root = SvgReading.Sound(ShotSheet.DrawPlan(SyntheticShot.StraightBank()));

        double perUnit = 390 / Sheet.PlanWidth;
        IEnumerable<XElement> onTable = SvgReading.Within(root, "table", "text");
        XElement[] numbers = [.. SvgReading.Within(root, "events", "text").Concat(onTable)];
        Assert.NotEmpty(numbers);
        // Nine pixels is what small print on a phone has (common practice, no source).
        Assert.All(numbers, text => Assert.InRange(SvgReading.Value(text, "font-size") * perUnit, 9, 20));
        Assert.Empty(SvgReading.Within(root, "title-block", "text"));
    }

    [Fact]
    public void The_same_shot_gives_the_same_text() =>
        Assert.Equal(ShotSheet.Draw(SyntheticShot.StraightBank()), ShotSheet.Draw(SyntheticShot.StraightBank()));

    [Fact]
    public void A_ball_stands_where_the_scale_puts_it()
    {
        XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank()));

        // The 4 stands at (1.9, 0.5) m on a 2.54 m table. At 1 : 12 a metre is 10000/12 units; the table is centred on
        // a sheet of 2970.
        double unit = 10000.0 / 12;
        double x = 2970 / 2.0 + (1.9 - 1.27) * unit;
        XElement lower = SvgReading.Within(
            root, "table", "text").First(t => t.Value == "0" && (string?)t.Attribute("text-anchor") == "end");
        double zero = SvgReading.Value(lower, "y") - 23 * 0.365;
        Assert.Contains(
            SvgReading.Within(root, "balls", "circle"),
            c => Math.Abs(SvgReading.Value(c, "cx") - x) < 0.002
                && Math.Abs(SvgReading.Value(c, "cy") - (zero - 0.5 * unit)) < 0.002
                && Math.Abs(SvgReading.Value(c, "r") - SyntheticShot.Radius * unit) < 0.002);
    }

    [Fact]
    public void Each_path_has_a_tick_for_every_tenth_of_a_second_outside_its_last_ball()
    {
        XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank()));
        ShotDrawing shot = SyntheticShot.StraightBank();

        XElement[] groups = [.. SvgReading.All(root, "g").Where(g => (string?)g.Attribute("class") == "path")];
        Assert.Equal(2, groups.Length);
        for (int ball = 0; ball < 2; ball++)
        {
            XElement ticks = SvgReading.All(
                groups[ball], "path").Single(p => (string?)p.Attribute("stroke-width") == "1.7");
            int drawn = ((string)ticks.Attribute("d")!).Split('M').Length - 1;
            int moving = (int)Math.Floor(
                shot.Tracks[ball].Pieces[^1].End * 10) - (int)Math.Floor(shot.Tracks[ball].Pieces[0].Start * 10);
            Assert.InRange(drawn, moving - 3, moving);
        }
    }

    [Fact]
    public void Numbers_count_from_the_head_and_from_the_right_and_the_convention_is_printed()
    {
        XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank()));
        XElement[] numbers = [.. SvgReading.Within(root, "table", "text").Where(t => t.Value.Length == 1)];

        XElement[] along = [.. numbers.Where(t => (string?)t.Attribute("text-anchor") == "middle")];
        Assert.Equal(18, along.Length);
        Assert.True(At(along, "0", "x") < At(along, "8", "x"));
        XElement[] across = [.. numbers.Where(t => (string?)t.Attribute("text-anchor") == "end")];
        Assert.Equal(5, across.Length);
        Assert.True(At(across, "0", "y") > At(across, "4", "y"));
        Assert.Contains(
            SvgReading.All(root, "text"), t => t.Value == "along 0-8 from the head, across 0-4 from the right");
    }

    [Fact]
    public void A_side_pocket_takes_the_place_of_the_middle_sight_and_without_pockets_it_is_there()
    {
        static int Sights(TableSpec table)
        {
            XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank(table)));
            XElement path = SvgReading.Within(
                root, "table", "path").Single(p => (string?)p.Attribute("fill") == "#ffffff");
            return ((string)path.Attribute("d")!).Split('M').Length - 1;
        }

        Assert.Equal(18, Sights(SyntheticShot.Pool));
        Assert.Equal(20, Sights(SyntheticShot.Carom));
    }

    [Fact]
    public void Hostile_names_and_titles_stay_text()
    {
        const string Hostile = "</title><script>x</script>\u0001\uD800 & \"9\"";
        ShotDrawing plain = SyntheticShot.StraightBank(title: Hostile);
        ShotDrawing shot = plain with { Names = [Hostile, "\u202E9", ""], TableName = Hostile };

        XElement root = SvgReading.Sound(ShotSheet.Draw(shot));

        Assert.Empty(SvgReading.All(root, "script"));
        Assert.Equal("</title><script>x</script>\uFFFD\uFFFD & \"9\"", SvgReading.All(root, "title").Single().Value);
    }

    [Fact]
    public void A_very_long_title_stays_in_its_block()
    {
        string title = string.Join(' ', Enumerable.Repeat("long-winded", 60));
        XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank(title: title)));

        foreach (XElement text in SvgReading.Within(root, "title-block", "text"))
        {
            double end = SvgReading.Value(text, "x")
                + Svg.TextWidth.Of(
                    text.Value, SvgReading.Value(text, "font-size"), text.Attribute("font-weight") is not null);
            Assert.InRange(end, 0, Sheet.Width - Sheet.Frame);
        }

        Assert.Equal(title, SvgReading.All(root, "title").Single().Value);
    }

    [Fact]
    public void More_events_than_there_is_room_for_are_counted()
    {
        ShotDrawing shot = SyntheticShot.StraightBank();
        KeyRow row = shot.Key[1];
        shot = shot with { Key = [.. Enumerable.Range(1, 40).Select(k => row with { Number = k })] };

        XElement root = SvgReading.Sound(ShotSheet.Draw(shot));

        int circles = SvgReading.Within(root, "events", "text").Count();
        Assert.InRange(circles, 5, 20);
        Assert.Contains(
            SvgReading.Within(root, "key", "text"), t => t.Value == $"and {40 - circles} more, not numbered here");
    }

    [Fact]
    public void Numbered_circles_do_not_lie_on_each_other_or_on_balls()
    {
        XElement root = SvgReading.Sound(ShotSheet.Draw(SyntheticShot.StraightBank()));
        (double X, double Y, double R)[] circles =
        [
            .. SvgReading.Within(root, "events", "circle").Concat(SvgReading.Within(root, "balls", "circle"))
                .Where(c => SvgReading.Value(c, "r") > 10)
                .Select(c => (SvgReading.Value(c, "cx"), SvgReading.Value(c, "cy"), SvgReading.Value(c, "r")))
                .Distinct(),
        ];

        for (int i = 0; i < circles.Length; i++)
        {
            for (int k = i + 1; k < circles.Length; k++)
            {
                double apart = Math.Sqrt(
                    Math.Pow(circles[i].X - circles[k].X, 2) + Math.Pow(circles[i].Y - circles[k].Y, 2));
                Assert.True(apart >= circles[i].R + circles[k].R - 0.01, $"{circles[i]} and {circles[k]} overlap");
            }
        }
    }

    private static double At(XElement[] texts, string value, string attribute) =>
        SvgReading.Value(texts.First(t => t.Value == value), attribute);
}
