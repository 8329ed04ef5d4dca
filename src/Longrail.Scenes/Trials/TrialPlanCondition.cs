namespace Longrail.Scenes.Trials;

/// <summary>A condition of a trial's plan.</summary>
/// <param name="Label">Its letter.</param>
/// <param name="Value">The value of the varied field.</param>
/// <param name="Landing">Expected landing, metres, or null.</param>
/// <param name="Spread">Its standard deviation over the player's strokes, metres, or null.</param>
/// <param name="Lost">The part of the strokes without a landing.</param>
/// <param name="Made">How often the ball went down, or null.</param>
/// <param name="Strokes">In how many strokes, or null.</param>
public sealed record TrialPlanCondition(
    string Label, string Value, double? Landing, double? Spread, double Lost, int? Made, int? Strokes);
