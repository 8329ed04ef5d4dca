using Longrail.Coaching.Contrasts;
using Longrail.Scenes;

namespace Longrail.Workbench.Tables;

/// <summary>Comparisons as the page and its addresses ask for them.</summary>
internal static class ContrastRequests
{
    /// <summary>Asks the question; takes a moment where an aim has to be found.</summary>
    /// <param name="scene">The table.</param>
    /// <param name="first">The field that changes.</param>
    /// <param name="firstLevels">Its levels, between commas.</param>
    /// <param name="second">A second field; empty for none.</param>
    /// <param name="secondLevels">Its levels.</param>
    /// <param name="hold">What is held.</param>
    public static ContrastAnswer Run(
        Scene scene, string first, string firstLevels, string second, string secondLevels, Hold hold)
    {
        var variations = new List<Variation> { new(first, ContrastFactor.Split(firstLevels)) };
        if (second.Length > 0)
            variations.Add(new Variation(second, ContrastFactor.Split(secondLevels)));
        SceneError[] missing =
        [
            .. variations.Where(variation => variation.Levels.Count == 0)
                .Select(variation => new SceneError(variation.Path, "no level is given",
                    "levels with commas between them")),
        ];
        return missing.Length > 0
            ? new ContrastAnswer(null, missing)
            : ContrastRunner.Run(new ContrastRequest(scene, variations, hold));
    }
}
