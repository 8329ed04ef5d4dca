using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>One condition of a trial, and what the physics expects of it.</summary>
/// <param name="Label">Its letter.</param>
/// <param name="Value">The value of the varied field, as it was asked for.</param>
/// <param name="Landing">Where the banked ball arrives on the whole over the player's strokes, metres along the target
/// cushion; null where it cannot be read.</param>
/// <param name="Spread">Standard deviation of that place over the player's strokes, reading error included, metres;
/// null with <paramref name="Landing"/>.</param>
/// <param name="Lost">The part of the strokes that gave no landing: a miscue, a missed ball, another cushion.</param>
/// <param name="Made">How often the ball went down; null where no pocket is played for.</param>
public sealed record TrialCondition(
    string Label, string Value, double? Landing, double? Spread, double Lost, Odds? Made);
