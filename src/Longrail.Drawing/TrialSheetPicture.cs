using Longrail.Coaching.Trials;
using Longrail.Drawing.Trials;
using Longrail.Scenes.Compiling;

namespace Longrail.Drawing;

/// <summary>Draws the sheet that lies beside the table in a trial: set-up, order, boxes to fill in.</summary>
public static class TrialSheetPicture
{
    /// <summary>The pages as SVG text, in black and grey. A pure function: the same plan gives the same text.</summary>
    /// <param name="plan">The plan; it has a number of shots.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <exception cref="ArgumentException">The plan has no affordable number of shots, or its scene cannot be
    /// played.</exception>
    public static IReadOnlyList<string> Draw(TrialPlan plan, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (!plan.IsAffordable)
            throw new ArgumentException("The plan has no affordable number of shots.", nameof(plan));
        SceneCompilation compilation = SceneCompiler.Compile(plan.Scene);
        ReadyScene scene = compilation.Ready ?? throw new ArgumentException(
            $"The plan's scene cannot be played: {string.Join("; ", compilation.Errors)}", nameof(plan));
        return new TrialSheetPages(plan, scene, paper).Draw();
    }
}
