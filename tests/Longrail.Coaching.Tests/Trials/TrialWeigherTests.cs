using System.Globalization;
using System.Text;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;
using Longrail.Scenes.Trials;
using MathNet.Numerics.Random;
using Normal = MathNet.Numerics.Distributions.Normal;

namespace Longrail.Coaching.Tests.Trials;

public class TrialWeigherTests
{
    private static readonly TrialPlan _plan = TrialScenes.Plan with { Looks = [20], UsesSpeed = true };

    [Fact]
    public void The_guides_results_are_weighed()
    {
        byte[] table = File.ReadAllBytes(Path.Combine(TrialScenes.Root(), "scenes", "trials", "clean-or-dirty.csv"));
        byte[] file =
            File.ReadAllBytes(Path.Combine(TrialScenes.Root(), "scenes", "trials", "clean-or-dirty.plan.json"));
        TrialResult result = TrialWeigher.Weigh(table, TrialPlanForm.Read(file).Plan!).Result!;
        WeighedComparison comparison = Assert.Single(result.Comparisons);
        Assert.Equal(TrialVerdict.Differs, comparison.Verdict);
        // The figures of the analysis itself, from the same table.
        TrialShot[] a = [.. result.Shots.Where(shot => shot.Condition == 0)];
        TrialShot[] b = [.. result.Shots.Where(shot => shot.Condition == 1)];
        Ancova ancova = Ancova.Of([Pairs(a), Pairs(b)])!;
        Assert.Equal(ancova.Difference(1, 0).Difference, comparison.Adjusted!.Value, 1e-12);
        Assert.Equal(ancova.EqualSlopes!.Value.P, comparison.EqualSlopes!.Value, 1e-12);
        Assert.Equal(b.Average(s => s.Landing!.Value) - a.Average(s => s.Landing!.Value), comparison.Unadjusted!.Value,
            1e-12);
        Assert.NotNull(comparison.Permutation);
        Assert.Contains("With this player, table and shot", result.Sentences[0], StringComparison.Ordinal);
    }

    // 400 trials as planned with no difference, speeds drifting apart, 5 % of false alarms: 20, deviation 4.4, four of
    // them.
    [Fact]
    public void False_alarms_and_coverage_are_as_promised_though_the_speeds_differ()
    {
        var random = new MersenneTwister(21);
        int alarms = 0;
        int held = 0;
        for (int trial = 0; trial < 400; trial++)
        {
            TrialResult result =
                TrialWeigher.Weigh(Table(random, _plan, 20, difference: 0, harder: 0.3), _plan).Result!;
            WeighedComparison comparison = result.Comparisons[0];
            if (comparison.Verdict == TrialVerdict.Differs) alarms++;
            if (comparison.Adjusted!.Within.Holds(0)) held++;
        }

        Assert.InRange(alarms, 20 - 18, 20 + 18);
        Assert.Equal(400, alarms + held);
    }

    // As they stand the same trials would deceive: 0.3 m/s at 100 mm for 1 m/s is 30 mm, 1.1 deviations of 27 mm.
    [Fact]
    public void Without_evening_out_the_same_trials_would_deceive()
    {
        var random = new MersenneTwister(21);
        TrialPlan plan = _plan with { UsesSpeed = false };
        int alarms = Enumerable.Range(0, 40).Count(_ => TrialWeigher
            .Weigh(Table(random, plan, 20, difference: 0, harder: 0.3),
                plan).Result!.Comparisons[0].Verdict == TrialVerdict.Differs);
        Assert.True(alarms > 20, $"{alarms}");
    }

    // The planned power: the plan's numbers against simulated trials with the difference and scatter that it expects.
    // 80 % of 300 is 240, deviation 6.9, four of them.
    [Fact]
    public void A_difference_as_expected_is_seen_as_often_as_planned()
    {
        const double Scatter = 0.05;
        int shots = ShotsNeeded.ForMeans(0.04 / Scatter, 0.8);
        shots += shots % 2;
        double power = ShotsNeeded.PowerForMeans(shots, 0.04 / Scatter);
        TrialPlan plan = _plan with { Looks = [shots], UsesSpeed = false };
        var random = new MersenneTwister(5);
        int seen = Enumerable.Range(0, 300).Count(_ => TrialWeigher
            .Weigh(Table(random, plan, shots, 0.04, 0, slope: 0, scatter: Scatter), plan).Result!
            .Comparisons[0].Verdict == TrialVerdict.Differs);
        Assert.InRange(seen, 300 * power - 28, 300 * power + 28);
    }

