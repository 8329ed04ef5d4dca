using System.Xml.Linq;
using Longrail.Drawing.Sheets;
using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests;

public class WaysSheetTests
{
    [Fact]
    public void Four_ways_look_as_approved() => Snapshot.Matches(WaysSheet.Draw(SyntheticWays.Ways(4)));

    [Fact]
    public void The_first_has_its_fan_its_kiss_gap_its_rest_and_its_next_shot()
    {
        XElement root = SvgReading.Sound(WaysSheet.Draw(SyntheticWays.Ways(4)));

        // A leg an area: areas that overlap would otherwise cancel each other.
        Assert.Equal(2, SvgReading.Within(root, "leeway", "path").Count());
        Assert.Contains(SvgReading.Within(root, "kiss", "text"), t => t.Value == "kiss gap 42 mm");
        Assert.Equal(2, SvgReading.Within(root, "rest", "path").Count());
        Assert.Equal(2, SvgReading.Within(root, "next", "line").Count());
        Assert.Contains(SvgReading.Within(root, "details", "text"), t => t.Value.StartsWith("A before B: ", StringComparison.Ordinal));
        Assert.Contains(SvgReading.Within(root, "not-playable", "text"), t => t.Value.StartsWith("8 stands", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_way_has_its_letter_in_the_table_and_the_others_a_sketch_of_their_own()
    {
        XElement root = SvgReading.Sound(WaysSheet.Draw(SyntheticWays.Ways(9, more: 31)));

        Assert.Equal(
            ["A", "B", "C", "D", "E", "F", "G", "H", "I"],
            SvgReading.Within(root, "key", "text").Select(t => t.Value).Where(t => t.Length == 1 && char.IsAsciiLetterUpper(t[0])));
        XElement[] sketches = [.. SvgReading.All(root, "g").Where(g => (string?)g.Attribute("class") == "sketch")];
        Assert.Equal(8, sketches.Length);
        // One scale: all beds are of one size.
        Assert.Single(sketches.Select(sketch => (string?)SvgReading.All(sketch, "rect").First().Attribute("width")).Distinct());
        Assert.Contains(SvgReading.All(root, "text"), t => t.Value == "and 31 more ways, less good");
    }

    [Fact]
    public void No_way_is_said_in_large_letters_and_why()
    {
        XElement root = SvgReading.Sound(WaysSheet.Draw(SyntheticWays.Ways(0)));

        Assert.Contains(SvgReading.All(root, "text"), t => t.Value == "No way was found to make 9.");
        Assert.NotEmpty(SvgReading.Within(root, "not-playable", "text"));
        Assert.Equal(3, SvgReading.Within(root, "balls", "text").Count());
    }

    [Fact]
    public void A_partial_list_says_so() => Assert.Contains(
        SvgReading.All(SvgReading.Sound(WaysSheet.Draw(SyntheticWays.Ways(2, 0, "Stopped before the end"))), "text"),
        t => t.Value == "Stopped before the end");

    [Fact]
    public void The_table_alone_is_a_sound_picture_too() => SvgReading.Sound(WaysSheet.DrawPlan(SyntheticWays.Ways(3)));
}
