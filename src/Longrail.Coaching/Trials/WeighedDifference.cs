using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>One way to look at a difference.</summary>
/// <param name="Value">The difference: metres, or chance.</param>
/// <param name="Within">Its interval, at the confidence of the comparison.</param>
/// <param name="P">Chance of so large a difference if there is none.</param>
public sealed record WeighedDifference(double Value, Interval Within, double P);
