using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace Longrail.Cli.Tests.Contrasts;

public sealed class ContrastVerbTests : IDisposable
{
    private const string Scene = """
        {
          "title": "Cue ball off the left cushion\u001b[31m",
          "table": { "pockets": "none" },
          "balls": [ { "id": "cue", "x": 0.8, "y": 0.4 } ],
          "stroke": { "aim": "60 deg", "speed": 2.2 }
        }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-contrast-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_comparison_of_three_speeds_is_a_table_with_the_base_first()
    {
        (int exit, string output, string error) = Run(
            "contrast", "-", "--vary", "stroke.speed=1.2 m/s,2.2 m/s,4.5 m/s");

        Assert.Equal("", error);
        Assert.Equal(ExitCode.Done, exit);
        string[] lines = output.Split('\n');
        int head = Array.FindIndex(lines, line => line.Contains("lands on", StringComparison.Ordinal));
        Assert.Contains("stroke.speed", lines[head], StringComparison.Ordinal);
        Assert.StartsWith("base  2.2 m/s", lines[head + 2], StringComparison.Ordinal);
        Assert.StartsWith("A     1.2 m/s", lines[head + 3], StringComparison.Ordinal);
        Assert.StartsWith("B     4.5 m/s", lines[head + 4], StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', output);
        Assert.DoesNotContain("two things", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_negative_level_is_a_level_and_not_an_option()
    {
        (int exit, string output, string error) = Run(
            "contrast", "-", "--vary", "stroke.tip.right=-1/8 tip,0,1/8 tip", "--hold", "path");

        Assert.Equal("", error);
        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("A     -1/8 tip", output, StringComparison.Ordinal);
        Assert.Contains("Held: the line on which the cue ball leaves", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_varied_fields_are_marked_in_the_text()
    {
        (int exit, string output, _) = Run(
            "contrast", "-", "--vary", "stroke.speed=2.2,4.5", "--vary", "stroke.tip.right=0,1/8 tip");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains(
            "Varied: stroke.speed and stroke.tip.right (two things changed)", output, StringComparison.Ordinal);
        Assert.Contains("C *", output, StringComparison.Ordinal);
        Assert.Contains(
            "* two things changed: what comes out there has no single cause.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_of_the_format_contrast_1()
    {
        (int exit, string output, _) = Run("contrast", "-", "--vary", "ballSet.state=polished,dirty", "--json");

        Assert.Equal(ExitCode.Done, exit);
        using var document = JsonDocument.Parse(output);
        Assert.Equal("contrast/1", document.RootElement.GetProperty("longrail").GetString());
        Assert.Equal(3, document.RootElement.GetProperty("rows").GetArrayLength());
    }

    [Fact]
    public void A_picture_is_drawn_beside_the_table()
    {
        string picture = Path.Combine(_folder, "speeds.svg");

        (int exit, string output, _) = Run("contrast", "-", "--vary", "stroke.speed=1.2,4.5", "--picture", picture);

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("lands on", output, StringComparison.Ordinal);
        Assert.Equal("svg", XElement.Load(picture).Name.LocalName);
    }

    [Fact]
    public void No_cushion_contact_is_said_in_the_table_and_is_no_error()
    {
        (int exit, string output, _) = Run("contrast", "-", "--vary", "stroke.speed=0.1,2.2");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("A: no ball touches a cushion", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stroke.sped=1,2", "\"speed\"")]
    [InlineData("stroke.speed=1,7 mm", "level \"7 mm\"")]
    [InlineData("stroke.tip.right=0,0.9 R", "level \"0.9 R\": miscue")]
    [InlineData("stroke.speed=1,,2", "level 2 of 3 is empty")]
    [InlineData("stroke.speed", "names no field")]
    public void A_wrong_question_is_refused_before_anything_is_written(string vary, string expected)
    {
        string picture = Path.Combine(_folder, "never.svg");

        (int exit, string output, string error) = Run("contrast", "-", "--vary", vary, "--picture", picture);

        Assert.Equal(ExitCode.BadInput, exit);
        Assert.Equal("", output);
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.False(File.Exists(picture));
    }

    [Theory]
    [InlineData("nothing is varied")]
    [InlineData("3 fields are varied", "--vary", "title=a", "--vary", "notes=b", "--vary", "stroke.speed=3")]
    [InlineData("--hold: \"nose\"; allowed: stick, path", "--vary", "stroke.speed=1", "--hold", "nose")]
    [InlineData(".svg, .png or .pdf", "--vary", "stroke.speed=1", "--picture", "picture.gif")]
    [InlineData("there is no folder", "--vary", "stroke.speed=1", "--picture", "/nowhere/at/all/picture.svg")]
    public void Bad_usage_says_what_is_allowed(string expected, params string[] args)
    {
        (int exit, string output, string error) = Run(["contrast", "-", .. args]);

        Assert.Equal(ExitCode.BadInput, exit);
        Assert.Equal("", output);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    private static (int Exit, string Output, string Error) Run(params string[] args)
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(Scene));
        using var output = new MemoryStream();
        using var error = new StringWriter();
        int exit = LongrailApp.Run(args, new ProgramStreams(input, output, error, CancellationToken.None));
        return (exit, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
