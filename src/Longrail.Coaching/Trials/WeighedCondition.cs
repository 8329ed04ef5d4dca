using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>What was written down of one condition.</summary>
/// <param name="Label">Its letter.</param>
/// <param name="Value">Its words.</param>
/// <param name="Shots">How many shots were played.</param>
/// <param name="Landing">The landings, metres; null with fewer than two.</param>
/// <param name="Adjusted">Mean landing at the common speed, metres; null where the speed was not evened out.</param>
/// <param name="Speed">The speeds as they were read, m/s, or roll-outs, metres; null with fewer than two.</param>
/// <param name="Made">Makes; null where they were not written down.</param>
public sealed record WeighedCondition(
    string Label, string Value, int Shots, SampleSummary? Landing, double? Adjusted, SampleSummary? Speed, Odds? Made);
