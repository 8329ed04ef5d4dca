namespace Longrail.Coaching.TableCards;

/// <summary>A fact of the trade that a neutral table should reproduce, and what a set of equipment makes of
/// it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Expected">The trade's number.</param>
/// <param name="Computed">The physics' number.</param>
/// <param name="Unit">Of both.</param>
/// <param name="Allowance">How far off still counts as agreement, in that unit: half the width of a published band, or
/// a quarter of a diamond.</param>
public sealed record Anchor(string Name, string Source, double Expected, double Computed, string Unit, double Allowance)
{
    /// <summary>Computed minus expected.</summary>
    public double Residual => Computed - Expected;

    /// <summary>Whether it is within the allowance.</summary>
    public bool Holds => Math.Abs(Residual) <= Allowance;
}
