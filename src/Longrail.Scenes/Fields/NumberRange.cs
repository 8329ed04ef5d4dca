using System.Globalization;

namespace Longrail.Scenes.Fields;

/// <summary>The legal range of a quantity, in the unit of a bare number.</summary>
/// <param name="Least">Its lower end.</param>
/// <param name="Most">Its upper end.</param>
/// <param name="WithoutLeast">Whether the lower end itself is out.</param>
/// <param name="WithoutMost">Whether the upper end itself is out.</param>
/// <param name="Words">The range in words, where the plain numbers would not be understood at a glance.</param>
public sealed record NumberRange(
    double Least, double Most, bool WithoutLeast = false, bool WithoutMost = false, string? Words = null)
{
    /// <summary>Any finite number.</summary>
    public static NumberRange Any { get; } =
        new(double.NegativeInfinity, double.PositiveInfinity, Words: "any finite number");

    /// <summary>Whether a number lies in the range; never true for one that is not finite.</summary>
    public bool Contains(double value) =>
        double.IsFinite(value)
        && (WithoutLeast ? value > Least : value >= Least)
        && (WithoutMost ? value < Most : value <= Most);

    /// <summary>The range in words.</summary>
    /// <param name="unit">The unit of a bare number; empty for a plain number.</param>
    public string Describe(string unit)
    {
        if (Words is not null)
            return Words;
        string from = (WithoutLeast ? "more than " : "from ") + Least.ToString(CultureInfo.InvariantCulture);
        string to = (WithoutMost ? " to less than " : " to ") + Most.ToString(CultureInfo.InvariantCulture);
        return unit.Length == 0 ? from + to : $"{from}{to} {unit}";
    }
}
