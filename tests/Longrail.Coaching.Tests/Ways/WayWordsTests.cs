using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Tests.Ways;

public sealed class WayWordsTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData("", "", PocketName.FootLeft, "cut into foot-left")]
    [InlineData("", "right", PocketName.LeftSide, "cross-side bank off right into left-side")]
    [InlineData("", "left", PocketName.FootRight, "cross-corner bank off left into foot-right")]
    [InlineData("", "foot", PocketName.HeadRight, "long-rail bank off foot into head-right")]
    [InlineData("", "head", PocketName.LeftSide, "bank along the table off head into left-side")]
    [InlineData("", "left,foot", PocketName.RightSide, "two-rail bank off left and foot into right-side")]
    [InlineData("", "left,right", PocketName.LeftSide, "two-rail bank off left and right into left-side")]
    [InlineData("", "left,foot,right", PocketName.HeadLeft, "three-rail bank off left, foot and right into head-left")]
    [InlineData("foot", "", PocketName.HeadLeft, "kick off foot, cut into head-left")]
    [InlineData("foot,left", "right", PocketName.LeftSide, "kick off foot and left, cross-side bank off right into left-side")]
    [InlineData("", "foot", PocketName.FootRight, "bank off foot into foot-right")]
    [InlineData("", "left", PocketName.HeadLeft, "bank off left into head-left")]
    public void Routes_are_named_as_players_name_them(string kick, string bank, PocketName pocket, string words) =>
        Assert.Equal(words, WayWords.Of(new WayRoute(Cushions(kick), Cushions(bank), pocket), cut: 20 * Degree));

    [Fact]
    public void A_pot_without_a_cut_is_straight() => Assert.Equal(
        "straight pot into foot-left", WayWords.Of(FoundWays.Pot(PocketName.FootLeft), cut: -0.2 * Degree));

    // Trade article: a crossing bank is cut against the side to which the bank travels, so the cue ball goes over its
    // line; a natural one is cut towards it.
    [Theory]
    [InlineData(80, 100, CushionName.Left, false)]
    [InlineData(120, 100, CushionName.Left, true)]
    [InlineData(-80, -100, CushionName.Right, false)]
    [InlineData(-120, -100, CushionName.Right, true)]
    [InlineData(-10, 10, CushionName.Foot, false)]
    [InlineData(170, 190, CushionName.Head, false)]
    [InlineData(210, 190, CushionName.Head, true)]
    public void A_bank_cut_against_its_way_is_crossing(double cue, double ball, CushionName cushion, bool crossing) =>
        Assert.Equal(crossing, WayWords.IsCrossing(Vec2.FromAngle(cue * Degree), Vec2.FromAngle(ball * Degree), cushion));

    [Fact]
    public void A_full_hit_or_a_bank_straight_in_is_neither()
    {
        Assert.Null(WayWords.IsCrossing(Vec2.FromAngle(100 * Degree), Vec2.FromAngle(100 * Degree), CushionName.Left));
        Assert.Null(WayWords.IsCrossing(Vec2.FromAngle(80 * Degree), Vec2.FromAngle(90 * Degree), CushionName.Left));
    }

    // Computed from v^2 = 2 mu g d with mu 0.01: one length of a nine-foot table takes 0.71 m/s, two take 1.00.
    [Theory]
    [InlineData(0.71, 1)]
    [InlineData(1.00, 2)]
    public void Speed_is_told_in_table_lengths_of_roll(double speed, double lengths)
    {
        // Half of the last digit given moves the length by two parts of speed.
        double digits = 2 * 0.005 / speed * lengths;
        Assert.Equal(lengths, StrokeWords.TableLengths(speed, TestKit.TestEquipment.Plain), digits);
    }

    [Fact]
    public void A_shift_of_the_shaft_by_an_eighth_of_a_tip_is_told_as_one()
    {
        CueSpec cue = TestKit.TestEquipment.Plain.Cue;
        double radius = TestKit.TestEquipment.R;
        double right = TipContact.ContactOffset(cue.TipDiameter / 8, radius, cue);
        double above = TipContact.ContactOffset(-cue.TipDiameter / 4, radius, cue);
        var stroke = new Stroke(0, 2, right, above, 0);

        Assert.Equal("2.0 below, 1.0 right", StrokeWords.TipInEighths(stroke, radius, cue));
        Assert.Equal("0.3 below, 0.1 right", StrokeWords.TipInTips(stroke, radius, cue));
        // b/R of an eighth: 13 mm/8 over 28.575 + 10.6 mm.
        Assert.Equal("0.08 R below, 0.04 R right", StrokeWords.TipInRadii(stroke, radius));
        Assert.Equal("centre", StrokeWords.TipInTips(new Stroke(0, 2, 0, 0, 0), radius, cue));
    }

    [Fact]
    public void Every_limit_and_reason_has_words_of_its_own()
    {
        string[] limits = [.. Enum.GetValues<LeewayLimit>().Select(limit => WayWords.Of(new LeewaySide(0, limit)))];
        Assert.Equal(limits.Length, limits.Distinct().Count());
        Assert.Equal(Enum.GetValues<LeewayLimit>().Length, WaysTerms.Limits.Count);
        string[] reasons =
        [
            .. Enum.GetValues<NoWayReason>().Select(reason => WayWords.Of(new NoWay(FoundWays.Pot(default), reason))),
        ];
        Assert.Equal(reasons.Length, reasons.Distinct().Count());
        Assert.Equal(Enum.GetValues<NoWayReason>().Length, WaysTerms.Reasons.Count);
        Assert.Equal(Enum.GetValues<WaysOrder>().Length, WaysTerms.Orders.Count);
    }

    [Fact]
    public void Cautions_that_differ_in_a_number_only_are_told_once() => Assert.Equal(
        "goes in at 4.9 to 10.2 m/s", CautionGroup.TextOf(["goes in at 5.1 m/s", "goes in at 10.2 m/s", "goes in at 4.9 m/s"]));

    private static CushionName[] Cushions(string list) =>
        [.. list.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(Scenes.TableWords.Cushion)];
}
