using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;

namespace Longrail.Coaching.Tests.Trials;

public class TrialPlannerTests
{
    [Fact]
    public void A_player_without_errors_shows_what_the_contrast_shows()
    {
        Player machine = PlayerPresets.Default with { Aim = 0, Speed = 0, TipAcross = 0, TipUp = 0, Elevation = 0 };
        TrialRequest request = TrialScenes.Request() with { Player = machine, Strokes = 100 };
        TrialPlan plan = TrialScenes.Answer(request).Plan!;
        Contrast contrast = ContrastRunner.Run(new ContrastRequest(request.Scene, [request.Variation])).Contrast!;
        // The same shots, played a hundred times: means of equal numbers.
        Assert.Equal(contrast.Rows[1].Change!.Metres, plan.Needs[0].Effect, 1e-12);
        Assert.Equal(request.LandingReading, plan.Conditions[0].Spread!.Value, 1e-12);
        Assert.Equal(1, plan.Conditions[0].Made!.Value.Share);
    }

    // Trade knowledge and the golden tables of throw: dirty balls throw more, which widens this bank, and it misses
    // long.
    [Fact]
    public void Dirty_balls_land_farther_and_make_less()
    {
        TrialPlan plan = TrialScenes.Plan;
        Assert.True(plan.Needs.First(n => n.Measure == TrialMeasure.Landing).Effect > 0.05);
        Assert.True(plan.Needs.First(n => n.Measure == TrialMeasure.Made).Effect < 0);
        Assert.True(plan.IsAffordable);
        Assert.Equal(TrialMeasure.Landing, plan.Measure);
    }

    [Fact]
    public void Distance_needs_fewer_shots_than_makes()
    {
        TrialPlan plan = TrialScenes.Plan;
        int landing = plan.Needs.First(n => n.Measure == TrialMeasure.Landing && !n.UsesSpeed).Shots;
        int made = plan.Needs.First(n => n.Measure == TrialMeasure.Made).Shots;
        Assert.True(2 * landing < made, $"{landing} and {made}");
    }

    [Fact]
    public void The_needs_are_those_of_the_formulas()
    {
        TrialPlan plan = TrialScenes.Plan;
        TrialNeed landing = plan.Needs.First(n => n.Measure == TrialMeasure.Landing && !n.UsesSpeed);
        int shots = ShotsNeeded.ForMeans(landing.Effect / landing.Spread!.Value, plan.Power, plan.Level);
        // Strokes without a landing are played in addition.
        Assert.InRange(landing.Shots, Math.Max(TrialPlanner.FewestLandings, shots),
            Math.Max(TrialPlanner.FewestLandings, shots + 1));
        TrialNeed made = plan.Needs.First(n => n.Measure == TrialMeasure.Made);
        Assert.Equal(
            Math.Ceiling(ShotsNeeded.ForChances(
                plan.Conditions[0].Made!.Value.Share, plan.Conditions[1].Made!.Value.Share, plan.Power, plan.Level)),
            made.Shots);
    }

    [Fact]
    public void The_same_seed_plans_the_same()
    {
        string first = System.Text.Encoding.UTF8.GetString(TrialPlanForm.ToUtf8(TrialScenes.Plan));
        string second =
            System.Text.Encoding.UTF8.GetString(TrialPlanForm.ToUtf8(TrialScenes.Answer(TrialScenes.Request()).Plan!));
        Assert.Equal(first, second);
    }

    [Fact]
    public void A_plan_is_read_back_as_it_was_written()
    {
        byte[] text = TrialPlanForm.ToUtf8(TrialScenes.Plan);
        TrialPlanAnswer answer = TrialPlanForm.Read(text);
        Assert.Empty(answer.Errors);
        Assert.Equal(text, TrialPlanForm.ToUtf8(answer.Plan!));
    }

    [Fact]
    public void When_no_affordable_number_will_do_it_says_what_would()
    {
        TrialPlan plan = TrialScenes.Answer(
            TrialScenes.Request() with { Measure = TrialMeasure.Made, MostShots = 40 }).Plan!;
        Assert.False(plan.IsAffordable);
        Assert.Equal(0, plan.Shots);
        string advice = string.Join('\n', plan.Advice);
        Assert.Contains("40 shots of each will not do", advice, StringComparison.Ordinal);
        Assert.Contains("Measure where the ball lands", advice, StringComparison.Ordinal);
        Assert.Contains("ramp", advice, StringComparison.Ordinal);
        Assert.Empty(TrialSchedule.Of(plan));
    }

