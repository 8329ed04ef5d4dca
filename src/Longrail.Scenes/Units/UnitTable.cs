using System.Text;
using UnitsNet;
using UnitsNet.Units;

namespace Longrail.Scenes.Units;

/// <summary>The units that scenes may use. Factors of the common units come from UnitsNet and are looked up
/// once.</summary>
public static class UnitTable
{
    // UnitsNet carries the revolution per minute to ten digits only, so this one is ours.
    private const double RadiansPerSecondInRpm = Math.PI / 30.0;

    private static readonly double _degree = Angle.From(1, AngleUnit.Degree).Radians;
    private static readonly double _inch = Length.From(1, LengthUnit.Inch).Meters;
    private static readonly double _foot = Length.From(1, LengthUnit.Foot).Meters;
    private static readonly double _yard = Length.From(1, LengthUnit.Yard).Meters;
    private static readonly double _footPerSecond = Speed.From(1, SpeedUnit.FootPerSecond).MetersPerSecond;

    /// <summary>All units, spellings that are only accepted included.</summary>
    public static IReadOnlyList<UnitDefinition> Units { get; } =
    [
        new("m", Dimension.Length, 1.0),
        new("cm", Dimension.Length, Length.From(1, LengthUnit.Centimeter).Meters),
        new("mm", Dimension.Length, Length.From(1, LengthUnit.Millimeter).Meters),
        new("in", Dimension.Length, _inch),
        new("inch", Dimension.Length, _inch, Alias: true),
        new("inches", Dimension.Length, _inch, Alias: true),
        new("ft", Dimension.Length, _foot),
        new("foot", Dimension.Length, _foot, Alias: true),
        new("feet", Dimension.Length, _foot, Alias: true),
        new("yd", Dimension.Length, _yard),
        new("m/s", Dimension.Speed, 1.0),
        new("km/h", Dimension.Speed, Speed.From(1, SpeedUnit.KilometerPerHour).MetersPerSecond),
        new("mph", Dimension.Speed, Speed.From(1, SpeedUnit.MilePerHour).MetersPerSecond),
        new("ft/s", Dimension.Speed, _footPerSecond),
        new("rad", Dimension.Angle, 1.0),
        new("deg", Dimension.Angle, _degree),
        new("degree", Dimension.Angle, _degree, Alias: true),
        new("degrees", Dimension.Angle, _degree, Alias: true),
        new("\u00b0", Dimension.Angle, _degree, Alias: true),
        new("kg", Dimension.Mass, 1.0),
        new("g", Dimension.Mass, Mass.From(1, MassUnit.Gram).Kilograms),
        new("oz", Dimension.Mass, Mass.From(1, MassUnit.Ounce).Kilograms),
        new("lb", Dimension.Mass, Mass.From(1, MassUnit.Pound).Kilograms),
        new("s", Dimension.Time, 1.0),
        new("ms", Dimension.Time, Duration.From(1, DurationUnit.Millisecond).Seconds),
        new("rad/s", Dimension.AngularSpeed, 1.0),
        new("rpm", Dimension.AngularSpeed, RadiansPerSecondInRpm),
        new("rad/s^2", Dimension.AngularAcceleration, 1.0),
        new("m/s^2", Dimension.Acceleration, 1.0),
        new("s/m", Dimension.InverseSpeed, 1.0),
        new("%", Dimension.Ratio, 0.01),
        new("R", Dimension.BallRadius, 1.0),
        new("D", Dimension.BallDiameter, 1.0),
        new("tip", Dimension.TipWidth, 1.0),
        new("tips", Dimension.TipWidth, 1.0, Alias: true),
        new("diamonds", Dimension.Diamond, 1.0),
        new("diamond", Dimension.Diamond, 1.0, Alias: true),
    ];

    private static readonly byte[][] _utf8Names = [.. Units.Select(unit => Encoding.UTF8.GetBytes(unit.Name))];

    /// <summary>The unit of that name, or null.</summary>
    /// <param name="name">The name in UTF-8, exactly as it is written in a scene (capitals count: "R" is a
    /// radius).</param>
    public static UnitDefinition? Find(ReadOnlySpan<byte> name)
    {
        for (int i = 0; i < _utf8Names.Length; i++)
        {
            if (name.SequenceEqual(_utf8Names[i]))
                return Units[i];
        }

        return null;
    }

    /// <summary>What a dimension is called in a message.</summary>
    public static string NameOf(Dimension dimension) => dimension switch
    {
        Dimension.Ratio => "a plain number",
        Dimension.Length => "a length",
        Dimension.Speed => "a speed",
        Dimension.Angle => "an angle",
        Dimension.Mass => "a mass",
        Dimension.Time => "a time",
        Dimension.AngularSpeed => "a rate of turning",
        Dimension.AngularAcceleration => "a change of the rate of turning",
        Dimension.Acceleration => "an acceleration",
        Dimension.InverseSpeed => "one over a speed",
        Dimension.BallRadius => "a part of the ball's radius",
        Dimension.BallDiameter => "a part of the ball's diameter",
        Dimension.TipWidth => "a part of the tip's width",
        _ => "a place in diamonds",
    };
}
