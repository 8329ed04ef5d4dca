namespace Longrail.TestKit;

/// <summary>Every tolerance that the physics checks use, each with its reason. None was chosen to make a check
/// pass.</summary>
/// <remarks>Where a check compares with a printed table the tolerance is half a unit of the last printed digit
/// (<see cref="GoldenCell.HalfUnit"/>) and does not stand here.</remarks>
public static class Tolerance
{
    /// <summary>Relative. A few dozen operations in double precision (2.2e-16 each) on quantities of order
    /// one.</summary>
    public const double Rounding = 1e-13;

    /// <summary>Relative. A whole contact or a whole leg in closed form: some hundred operations, roots of quartics
    /// included.</summary>
    public const double ClosedForm = 1e-10;

    /// <summary>Metres. 1e-9 inch: what the geometry of mirror banks must hold.</summary>
    public const double Geometry = 2.54e-11;

    /// <summary>Metres. A shot on cloth whose friction was made as good as nothing (1e-12) for the sake of pure
    /// geometry: over a second or two the path is bent by less than mu g t^2 / 2, that is 2e-11 m, and some for
    /// rounding.</summary>
    public const double NearlyPureGeometry = 1e-9;

    /// <summary>Metres. Whole shots against the reference integrator, over up to four cushions: a tenth of a
    /// millimetre.</summary>
    public const double WholeShot = 1e-4;

    /// <summary>Relative to the speed in. One cushion contact: an error of 1e-5 moves the ball by 25 micrometres at
    /// the next cushion, 2.5 m on, so that four contacts stay within <see cref="WholeShot"/>.</summary>
    public const double CushionContact = 1e-5;

    /// <summary>Relative to the speed in. What the engine promises of any cushion contact: a slip that dies, turns
    /// round or sets out anew costs up to ten times <see cref="CushionContact"/>, a twentieth of the 0.002 to which the
    /// published rebounds are given.</summary>
    public const double AnyCushionContact = 1e-4;

    /// <summary>Radians. Orientation over a whole shot: a tenth of a degree.</summary>
    public const double Orientation = Math.PI / 1800;

    /// <summary>Metres. Overlap of balls that rounding may leave: one micrometre, a fiftieth of a hair.</summary>
    public const double Overlap = 1e-6;

    /// <summary>Joules per joule. Energy may rise by rounding at an event, not by more.</summary>
    public const double EnergyRise = 1e-9;

    /// <summary>Degrees. Cushion table of the impulse equations: stated with it (steps of the integration that made
    /// it).</summary>
    public const double CushionAngle = 0.1;

    /// <summary>Speed ratio. Stated with the same table.</summary>
    public const double CushionSpeed = 0.002;
}
