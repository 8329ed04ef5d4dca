namespace Longrail.Physics.Shots.Readings;

/// <summary>Angles for readings.</summary>
internal static class Angles
{
    internal static double Degrees(double radians) => radians * (180.0 / Math.PI);
}
