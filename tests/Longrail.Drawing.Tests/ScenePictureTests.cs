using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;

namespace Longrail.Drawing.Tests;

/// <summary>Pictures of the repository's own scenes, played by the engine.</summary>
public partial class ScenePictureTests
{
    public static TheoryData<string> Names() =>
        [.. Directory.GetFiles(Path.Combine(Root(), "scenes"), "*.json").Order().Select(f => Path.GetFileName(f)!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_scene_of_the_repository_is_drawn_soundly_and_its_paths_stay_on_the_table(string name)
    {
        ShotPictureInput input = Input(name);

        string picture = ShotPicture.Draw(input);

        XElement root = SvgReading.Sound(picture);
        Assert.Equal(picture, ShotPicture.Draw(input));
        Assert.NotEmpty(SvgReading.Within(root, "path", "path"));
        AssertOnTable(root, input.Trace.Setup.Equipment.Table);
        SvgReading.Sound(ShotPicture.DrawPlan(input));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Three_speeds_of_every_scene_are_drawn_soundly(string name)
    {
        Variation speeds = new("stroke.speed", ["1.2 m/s", "2.5 m/s", "4.5 m/s"]);
        Contrast contrast = ContrastRunner.Run(new ContrastRequest(Scene(name), [speeds])).Contrast!;

        XElement root = SvgReading.Sound(ContrastPicture.Draw(contrast, "a table", new DateOnly(2026, 11, 25)));

        int paths = SvgReading.All(root, "g").Count(g => (string?)g.Attribute("class") == "path");
        Assert.Equal(contrast.Rows.Count, paths);
        AssertOnTable(root, contrast.Base.Trace.Setup.Equipment.Table);
        Assert.Contains(SvgReading.All(root, "text"), t => t.Value.EndsWith("2026-11-25", StringComparison.Ordinal));
        SvgReading.Sound(ContrastPicture.DrawPlan(contrast));
    }

    [Fact]
    public void Names_that_do_not_fit_the_balls_are_a_callers_mistake()
    {
        ShotPictureInput input = Input("bank-alone-firm.json");
        Assert.Throws<ArgumentException>(() => ShotPicture.Draw(input with { Names = [] }));
        Assert.Throws<ArgumentException>(() => ShotPicture.Draw(input with { StripeAxes = [null, null, null] }));
    }

    // A ball's centre stays within the outer edges of the rails, whatever happens; ticks and arrows add two
    // millimetres.
    private static void AssertOnTable(XElement root, TableSpec table)
    {
        const double Mark = 20;
        Viewport view = Sheet.Place(table);
        SvgPoint low = view.ToSheet(new TablePoint(-TablePlan.RailWidth, -TablePlan.RailWidth));
        SvgPoint high = view.ToSheet(
            new TablePoint(table.Length + TablePlan.RailWidth, table.Width + TablePlan.RailWidth));
        foreach (XElement path in SvgReading.Within(root, "path", "path"))
        {
            foreach (Match pair in Pairs().Matches((string)path.Attribute("d")!))
            {
                Assert.InRange(Number(pair.Groups[1].Value), low.X - Mark, high.X + Mark);
                Assert.InRange(Number(pair.Groups[2].Value), high.Y - Mark, low.Y + Mark);
            }
        }
    }

    private static ShotPictureInput Input(string name)
    {
        Outcome outcome = Outcome.Of(SceneCompiler.Compile(Scene(name)).Ready!);
        return new ShotPictureInput
        {
            Trace = outcome.Trace,
            Readings = outcome.Readings,
            Names = outcome.Scene.BallIds,
            StripeAxes = outcome.Scene.StripeAxes,
            Title = outcome.Scene.AsUsed.Title ?? "",
        };
    }

    private static Scene Scene(string name) =>
        SceneReader.Read(File.ReadAllBytes(Path.Combine(Root(), "scenes", name))).Scene!;

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", ".."));

    [GeneratedRegex(@"(-?[0-9.]+),(-?[0-9.]+)")]
    private static partial Regex Pairs();
}
