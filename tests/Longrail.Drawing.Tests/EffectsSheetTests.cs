using System.Globalization;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Longrail.Coaching.Effects;
using Longrail.Drawing.Svg;
using Longrail.Scenes.Reading;
using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests;

public class EffectsSheetTests
{
    public static TheoryData<string> Names() =>
        [.. Directory.GetFiles(Path.Combine(Root(), "scenes"), "*.json").Order(StringComparer.Ordinal)
            .Select(f => Path.GetFileName(f)!)];

    [Fact]
    public void A_bank_off_one_cushion_looks_as_approved() =>
        Snapshot.Matches(EffectsPicture.Draw(Budget("first-bank.json"), EffectUnit.Diamonds, "pool-9ft"));

    [Fact]
    public void A_cut_into_a_pocket_looks_as_approved() =>
        Snapshot.Matches(EffectsPicture.Draw(Budget("corner-cut-dirty.json"), EffectUnit.Millimetres, "pool-9ft"));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_budget_of_every_scene_of_the_repository_is_drawn_soundly(string name)
    {
        EffectBudget budget = Budget(name);
        string picture = EffectsPicture.Draw(budget, EffectUnit.Millimetres, "a table", new DateOnly(2026, 11, 25));

        XElement root = SvgReading.Sound(picture);
        Assert.Contains(SvgReading.All(root, "text"), t => t.Value.EndsWith("2026-11-25", StringComparison.Ordinal));
        SvgReading.Sound(EffectsPicture.DrawSteps(budget));
    }

    [Fact]
    public void Every_cause_has_its_name_and_its_number_and_long_is_filled_where_short_is_hatched()
    {
        EffectBudget budget = Budget("first-bank.json");
        XElement root = SvgReading.Sound(EffectsPicture.Draw(budget));
        string[] words = [.. SvgReading.Within(root, "steps", "text").Select(t => t.Value)];
        foreach (EffectShare effect in budget.Effects)
        {
            Assert.Contains(EffectNames.Of(effect.Kind, budget), words);
            Assert.Contains(
                EffectNames.WithSign(effect.Metres / budget.Target.Diamond, EffectUnit.Diamonds), words);
        }

        int longer = budget.Effects.Count(e => Math.Round(e.Metres / budget.Target.Diamond, 2) > 0);
        int shorter = budget.Effects.Count(e => Math.Round(e.Metres / budget.Target.Diamond, 2) < 0);
        XElement[] bars = [.. SvgReading.Within(root, "steps", "rect")];
        Assert.Equal(longer, bars.Count(bar => (string?)bar.Attribute("stroke") == Ink.Colours[0]));
        Assert.Equal(shorter, bars.Count(bar => (string?)bar.Attribute("stroke") == Ink.Colours[1]));
        IEnumerable<XElement> hatchings = SvgReading.Within(root, "steps", "path");
        Assert.Equal(shorter, hatchings.Count(path => (string?)path.Attribute("stroke") == Ink.Colours[1]));
    }

    [Fact]
    public void The_steps_follow_on_each_other_from_the_mirror_to_the_shot()
    {
        EffectBudget budget = Budget("straight-bank-left.json");
        XElement root = SvgReading.Sound(EffectsPicture.DrawSteps(budget));
        XElement[] bars = [.. SvgReading.Within(root, "steps", "rect")];
        double Low(XElement bar) => Number(bar, "x");
        double High(XElement bar) => Number(bar, "x") + Number(bar, "width");

        // The last bar is the shot's: from the mirror to where the steps end. A step that shows as 0 has no bar, and
        // may still move on by less than half of the last digit: 3 units here.
        XElement shot = bars[^1];
        for (int k = 1; k < bars.Length - 1; k++)
        {
            double[] ends = [Low(bars[k - 1]), High(bars[k - 1])];
            Assert.Contains(ends, end => Math.Abs(end - Low(bars[k])) < 3 || Math.Abs(end - High(bars[k])) < 3);
        }

        Assert.Contains((double[])[Low(shot), High(shot)], end =>
            Math.Abs(end - Low(bars[^2])) < 3 || Math.Abs(end - High(bars[^2])) < 3);
    }

    private static double Number(XElement element, string name) =>
        double.Parse((string)element.Attribute(name)!, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static EffectBudget Budget(string name) => EffectsRunner.Run(
        SceneReader.ReadReady(File.ReadAllBytes(Path.Combine(Root(), "scenes", name))).Ready!, null,
        TestContext.Current.CancellationToken).Budget!;

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", ".."));
}
