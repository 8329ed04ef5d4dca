using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Longrail.Coaching.Trials;
using Longrail.Drawing.Trials;

namespace Longrail.Drawing.Tests;

public partial class TrialPictureTests
{
    private static readonly TrialPlan _plan =
        TrialPlanForm.Read(File.ReadAllBytes(Repository("clean-or-dirty.plan.json"))).Plan!;

    [Theory]
    [InlineData(Paper.A4, 2100, 2970)]
    [InlineData(Paper.Letter, 2159, 2794)]
    public void A_sheet_is_sound_and_as_large_as_its_paper(Paper paper, double width, double height)
    {
        TrialPlan plan = _plan with { Looks = [20, 40], MostShots = 60 };
        IReadOnlyList<string> pages = TrialSheetPicture.Draw(plan, paper);
        Assert.Equal(2, pages.Count);
        Assert.Equal(pages, TrialSheetPicture.Draw(plan, paper));
        Assert.All(pages, page =>
        {
            XElement root = SvgReading.Sound(page);
            XElement frame = SvgReading.All(root, "rect").First();
            Assert.Equal((width, height), (SvgReading.Value(frame, "width"), SvgReading.Value(frame, "height")));
            // Every row's rule lies above the foot.
            Assert.All(SvgReading.Within(root, "rows", "text"), text =>
                Assert.InRange(SvgReading.Value(text, "y"), 0, height - 180));
        });
    }

    [Fact]
    public void Every_shot_has_one_row_and_the_order_is_the_plans()
    {
        TrialPlan plan = _plan with { Looks = [30, 60], MostShots = 60 };
        XElement[] pages = [.. TrialSheetPicture.Draw(plan, Paper.A4).Select(SvgReading.Sound)];
        string[] words =
            [.. pages.SelectMany(page => SvgReading.Within(page, "rows", "text")).Select(text => text.Value)];
        Assert.Equal(
            Enumerable.Range(1, 120), words.Where(word => int.TryParse(word, out _)).Select(int.Parse));
        Assert.Equal(
            TrialSchedule.Of(plan).Select(turn => plan.Conditions[turn.Condition].Label),
            words.Where(word => word is "A" or "B"));
        Assert.Single(words, "look 1 of 2");
    }

    // A colour whose channels lie within 32 of 255 prints as a grey that is told from white by its lightness alone.
    [Fact]
    public void A_sheet_is_printed_in_black_and_grey()
    {
        foreach (Match colour in Colour().Matches(TrialSheetPicture.Draw(_plan, Paper.A4)[0]))
        {
            int[] channels =
            [
                .. Enumerable.Range(0, 3).Select(k =>
                    int.Parse(colour.Value.AsSpan(1 + 2 * k, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture)),
            ];
            Assert.True(channels.Max() - channels.Min() <= 32, colour.Value);
        }
    }

    [Fact]
    public void A_plan_without_shots_has_no_sheet() =>
        Assert.Throws<ArgumentException>(() => TrialSheetPicture.Draw(_plan with { Looks = [] }, Paper.A4));

    [Fact]
    public void A_result_shows_every_shot_with_the_mark_of_its_condition()
    {
        TrialResult result = TrialWeigher.Weigh(File.ReadAllBytes(Repository("clean-or-dirty.csv")), _plan).Result!;
        XElement root = SvgReading.Sound(TrialResultPicture.Draw(result));
        // One mark more of each kind in the legend.
        Assert.Equal(1
            + result.Shots.Count(shot => shot.Condition == 0), SvgReading.Within(root, "shots", "circle").Count());
        Assert.Equal(1
            + result.Shots.Count(shot => shot.Condition == 1), SvgReading.Within(root, "shots", "rect").Count());
        string[] words = [.. SvgReading.Within(root, "differences", "text").Select(text => text.Value)];
        Assert.Contains("as it stands", words);
        Assert.Contains("at the same speed", words);
        Assert.Contains("expected by the physics", words);
    }

    [Fact]
    public void Results_without_speeds_or_of_makes_alone_are_drawn_too()
    {
        TrialResult makes = TrialWeigher.Weigh("condition,made\nold,1\nold,0\nnew,1\nnew,1\n"u8, null).Result!;
        Assert.NotEmpty(SvgReading.Within(SvgReading.Sound(TrialResultPicture.Draw(makes)), "makes", "text"));
        TrialResult landings = TrialWeigher.Weigh("condition,landing_mm\na,1\nb,1\na,1\nb,1\n"u8, null).Result!;
        Assert.NotEmpty(SvgReading.Within(SvgReading.Sound(TrialResultPicture.Draw(landings)), "shots", "circle"));
    }

    [Theory]
    [InlineData(0, 100, "0,20,40,60,80,100")]
    [InlineData(-0.03, 0.11, "-0.02,0.00,0.02,0.04,0.06,0.08,0.10")]
    [InlineData(5, 5, "4.6,4.8,5.0,5.2,5.4")]
    public void Ticks_stand_at_round_numbers(double low, double high, string ticks) =>
        Assert.Equal(ticks, string.Join(',', new PlotAxis([low, high], 0, 1000).Ticks().Select(tick => tick.Text)));

    private static string Repository(string name, [CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", "scenes", "trials", name));

    [GeneratedRegex("#[0-9a-f]{6}\\b")]
    private static partial Regex Colour();
}
