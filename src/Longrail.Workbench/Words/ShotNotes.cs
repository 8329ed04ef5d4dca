using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Outcomes;
using static System.FormattableString;

namespace Longrail.Workbench.Words;

/// <summary>What is to be said about a shot as a whole.</summary>
internal static class ShotNotes
{
    /// <summary>The notes, each one sentence.</summary>
    public static IEnumerable<string> Of(Outcome outcome)
    {
        ShotReading shot = outcome.Readings.Shot;
        if (shot.DoubleKiss)
            yield return "Double kiss: cue ball and object ball meet again.";
        else if (shot.KissGapMillimetres is { } gap)
            yield return gap < 10
                ? Invariant($"Kiss gap {gap:0.0} mm at {shot.KissGapTime:0.00} s.")
                : Invariant($"Kiss gap {gap:0} mm at {shot.KissGapTime:0.00} s.");
        foreach (string caution in shot.Cautions)
            yield return $"Caution: {caution}";
    }
}
