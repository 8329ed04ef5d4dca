using System.Globalization;
using System.Text;
using CsCheck;
using Longrail.Coaching.Effects;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Effects;

/// <summary>Whatever is on the table: a budget with finite numbers that add up, or a reason in words.</summary>
public class AnySceneTests
{
    private static readonly Gen<string> _scene =
        from pockets in Gen.Bool
        from count in Gen.Int[1, 4]
        from places in Gen.Select(Gen.Double[0.1, 2.44], Gen.Double[0.1, 1.17]).Array[4]
        from aim in Gen.Double[-180, 180]
        from speed in Gen.Double[0.3, 7]
        from right in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.35, 0.35])
        from above in Gen.Double[-0.35, 0.35]
        from elevation in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 40])
        select Text(pockets, places[..count], aim, speed, right, above, elevation);

    [Fact]
    public void There_is_a_budget_that_adds_up_or_a_reason()
    {
        int budgets = 0;
        _scene.Sample(
            text =>
            {
                // Balls that overlap are refused before; that is not what is asked here.
                if (SceneReader.ReadReady(Encoding.UTF8.GetBytes(text)).Ready is not { } ready)
                    return;
                EffectsAnswer answer = EffectsRunner.Run(ready, null, TestContext.Current.CancellationToken);
                if (answer.Budget is not { } budget)
                {
                    Assert.NotEmpty(Assert.Single(answer.Errors).Problem);
                    return;
                }

                Interlocked.Increment(ref budgets);
                double parts = budget.Effects.Sum(effect => effect.Metres);
                Assert.True(double.IsFinite(budget.Total + budget.Remainder + budget.Interplay), text);
                // A way that runs almost along its target line has parts of many metres; rounding goes with them.
                double size = 1 + budget.Effects.Sum(effect => Math.Abs(effect.Metres)) + Math.Abs(budget.Remainder);
                Assert.Equal(budget.Total, parts + budget.Remainder, 1e-11 * size);
                Assert.NotEmpty(EffectSentence.Of(budget));
                Assert.True(EffectsWriter.ToUtf8(budget).Length > 0);
            },
            iter: 60);

        Assert.True(budgets > 30, $"{budgets} budgets of 60: too few to say anything.");
    }

    private static string Text(
        bool pockets, (double X, double Y)[] places, double aim, double speed, double right, double above,
        double elevation)
    {
        string balls = string.Join(", ", places.Select((place, k) => string.Create(
            CultureInfo.InvariantCulture,
            $$"""{ "id": "{{(k == 0 ? "cue" : k)}}", "x": {{place.X:R}}, "y": {{place.Y:R}} }""")));
        return string.Create(CultureInfo.InvariantCulture, $$"""
            { "table": { "pockets": "{{(pockets ? "standard" : "none")}}" }, "balls": [ {{balls}} ],
              "stroke": {
                "ball": "cue", "aim": "{{aim:R}} deg", "speed": {{speed:R}}, "elevation": "{{elevation:R}} deg",
                "tip": { "right": "{{right:R}} R", "above": "{{above:R}} R" } } }
            """);
    }
}