    // That these limits keep the false alarms, also with Student's test, is simulated in GroupSequentialTests.
    [Theory]
    [InlineData(14)]
    [InlineData(28)]
    [InlineData(42)]
    public void Each_planned_look_has_the_limit_of_its_rule(int each)
    {
        TrialPlan plan = _plan with { Looks = [14, 28, 42], Rule = StoppingRule.Pocock };
        TrialResult result = TrialWeigher.Weigh(Table(new MersenneTwister(8), plan, each, 0, 0), plan).Result!;
        // Three equal looks: S. J. Pocock, Biometrika 64, 191 (1977), nominal level 0.0221.
        Assert.Equal(1 - 0.0221, result.Confidence, 0.00005);
        Assert.Equal(each / 14, result.Look);
        bool isPast = result.Comparisons[0].Adjusted!.P < 1 - result.Confidence;
        Assert.Equal(isPast, result.Comparisons[0].Verdict == TrialVerdict.Differs);
    }

    [Fact]
    public void A_look_that_was_not_planned_is_refused_with_the_reason()
    {
        var random = new MersenneTwister(1);
        TrialResultAnswer answer = TrialWeigher.Weigh(Table(random, _plan, 12, 0.2, 0), _plan);
        Assert.Null(answer.Result);
        Assert.Contains("12 of A, 12 of B: the plan is 20 of each and has no look before", answer.Refusal!,
            StringComparison.Ordinal);
        // Armitage, McPherson and Rowe (1969): ten looks, 19 %.
        Assert.Contains("ten looks raise 5 % to 19 %", answer.Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_look_says_play_on_or_ends_the_trial()
    {
        TrialPlan plan = _plan with { Looks = [10, 20] };
        var random = new MersenneTwister(2);
        TrialResult none = TrialWeigher.Weigh(Table(random, plan, 10, 0, 0), plan).Result!;
        Assert.Equal(TrialVerdict.PlayOn, none.Comparisons[0].Verdict);
        Assert.StartsWith("Play on", none.Sentences[0], StringComparison.Ordinal);
        Assert.True(none.Confidence > 0.99);
        TrialResult great = TrialWeigher.Weigh(Table(random, plan, 10, 0.5, 0), plan).Result!;
        Assert.Equal(TrialVerdict.Differs, great.Comparisons[0].Verdict);
        Assert.Contains("12 of A", TrialWeigher.Weigh(Table(random, plan, 12, 0.5, 0), plan).Refusal!,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Shots_beyond_the_plan_are_left_out()
    {
        var random = new MersenneTwister(3);
        TrialTable table = Table(random, _plan with { Looks = [26] }, 26, 0.1, 0);
        TrialResult result = TrialWeigher.Weigh(table, _plan).Result!;
        Assert.Equal(40, result.Shots.Count);
        Assert.Contains(result.Notes, note => note.StartsWith("12 shots beyond", StringComparison.Ordinal));
        Assert.Equal(TrialWeigher.Weigh(Until(table, 20), _plan).Result!.Sentences, result.Sentences);
    }

    [Fact]
    public void Without_a_plan_there_is_an_estimate_and_no_verdict()
    {
        var random = new MersenneTwister(4);
        TrialResult result = TrialWeigher.Weigh(Table(random, _plan, 20, 0.5, 0), null).Result!;
        Assert.Equal(TrialVerdict.NoPlan, result.Comparisons[0].Verdict);
        Assert.StartsWith("An estimate, not a verdict", result.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_few_shots_say_nothing()
    {
        var random = new MersenneTwister(4);
        TrialResult result = TrialWeigher.Weigh(Table(random, _plan, 8, 0.5, 0), null).Result!;
        Assert.Equal(TrialVerdict.TooFew, result.Comparisons[0].Verdict);
        Assert.Contains("too few", result.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void No_difference_is_not_claimed_to_be_none()
    {
        var random = new MersenneTwister(6);
        TrialResult result = TrialWeigher.Weigh(Table(random, _plan, 20, 0.005, 0), _plan).Result!;
        Assert.Equal(TrialVerdict.CannotTell, result.Comparisons[0].Verdict);
        Assert.StartsWith("Cannot tell", result.Sentences[0], StringComparison.Ordinal);
        Assert.Contains("it may be none, but the", result.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_played_otherwise_than_drawn_is_told()
    {
        var random = new MersenneTwister(7);
        TrialTable table = Table(random, _plan, 20, 0.1, 0.3);
        TrialShot[] swapped = [.. table.Shots.Select(s => s.Number <= 2 ? s with { Number = 3 - s.Number } : s)];
        TrialResult result = TrialWeigher.Weigh(table with { Shots = swapped }, _plan).Result!;
        Assert.Contains(result.Notes, note =>
            note.Contains("not played in the order of the sheet", StringComparison.Ordinal));
        Assert.Contains(result.Notes, note => note.Contains("harder than A", StringComparison.Ordinal));
    }

    [Fact]
    public void Unequal_slopes_are_told()
    {
        var random = new MersenneTwister(9);
        TrialTable table = Table(random, _plan, 20, 0.1, 0);
        TrialShot[] steep =
            [.. table.Shots.Select(s => s.Condition == 1 ? s with { Landing = s.Landing + 0.5 * (s.Speed - 2.5) } : s)];
        TrialResult result = TrialWeigher.Weigh(table with { Shots = steep }, _plan).Result!;
        Assert.True(result.Comparisons[0].EqualSlopes < 0.05);
        Assert.Contains(result.Notes, note => note.Contains("does not move A and B alike", StringComparison.Ordinal));
    }

    [Fact]
    public void Makes_are_weighed_by_newcombes_interval()
    {
        TrialPlan plan = _plan with { Measure = TrialMeasure.Made, Looks = [50], UsesSpeed = false };
        TrialTurn[] turns = [.. TrialSchedule.Of(plan)];
        int[] left = [40, 30];
        var text = new StringBuilder("shot,condition,made\n");
        foreach (TrialTurn turn in turns)
            text.Append(CultureInfo.InvariantCulture,
                $"{turn.Shot},{"AB"[turn.Condition]},{(left[turn.Condition]-- > 0 ? 1 : 0)}\n");
        TrialResult result = TrialWeigher.Weigh(Encoding.UTF8.GetBytes(text.ToString()), plan).Result!;
        // 40 of 50 against 30 of 50: .020 to .364, Fisher .0486 (recomputed).
        Assert.Equal(-.364, result.Comparisons[0].Made!.Within.Low, 0.0006);
        Assert.Equal(-.020, result.Comparisons[0].Made!.Within.High, 0.0006);
        Assert.Equal(.0486, result.Comparisons[0].Made!.P, 0.00005);
        Assert.Contains("20 times in 100 less often", result.Sentences[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("condition,made\nA,1\nB,0\n", "landing_mm")]
    [InlineData("condition,landing_mm\nA,1200\nB,1300\n", "speed_mps")]
    [InlineData("condition,landing_mm,speed_mps\nA,1200,2\nA,1300,2\n", "0 of B")]
    public void What_the_plan_needs_must_be_there(string text, string told)
    {
        TrialResultAnswer answer = TrialWeigher.Weigh(Encoding.UTF8.GetBytes(text), _plan);
        Assert.Null(answer.Result);
        Assert.Contains(told, string.Join('\n', answer.Errors) + answer.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void One_condition_alone_is_no_comparison() =>
        Assert.NotEmpty(TrialWeigher.Weigh("condition,made\nA,1\nA,0\n"u8, null).Errors);

    /// <summary>A trial as it might be written down: landings about 1.25 m, steeper with speed.</summary>
    private static TrialTable Table(
        MersenneTwister random, TrialPlan plan, int each, double difference, double harder, double slope = 0.1,
        double scatter = 0.025)
    {
        var shots = new List<TrialShot>();
        foreach (TrialTurn turn in TrialSchedule.Of(plan.Order, 2, each, plan.Seed))
        {
            double speed = 2.5 + harder * turn.Condition + 0.1 * Normal.InvCDF(0, 1, random.NextDouble());
            double landing = 1.25 + difference * turn.Condition + slope * (speed - 2.5)
                + scatter * Normal.InvCDF(0, 1, random.NextDouble());
            shots.Add(new TrialShot(turn.Shot + 1, turn.Shot, turn.Condition, landing, speed, null));
        }

        return new TrialTable(["clean", "dirty"], shots, true, true, false, false);
    }

    private static TrialTable Until(TrialTable table, int each) =>
        table with { Shots = [.. table.Shots.Take(2 * each)] };

    private static CovariatePair[] Pairs(TrialShot[] shots) =>
        [.. shots.Select(shot => new CovariatePair(shot.Speed!.Value, shot.Landing!.Value))];
}
