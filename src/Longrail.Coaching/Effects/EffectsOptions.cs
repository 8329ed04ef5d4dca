namespace Longrail.Coaching.Effects;

/// <summary>What to split.</summary>
/// <param name="Ball">The name of the ball that is measured; null for the ball that was struck if it comes to a
/// cushion before it hits another, else for the ball that it hits.</param>
/// <param name="Cushions">How many of its cushions count, 1 to 3; null for as many as the scene's aim names, for all on
/// its way into a pocket or, of a kick, to a ball, else for one.</param>
public sealed record EffectsOptions(string? Ball = null, int? Cushions = null)
{
    /// <summary>The most cushions that can be told apart.</summary>
    public const int MostCushions = 3;
}