    [Fact]
    public void A_difference_of_speeds_is_not_evened_out_by_the_speed()
    {
        TrialPlan plan = TrialScenes.Answer(TrialScenes.Request("stroke.speed", "2.2 m/s", "3 m/s")).Plan!;
        Assert.False(plan.UsesSpeed);
        Assert.DoesNotContain(plan.Needs, need => need.UsesSpeed);
        Assert.Contains(plan.Advice, advice => advice.Contains("cannot be evened out", StringComparison.Ordinal));
    }

    [Fact]
    public void Several_comparisons_share_the_false_alarms()
    {
        TrialPlan two =
            TrialScenes.Answer(
                TrialScenes.Request("ballSet.state", "polished", "clean") with { MostShots = 500 }).Plan!;
        TrialPlan three = TrialScenes.Answer(
            TrialScenes.Request("ballSet.state", "polished", "clean", "dirty") with { MostShots = 500 }).Plan!;
        Assert.Equal(2, three.Comparisons);
        Assert.True(three.Needs[0].Shots > two.Needs[0].Shots);
    }

    [Fact]
    public void Looks_cost_shots_and_end_with_the_last()
    {
        TrialRequest request =
            TrialScenes.Request("ballSet.state", "polished", "clean") with { MostShots = 500, Looks = 4 };
        TrialPlan obrien = TrialScenes.Answer(request).Plan!;
        TrialPlan pocock = TrialScenes.Answer(request with { Rule = StoppingRule.Pocock }).Plan!;
        Assert.Equal(4, obrien.Looks.Count);
        Assert.Equal(obrien.Shots, obrien.Looks[^1]);
        Assert.All(obrien.Looks, look => Assert.Equal(0, look % 2));
        Assert.True(pocock.Shots > obrien.Shots);
    }

    [Theory]
    [InlineData("ballSet.state", new[] { "clean", "clean" }, "fewer than two different conditions")]
    [InlineData("ballSet.state", new[] { "filthy", "clean" }, "filthy")]
    [InlineData("ballSet.stat", new[] { "clean", "dirty" }, "unknown field")]
    public void A_question_that_is_none_is_told(string field, string[] levels, string told)
    {
        TrialPlanAnswer answer = TrialScenes.Answer(TrialScenes.Request(field, levels));
        Assert.Null(answer.Plan);
        Assert.Contains(told, string.Join('\n', answer.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public void Planning_can_be_ended_early()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => TrialPlanner.Plan(TrialScenes.Request(), null, stop.Token));
    }

    [Theory]
    [InlineData("\"measure\": \"landing\"", "\"measure\": \"lending\"",
        "measure: \"lending\" is not known; allowed: landing, made")]
    [InlineData("\"seed\"", "\"sead\"", "plan")]
    [InlineData("\"longrail\": \"trial-plan/1\"", "\"longrail\": \"scene/1\"", "is no trial's plan")]
    [InlineData("\"ball\": \"8\"", "\"ball\": 8", "ball")]
    [InlineData("\"bank\": \"8\"", "\"bunk\": \"8\"", "scene.stroke.aim")]
    public void A_plan_that_was_spoiled_is_refused(string was, string made, string told)
    {
        string text = System.Text.Encoding.UTF8.GetString(TrialPlanForm.ToUtf8(TrialScenes.Plan));
        Assert.Contains(was, text, StringComparison.Ordinal);
        TrialPlanAnswer answer =
            TrialPlanForm.Read(System.Text.Encoding.UTF8.GetBytes(text.Replace(was, made, StringComparison.Ordinal)));
        Assert.Null(answer.Plan);
        Assert.Contains(told, string.Join('\n', answer.Errors), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"longrail\": \"trial-plan/1\"")]
    public void What_is_no_plan_is_refused(string text) =>
        Assert.NotEmpty(TrialPlanForm.Read(System.Text.Encoding.UTF8.GetBytes(text)).Errors);
}
