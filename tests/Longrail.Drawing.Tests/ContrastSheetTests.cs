using System.Xml.Linq;
using Longrail.Drawing.Sheets;
using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests;

public class ContrastSheetTests
{
    [Fact]
    public void Three_variants_look_as_approved() => Snapshot.Matches(ContrastSheet.Draw(SyntheticContrast.Speeds(3)));

    [Fact]
    public void Nine_variants_of_two_things_look_as_approved() =>
        Snapshot.Matches(ContrastSheet.Draw(SyntheticContrast.Speeds(9, twoThings: true)));

    [Fact]
    public void Two_things_changed_is_said_in_the_title_block_the_table_and_the_description()
    {
        XElement root = SvgReading.Sound(ContrastSheet.Draw(SyntheticContrast.Speeds(4, twoThings: true)));

        Assert.Contains(SvgReading.Within(root, "title-block", "text"), t => t.Value == "two things changed");
        Assert.Contains(
            SvgReading.All(root, "text"), t => t.Value.StartsWith("* two things changed", StringComparison.Ordinal));
        Assert.Equal(
            ["B *", "D *"], SvgReading.Within(root, "key", "text").Select(t => t.Value).Where(t => t.EndsWith('*')));
        Assert.Contains("two things changed", SvgReading.All(root, "desc").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_things_changed_is_said_on_the_table_alone_too()
    {
        XElement root = SvgReading.Sound(ContrastSheet.DrawPlan(SyntheticContrast.Speeds(4, twoThings: true)));

        Assert.Contains(SvgReading.All(root, "text"), t => t.Value == "two things changed");
    }

    [Fact]
    public void One_thing_changed_carries_no_such_mark() =>
        Assert.DoesNotContain("two things", ContrastSheet.Draw(SyntheticContrast.Speeds(3)), StringComparison.Ordinal);

    [Fact]
    public void The_base_is_drawn_first_so_that_the_variants_lie_over_it()
    {
        XElement root = SvgReading.Sound(ContrastSheet.Draw(SyntheticContrast.Speeds(3)));
        XElement[] groups = [.. SvgReading.All(root, "g").Where(g => (string?)g.Attribute("class") == "path")];

        Assert.Equal(4, groups.Length);
        Assert.Equal(Svg.Ink.Ghost, (string?)SvgReading.All(groups[0], "path").First().Attribute("stroke"));
    }

    [Fact]
    public void Every_variant_has_its_letter_at_its_landing_and_in_the_table()
    {
        XElement root = SvgReading.Sound(ContrastSheet.Draw(SyntheticContrast.Speeds(9)));
        string[] letters = ["A", "B", "C", "D", "E", "F", "G", "H", "I"];

        Assert.Equal(letters, SvgReading.Within(root, "letters", "text").Select(t => t.Value));
        IEnumerable<string> key = SvgReading.Within(root, "key", "text").Select(t => t.Value);
        Assert.Equal(letters, key.Where(t => t.Length == 1 && char.IsUpper(t[0])));
    }

    [Fact]
    public void Forty_variants_still_make_a_sound_picture_that_counts_what_it_does_not_list()
    {
        XElement root = SvgReading.Sound(ContrastSheet.Draw(SyntheticContrast.Speeds(40)));

        Assert.Equal(41, SvgReading.All(root, "g").Count(g => (string?)g.Attribute("class") == "path"));
        Assert.Contains(
            SvgReading.Within(root, "key", "text"),
            t => t.Value.EndsWith("drawn but not listed", StringComparison.Ordinal));
    }
}
