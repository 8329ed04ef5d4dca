namespace Longrail.Coaching.Effects;

/// <summary>What one cause does to the arrival.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Metres">Its share along the target, metres, in the sense of the budget (positive is long): the average
/// of what it adds over all orders in which the causes can be switched on.</param>
/// <param name="AloneMetres">How far the arrival moves back if this cause alone is switched off and all others stay,
/// metres: the shot as it is, minus the shot without it.</param>
/// <param name="PerCushionMetres">The share, split over the cushions in order, metres; empty for a cause that does not
/// act at a cushion, for a bank off a single one, and where the ball does not arrive with the cause at one cushion
/// alone.</param>
public sealed record EffectShare(
    EffectKind Kind, double Metres, double AloneMetres, IReadOnlyList<double> PerCushionMetres);
