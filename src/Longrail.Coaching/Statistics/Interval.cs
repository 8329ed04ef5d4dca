namespace Longrail.Coaching.Statistics;

/// <summary>A range in which a quantity lies with a stated confidence.</summary>
/// <param name="Low">Lower end, in the quantity's unit.</param>
/// <param name="High">Upper end, not below <paramref name="Low"/>.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>From one end to the other.</summary>
    public double Width => High - Low;

    /// <summary>Whether a value lies inside or on an end.</summary>
    public bool Holds(double value) => value >= Low && value <= High;
}
