using Longrail.Scenes.Trials;

namespace Longrail.Coaching.Trials;

/// <summary>A trial's results, weighed.</summary>
public sealed record TrialResult
{
    /// <summary>The plan; null where none was at hand.</summary>
    public required TrialPlan? Plan { get; init; }

    /// <summary>The title of the plan, or an empty text.</summary>
    public string Title => Plan?.Title ?? "";

    /// <summary>The shots that were weighed.</summary>
    public required IReadOnlyList<TrialShot> Shots { get; init; }

    /// <summary>Whether the speeds are roll-outs in metres.</summary>
    public required bool SpeedIsRollOut { get; init; }

    /// <summary>What was measured: what the verdict rests on.</summary>
    public required TrialMeasure Measure { get; init; }

    /// <summary>Whether the verdict rests on the difference at the common speed.</summary>
    public required bool UsesSpeed { get; init; }

    /// <summary>The conditions, in the order of their letters.</summary>
    public required IReadOnlyList<WeighedCondition> Conditions { get; init; }

    /// <summary>The others held against the first.</summary>
    public required IReadOnlyList<WeighedComparison> Comparisons { get; init; }

    /// <summary>Confidence of the intervals: wider than 0.95 at a look before the end, and where several comparisons
    /// share the false alarms.</summary>
    public required double Confidence { get; init; }

    /// <summary>Which look this is, from 1; 0 without a plan.</summary>
    public required int Look { get; init; }

    /// <summary>Change of the landing with the speed, metres for 1 m/s (or for 1 m of roll-out); null without
    /// both.</summary>
    public required double? Slope { get; init; }

    /// <summary>The mean speed at which the landings are compared; null with <see cref="Slope"/>.</summary>
    public required double? CommonSpeed { get; init; }

    /// <summary>What it comes to, one sentence for each comparison.</summary>
    public required IReadOnlyList<string> Sentences { get; init; }

    /// <summary>What else must be said, each a whole sentence.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
