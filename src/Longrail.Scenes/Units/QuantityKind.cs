namespace Longrail.Scenes.Units;

/// <summary>What a field of a scene holds: the meaning of a bare number, and the units that a text may carry.</summary>
public sealed class QuantityKind
{
    private QuantityKind(string name, string bareUnit, Dimension[] dimensions, RelativeUnit bare = RelativeUnit.None)
    {
        Name = name;
        BareUnit = bareUnit;
        Dimensions = dimensions;
        Bare = bare;
    }

    /// <summary>A length in metres.</summary>
    public static QuantityKind Length { get; } = new("length", "m", [Dimension.Length]);

    /// <summary>A place on the table: metres from the head or from the right nose line, or diamonds.</summary>
    public static QuantityKind Place { get; } = new("place", "m", [Dimension.Length, Dimension.Diamond]);

    /// <summary>A place on the table counted in diamonds.</summary>
    public static QuantityKind DiamondPlace { get; } =
        new("diamonds", "diamonds", [Dimension.Diamond], RelativeUnit.Diamond);

    /// <summary>A height in metres, or as a part of the ball.</summary>
    public static QuantityKind BallHeight { get; } =
        new("height", "m", [Dimension.Length, Dimension.BallDiameter, Dimension.BallRadius, Dimension.Ratio]);

    /// <summary>An offset of the tip: metres or "R" for the point of contact, "tip" for a shift of the shaft.</summary>
    public static QuantityKind TipOffset { get; } =
        new("offset", "m", [Dimension.Length, Dimension.BallRadius, Dimension.TipWidth]);

    /// <summary>A speed in m/s.</summary>
    public static QuantityKind Speed { get; } = new("speed", "m/s", [Dimension.Speed]);

    /// <summary>An angle in radians.</summary>
    public static QuantityKind Angle { get; } = new("angle", "rad", [Dimension.Angle]);

    /// <summary>A cut angle in radians: positive, or with the word "left", cuts the ball to the left.</summary>
    public static QuantityKind CutAngle { get; } = new("cut angle", "rad, + to the left", [Dimension.Angle]);

    /// <summary>A mass in kilograms.</summary>
    public static QuantityKind Mass { get; } = new("mass", "kg", [Dimension.Mass]);

    /// <summary>A time in seconds.</summary>
    public static QuantityKind Time { get; } = new("time", "s", [Dimension.Time]);

    /// <summary>A plain number.</summary>
    public static QuantityKind Ratio { get; } = new("number", "a plain number", [Dimension.Ratio]);

    /// <summary>A rate of turning in rad/s.</summary>
    public static QuantityKind AngularSpeed { get; } = new("spin", "rad/s", [Dimension.AngularSpeed]);

    /// <summary>A change of the rate of turning in rad/s^2.</summary>
    public static QuantityKind AngularAcceleration { get; } =
        new("spin decay", "rad/s^2", [Dimension.AngularAcceleration]);

    /// <summary>An acceleration in m/s^2.</summary>
    public static QuantityKind Acceleration { get; } = new("acceleration", "m/s^2", [Dimension.Acceleration]);

    /// <summary>One over a speed, in s/m.</summary>
    public static QuantityKind InverseSpeed { get; } = new("decay with speed", "s/m", [Dimension.InverseSpeed]);

    /// <summary>What it is called in a message, without an article.</summary>
    public string Name { get; }

    /// <summary>The unit of a bare number, for messages.</summary>
    public string BareUnit { get; }

    /// <summary>The unit of a bare number.</summary>
    public RelativeUnit Bare { get; }

    /// <summary>The dimensions of the units that a text may carry.</summary>
    public IReadOnlyList<Dimension> Dimensions { get; }

    /// <summary>Whether a text may go without a unit because the quantity has none.</summary>
    public bool IsPlainNumber => this == Ratio;

    /// <summary>The names of the units that a text may carry, in the order of <see cref="UnitTable"/>.</summary>
    public IEnumerable<string> UnitNames() =>
        UnitTable.Units.Where(unit => !unit.Alias && Dimensions.Contains(unit.Dimension)).Select(unit => unit.Name);

    /// <summary>All spellings of units that a text may carry.</summary>
    public IEnumerable<string> UnitSpellings() =>
        UnitTable.Units.Where(unit => Dimensions.Contains(unit.Dimension)).Select(unit => unit.Name);

    internal bool Accepts(Dimension dimension)
    {
        foreach (Dimension accepted in Dimensions)
        {
            if (accepted == dimension)
                return true;
        }

        return false;
    }
}
