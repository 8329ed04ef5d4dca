using System.Text;
using System.Text.Json;
using Longrail.Coaching.Contrasts;
using Longrail.Scenes.Reading;
using static Longrail.Coaching.Tests.Contrasts.ContrastScenes;

namespace Longrail.Coaching.Tests.Contrasts;

public class ContrastTableTests
{
    [Fact]
    public void The_table_has_a_cell_for_every_column_and_says_nothing_about_the_bases_change()
    {
        ContrastTable table = ContrastTable.Of(Run(Straight, Hold.Stick, Vary("stroke.speed", "1.2 m/s", "4.5 m/s")));

        Assert.All(table.Rows, row => Assert.Equal(table.Columns.Count, row.Count));
        Assert.Equal(["base", "2.2 m/s"], table.Rows[0].Take(2));
        Assert.Equal(["0", "0"], table.Rows[0].Skip(3).Take(2));
        Assert.Equal(["A", "B"], table.Rows.Skip(1).Select(row => row[0]));
    }

    [Fact]
    public void Rows_in_which_two_things_changed_carry_a_star()
    {
        ContrastTable table = ContrastTable.Of(
            Run(Alone, Hold.Stick, Vary("stroke.speed", "2.2", "4.4"), Vary("stroke.tip.right", "0", "1/8 tip")));

        Assert.Equal(["base", "A", "B", "C *"], table.Rows.Select(row => row[0]));
    }

    [Fact]
    public void Without_a_cushion_contact_the_table_says_so()
    {
        ContrastTable table = ContrastTable.Of(Run(Alone, Hold.Stick, Vary("stroke.speed", "0.1")));

        Assert.Contains("no cushion", table.Rows[1]);
        Assert.DoesNotContain("no cushion", table.Rows[0]);
    }

    [Fact]
    public void The_json_repeats_each_scene_so_that_it_can_be_played_again()
    {
        Contrast contrast = Run(Straight, Hold.Path, Vary("stroke.tip.right", "0", "1/4 tip"));
        using var document = JsonDocument.Parse(ContrastWriter.ToUtf8(contrast));
        JsonElement root = document.RootElement;

        Assert.Equal("contrast/1", root.GetProperty("longrail").GetString());
        Assert.Equal("path", root.GetProperty("hold").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("mark").ValueKind);
        Assert.Equal(3, root.GetProperty("rows").GetArrayLength());
        foreach (
            (JsonElement row, ContrastRow expected) in root.GetProperty("rows").EnumerateArray().Zip(contrast.Rows))
        {
            SceneReading scene = SceneReader.Read(Encoding.UTF8.GetBytes(row.GetProperty("scene").GetRawText()));
            Assert.Empty(Differences(expected.Scene, scene.Scene!));
            double landing = row.GetProperty("bank").GetProperty("landingDiamonds").GetDouble();
            Assert.Equal(expected.Bank!.LandingDiamonds!.Value, landing);
        }
    }

    [Fact]
    public void The_json_marks_two_things_changed_as_a_whole_and_row_by_row()
    {
        Contrast contrast = Run(
            Alone, Hold.Stick, Vary("stroke.speed", "2.2", "4.4"), Vary("stroke.tip.right", "0", "1/8 tip"));
        using var document = JsonDocument.Parse(ContrastWriter.ToUtf8(contrast));

        Assert.Equal("two things changed", document.RootElement.GetProperty("mark").GetString());
        JsonElement rows = document.RootElement.GetProperty("rows");
        Assert.Equal(
            [null, null, null, "two things changed"],
            rows.EnumerateArray().Select(row => row.GetProperty("mark").GetString()));
    }
}
