namespace Longrail.Scenes.Units;

/// <summary>What a unit measures.</summary>
public enum Dimension
{
    /// <summary>A plain number or a percentage.</summary>
    Ratio,

    /// <summary>A length, metres.</summary>
    Length,

    /// <summary>A speed, m/s.</summary>
    Speed,

    /// <summary>An angle, radians.</summary>
    Angle,

    /// <summary>A mass, kilograms.</summary>
    Mass,

    /// <summary>A time, seconds.</summary>
    Time,

    /// <summary>A rate of turning, rad/s.</summary>
    AngularSpeed,

    /// <summary>A change of the rate of turning, rad/s^2.</summary>
    AngularAcceleration,

    /// <summary>A change of speed, m/s^2.</summary>
    Acceleration,

    /// <summary>One over a speed, s/m.</summary>
    InverseSpeed,

    /// <summary>A part of the ball's radius, "R".</summary>
    BallRadius,

    /// <summary>A part of the ball's diameter, "D".</summary>
    BallDiameter,

    /// <summary>A shift of the shaft in widths of the tip, "tip".</summary>
    TipWidth,

    /// <summary>A place on the table in diamonds.</summary>
    Diamond,
}
