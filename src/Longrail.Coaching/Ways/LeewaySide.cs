namespace Longrail.Coaching.Ways;

/// <summary>How far one thing may be off to one side, everything else as meant.</summary>
/// <param name="Amount">How far, not negative: radians of aim, m/s of speed, metres of tip.</param>
/// <param name="Limit">What the first miss on that side is.</param>
/// <param name="Ball">The other ball that is met, where that is the limit.</param>
public readonly record struct LeewaySide(double Amount, LeewayLimit Limit, string? Ball = null);
