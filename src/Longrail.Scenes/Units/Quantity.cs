using System.Globalization;

namespace Longrail.Scenes.Units;

/// <summary>A quantity as a scene gives it: SI, or a multiple of something else in the scene.</summary>
/// <param name="Value">The number, finite.</param>
/// <param name="Unit">What it is counted in.</param>
public readonly record struct Quantity(double Value, RelativeUnit Unit = RelativeUnit.None)
{
    /// <summary>A quantity in SI units.</summary>
    public static implicit operator Quantity(double si) => new(si);

    /// <summary>The name of a relative unit as a scene writes it; empty for SI.</summary>
    public static string NameOf(RelativeUnit unit) => unit switch
    {
        RelativeUnit.BallRadius => "R",
        RelativeUnit.BallDiameter => "D",
        RelativeUnit.TipWidth => "tip",
        RelativeUnit.Diamond => "diamonds",
        _ => "",
    };

    /// <summary>A quantity in SI units; the same as the conversion from a number.</summary>
    public static Quantity FromDouble(double si) => new(si);

    /// <summary>The number as round-trip text, followed by the relative unit if there is one.</summary>
    public override string ToString() => Unit == RelativeUnit.None
        ? Value.ToString("R", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Value:R} {NameOf(Unit)}");
}
