using System.Globalization;
using System.Text;
using Longrail.Coaching.Effects;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Effects;

/// <summary>Scenes for the tests of budgets, and ways to look into them.</summary>
internal static class EffectScenes
{
    /// <summary>Ball radius of a pool ball, metres.</summary>
    internal const double R = 0.028575;

    /// <summary>A cue ball that cuts an object ball into a bank off the left cushion of a table without pockets: the
    /// object ball's line of centres and the cut are given, the cue ball is put where both come about without
    /// squirt.</summary>
    /// <param name="way">Line of centres, degrees from +x; 90 is straight at the left cushion.</param>
    /// <param name="cut">Cut, degrees, positive to the left.</param>
    /// <param name="speed">Speed of the stroke, m/s.</param>
    /// <param name="right">Tip to the right, radii.</param>
    /// <param name="above">Tip above centre, radii.</param>
    /// <param name="across">How far the object ball is from the right nose line, metres.</param>
    /// <param name="distance">Cue ball to ghost ball, metres.</param>
    /// <param name="more">More fields of the scene, each with a comma after it.</param>
    internal static string Bank(
        double way, double cut, double speed, double right = 0, double above = 0, double across = 0.7,
        double distance = 0.4, string more = "")
    {
        (double x, double y) = (1.27, across);
        (double sin, double cos) = Math.SinCos(way * Math.PI / 180);
        (double sinAim, double cosAim) = Math.SinCos((way - cut) * Math.PI / 180);
        double cueX = x - 2 * R * cos - distance * cosAim;
        double cueY = y - 2 * R * sin - distance * sinAim;
        return string.Create(CultureInfo.InvariantCulture, $$"""
            { "table": { "pockets": "none" }, {{more}}
              "balls": [ { "id": "cue", "x": {{cueX:R}}, "y": {{cueY:R}} }, { "id": "9", "x": {{x:R}}, "y": {{y:R}} } ],
              "stroke": { "aim": "{{way - cut:R}} deg", "speed": {{speed:R}},
                "tip": { "right": "{{right:R}} R", "above": "{{above:R}} R" } } }
            """);
    }

    internal static ReadyScene Ready(string text)
    {
        SceneCompilation made = SceneReader.ReadReady(Encoding.UTF8.GetBytes(text));
        Assert.True(made.Ready is not null, string.Join("\n", made.Errors) + "\n" + text);
        return made.Ready!;
    }

    internal static EffectsAnswer Run(string text, EffectsOptions? options) =>
        EffectsRunner.Run(Ready(text), options, TestContext.Current.CancellationToken);

    internal static EffectBudget Budget(string text, EffectsOptions? options = null)
    {
        EffectsAnswer answer = Run(text, options);
        Assert.True(answer.Budget is not null, string.Join("\n", answer.Errors) + "\n" + text);
        return answer.Budget!;
    }

    /// <summary>The share of a cause, millimetres.</summary>
    internal static double Share(this EffectBudget budget, EffectKind kind) =>
        1000 * budget.Effects.Single(effect => effect.Kind == kind).Metres;

    /// <summary>The sum of the shares of some causes, millimetres.</summary>
    internal static double Shares(this EffectBudget budget, params EffectKind[] kinds) =>
        kinds.Sum(budget.Share);

    /// <summary>How far the shot moves back if a cause alone is off, millimetres.</summary>
    internal static double Alone(this EffectBudget budget, EffectKind kind) =>
        1000 * budget.Effects.Single(effect => effect.Kind == kind).AloneMetres;
}
